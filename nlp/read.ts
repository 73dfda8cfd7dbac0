import type { Ask } from '../domain/model/ask.ts';
import type { Entry } from '../domain/model/entry.ts';
import type { ReadContext, Reading } from '../domain/model/reading.ts';
import { actOf } from './act.ts';
import type { Clause } from './clauses/clause.ts';
import { clausesOf } from './clauses/clauses.ts';
import { Memory } from './clauses/memory.ts';
import { machineOf } from './machine.ts';
import { readAsks, type AskRead } from './meanings/asks/read.ts';
import { remember, tell } from './tell.ts';
import { openSheet, sheetBefore } from './sheet.ts';
import type { Sheet } from './types.ts';
import { traceClauses } from './trace.ts';
import { unreadOf } from './unread.ts';

/**
 * What a note means. Synchronous, pure: the same words with the same context read the same on any machine.
 * `ctx.at` dates every relative day; `ctx.prior` are the notes just before, for "it", "same on the left" and corrections.
 */
export function readNote(text: string, ctx: ReadContext): Reading {
  const sheet = openSheet(text, { ...ctx, prior: (ctx.prior ?? []).slice(-REMEMBERED) });
  const memory = new Memory();
  const before: Entry[] = [];
  for (const earlier of sheetsBefore(sheet)) before.push(...readOne(earlier, memory, [...before]).entries);
  return readOne(sheet, memory, before);
}

/** So many notes before are read for what this one may speak of. */
const REMEMBERED = 4;

/** The notes before this one, oldest first. */
function sheetsBefore(sheet: Sheet): Sheet[] {
  const before = sheetBefore(sheet.ctx);
  return before ? [...sheetsBefore(before), before] : [];
}

function readOne(sheet: Sheet, memory: Memory, prior: readonly Entry[]): Reading {
  const named = machineOf(sheet);
  const asked = surelyAsked(sheet, prior, memory);
  const used = asked.flatMap(a => a.used);
  const clauses = clausesOf(sheet, [...asked.map((a): [number, number] => [a.from, a.to]), ...(named?.cut ? [named.cut] : [])], memory);
  traceClauses(sheet, clauses);
  const told = tell(sheet, clauses, prior, used);
  remember(memory, told.told, asked.map(a => a.ask));
  const asks = asked.map(a => withSpan(a, sheet.text, sheet.tokens));
  const act = actOf(sheet, told.entries, asks);
  return {
    entries: told.entries.map(e => (named && e.machine === undefined ? { ...e, machine: named.machine } : e)) as Entry[],
    asks, unread: unreadOf(sheet, told.covered as Clause[], asked, named?.cut), questions: told.questions,
    ...(named ? { machine: named.machine } : {}), ...(named?.switches ? { switches: true } : {}), ...(act ? { act } : {}),
    trace: sheet.trace,
  };
}

/**
 * The questions of the note. One that was only guessed at from a telling word ("loose") gives way where the same words make a statement
 * ("have rings on order", "check again after ten hours").
 */
function surelyAsked(sheet: Sheet, prior: readonly Entry[], memory: Memory): AskRead[] {
  const asked = readAsks(sheet);
  if (!asked.some(a => a.rule === 'loose') || sheet.text.includes('?')) return asked;
  const firm = asked.filter(a => a.rule !== 'loose');
  const trace = sheet.trace;
  const clauses = clausesOf(sheet, firm.map((a): [number, number] => [a.from, a.to]), memory.copy());
  const { told } = tell({ ...sheet, trace: [] }, clauses, prior, firm.flatMap(a => a.used));
  sheet.trace = trace;
  return asked.filter(a => a.rule !== 'loose' || !told.some(x => x.entry.kind !== 'remark' && x.clause.from < a.to && a.from < Math.max(x.clause.to, x.to ?? 0)));
}

const withSpan = (a: AskRead, text: string, tokens: readonly { start: number; end: number }[]): Ask =>
  ({ ...a.ask, span: [tokens[a.from]?.start ?? 0, tokens[a.to - 1]?.end ?? text.length] }) as Ask;

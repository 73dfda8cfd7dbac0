import type { Ask } from '../domain/model/ask.ts';
import type { Entry } from '../domain/model/entry.ts';
import type { ReadContext, Reading } from '../domain/model/reading.ts';
import { actOf } from './act.ts';
import type { Clause } from './clauses/clause.ts';
import { clausesOf, type Placed } from './clauses/clauses.ts';
import { Memory } from './clauses/memory.ts';
import { weighNote } from './likely/net/weigh-note.ts';
import { machineOf } from './machine.ts';
import { readAsks, type AskRead } from './meanings/asks/read.ts';
import { remember, tell } from './tell.ts';
import type { Told } from './meanings/telling.ts';
import { openSheet, sheetBefore } from './sheet.ts';
import type { Sheet } from './types.ts';
import { traceClauses } from './trace.ts';
import { unreadOf } from './unread.ts';

/**
 * What a note means. Synchronous, pure: the same words with the same context read the same on any machine.
 * `ctx.at` dates every relative day; `ctx.prior` are the notes just before, for "it", "same on the left" and corrections.
 */
export function readNote(text: string, ctx: ReadContext): Reading {
  return readAfter(text, ctx, true).reading;
}

/** What the rules alone make of a note, clause by clause: what the net is taught from. */
export function readByRules(text: string, ctx: ReadContext): { clauses: readonly Placed[]; told: readonly Told[]; sheet: Sheet } {
  return readAfter(text, ctx, false);
}

/** The note, read after those before it. `odds`: whether what was learned of clauses has a say beside the rules. */
function readAfter(text: string, ctx: ReadContext, odds: boolean): Read {
  const sheet = openSheet(text, { ...ctx, prior: (ctx.prior ?? []).slice(-REMEMBERED) });
  const memory = new Memory();
  const before: Entry[] = [];
  for (const earlier of sheetsBefore(sheet)) before.push(...readOne(earlier, memory, [...before], odds).reading.entries);
  return readOne(sheet, memory, before, odds);
}

interface Read { reading: Reading; clauses: Placed[]; told: Told[]; sheet: Sheet }

/** So many notes before are read for what this one may speak of. */
const REMEMBERED = 4;

/** The notes before this one, oldest first. */
function sheetsBefore(sheet: Sheet): Sheet[] {
  const before = sheetBefore(sheet.ctx);
  return before ? [...sheetsBefore(before), before] : [];
}

function readOne(sheet: Sheet, memory: Memory, prior: readonly Entry[], odds: boolean): Read {
  memory.begin();
  const net = odds ? weighNote(sheet) : undefined;
  if (net) sheet.begins = token => net.begins(sheet.tokens[token]!.start);
  const named = machineOf(sheet);
  const asked = surelyAsked(sheet, prior, memory, odds);
  const used = asked.flatMap(a => a.used);
  const clauses = clausesOf(sheet, [...asked.map((a): [number, number] => [a.from, a.to]), ...(named?.cut ? [named.cut] : [])], memory);
  traceClauses(sheet, clauses);
  const told = tell(sheet, clauses, prior, used, odds);
  remember(memory, told.told, asked.map(a => a.ask));
  const asks = asked.map(a => withSpan(a, sheet.text, sheet.tokens));
  const act = actOf(sheet, told.entries, asks);
  const reading: Reading = {
    entries: told.entries.filter(e => (!act || e.kind !== 'remark') && !(e.kind === 'hours' && asks.some(a => a.kind === 'next' && a.minutes !== undefined && Math.abs(a.minutes / 60 - e.hours) < 0.01))) // time that is there is not time spent
     .map(e => (named && e.machine === undefined ? { ...e, machine: named.machine } : e)) as Entry[],
    asks, unread: unreadOf(sheet, told.covered as Clause[], asked, named?.cut), questions: told.questions,
    ...(named ? { machine: named.machine } : {}), ...(named?.switches ? { switches: true } : {}), ...(act ? { act } : {}),
    trace: sheet.trace,
  };
  return { reading, clauses, told: told.told, sheet };
}

/**
 * The questions of the note. One that was only guessed at from a telling word ("loose") gives way where the same words make a statement
 * ("have rings on order", "check again after ten hours").
 */
function surelyAsked(sheet: Sheet, prior: readonly Entry[], memory: Memory, odds: boolean): AskRead[] {
  const asked = readAsks(sheet, odds);
  if (!asked.some(a => a.rule === 'loose') || sheet.text.includes('?')) return asked;
  const firm = asked.filter(a => a.rule !== 'loose');
  const clauses = clausesOf(sheet, firm.map((a): [number, number] => [a.from, a.to]), memory.copy());
  const asks = /^(?:how|what|where|when|which|who|why)$/.test(sheet.tokens[0]?.low ?? '');
  const told = tell({ ...sheet, trace: [] }, clauses, prior, firm.flatMap(a => a.used), odds).told.filter(x => !(asks && x.entry.kind === 'amend')); // "how was no 1 cylinder" puts nothing right
  return asked.filter(a => a.rule !== 'loose' || !told.some(x => x.entry.kind !== 'remark' && x.clause.from < a.to && a.from < Math.max(x.clause.to, x.to ?? 0)));
}

const withSpan = (a: AskRead, text: string, tokens: readonly { start: number; end: number }[]): Ask =>
  ({ ...a.ask, span: [tokens[a.from]?.start ?? 0, tokens[a.to - 1]?.end ?? text.length] }) as Ask;

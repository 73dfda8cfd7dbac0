import type { Ask } from '../../../domain/model/ask.ts';
import { nameWords } from '../../../domain/model/names.ts';
import { charOf } from '../../dimensions/line.ts';
import { nameOfRuns } from '../../likely/pointed.ts';
import { stretchOf } from '../../likely/stretch-of.ts';
import { weighNote } from '../../likely/net/weigh-note.ts';
import type { Sheet } from '../../types.ts';
import { type Desk, type Hit, sentenceAt } from './desk.ts';

/** So strongly the net must take a word for one of what a question is about (log odds), and so strongly speak against one that a rule took for it. */
const NAMES = 0, SURELY = 2, AGAINST = -2, PLAINLY = -4;
/** Questions that may be about nothing, or about all there is. */
const MAY_BE_OF_ALL = /^(?:spent|timeSpent|finish|provisional|buy|history)$/;

/**
 * Questions with the names that the net takes for what they are about, where those are plainly not what a rule took, or where a rule took none. Of two questions of a kind each keeps its own.
 */
export function called(desk: Desk, hits: readonly Hit[]): Hit[] {
  const counts = new Map<Ask['kind'], number>();
  for (const a of hits.flatMap(h => h.asks)) counts.set(a.kind, (counts.get(a.kind) ?? 0) + 1);
  return hits.map(h => ({ ...h, asks: h.asks.map(a => (counts.get(a.kind) === 1 ? calledSo(desk, h, a) : a)) }));
}

function calledSo(desk: Desk, hit: Hit, a: Ask): Ask {
  const { sheet } = desk;
  const field = a.kind === 'cheapest' ? 'item' : 'part';
  const had = (a as unknown as Record<string, string | undefined>)[field], said = askedOf(sheet, a.kind);
  if (!said) return a;
  const says = (word: string): number => Math.max(-Infinity, ...said.filter(w => nameWords(w.low).includes(word)).map(w => w.z));
  const runs = said.filter(w => w.z > NAMES), name = runs.length ? nameOfRuns(sheet, runs.map(w => w.token)) : undefined;
  if (had === undefined) return name !== undefined && runs.every(w => w.z > SURELY && sentenceAt(desk, charOf(desk.line, w.token)) === sentenceAt(desk, hit.start)) ? named(sheet, a, field, name) : a; // of what another sentence speaks of nothing need be asked
  const own = nameWords(had), here = own.filter(w => says(w) > -Infinity);
  if (name === undefined) return here.length > 0 && here.every(w => says(w) < AGAINST) && MAY_BE_OF_ALL.test(a.kind) ? named(sheet, a, field, undefined) : a;
  const words = nameWords(name), more = words.filter(w => !own.includes(w)), less = own.filter(w => !words.includes(w));
  if (!more.length && !less.length) return a;
  return more.every(w => says(w) > SURELY) && less.every(w => says(w) > -Infinity && says(w) < (w === own.at(-1) ? PLAINLY : AGAINST)) ? named(sheet, a, field, name) : a;
}

/** What the net surely takes a question of that kind to be about; nothing where it doesn't know, or takes it to be about nothing that is said. */
export function askedName(sheet: Sheet, kind: Ask['kind']): string | undefined {
  const said = askedOf(sheet, kind)?.filter(w => w.z > NAMES) ?? [];
  return said.length && said.some(w => w.z > SURELY) ? nameOfRuns(sheet, said.map(w => w.token)) : undefined;
}

function named(sheet: Sheet, a: Ask, field: string, name: string | undefined): Ask {
  sheet.trace.push({ stage: 'odds', rule: 'asked', text: a.kind, gave: name ?? 'of all' });
  const { [field]: _, ...rest } = a as unknown as Record<string, unknown>;
  return { ...rest, ...(name !== undefined ? { [field]: name } : {}) } as unknown as Ask;
}

/** The words of the note with how strongly the net takes each for one of what a question of that kind is about (log odds); nothing where it doesn't know. */
export function askedOf(sheet: Sheet, kind: Ask['kind'] | 'what'): { low: string; token: number; z: number }[] | undefined {
  const net = weighNote(sheet);
  if (!net) return undefined;
  const out = sheet.tokens.flatMap((t, token) => { const z = net.alone(...stretchOf(sheet, { from: token, to: token + 1 })).get(`asked ${kind}`); return z === undefined ? [] : [{ low: t.low, token, z }]; });
  return out.length ? out : undefined;
}

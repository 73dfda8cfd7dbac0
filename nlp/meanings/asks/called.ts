import type { Ask } from '../../../domain/model/ask.ts';
import { namedBy } from '../../../domain/model/named-by.ts';
import { nameWords } from '../../../domain/model/names.ts';
import { charOf } from '../../dimensions/line.ts';
import { nameOfRuns, SMALL } from '../../likely/name-of.ts';
import { stretchOf } from '../../likely/stretch-of.ts';
import { weighNote } from '../../likely/net/weigh-note.ts';
import { inTheShopsName } from '../../own-name.ts';
import type { Sheet } from '../../types.ts';
import { type Desk, type Hit, sentenceAt } from './desk.ts';
import { UNNAMED } from './inherit.ts';

/** So strongly the net must take a word for one of what a question is about (log odds), and so strongly speak against one that a rule took for it. */
const NAMES = 0, FOR_NONE = 0.5, SURELY = 2, AGAINST = -2, PLAINLY = -4;
/** Questions that may be about nothing, or about all there is. */
const MAY_BE_OF_ALL = /^(?:spent|timeSpent|finish|provisional|buy|history)$/;

/**
 * Questions with the names that the net takes for what they are about, where those are plainly not what a rule took, or where a rule took none. Of two questions of a kind each keeps its own.
 */
export function called(desk: Desk, hits: readonly Hit[]): Hit[] {
  const counts = new Map<Ask['kind'], number>();
  for (const a of hits.flatMap(h => h.asks)) counts.set(a.kind, (counts.get(a.kind) ?? 0) + 1);
  return hits.map(h => ({ ...h, asks: h.asks.flatMap(a => (counts.get(a.kind) === 1 ? ofEach(desk, h, a) ?? [calledSo(desk, h, a)] : [a])).map(a => inTheShopsName(desk.sheet, a.kind === 'wasHow' && counts.get('wasHow') === 1 ? asking(desk, h, a) : a)) }));
}

/** What of a part as it was is asked, in the words that the net takes for it: where a rule took none, or plainly others. */
function asking(desk: Desk, hit: Hit, a: Extract<Ask, { kind: 'wasHow' }>): Ask {
  const what = whatAsked(desk, hit);
  if (what === undefined || a.what !== undefined && !against(desk.sheet, a.what)) return a;
  desk.sheet.trace.push({ stage: 'odds', rule: 'asked', text: 'what', gave: what });
  return { ...a, what };
}

/** Whether the net plainly takes none of some words for what is asked of a part. */
function against(sheet: Sheet, what: string): boolean {
  const own = nameWords(what), said = askedOf(sheet, 'what')?.filter(w => nameWords(w.low).some(n => own.includes(n))) ?? [];
  return said.length > 0 && said.every(w => w.z < AGAINST);
}

/** The words of a question that the net takes for what of a part it asks. */
export function whatAsked(desk: Desk, at: { start: number }): string | undefined {
  const { sheet } = desk, words = askedOf(sheet, 'what')?.filter(w => w.z > FOR_NONE && sentenceAt(desk, charOf(desk.line, w.token)) === sentenceAt(desk, at.start)) ?? [];
  const said = words.map(w => w.low).join(' ');
  return said && !/^(?:set|set up|fitted|mounted|put|placed|before)$/.test(said) ? said : undefined; // "how was it set" asks all of it
}

/** "What have I spent on the engine, and what on the sheller": one question of each, where the sentence names several things apart; one only where a name of them is what the rule took. */
function ofEach(desk: Desk, hit: Hit, a: Ask): Ask[] | undefined {
  const { sheet } = desk, had = namedBy(a), groups = had === undefined ? [] : groupsOf(sheet, askedOf(sheet, a.kind)?.filter(w => w.z > SURELY) ?? []);
  const names = groups.map(g => nameOfRuns(sheet, g)), all = new Set(names.flatMap(n => nameWords(n ?? '')));
  if (groups.length < 2 || a.kind === 'wasHow' || names.some(n => n === undefined || nameWords(n).length === 0) || new Set(names).size < names.length || !nameWords(had!).every(w => all.has(w))) return undefined;
  if (groups.some(g => sentenceAt(desk, charOf(desk.line, g[0]!)) !== sentenceAt(desk, hit.start))) return undefined;
  return names.map(n => named(sheet, a, a.kind === 'cheapest' ? 'item' : 'part', n));
}

/** Words before what belongs to something named earlier. */
const OWNED = /^(?:its|their|his|her)$/;

/** The tokens of names that stand apart, each with its owner where that was named earlier ("Governor. … How tight was its spring"). */
function groupsOf(sheet: Sheet, words: readonly { token: number }[]): number[][] {
  const out: number[][] = [];
  for (const { token } of words) {
    const last = out.at(-1), between = last ? sheet.tokens.slice(last.at(-1)! + 1, token).map(t => t.low) : [];
    if (last && (between.every(w => SMALL.test(w)) || OWNED.test(between.at(-1) ?? ''))) last.push(token); else out.push([token]);
  }
  return out;
}

/** Of names that stand apart, the one within the question, else the last. */
function nearest(desk: Desk, hit: Hit, words: readonly { token: number }[]): number[] {
  const groups = groupsOf(desk.sheet, words), within = groups.filter(g => { const at = charOf(desk.line, g[0]!); return at >= hit.start && at < hit.end; });
  return within.at(-1) ?? groups.at(-1) ?? [];
}

function calledSo(desk: Desk, hit: Hit, a: Ask): Ask {
  const { sheet } = desk;
  const field = a.kind === 'cheapest' ? 'item' : 'part';
  const had = (a as unknown as Record<string, string | undefined>)[field], said = askedOf(sheet, a.kind);
  if (!said) return a;
  const says = (word: string): number => Math.max(-Infinity, ...said.filter(w => nameWords(w.low).includes(word)).map(w => w.z));
  const runs = said.filter(w => w.z > NAMES), meant = nearest(desk, hit, runs), called = meant.length ? nameOfRuns(sheet, meant) : undefined, name = called !== undefined && UNNAMED.test(called) ? undefined : called;
  if (had === undefined) return name !== undefined && runs.every(w => !meant.includes(w.token) || w.z > (a.kind === 'finish' ? SURELY : FOR_NONE) && sentenceAt(desk, charOf(desk.line, w.token)) === sentenceAt(desk, hit.start)) ? named(sheet, a, field, name) : a; // of what another sentence speaks of nothing need be asked
  const own = nameWords(had), here = own.filter(w => says(w) > -Infinity);
  if (name === undefined) return here.length > 0 && here.every(w => says(w) < AGAINST) && MAY_BE_OF_ALL.test(a.kind) ? named(sheet, a, field, undefined) : a;
  const words = nameWords(name), more = words.filter(w => !own.includes(w)), less = own.filter(w => !words.includes(w));
  if (!more.length && !less.length) return a;
  return more.every(w => says(w) > SURELY) && less.every(w => says(w) > -Infinity && says(w) < (w === own.at(-1) ? PLAINLY : AGAINST)) ? named(sheet, a, field, name) : a;
}

/** What the net surely takes a question of that kind to be about; nothing where it doesn't know, or takes it to be about nothing that is said. */
export function askedName(sheet: Sheet, kind: Ask['kind']): string | undefined {
  const said = askedOf(sheet, kind)?.filter(w => w.z > NAMES) ?? [];
  return said.some(w => w.z > SURELY) ? nameOfRuns(sheet, groupsOf(sheet, said).at(-1)!) : undefined;
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

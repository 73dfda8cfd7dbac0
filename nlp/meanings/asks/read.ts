import type { Ask } from '../../../domain/model/ask.ts';
import { isPlural } from '../../clauses/name-kinds.ts';
import { tokensOf } from '../../dimensions/line.ts';
import type { Sheet } from '../../types.ts';
import { BLOCKED } from './blocked.ts';
import { BUY } from './buy.ts';
import { called } from './called.ts';
import { CHEAPEST } from './cheapest.ts';
import { choose, extents, once } from './choose.ts';
import { type Desk, type Hit, openDesk, type Spoken } from './desk.ts';
import { inherit } from './inherit.ts';
import { likelyHits, unlikelyOut } from './likely.ts';
import { likewise } from './likewise.ts';
import { DUE_RULES } from './due.ts';
import { FINISH } from './finish.ts';
import { FORECAST } from './forecast.ts';
import { HISTORY } from './history.ts';
import { looseHits } from './loose/hits.ts';
import { NEXT } from './next.ts';
import { PICTURE } from './picture.ts';
import { PROVISIONAL } from './provisional.ts';
import { type AskRule, hitsOf } from './rule.ts';
import { SPENT } from './spent.ts';
import { withSpareTime } from './spare-time.ts';
import { TIME_SPENT } from './time-spent.ts';
import { TOTAL } from './total.ts';
import { WAS_HOW } from './was-how.ts';
import { wasWhat } from './was-what.ts';
import { WHERE } from './where.ts';
import { readSums } from './sums/read.ts';

/**
 * One question of a note. `from`/`to`: the tokens [from, to) that ask it; they hold nothing for an entry.
 * `used`: further stretches, before or after, whose figures only feed the sum ("Engine's got a 9 inch pulley, the saw's got a 14."): no
 * `reading` is to be made of a figure inside one of them (other facts said there, work or a part off, stay facts).
 */
export interface AskRead { ask: Ask; from: number; to: number; rule: string; used: [number, number][] }

/** The questions other than sums, in no order: which of two that overlap is meant is settled by their weight. */
const RULES: readonly AskRule[] = [
  ...WHERE, ...WAS_HOW, ...PICTURE, ...DUE_RULES, ...PROVISIONAL, ...BUY, ...NEXT, ...BLOCKED, ...HISTORY, ...SPENT, ...TIME_SPENT, ...FINISH,
  ...CHEAPEST, ...FORECAST, ...TOTAL,
];

const cached = { learned: new WeakMap<Sheet, AskRead[]>(), rules: new WeakMap<Sheet, AskRead[]>() };

/**
 * Every question of the note, in the order of the words. Needs `sheet.found` filled by `findDimensions`.
 * Call it once a note, before the entries: a question may begin in the middle of a run-on sentence ("sanded the hood can i paint it yet"),
 * so it is read on the whole note, and what lies outside `from`/`to` of all of them is left for entries. `learned`: whether the net has a say beside the rules.
 */
export function readAsks(sheet: Sheet, learned = true): AskRead[] {
  const kept = cached[learned ? 'learned' : 'rules'], before = kept.get(sheet);
  if (before) return before;
  const desk = openDesk(sheet);
  const plain = choose(desk, spoken(desk, hitsOf(desk, RULES)));
  const sums = readSums(desk, plain, learned);
  const known = [...plain, ...likewise(desk, [...plain, ...sums]), ...sums];
  const read = inherit(desk, choose(desk, [...known, ...looseHits(desk, known)]));
  const followed = choose(desk, [...read, ...likewise(desk, read)]); // what follows up a question that was only guessed at
  const hits = learned ? unlikelyOut(desk, followed) : followed;
  const inherited = inherit(desk, learned ? once([...hits, ...likelyHits(desk, hits)].sort((a, b) => a.start - b.start)) : hits), all = inherited.map(h => wasWhat(desk, h));
  const asked = learned ? withSpareTime(desk, called(desk, all)) : all;
  const cuts = extents(desk, all);
  const made = asked.flatMap((h, i) => h.asks.map((ask): AskRead => {
    const [from, to] = tokensOf(desk.line, cuts[i]!.from, cuts[i]!.to);
    return { ask, from, to, rule: h.rule, used: (h.used ?? []).map(([a, b]) => tokensOf(desk.line, a, b)) };
  }));
  kept.set(sheet, made);
  return made;
}

/** The questions that begin within the tokens [from, to); undefined when there are none. */
export function readAsk(sheet: Sheet, from: number, to: number): AskRead[] | undefined {
  const here = readAsks(sheet).filter(a => a.from >= from && a.from < to);
  return here.length ? here : undefined;
}

/**
 * "It" in a later question is what the one before asked about, so the questions are found once to learn what each is about and, where any
 * speaks of "it", once more with that known.
 */
function spoken(desk: Desk, hits: Hit[]): Hit[] {
  const first = choose(desk, hits);
  const cuts = extents(desk, first), done = (h: Hit, i: number, name: string): number => (desk.text.slice(h.start, h.end).includes(name.split(' ').at(-1)!) ? h.end : cuts[i]!.to); // its own name may stand behind the words that ask
  const names = first.flatMap((h, i) => h.asks.flatMap((a): Spoken[] => ('part' in a && a.part ? [{ name: a.part, end: done(h, i, a.part), ...(a.kind === 'wasHow' && a.what && isPlural(a.what) ? { counted: a.what } : {}) }] : 'item' in a ? [{ name: a.item, end: done(h, i, a.item) }] : [])));
  if (first.length < 2 || !names.length || !/\b(?:it|them|that|both|its|they|their|itll|her|him|photos?|pictures?|pics|photograph)\b/.test(desk.text)) return hits;
  desk.spoken = names;
  return hitsOf(desk, RULES);
}

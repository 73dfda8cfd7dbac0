import { NUMBER, count } from './hour-words.ts';

const DAY_NAMES = ['monday|mon', 'tuesday|tues|tue', 'wednesday|weds|wed', 'thursday|thurs|thur|thu', 'friday|fri', 'saturday|sat', 'sunday|sun'];
export const ONE_DAY = String.raw`(?:${DAY_NAMES.join('|')})`;
export const PART = String.raw`(?:mornings?|afternoons?|evenings?|nights?)`;

/** The part of a day that hours are in; a day off work has its own. */
export type Part = 'morning' | 'afternoon' | 'evening' | 'day';
/** Weekdays that hours recur on, 1 (Monday) to 7; `recurs`: said as what happens every week. */
export interface Days { days: number[]; part: Part; recurs: boolean }
/** Ways to say on which days, in the order they are tried. */
export const DAY_SETS: readonly [RegExp, (m: RegExpExecArray) => Days][] = [
  [new RegExp(String.raw`\b(${NUMBER}|a couple of|a few) (${PART}|days) (?:a|per|each|every) week\b`), m => ({ days: spread(count(m[1]!)), part: partOf(m[2]), recurs: true })],
  [/\b(once|twice) a week\b/, m => ({ days: spread(m[1] === 'once' ? 1 : 2), part: 'evening', recurs: true })],
  [new RegExp(String.raw`\b(?:every|each) (?:other|second) (${PART}|day)\b`), m => ({ days: [1, 3, 5], part: partOf(m[1]), recurs: true })],
  [new RegExp(String.raw`\b(${ONE_DAY})s? ?(?:to|through|thru|till|-|–) ?(${ONE_DAY})s?(?: (${PART}))?\b`), m => ({ days: run(dayOf(m[1]!), dayOf(m[2]!)), part: partOf(m[3]), recurs: true })],
  [new RegExp(String.raw`\b(?:(every|each|most) )?((?:${ONE_DAY})s?(?:(?:,| and| or|, and| &|\/) ?(?:${ONE_DAY})s?)*)(?: (${PART}))?\b`),
    m => ({ days: [...m[2]!.matchAll(new RegExp(ONE_DAY, 'g'))].map(d => dayOf(d[0])), part: partOf(m[3]), recurs: m[1] !== undefined || /days\b|s$/.test(m[2]!) || /s$/.test(m[3] ?? '') })],
  [/\b(?:on |at )?(?:(?:the|every|each|most) )?week ?ends?\b(?: (mornings?|afternoons?|evenings?))?/, m => ({ days: [6, 7], part: partOf(m[1]), recurs: /ends|every|each|most/.test(m[0]) })],
  [new RegExp(String.raw`\b(?:(?:on )?(?:most|every|each|all) )?(?:week ?nights?|week ?day (?:evenings?|nights?)|week ?evenings?|school nights)\b`), m => ({ days: m[0].includes('most') ? [1, 2, 3, 4] : [1, 2, 3, 4, 5], part: 'evening', recurs: true })],
  [new RegExp(String.raw`\b(?:(?:on )?(?:most|every|each|all) )?week ?days?(?: (${PART}))?\b`), m => ({ days: m[0].includes('most') ? [1, 2, 3, 4] : [1, 2, 3, 4, 5], part: m[1] ? partOf(m[1]) : 'evening', recurs: true })],
  [new RegExp(String.raw`\b(?:(most|every|each|all|of an|in the|the|my) )?(${PART})\b`), m => {
    const each = m[1] === 'every' || m[1] === 'each';
    return { days: m[1] === 'most' ? [1, 2, 3, 4] : each ? [1, 2, 3, 4, 5, 6, 7] : [1, 2, 3, 4, 5], part: partOf(m[2]), recurs: each || m[1] === 'most' || m[1] === 'of an' || m[2]!.endsWith('s') };
  }],
  [/\b(?:every|each) (?:single )?day\b|\bdaily\b|\b(?:a|per) day\b/, () => ({ days: [1, 2, 3, 4, 5, 6, 7], part: 'evening', recurs: true })],
  [/\bmost days\b/, () => ({ days: [1, 2, 3, 4, 6], part: 'evening', recurs: true })],
];

const dayOf = (name: string): number => DAY_NAMES.findIndex(d => new RegExp(`^(?:${d})$`).test(name)) + 1;
const run = (a: number, b: number): number[] => Array.from({ length: ((b - a + 7) % 7) + 1 }, (_, i) => ((a - 1 + i) % 7) + 1);
const spread = (n: number): number[] => [[3], [2, 4], [1, 3, 5], [1, 2, 3, 4], [1, 2, 3, 4, 5], [1, 2, 3, 4, 5, 6], [1, 2, 3, 4, 5, 6, 7]][Math.min(7, Math.max(1, Math.round(n))) - 1]!;
const partOf = (said: string | undefined): Part => (!said ? 'day' : said.startsWith('morn') ? 'morning' : said.startsWith('after') ? 'afternoon' : /^(even|night)/.test(said) ? 'evening' : 'day');

import { pitched } from './pitched.ts';
import type { Scope } from './scope.ts';
import { table } from '../../../words/table.ts';

const WORDS: Record<string, string> = table({ two: '2', five: '5', eight: '8', seven: '7', three: '3', one: '1', six: '6', nine: '9', 'eight eight': '8.8', 'eight point eight': '8.8', 'ten nine': '10.9', 'ten point nine': '10.9', 'twelve nine': '12.9', 'twelve point nine': '12.9', 'five eight': '5.8', 'five point eight': '5.8', 'four six': '4.6', 'four point six': '4.6', 'nine eight': '9.8', 'four eight': '4.8', 'four point eight': '4.8', 'nine point eight': '9.8' });
const DECIMAL = String.raw`8\.8|10\.9|12\.9|4\.6|4\.8|5\.8|9\.8|6\.8`;
const SAID = Object.keys(WORDS).sort((a, b) => b.length - a.length).join('|');

/** The grade or class, as a string: "grade five", "gr8", "class 8.8", "an eight point eight". */
export function gradesIn(text: string): { grade: string; at: number }[] {
  const out: { grade: string; at: number }[] = [];
  for (const m of text.matchAll(new RegExp(String.raw`\b(?:grades?|grd?\.?|class|property class|strength|sae)(?: grade| class)? ?(?:of |a |an )?(${DECIMAL}|b7|b8|[1-9]\d?(?:\.\d)?(?![\d/]|\.\d)|8 8|10 9|12 9|${SAID})(?![a-z])`, 'g'))) out.push({ grade: spelled(m[1]!), at: m.index });
  if (!out.length) for (const m of text.matchAll(new RegExp(String.raw`(?<![\d./])(${DECIMAL})(?= ?(?:bolts?|studs?|s\b|torque|please|how|what|capscrews?|cap screws?|$|[,?.;]|dry|oiled|lubed|plated|zinc|with|and|in|for|instead|torque|please|steel|hex|grade|class|m ?\d|lightly|wet|greased|anti))|\b(b7|b8|eight point eight|ten point nine|twelve point nine|eight eight|ten nine|twelve nine)\b`, 'g'))) out.push({ grade: spelled(m[1] ?? m[2]!), at: m.index });
  if (!out.length && /\bm ?\d/.test(text)) for (const m of text.matchAll(new RegExp(String.raw`(?<![\d./x])(?<!x )(${DECIMAL})(?![\d.])(?! ?(?:mm|inch|thou|lb|nm|newton|foot|ft|gal|volt|hours?|long))`, 'g'))) out.push({ grade: spelled(m[1]!), at: m.index });
  if (!out.length) for (const m of text.matchAll(/\b(b7|b8m?|b16|a[24][ -]?[5-8]0)\b/g)) out.push({ grade: spelled(m[1]!.replace(/^(a\d)[ -]?(?=\d)/, '$1-')), at: m.index });
  return out;
}
const spelled = (s: string): string => WORDS[s] ?? s.replace(/^(\d+) (\d)$/, '$1.$2').toUpperCase();

export const SURFACES: readonly [string, RegExp][] = [
  ['anti-seize', /\b(?:anti ?(?:seize|sieze|cease|seas)|anticeaze|never ?(?:seize|seez|sieze)|copper ?slip|copp?a ?slip|copper ?(?:grease|paste|ease|coat)|nickel (?:paste|grease))/],
  ['plated', /\b(?:(?:zinc|cad|cadmium|nickel)?(?: |-)?plated|zinc(?:ed)?|galv(?:anised|anized|y)?|plating|cad(?:mium)?(?: plated)?|plate on)\b/],
  ['waxed', /\bwax(?:ed)?\b/],
  ['oiled', /\b(?:oiled|oiling|oil(?:y)? (?:on )?(?:the )?(?:threads?)?|oil|lubed|lubricated|lube|lubricant|wet|greased|grease|oily|moly|molly|engine oil)\b/],
  ['dry', /\b(?:dry|no (?:oil|lube|lubricant)|unlubricated|un ?oiled|unlubed|bare|clean threads|without (?:oil|lube)|degreased)\b/],
];
/** The state of the thread as said, a key of `SURFACES`: oil denied is a dry thread. */
export function surfaceIn(text: string): string | undefined {
  if (/\b(?:no|without|not|isnt) (?:oil|lube|oiled|lubed|lubricant)/.test(text)) return /\bplated\b/.test(text) ? 'plated' : 'dry';
  return SURFACES.find(([, re]) => re.test(text))?.[0];
}

/** The bolt's size: a thread found, else a diameter that stands by a bolt or its grade. */
export function sizeIn(scope: Scope): { size: string; at: { start: number; end: number } } | undefined {
  const threads = meant(scope, scope.values('thread'));
  const t = threads.length > 1 ? threads.find(x => /\b(?:to|for)(?: an?| the)? $/.test(scope.before(x))) ?? scope.nearest(threads) : threads[0]; // "it was 1/2 coarse, what drill for an M14?"
  if (t) return { size: pitched(scope, t), at: t };
  const d = [...scope.lengths('in').filter(f => /^(?:\d+\/\d+|\d+[- ]\d+\/\d+|1|[a-z ]+)/.test(scope.desk.text.slice(f.start, f.end)))].find(f => boltish(scope, f));
  if (d) return { size: fraction(d.value), at: d };
  const many = /\bm(\d{1,2}) ?s\b/.exec(scope.text); // "M18s"
  if (many) return { size: `M${many[1]!}`, at: { start: scope.start + many.index, end: scope.start + many.index + many[0].length } };
  const plain = scope.numbers().find(f => /^\d+(?:[- ]\d+)?\/\d+$/.test(scope.desk.text.slice(f.start, f.end)) && boltish(scope, f));
  if (plain) return { size: fraction(plain.value), at: plain };
  return undefined;
}
const TAKEN_BACK = /\b(?:no|nope|sorry|scra(?:p|tch) that|forget|i mean|make that|rather)\b/;
/** The threads said, less those taken back: "half inch coarse, sorry, three eighths" means the second. */
export const meant = <T extends { start: number; end: number }>(scope: Scope, threads: readonly T[]): T[] =>
  threads.filter((t, i) => !threads[i + 1] || !TAKEN_BACK.test(scope.desk.text.slice(t.end, threads[i + 1]!.start)));
const boltish = (scope: Scope, f: { start: number; end: number }): boolean => !/^ ?(?:inch |in |mm )?(?:pulley|sheave|wheel|belt|drum|shaft)/.test(scope.after(f)) &&
  (/^ ?(?:s\b|bolts?|studs?|nuts?|cap ?screws?|screws?|grade|gr\b|class|lug|hex|head|b7|tap|hole|drill|thread)/.test(scope.after(f)) || /\b(?:bolts?|studs?|nuts?|torque|torque on|for|on|a|an|the|of|its|theyre|are|size)(?: (?:is|are|a|an|the|on|for|my|its|of|old|new|some|these|those|that|this|they|about))* $/.test(scope.before(f)) || /\bgrade|\bclass/.test(scope.text));

/** 0.3125 is "5/16", 1.25 is "1-1/4", 1 is "1". */
export function fraction(x: number): string {
  const whole = Math.floor(x), part = x - whole;
  if (part < 1e-6) return String(whole);
  for (const d of [2, 4, 8, 16, 32, 64]) {
    const n = part * d;
    if (Math.abs(n - Math.round(n)) < 1e-6) return `${whole ? `${whole}-` : ''}${Math.round(n)}/${d}`;
  }
  return String(x);
}

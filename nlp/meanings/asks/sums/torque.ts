import { METRIC_COARSE, METRIC_FINE, UNC, UNF } from '../../../dimensions/thread/series.ts';
import type { SumKind } from './kind.ts';
import { pitched } from './pitched.ts';
import type { Given, Scope } from './scope.ts';
import { sizesInRow } from './sizes-in-row.ts';
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

const SURFACES: readonly [string, RegExp][] = [
  ['anti-seize', /\b(?:anti ?(?:seize|sieze|cease|seas)|anticeaze|never ?(?:seize|seez|sieze)|copper ?slip|copp?a ?slip|copper ?(?:grease|paste|ease|coat)|nickel (?:paste|grease))/],
  ['plated', /\b(?:(?:zinc|cad|cadmium|nickel)?(?: |-)?plated|zinc(?:ed)?|galv(?:anised|anized|y)?|plating|cad(?:mium)?(?: plated)?|plate on)\b/],
  ['waxed', /\bwax(?:ed)?\b/],
  ['oiled', /\b(?:oiled|oiling|oil(?:y)? (?:on )?(?:the )?(?:threads?)?|oil|lubed|lubricated|lube|lubricant|wet|greased|grease|oily|moly|molly|engine oil)\b/],
  ['dry', /\b(?:dry|no (?:oil|lube|lubricant)|unlubricated|un ?oiled|unlubed|bare|clean threads|without (?:oil|lube)|degreased)\b/],
];
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
/** "half inch coarse, sorry, three eighths": the thread that is taken back is not meant. */
const TAKEN_BACK = /\b(?:no|nope|sorry|scra(?:p|tch) that|forget|i mean|make that|rather)\b/;
const meant = <T extends { start: number; end: number }>(scope: Scope, threads: readonly T[]): T[] =>
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

function given(scope: Scope, prev?: Given): Given {
  const out: Given = {};
  const size = sizeIn(scope);
  if (size) { out.size = prev ? inSeries(size.size, prev.size) : size.size; scope.take(size.at); }
  else if (prev && loneFraction(scope)) out.size = inSeries(loneFraction(scope)!, prev.size);
  else { const other = prev && otherPitch(scope.text, prev.size); if (other) out.size = other; }
  const grade = gradesIn(scope.text).at(-1) ?? (prev ? bareGrade(scope) : undefined) ?? eightEight(scope, out.size);
  if (grade) { out.grade = grade.grade === '8' && typeof (out.size ?? prev?.size) === 'string' && /^M/.test(String(out.size ?? prev?.size)) ? '8.8' : grade.grade; scope.take({ start: scope.start + grade.at, end: scope.start + grade.at + 3 }); }
  const surface = surfaceIn(scope.text);
  if (surface) out.surface = surface;
  return out;
}
/** "M24, eight-eight": said twice it is a class, though a word said twice is else a slip of the tongue and kept once. */
function eightEight(scope: Scope, size: unknown): { grade: string; at: number } | undefined {
  const at = scope.text.search(/\beight\b/);
  return /^M/.test(String(size)) && at >= 0 && /\beight[- ]eight\b/i.test(scope.desk.sheet.text) ? { grade: '8.8', at } : undefined;
}
/** "And 5/16?": the diameter alone. */
function loneFraction(scope: Scope): string | undefined {
  const n = scope.numbers().find(f => /^\d+(?:[- ]\d+)?\/\d+$/.test(scope.desk.text.slice(f.start, f.end)));
  return n && fraction(n.value);
}
/** "same question for 3/4" after a 5/8 coarse: coarse too. */
function inSeries(size: string, before: unknown): string {
  const [d, pitch] = String(before).split(/-(?=\d+$)/), series = [UNC, UNF].find(s => d !== undefined && pitch !== undefined && String(s[d]) === pitch);
  return series?.[size] === undefined ? size : `${size}-${series[size]}`;
}
/** "and in fine?": the same diameter in the other series. */
function otherPitch(text: string, size: unknown): string | undefined {
  const series = /\b(coarse|fine|unc|unf)\b/.exec(text)?.[1], m = typeof size === 'string' ? /^(M?[\d/.#-]+?)(?:[x-][\d.]+)?$/.exec(size.replace(/-(?=[\d.]+$)/, 'x')) : undefined;
  if (!series || !m) return undefined;
  const fine = /^(?:fine|unf)$/.test(series), metric = m[1]!.startsWith('M'), pitch = metric ? (fine ? METRIC_FINE : METRIC_COARSE)[Number(m[1]!.slice(1))] : (fine ? UNF : UNC)[m[1]!];
  return pitch === undefined ? undefined : `${m[1]!}${metric ? 'x' : '-'}${pitch}`;
}
/** "and for an eight?" after a grade five: the grade. */
const bareGrade = (scope: Scope): { grade: string; at: number } | undefined => {
  const n = scope.numbers()[0];
  return n && [2, 5, 8].includes(n.value) ? { grade: String(n.value), at: n.start - scope.start } : undefined;
};

/** One question of several bolts in a row: each takes the grade and surface that follow it, else those said for all. */
function each(scope: Scope): Given[] {
  const threads = scope.here(meant(scope, scope.values('thread')).filter(t => !/\b(?:tap|die|drill) $/.test(scope.before(t)) && !/^ tap\b/.test(scope.after(t))));
  const row = threads.length < 2 ? sizesInRow(scope, fraction) : undefined;
  if (row) { const { size: _, ...rest } = given(scope); scope.take(row); return row.sizes.map(size => ({ size, ...rest })); }
  if (threads.length < 2) return bothWays(scope);
  const all = given(scope);
  return threads.map((t, i) => {
    const own = scope.desk.text.slice(t.end, threads[i + 1]?.start ?? scope.end);
    const grade = gradesIn(own)[0]?.grade ?? all.grade, surface = surfaceIn(own) ?? all.surface;
    scope.take(t);
    return { size: t.value.size, ...(grade ? { grade } : {}), ...(surface ? { surface } : {}) };
  });
}

/** "What do I pull them to dry, and what oiled?": one bolt, asked of in two ways, in their order. */
function bothWays(scope: Scope): Given[] {
  const [oiled, dry] = ['oiled', 'dry'].map(name => SURFACES.find(([s]) => s === name)![1].exec(scope.text)?.index ?? -1) as [number, number];
  if (oiled < 0 || dry < 0 || /\b(?:not|no|without|isnt|or) (?:the )?(?:oil|oiled|lubed|lube|dry|greased)\b/.test(scope.text)) return [];
  const all = given(scope);
  return all.size === undefined || all.grade === undefined ? [] : (oiled < dry ? ['oiled', 'dry'] : ['dry', 'oiled']).map(surface => ({ ...all, surface }));
}

export const TORQUE: SumKind = {
  of: 'torque',
  each,
  ask: [
    /(?:^|[.?!;] ?)(?:the )?torque(?= ?\.)/,
    /\b(?:whats|what is|what are|what|give me|need|find|tell me|work out|remind me|figure|get me|any idea|calculate|i want|ill want|how much|know|look up|is there|got)\b(?: (?:the|a|an|me|kind of|sort of|my|right|correct|proper|of|for|out|to|is|recommended|max|full|book|s|what|would be|should be|is it|do i|i|need|of the|about))* ?torques?\b(?! (?:wrench|rod|was|tube|arm|converter|did))/,
    /\b(?:what|how (?:tight|hard|much|many (?:ft|foot|newton|nm|pounds)[a-z -]*))(?: (?:do|should|shall|would|can|could|does|will|must|d|ll|are|is|to|torque|am|did you say|foot pounds|lb ft|newton metres|newton meters))*(?: (?:i|it|they|that|those|these|she|we|the [a-z]+(?: [a-z]+)?|you|one))* (?:\b(?:go|get|supposed|meant|need|have|want|to|safely|going) )*(?:pull|tighten|torque|do|nip|wind|crank|yank|snug|cinch|run|take|set|draw|bring|wrench|want|get|stand|need|torqued|tightened|pulled|done up|go)(?: (?:it|them|those|that|these|this|one|him|her|the [a-z]+(?: [a-z]+)?))?(?: (?:up|down|in|dry|oiled|to|at|tight))*(?= ?(?:$|[?.,]| and| with| if| for| when))/,
    /\bhow (?:tight|hard) (?:do|should|shall|would|can|must|will) (?:i|we|you) (?:do up|tighten|pull|nip up|torque|run|get|make|crank)\b/,
    /\b(?:torque|tightening torque|tightness)(?: (?:spec|figure|value|setting|number|for|on|please|needed|wanted|required|should|is|of))* ?(?=$|\?| (?:a|an|the|those|my|m ?[\d#]|\d|#))/,
    /\b(?:how many|what|the|whats the) (?:foot pounds?|ft ?lbs?|newton metres|nm|lb ft)(?: (?:for|on|do))(?= (?:a|an|the|my|five|half|three|seven|those|these|\d|m ?\d))/,
    /\bwhat (?:do|should|would|must) i (?:tighten|torque|pull|do up) (?:(?!\b(?:what|how)\b)[^.?!]){1,50}? to(?= ?(?:$|[?.,]| and\b))/,
    /\bwhat(?:s|ll| (?:do|does|should|are|is|would|will)) (?:(?!\b(?:what|how|to)\b)[^.?!]){1,48}?,? (?:pull|torque|tighten|go) (?:up )?to\b(?! (?:the|a|work|town|get|make))/,
    /\b(?:newton met(?:re|er)s|foot pounds),? please\b|\b(?:what|how many) (?:newton met(?:re|er)s|foot pounds|ft ?lbs?|nm)(?= ?(?:$|[?.,]| for (?:an? |the |my )?(?:m ?#|#)))/,
    /\bwhat (?:do|does|should|are|is|would|will) [^.?!,]{1,44}? (?:get |be |being |supposed to be |meant to be |need to be |to be )?(?:torqued?|tightened?|pulled|done up|tighten|nipped|pull) (?:(?:down|up|in) )?to\b/,
    /\bwhat (?:should|does|will) (?:the |my )?(?:torque )?wrench (?:say|read|be set)/,
    /\bwhatll (?:they|it|that|those|these|the [a-z]+) (?:take|want|stand|pull(?: to)?|go to)(?= ?(?:$|[?.,]))|\bwhat (?:do|does|will|would) [^.?!]{0,30}\b(?:make|get|pull) [^.?!]{0,30}\btight\b|(?:^|[.?!,;] )(?:the )?(?:number|figure|torques?),? (?:please|if you please)\b/,
    /\bwhat (?:would|will|is|does|do|should) (?:that|it|this|they|those|these)(?: (?:be|want|need|take|get|go to))? (?:then )?(?:if )?(?:(?:its|theyre|i) )?(?:dry|oiled|plated|lubed|greased|waxed|with (?:oil|anti ?seize|copper ?slip|the oil|grease|moly))\b/,
    /\bwhats (?:it|that|this|she|they|that one|one of those|those) (?:want|take|get|need|pull(?:ed)? to|tighten to|go to|torque(?: to)?)(?: to)?\b/,
  ],
  unless: /\b(?:what (?:can|could|should|shall|do|would) i do(?= ?(?:$|[?.,;]|now|next|first|today|in|inside|while|with|about))|to (?:break|snap|shear|fail)|what was|what were|did i (?:torque|do|pull|set|tighten)|had i|whatd i|torque was|(?:was|were) (?:it |they |that )?torqued|before i (?:took|pulled)|convert|torqued (?:the|it|them) to)\b/,
  given,
  needs: ['size', 'grade', 'surface'],
  telling: [['size', 'grade']],
  wants: ['size', 'grade'],
};

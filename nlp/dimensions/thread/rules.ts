import type { ThreadValue } from '../../types.ts';
import type { Num } from '../number/num.ts';
import { N, type Piece, type Rule, type Slate, runRules } from '../rule.ts';
import { BSF, BSW, METRIC_COARSE, METRIC_FINE, UNC, UNF, knownPitch, seriesOf } from './series.ts';

const rx = (s: string): RegExp => new RegExp(s, 'g');
const INCH = String.raw`(?: ?(?:inch(?:es)?|in\.?|"))?`;
const SERIES = String.raw`(coarse|course|fine|unc|unf|un c|un f|u n c|u n f|nc|nf|n c|n f|national coarse|national fine|american coarse|american fine|sae|uss|bsw|bsf|whit|whits|whitworth|british standard fine|british fine)\b`;

/** The diameter as a thread writes it: "3/4", "1", "1-1/4", "#10"; undefined when no bolt has it. */
function diameter(n: Num, numbered: boolean): string | undefined {
  if (n.form === 'fraction' && n.frac && n.frac[1] <= 32) return lowest(n.frac[0], n.frac[1]);
  if (n.form === 'mixed' && n.frac) return `${n.whole}-${lowest(n.frac[0], n.frac[1])}`;
  if (n.form === 'digits' && !Number.isInteger(n.value)) return decimal(n.value);
  if (!Number.isInteger(n.value)) return undefined;
  return numbered ? `#${n.value}` : String(n.value);
}
function lowest(a: number, b: number): string {
  const g = (x: number, y: number): number => y ? g(y, x % y) : x, d = g(a, b);
  return `${a / d}/${b / d}`;
}
const decimal = (x: number): string | undefined => { const n = x * 16; return x < 1 && Number.isInteger(n) ? lowest(n, 16) : undefined; };

const pitched = (d: string | undefined, tpi: number): ThreadValue | undefined => {
  if (!d || !knownPitch(d, tpi)) return undefined;
  const series = seriesOf(d, tpi);
  return { size: `${d.replace('#', '')}-${tpi}`, ...(series ? { series } : {}) };
};

function inSeries(n: Num | undefined, word: string): ThreadValue | undefined {
  if (!n) return undefined;
  const table = /whit|bsw/.test(word) ? BSW : /bsf|british/.test(word) ? BSF : /f$|fine|sae/.test(word.replace(/ /g, '')) ? UNF : UNC;
  const numbered = Number.isInteger(n.value) && n.value > 2 && n.value <= 12;
  const d = diameter(n, numbered), tpi = d && table[d];
  if (!d || !tpi) return undefined;
  const series = table === UNC ? 'coarse' as const : table === UNF ? 'fine' as const : undefined;
  return { size: `${d.replace('#', '')}-${tpi}`, ...(series ? { series } : {}) };
}

/** "5/8-11", "10-24"; a bare "1-8" is a range unless a series is named. */
function dashed(d: Num, p: Num, text: string): ThreadValue | undefined {
  if (d.frac) return pitched(diameter(d, false), p.value);
  if (d.value <= 2) return /[a-z]$/.test(text) ? pitched(diameter(d, false), p.value) : undefined;
  return pitched(diameter(d, true), p.value);
}

/** Metric pitch as said: 1.25, "one seventy five" is 1.75, "one point five". */
const pitchValue = (n: Num): number => n.pair && n.pair[0] < 7 ? n.pair[0] + n.pair[1] / 100 : n.value;
const metricPitched = (d: number, p: number): ThreadValue | undefined =>
  d >= 1 && d <= 64 && p >= 0.2 && p <= 6 && p < d ? { size: `M${d}x${p}`, ...(METRIC_COARSE[d] === p ? { series: 'coarse' as const } : METRIC_FINE[d] === p ? { series: 'fine' as const } : {}) } : undefined;

const M = String.raw`(?<![a-z0-9])(?:m|em)[ -]?`;
const RULES: Rule<'thread'>[] = [
  { name: 'M# by #', pattern: rx(`${M}${N} ?(?:x|by|times|-|pitch)? ?${N}(?! ?(?:bolt|nut|stud|screw|of\\b))`),
    make: (m, [d, p]) => d && p && (/(?:x|by|times|-|pitch) ?#~*$/.test(m[0]) || [METRIC_COARSE[d.value], METRIC_FINE[d.value]].includes(pitchValue(p))) ? metricPitched(d.value, pitchValue(p)) : undefined },
  { name: 'M# coarse', pattern: rx(`${M}${N}(?: by)? (coarse|course|fine|standard)`),
    make: (m, [d]) => { const p = d && (m[2] === 'fine' ? METRIC_FINE : METRIC_COARSE)[d.value]; return p ? metricPitched(d.value, p) : undefined; } },
  { name: 'M# # pitch', pattern: rx(`${M}${N} (?:with (?:a )?|in |on )?${N} pitch`), make: (_m, [d, p]) => d && p && metricPitched(d.value, pitchValue(p)) },
  { name: 'M#', pattern: rx(`(?<![a-z0-9])m ?${N}(?![a-z])`), make: (_m, [d]) => d && d.value in METRIC_COARSE && d.form === 'digits' ? { size: `M${d.value}` } : undefined },
  { name: 'M# in words', sure: 'implied', pattern: rx(`(?<![a-z0-9])(?:m|em) ${N}`), make: (_m, [d]) => d && d.value in METRIC_COARSE && d.form === 'words' ? { size: `M${d.value}` } : undefined },
  { name: '#-#', pattern: rx(`(?:№ ?|\\bno\\.? |\\bnumber )?${N}(?:-| ?x ?| by | dash )${N}(?:-[0-9][ab])?${INCH}(?: ?(?:tpi|unc|unf|bsw|bsf|nc|nf|coarse|fine|thread)\\b)?`),
    make: (m, [d, p]) => d && p && Number.isInteger(p.value) ? dashed(d, p, m[0]) : undefined },
  { name: '# INCH #', pattern: rx(`${N}${INCH},? ${N}(?: ?(?:tpi|unc|unf|bsw|bsf|nc|nf|threads?)\\b)?(?![ ]?(?:foot|feet|inch|"|mm|lb|pound|volt|amp|hour|bolts|nuts|of\\b))`),
    make: (_m, [d, p]) => d?.frac && p && Number.isInteger(p.value) && !p.frac ? pitched(diameter(d, false), p.value) : undefined },
  { name: '# SERIES', pattern: rx(`(?<!-)(?<!\\b(?:grade|gr|class) ?)(?:№ ?|\\bnumber )?${N}${INCH}(?: (?:by|bolt|bolts|stud|studs|nut|cap ?screw|cap ?screws|tap|thread|threads|size|is|in|diameter|(?:grade|gr|class) #~*(?!~)))?,? ${SERIES}`), make: (m, [d]) => inSeries(d, m[2]!) },
  { name: 'an inch SERIES', pattern: rx(String.raw`(?:an |one )?inch(?: and (#~*(?!~)))?,? ` + SERIES),
    make: (m, [p]) => inSeries(p ? { ...p, form: 'mixed', whole: 1, value: 1 + p.value } : one(), m[2]!) },
  { name: 'one inch #', pattern: rx(String.raw`(?:${N}|\ban|\bone) ?(?:inch|in\.?|") ${N}(?! ?(?:mm|inch|foot|feet|"|pulley|thou|lb|pound|volt|amp|hour|min|degree|percent|gauge|long|wide|bolts|nuts|of\b))`),
    make: (m, nums) => { const p = nums.at(-1)!, d = nums.length > 1 ? nums[0]! : one(); return d.value === 1 && d.form !== 'fraction' && (p.value === 8 || p.value === 12 || p.value === 14) && !p.frac && !/\d$/.test(m[0]) ? pitched('1', p.value) : undefined; } },
  { name: 'SERIES # INCH', pattern: rx(String.raw`\b(coarse|fine|unc|unf|whitworth)(?: thread)? ${N}${INCH}(?: bolt)`), make: (m, [d]) => inSeries(d, m[1]!) },
  { name: 'number # #', pattern: rx(`(?:№ ?|\\bnumber )${N}`), make: (_m, [d]) => d?.pair ? pitched(`#${d.pair[0]}`, d.pair[1]) : undefined },
  { name: '#pair', pattern: rx(N), make: (_m, [d]) => d?.pair && [4, 5, 6, 8, 10, 12].includes(d.pair[0]) ? pitched(`#${d.pair[0]}`, d.pair[1]) : undefined, sure: 'implied' },
  { name: 'misheard #-#', sure: 'implied', pattern: rx(`${N}-${N}(?:ths?)?${INCH} ?(?:${SERIES}|${N}(?! ?[a-z]))`),
    make: (m, nums) => misheard(m, nums) },
];
const one = (): Num => ({ start: 0, end: 0, value: 1, form: 'digits' });

/** A recogniser writes five eighths as "5-8" or "5-8th". */
function misheard(m: RegExpExecArray, nums: Num[]): ThreadValue | undefined {
  const [a, b, c] = nums;
  if (!a || !b || a.frac || b.frac || ![2, 4, 8, 16].includes(b.value) || a.value >= b.value) return undefined;
  const d: Num = { ...a, form: 'fraction', frac: [a.value, b.value], value: a.value / b.value };
  return m[3] ? inSeries(d, m[3]) : c ? pitched(diameter(d, false), c.value) : undefined;
}

export const threadPieces = (slate: Slate): Piece<'thread'>[] => runRules('thread', RULES, slate);

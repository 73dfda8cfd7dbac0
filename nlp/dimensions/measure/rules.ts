import type { MeasureValue } from '../../types.ts';
import type { Num } from '../number/num.ts';
import { N, type Piece, type Rule, type Slate, runRules } from '../rule.ts';
import { UNIT, inContract, tidy, unitOf } from './units.ts';

const rx = (s: string): RegExp => new RegExp(s, 'g');
const about = (n: Num | undefined): { about?: true } => n?.about ? { about: true } : {};
const of = (value: number, unit: string | undefined, n?: Num): MeasureValue | undefined => unit ? { ...inContract(tidy(value), unit), ...about(n) } : undefined;

/** The end of a unit's reach: "in" written short is a unit only where it cannot be the preposition. */
const SHORT_IN = String.raw`in\.?(?= ?(?:$|[,.;:?!)x=]|dia|bore|long|wide|thick|deep|od\b|id\b|cent|pulley|sheave|belt|by\b|and\b|flywheel|hub|shaft|wheel|pipe|pitch|plate|bolt|stud|coarse|fine|unc|unf|grade|gr\b|crank|driv|on\b|to\b|from\b|both(?= ?(?:$|[,.;?]))|sch|round|rod|bar\b|drum))`;

const RULES: Rule<'measure'>[] = [
  { name: '#in', pattern: rx(`${N}in(?= [a-z])`), make: (_m, [n]) => n && n.form === 'digits' ? of(n.value, 'in', n) : undefined },
  { name: '#.# in', pattern: rx(String.raw`${N} ?in\.?(?= (?:at|across|over|under|off|end|wear|worn|gap|clearance|play|float|runout|interference|all|oversize|undersize|squeeze|taper|max|min|total|clear|proud|low|high|shy)\b)`), make: (_m, [n]) => n && n.form === 'digits' && !Number.isInteger(n.value) ? of(n.value, 'in', n) : undefined }, // ".006 in at the big end"
  { name: '# UNIT', pattern: rx(`${N} ?(?:of an? |an? )?(${UNIT}|${SHORT_IN})`),
    make: (m, [n], slate) => n && plain(m, n, slate) },
  // Written short a metre and a litre are letters that mean more: "4 m of hose" is an amount of it, "3 L 4 R" are sides.
  { name: '# m', pattern: rx(`${N} ?m(?![a-z0-9'#])(?! ?(?:of\\b|bolt|stud|nut|thread|coarse|fine|[x@]))`), make: (_m, [n]) => n && n.form === 'digits' ? of(n.value, 'm', n) : undefined },
  { name: '# L', pattern: rx(`${N} ?l(?![a-z0-9'#])`), make: (m, [n], slate) => n && n.form === 'digits' && (!Number.isInteger(n.value) || /^ ?(?:$|[.,;?!])/.test(slate.line.text.slice(m.index + m[0].length))) ? of(n.value, 'L', n) : undefined },
  { name: '# A', pattern: rx(`${N} ?a(?![a-z0-9'#.])(?! ?(?:day|week|month|year|side|time|piece|pair|set|tin|box|foot|yard|pound|go)\\b)`), make: (m, [n], slate) => n && n.form === 'digits' && endsIn(m, slate, 'A') ? of(n.value, 'A', n) : undefined },
  { name: '# g', pattern: rx(`${N} ?g(?![a-z0-9'#])`), make: (m, [n], slate) => n && n.form === 'digits' && endsIn(m, slate, 'g') ? of(n.value, 'g', n) : undefined },
  { name: '# foot # (inches)', pattern: rx(String.raw`${N} ?(?:foot|feet|ft\.?|') ?(?:and )?${N}(?: ?(?:inch(?:es)?|ins?\.?|"))?(?![a-z ]*(?:gauge|ga\b|gage|amps?|volts?|lb|pound|of\b|feet|foot|ft))`),
    make: (m, [a, b]) => a && b && b.value < 12 && !/^(?:' ?)?$/.test(m[0]) && footInch(m[0]) ? { value: tidy(a.value + b.value / 12), unit: 'ft', ...about(a) } : undefined },
  { name: '# inches and # thou', pattern: rx(String.raw`(?:${N}|an?) ?inch(?:es)? ?(?:and |plus )?${N} ?(?:thou|thous|thousandths?|thousands)(?![a-z])(?! ?(?:of )?(?:interference|tight|press|shrink|nip|loose|clearance|end ?play|squeeze))`),
    make: (m, nums) => { const small = nums.at(-1)!; if (!/ (?:and|plus) /.test(m[0]) && nums.length > 1 && !Number.isInteger(nums[0]!.value)) return undefined; return of((nums.length > 1 ? nums[0]!.value : 1) + small.value / 1000, 'in', nums[0]); } },
  { name: '# less # thou', pattern: rx(String.raw`${N} ?(?:inch(?:es)? )?(less|minus|plus) ${N} ?(?:thou|thous|thousandths?)(?![a-z])`),
    make: (m, [a, b]) => a && b && a.value >= 0.2 ? of(a.value + (m[2] === 'plus' ? b.value : -b.value) / 1000, 'in', a) : undefined },
  { name: 'inch and # less # thou', pattern: rx(String.raw`(?:(?:an? |one )|${N} ?)inch(?:es)? and ${N} (less|minus|plus) ${N}(?: ?(?:thou|thous|thousandths?))?(?![a-z])`),
    make: (m, nums) => { const [part, small] = nums.slice(-2), whole = nums.length > 2 ? nums[0]!.value : 1; return part?.frac && part.value < 1 && small && smallThou(m[0], small) ? of(whole + part.value + (/ plus /.test(m[0]) ? small.value : -small.value) / 1000, 'in') : undefined; } },
  { name: '# and a half less #', sure: 'implied', pattern: rx(String.raw`${N} ?(?:inch(?:es)? )?(less|minus|plus) ${N}(?![a-z ]*(?:inch|mm|foot|feet))`), // "a quarter less four"
    make: (m, [a, b]) => a?.frac && b && smallThou(m[0], b) ? of(a.value + (m[2] === 'plus' ? b.value : -b.value) / 1000, 'in', a) : undefined },
  { name: '# thou under #', pattern: rx(String.raw`${N} ?(?:thou|thous|thousandths?) (?:under|shy of|short of|below|less than|off) ${N}(?: ?inch(?:es)?)?(?![a-z0-9])(?! ?(?:thou|mm|foot|feet|ft|of))`),
    make: (_m, [a, b]) => a && b && b.value >= 0.2 && b.value < 40 ? of(b.value - a.value / 1000, 'in', a) : undefined },
  { name: '# thou and # tenths', pattern: rx(String.raw`${N} ?(?:thou|thous|thousandths?)(?: and)? ${N}(?! ?of)(?![a-z])`),
    make: (_m, [a, b]) => a && b?.frac?.[1] === 10 ? of(a.value / 1000 + b.value / 1000, 'in', a) : undefined },
  { name: 'inch and #', pattern: rx(String.raw`(?:(?:an? |one )|#~* ?)?(inch(?:es)?|foot|thou|thousandth|mil|mill|yard|gallon|quart|litre|liter|turn) and ${N}(?! ?(?:thou|inch|of an? (?:inch|thou|mil)))(?![a-z])`),
    make: (m, nums) => andPart(m, nums) },
  { name: '# by a unit: # to # UNIT', pattern: rx(`(?:between )?${N} ?(?:to|or|-|and|through) ?${N} ?(${UNIT})`),
    make: (m, [a, b]) => a && b && range(m, a, b) },
  { name: '# degrees F or C', pattern: rx(String.raw`(minus |negative |-)?${N} ?(?:degrees? ?|deg\.? ?|degs ?|° ?)?(fahrenheit|farenheit|farenheight|fahrenheight|celsius|celcius|celsuis|centigrade|[cf](?![a-z]))`),
    make: (m, [n]) => n && temperature(n, m[1], m[3]!, m[0]) },
  { name: '# below', pattern: rx(String.raw`${N} ?(?:degrees? |deg |° ?)?(?:below(?: zero| freezing| #~*(?!~))?|under (?:zero|#~*(?!~)))(?:[, ]+(fahrenheit|farenheit|celsius|centigrade|[cf](?![a-z])))?`),
    make: (m, [n]) => n && !/freezing/.test(m[0]) ? { value: -n.value, unit: m[2] ? degree(m[2]) : '°', ...about(n) } : undefined },
  { name: 'minus # degrees', pattern: rx(String.raw`(?:minus |negative |(?<![\w~])-)${N} ?(?:degrees?|deg|°)(?! ?[cf](?![a-z]))(?! ?(?:fahr|cel|cent|far))`),
    make: (_m, [n]) => n && { value: -n.value, unit: '°' } },
  { name: 'a UNIT', sure: 'implied', pattern: rx(String.raw`\b(?:a|an) (inch|thou|mil|foot|quart|gallon|litre|liter|pint)(?! and [#])(?![a-z])`),
    make: m => of(1, unitOf(m[1]!)) },
  { name: '#-thousandths run together', pattern: rx(`${N} ?ths?(?![a-z])`),
    make: (_m, [n]) => n && n.form === 'digits' && n.value >= 1000 && n.value % 500 === 0 ? of(n.value / 1000, 'thou') : undefined },
  { name: '#/64 alone', sure: 'implied', pattern: rx(N),
    make: (_m, [n]) => n?.frac && [8, 16, 32, 64].includes(n.frac[1]) ? of(n.value, 'in', n) : n?.frac?.[1] === 10 && n.whole === undefined ? of(n.value, 'thou', n) : undefined },
];

/** Whether a stretch ends in a letter as it was written: "9 A" are amperes, "G" is no gram. */
const endsIn = (m: RegExpExecArray, { line }: Slate, letter: string): boolean => line.tokens[line.tokenAt[m.index + m[0].length - 1]!]!.text.endsWith(letter);

/** So many thousandths on top of an inch figure, or short of it: said so, or a small whole number. */
const smallThou = (said: string, n: Num): boolean => / ?(?:thou|thous|thousandths?)$/.test(said) ? n.value < 100 : Number.isInteger(n.value) && n.value >= 1 && n.value <= 60 && n.form === 'words';

/** One number and its unit. A letter for a unit is one only when written against the figure or as a capital. */
function plain(m: RegExpExecArray, n: Num, slate: Slate): MeasureValue | undefined {
  const written = m[2]!.trim();
  const unit = /^in\.?$/.test(written) ? 'in' : unitOf(written);
  if (/^in\.?$/.test(written) && n.form === 'words') return undefined;
  if (written.length === 1 && /[a-z]/.test(written) && n.form === 'words') return undefined;
  if (/^(?:'|")$/.test(written) && n.form === 'words') return undefined;
  if (/\bof an? |\ban? /.test(m[0].slice(n.end - n.start, m[0].length - written.length)) && !n.frac && n.value >= 1) return undefined;
  if (unit === 'thou' && n.frac?.[1] === 10 && / of /.test(m[0])) return of(n.value, 'thou', n);
  if (unit === 'tpi' && written === 'threads' && n.value < 3) return undefined;
  if (unit === '°' && m.index > 0 && /(?:minus |negative |-)$/.test(slate.mask.slice(0, m.index))) return undefined;
  return of(n.value, unit, n);
}

/** "ten foot six": the second number is inches only when it says so or is a plain number after whole feet. */
const footInch = (text: string): boolean => !/[,]/.test(text);

function andPart(m: RegExpExecArray, nums: Num[]): MeasureValue | undefined {
  const part = nums.at(-1)!, unit = unitOf(m[1]!);
  if (!part.frac || part.value >= 1 || part.whole !== undefined) return undefined;
  const whole = nums.length > 1 ? nums[0]!.value : 1;
  return Number.isInteger(whole) ? of(whole + part.value, unit, nums.length > 1 ? nums[0] : undefined) : undefined;
}

function range(m: RegExpExecArray, a: Num, b: Num): MeasureValue | undefined {
  const unit = unitOf(m[3]!.trim());
  if (!unit || b.value <= a.value || (/ and /.test(m[0]) && !/^between/.test(m[0])) || a.frac?.[0] === a.value) return undefined;
  if (a.form === 'digits' && /-/.test(m[0]) && b.frac) return undefined;
  const low = inContract(a.value, unit);
  return { ...low, to: inContract(b.value, unit).value, ...about(a) };
}

const degree = (word: string): string => /^f/.test(word) ? '°F' : '°C';

function temperature(n: Num, minus: string | undefined, word: string, all: string): MeasureValue | undefined {
  const letter = word.length === 1;
  if (letter && n.form === 'words' && !/deg|°/.test(all)) return undefined;
  return { value: minus ? -n.value : n.value, unit: degree(word), ...about(n) };
}

export const measurePieces = (slate: Slate): Piece<'measure'>[] => runRules('measure', RULES, slate);

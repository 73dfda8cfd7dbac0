import type { SpanValue } from '../../types.ts';
import { tidy } from '../measure/units.ts';
import { N, type Piece, type Rule, type Slate, runRules } from '../rule.ts';

const UNITS: readonly [SpanValue['unit'], string][] = [
  ['minutes', 'minutes?|mins?|minuets?'], ['hours', 'hours?|hrs?|hr|h'], ['days', 'days?'], ['weeks', 'weeks?|wks?|wk'],
  ['months', 'months?|mths?|mos?'], ['years', 'years?|yrs?'], ['miles', 'miles?|mi'],
];
const UNIT = `(${UNITS.map(([, w]) => w).join('|')})(?![a-z]|(?<=h)\\d)`;
const unitOf = (w: string): SpanValue['unit'] => UNITS.find(([, re]) => new RegExp(`^(?:${re})$`).test(w))![0];
const rx = (s: string): RegExp => new RegExp(s, 'g');
const of = (amount: number, unit: SpanValue['unit']): SpanValue => ({ amount: tidy(amount), unit });

const RULES: Rule<'span'>[] = [
  { name: '# UNIT', pattern: rx(`${N} ?(?:of an? |an? |more |working |business |calendar |solid |full )?${UNIT}(?! (?:an|per) hour)`),
    make: (m, [n]) => n && (!/ (?:of )?an? /.test(m[0]) || n.frac) && !(m[2] === 'h' && n.form === 'words') ? of(n.value, unitOf(m[2]!)) : undefined },
  { name: 'UNIT and #', pattern: rx(String.raw`(?:(?:an? |one )|${N} ?)?(hour|hours|hr|hrs|day|days|week|weeks|month|year|mile) an[d']? ${N}(?! ?(?:min|hour|day|week|mile|inch|thou|coat|of\b|foot|feet|pound|more|the))`),
    make: (m, nums) => { const part = nums.at(-1)!, whole = nums.length > 1 ? nums[0]!.value : 1; return part.frac && part.value < 1 ? of(whole + part.value, unitOf(m[2]!)) : undefined; } },
  { name: 'hours and minutes', pattern: rx(String.raw`(?:(?:an? |one )|${N} ?)(?:hours?|hrs?|h) ?(?:and )?${N} ?(?:minutes?|mins?|m(?![a-z]))`),
    make: (_m, nums) => of((nums.length > 1 ? nums[0]!.value : 1) + nums.at(-1)!.value / 60, 'hours') },
  { name: '#h##', pattern: rx(`${N} ?h ?${N}(?:m|mins?)?(?![a-z])`), make: (_m, [h, m]) => h && m && m.form === 'digits' && Number.isInteger(m.value) && m.value < 60 ? of(h.value + m.value / 60, 'hours') : undefined },
  { name: 'an hour and #', sure: 'implied', pattern: rx(String.raw`\b(?:an |one )hour (?:and )?${N}(?= (?:on|at|in|into)\b)`),
    make: (_m, nums) => { const n = nums.at(-1)!; return !n.frac && n.value >= 5 && n.value < 60 && n.value % 5 === 0 ? of(1 + n.value / 60, 'hours') : undefined; } },
  { name: 'an hour #', sure: 'implied', pattern: rx(String.raw`(?:(?:an |one )|${N} ?)hours? ${N}(?! ?(?!(?:i|on|at|in|and|all|today|for)\b)[a-z"'])`),
    make: (_m, nums) => { const m = nums.at(-1)!; return !m.frac && m.value >= 5 && m.value < 60 && m.value % 5 === 0 ? of((nums.length > 1 ? nums[0]!.value : 1) + m.value / 60, 'hours') : undefined; } },
  { name: 'a UNIT', pattern: rx(String.raw`\b(?:an|a|one) (minute|hour|day|week|month|year|hr|wk)(?! and #)(?![a-z])`), sure: 'implied', make: m => of(1, unitOf(m[1]!)) },
  { name: 'a half hour', pattern: rx(String.raw`${N}(?: an?)? (hour|day)(?![a-z])`), make: (m, [n]) => n?.frac ? of(n.value, unitOf(m[2]!)) : undefined },
  { name: 'a fortnight', pattern: rx(String.raw`(?:(?:an?|the|one) |${N} )?fortnights?`), make: (_m, [n]) => of((n?.value ?? 1) * 2, 'weeks') },
  { name: 'a couple of UNIT', sure: 'implied', pattern: rx(String.raw`\b(?:a )?couple (?:of |o )?(?:more )?${UNIT}`), make: m => of(2, unitOf(m[1]!)) },
  { name: 'a couple of hours and a half', sure: 'implied', pattern: rx(String.raw`\b(?:an?|the) (?:odd )?couple hours`), make: () => of(2, 'hours') },
];

/** "two and a half hours", "half an hour", "a fortnight", "three weeks", "50 miles". Vague lengths ("most of the morning", "a while") are none. */
export const spanPieces = (slate: Slate): Piece<'span'>[] => runRules('span', RULES, slate);

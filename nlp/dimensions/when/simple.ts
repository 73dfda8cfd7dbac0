import { mayMatch } from '../../text/pattern-index.ts';
import { dated, endOf, firstToLast, month, ofMonth, period } from './dates.ts';
import { one, rx, type DayRule } from './day-rule.ts';
import { addMonths, civil, dayNumber, dayOf, monday, monthLength } from './days.ts';
import { FEASTS } from './feasts.ts';
import { weekdayDated, weekdayNamed, weekdayOfMonth, weekend } from './weekdays.ts';
import { MONTH, MONTHS, ORD, WD, WEEKDAYS, ordinal } from './words.ts';
import { table } from '../../words/table.ts';

/** Which way an open choice goes: to what is coming, or back to what is gone. */
export type Direction = 'forward' | 'past';
/** A day or days that a phrase of its own names; characters [start, end) of the line, days as whole numbers. */
export interface DaySpan { start: number; end: number; from: number; to: number; rule: string; weekday?: boolean; open?: boolean }

const PART = String.raw`(?: (?:morning|mornin|afternoon|arvo|aft|evening|night|lunch ?time|dinner ?time|first thing|noon|midday|early)(?![a-z]))?`;
const COUNT = String.raw`(an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\d{1,3}|a couple(?: of| o)?|couple(?: of)?)`;
const NUMBERS: Record<string, number> = table({ a: 1, an: 1, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, eleven: 11, twelve: 12 });
const count = (w: string): number => /couple/.test(w) ? 2 : NUMBERS[w] ?? Number(w);

/** So many days, weeks, months or years on. */
function later(today: number, n: number, unit: string): number {
  if (/^day/.test(unit)) return today + n;
  if (/^(?:week|wk)/.test(unit)) return today + 7 * n;
  if (/^fortnight/.test(unit)) return today + 14 * n;
  return addMonths(today, /^year/.test(unit) ? 12 * n : n);
}

const UNIT = '(days?|weeks?|wks?|fortnights?|months?|years?)(?![a-z])';
const AFTER_ORD = String.raw`(?= ?(?:$|[,.;:?!)]|(?:and|or|but|so|if|for|to|with|when|then|at|in|on|they|he|she|it|i|we|his|her|my|their|hes|shes|theyre|im|ill|latest|maybe|of|morning|is|was|though|he|says|said|unless|because|cause|till|until|what|where|how|who|whats|wheres|did|after|before|now|again|from|by|ish|the|instead)\b|not (?:on |for )?(?:the )?${ORD} ?(?:$|[,.;:]|(?:for|he|she|they|i|like|as)\b)))`;

/** Every phrase that names a day or days by itself. */
const RULES: readonly DayRule[] = [
  { name: 'today', pattern: rx(String.raw`\b(?:today|to day|tonight|tonite|this (?:morning|mornin|afternoon|arvo|aft|evening)|this very day)(?![a-z])`), days: s => one(s.today) },
  { name: 'now', pattern: rx(String.raw`(?<=\bfrom )now(?= (?:to|till|until|til|through|thru|while|right through|up to)\b)`), days: s => one(s.today) },
  { name: 'tomorrow', pattern: rx(String.raw`\b(?:tomorrow|tomorow|tommorow|tommorrow|tomorro|tmrw|tmw|tmrrw|tomoz|2moro|the morrow|the morra|the morn(?! of))s?${PART}(?![a-z])`), days: s => one(s.today + 1) },
  { name: 'till morning', pattern: rx(String.raw`(?<=\b(?:till|until|til|'til|before) )(?:the )?(?:morning|mornin|morn)(?![a-z'])`), days: s => one(s.today + 1) },
  { name: 'yesterday', pattern: rx(String.raw`\b(?:yesterday|yesterdays|yday|yest)${PART}(?![a-z])|\blast night\b`), days: s => one(s.today - 1) },
  { name: 'day after tomorrow', pattern: rx(String.raw`\b(?:the )?day after tom+or+ows?${PART}`), days: s => one(s.today + 2) },
  { name: 'day before yesterday', pattern: rx(String.raw`\b(?:the )?day before yesterday`), days: s => one(s.today - 2) },
  { name: 'WEEKDAY', pattern: rx(String.raw`(?<![a-z])(?:(this coming|this|next|last|coming) )?(${WD})(?: (week|fortnight|next|coming|gone|last|just gone)(?![a-z]))?${PART}`), days: weekdayNamed },
  { name: 'WEEKDAY the ORDINAL', pattern: rx(String.raw`(?<![a-z])(?:this |next |coming )?(${WD}),?(?: the)? (${ORD})(?! of\b)(?! ?${MONTH})`), days: weekdayDated },
  { name: 'which WEEKDAY of a month', pattern: rx(String.raw`\b(?:the )?(${ORD}|last) (${WD}|week ?end) (?:of|in) ((?:the|this|next) month|${MONTH})`), days: weekdayOfMonth },
  { name: 'WEEKDAY of a week', pattern: rx(String.raw`\b(?:(${WD}),? (?:of |in )?(?:the )?(next|this|following|coming) week|(next|this) week,? (?:on )?(${WD}))(?![a-z])`),
    days: s => { const name = s.m[1] ?? s.m[4]!; return one(monday(s.today) + (/this/.test(s.m[2] ?? s.m[3]!) ? 0 : 7) + WEEKDAYS[name]!); } },
  { name: 'weekend', pattern: rx(String.raw`\b(?:(?:this|next|last|the|coming|all) )*(?:week ?end|wkend)s?(?: (?:gone|coming))?(?![a-z])`), days: weekend },
  { name: 'WHICH week', pattern: rx(String.raw`\b(?:the )?(this|next|last|coming|following) (week|month|year)(?![a-z])`), days: period },
  { name: 'the rest of the week', pattern: rx(String.raw`\b(?:the )?rest of (?:the|this) week`), days: s => [s.today, monday(s.today) + 6] },
  { name: 'the week after next', pattern: rx(String.raw`\b(?:the )?week after next`), days: s => [monday(s.today) + 14, monday(s.today) + 20] },
  { name: 'end of month', pattern: rx(String.raw`\b(?:(?:the )?(?:very )?end of (?:the|this|next) (?:month|week|year)|(?:the )?end (?:of )?${MONTH}|months? end|(?:the )?last day of (?:the|this|next) month|(?:the )?end of month)`), days: endOf },
  { name: 'start of next', pattern: rx(String.raw`\b(?:the )?(?:start|beginning|first) of next (week|month)`),
    days: s => s.m[1] === 'week' ? one(monday(s.today) + 7) : one(dayNumber(civil(s.today).y, civil(s.today).m + 1, 1)) },
  { name: 'start of this', pattern: rx(String.raw`\b(?:the )?(?:very )?(?:start|beginning) of (?:the|this) (week|month|year)`),
    days: s => { const { y, m } = civil(s.today); return one(s.m[1] === 'week' ? monday(s.today) : dayNumber(y, s.m[1] === 'year' ? 1 : m, 1)); } },
  { name: 'the ORDINAL of next month', pattern: rx(String.raw`\b(?:the )?(${ORD}) of (this|the|next|last) month`),
    days: s => { const { y, m } = civil(s.today), k = s.m[2] === 'next' ? 1 : s.m[2] === 'last' ? -1 : 0, f = civil(dayNumber(y, m + k, 1)); return ordinal(s.m[1]!) <= monthLength(f.y, f.m) ? one(dayNumber(f.y, f.m, ordinal(s.m[1]!))) : undefined; } },
  { name: 'the ORDINAL', pattern: rx(String.raw`\bthe (${ORD})${AFTER_ORD}`),
    days: s => ordinal(s.m[1]!) <= 3 && !/\d/.test(s.m[1]!) && !/\b(?:on|by|till|til|until|since|from|between|before|through|to|thru|for|due|its|is|now|here|says|said|saying|back|about|around|come) $/.test(s.line.slice(0, s.m.index)) ? undefined : ofMonth(ordinal(s.m[1]!), s.today, s.dir) },
  { name: 'bare #th', pattern: rx(String.raw`(?<=\b(?:on|by|till|until|til|due|since|from|before|expected|eta|here) )(\d{1,2} ?(?:st|nd|rd|th))${AFTER_ORD}`), days: s => ofMonth(ordinal(s.m[1]!), s.today, s.dir) },
  { name: '# to # MONTH', pattern: rx(String.raw`(?<=\b(between|from) )(?:the )?(${ORD}|\d{1,2})(?: and | to | till | until |-)(?:the )?((?:${ORD}|\d{1,2})(?: of)? ${MONTH})`), days: firstToLast },
  { name: 'ORDINAL MONTH', pattern: rx(String.raw`\b(?:the )?(?:${ORD}|\d{1,2})(?: of)? ${MONTH}(?:,? \d{4})?`), days: dated },
  { name: 'MONTH ORDINAL', pattern: rx(String.raw`\b${MONTH} (?:the )?(?:${ORD}|\d{1,2}(?![\d/:]|\.\d| ?(?:bolt|inch|foot|ft|lb|percent|shim|of\b)))(?:,? \d{4})?`), days: dated },
  { name: 'YYYY-MM-DD', pattern: rx(String.raw`\b\d{4}-\d\d-\d\d\b`), days: s => one(dayOf(s.m[0])) },
  { name: 'in MONTH', pattern: rx(String.raw`(?<=\b(?:in|during|since|back in|for|all|of|until|till|by|before|last|next|this|from|to|through|and) )(?:(?:early|late|mid) )?(${MONTH})(?! (?:the |\d))`),
    days: s => { const w = /\b(last|next|this) $/.exec(s.line.slice(0, s.m.index))?.[1]; return s.m[1] === 'may' && !/\b(?:in|during|since|of|last|next|until|till|by|(?:hours|time|spend|money|work|log|done) for) $/.test(s.line.slice(0, s.m.index)) ? undefined : s.m[1] === 'march' && /\b(?:to) $/.test(s.line.slice(0, s.m.index)) ? undefined : month(MONTHS[s.m[1]!]!, s.today, s.dir, w); } },
  { name: 'in # UNIT', pattern: rx(String.raw`\b(?:in|within|inside) ${COUNT} ${UNIT}(?: time)?|\b${COUNT} ${UNIT} (?:from now|hence|out from now|from today|today|from here)`),
    days: s => one(later(s.today, count(s.m[1] ?? s.m[3]!), s.m[2] ?? s.m[4]!)) },
  { name: '# UNIT ago', pattern: rx(String.raw`\b${COUNT} ${UNIT} (?:ago|back|since)(?![a-z])`), days: s => one(later(s.today, -count(s.m[1]!), s.m[2]!)) },
  { name: 'a fortnight today', pattern: rx(String.raw`\b(?:today|tomorrow|this day) (week|fortnight)`), days: s => one(s.today + (/^tom/.test(s.m[0]) ? 1 : 0) + (s.m[1] === 'week' ? 7 : 14)) },
  ...FEASTS,
];

/** Before these a date is only a direction: "sometime next week", "early May". */
const VAGUE = /\b(?:sometime|some time|somewhere around|early|late|mid|middle of|towards|toward|any time|anytime|maybe) (?:in |on |the |of )*$/;

/** All phrases of the line that name days by themselves; the longer of two that overlap wins. */
export function simpleDays(line: string, today: number, dir: Direction): DaySpan[] {
  const all: DaySpan[] = [];
  for (const rule of mayMatch(RULES, r => r.pattern, line)) {
    rule.pattern.lastIndex = 0;
    for (let m = rule.pattern.exec(line); m; m = rule.pattern.exec(line)) {
      const past = dir === 'forward' && /\bsince (?:the )?$/.test(line.slice(0, m.index)) ? 'past' as const : dir;
      const days = VAGUE.test(line.slice(Math.max(0, m.index - 24), m.index)) && !/^(?:tomorrow|today|this|yesterday)/.test(m[0]) ? undefined : rule.days({ today, dir: past, line, m });
      if (days) all.push({ start: m.index, end: m.index + m[0].trimEnd().length, from: days[0], to: days[1], rule: rule.name, ...(rule.name === 'WEEKDAY' ? { weekday: true } : {}) });
    }
  }
  const kept: DaySpan[] = [];
  for (const d of all.sort((a, b) => (b.end - b.start) - (a.end - a.start))) if (!kept.some(k => d.start < k.end && k.start < d.end)) kept.push(d);
  return kept.sort((a, b) => a.start - b.start);
}

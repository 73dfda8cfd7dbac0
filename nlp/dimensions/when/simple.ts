import { mayMatch } from '../../text/pattern-index.ts';
import * as chrono from 'chrono-node';
import { addMonths, civil, dayNumber, dayOf, easter, monday, monthLength, weekday } from './days.ts';
import { MONTH, MONTHS, ORD, SHY, WD, WEEKDAYS, ordinal } from './words.ts';

export type Direction = 'forward' | 'past';
/** A day or days that a phrase of its own names; characters [start, end) of the line, days as whole numbers. */
export interface DaySpan { start: number; end: number; from: number; to: number; rule: string; weekday?: boolean; open?: boolean }

/** What a rule is told: today, which way an open choice goes, the whole line and where it matched. */
interface Say { today: number; dir: Direction; line: string; m: RegExpExecArray }
type Days = [from: number, to: number] | undefined;
interface Rule { name: string; pattern: RegExp; days(say: Say): Days }

const rx = (s: string): RegExp => new RegExp(s, 'g');
const one = (day: number): Days => [day, day];
const PART = String.raw`(?: (?:morning|mornin|afternoon|arvo|aft|evening|night|lunch ?time|dinner ?time|first thing|noon|midday|early))?`;
const COUNT = String.raw`(an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\d{1,3}|a couple(?: of| o)?|couple(?: of)?)`;
const NUMBERS: Record<string, number> = { a: 1, an: 1, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, eleven: 11, twelve: 12 };
const count = (w: string): number => /couple/.test(w) ? 2 : NUMBERS[w] ?? Number(w);

/** The weekday that is meant by itself: the coming one, never today; looking back, the one just gone. */
const nearest = (today: number, wd: number, dir: Direction): number =>
  dir === 'forward' ? today + ((wd - weekday(today) + 6) % 7) + 1 : today - (((weekday(today) - wd + 6) % 7) + 1);

const AFTER_DAY = new RegExp(`(?<![a-z])${WD}(?: to| through| thru| and| or)? $`);
function named({ today, dir, line, m }: Say): Days {
  const [, lead, name, tail] = m;
  const wd = WEEKDAYS[name!]!;
  if (SHY.has(name!) && !lead && !/\b(?:on|by|till|til|until|since|from|to|thru|through|for|before|and|or|due|is|was|back|here|come|every|do|done|free|over|hot|dry|rain|frost|wind) $/.test(line.slice(0, m.index)) && !AFTER_DAY.test(line.slice(0, m.index)) && !new RegExp(`^(?: (?:to|through|thru) )? ?${WD}`).test(line.slice(m.index + m[0].length))) return undefined;
  if (name === 'sat' && /\b(?:is|was|are|were|s) $/.test(line.slice(0, m.index)) && /^ (?:on|in|at|there|up|under|by|over|just|back|loose|down)\b/.test(line.slice(m.index + m[0].length))) return undefined; // "it is sat on two studs"
  if (tail === 'week') return one(nearest(today, wd, 'forward') + 7);
  if (tail === 'fortnight') return one(nearest(today, wd, 'forward') + 14);
  if (lead === 'last' || tail === 'gone' || tail === 'last' || tail === 'just gone') return one(nearest(today, wd, 'past'));
  if (lead === 'next') return one(monday(today) + 7 + wd);
  if (tail === 'next') return one(nearest(today, wd, 'forward'));
  if (/^(?:this coming|coming|this)$/.test(lead ?? '') || tail === 'coming') return one(nearest(today, wd, dir));
  return one(nearest(today, wd, dir));
}

/** "the 26th": the coming one, today included; looking back, the one just gone. */
function ofMonth(n: number, today: number, dir: Direction): Days {
  if (!(n >= 1 && n <= 31)) return undefined;
  const { y, m } = civil(today);
  for (let k = 0; k < 14; k++) {
    const at = civil(dayNumber(y, m + (dir === 'forward' ? k : -k), 1));
    if (n > monthLength(at.y, at.m)) continue;
    const day = dayNumber(at.y, at.m, n);
    if (dir === 'forward' ? day >= today : day <= today) return one(day);
  }
  return undefined;
}

function month(m: number, today: number, dir: Direction, word = ''): Days {
  const now = civil(today);
  let y = now.y;
  if (word === 'last' && m >= now.m) y--;
  else if (word === 'next' && m <= now.m) y++;
  else if (word !== 'last' && word !== 'next') y += dir === 'forward' ? (m < now.m ? 1 : 0) : (m > now.m ? -1 : 0);
  return [dayNumber(y, m, 1), dayNumber(y, m, monthLength(y, m))];
}

/** A date written or said with its month; read by chrono, the year filled in by the direction when it is not said. */
function dated({ today, dir, m }: Say): Days {
  const text = m[0].replace(/\b(?:the|of) /g, ' ').replace(new RegExp(ORD), w => String(ordinal(w))).replace(/ +/g, ' ').replace(/\b(febuary)\b/, 'february');
  const at = civil(today);
  const [r] = chrono.en.parse(text, { instant: new Date(Date.UTC(at.y, at.m - 1, at.d, 12)), timezone: 0 });
  const mo = r?.start.get('month'), d = r?.start.get('day');
  if (!r || !mo || !d) return undefined;
  if (r.start.isCertain('year')) return one(dayNumber(r.start.get('year')!, mo, d));
  const here = dayNumber(at.y, mo, d);
  if (dir === 'forward') return one(here < today ? dayNumber(at.y + 1, mo, d) : here);
  return one(here > today ? dayNumber(at.y - 1, mo, d) : here);
}

function weekend({ today, dir, m }: Say): Days {
  const sat = monday(today) + 5, w = weekday(today);
  if (dir === 'past' && !/next|coming/.test(m[0])) return w >= 5 && !/last/.test(m[0]) ? [sat, sat + 1] : [sat - 7, sat - 6];
  if (/last|gone/.test(m[0])) return [sat - 7, sat - 6];
  if (/next/.test(m[0])) return [sat + 7, sat + 8];
  return w === 6 ? [sat + 7, sat + 8] : [sat, sat + 1];
}

function period({ today, dir, m }: Say): Days {
  const [, which, unit] = m;
  const by = which === 'next' || which === 'coming' || which === 'following' ? 1 : which === 'last' ? -1 : 0;
  const at = civil(today);
  if (unit === 'week') {
    const mon = monday(today) + by * 7;
    if (by !== 0) return [mon, mon + 6];
    return dir === 'forward' ? [today, mon + 6] : [mon, mon + 6];
  }
  if (unit === 'month') {
    const f = civil(dayNumber(at.y, at.m + by, 1)), last = dayNumber(f.y, f.m, monthLength(f.y, f.m));
    if (by !== 0) return [dayNumber(f.y, f.m, 1), last];
    return dir === 'forward' ? [today, last] : [dayNumber(f.y, f.m, 1), last];
  }
  if (by !== 0) return [dayNumber(at.y + by, 1, 1), dayNumber(at.y + by, 12, 31)];
  return dir === 'forward' ? [today, dayNumber(at.y, 12, 31)] : [dayNumber(at.y, 1, 1), today];
}

function endOf({ today, m }: Say): Days {
  const at = civil(today), next = /next/.test(m[0]) ? 1 : 0;
  if (/week/.test(m[0])) return one(monday(today) + 6 + 7 * next);
  if (/year/.test(m[0])) return one(dayNumber(at.y + next, 12, 31));
  const name = new RegExp(`${MONTH}`).exec(m[0]);
  if (name) { const span = month(MONTHS[name[0]]!, today, 'forward')!; return one(span[1]); }
  const f = civil(dayNumber(at.y, at.m + next, 1));
  return one(dayNumber(f.y, f.m, monthLength(f.y, f.m)));
}

function later(today: number, n: number, unit: string): number {
  if (/^day/.test(unit)) return today + n;
  if (/^(?:week|wk)/.test(unit)) return today + 7 * n;
  if (/^fortnight/.test(unit)) return today + 14 * n;
  return addMonths(today, /^year/.test(unit) ? 12 * n : n);
}

const yearly = (find: (y: number) => number) => ({ today, dir, line, m }: Say): Days => {
  const { y } = civil(today), back = dir === 'past' || /since (?:the )?$/.test(line.slice(0, m.index)) || /^last/.test(m[0]);
  const days = [y - 1, y, y + 1].map(find);
  const day = back ? days.filter(d => d <= today).at(-1) : days.find(d => d >= today);
  return day === undefined ? undefined : one(day);
};
const thursday4 = (y: number): number => { const f = dayNumber(y, 11, 1); return f + ((3 - weekday(f) + 7) % 7) + 21; };

const UNIT = '(days?|weeks?|wks?|fortnights?|months?|years?)(?![a-z])';
const AFTER_ORD = String.raw`(?= ?(?:$|[,.;:?!)]|(?:and|or|but|so|if|for|to|with|when|then|at|in|on|they|he|she|it|i|we|latest|maybe|of|morning|is|was|though|he|says|said|unless|because|cause|till|until|what|where|how|who|whats|wheres|did|after|before|now|again|from|by|ish|the)\b))`;

/** Every phrase that names a day or days by itself. */
export const RULES: readonly Rule[] = [
  { name: 'today', pattern: rx(String.raw`\b(?:today|to day|tonight|tonite|this (?:morning|mornin|afternoon|arvo|aft|evening)|this very day)(?![a-z])`), days: s => one(s.today) },
  { name: 'tomorrow', pattern: rx(String.raw`\b(?:tomorrow|tomorow|tommorow|tommorrow|tomorro|tmrw|tmw|tmrrw|tomoz|2moro|the morrow)s?${PART}(?![a-z])`), days: s => one(s.today + 1) },
  { name: 'yesterday', pattern: rx(String.raw`\b(?:yesterday|yesterdays|yday|yest)${PART}(?![a-z])|\blast night\b`), days: s => one(s.today - 1) },
  { name: 'day after tomorrow', pattern: rx(String.raw`\b(?:the )?day after tom+or+ows?${PART}`), days: s => one(s.today + 2) },
  { name: 'day before yesterday', pattern: rx(String.raw`\b(?:the )?day before yesterday`), days: s => one(s.today - 2) },
  { name: 'WEEKDAY', pattern: rx(String.raw`(?<![a-z])(?:(this coming|this|next|last|coming) )?(${WD})(?: (week|fortnight|next|coming|gone|last|just gone)(?![a-z]))?${PART}`), days: named },
  { name: 'weekend', pattern: rx(String.raw`\b(?:(?:this|next|last|the|coming|all) )*(?:week ?end|wkend)s?(?: (?:gone|coming))?(?![a-z])`), days: weekend },
  { name: 'WHICH week', pattern: rx(String.raw`\b(?:the )?(this|next|last|coming|following) (week|month|year)(?![a-z])`), days: period },
  { name: 'the rest of the week', pattern: rx(String.raw`\b(?:the )?rest of (?:the|this) week`), days: s => [s.today, monday(s.today) + 6] },
  { name: 'the week after next', pattern: rx(String.raw`\b(?:the )?week after next`), days: s => [monday(s.today) + 14, monday(s.today) + 20] },
  { name: 'end of month', pattern: rx(String.raw`\b(?:(?:the )?(?:very )?end of (?:the|this|next) (?:month|week|year)|(?:the )?end of ${MONTH}|months? end|(?:the )?last day of (?:the|this|next) month|(?:the )?end of month)`), days: endOf },
  { name: 'start of next', pattern: rx(String.raw`\b(?:the )?(?:start|beginning|first) of next (week|month)`),
    days: s => s.m[1] === 'week' ? one(monday(s.today) + 7) : one(dayNumber(civil(s.today).y, civil(s.today).m + 1, 1)) },
  { name: 'the ORDINAL of next month', pattern: rx(String.raw`\b(?:the )?(${ORD}) of (this|the|next|last) month`),
    days: s => { const { y, m } = civil(s.today), k = s.m[2] === 'next' ? 1 : s.m[2] === 'last' ? -1 : 0, f = civil(dayNumber(y, m + k, 1)); return ordinal(s.m[1]!) <= monthLength(f.y, f.m) ? one(dayNumber(f.y, f.m, ordinal(s.m[1]!))) : undefined; } },
  { name: 'the ORDINAL', pattern: rx(String.raw`\bthe (${ORD})${AFTER_ORD}`),
    days: s => ordinal(s.m[1]!) <= 3 && !/\d/.test(s.m[1]!) && !/\b(?:on|by|till|til|until|since|from|between|before|through|to|thru|for|due|its|is|now|here|says|said|saying|back|about|around|come) $/.test(s.line.slice(0, s.m.index)) ? undefined : ofMonth(ordinal(s.m[1]!), s.today, s.dir) },
  { name: 'bare #th', pattern: rx(String.raw`(?<=\b(?:on|by|till|until|til|due|since|from|before|expected|eta|here) )(\d{1,2} ?(?:st|nd|rd|th))${AFTER_ORD}`), days: s => ofMonth(ordinal(s.m[1]!), s.today, s.dir) },
  { name: 'ORDINAL MONTH', pattern: rx(String.raw`\b(?:the )?(?:${ORD}|\d{1,2})(?: of)? ${MONTH}(?:,? \d{4})?`), days: dated },
  { name: 'MONTH ORDINAL', pattern: rx(String.raw`\b${MONTH} (?:the )?(?:${ORD}|\d{1,2}(?![\d/.:]| ?(?:bolt|inch|foot|ft|lb|percent|shim|of\b)))(?:,? \d{4})?`), days: dated },
  { name: 'YYYY-MM-DD', pattern: rx(String.raw`\b\d{4}-\d\d-\d\d\b`), days: s => one(dayOf(s.m[0])) },
  { name: 'in MONTH', pattern: rx(String.raw`(?<=\b(?:in|during|since|back in|for|all|of|until|till|by|before|last|next|this|from|to|through|and) )(?:(?:early|late|mid) )?(${MONTH})(?! (?:the |\d))`),
    days: s => { const w = /\b(last|next|this) $/.exec(s.line.slice(0, s.m.index))?.[1]; return s.m[1] === 'may' && !/\b(?:in|during|since|of|last|next|until|till|by|(?:hours|time|spend|money|work|log|done) for) $/.test(s.line.slice(0, s.m.index)) ? undefined : s.m[1] === 'march' && /\b(?:to) $/.test(s.line.slice(0, s.m.index)) ? undefined : month(MONTHS[s.m[1]!]!, s.today, s.dir, w); } },
  { name: 'in # UNIT', pattern: rx(String.raw`\b(?:in|within|inside) ${COUNT} ${UNIT}(?: time)?|\b${COUNT} ${UNIT} (?:from now|hence|out from now|from today|today|from here)`),
    days: s => one(later(s.today, count(s.m[1] ?? s.m[3]!), s.m[2] ?? s.m[4]!)) },
  { name: '# UNIT ago', pattern: rx(String.raw`\b${COUNT} ${UNIT} (?:ago|back|since)(?![a-z])`), days: s => one(later(s.today, -count(s.m[1]!), s.m[2]!)) },
  { name: 'a fortnight today', pattern: rx(String.raw`\b(?:today|tomorrow|this day) (week|fortnight)`), days: s => one(s.today + (/^tom/.test(s.m[0]) ? 1 : 0) + (s.m[1] === 'week' ? 7 : 14)) },
  { name: 'new year', pattern: rx(String.raw`\b(?:the )?new years?(?: day)?(?![a-z]| eve)`), days: s => /\bhappy $/.test(s.line.slice(0, s.m.index)) ? undefined : yearly(y => dayNumber(y, 1, 1))(s) },
  { name: 'new years eve', pattern: rx(String.raw`\b(?:the )?new years? eve`), days: yearly(y => dayNumber(y, 12, 31)) },
  { name: 'christmas', pattern: rx(String.raw`\b(?:christmas|xmas)(?: day)?(?! eve)(?![a-z])`), days: yearly(y => dayNumber(y, 12, 25)) },
  { name: 'christmas eve', pattern: rx(String.raw`\b(?:christmas|xmas) eve`), days: yearly(y => dayNumber(y, 12, 24)) },
  { name: 'boxing day', pattern: rx(String.raw`\bboxing day`), days: yearly(y => dayNumber(y, 12, 26)) },
  { name: 'halloween', pattern: rx(String.raw`\bhalloween`), days: yearly(y => dayNumber(y, 10, 31)) },
  { name: 'fourth of july', pattern: rx(String.raw`\b(?:the )?(?:fourth|4th) of july`), days: yearly(y => dayNumber(y, 7, 4)) },
  { name: 'thanksgiving', pattern: rx(String.raw`\bthanksgiving`), days: yearly(thursday4) },
  { name: 'labour day', pattern: rx(String.raw`\blabou?r day`), days: yearly(y => { const f = dayNumber(y, 9, 1); return f + ((7 - weekday(f)) % 7); }) },
  { name: 'memorial day', pattern: rx(String.raw`\bmemorial day`), days: yearly(y => { const l = dayNumber(y, 5, 31); return l - weekday(l); }) },
  { name: 'good friday', pattern: rx(String.raw`\bgood friday`), days: yearly(y => easter(y) - 2) },
  { name: 'easter monday', pattern: rx(String.raw`\beaster monday`), days: yearly(y => easter(y) + 1) },
  { name: 'easter', pattern: rx(String.raw`\beaster(?: sunday)?(?! monday)(?![a-z])`), days: yearly(easter) },
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

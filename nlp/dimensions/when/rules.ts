import { type Line, tokensOf } from '../line.ts';
import type { Piece, Slate } from '../rule.ts';
import { addMonths, civil, dayNumber, dayOf, isoOf, monthLength, weekday } from './days.ts';
import { type DaySpan, type Direction, simpleDays } from './simple.ts';

const STEPS: readonly [RegExp, (day: number) => number][] = [
  [/\b(?:a|one|1) week (?:from|on|after|off)? ?(?:the )?$/, d => d + 7],
  [/(?<!\b(?:next|this|every|each|last|all|the|per) )\bweek (?:from|on) (?:the )?$/, d => d + 7], // "ready week from Friday", "week on Thursday"
  [/\b(?:two|2) weeks (?:from|on|after)? ?(?:the )?$/, d => d + 14],
  [/\b(?:three|3) weeks (?:from|on|after)? ?(?:the )?$/, d => d + 21],
  [/\ba fortnight (?:from|on|after)? ?(?:the )?$/, d => d + 14],
  [/\b(?:a|one) month (?:from|on|after) (?:the )?$/, d => addMonths(d, 1)],
  [/\bthe day after (?:the )?$/, d => d + 1],
  [/\bthe day before (?:the )?$/, d => d - 1],
  [/\ba week ago (?:on |last )?$/, d => d - 7],
];

/**
 * Days and spans of days as people say them, against the day of the note (its own zone: the date of `at` as written).
 * Forward, an open weekday or day of the month is the coming one; past, the one just gone ("what did I do on Tuesday").
 */
export function daysIn(line: Line, at: string, dir: Direction = 'forward'): DaySpan[] {
  const today = dayOf(at);
  const moved = simpleDays(line.text, today, dir).filter(d => !contracted(line, d)).map(d => stepped(d, line.text, today));
  const steps = moved.filter(d => !moved.some(o => o !== d && o.start <= d.start && d.end <= o.end));
  return backRefs(join(joinPairs(steps, line.text, dir), line.text), line.text);
}

/** "we'd" is no Wednesday. */
function contracted(line: Line, d: DaySpan): boolean {
  const [from, to] = tokensOf(line, d.start, d.end);
  return to - from > 1 && line.text.slice(d.start, d.end) === 'wed';
}

/** "a week from Friday", "the day after the weekend". */
function stepped(d: DaySpan, text: string, today: number): DaySpan {
  const before = text.slice(0, d.start);
  for (const [re, move] of STEPS) {
    const m = re.exec(before);
    if (!m) continue;
    const base = /ago/.test(m[0]) && d.weekday && d.from > today ? d.from - 7 : d.from;
    const day = move(base);
    return { ...d, start: m.index, from: day, to: day, rule: `step ${d.rule}` };
  }
  return d;
}

const TO = /^,? ?(?:to|through|thru|till|til|until|-|right through to|up to|and on to)? ?(?:the )?$/;

/** "from X to Y", "between X and Y", "Monday Wednesday" (written with a hyphen), "tomorrow and Wednesday" when they touch. */
function joinPairs(days: DaySpan[], text: string, dir: Direction): DaySpan[] {
  const out: DaySpan[] = [];
  for (let i = 0; i < days.length; i++) {
    const a = days[i]!, b = days[i + 1];
    const pair = b && pairOf(a, b, text, dir);
    if (pair) { out.push(pair); i++; } else out.push(a);
  }
  return out;
}

function pairOf(a: DaySpan, b: DaySpan, text: string, dir: Direction): DaySpan | undefined {
  const gap = text.slice(a.end, b.start), before = text.slice(0, a.start);
  const beside = a.weekday ? /^,? (before|after) (?:the )?$/.exec(gap)?.[1] : undefined;
  if (beside) {
    const day = beside === 'after' ? onOrAfter(b.to + 1, a.from) : onOrAfter(b.from - 7, a.from);
    return { start: a.start, end: b.end, from: day, to: day, rule: 'WEEKDAY beside a day' };
  }
  const between = /\bbetween (?:the )?$/.test(before) && /^ and (?:the )?$/.test(gap);
  const to = TO.test(gap) && (gap.trim() !== '' || (!!a.weekday && !!b.weekday)) && !/^,/.test(gap);
  const and = /^,? (?:and|an|n|&|or into|into) (?:the |again )?$/.test(gap);
  const until = /^ while (?:the )?$/.test(gap) && /\bfrom (?:the )?$/.test(before); // as it is said in the north
  if (!between && !to && !and && !until) return undefined;
  let [from, last] = [a.from, b.to];
  if (dir === 'past' && from > last) from = earlier(from, last, a);
  if (dir === 'forward' && last < from) last = onward(last, from, b);
  if (last < from || (last === from && !between)) return undefined;
  if (and && !between && (last - from !== 1 && b.from !== a.to + 1)) return undefined;
  const start = between ? a.start - /between (?:the )?$/.exec(before)![0].length : /\bfrom (?:the )?$/.test(before) ? a.start - /from (?:the )?$/.exec(before)![0].length : a.start;
  return { start, end: b.end, from, to: last, rule: 'X to Y' };
}

/** "the Saturday after Thanksgiving": the first day from `day` on that is the same weekday as another. */
const onOrAfter = (day: number, like: number): number => day + ((weekday(like) - weekday(day) + 7) % 7);

/** The same weekday or day of the month, put before or after the other end of the span. */
function earlier(day: number, limit: number, d: DaySpan): number {
  if (d.weekday) { while (day > limit) day -= 7; return day; }
  while (day > limit) day = shiftMonth(day, -1);
  return day;
}
function onward(day: number, limit: number, d: DaySpan): number {
  if (d.weekday) { while (day < limit) day += 7; return day; }
  for (let k = 0; day < limit && k < 14; k++) day = shiftMonth(day, 1);
  return day;
}
function shiftMonth(day: number, by: number): number {
  const { y, m, d } = civil(day), f = civil(dayNumber(y, m + by, 1));
  return dayNumber(f.y, f.m, Math.min(d, monthLength(f.y, f.m)));
}

/** "since Monday" has no end. */
const join = (days: DaySpan[], text: string): DaySpan[] => days.map(d => {
  const since = /\b(?:since|ever since|from) (?:the |last )?$/.exec(text.slice(0, d.start));
  const open = since && (/since/.test(since[0]) || /^ (?:on|onwards|onward)\b/.test(text.slice(d.end)));
  return open ? { ...d, start: since.index, open: true, rule: `since ${d.rule}` } : d;
});

/** "the day after", with nothing after it, counts from the day named before. */
function backRefs(days: DaySpan[], text: string): DaySpan[] {
  const more: DaySpan[] = [];
  for (const m of text.matchAll(/\b(?:the )?(?:(?:day|morning) after(?= ?(?:$|[,.;!?]|to\b|and\b|that\b|for\b|so\b|he|with|if))|next day|following day|following morning)/g)) {
    const last = days.filter(d => d.end <= m.index).at(-1);
    if (last) more.push({ start: m.index, end: m.index + m[0].length, from: last.to + 1, to: last.to + 1, rule: 'the day after' });
  }
  return [...days, ...more].sort((a, b) => a.start - b.start);
}

const TIME = /^,? ?(?:at |around |about )?(\d{1,2})(?::(\d\d))? ?(am|pm)\b|^,? ?(?:at )?(noon|midday|midnight)\b/;

export function whenPieces(slate: Slate, dir: Direction = 'forward'): Piece<'when'>[] {
  return daysIn(slate.line, slate.at, dir).map(d => {
    const t = TIME.exec(slate.line.text.slice(d.end));
    const time = t && (t[4] ? (t[4] === 'midnight' ? '00:00' : '12:00') : `${String((Number(t[1]) % 12) + (t[3] === 'pm' ? 12 : 0)).padStart(2, '0')}:${t[2] ?? '00'}`);
    return {
      dim: 'when' as const, start: d.start, end: d.end + (t ? t[0].length : 0), sure: 'certain' as const, rule: d.rule,
      value: { from: isoOf(d.from), ...(d.open ? {} : { to: isoOf(d.to) }), ...(time ? { time } : {}) },
    };
  });
}

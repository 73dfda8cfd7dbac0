import { one, rx, type DayRule, type Days, type Say } from './day-rule.ts';
import { civil, dayNumber, easter, weekday } from './days.ts';

/** The day of a feast by its year: the coming one; looking back, the one just gone. */
const yearly = (find: (y: number) => number) => ({ today, dir, line, m }: Say): Days => {
  const { y } = civil(today), back = dir === 'past' || /since (?:the )?$/.test(line.slice(0, m.index)) || /^last/.test(m[0]);
  const days = [y - 1, y, y + 1].map(find);
  const day = back ? days.filter(d => d <= today).at(-1) : days.find(d => d >= today);
  return day === undefined ? undefined : one(day);
};
const thursday4 = (y: number): number => { const f = dayNumber(y, 11, 1); return f + ((3 - weekday(f) + 7) % 7) + 21; };

/** Feasts that people count by. */
export const FEASTS: readonly DayRule[] = [
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

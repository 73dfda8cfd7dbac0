import { ofMonth } from './dates.ts';
import { one, type Days, type Say } from './day-rule.ts';
import { civil, dayNumber, monday, monthLength, weekday } from './days.ts';
import type { Direction } from './simple.ts';
import { MONTHS, ordinal, SHY, WD, WEEKDAYS } from './words.ts';

/** The weekday that is meant by itself: the coming one, never today; looking back, the one just gone. */
const nearest = (today: number, wd: number, dir: Direction): number =>
  dir === 'forward' ? today + ((wd - weekday(today) + 6) % 7) + 1 : today - (((weekday(today) - wd + 6) % 7) + 1);

const AFTER_DAY = new RegExp(`(?<![a-z])${WD}(?: to| into| through| thru| and| an| n| &| or)? $`);
/** "Friday", "next Tuesday", "Monday week": one day of a week by its name. */
export function weekdayNamed({ today, dir, line, m }: Say): Days {
  const [, lead, name, tail] = m;
  const wd = WEEKDAYS[name!]!;
  if (SHY.has(name!) && !lead && !/\b(?:on|by|till|til|until|since|from|to|thru|through|for|before|and|or|due|is|was|back|here|come|every|do|done|free|over|hot|dry|rain|frost|wind) $/.test(line.slice(0, m.index)) && !AFTER_DAY.test(line.slice(0, m.index)) && !new RegExp(`^(?: (?:to|into|through|thru|and|an|n|&) )? ?${WD}`).test(line.slice(m.index + m[0].length))) return undefined;
  if (name === 'sat' && /\b(?:is|was|are|were|s) $/.test(line.slice(0, m.index)) && /^ (?:on|in|at|there|up|under|by|over|just|back|loose|down)\b/.test(line.slice(m.index + m[0].length))) return undefined; // "it is sat on two studs"
  if (tail === 'week') return one(nearest(today, wd, 'forward') + 7);
  if (tail === 'fortnight') return one(nearest(today, wd, 'forward') + 14);
  if (lead === 'last' || tail === 'gone' || tail === 'last' || tail === 'just gone') return one(nearest(today, wd, 'past'));
  if (lead === 'next') return one(monday(today) + 7 + wd);
  if (tail === 'next') return one(nearest(today, wd, 'forward'));
  return one(nearest(today, wd, dir));
}

/** "The weekend", "next weekend". */
export function weekend({ today, dir, m }: Say): Days {
  const sat = monday(today) + 5, w = weekday(today);
  if (dir === 'past' && !/next|coming/.test(m[0])) return w >= 5 && !/last/.test(m[0]) ? [sat, sat + 1] : [sat - 7, sat - 6];
  if (/last|gone/.test(m[0])) return [sat - 7, sat - 6];
  if (/next/.test(m[0])) return [sat + 7, sat + 8];
  return w === 6 ? [sat + 7, sat + 8] : [sat, sat + 1];
}

/** "Thursday the fourth": the coming one of the month, or the one just gone; not where that is another weekday. */
export function weekdayDated({ today, dir, m }: Say): Days {
  const days = ofMonth(ordinal(m[2]!), today, dir);
  return days && weekday(days[0]) === WEEKDAYS[m[1]!] ? days : undefined;
}

/** "The second Tuesday of the month", "the last weekend in March": the coming one. */
export function weekdayOfMonth({ today, m: [, which, name, of] }: Say): Days {
  const at = civil(today), wd = WEEKDAYS[name!] ?? 5, long = name! in WEEKDAYS ? 0 : 1;
  const inMonth = (y: number, mo: number): number | undefined => {
    const first = civil(dayNumber(y, mo, 1)), start = dayNumber(first.y, first.m, 1), end = start + monthLength(first.y, first.m) - 1;
    const day = which === 'last' ? end - ((weekday(end) - wd + 7) % 7) : start + ((wd - weekday(start) + 7) % 7) + 7 * (ordinal(which!) - 1);
    return day <= end ? day : undefined;
  };
  const month = MONTHS[of!], day = month ? inMonth(at.y + (month < at.m ? 1 : 0), month) : inMonth(at.y, at.m + (/next/.test(of!) ? 1 : 0));
  return day === undefined ? undefined : [day, day + long];
}

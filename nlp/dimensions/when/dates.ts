import * as chrono from 'chrono-node';
import { one, type Days, type Say } from './day-rule.ts';
import { civil, dayNumber, monday, monthLength } from './days.ts';
import type { Direction } from './simple.ts';
import { MONTH, MONTHS, ORD, ordinal } from './words.ts';

/** "the 26th": the coming one, today included; looking back, the one just gone. */
export function ofMonth(n: number, today: number, dir: Direction): Days {
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

/** A whole month by its name, its year by the word before it ("last", "next"); else this or the coming one, looking back this or the one just gone. */
export function month(m: number, today: number, dir: Direction, word = ''): Days {
  const now = civil(today);
  let y = now.y;
  if (word === 'last' && m >= now.m) y--;
  else if (word === 'next' && m <= now.m) y++;
  else if (word !== 'last' && word !== 'next') y += dir === 'forward' ? (m < now.m ? 1 : 0) : (m > now.m ? -1 : 0);
  return [dayNumber(y, m, 1), dayNumber(y, m, monthLength(y, m))];
}

/** A date written or said with its month; read by chrono, the year filled in by the direction when it is not said. */
export const dated = ({ today, dir, m }: Say): Days => dateIn(m[0], today, dir);
function dateIn(said: string, today: number, dir: Direction): Days {
  const text = said.replace(/\b(?:the|of) /g, ' ').replace(new RegExp(ORD), w => String(ordinal(w))).replace(/ +/g, ' ').replace(/\b(febuary)\b/, 'february');
  const at = civil(today);
  const [r] = chrono.en.parse(text, { instant: new Date(Date.UTC(at.y, at.m - 1, at.d, 12)), timezone: 0 });
  const mo = r?.start.get('month'), d = r?.start.get('day');
  if (!r || !mo || !d) return undefined;
  if (r.start.isCertain('year')) return one(dayNumber(r.start.get('year')!, mo, d));
  const here = dayNumber(at.y, mo, d);
  if (dir === 'forward') return one(here < today ? dayNumber(at.y + 1, mo, d) : here);
  return one(here > today ? dayNumber(at.y - 1, mo, d) : here);
}

/** "between 1 and 12 March": both ends are of the month named once. */
export function firstToLast({ today, dir, m: [, , from, to] }: Say): Days {
  const last = dateIn(to!, today, dir);
  if (!last) return undefined;
  const { y, m } = civil(last[0]), first = dayNumber(y, m, ordinal(from!));
  return first < last[0] ? [first, last[0]] : undefined;
}

/** "This week", "next month", "last year": as much of it as lies ahead, or behind. */
export function period({ today, dir, m }: Say): Days {
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

/** "The end of the month", "the end of June". */
export function endOf({ today, m }: Say): Days {
  const at = civil(today), next = /next/.test(m[0]) ? 1 : 0;
  if (/week/.test(m[0])) return one(monday(today) + 6 + 7 * next);
  if (/year/.test(m[0])) return one(dayNumber(at.y + next, 12, 31));
  const name = new RegExp(`${MONTH}`).exec(m[0]);
  if (name) { const span = month(MONTHS[name[0]]!, today, 'forward')!; return one(span[1]); }
  const f = civil(dayNumber(at.y, at.m + next, 1));
  return one(dayNumber(f.y, f.m, monthLength(f.y, f.m)));
}

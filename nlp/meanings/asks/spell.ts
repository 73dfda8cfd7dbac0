import { type Desk, foundIn } from './desk.ts';
import { table } from '../../words/table.ts';

const PARTS: Readonly<Record<string, number>> = table({ 'a half': 30, half: 30, 'a quarter': 15, quarter: 15, 'three quarters': 45, five: 5, ten: 10, fifteen: 15, twenty: 20, thirty: 30, forty: 40, 'forty five': 45, fifty: 50 });
const MORE = new RegExp(String.raw`^ and (${Object.keys(PARTS).join('|')}|\d{1,2})(?= ?(?:$|[?.,!]|to\b|till\b|until\b|before\b|in\b|inside\b|indoors\b|outside\b|spare\b|free\b|left\b|now\b|or so\b|what\b))`);
/** "in the hour before the pickers come": the one hour that there is. */
const THE_HOUR = /\b(?:(?:in|for|with|fill|kill) (?:the|that|this)|(?<!(?:half|quarters? of|quarter) )(?:an?|one)) ?(?:spare |free |odd )?(?:hour|hr)(?= (?:before|till|until|to spare|spare|i have|ive got|and\b)| ?(?:$|[?.,!]))|(?<=(?:^|[ ,]))(?:hour|hr)(?= and )/;

/** The first length of time, in minutes, within the characters [start, end): "45 minutes", "an hour and 15", "hour and a half", "the hour before the pickers come". */
export function spell(desk: Desk, start: number, end: number): { minutes: number; start: number } | undefined {
  const f = foundIn(desk, start, end).find(x => x.dim === 'span' && (x.value.unit === 'minutes' || x.value.unit === 'hours'));
  const bare = THE_HOUR.exec(desk.text.slice(start, end)), at = bare ? start + bare.index : Infinity;
  if (f?.dim === 'span' && f.start <= at) return { minutes: f.value.amount * (f.value.unit === 'hours' ? 60 : 1) + (f.value.unit === 'hours' && Number.isInteger(f.value.amount) ? over(desk, f.end, end) : 0), start: f.start };
  return bare ? { minutes: 60 + over(desk, at + bare[0].length, end), start: at } : undefined;
}

/** What is said over the hour: "and 15", "and a half". */
function over(desk: Desk, at: number, end: number): number {
  const more = MORE.exec(desk.text.slice(at, end))?.[1];
  return more === undefined ? 0 : PARTS[more] ?? (Number(more) < 60 && Number(more) % 5 === 0 ? Number(more) : 0);
}

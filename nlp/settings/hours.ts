import { clockStretch, type HoursSaid } from './clock-stretch.ts';
import { NUMBER, count } from './hour-words.ts';
import { DAY_SETS, ONE_DAY, PART, type Days } from './weekdays-said.ts';

/**
 * The person's usual hours in the shop, from words: "two hours most evenings, Saturdays till noon". Weekdays are 1 (Monday) to 7, times
 * HH:MM. Read only where the whole note is about them: every word must be part of it, so that hours spent on a part are never taken for it.
 */
export interface WeeklyStretch { weekday: number; from: string; to: string }
/** `adds`: "Sundays too": the other days stay as they were. `never`: weekdays without time. */
export interface HoursRead { weekly: WeeklyStretch[]; never: number[]; adds: boolean }

const LENGTH = new RegExp(String.raw`\b(?:(?:an?|${NUMBER}) hours? and a half|(?:(an?|a couple(?: of)?|a few|half an?|${NUMBER})( and a half)?) ?(?:hours?|hrs?|h))\b|\b(${NUMBER}) ?(?:minutes|mins)\b`);
const CLOCK = String.raw`(?:noon|midday|midnight|lunch(?:time)?|supper(?: ?time)?|dinner(?: ?time)?|tea(?: ?time)?|dark|half(?: past)? ${NUMBER}|${NUMBER}(?: ?(?:o'?clock|am|pm|a\.m\.?|p\.m\.?))?)`;
const RANGE = new RegExp(String.raw`\b(?:from |between )?(${CLOCK}) ?(?:to|till|until|til|and|-|–) ?(${CLOCK})(?= |$)`);
const UNTIL = new RegExp(String.raw`\b(?:till|until|til|up to|before|to) (${CLOCK})(?= |$)`);
const AFTER = new RegExp(String.raw`\b(?:after|from|starting at|past) (${CLOCK}|work)(?= |$)`);
const ALL_DAY = /\b(?:all|the whole|full) days?\b/;

/** Words that may stand round the hours without changing them. */
const AROUND = new Set(('i we i\'ve i\'ll i\'d i\'m can could get got have has usually normally mostly generally about around maybe perhaps roughly do put in at it on to the shop shed garage barn workshop bench free '
  + 'work working for a my hours time is are out there now only just also plus then as well too machine tractor her will be able spend spare give and or but of with me us though so yes ok okay usual shop\'s available most during '
  + 'week weeks each every an work\'s manage go regular regularly if lucky that\'s that i\'m down here').split(' '));
/** Hours of other things, or of one day that is past or at hand. */
const OTHERS = /\b(?:spent|took|been|was|were|did|had|ago|yesterday|today|tonight|tomorrow|last|next|this|he|she|they|his|their|open|opens|opening|closed|closes|shuts|store|counter|soak\w*|dry\w*|cur(?:e|es|ing)|drain\w*|charg\w+|run|runs|running|coming|comes|help\w*|per hour|an hour's|until it)\b/;

/** Reads the hours; undefined when the words are about anything else. */
export function readHours(text: string): HoursRead | undefined {
  const low = text.toLowerCase().replace(/[’‘]/g, "'").replace(/[?!]/g, '').replace(/\s+/g, ' ').trim();
  if (!low || low.length > 200 || OTHERS.test(low)) return undefined;
  const adds = /\b(?:too|also|as well|plus)\b/.test(low);
  const clauses = clausesOf(low);
  const read = clauses.map(readClause);
  if (!read.length || read.some(r => r === undefined)) return undefined;
  const all = joined(read as Clause[]);
  // One plainly recurring stretch carries the others; a bare length and day alone ("two hours Saturday") is about one day.
  if (!all.some(c => c.days?.recurs) || all.some(c => !c.days)) return undefined;
  const never = all.filter(c => c.never).flatMap(c => c.days!.days);
  const weekly = all.filter(c => !c.never).flatMap(c => c.days!.days.map(weekday => ({ weekday, ...clockStretch(c.days!, c) })));
  if (all.some(c => !c.never && c.length === undefined && !c.from && !c.to && !c.allDay && all.length === 1) || (!weekly.length && !never.length)) return undefined;
  return { weekly: distinct(weekly).filter(w => !never.includes(w.weekday)), never, adds: adds || !weekly.length };
}

interface Clause extends HoursSaid { days?: Days; never?: boolean }

/** "…, and Saturdays till noon": cut where another day set begins. */
const clausesOf = (low: string): string[] =>
  low.split(new RegExp(String.raw`[;.](?= |$)|, (?:and |but |plus )?| (?:and|plus|but) (?!a half)(?=(?:(?:on|all|at|maybe|another|${NUMBER}|an?|not|no|never)\b ?)*(?:[a-z' ]*?)\b(?:hours?|hrs?|week ?ends?|(?:${ONE_DAY})s?(?: ${PART})?(?: (?:till|until|til|from|all|after|between)|$)))`)).map(c => c.trim()).filter(Boolean);

function readClause(said: string): Clause | undefined {
  let rest = ` ${said} `;
  const take = (re: RegExp): RegExpExecArray | undefined => {
    const m = re.exec(rest);
    if (!m) return undefined;
    rest = `${rest.slice(0, m.index)} ${rest.slice(m.index + m[0].length)}`;
    return m;
  };
  const clause: Clause = {};
  if (take(/\b(?:never|not|no(?: time)?|nothing|none|can't|except)\b/)) clause.never = true;
  let length = take(LENGTH);
  for (const [re, of] of DAY_SETS) {
    const m = take(re);
    if (m) { clause.days = of(m); break; }
  }
  length ??= take(LENGTH);
  if (length) clause.length = lengthOf(length);
  if (take(ALL_DAY)) clause.allDay = true;
  const range = take(RANGE);
  if (range) [clause.from, clause.to] = [range[1], range[2]];
  else {
    clause.to = take(UNTIL)?.[1];
    clause.from = take(AFTER)?.[1];
  }
  const left = rest.split(/[^a-z0-9']+/).filter(w => w && !AROUND.has(w));
  return left.length ? undefined : clause;
}

/** A clause without a day ("two hours, most evenings") joins its neighbour. */
function joined(clauses: readonly Clause[]): Clause[] {
  const out: Clause[] = [];
  for (const c of clauses) {
    const last = out.at(-1);
    if (last && !last.days && c.days) out[out.length - 1] = { ...last, ...given(c) };
    else if (last && !c.days && !c.never) out[out.length - 1] = { ...last, ...given(c) };
    else if (last?.days && c.days && isBare(last)) out[out.length - 1] = { ...c, days: { ...c.days, days: [...last.days.days, ...c.days.days], recurs: last.days.recurs || c.days.recurs } };
    else out.push(c);
  }
  return out;
}
/** "Tuesdays" alone, before "and Thursdays from seven". */
const isBare = (c: Clause): boolean => c.length === undefined && !c.from && !c.to && !c.allDay && !c.never && c.days?.part === 'day';
const given = (c: Clause): Clause => Object.fromEntries(Object.entries(c).filter(([, v]) => v !== undefined)) as Clause;

function lengthOf(m: RegExpExecArray): number {
  if (m[3]) return count(m[3]) / 60;
  const half = /and a half/.test(m[0]) ? 0.5 : 0;
  const said = m[1] ?? /^(\S+)/.exec(m[0])![1]!;
  if (/^half/.test(said)) return 0.5;
  return (/^a couple/.test(said) ? 2 : /^a few/.test(said) ? 3 : /^an?$/.test(said) ? 1 : count(said)) + half;
}

/** A weekday said twice has the last that was said of it. */
const distinct = (list: readonly WeeklyStretch[]): WeeklyStretch[] =>
  [...new Map(list.map(s => [s.weekday, s])).values()].sort((a, b) => a.weekday - b.weekday);

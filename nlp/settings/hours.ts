/**
 * The person's usual hours in the shop, from words: "two hours most evenings, Saturdays till noon". Weekdays are 1 (Monday) to 7, times
 * HH:MM. Read only where the whole note is about them: every word must be part of it, so that hours spent on a part are never taken for it.
 */
export interface WeeklyStretch { weekday: number; from: string; to: string }
/** `adds`: "Sundays too": the other days stay as they were. `never`: weekdays without time. */
export interface HoursRead { weekly: WeeklyStretch[]; never: number[]; adds: boolean }

const DAY_NAMES = ['monday|mon', 'tuesday|tues|tue', 'wednesday|weds|wed', 'thursday|thurs|thur|thu', 'friday|fri', 'saturday|sat', 'sunday|sun'];
const ONE_DAY = String.raw`(?:${DAY_NAMES.join('|')})`;
const WORDS = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];
const NUMBER = String.raw`(?:\d+(?:[.:]\d+)?|${WORDS.slice(1).join('|')})`;
const PART = String.raw`(?:mornings?|afternoons?|evenings?|nights?)`;

const LENGTH = new RegExp(String.raw`\b(?:(?:an?|${NUMBER}) hours? and a half|(?:(an?|a couple(?: of)?|a few|half an?|${NUMBER})( and a half)?) ?(?:hours?|hrs?|h))\b|\b(${NUMBER}) ?(?:minutes|mins)\b`);
const CLOCK = String.raw`(?:noon|midday|midnight|lunch(?:time)?|supper(?: ?time)?|dinner(?: ?time)?|tea(?: ?time)?|dark|half(?: past)? ${NUMBER}|${NUMBER}(?: ?(?:o'?clock|am|pm|a\.m\.?|p\.m\.?))?)`;
const RANGE = new RegExp(String.raw`\b(?:from |between )?(${CLOCK}) ?(?:to|till|until|til|and|-|–) ?(${CLOCK})(?= |$)`);
const UNTIL = new RegExp(String.raw`\b(?:till|until|til|up to|before|to) (${CLOCK})(?= |$)`);
const AFTER = new RegExp(String.raw`\b(?:after|from|starting at|past) (${CLOCK}|work)(?= |$)`);
const ALL_DAY = /\b(?:all|the whole|full) days?\b/;

type Part = 'morning' | 'afternoon' | 'evening' | 'day';
interface Days { days: number[]; part: Part; recurs: boolean }
const SETS: readonly [RegExp, (m: RegExpExecArray) => Days][] = [
  [new RegExp(String.raw`\b(${NUMBER}|a couple of|a few) (${PART}|days) (?:a|per|each|every) week\b`), m => ({ days: spread(count(m[1]!)), part: partOf(m[2]), recurs: true })],
  [/\b(once|twice) a week\b/, m => ({ days: spread(m[1] === 'once' ? 1 : 2), part: 'evening', recurs: true })],
  [new RegExp(String.raw`\b(?:every|each) (?:other|second) (${PART}|day)\b`), m => ({ days: [1, 3, 5], part: partOf(m[1]), recurs: true })],
  [new RegExp(String.raw`\b(${ONE_DAY})s? ?(?:to|through|thru|till|-|–) ?(${ONE_DAY})s?(?: (${PART}))?\b`), m => ({ days: run(dayOf(m[1]!), dayOf(m[2]!)), part: partOf(m[3]), recurs: true })],
  [new RegExp(String.raw`\b(?:(every|each|most) )?((?:${ONE_DAY})s?(?:(?:,| and| or|, and| &|\/) ?(?:${ONE_DAY})s?)*)(?: (${PART}))?\b`),
    m => ({ days: [...m[2]!.matchAll(new RegExp(ONE_DAY, 'g'))].map(d => dayOf(d[0])), part: partOf(m[3]), recurs: m[1] !== undefined || /days\b|s$/.test(m[2]!) || /s$/.test(m[3] ?? '') })],
  [/\b(?:on |at )?(?:(?:the|every|each|most) )?week ?ends?\b(?: (mornings?|afternoons?|evenings?))?/, m => ({ days: [6, 7], part: partOf(m[1]), recurs: /ends|every|each|most/.test(m[0]) })],
  [new RegExp(String.raw`\b(?:(?:on )?(?:most|every|each|all) )?(?:week ?nights?|week ?day (?:evenings?|nights?)|week ?evenings?|school nights)\b`), m => ({ days: m[0].includes('most') ? [1, 2, 3, 4] : [1, 2, 3, 4, 5], part: 'evening', recurs: true })],
  [new RegExp(String.raw`\b(?:(?:on )?(?:most|every|each|all) )?week ?days?(?: (${PART}))?\b`), m => ({ days: m[0].includes('most') ? [1, 2, 3, 4] : [1, 2, 3, 4, 5], part: m[1] ? partOf(m[1]) : 'evening', recurs: true })],
  [new RegExp(String.raw`\b(?:(most|every|each|all|of an|in the|the|my) )?(${PART})\b`), m => {
    const each = m[1] === 'every' || m[1] === 'each';
    return { days: m[1] === 'most' ? [1, 2, 3, 4] : each ? [1, 2, 3, 4, 5, 6, 7] : [1, 2, 3, 4, 5], part: partOf(m[2]), recurs: each || m[1] === 'most' || m[1] === 'of an' || m[2]!.endsWith('s') };
  }],
  [/\b(?:every|each) (?:single )?day\b|\bdaily\b|\b(?:a|per) day\b/, () => ({ days: [1, 2, 3, 4, 5, 6, 7], part: 'evening', recurs: true })],
  [/\bmost days\b/, () => ({ days: [1, 2, 3, 4, 6], part: 'evening', recurs: true })],
];

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
  const weekly = all.filter(c => !c.never).flatMap(c => c.days!.days.map(weekday => ({ weekday, ...stretch(c) })));
  if (all.some(c => !c.never && c.length === undefined && !c.from && !c.to && !c.allDay && all.length === 1) || (!weekly.length && !never.length)) return undefined;
  return { weekly: distinct(weekly).filter(w => !never.includes(w.weekday)), never, adds: adds || !weekly.length };
}

interface Clause { days?: Days; length?: number; from?: string; to?: string; allDay?: boolean; never?: boolean }

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
  for (const [re, of] of SETS) {
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

const dayOf = (name: string): number => DAY_NAMES.findIndex(d => new RegExp(`^(?:${d})$`).test(name)) + 1;
const run = (a: number, b: number): number[] => Array.from({ length: ((b - a + 7) % 7) + 1 }, (_, i) => ((a - 1 + i) % 7) + 1);
const spread = (n: number): number[] => [[3], [2, 4], [1, 3, 5], [1, 2, 3, 4], [1, 2, 3, 4, 5], [1, 2, 3, 4, 5, 6], [1, 2, 3, 4, 5, 6, 7]][Math.min(7, Math.max(1, Math.round(n))) - 1]!;
const count = (said: string): number => (said === 'a couple of' ? 2 : said === 'a few' ? 3 : WORDS.includes(said) ? WORDS.indexOf(said) : Number(said.replace(':', '.')));
const partOf = (said: string | undefined): Part => (!said ? 'day' : said.startsWith('morn') ? 'morning' : said.startsWith('after') ? 'afternoon' : /^(even|night)/.test(said) ? 'evening' : 'day');

function lengthOf(m: RegExpExecArray): number {
  if (m[3]) return count(m[3]) / 60;
  const half = /and a half/.test(m[0]) ? 0.5 : 0;
  const said = m[1] ?? /^(\S+)/.exec(m[0])![1]!;
  if (/^half/.test(said)) return 0.5;
  return (/^a couple/.test(said) ? 2 : /^a few/.test(said) ? 3 : /^an?$/.test(said) ? 1 : count(said)) + half;
}

/** Where nothing else is said: an evening begins at six, a morning at eight, a day off at nine. Common practice, no source. */
const BEGINS: Record<Part, number> = { morning: 8, afternoon: 13, evening: 18, day: 9 };
const LASTS: Record<Part, number> = { morning: 4, afternoon: 4, evening: 2, day: 4 };

function stretch({ days, length, from, to, allDay }: Clause): { from: string; to: string } {
  const { part } = days!;
  if (allDay) return { from: '09:00', to: '17:00' };
  const late = part === 'evening' || part === 'afternoon' || (part === 'day' && isAfterWork(days!.days, from, to)) ? 12 : 0;
  const start = from === undefined ? undefined : from === 'work' ? 18 : hourOf(from, late, !to || Number(from) < 6 || (WORDS.includes(from) && WORDS.indexOf(from) < 6));
  let end = to === undefined ? undefined : hourOf(to, late && part !== 'afternoon' ? 12 : 0, true);
  if (start !== undefined && end !== undefined && end <= start) end = Math.min(24, end + 12);
  if (end !== undefined && start === undefined) {
    const begin = length === undefined ? Math.min(BEGINS[part], end > 8 ? 8 : end - 1) : end - length;
    return span(part === 'evening' && end > 18 && length === undefined ? 18 : begin, end);
  }
  const begin = start ?? BEGINS[part];
  return span(begin, end ?? begin + (length ?? LASTS[part]));
}

/** "Tuesdays seven to nine": on a working day that is an evening. */
function isAfterWork(days: readonly number[], from: string | undefined, to: string | undefined): boolean {
  const [a, b] = [from, to].map(t => (t === undefined ? NaN : hourOf(t, 0, false)));
  return days.every(d => d <= 5) && a! >= 5 && a! <= 9 && b! > a! && b! <= 11 && !/a\.?m/.test(`${from}${to}`);
}

/** Hours on the clock: a bare figure up to seven is after noon, as is one that a part of the day says so. */
function hourOf(said: string, shift: number, bareIsLate: boolean): number {
  if (/noon|midday|lunch/.test(said)) return 12;
  if (said === 'midnight') return 24;
  if (/supper|dinner|tea|dark/.test(said)) return 19;
  const half = /^half/.test(said) ? 0.5 : 0;
  const m = new RegExp(String.raw`(${NUMBER})`).exec(said)!;
  const [h, min = '0'] = m[1]!.split(/[.:]/);
  const hour = (WORDS.includes(h!) ? WORDS.indexOf(h!) : Number(h)) + half + Number(min) / 60;
  if (/a\.?m/.test(said)) return hour % 12;
  if (/p\.?m/.test(said)) return (hour % 12) + 12;
  return hour < 12 && (shift > 0 || (bareIsLate && hour < 8)) ? hour + 12 : hour;
}

const span = (from: number, to: number): { from: string; to: string } => ({ from: clock(Math.max(0, from)), to: clock(Math.min(24, to)) });
const clock = (hours: number): string => `${String(Math.floor(hours + 1e-9)).padStart(2, '0')}:${String(Math.round((hours % 1) * 60)).padStart(2, '0')}`;
/** A weekday said twice has the last that was said of it. */
const distinct = (list: readonly WeeklyStretch[]): WeeklyStretch[] =>
  [...new Map(list.map(s => [s.weekday, s])).values()].sort((a, b) => a.weekday - b.weekday);

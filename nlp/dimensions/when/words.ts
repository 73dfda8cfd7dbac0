import { table } from '../../words/table.ts';

/** Names of days and months, with the misspellings that come out of phones and recognisers; ordinals. */
export const WEEKDAYS: Record<string, number> = table({
  monday: 0, mon: 0, mondays: 0, tuesday: 1, tues: 1, tue: 1, teusday: 1, tuesdays: 1, wednesday: 2, weds: 2, wed: 2, wensday: 2, wednsday: 2, wednesdays: 2,
  thursday: 3, thurs: 3, thur: 3, thu: 3, thurday: 3, thrusday: 3, thursdays: 3, friday: 4, fri: 4, firday: 4, fridays: 4,
  saturday: 5, sat: 5, saterday: 5, satuday: 5, saturdays: 5, sunday: 6, sun: 6, sundays: 6,
});
/** Short forms that are words of their own; they are days only after a word that calls for one. */
export const SHY = new Set(['sat', 'sun', 'wed', 'mon', 'tue', 'thu', 'fri']);

export const MONTHS: Record<string, number> = table({
  january: 1, jan: 1, february: 2, febuary: 2, feb: 2, march: 3, mar: 3, april: 4, apr: 4, may: 5, june: 6, jun: 6, july: 7, jul: 7, august: 8, aug: 8,
  september: 9, sept: 9, sep: 9, october: 10, oct: 10, november: 11, nov: 11, december: 12, dec: 12,
});

const ORDINAL_WORDS = 'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth'.split(' ');
const ORDINALS: Record<string, number> = Object.fromEntries([
  ...ORDINAL_WORDS.map((w, i) => [w, i + 1]),
  ...ORDINAL_WORDS.slice(0, 9).map((w, i) => [`twenty ${w}`, 21 + i]),
  ['thirtieth', 30], ['thirty first', 31], ['eigth', 8], ['twelth', 12], ['nineth', 9],
]);

const alt = (o: Record<string, number>): string => Object.keys(o).sort((a, b) => b.length - a.length).join('|');
export const WD = `(?:${alt(WEEKDAYS)})(?![a-z])`;
export const MONTH = `(?:${alt(MONTHS)})(?![a-z])`;
export const ORD = `(?:(?:${alt(ORDINALS)})(?![a-z])|\\d{1,2} ?(?:st|nd|rd|th)(?![a-z]))`;

export const ordinal = (s: string): number => ORDINALS[s] ?? Number.parseInt(s, 10);

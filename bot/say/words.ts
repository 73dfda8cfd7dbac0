import { DateTime } from 'luxon';

/** Small forms that every sentence shares: days, money, numbers, lists. All of them are meant to be read at arm's length or aloud. */

/** "Fri 5 Jun", with the year only when it isn't this one. */
export function day(iso: string, nowAt: string): string {
  const d = DateTime.fromISO(iso.slice(0, 10), { zone: 'utc' });
  if (!d.isValid) return iso;
  const today = DateTime.fromISO(nowAt.slice(0, 10), { zone: 'utc' });
  const ahead = d.diff(today, 'days').days;
  if (ahead === 0) return 'today';
  if (ahead === 1) return 'tomorrow';
  if (ahead === -1) return 'yesterday';
  return d.toFormat(d.year === today.year ? 'ccc d LLL' : 'ccc d LLL yyyy', { locale: 'en' });
}

/** A day as it is said; what is none ("50 hours running") in its own words. */
export const dayOrWords = (said: string, nowAt: string): string => (/^\d{4}-\d\d-\d\d$/.test(said) ? day(said, nowAt) : said);

/** Money without a sign of currency: the shop has one, and the person knows which. Whole sums lose their cents. */
export const money = (n: number): string => (Number.isInteger(n) ? String(n) : n.toFixed(2));

/** At most three decimals, four under one, no trailing zeros: 0.0065, 1.25, 90. */
export const figure = (n: number): string => String(Number(n.toFixed(Math.abs(n) < 1 ? 4 : 3)));

/** Signs that stand at the figure without a space. */
const AT_FIGURE = new Set(['%', '°F', '°C']);

/** A value with its unit as the trade writes it; a plain count has none, and small inches are said in thou beside. */
export function measure(value: number, unit?: string): string {
  if (!unit || unit === 'count') return figure(value);
  const thou = unit === 'in' && Math.abs(value) < 0.1 && value !== 0 ? ` (${figure(value * 1000)} thou)` : '';
  return `${figure(value)}${AT_FIGURE.has(unit) ? '' : ' '}${unit}${thou}`;
}

/** "a", "a and b", "a, b and c". */
export const listed = (items: readonly string[], join = 'and'): string =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} ${join} ${items[items.length - 1]}`;

export const capital = (s: string): string => s.charAt(0).toUpperCase() + s.slice(1);
export const plural = (n: number, one: string, many = `${one}s`): string => `${figure(n)} ${n === 1 ? one : many}`;
/** Ends a line with a full stop unless it has its own end. */
export const stop = (s: string): string => (/[.?!…]$/.test(s) ? s : `${s}.`);

/** A part with its article; a machine that has a name of its own goes without. */
export const the = (name: string): string => (/^\p{Lu}/u.test(name) ? name : `the ${name}`);

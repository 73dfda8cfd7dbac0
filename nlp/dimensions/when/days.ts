/**
 * Calendar days as whole numbers (days since 1970-01-01), so that a day is a day whatever the clocks do. Weeks run Monday to Sunday.
 */
const MS = 86_400_000;
export const dayOf = (iso: string): number => Math.floor(Date.parse(`${iso.slice(0, 10)}T00:00:00Z`) / MS);
export const isoOf = (day: number): string => new Date(day * MS).toISOString().slice(0, 10);
/** 0 Monday … 6 Sunday. */
export const weekday = (day: number): number => (day + 3) % 7;
export const monday = (day: number): number => day - weekday(day);

interface Civil { y: number; m: number; d: number }
export function civil(day: number): Civil {
  const t = new Date(day * MS);
  return { y: t.getUTCFullYear(), m: t.getUTCMonth() + 1, d: t.getUTCDate() };
}
/** Months past twelve or before one carry into the year. */
export const dayNumber = (y: number, m: number, d: number): number => Math.floor(Date.UTC(y, m - 1, d) / MS);
export const monthLength = (y: number, m: number): number => new Date(Date.UTC(y, m, 0)).getUTCDate();

/** Some months on, kept inside the month: January 31 and one month is the last of February. */
export function addMonths(day: number, n: number): number {
  const { y, m, d } = civil(day);
  const first = civil(dayNumber(y, m + n, 1));
  return dayNumber(first.y, first.m, Math.min(d, monthLength(first.y, first.m)));
}

/** Easter Sunday of a year (the anonymous Gregorian computus). */
export function easter(y: number): number {
  const a = y % 19, b = Math.floor(y / 100), c = y % 100, d = Math.floor(b / 4), e = b % 4;
  const g = Math.floor((8 * b + 13) / 25), h = (19 * a + b - d - g + 15) % 30, i = Math.floor(c / 4), k = c % 4;
  const l = (32 + 2 * e + 2 * i - h - k) % 7, m = Math.floor((a + 11 * h + 19 * l) / 433), n = Math.floor((h + l - 7 * m + 90) / 25);
  return dayNumber(y, n, (h + l - 7 * m + 33 * n + 19) % 32);
}

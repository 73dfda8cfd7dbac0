import { DateTime } from 'luxon';

export const DAY = 86_400_000;
export const HOUR = 3_600_000;

/** A day (its beginning, in the shop's zone) or a moment with offset, as ms UTC. */
export const momentOf = (dayOrMoment: string, zone: string): number =>
  dayOrMoment.length === 10 ? DateTime.fromISO(dayOrMoment, { zone }).toMillis() : Date.parse(dayOrMoment);

/** The local day (YYYY-MM-DD) of a moment. */
export const dayIn = (at: number, zone: string): string => DateTime.fromMillis(at, { zone }).toISODate()!;

import { DateTime } from 'luxon';

/** The moment now, ISO to the second with the offset that the zone has at that moment. */
export const nowIn = (zone: string, ms = Date.now()): string =>
  DateTime.fromMillis(ms, { zone }).set({ millisecond: 0 }).toISO({ suppressMilliseconds: true, includeOffset: true })!;

/** A moment given by hand: ISO; without an offset it is read in the zone. Undefined when it is no moment. */
export function momentIn(zone: string, text: string): string | undefined {
  const at = DateTime.fromISO(text, { zone, setZone: true });
  return at.isValid ? at.set({ millisecond: 0 }).toISO({ suppressMilliseconds: true, includeOffset: true })!.replace(/Z$/, '+00:00') : undefined;
}

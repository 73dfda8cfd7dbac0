import { DateTime } from 'luxon';

/** How long a note may have waited in the browser and still be dated to the moment it was said. */
const LONGEST_WAIT = 30 * 86_400_000;

/** The moment of a message, ISO with the offset of the shop's zone. A note that waited in the browser is dated to when it was said, as far as that can be true. */
export function clock(zone: string | undefined): (saidAt?: number) => string {
  return saidAt => {
    const now = Date.now();
    const at = saidAt !== undefined && saidAt <= now && now - saidAt < LONGEST_WAIT ? saidAt : now;
    return DateTime.fromMillis(at).setZone(zone ?? 'local').startOf('second').toISO({ suppressMilliseconds: true })!;
  };
}

import { dayIn, plusDays } from '../local-time.ts';
import { allThings, keyOf, type Look, type Occasion } from '../occasion.ts';

/** What was only meant for now is worth a word after so long, days. */
const LONG_DAYS = 21;

export const temporary: Look = ({ shop, today, now }) => allThings(shop).flatMap(({ machine, thing, name }): Occasion[] => {
  const { fit } = thing;
  if ((fit?.state !== 'temporary' && fit?.state !== 'tried') || plusDays(dayIn(Date.parse(fit.at), now.zone), LONG_DAYS) >= today) return [];
  const key = keyOf('temporary', machine, thing, fit.id);
  return [{ topic: 'temporary', key, stop: key, part: name, state: fit.state, since: fit.at, ...(fit.with ? { with: fit.with } : {}) }];
});

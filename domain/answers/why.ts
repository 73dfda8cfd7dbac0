import { DateTime } from 'luxon';
import type { Obstacle } from '../plan/conditions.ts';
import type { NextReason } from '../plan/rank.ts';

/** The short reasons that answers carry in words, for those who read them as facts; sentences are made of them elsewhere. */

/** How to name things: `nameOf` turns an id of a job or a supply into the person's words. */
export interface Naming { zone: string; now: number; nameOf: (id: string) => string }

/** `10:00` for today, `Sat 10:00` within a week, `Sat 16 May 10:00` beyond. */
export function momentWords(at: number, { zone, now }: Pick<Naming, 'zone' | 'now'>): string {
  const moment = DateTime.fromMillis(at, { zone, locale: 'en-GB' });
  const days = moment.startOf('day').diff(DateTime.fromMillis(now, { zone }).startOf('day'), 'days').days;
  if (days === 0) return moment.toFormat('HH:mm');
  return moment.toFormat(days > 0 && days < 7 ? 'ccc HH:mm' : 'ccc d LLL HH:mm');
}

const OBSTACLE_WORDS: Record<Obstacle, string> = {
  wet: 'rain', cold: 'too cold', hot: 'too hot', damp: 'air too damp', dew: 'too near the dew point', wind: 'too windy', dark: 'no daylight', help: 'needs a second pair of hands',
};
export const obstacleWords = (obstacle: Obstacle): string => OBSTACLE_WORDS[obstacle];

/** Why a job is worth doing now: `unlocks 4 others`, `dry until 15:00`, `fits your 40 minutes`, `belt is in`. */
export function nextReasonWords(reason: NextReason, naming: Naming): string {
  switch (reason.why) {
    case 'unlocks': return reason.count === 1 ? 'unlocks 1 other' : `unlocks ${reason.count} others`;
    case 'dryUntil': return `dry until ${momentWords(reason.until, naming)}`;
    case 'fits': return `fits your ${reason.minutes} minutes`;
    case 'inHand': return `${reason.what} is in`;
    case 'helpUntil': return reason.until === undefined ? 'help is here' : `help is here until ${momentWords(reason.until, naming)}`;
    case 'temporary': return `${reason.part} is only on for now`;
    case 'decides': return 'the finish hangs on it';
    case 'ready': return 'nothing holds it up';
  }
}

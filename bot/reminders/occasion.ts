import type { Now } from '../../domain/answers/given.ts';
import type { Cause, NextJob } from '../../domain/model/answer.ts';
import type { Machine, Shop, Thing } from '../../domain/log/shop.ts';
import type { Weather } from '../../domain/plan/forecast.ts';
import type { PlanSettings } from '../../domain/plan/from-shop/settings.ts';
import type { ReminderMark } from '../../domain/store/reminders.ts';
import type { ReminderSettings } from './settings.ts';

/** Something to be said unasked, as facts; its wording is elsewhere. Days YYYY-MM-DD, moments ms UTC. */
export type Facts =
  | { topic: 'morning'; jobs: NextJob[]; /** Whose forecast it goes by. */ source?: string; sky?: { is: 'wet'; from: number; to: number } | { is: 'lastDry'; rain: number } }
  | { topic: 'rain'; part: string; from: number; coat?: string; outside?: string; said: boolean; source?: string }
  | { topic: 'recheck'; do: string; part?: string; when: string }
  | { topic: 'late'; item: string; expected: string; source?: string; for?: string }
  | { topic: 'cured'; part: string; since: number; /** By the usual time of that product, not by the person's word. */ usual?: { product: string; hours: number }; then?: string }
  | { topic: 'back'; part: string; until: string; where?: string; do?: string }
  | { topic: 'help'; day: string; for?: string; jobs: string[]; open: Cause[]; lifts: boolean }
  | { topic: 'temporary'; part: string; state: 'temporary' | 'tried'; since: string; with?: string };

/** `key` names the occasion, which is said once; `stop` is what "stop telling me that" ends: the same matter on any later day. */
export type Occasion = Facts & { key: string; stop: string };

/** What occasions are looked for in. */
export interface About {
  shop: Shop;
  now: Now;
  /** The moment of `now`, ms UTC. */
  at: number;
  today: string;
  weather: Weather;
  /** Whose forecast it is and how old; undefined: none is fetched. */
  source?: string;
  settings: ReminderSettings;
  /** The person's hours; undefined: never said nor learned. */
  hours?: PlanSettings['hours'];
  /** When the last note was made, ms UTC. */
  lastNote?: number;
  mark: (key: string) => ReminderMark | undefined;
  next: (place?: 'indoors' | 'outdoors') => NextJob[];
  holdingUp: (part: string) => Cause[];
}

export type Look = (about: About) => Occasion[];

/** Every thing of the shop, with what it is called. */
export const allThings = (shop: Shop): { machine: Machine; thing: Thing; name: string }[] =>
  [...shop.machines.values()].flatMap(machine => [...machine.things.values()].map(thing => ({ machine, thing, name: thing.key ? thing.name : machine.name || 'machine' })));

/** A key of what was said of a thing by an entry; keys hold the entry's number, so that the same said anew is a new occasion. */
export const keyOf = (topic: Facts['topic'], machine: Machine, thing: Thing, id: number | string): string => [topic, machine.key, thing.key, id].join('|');

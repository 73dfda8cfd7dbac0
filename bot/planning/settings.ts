import { z } from 'zod';
import { addDays, dayOf } from '../../domain/log/days.ts';
import type { Log } from '../../domain/log/keeper.ts';
import { learnedHours, type Sign } from '../../domain/plan/learned.ts';
import { ASSUMED_HOURS, type PlanSettings } from '../../domain/plan/from-shop/settings.ts';
import { readSetting, writeSetting } from '../../domain/store/settings.ts';
import type { Deps } from '../turn/deps.ts';

/** The person's hours as they were said. */
const HOURS = 'shop hours';
/** Usual orders that the person turned down, by id. */
const REFUSED = 'refused orders';

/** Whether there is a hoist: "yes", "no"; not set: never said. */
export const HOIST = 'hoist';

const clock = z.string().regex(/^\d\d:\d\d$/);
const Stretch = z.object({ from: clock, to: clock });
const Hours = z.object({
  weekly: z.array(Stretch.extend({ weekday: z.number().int().min(1).max(7) })),
  exceptions: z.array(z.object({ date: z.string(), stretches: z.array(Stretch) })),
});
export type SaidHours = z.infer<typeof Hours>;

/** How far back the log shows a usual week, days; and how many notes are looked at. */
const LOOK_BACK = 57;
const MOST_NOTES = 3_000;

const parsed = <T>(schema: z.ZodType<T>, text: string | undefined): T | undefined => {
  if (text === undefined) return undefined;
  try { return schema.safeParse(JSON.parse(text)).data; } catch { return undefined; }
};

export const hoursSaid = ({ store }: Log): SaidHours | undefined => parsed(Hours, readSetting(store, HOURS));
export const keepHours = ({ store }: Log, hours: SaidHours): void => writeSetting(store, HOURS, JSON.stringify(hours));

export const refusedOrders = ({ store }: Log): Set<string> => new Set(parsed(z.array(z.string()), readSetting(store, REFUSED)) ?? []);
export function refuseOrders(log: Log, ids: readonly string[]): void {
  writeSetting(log.store, REFUSED, JSON.stringify([...new Set([...refusedOrders(log), ...ids])].sort()));
}

/** What the planner is told beside the log: the hours as said, else as the log shows them; what was turned down; the forecast where there is one. */
export function planSettings(deps: Pick<Deps, 'log' | 'zone' | 'weather'>, at: string): PlanSettings {
  const { log, zone } = deps;
  const said = hoursSaid(log);
  const hoist = readSetting(log.store, HOIST);
  const base: PlanSettings = { refused: refusedOrders(log), ...(hoist === undefined ? {} : { hoist: hoist === 'yes' }), ...deps.weather?.planning() };
  if (said?.weekly.length) return { ...base, hours: said, hoursFrom: 'said' };
  const learned = learnedHours(signs(log, at), Date.parse(at), zone);
  const exceptions = said?.exceptions ?? [];
  if (learned) return { ...base, hours: { weekly: learned.weekly, exceptions }, hoursFrom: 'learned' };
  return exceptions.length ? { ...base, hours: { weekly: ASSUMED_HOURS, exceptions }, hoursFrom: 'assumed' } : base;
}

/** Signs that the person was in the shop: notes, and hours said for a day. */
function signs({ past, shop }: Log, at: string): Sign[] {
  const from = addDays(dayOf(at), -LOOK_BACK);
  const notes = past.notesOn({ from, to: dayOf(at) }, MOST_NOTES).notes.map((n): Sign => ({ at: Date.parse(n.at) }));
  const hours = [...shop.machines.values()].flatMap(m => [...m.things.values()].flatMap(t => t.hours))
    .filter(h => !h.total && dayOf(h.at) >= from).map((h): Sign => ({ at: Date.parse(h.at), hours: h.hours }));
  return [...notes, ...hours];
}

import { actOf } from '../lore/act.ts';
import { usualRechecks } from '../lore/rechecks.ts';
import type { Machine } from '../log/shop.ts';
import type { UsualLook } from '../model/answer.ts';
import { nameKey } from '../model/names.ts';
import { named } from './find.ts';

/** The looks that the trade takes of what is now on for good, or brought to its torque, on a machine, less those that somebody asked for of that part or of what is to be looked at. The soonest first. */
export function usualLooks(machine: Machine): UsualLook[] {
  const out = new Map<string, UsualLook>();
  const asked = (name: string): boolean => (machine.things.get(nameKey(name))?.rechecks.length ?? 0) > 0;
  for (const thing of machine.things.values()) {
    if (!/^(on|tight)$/.test(thing.fit?.state ?? '') || thing.rechecks.length) continue;
    for (const look of usualRechecks(actOf(thing.name))) if (!asked(look.part) && !out.has(`${look.do} ${look.part}`)) out.set(`${look.do} ${look.part}`, { ...look, ...named(machine) });
  }
  return [...out.values()].sort((a, b) => UNITS.indexOf(a.unit) - UNITS.indexOf(b.unit) || a.after - b.after);
}
const UNITS = ['hours', 'miles', 'days', 'weeks', 'months'];

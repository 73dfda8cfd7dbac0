import { dueOf, openRechecks } from '../../../domain/answers/rechecks.ts';
import { allThings, keyOf, type Look, type Occasion } from '../occasion.ts';

/** A recheck that falls due by the day, or by what the machine has run. */
export const recheck: Look = ({ shop, now }) => allThings(shop).flatMap(({ machine, thing }) =>
  openRechecks(machine, thing).flatMap((r): Occasion[] => {
    const state = dueOf(machine, r, now.at);
    if (!state.due) return [];
    const key = keyOf('recheck', machine, thing, r.id);
    const when = 'on' in state ? state.on : `${r.after} ${state.unit === 'hours' ? 'hours running' : 'miles'}`;
    return [{ topic: 'recheck', key, stop: key, do: r.do, when, ...(thing.key ? { part: thing.name } : machine.name ? { part: machine.name } : {}) }];
  }));

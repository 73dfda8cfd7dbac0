import { phraseOf } from '../../../domain/log/phrase.ts';
import type { HandsSaid, Machine } from '../../../domain/log/shop.ts';
import { act, type Act } from '../../../domain/lore/act.ts';
import { isRemoving, isReplacing } from '../../../domain/log/verbs.ts';
import { promised } from '../../../domain/plan/from-shop/help.ts';
import { usualConditions } from '../../../domain/lore/conditions.ts';
import { plusDays } from '../local-time.ts';
import type { Look } from '../occasion.ts';

/** Help that comes tomorrow: what it is for, what still stands in the way of that, and what else wants two people. */
export const help: Look = about => {
  const day = plusDays(about.today, 1);
  const coming = promised(about.shop).filter(h => h.when === day);
  const last = coming.at(-1);
  if (!last) return [];
  const wants = forWhat(coming);
  const jobs = [...about.shop.machines.values()].flatMap(twoHanded).filter(j => !wants.includes(j)).slice(0, 3);
  const key = `help|${day}|${last.id}`;
  const open = wants.flatMap(w => about.holdingUp(w)).filter(c => c.cause !== 'help');
  return [{ topic: 'help', key, stop: key, day, jobs, open, lifts: [...wants, ...jobs].some(lifts), ...(wants.length ? { for: wants.join(' and ') } : {}) }];
};

const forWhat = (hands: readonly HandsSaid[]): string[] => [...new Set(hands.flatMap(h => (h.forSaid ? [h.forSaid] : h.for ? [phraseOf(h.for)] : [])))];

/** Open jobs, and temporary fits of heavy parts, that usually take two people. */
function twoHanded(machine: Machine): string[] {
  return [...machine.things.values()].flatMap(t => {
    const jobs = t.jobs.filter(j => usualConditions(jobAct(j.do, t.name)).conditions.hands === 2).map(j => `${j.do} the ${t.name}`);
    const fit = t.fit?.state === 'temporary' && usualConditions(act(undefined, t.name)).conditions.hands === 2 ? [`put the ${t.name} on for good`] : [];
    return t.key ? [...jobs, ...fit] : [];
  });
}

/** Taking off is the part's own act in what is usual, as is putting another one on. */
const jobAct = (verb: string, part: string): Act => act(isRemoving(verb) || isReplacing(verb) ? undefined : verb, part, isRemoving(verb));

const lifts = (phrase: string): boolean => /\b(?:lift|hoist|jack|raise|engine|gearbox|axle|wheel|cab|hood|block|final drive)\b/.test(phrase.toLowerCase());

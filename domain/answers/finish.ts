import type { FinishAnswer } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import type { Shop } from '../log/shop.ts';
import { addDays } from '../log/days.ts';
import type { PlanInput } from '../plan/input.ts';
import { dayIn, momentOf } from '../plan/from-shop/moments.ts';
import { actsOn, onlyFor, planOf, type ShopPlan } from '../plan/from-shop/plan-of.ts';
import { chanceBy, simulate, type SimulationResult } from '../plan/simulate.ts';
import type { More, Now } from './given.ts';
import { basisOf } from './basis.ts';
import { covered, hereOf, lookUp } from './find.ts';
import { some } from './supply.ts';

/** What a question after the finish comes to: a simulation to be run on `input`. Plain data beside the plan that names things. */
interface FinishCase { ask: AskOf<'finish'>; plan: ShopPlan; input: PlanInput; more: string[] }

/** When it will be done: by Monte Carlo over the person's hours. */
export function finish(shop: Shop, ask: AskOf<'finish'>, now: Now, more: More): FinishAnswer {
  const found = finishCase(shop, ask, now, more);
  return 'kind' in found ? found : finishFrom(found, simulate(found.input));
}

/** The case to be simulated, or the answer where there is nothing to simulate. */
export function finishCase(shop: Shop, ask: AskOf<'finish'>, now: Now, more: More): FinishCase | FinishAnswer {
  const none = (why: string): FinishAnswer => ({ kind: 'finish', ...some({ part: ask.part, by: ask.by }), p50: null, p80: null, driver: null, chance: null, why });
  const found = ask.part === undefined ? undefined : lookUp(shop, ask.part, more.machine);
  if (ask.part !== undefined && !found) return none(`I have nothing about the ${ask.part} yet.`);
  const here = found?.machine ?? hereOf(shop, more.machine);
  const plan = planOf({ machines: here ? [here] : [...shop.machines.values()], shop, now, settings: more.planning });
  const part = found && !found.whole ? new Set(covered(found).map(t => t.key)) : undefined;
  const targets = part && here ? actsOn(plan, here, part) : [...plan.acts.keys()];
  if (!targets.length) return none(part ? 'Nothing is open on it.' : 'I know of nothing left to do. Say what must be done and I can plan it.');
  return { ask, plan, input: part ? onlyFor(plan, targets) : plan.input, more: [] };
}

/** The answer that a simulation comes to: dates of the shop's zone, never a bare mean. */
export function finishFrom({ ask, plan, input }: FinishCase, result: SimulationResult): FinishAnswer {
  const base = { kind: 'finish' as const, ...some({ part: ask.part, by: ask.by }) };
  if (!result.ok) return { ...base, p50: null, p80: null, driver: null, chance: null, why: result.why === 'circle' ? `The order goes in a circle: ${result.path.map(plan.nameOf).join(' → ')}.` : 'The jobs can\'t be put in an order.' };
  const { zone } = input.hours;
  const day = (at: number | undefined): string | null => (at === undefined ? null : dayIn(at, zone));
  const driver = result.driver && (result.driver.kind === 'weather' ? 'the weather' : plan.nameOf(result.driver.id));
  const stuck = result.stuck.length ? [`No day for: ${result.stuck.slice(0, 3).map(plan.nameOf).join('; ')}.`] : [];
  return {
    ...base, p50: day(result.p50), p80: day(result.p80), driver: driver ?? null,
    chance: ask.by === undefined ? null : Math.round(chanceBy(result, momentOf(addDays(ask.by, 1), zone) - 1) * 100) / 100,
    why: [...stuck, ...basisOf(plan, input)].join(' '),
  };
}

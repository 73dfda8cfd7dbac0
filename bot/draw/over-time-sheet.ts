import { hoursOverTime, moneyOverTime } from '../../domain/answers/over-time.ts';
import { spent } from '../../domain/answers/spent.ts';
import type { AskOf } from '../../domain/model/ask.ts';
import { drawMoneyAndHours } from './money-and-hours.ts';
import type { Deps } from '../turn/deps.ts';
import { factsFor } from '../planning/facts.ts';

/** Money and hours over time of what was asked about, as a drawing; whichever of the two was asked for, both are on it. */
export function overTimeSheet(deps: Deps, { part }: Pick<AskOf<'spent'> | AskOf<'timeSpent'>, 'part'>, at: string, machine?: string): string | { none: string } {
  const { log: { shop }, zone } = deps;
  const more = factsFor(deps, at, machine);
  const svg = drawMoneyAndHours({
    ...(part ? { of: part } : {}), money: moneyOverTime(spent(shop, { kind: 'spent', ...(part ? { part } : {}) }, more)),
    hours: hoursOverTime(shop, part ? { part } : {}, more), at, zone,
  });
  return svg ?? { none: 'No money and no hours were noted, so there is nothing to draw.' };
}

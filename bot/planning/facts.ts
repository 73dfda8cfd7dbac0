import type { More } from '../../domain/answers/given.ts';
import { mileRate } from '../../domain/store/settings.ts';
import type { Deps } from '../turn/deps.ts';
import { planSettings } from './settings.ts';

/** What answers need beside the state of the shop. `machine`: the chat's current one. */
export const factsFor = (deps: Deps, at: string, machine?: string): More =>
  ({ past: deps.log.past, machine, mileRate: mileRate(deps.log.store), planning: planSettings(deps, at) });

import { simulateBoth } from '../../domain/plan/compare.ts';
import type { PlanInput } from '../../domain/plan/input.ts';
import { simulate, type SimulationResult } from '../../domain/plan/simulate.ts';

/** Simulates one case, or two with the same luck: in this thread, or away in another. */
export type Simulate = (inputs: readonly [PlanInput] | readonly [PlanInput, PlanInput]) => Promise<SimulationResult[]> | SimulationResult[];

export const simulateHere = ([one, other]: readonly [PlanInput] | readonly [PlanInput, PlanInput]): SimulationResult[] =>
  (other ? simulateBoth(one, other) : [simulate(one, { orderBy: true })]);

import { parentPort } from 'node:worker_threads';
import type { PlanInput } from '../../domain/plan/input.ts';
import { simulateHere } from './simulate-here.ts';

/** One case to be simulated, or two with the same luck. What is asked for is answered in the order it came. */
export interface ToSimulate { id: number; inputs: readonly [PlanInput] | readonly [PlanInput, PlanInput] }

/** The thread that simulates, so that notes are answered meanwhile. Plain data in, plain data out. */
parentPort!.on('message', ({ id, inputs }: ToSimulate) => {
  try {
    parentPort!.postMessage({ id, results: simulateHere(inputs) });
  } catch (error) {
    parentPort!.postMessage({ id, fault: error instanceof Error ? error.stack ?? error.message : String(error) });
  }
});

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { compileNetwork } from '../../domain/plan/network.ts';
import { parsePsplib } from '../../domain/plan/psplib.ts';
import { search } from '../../domain/plan/search.ts';
import { simulate } from '../../domain/plan/simulate.ts';
import { madeUpProject } from '../domain/plan/tools/generate.ts';
import { madeUpShop } from '../domain/plan/tools/madeUpShop.ts';

/**
 * Prints how good and how fast the planner is, in one run on this machine. The baseline is a single pass in the order of
 * latest finish times (LFT). Sets: Kolisch & Sprecher 1996, PSPLIB; read from ../shared/psplib when they are there.
 */
const sets = new URL('../../../shared/psplib/', import.meta.url);

function report(set: string): void {
  const folder = new URL(`${set}.sm/`, sets);
  if (!existsSync(folder)) return console.log(`${set}: skipped, ../shared/psplib/${set}.sm is not on this machine`);
  // An optimum may be written "82..87" or "..83": what counts is the best known, behind the dots.
  const rows = readFileSync(new URL('optimum/optimum.csv', folder), 'utf8').trim().split('\n').slice(1);
  const best = new Map(rows.map((row) => [row.split(',')[0]!, Number(row.split(',')[1]!.split('..').pop())]));
  const projects = readdirSync(folder).filter((file) => file.endsWith('.sm')).map((file) => ({
    best: best.get(file)!, network: parsePsplib(readFileSync(new URL(file, folder), 'utf8')),
  }));
  for (const schedules of [1, 1000, 5000]) {
    const from = performance.now();
    const plans = projects.map(({ network, best: known }) => ({ known, ...search(network, schedules) }));
    const took = performance.now() - from;
    const gap = plans.reduce((sum, { makespan, known }) => sum + makespan / known - 1, 0) / plans.length;
    const made = plans.reduce((sum, plan) => sum + plan.schedules, 0);
    const hit = plans.filter(({ makespan, known }) => makespan <= known).length;
    const label = schedules === 1 ? 'single LFT pass (baseline)' : `${schedules} schedules`;
    console.log(`${set}: ${label}: mean gap ${(100 * gap).toFixed(3)} %, best known reached ${hit} of ${plans.length}, ${(took / made).toFixed(4)} ms a schedule`);
  }
}

function growth(): void {
  for (const count of [30, 60, 120, 300, 1000]) {
    const { activities, capacities } = madeUpProject(count, 1);
    const compiled = compileNetwork(activities, capacities);
    if (!compiled.ok) throw new Error(JSON.stringify(compiled));
    search(compiled.network, 200);
    const from = performance.now();
    const plan = search(compiled.network, 1000);
    const took = performance.now() - from;
    const single = search(compiled.network, 1).makespan;
    console.log(`made-up project of ${count}: ${(took / plan.schedules).toFixed(4)} ms a schedule, makespan ${(plan.makespan / single).toFixed(3)} of the single LFT pass`);
  }
}

/** A made-up shop with calendar, weather, help, cures and deliveries: a thousand runs on one core. */
function simulations(): void {
  for (const count of [30, 100, 300, 1000]) {
    const input = madeUpShop(count);
    simulate(input, { runs: 50 });
    const from = performance.now();
    const result = simulate(input);
    if (!result.ok) throw new Error(JSON.stringify(result));
    const took = performance.now() - from;
    const days = (moment: number | undefined) => (moment === undefined ? 'never' : `${((moment - input.now) / 864e5).toFixed(0)} days`);
    console.log(`made-up shop of ${count} jobs: ${result.runs} runs in ${(took / 1000).toFixed(2)} s, P50 ${days(result.p50)}, P80 ${days(result.p80)}`);
  }
}

report('j30');
report('j60');
growth();
simulations();

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { layOut } from '../../domain/plan/bench.ts';
import { newTimes } from '../../domain/plan/course.ts';
import { drawer } from '../../domain/plan/draw.ts';
import { inOrderOfIds, type PlanInput } from '../../domain/plan/input.ts';
import { compileNetwork } from '../../domain/plan/network.ts';
import { benchBuilder } from '../../domain/plan/pass.ts';
import { asList } from '../../domain/plan/plan.ts';
import { parsePsplib } from '../../domain/plan/psplib.ts';
import { search } from '../../domain/plan/search.ts';
import { simulate } from '../../domain/plan/simulate.ts';
import { madeUpProject } from '../domain/plan/tools/generate.ts';
import { madeUpShop } from '../domain/plan/tools/made-up-shop.ts';

/**
 * Prints how good and how fast the planner is, in one run on this machine, in time of the processor. The baseline is a single pass in the order of
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
    const [plans, took] = timed(() => projects.map(({ network, best: known }) => ({ known, ...search(network, schedules) })));
    const gap = plans.reduce((sum, { makespan, known }) => sum + makespan / known - 1, 0) / plans.length;
    const made = plans.reduce((sum, plan) => sum + plan.schedules, 0);
    const hit = plans.filter(({ makespan, known }) => makespan <= known).length;
    const label = schedules === 1 ? 'single LFT pass (baseline)' : `${schedules} schedules`;
    console.log(`${set}: ${label}: mean gap ${(100 * gap).toFixed(3)} %, best known reached ${hit} of ${plans.length}, ${(took / made).toFixed(4)} ms a schedule`);
  }
}

function growth(): void {
  let first = 0;
  for (const count of [30, 60, 120, 300, 1000]) {
    const { activities, capacities } = madeUpProject(count, 1);
    const compiled = compileNetwork(activities, capacities);
    if (!compiled.ok) throw new Error(JSON.stringify(compiled));
    search(compiled.network, 200);
    const [plan, took] = timed(() => search(compiled.network, 1000));
    const each = took / plan.schedules;
    first ||= each;
    const single = search(compiled.network, 1).makespan;
    console.log(`made-up project of ${count}: ${each.toFixed(4)} ms a schedule (${(each / first).toFixed(1)} times that of 30), makespan ${(plan.makespan / single).toFixed(3)} of the single LFT pass`);
  }
}

/**
 * A made-up shop with calendar, weather, help, cures and deliveries: a thousand runs on one core. The baseline is a thousand bare
 * passes of the same builder over the same list: nothing drawn by lot, nothing watched, nothing summed up.
 */
function simulations(): void {
  for (const count of [30, 100, 300, 1000]) {
    const input = madeUpShop(count);
    simulate(input, { runs: 50 });
    const [result, took] = timed(() => simulate(input));
    if (!result.ok) throw new Error(JSON.stringify(result));
    const bare = barePasses(input, result.order, result.runs);
    const [, ordered] = timed(() => simulate(input, { orderBy: true }));
    const days = (moment: number | undefined) => (moment === undefined ? 'never' : `${((moment - input.now) / 864e5).toFixed(0)} days`);
    const wants = input.supplies.filter((s) => 'leadDays' in s).length;
    console.log(`made-up shop of ${count} jobs: ${result.runs} runs in ${(took / 1000).toFixed(2)} s, ${(took / bare).toFixed(1)} times as many bare passes (baseline, ${(bare / 1000).toFixed(2)} s); `
      + `with order-by days of ${wants} wants ${(ordered / took).toFixed(2)} times that; P50 ${days(result.p50)}, P80 ${days(result.p80)}`);
  }
}

function barePasses(given: PlanInput, order: readonly string[], passes: number): number {
  const input = inOrderOfIds(given);
  const laid = layOut(input);
  if (!laid.ok) throw new Error(JSON.stringify(laid));
  const drawn = drawer(input, laid.bench);
  drawn.middling(1);
  const [builder, list, times] = [benchBuilder(laid.bench), asList(laid.bench, order), newTimes(input.jobs.length)];
  const [, took] = timed(() => { for (let k = 0; k < passes; k++) builder.build(list, drawn.draw, times); });
  return took;
}

/** Time of the processor, not of the clock: what else runs on the machine does not count. */
function timed<T>(work: () => T): [result: T, ms: number] {
  const from = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(from);
  return [result, (user + system) / 1000];
}

report('j30');
report('j60');
growth();
simulations();

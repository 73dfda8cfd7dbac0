import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parsePsplib, planPsplib } from '../../../domain/plan/psplib.ts';
import { search } from '../../../domain/plan/search.ts';
import { faultIn } from './tools/check.ts';

const own = new URL('../../../fixtures/plan/', import.meta.url);
const j30 = new URL('../../../../shared/psplib/j30.sm/', import.meta.url);
const here = existsSync(j30);

const optima = (text: string) => new Map(text.trim().split('\n').slice(1).map((line) => [line.split(',')[0]!, Number(line.split(',')[1])]));

describe('project files', () => {
  const known = optima(readFileSync(new URL('optimum.csv', own), 'utf8'));
  // Our own made-up projects; the optimum is proved by trying everything or by the lower bound (fixtures/plan/optimum.csv says which).
  it.each([...known])('%s is planned in %i', (file, optimum) => {
    const network = parsePsplib(readFileSync(new URL(file, own), 'utf8'));
    const plan = search(network, 5000);
    expect(faultIn(network, plan.start, plan.makespan)).toBeUndefined();
    expect(plan.makespan).toBe(optimum);
  });

  it('answers a line a file, in order', () => {
    const files = [...known.keys()].slice(0, 3).map((file) => new URL(file, own).pathname);
    expect([...planPsplib(files, 1000)]).toEqual(files.map((file, i) => ({ file, makespan: [...known.values()][i] })));
  });

  it('refuses what is no project', () => {
    expect(() => parsePsplib('hello')).toThrow(/not a single-mode project/);
  });
});

// Kolisch & Sprecher 1996, PSPLIB, EJOR 96:205-216: 480 projects of 30 jobs with proved optima. Not shipped with the program.
describe.skipIf(!here)(here ? 'PSPLIB J30' : 'PSPLIB J30: skipped, ../shared/psplib is not on this machine', () => {
  const known = here ? optima(readFileSync(new URL('optimum/optimum.csv', j30), 'utf8')) : new Map<string, number>();
  const networks = here ? readdirSync(j30).filter((file) => file.endsWith('.sm')).map((file) => ({
    optimum: known.get(file)!, network: parsePsplib(readFileSync(new URL(file, j30), 'utf8')),
  })) : [];

  function meanGap(schedules: number): number {
    const gaps = networks.map(({ network, optimum }) => {
      const plan = search(network, schedules);
      expect(faultIn(network, plan.start, plan.makespan)).toBeUndefined();
      expect(plan.schedules).toBeLessThanOrEqual(schedules);
      expect(plan.makespan).toBeGreaterThanOrEqual(optimum);
      return plan.makespan / optimum - 1;
    });
    return (100 * gaps.reduce((sum, gap) => sum + gap, 0)) / gaps.length;
  }

  it('has all its projects', () => expect(networks.length).toBe(480));
  it('is within 0.45 % of the optimum on average after 1,000 schedules', () => expect(meanGap(1000)).toBeLessThanOrEqual(0.45), 300_000);
  it('is within 0.20 % after 5,000', () => expect(meanGap(5000)).toBeLessThanOrEqual(0.2), 600_000);
});

import { z } from 'zod';
import { MANUAL_FIRST, type SumResult } from './answer.ts';
import { amount, measure, sharedUnit, unitOf } from './given.ts';
import { result, round } from './results.ts';
import { fewestLeaves, stacksFor, type Leaf } from './shim-stacks.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';
import { convert } from './units.ts';

const SHOWN = 8;
const MANY_LEAVES = 5;
const LARGEST_STACK = 12;
/** Leaves are known to a tenth of a thou, or to a hundredth of a millimetre; half of each is carried. */
const STEPS: Record<string, number> = { in: 20_000, mm: 200, mil: 20, µm: 1, cm: 2000 };
const LARGEST_TABLE = 200_000;

export const shims = defineSum({
  of: 'shims',
  answers: 'Which leaves on hand make a thickness, fewest first.',
  fields: {
    target: 'thickness wanted',
    have: 'leaves on hand, as many as needed of each; one named twice counts them all as named',
    counts: 'how many of each leaf, in the order of `have`',
    tolerance: 'how far off will do (none where not said)',
  },
  given: z.object({
    ...measure('target', 'length'),
    ...measure('tolerance', 'length', 'zero or more'),
    have: z.array(amount(), { error: 'must be a list of leaves' }).max(60, { error: 'is too long a list' }).optional(),
    haveUnit: unitOf('length').optional(),
    counts: z.array(z.number().int({ error: 'must be whole numbers' }).nonnegative({ error: 'cannot be under zero' })).optional(),
  }),
  work(given) {
    if (given.target === undefined) return ask('target', 'What thickness do you need?');
    if (!given.have?.length) return ask('have', 'Which leaves have you got?');
    const assumed: string[] = [];
    const unit = sharedUnit(given, ['target', 'have'], 'in', 'mm', assumed);
    const step = STEPS[unit];
    if (!step) return refuse(`Shims are measured in inches or millimetres, not ${unit}.`);
    const toSteps = (value: number, own: string | undefined) => Math.round(convert(value, own ?? unit, unit) * step);
    const leaves = countLeaves(
      given.have.map((each) => toSteps(each, given.haveUnit)),
      given.counts,
      assumed,
    );
    const target = toSteps(given.target, given.targetUnit);
    if (target > LARGEST_TABLE) return refuse('That is no shim stack: over an inch or so, use a spacer.');
    if (leaves.length === 0 || target === 0) return refuse('Those leaves are too thin to count.');
    const off = given.tolerance === undefined ? 0 : toSteps(given.tolerance, given.toleranceUnit);
    return stack(leaves, target, off, { unit, step, assumed });
  },
});

interface Frame {
  unit: string;
  step: number;
  assumed: string[];
}

/** Leaves with their counts. One named twice means that the leaves were counted out. */
function countLeaves(steps: readonly number[], counts: readonly number[] | undefined, assumed: string[]): Leaf[] {
  const named = new Map<number, number>();
  steps.forEach((thickness, i) => named.set(thickness, (named.get(thickness) ?? 0) + (counts?.[i] ?? 1)));
  const counted = counts !== undefined || named.size < steps.length;
  assumed.push(counted ? 'only the leaves counted' : 'as many of each leaf as it takes; say how many there are if not');
  return [...named]
    .filter(([thickness, count]) => thickness > 0 && count > 0)
    .map(([thickness, count]) => ({ thickness, count: counted ? count : Infinity }));
}

function stack(leaves: readonly Leaf[], target: number, off: number, frame: Frame): Outcome {
  const reach = target + Math.max(off, ...leaves.map((each) => each.thickness));
  const fewest = fewestLeaves(leaves, reach, LARGEST_STACK + 1);
  const totals = fewest.map((count, total) => ({ total, count })).filter(({ total, count }) => total > 0 && count < Infinity);
  if (totals.length === 0) return refuse('Every leaf is thicker than twice what you need.');
  const close = totals.filter(({ total }) => Math.abs(total - target) <= off);
  const nearest = Math.min(...totals.map(({ total }) => Math.abs(total - target)));
  const wanted = close.length > 0 ? close : totals.filter(({ total }) => Math.abs(total - target) === nearest);
  const least = Math.min(...wanted.map(({ count }) => count));
  if (least > LARGEST_STACK) return refuse(`It would take ${least} leaves: get a thicker one.`);
  const stacks = wanted
    .flatMap(({ total }) => stacksFor(leaves, total, least + 1, SHOWN))
    .sort((a, b) => a.length - b.length)
    .slice(0, SHOWN);
  return finish(stacks, target, close.length > 0, frame);
}

function finish(stacks: readonly number[][], target: number, hit: boolean, { unit, step, assumed }: Frame): Outcome {
  const decimals = unit === 'in' ? 5 : 4;
  const inUnit = (steps: number): number => round(steps / step, decimals);
  const total = (leaves: readonly number[]): number => leaves.reduce((sum, each) => sum + each, 0);
  const results: SumResult[] = stacks.map((leaves) => ({
    name: 'stack',
    value: leaves.map(inUnit),
    unit,
    note: sizeNote(leaves.length, inUnit(total(leaves)), unit),
  }));
  const off = total(stacks[0] ?? []) - target;
  const count = stacks[0]?.length ?? 0;
  return {
    results: [
      ...results,
      result('total', inUnit(target + off), unit, decimals),
      ...(off === 0 ? [] : [result('off', off / step, unit, decimals, off > 0 ? 'over' : 'under')]),
    ],
    basis: hit
      ? `every stack tried, fewest leaves first (${count})`
      : `no stack of these leaves makes it; nearest is ${inUnit(Math.abs(off))} ${unit} ${off > 0 ? 'over' : 'under'}`,
    assumed,
    caution: `Measure each leaf, clean and flat; thick ones outside; check again after it is torqued, and split it evenly where the part must stay centred. ${MANUAL_FIRST}`,
    source: 'sum of the leaves, all combinations; how leaves are laid: common practice, no source',
    also: count > MANY_LEAVES ? [`${count} leaves are more than the usual four or five: a thicker leaf is better`] : [],
  };
}

const sizeNote = (leaves: number, total: number, unit: string): string => `${leaves} ${leaves === 1 ? 'leaf' : 'leaves'}, ${total} ${unit}`;

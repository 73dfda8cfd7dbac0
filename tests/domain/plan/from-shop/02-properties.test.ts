import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../../domain/model/entry.ts';
import { planBoth } from '../../../../domain/plan/compare.ts';
import { planOf } from '../../../../domain/plan/from-shop/plan-of.ts';
import { planWork } from '../../../../domain/plan/plan.ts';
import { simulate } from '../../../../domain/plan/simulate.ts';
import { BenchShop } from '../../log/tools/shop.ts';

const now = { at: '2026-03-10T09:00:00+00:00', zone: 'UTC' };
const inputOf = (said: readonly (readonly Entry[])[]) => {
  const shop = new BenchShop();
  for (const note of said) shop.say([...note]);
  return planOf({ machines: [...shop.log.shop.machines.values()], shop: shop.log.shop, now }).input;
};

const PARTS = ['hood', 'radiator', 'water pump', 'fan', 'fan belt', 'fuel tank', 'left fender', 'gearbox', 'seat', 'magneto'];
const part = fc.constantFrom(...PARTS);
/** A note about one part that leaves something open. */
const open = (p: string) => fc.oneof(
  fc.constant<Entry[]>([{ kind: 'fit', part: p, state: 'off' }]),
  fc.constant<Entry[]>([{ kind: 'fit', part: p, state: 'temporary' }]),
  fc.constantFrom('paint', 'clean', 'weld', 'check', 'adjust').map((verb): Entry[] => [{ kind: 'job', do: verb, part: p }]),
  fc.constant<Entry[]>([{ kind: 'finding', part: p, condition: 'bad', verdict: 'repair' }]),
  fc.constant<Entry[]>([{ kind: 'want', item: `${p} bolt`, for: p }]),
);
const notes = fc.uniqueArray(part, { minLength: 2, maxLength: 6 }).chain(parts => fc.tuple(...parts.map(p => open(p))));
/** Something more that stands in the way of a part. */
const blocker = part.chain(p => fc.constantFrom<Entry>(
  { kind: 'want', item: 'strange bracket', for: p }, { kind: 'rule', first: 'polish the odd lever', then: p }, { kind: 'wait', part: p, until: '2026-04-20' },
  { kind: 'order', item: p, expected: '2026-04-20' }));

const settings = { numRuns: 80, seed: 6 };

describe('a plan of the shop', () => {
  it('never ends earlier for one more thing in the way', () => {
    fc.assert(fc.property(notes, blocker, (said, more) => {
      const [as, with_] = planBoth(inputOf(said), inputOf([...said, [more]]), { schedules: 20 });
      expect(as.ok && with_.ok).toBe(true);
      if (as.ok && with_.ok && as.finish && with_.finish && !with_.stuck.length) expect(with_.finish).toBeGreaterThanOrEqual(as.finish);
    }), settings);
  });

  it('never gains by a later delivery', () => {
    fc.assert(fc.property(notes, part, fc.integer({ min: 1, max: 60 }), (said, p, days) => {
      const due = (d: number) => inputOf([...said, [{ kind: 'order', item: p, expected: new Date(Date.parse('2026-03-12') + d * 864e5).toISOString().slice(0, 10) }]]);
      const [sooner, later] = planBoth(due(0), due(days), { schedules: 20 });
      if (sooner.ok && later.ok && sooner.finish && later.finish) expect(later.finish).toBeGreaterThanOrEqual(sooner.finish);
    }), settings);
  });

  it('is the same in whatever order unrelated notes were said, dates and all', () => {
    fc.assert(fc.property(notes.chain(n => fc.tuple(fc.constant(n), fc.shuffledSubarray(n, { minLength: n.length, maxLength: n.length }))), ([said, shuffled]) => {
      const [one, other] = [inputOf(said), inputOf(shuffled)];
      const plans = [planWork(one, { schedules: 20 }), planWork(other, { schedules: 20 })];
      expect(plans[1]).toEqual(plans[0]);
      const [a, b] = [simulate(one, { runs: 60, schedules: 10 }), simulate(other, { runs: 60, schedules: 10 })];
      expect(a.ok && b.ok && [a.p50, a.p80, a.driver]).toEqual(a.ok && b.ok && [b.p50, b.p80, b.driver]);
    }), { ...settings, numRuns: 40 });
  });
});

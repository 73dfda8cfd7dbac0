import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../../domain/model/entry.ts';
import { planOf, type ShopPlan } from '../../../../domain/plan/from-shop/plan-of.ts';
import type { PlanSettings } from '../../../../domain/plan/from-shop/settings.ts';
import { BenchShop } from '../../log/tools/shop.ts';

/** 2026-03-10 is a Tuesday. */
const now = { at: '2026-03-10T09:00:00+00:00', zone: 'UTC' };
const plan = (said: readonly Entry[], settings: PlanSettings = {}): ShopPlan => {
  const shop = new BenchShop();
  for (const e of said) shop.say([e]);
  return planOf({ machines: [...shop.log.shop.machines.values()], shop: shop.log.shop, now, settings });
};
const names = (p: ShopPlan): string[] => [...p.acts.keys()].map(p.nameOf).sort();
/** What an act waits for, by name. */
const before = (p: ShopPlan, name: string): string[] => {
  const job = p.input.jobs.find(j => p.nameOf(j.id) === name);
  return job ? [...job.after.map(l => p.nameOf(l.job)), ...job.needs.map(p.nameOf)].sort() : [`no ${name}`];
};

describe('what is open', () => {
  it('is what was said to be done, and once however often it was said', () =>
    expect(names(plan([{ kind: 'job', do: 'paint', part: 'hood' }, { kind: 'job', do: 'spray', part: 'hood' }]))).toEqual(['paint the hood']));
  it('is putting on for good what is off, tried or on for now', () =>
    expect(names(plan([{ kind: 'fit', part: 'hood', state: 'off' }, { kind: 'fit', part: 'lamp', state: 'temporary' }, { kind: 'fit', part: 'seat', state: 'on' }])))
      .toEqual(['fit the hood', 'put the lamp on for good']));
  it('is repairing or replacing what was found bad', () =>
    expect(names(plan([{ kind: 'finding', part: 'tank', condition: 'split', verdict: 'repair' }, { kind: 'finding', part: 'belt', condition: 'cracked', verdict: 'replace' }])))
      .toEqual(['repair the tank', 'replace the belt']));
  it('is a recheck that is due, and none that is not', () =>
    expect(names(plan([{ kind: 'recheck', part: 'brakes', do: 'check', due: '2026-03-09' }, { kind: 'recheck', part: 'belt', do: 'check', due: '2026-09-01' }]))).toEqual(['check the brakes']));
  it('is both sides of a rule, though nobody made jobs of them', () => {
    const p = plan([{ kind: 'rule', first: 'bend the line', then: 'tap' }, { kind: 'rule', first: 'paint the shell', then: 'radiator' }]);
    expect(before(p, 'fit the radiator')).toEqual(['paint the shell']);
  });
  it('is fitting what came for a part found bad', () =>
    expect(names(plan([{ kind: 'finding', part: 'fan belt', condition: 'cracked', verdict: 'replace' }, { kind: 'bought', item: 'fan belt' }]))).toEqual(['fit the fan belt']));
  it('is not fitting paint or wire that was bought', () => expect(names(plan([{ kind: 'bought', item: 'green enamel' }, { kind: 'bought', item: 'wire' }]))).toEqual([]));
  it('is nothing of a gasket once the part it is named after went on', () =>
    expect(names(plan([{ kind: 'bought', item: 'head gasket' }, { kind: 'fit', part: 'head', state: 'tight' }]))).toEqual([]));
});

describe('what waits for what', () => {
  it('is a work for the thing that was wanted for it', () =>
    expect(before(plan([{ kind: 'want', item: 'tank sealer', for: 'seal the tank' }]), 'seal the tank')).toEqual(['tank sealer']));
  it('is a part for its own delivery, and for being back from outside', () => {
    expect(before(plan([{ kind: 'fit', part: 'thermostat', state: 'off' }, { kind: 'order', item: 'thermostat', expected: '2026-03-20' }]), 'fit the thermostat')).toEqual(['thermostat']);
    expect(before(plan([{ kind: 'out', part: 'magneto', until: '2026-03-20' }]), 'fit the magneto')).toEqual(['magneto']);
  });
  it('has work on a part before the part goes on, and adjusting after', () => {
    const p = plan([{ kind: 'fit', part: 'brakes', state: 'off' }, { kind: 'job', do: 'clean', part: 'brakes' }, { kind: 'job', do: 'adjust', part: 'brakes' }]);
    expect(before(p, 'fit the brakes')).toEqual(['clean the brakes']);
    expect(before(p, 'adjust the brakes')).toEqual(['fit the brakes']);
  });
  it('takes the usual order where nobody said otherwise, and lets it cure in between', () => {
    const p = plan([{ kind: 'job', do: 'prime', part: 'hood' }, { kind: 'job', do: 'paint', part: 'hood' }]);
    expect(before(p, 'paint the hood')).toEqual(['prime the hood']);
    expect(p.input.jobs.find(j => p.nameOf(j.id) === 'paint the hood')!.after[0]!.lagHours).toBeGreaterThan(0);
  });
  it('lets the person\'s own order win over the usual one', () => {
    const p = plan([{ kind: 'job', do: 'prime', part: 'hood' }, { kind: 'job', do: 'paint', part: 'hood' }, { kind: 'rule', first: 'paint the hood', then: 'prime the hood' }]);
    expect([before(p, 'paint the hood'), before(p, 'prime the hood')]).toEqual([[], ['paint the hood']]);
  });
  it('leaves out a usual order that was turned down, and only that', () => {
    const said: Entry[] = [{ kind: 'fit', part: 'fan', state: 'off' }, { kind: 'fit', part: 'radiator', state: 'off' }, { kind: 'fit', part: 'water pump', state: 'off' }];
    const [order] = plan(said).usual.filter(u => u.rule.first === 'fan' && u.rule.then === 'radiator');
    expect(before(plan(said), 'fit the radiator')).toEqual(['fit the fan', 'fit the water pump']);
    expect(before(plan(said, { refused: new Set([order!.rule.id]) }), 'fit the radiator')).toEqual(['fit the water pump']);
  });
  it('leaves a part alone until the day that was said, whatever the tin says', () => {
    const p = plan([{ kind: 'fit', part: 'tank', state: 'off' }, { kind: 'work', part: 'tank', action: 'seal', product: 'tank sealer' }, { kind: 'wait', part: 'tank', until: '2026-03-12' }]);
    expect(p.input.jobs[0]!.notBefore!.at).toBe(Date.parse('2026-03-12T00:00:00Z'));
  });
});

describe('the person\'s hours, help and weather', () => {
  it('are assumed until said, and that is told', () => {
    expect(plan([{ kind: 'job', do: 'oil', part: 'hinge' }]).hoursFrom).toBe('assumed');
    expect(plan([], { hours: { weekly: [{ weekday: 1, from: '18:00', to: '20:00' }], exceptions: [] }, hoursFrom: 'learned' }).hoursFrom).toBe('learned');
  });
  it('has help on the days it was promised for', () =>
    expect(plan([{ kind: 'hands', when: '2026-03-14', for: 'lift the head' }]).input.help).toEqual([{ date: '2026-03-14' }]));
  it('are there on a day of help that has none in the usual week', () => {
    // 2026-03-15 is a Sunday; the week has Mondays only.
    const p = plan([{ kind: 'hands', when: '2026-03-15', for: 'bleed the brakes' }], { hours: { weekly: [{ weekday: 1, from: '18:00', to: '20:00' }], exceptions: [] } });
    expect(p.input.hours.exceptions.map(e => e.date)).toEqual(['2026-03-15']);
    expect(p.input.helpUsually!.map(h => h.weekday)).toEqual([1]);
  });
  it('takes two for what help was asked for', () => {
    const p = plan([{ kind: 'hands', when: '2026-03-14', for: 'lift the head' }]);
    expect(p.input.jobs.find(j => p.nameOf(j.id).includes('head'))!.conditions.hands).toBe(2);
  });
  it('has the person\'s own word about the sky, day by day', () =>
    expect(plan([{ kind: 'weather', sky: 'rain', from: '2026-03-11', to: '2026-03-12' }]).input.weather!.said).toEqual([{ date: '2026-03-11', sky: 'rain' }, { date: '2026-03-12', sky: 'rain' }]));
});

import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../domain/model/entry.ts';
import type { PlanSettings } from '../../../domain/plan/from-shop/settings.ts';
import { answer } from '../../../domain/answers/answer.ts';
import type { AnswerOf, Cause } from '../../../domain/model/answer.ts';
import { BenchShop } from '../log/tools/shop.ts';
import { NOW } from './tools/ask.ts';

/** Two hours every evening, from six: days can be counted on the fingers. 2026-03-10 is a Tuesday, nine in the morning. */
const planning: PlanSettings = { hours: { weekly: [1, 2, 3, 4, 5, 6, 7].map(weekday => ({ weekday, from: '18:00', to: '20:00' })), exceptions: [] } };
const after = (...said: Entry[]): BenchShop => { const shop = new BenchShop(); for (const e of said) shop.say([e]); return shop; };
const ask = <K extends 'blocked' | 'finish'>(shop: BenchShop, kind: K, part?: string, more: { by?: string } = {}) =>
  answer(shop.log.shop, { kind, part, ...more } as never, NOW, { past: shop.log.past, machine: 'Heron', planning }) as AnswerOf<K>;
const flat = (causes: readonly Cause[]): string[] => causes.flatMap(c => [`${c.what} ${c.clears}`, ...flat(c.causes)]);

describe('the earliest day a cause can clear', () => {
  it('is this evening for a short job, later for one that is longer than an evening', () => {
    expect(flat(ask(after({ kind: 'job', do: 'check', part: 'hood' }), 'blocked', 'hood').causes)).toEqual(['check hood 2026-03-10']);
    // A gearbox rebuilt: 8, 16, 40 hours, 18.7 on average: ten evenings, the last of them the 19th.
    expect(flat(ask(after({ kind: 'job', do: 'rebuild', part: 'gearbox' }), 'blocked', 'gearbox').causes)).toEqual(['rebuild gearbox 2026-03-19']);
  });

  it('is the day it is expected for what is on order, and after that for what waits on it', () => {
    const shop = after({ kind: 'rule', first: 'fit the coupling', then: 'fit the pump' }, { kind: 'want', item: 'coupling', for: 'pump' }, { kind: 'order', item: 'coupling', expected: '2026-03-16' });
    const causes = ask(shop, 'blocked', 'pump').causes;
    expect(flat(causes).filter(c => c.startsWith('coupling'))).toContain('coupling 2026-03-16');
    expect(causes.find(c => c.cause === 'rule')!.clears! >= '2026-03-16').toBe(true);
  });

  it('counts what is under it: a cause clears with the last of them', () => {
    const causes = ask(after({ kind: 'rule', first: 'paint the shell', then: 'radiator' }, { kind: 'want', item: 'paint', for: 'paint the shell' }), 'blocked', 'radiator').causes;
    const [rule] = causes;
    expect(rule!.causes[0]!.cause).toBe('not bought');
    expect(rule!.clears! >= rule!.causes[0]!.clears!).toBe(true);
  });

  it('has the cheapest act first on every level', () => {
    const shop = after({ kind: 'job', do: 'rebuild', part: 'carburetor' }, { kind: 'job', do: 'check', part: 'carburetor' }, { kind: 'want', item: 'carburetor gasket' });
    expect(ask(shop, 'blocked', 'carburetor').causes.map(c => c.act)).toEqual(['buy carburetor gasket', 'check carburetor', 'rebuild carburetor']);
  });
  it('has putting the part itself on for good last', () => {
    const shop = after({ kind: 'fit', part: 'lamp', state: 'temporary' }, { kind: 'want', item: 'lamp bracket', for: 'lamp' }, { kind: 'quote', item: 'lamp bracket', price: 400 });
    expect(ask(shop, 'blocked', 'lamp').causes.map(c => c.cause)).toEqual(['not bought', 'temporary']);
  });
});

describe('when it will be done', () => {
  const shop = after({ kind: 'fit', part: 'hood', state: 'off' }, { kind: 'job', do: 'paint', part: 'hood' });
  it('is two dates, the one as likely as not, the other four times in five, and what decides', () => {
    const answer = ask(shop, 'finish');
    expect(answer.p50! <= answer.p80!).toBe(true);
    expect(answer.p50! > '2026-03-11').toBe(true);
    expect(answer.driver).toBeTruthy();
    expect(answer.chance).toBeNull();
  });
  it('gives the chance of a day that is named, none too soon and certain late', () => {
    expect(ask(shop, 'finish', undefined, { by: '2026-03-10' }).chance).toBe(0);
    expect(ask(shop, 'finish', undefined, { by: '2027-03-10' }).chance).toBe(1);
    const { p50, p80 } = ask(shop, 'finish');
    expect(ask(shop, 'finish', undefined, { by: p50! }).chance).toBeGreaterThanOrEqual(0.5);
    expect(ask(shop, 'finish', undefined, { by: p80! }).chance).toBeGreaterThanOrEqual(0.8);
  });
  it('says why there is no date', () => {
    expect(ask(after(), 'finish')).toMatchObject({ p50: null, p80: null, driver: null, chance: null, why: expect.stringContaining('nothing left to do') });
    expect(ask(shop, 'finish', 'flux capacitor')).toMatchObject({ p50: null, why: expect.stringContaining('nothing about the flux capacitor') });
  });
  it('names the hours that it counts on', () => expect(ask(shop, 'finish').why).toContain('Mon–Sun 18:00–20:00, as you said'));
});

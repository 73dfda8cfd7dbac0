import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amount, landedCents, taxCents, wayCents } from '../../../domain/answers/money.ts';
import { BenchShop } from '../log/tools/shop.ts';
import { ask } from './tools/ask.ts';

const cents = fc.integer({ min: 0, max: 5_000_000 });
const thousandths = (max: number): fc.Arbitrary<number> => fc.integer({ min: 0, max: max * 1_000 }).map(n => n / 1_000);

describe('money', () => {
  it('lands as decimal arithmetic has it, each line rounded half up to the cent', () => {
    fc.assert(fc.property(cents, cents, cents, thousandths(30), thousandths(500), thousandths(3), (price, ship, core, tax, miles, rate) => {
      const half = (d: Decimal): Decimal => d.toDecimalPlaces(0, Decimal.ROUND_HALF_UP);
      const expected = new Decimal(price).plus(ship).plus(core).plus(half(new Decimal(price).times(tax).div(100))).plus(half(new Decimal(miles).times(rate).times(100)));
      expect(landedCents({ cents: price, shippingCents: ship, coreCents: core, taxPercent: tax, miles }, rate)).toBe(expected.toNumber());
    }), { numRuns: 2_000 });
  });

  it('rounds the half cent up where a binary fraction would lose it', () => {
    // 1.5 % of 67.00 is 1.005, which as a binary number times 100 is 100.49999…
    expect(taxCents({ cents: 6_700, taxPercent: 1.5 })).toBe(101);
    expect(wayCents(0.1, 0.7)).toBe(7);
    expect(wayCents(1.5, 0.67)).toBe(101);
  });

  it('is summed without drift', () => {
    const shop = new BenchShop();
    for (let i = 0; i < 30; i++) shop.say([{ kind: 'bought', item: `bolt ${i}`, price: 0.1 }]);
    expect(ask(shop, { kind: 'spent' }).total).toBe(Number(new Decimal('0.1').times(30)));
  });
});

describe('spent', () => {
  const shop = new BenchShop();
  shop.say([{ kind: 'want', item: 'top hose', for: 'radiator' }, { kind: 'order', item: 'top hose', source: 'belt supply', price: 41.5, shipping: 6 }]);
  shop.say([{ kind: 'bought', item: 'radiator cap', price: 9.25, tax: 7, core: 2 }], { at: '2026-03-05T10:00:00+00:00' });
  shop.say([{ kind: 'bought', item: 'cable', price: 100, machine: 'winch' }]);
  shop.say([{ kind: 'bought', item: 'grease' }]);

  it('counts what was bought with what went with it, and keeps apart what is on order', () => {
    // 9.25 + 7 % (0.6475, that is 0.65) + core 2 = 11.90
    expect(ask(shop, { kind: 'spent', part: 'Heron' })).toEqual({ kind: 'spent', part: 'Heron', total: 11.9, onOrder: 47.5, unpriced: ['grease'], items: [{ item: 'radiator cap', price: 11.9, at: '2026-03-05T10:00:00+00:00' }] });
    expect(ask(shop, { kind: 'spent' }).total).toBe(111.9);
  });

  it('counts an order once it has come', () => {
    shop.say([{ kind: 'arrival', item: 'top hose' }]);
    expect(ask(shop, { kind: 'spent', part: 'Heron' })).toMatchObject({ total: 59.4, items: [{ item: 'radiator cap' }, { item: 'top hose', price: 47.5, source: 'belt supply' }] });
  });

  it('names the newest when there are very many, and counts all', () => {
    const many = new BenchShop();
    many.log.store.transaction(() => { for (let i = 0; i < 250; i++) many.say([{ kind: 'bought', item: `part ${i % 7}`, price: 1 + i / 100 }]); });
    const answer = ask(many, { kind: 'spent' });
    expect(answer.total).toBe(new Decimal(250).plus(new Decimal(249 * 250).div(200)).toNumber());
    expect([answer.items.length, answer.items[0]!.price, answer.items.at(-1)!.price, answer.older]).toEqual([200, 1.5, 3.49, true]);
  });

  it('on a part counts what belongs to it and what was got for it', () => expect(ask(shop, { kind: 'spent', part: 'radiator' }).total).toBe(59.4));
  it('on a thing never heard of is nothing', () => expect(ask(shop, { kind: 'spent', part: 'gizmo' })).toEqual({ kind: 'spent', part: 'gizmo', total: 0, items: [] }));
});

describe('the cheapest', () => {
  it('is by what it comes to at the shop', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'quote', item: 'feeder chain', source: 'dealer', price: 132, shipping: 18, tax: 7 }, { kind: 'quote', item: 'feeder chain', source: 'yard', price: 120, tax: 7, miles: 60 }]);
    // 132 + 18 + 9.24 = 159.24; 120 + 8.40 = 128.40, with 60 miles at 0.67 = 40.20 it is 168.60.
    expect(ask(shop, { kind: 'cheapest', item: 'chain' })).toMatchObject({ best: { source: 'yard', landed: 128.4 }, others: [{ source: 'dealer', landed: 159.24, price: 132, shipping: 18 }] });
    expect(ask(shop, { kind: 'cheapest', item: 'chain' }, undefined, { mileRate: 0.67 })).toMatchObject({ best: { source: 'dealer', landed: 159.24 }, others: [{ source: 'yard', landed: 168.6 }] });
  });

  it('is what was paid where nothing was quoted, and nothing where nothing was heard', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'bought', item: 'belt', source: 'co-op', price: 18 }]);
    expect(ask(shop, { kind: 'cheapest', item: 'belt' }).best).toMatchObject({ source: 'co-op', landed: 18 });
    expect(ask(shop, { kind: 'cheapest', item: 'gizmo' })).toEqual({ kind: 'cheapest', item: 'gizmo', best: null, others: [] });
  });

  it('keeps its cents', () => expect(amount(1_990)).toBe(19.9));
});

describe('hours', () => {
  const shop = new BenchShop();
  const on = (day: string) => ({ at: `2026-03-${day}T10:00:00+00:00` });
  shop.say([{ kind: 'hours', hours: 1.25, part: 'carb' }], on('02'));
  shop.say([{ kind: 'hours', hours: 0.5, part: 'hood' }], on('03'));
  const spent = (part?: string, from?: string, to?: string): number => ask(shop, { kind: 'timeSpent', part, from, to }).hours;

  it('add up by part, by machine and in all', () => expect([spent('carb'), spent('Heron'), spent()]).toEqual([1.25, 1.75, 1.75]));
  it('in a stretch of days are those said in it', () => expect([spent('Heron', '2026-03-03'), spent('Heron', '2026-03-02', '2026-03-02')]).toEqual([0.5, 1.25]));
  it('"all told" set the sum of their part, and go on from there', () => {
    shop.say([{ kind: 'hours', hours: 2.5, part: 'carb', total: true }], on('04'));
    shop.say([{ kind: 'hours', hours: 1, part: 'carb' }], on('05'));
    expect([spent('carb'), spent('Heron'), spent('carb', '2026-03-04')]).toEqual([3.5, 4, 1]);
  });
  it('"all told" of the machine set the sum of all of it', () => {
    shop.say([{ kind: 'hours', hours: 9, total: true }], on('06'));
    shop.say([{ kind: 'hours', hours: 0.25, part: 'hood' }], on('07'));
    expect(spent('Heron')).toBe(9.25);
  });
  it('on a thing never heard of are none', () => expect(spent('gizmo')).toBe(0));
});

import { describe, expect, it } from 'vitest';
import { supplies } from '../../../domain/answers/supply.ts';
import { BenchShop } from './tools/shop.ts';

const TODAY = '2026-03-10';
const states = (shop: BenchShop, item: string, today = TODAY): string[] => supplies(shop.thing(item), today).map(s => s.status);

describe('a thing to be got', () => {
  it('goes from needed through ordered and late to in hand', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'want', item: 'radiator hoses', qty: 2, spec: '1 1/2 in', for: 'radiator' }]);
    expect(supplies(shop.thing('radiator hose'), TODAY)).toEqual([{ item: 'radiator hoses', status: 'needed', qty: 2, spec: '1 1/2 in', for: 'radiator' }]);
    shop.say([{ kind: 'order', item: 'hoses', source: 'belt supply', price: 41.5, expected: TODAY }]);
    expect(supplies(shop.thing('radiator hose'), TODAY)).toEqual([
      { item: 'radiator hoses', status: 'ordered', qty: 2, spec: '1 1/2 in', for: 'radiator', expected: TODAY, price: 41.5, source: 'belt supply' }]);
    expect(states(shop, 'radiator hose', '2026-03-11')).toEqual(['late']);
    shop.say([{ kind: 'arrival', item: 'radiator hoses' }]);
    expect(states(shop, 'radiator hose', '2026-03-11')).toEqual([]);
    expect(shop.thing('radiator hose').inHand).toBeDefined();
    expect(shop.thing('radiator hose').paid).toMatchObject([{ source: 'belt supply', price: { cents: 4150 }, for: { key: 'radiator' } }]);
  });

  it('is in hand once bought, without an order', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'want', item: 'fan belt' }]);
    shop.say([{ kind: 'bought', item: 'belt', price: 18, source: 'co-op' }]);
    expect(states(shop, 'fan belt')).toEqual([]);
    expect(shop.thing('fan belt').paid).toMatchObject([{ price: { cents: 1800 } }]);
  });

  it('is paid for once when what was ordered is then said to be bought there', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'order', item: 'gasket', source: 'bearing place', price: 12, shipping: 3 }]);
    shop.say([{ kind: 'bought', item: 'gasket', source: 'the bearing place' }]);
    expect(shop.thing('gasket').paid.map(p => p.price)).toMatchObject([{ cents: 1200, shippingCents: 300 }]);
    expect(shop.thing('gasket').orders).toEqual([]);
  });

  it('is paid for once when it comes and the note says what was charged in the end', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'order', item: 'gasket', source: 'motor factor', price: 31, shipping: 4 }]);
    shop.say([{ kind: 'arrival', item: 'gasket' }, { kind: 'bought', item: 'gasket', price: 38, source: 'factor' }]);
    expect(shop.thing('gasket').paid).toMatchObject([{ source: 'motor factor', price: { cents: 3800 } }]);
    shop.say([{ kind: 'bought', item: 'gasket', price: 9 }], { at: '2026-05-20T09:00:00+02:00' });
    expect(shop.thing('gasket').paid.map(p => p.price?.cents)).toEqual([3800, 900]);
  });

  it('leaves an order elsewhere open when it was bought at another place', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'order', item: 'gasket', source: 'bearing place', price: 12 }]);
    shop.say([{ kind: 'bought', item: 'gasket', source: 'scrap yard', price: 4 }]);
    expect(states(shop, 'gasket')).toEqual(['ordered']);
  });

  it('is wanted again after the order for what is wanted beyond it', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'order', item: 'bolts', qty: 4 }]);
    shop.say([{ kind: 'want', item: 'bolts', qty: 2 }]);
    expect(states(shop, 'bolt')).toEqual(['ordered', 'needed']);
  });

  it('is one want when said twice, with what was newly said of it', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'want', item: 'leathers', qty: 2 }]);
    shop.say([{ kind: 'want', item: 'leathers', spec: '2 1/2 in' }]);
    expect(supplies(shop.thing('leather'), TODAY)).toEqual([{ item: 'leathers', status: 'needed', qty: 2, spec: '2 1/2 in' }]);
  });

  it('is no longer wanted when it is on for good, and no want comes of work done outside', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'want', item: 'fan belt' }, { kind: 'fit', part: 'fan belt', state: 'on' }]);
    expect(states(shop, 'fan belt')).toEqual([]);
    shop.say([{ kind: 'out', part: 'crankshaft', where: 'grinder' }]);
    shop.say([{ kind: 'arrival', item: 'crankshaft' }]);
    const { out, inHand, paid } = shop.thing('crankshaft');
    expect([out, inHand, paid]).toEqual([undefined, undefined, []]);
  });

  it('keeps the latest price of each source', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'quote', item: 'tyre', source: 'yard', price: 90 }, { kind: 'quote', item: 'tyre', source: 'dealer', price: 120 }]);
    shop.say([{ kind: 'quote', item: 'tyre', source: 'the yard', price: 80 }]);
    expect(shop.thing('tyre').quotes.map(q => [q.source, q.price.cents])).toEqual([['dealer', 12_000], ['the yard', 8_000]]);
  });

  it('comes for the machine that waits for it, though another one is in hand', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'order', item: 'drum bearing' }], { machine: 'winch' });
    const [arrived] = shop.say([{ kind: 'arrival', item: 'drum bearing' }], { machine: 'Heron' });
    expect(arrived!.machine).toBe('winch');
    expect(shop.thing('drum bearing', 'winch').orders).toEqual([]);
  });
});

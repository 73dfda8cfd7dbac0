import { describe, expect, it } from 'vitest';
import { BenchShop } from '../log/tools/shop.ts';
import { ask } from './tools/ask.ts';

describe('what to buy', () => {
  const shop = new BenchShop();
  shop.say([{ kind: 'want', item: 'hose clips', qty: 4, for: 'radiator' }, { kind: 'want', item: 'radiator cap' }, { kind: 'want', item: 'bolts' }]);
  shop.say([{ kind: 'order', item: 'gasket', source: 'dealer', price: 12, expected: '2026-03-09' }, { kind: 'order', item: 'belt', expected: '2026-03-12', machine: 'winch' }]);
  const items = (question: { status?: 'needed' | 'ordered' | 'late'; part?: string } = {}): string[] => ask(shop, { kind: 'buy', ...question }).items.map(i => `${i.item} ${i.status}`);

  it('is all that is needed, ordered and late', () => expect(items()).toEqual(['hose clips needed', 'radiator cap needed', 'bolts needed', 'gasket late', 'belt ordered']));
  it.each(['needed', 'ordered', 'late'] as const)('is only the %s when that is asked', status => expect(items({ status }).every(i => i.endsWith(status))).toBe(true));
  it('for a part is what belongs to it and what is for it', () => expect(items({ part: 'radiator' })).toEqual(['hose clips needed', 'radiator cap needed']));
  it('for a machine is what is for that one', () => expect([items({ part: 'winch' }), items({ part: 'gizmo' })]).toEqual([['belt ordered'], []]));
  it('says all that is known of it', () => expect(ask(shop, { kind: 'buy', status: 'late' }).items).toEqual([{ item: 'gasket', status: 'late', expected: '2026-03-09', price: 12, source: 'dealer', machine: 'Heron' }]));
});

describe('what is next', () => {
  const jobs = (shop: BenchShop, question: { place?: 'indoors' | 'outdoors' } = {}, machine?: string): string[] =>
    ask(shop, { kind: 'next', ...question }, undefined, machine === undefined ? {} : { machine }).jobs.map(j => `${j.do} ${j.part}`);

  it('is what nothing stands in the way of', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'job', do: 'paint', part: 'hood' }, { kind: 'job', do: 'weld', part: 'bracket' }, { kind: 'want', item: 'welding rod', for: 'weld the bracket' }]);
    expect(ask(shop, { kind: 'next' }).jobs).toEqual([{ do: 'paint', part: 'hood', why: ['nothing in the way'], machine: 'Heron' }]);
    shop.say([{ kind: 'bought', item: 'welding rod' }]);
    expect(ask(shop, { kind: 'next' }).jobs[0]).toMatchObject({ do: 'weld', why: ['welding rod is in'] });
  });

  it('has rechecks first, then what unlocks most, then what only hangs, then the oldest; three at most', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'job', do: 'sand', part: 'seat' }, { kind: 'fit', part: 'lamp', state: 'temporary' }]);
    shop.say([{ kind: 'rule', first: 'polish the shaft', then: 'bearing' }, { kind: 'rule', first: 'weld the bracket', then: 'dynamo' }, { kind: 'rule', first: 'weld the bracket', then: 'belt' }]);
    expect(jobs(shop)).toEqual(['weld bracket', 'polish shaft', 'put on for good lamp']);
    expect(ask(shop, { kind: 'next' }).jobs.map(j => j.why)).toEqual([['unlocks 2 others'], ['unlocks 1 other'], ['only temporary']]);
    shop.say([{ kind: 'recheck', part: 'brakes', do: 'check', due: '2026-03-09' }]);
    expect(jobs(shop)[0]).toBe('check brakes');
  });

  it('lists a job once though a rule asks for it too', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'job', do: 'weld', part: 'bracket' }, { kind: 'rule', first: 'weld the bracket', then: 'dynamo' }]);
    expect(jobs(shop)).toEqual(['weld bracket']);
  });

  it('is on the machine in hand', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'job', do: 'paint', part: 'hood' }, { kind: 'job', do: 'oil', part: 'drum', machine: 'winch' }]);
    expect([jobs(shop, {}, 'winch'), jobs(shop, {}, 'Heron'), jobs(shop, {}, 'sawmill')]).toEqual([['oil drum'], ['paint hood'], []]);
  });

  it('fits the minutes and the place, by what works usually take and where they are usually done', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'job', do: 'rebuild', part: 'gearbox' }, { kind: 'job', do: 'grease', part: 'axle' }, { kind: 'job', do: 'blast', part: 'rims' }]);
    const when = (question: { minutes?: number; place?: 'indoors' | 'outdoors' }): string[] => ask(shop, { kind: 'next', ...question }).jobs.map(j => `${j.do} ${j.part}`);
    expect(when({ minutes: 15 })).toEqual(['grease axle']);
    expect(when({ place: 'indoors' })).toEqual(['rebuild gearbox', 'grease axle']);
    expect(when({ place: 'outdoors', minutes: 240 })).toEqual(['grease axle', 'blast rims']);
  });

  it('outdoors leaves out what today\'s sky is not fit for', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'job', do: 'paint', part: 'hood' }, { kind: 'job', do: 'grease', part: 'axle' }, { kind: 'weather', sky: 'wind', from: '2026-03-10', to: '2026-03-10' }]);
    expect(jobs(shop, { place: 'outdoors' })).toEqual(['grease axle']);
    shop.say([{ kind: 'weather', sky: 'rain', from: '2026-03-10', to: '2026-03-10' }]);
    expect(jobs(shop, { place: 'outdoors' })).toEqual([]);
    expect(jobs(shop, { place: 'indoors' })).toEqual(['grease axle']);
  });
});

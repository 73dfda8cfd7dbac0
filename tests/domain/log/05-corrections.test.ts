import { describe, expect, it } from 'vitest';
import { replayAll } from '../../../domain/log/keeper.ts';
import { amendsIn, standing } from '../../../domain/log/amend.ts';
import { entriesOfNote } from '../../../domain/store/entries.ts';
import { BenchShop } from './tools/shop.ts';

describe('a correction', () => {
  it('changes the newest entry of the chat that has such a field', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'want', item: 'pump leathers', qty: 2 }]);
    shop.say([{ kind: 'fit', part: 'hood', state: 'off' }]);
    const [amend] = shop.say([{ kind: 'amend', field: 'qty', value: 3 }]);
    expect(amend!.entry).toMatchObject({ kind: 'amend', of: 1 });
    expect(shop.thing('pump leather').wants[0]!.qty).toBe(3);
    shop.say([{ kind: 'amend', field: 'qty', value: 4 }]);
    expect(shop.thing('pump leather').wants[0]!.qty).toBe(4);
  });

  it('goes to the entry about the part it names', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'reading', part: 'head', what: 'torque', value: 90, unit: 'lb-ft' }]);
    shop.say([{ kind: 'reading', part: 'rod caps', what: 'torque', value: 40, unit: 'lb-ft' }]);
    shop.say([{ kind: 'amend', field: 'value', value: 95, part: 'head' }]);
    expect([...shop.thing('head').asLeft.values(), ...shop.thing('rod cap').asLeft.values()].map(r => r.value)).toEqual([95, 40]);
  });

  it('strikes the entry that has the figure it names, though other notes came after', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'reading', part: 'head', what: 'torque', value: 90, unit: 'lb-ft' }, { kind: 'reading', part: 'rod caps', what: 'torque', value: 40, unit: 'lb-ft' }]);
    shop.say([{ kind: 'fit', part: 'hood', state: 'off' }]);
    const [amend] = shop.say([{ kind: 'amend', undo: true, value: 40 }]);
    expect(amend!.entry).toMatchObject({ kind: 'amend', of: 2 });
    expect([shop.thing('head').asLeft.size, shop.thing('hood').fit?.state]).toEqual([1, 'off']);
    expect(shop.say([{ kind: 'amend', undo: true, value: 77 }])[0]!.entry).toMatchObject({ of: undefined });
  });

  it('fills a field that the entry was said without', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'order', item: 'gasket' }]);
    shop.say([{ kind: 'amend', field: 'expected', value: '2026-03-30' }]);
    expect(shop.thing('gasket').orders[0]!.expected).toBe('2026-03-30');
  });

  it('of a name moves what was said to the other part', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'fit', part: 'left axle', state: 'off' }]);
    shop.say([{ kind: 'fit', part: 'right axle', state: 'on' }]);
    shop.say([{ kind: 'amend', field: 'part', value: 'left axle' }]);
    expect(shop.thing('left axle').fit?.state).toBe('on');
    expect(shop.machine().things.has('right axle')).toBe(false);
    shop.say([{ kind: 'amend', undo: true }]);
    expect([shop.thing('left axle').fit?.state, shop.thing('right axle').fit?.state]).toEqual(['off', 'on']);
  });

  it('of the machine moves it to the other machine', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'fit', part: 'drum', state: 'off', machine: 'winch' }]);
    const [said] = shop.say([{ kind: 'hours', hours: 3, part: 'drum' }]);
    shop.say([{ kind: 'amend', field: 'machine', value: 'the winch', of: said!.id }]);
    expect(shop.thing('drum', 'winch').hours.map(h => h.hours)).toEqual([3]);
    expect(shop.log.shop.machines.has('heron')).toBe(false);
  });

  it('that the field can\'t take, or that finds nothing, changes nothing and is kept', () => {
    const shop = new BenchShop();
    const [fit] = shop.say([{ kind: 'fit', part: 'hood', state: 'off' }]);
    const [one] = shop.say([{ kind: 'amend', field: 'state', value: 'purple' }]);
    const [two] = shop.say([{ kind: 'amend', field: 'state', value: 'purple', of: fit!.id }]);
    expect([one!.entry, two!.entry]).toMatchObject([{ of: undefined }, { of: fit!.id }]);
    expect(shop.thing('hood').fit?.state).toBe('off');
  });

  it('in one chat leaves what was said in another alone', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'want', item: 'bolts', qty: 2 }], { chat: 'a' });
    shop.say([{ kind: 'amend', field: 'qty', value: 9 }], { chat: 'b' });
    expect(shop.thing('bolt').wants[0]!.qty).toBe(2);
  });
});

describe('striking', () => {
  it('takes back all that the last note said, and nothing before it', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'job', do: 'paint', part: 'hood' }]);
    shop.say([{ kind: 'work', part: 'hood', action: 'paint' }, { kind: 'rule', first: 'hood', then: 'lamp' }, { kind: 'weather', sky: 'rain', from: '2026-03-03' }]);
    expect([shop.thing('hood').jobs.length, shop.machine().rules.length, shop.log.shop.weather.length]).toEqual([0, 1, 1]);
    const struck = shop.say([{ kind: 'amend', undo: true }]);
    expect(struck.map(e => e.entry.kind === 'amend' && e.entry.of)).toEqual([2, 3, 4]);
    expect([shop.thing('hood').jobs.length, shop.machine().rules.length, shop.log.shop.weather.length]).toEqual([1, 0, 0]);
    expect(shop.machine().things.has('lamp')).toBe(false);
  });

  it('can itself be taken back, and that too', () => {
    const shop = new BenchShop();
    const [bought] = shop.say([{ kind: 'bought', item: 'belt', price: 18 }]);
    const inForce = (): boolean => standing(bought!, amendsIn(shop.log.store)) !== undefined;
    const seen = [inForce()];
    for (let i = 0; i < 4; i++) { shop.say([{ kind: 'amend', undo: true }]); seen.push(inForce()); }
    expect(seen).toEqual([true, false, true, false, true]);
    expect(shop.thing('belt').paid).toHaveLength(1);
  });

  it('goes by the part where one is named', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'finding', part: 'crown bearing', condition: 'junk', verdict: 'replace' }, { kind: 'fit', part: 'crown', state: 'off' }]);
    shop.say([{ kind: 'fit', part: 'hood', state: 'off' }]);
    shop.say([{ kind: 'amend', undo: true, part: 'crown bearing' }]);
    expect(shop.machine().things.get('crown bearing')).toBeUndefined();
    expect(shop.thing('hood').fit?.state).toBe('off');
  });

  it('of the same price back and forth leaves the money right', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'order', item: 'belt', price: 18 }]);
    shop.say([{ kind: 'arrival', item: 'belt' }]);
    shop.say([{ kind: 'amend', field: 'price', value: 20 }]);
    expect(shop.thing('belt').paid.map(p => p.price?.cents)).toEqual([2_000]);
    shop.say([{ kind: 'amend', undo: true }]);
    expect(shop.thing('belt').paid.map(p => p.price?.cents)).toEqual([1_800]);
  });
});

describe('an edited message', () => {
  it('strikes what it said before and says it anew; the log keeps both', () => {
    const shop = new BenchShop();
    const [first] = shop.say([{ kind: 'want', item: 'bolts', qty: 2 }, { kind: 'fit', part: 'hood', state: 'off' }]);
    shop.say([{ kind: 'want', item: 'bolts', qty: 6 }], { edits: first!.note });
    expect(shop.thing('bolt').wants.map(w => w.qty)).toEqual([6]);
    expect(shop.machine().things.has('hood')).toBe(false);
    expect(entriesOfNote(shop.log.store, first!.note)).toHaveLength(2);
    expect(replayAll(shop.log.store)).toEqual(shop.log.shop);
  });
});

import { describe, expect, it } from 'vitest';
import { BenchShop } from './tools/shop.ts';

describe('a part', () => {
  it('sits as it was last said to', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'fit', part: 'radiator', state: 'off' }]);
    shop.say([{ kind: 'fit', part: 'the radiator', state: 'temporary', with: 'two bolts' }]);
    expect(shop.thing('radiator').fit).toMatchObject({ state: 'temporary', with: 'two bolts' });
    shop.say([{ kind: 'fit', part: 'Radiators', state: 'on' }]);
    expect(shop.thing('radiator').fit).toMatchObject({ state: 'on', with: undefined });
  });

  it('keeps readings as it was apart from those as it was left', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'reading', part: 'king pin', what: 'shims', value: 3, unit: 'count', asWas: true }]);
    shop.say([{ kind: 'reading', part: 'king pin', what: 'shims', value: 2, unit: 'count' }, { kind: 'reading', part: 'king pin', what: 'end play', value: 0.004, unit: 'in' }]);
    expect(shop.thing('king pin').asWas.get('shim')).toMatchObject({ value: 3 });
    expect([...shop.thing('king pin').asLeft.values()].map(r => [r.what, r.value])).toEqual([['shims', 2], ['end play', 0.004]]);
  });

  it('is where it was last put, until it goes out or on', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'stow', part: 'magneto', where: 'top shelf' }]);
    expect(shop.thing('magneto').place?.where).toBe('top shelf');
    shop.say([{ kind: 'out', part: 'magneto', where: 'rewinder', until: '2026-03-20', do: 'rewind' }]);
    expect(shop.thing('magneto')).toMatchObject({ place: undefined, out: { where: 'rewinder', until: '2026-03-20' } });
    shop.say([{ kind: 'arrival', item: 'magneto' }]);
    expect(shop.thing('magneto').out).toBeUndefined();
    expect(shop.thing('magneto').works.get('rewind')).toMatchObject({ done: true });
    shop.say([{ kind: 'stow', part: 'magneto', where: 'bench' }, { kind: 'fit', part: 'magneto', state: 'on' }]);
    expect(shop.thing('magneto').place).toBeUndefined();
  });

  it('has a fault from a verdict until it is mended, replaced or found good', () => {
    const shop = new BenchShop();
    const fault = (): string | undefined => shop.thing('fan').fault?.verdict;
    shop.say([{ kind: 'finding', part: 'fan', condition: 'cracked blade', verdict: 'repair' }]);
    shop.say([{ kind: 'work', part: 'fan', action: 'clean' }]);
    expect(fault()).toBe('repair');
    shop.say([{ kind: 'work', part: 'fan', action: 'weld' }]);
    expect(fault()).toBeUndefined();
    shop.say([{ kind: 'finding', part: 'fan', condition: 'cracked again', verdict: 'replace' }]);
    shop.say([{ kind: 'work', part: 'fan', action: 'weld' }]);
    expect(fault()).toBe('replace');
    shop.say([{ kind: 'bought', item: 'fan', price: 40 }]);
    expect(fault()).toBeUndefined();
  });

  it('waits until the day said, or for a span from the moment it was said', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'wait', part: 'tank', until: '2026-03-09' }]);
    expect(shop.thing('tank').wait?.until).toBe('2026-03-09');
    shop.say([{ kind: 'wait', part: 'tank', after: 36, unit: 'hours' }], { at: '2026-03-28T20:00:00+01:00' });
    // A fixed offset goes 36 hours by the clock of that offset, whatever summer time does (RFC 3339, section 4).
    expect(Date.parse(shop.thing('tank').wait!.until!)).toBe(Date.parse('2026-03-30T08:00:00+01:00'));
    shop.say([{ kind: 'wait', part: 'tank', after: 2, unit: 'weeks' }], { at: '2028-02-20T20:00:00+01:00' });
    expect(shop.thing('tank').wait?.until).toBe('2028-03-05');
  });
});

describe('a machine', () => {
  it('is itself what its own name says', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'hours', hours: 2, part: 'the Heron' }, { kind: 'hours', hours: 1 }]);
    expect(shop.machine().things.get('')!.hours.map(h => h.hours)).toEqual([2, 1]);
  });

  it('has its running time and distance from whichever part they were said of', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'reading', part: 'engine', what: 'running time', value: 12.5, unit: 'h' }, { kind: 'reading', part: 'Heron', what: 'distance', value: 8, unit: 'mi' }]);
    expect(shop.machine().running.map(p => p.value)).toEqual([12.5]);
    expect(shop.machine().distance.map(p => p.value)).toEqual([8]);
  });

  it('is the one named in the note, else the one of the chat', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'fit', part: 'drum', state: 'off', machine: 'winch' }, { kind: 'fit', part: 'hood', state: 'off' }]);
    shop.say([{ kind: 'fit', part: 'drum', state: 'on', machine: 'the winch' }]);
    expect([...shop.log.shop.machines.values()].map(m => [m.name, [...m.things.keys()]])).toEqual([['winch', ['drum']], ['Heron', ['hood']]]);
    expect(shop.thing('drum', 'winch').fit?.state).toBe('on');
  });
});

import { describe, expect, it } from 'vitest';
import { causesOf, machineCauses } from '../../../domain/answers/causes.ts';
import { lookUp } from '../../../domain/answers/find.ts';
import type { Entry } from '../../../domain/model/entry.ts';
import { BenchShop } from '../log/tools/shop.ts';
import { ask, NOW, tree } from './tools/ask.ts';

const after = (...said: Entry[]): BenchShop => {
  const shop = new BenchShop();
  for (const entry of said) shop.say([entry]);
  return shop;
};
/** The tree of causes as it is found, before anything is said of the days on which they clear. */
function held({ log: { shop } }: BenchShop, part: string, at = NOW.at): string[] {
  const { machine, ref, whole } = lookUp(shop, part, 'Heron')!;
  const asking = { shop, machine, now: { at, zone: 'UTC' }, seen: new Set<string>() };
  return tree(whole ? machineCauses(asking) : causesOf(ref, asking));
}
const clear = (shop: BenchShop, part: string): boolean | null => ask(shop, { kind: 'blocked', part }).clear;

describe('what holds up a part', () => {
  it('is not known of a part never heard of', () => expect(ask(after(), { kind: 'blocked', part: 'flux capacitor' })).toEqual({ kind: 'blocked', part: 'flux capacitor', clear: null, causes: [] }));
  it('is nothing when nothing is', () => expect(clear(after({ kind: 'fit', part: 'radiator', state: 'off' }), 'radiator')).toBe(true));

  it('is what must be bought for it, ordered for it, or is late', () => {
    const want = (item: string): Entry => ({ kind: 'want', item, for: 'radiator' });
    const shop = after({ kind: 'fit', part: 'radiator', state: 'off' }, want('hose clips'), want('top hose'), want('core plug'),
      { kind: 'order', item: 'top hose', expected: '2026-03-12' }, { kind: 'order', item: 'core plug', expected: '2026-03-09' });
    expect(held(shop, 'radiator')).toEqual(['not bought hose clips (buy hose clips)', 'on order top hose [2026-03-12]', 'late core plug (chase core plug)']);
    expect(held(shop, 'radiator', '2026-03-13T09:00:00+00:00')).toContain('late top hose (chase top hose)');
  });

  it('is nothing once what was wanted for it has come', () => {
    const shop = after({ kind: 'want', item: 'top hose', for: 'refit the radiator' });
    expect(held(shop, 'radiator')).toEqual(['not bought top hose (buy top hose)']);
    shop.say([{ kind: 'bought', item: 'top hose', price: 9 }]);
    expect(clear(shop, 'radiator')).toBe(true);
  });

  it('is that it is out, and until when', () => {
    const shop = after({ kind: 'out', part: 'radiator', where: 'radiator man', until: '2026-03-20' });
    expect(held(shop, 'radiator')).toEqual(['out radiator [2026-03-20]']);
    expect(held(shop, 'radiator', '2026-03-21T09:00:00+00:00')).toEqual(['out radiator (ask after radiator) [2026-03-20]']);
  });

  it('is that it only hangs there', () => expect(held(after({ kind: 'fit', part: 'radiator', state: 'temporary' }), 'radiator')).toEqual(['temporary radiator (put radiator on for good)']));

  it('is cure, until its day or hour', () => {
    const shop = after({ kind: 'wait', part: 'fuel tank', until: '2026-03-12' });
    expect(held(shop, 'fuel tank')).toEqual(['wait fuel tank [2026-03-12]']);
    expect(held(shop, 'fuel tank', '2026-03-11T23:59:00+00:00')).toHaveLength(1);
    expect(held(shop, 'fuel tank', '2026-03-12T00:00:00+00:00')).toEqual([]);
    shop.say([{ kind: 'wait', part: 'fuel tank', after: 24, unit: 'hours' }], { at: '2026-03-10T08:00:00+00:00' });
    expect(held(shop, 'fuel tank', '2026-03-11T07:59:00+00:00')).toEqual(['wait fuel tank [2026-03-11]']);
    expect(held(shop, 'fuel tank', '2026-03-11T08:00:00+00:00')).toEqual([]);
  });

  it('is work on it that is open, and a fault that nobody has in hand', () => {
    const shop = after({ kind: 'job', do: 'paint', part: 'hood' }, { kind: 'finding', part: 'fan', condition: 'cracked', verdict: 'repair' }, { kind: 'finding', part: 'belt', condition: 'perished', verdict: 'replace' });
    expect(held(shop, 'hood')).toEqual(['not done paint hood (paint hood)']);
    expect(held(shop, 'fan')).toEqual(['not done repair fan (repair fan)']);
    expect(held(shop, 'belt')).toEqual(['not bought belt (replace belt)']);
    shop.say([{ kind: 'job', do: 'weld', part: 'fan' }, { kind: 'want', item: 'belt' }]);
    expect([held(shop, 'fan'), held(shop, 'belt')]).toEqual([['not done weld fan (weld fan)'], ['not bought belt (buy belt)']]);
  });

  it('is not the job of fitting it', () => expect(clear(after({ kind: 'job', do: 'refit', part: 'radiator' }), 'radiator')).toBe(true));

  it('is a recheck that is due', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'recheck', part: 'brakes', do: 'check', due: '2026-03-09' }]);
    expect(held(shop, 'brakes')).toEqual(['recheck brakes (check brakes)']);
    expect(held(shop, 'brakes', '2026-03-08T09:00:00+00:00')).toEqual([]);
  });

  it('is help that is to come for it', () => {
    const shop = after({ kind: 'fit', part: 'engine', state: 'off' }, { kind: 'hands', when: '2026-03-14', for: 'lift the engine back in' });
    expect(held(shop, 'engine')).toEqual(['help lift the engine back in [2026-03-14]']);
    expect(held(shop, 'engine', '2026-03-14T07:00:00+00:00')).toEqual([]);
  });

  it('is the weather for paint, until a day that is not said to be wet', () => {
    const shop = after({ kind: 'job', do: 'paint', part: 'hood' }, { kind: 'weather', sky: 'rain', from: '2026-03-10', to: '2026-03-11' });
    expect(held(shop, 'hood')).toEqual(['not done paint hood', '  weather paint hood [2026-03-12]']);
    expect(held(shop, 'hood', '2026-03-12T09:00:00+00:00')).toEqual(['not done paint hood (paint hood)']);
  });

  it('is also what belongs to it by name', () => {
    const shop = after({ kind: 'fit', part: 'radiator', state: 'off' }, { kind: 'want', item: 'radiator cap' }, { kind: 'out', part: 'radiator shroud' }, { kind: 'want', item: 'cap nuts' });
    expect(held(shop, 'radiator')).toEqual(['not bought radiator cap (buy radiator cap)', 'out radiator shroud (ask after radiator shroud)']);
  });
});

describe('a rule of the person\'s own', () => {
  it('holds up what comes after, down to the act that frees it', () => {
    const shop = after({ kind: 'rule', first: 'bend the brake lines', then: 'front wheel cylinders' }, { kind: 'rule', first: 'front wheel cylinders', then: 'front wheels' },
      { kind: 'want', item: 'brake pipe', for: 'bend the brake lines' });
    expect(held(shop, 'front wheels')).toEqual(['rule front wheel cylinders', '  rule bend the brake lines', '    not bought brake pipe (buy brake pipe)']);
    shop.say([{ kind: 'bought', item: 'brake pipe' }]);
    expect(held(shop, 'front wheels')).toEqual(['rule front wheel cylinders', '  rule bend the brake lines (bend the brake lines)']);
    shop.say([{ kind: 'work', part: 'brake lines', action: 'bend' }]);
    expect(held(shop, 'front wheels')).toEqual(['rule front wheel cylinders (fit front wheel cylinders)']);
    shop.say([{ kind: 'fit', part: 'front wheel cylinders', state: 'on' }]);
    expect(clear(shop, 'front wheels')).toBe(true);
  });

  it('about a part is met when it is on for good, not when it hangs', () => {
    const shop = after({ kind: 'rule', first: 'guide rollers', then: 'thread the wire' }, { kind: 'fit', part: 'guide rollers', state: 'temporary' });
    expect(held(shop, 'thread the wire')).toEqual(['rule guide rollers', '  temporary guide rollers (put guide rollers on for good)']);
    expect(held(shop, 'wire')).toHaveLength(2);
    shop.say([{ kind: 'fit', part: 'guide rollers', state: 'tight' }]);
    expect(clear(shop, 'wire')).toBe(true);
    shop.say([{ kind: 'fit', part: 'guide rollers', state: 'off' }]);
    expect(held(shop, 'wire')).toEqual(['rule guide rollers (fit guide rollers)']);
  });

  it('about a part that was away is met when it is back', () => {
    const shop = after({ kind: 'out', part: 'king bolt', where: 'blacksmith', until: '2026-03-23' }, { kind: 'rule', first: 'king bolt', then: 'hitch the sweep' });
    expect(held(shop, 'sweep')).toEqual(['rule king bolt', '  out king bolt [2026-03-23]']);
    shop.say([{ kind: 'arrival', item: 'king bolt' }]);
    expect(clear(shop, 'sweep')).toBe(true);
  });

  it('that a part come off is met while it is off', () => {
    const shop = after({ kind: 'fit', part: 'hood', state: 'on' }, { kind: 'rule', first: 'hood off', then: 'engine' });
    expect(held(shop, 'engine')).toEqual(['rule hood off (take hood off)']);
    shop.say([{ kind: 'fit', part: 'hood', state: 'off' }]);
    expect(clear(shop, 'engine')).toBe(true);
  });

  it('about a work is met by work done before, unless an earlier round used that up', () => {
    const polished = after({ kind: 'work', part: 'shaft', action: 'polish' }, { kind: 'rule', first: 'polish the shaft', then: 'bearing' });
    expect(clear(polished, 'bearing')).toBe(true);
    const usedUp = after({ kind: 'work', part: 'bowl', action: 'clean' }, { kind: 'fit', part: 'filter', state: 'on' }, { kind: 'fit', part: 'filter', state: 'off' }, { kind: 'rule', first: 'clean the bowl', then: 'filter' });
    expect(held(usedUp, 'filter')).toEqual(['rule clean the bowl (clean the bowl)']);
  });

  it('is over when what it holds up has been done', () => {
    const shop = after({ kind: 'rule', first: 'prime the hood', then: 'paint the hood' }, { kind: 'work', part: 'hood', action: 'paint' });
    expect(clear(shop, 'hood')).toBe(true);
  });

  it('is found by the work it is about and by the part alone', () => {
    const shop = after({ kind: 'rule', first: 'prime the hood', then: 'paint the hood' });
    for (const part of ['paint the hood', 'spray the hood', 'hood']) expect(held(shop, part)).toEqual(['rule prime the hood (prime the hood)']);
    expect(held(shop, 'polish the hood')).toEqual([]);
  });

  it('that goes round in a circle, by a correction perhaps, ends', () => {
    const shop = after({ kind: 'rule', first: 'radiator', then: 'hood' }, { kind: 'rule', first: 'hood', then: 'radiator' });
    expect(held(shop, 'hood')).toEqual(['rule radiator', '  rule hood (fit hood)']);
  });
});

describe('what holds up a machine', () => {
  it('is all that is open on it, and nothing of the others', () => {
    const shop = after({ kind: 'fit', part: 'radiator', state: 'temporary' }, { kind: 'want', item: 'belt' }, { kind: 'job', do: 'paint', part: 'hood' }, { kind: 'want', item: 'cable', machine: 'winch' });
    for (const part of ['Heron', 'the tractor'])
      expect(held(shop, part)).toEqual(['temporary radiator (put radiator on for good)', 'not bought belt (buy belt)', 'not done paint hood (paint hood)']);
    expect(ask(shop, { kind: 'blocked' }).causes.map(c => c.what).sort()).toEqual(['belt', 'paint hood', 'radiator']);
    expect(held(shop, 'winch')).toEqual(['not bought cable (buy cable)']);
  });
});

it('every answer says the part as it was asked, at the machine in hand first', () => {
  const shop = new BenchShop();
  shop.say([{ kind: 'want', item: 'seat' }], { machine: 'winch' });
  expect(ask(shop, { kind: 'blocked', part: 'the seat' }, NOW.at)).toMatchObject({ part: 'the seat', clear: false });
  shop.say([{ kind: 'fit', part: 'seat', state: 'on' }], { machine: 'Heron' });
  expect(ask(shop, { kind: 'blocked', part: 'the seat' }, NOW.at)).toMatchObject({ part: 'the seat', clear: true });
  expect(ask(shop, { kind: 'blocked', part: 'the seat' }, NOW.at, { machine: 'winch' })).toMatchObject({ clear: false });
});

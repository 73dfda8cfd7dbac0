import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it, onTestFinished } from 'vitest';
import { catchUp, openLog, replayAll, saveSnapshot } from '../../../domain/log/keeper.ts';
import { record } from '../../../domain/log/record.ts';
import type { Entry } from '../../../domain/model/entry.ts';
import { keepNote } from '../../../domain/store/notes.ts';
import { openStore } from '../../../domain/store/open.ts';
import { aNote, freshDir } from '../store/tools/fresh.ts';
import { BenchShop } from './tools/shop.ts';

const oneOf = <T>(...values: T[]): fc.Arbitrary<T> => fc.constantFrom(...values);
const FEW = { numRuns: 150 };

/** Entries over a handful of names, so that they meet. */
const entryOver = (names: readonly string[]): fc.Arbitrary<Entry> => {
  const part = fc.constantFrom(...names);
  const price = fc.integer({ min: 0, max: 9_999 }).map(c => c / 100);
  return fc.oneof(
    fc.record({ kind: oneOf('fit' as const), part, state: oneOf('off', 'tried', 'temporary', 'on', 'tight') }),
    fc.record({ kind: oneOf('finding' as const), part, condition: oneOf('worn', 'sound'), verdict: oneOf('good', 'repair', 'replace', undefined) }),
    fc.record({ kind: oneOf('reading' as const), part, what: oneOf('gap', 'running time'), value: fc.integer({ min: 0, max: 50 }), unit: oneOf('h'), asWas: fc.boolean() }),
    fc.record({ kind: oneOf('work' as const), part, action: oneOf('paint', 'weld', 'check'), done: oneOf(true, false) }),
    fc.record({ kind: oneOf('job' as const), part, do: oneOf('paint', 'weld', 'refit') }),
    fc.record({ kind: oneOf('want' as const), item: part, qty: oneOf(1, 2, undefined), for: fc.oneof(part, fc.constant(undefined)) }),
    fc.record({ kind: oneOf('order' as const), item: part, price, source: oneOf('yard', 'dealer') }),
    fc.record({ kind: oneOf('bought' as const), item: part, price }),
    fc.record({ kind: oneOf('arrival' as const), item: part }),
    fc.record({ kind: oneOf('rule' as const), first: part, then: part }),
    fc.record({ kind: oneOf('recheck' as const), part, do: oneOf('check', 'retorque'), after: oneOf(2), unit: oneOf('hours', 'weeks') }),
    fc.record({ kind: oneOf('stow' as const), part, where: oneOf('shelf', 'bin') }),
    fc.record({ kind: oneOf('out' as const), part, do: oneOf('weld', undefined) }),
    fc.record({ kind: oneOf('hours' as const), part, hours: oneOf(1, 2.5), total: fc.boolean() }),
    fc.record({ kind: oneOf('hands' as const), when: oneOf('2026-03-09'), for: part }),
    fc.record({ kind: oneOf('weather' as const), sky: oneOf('rain', 'dry') }),
  ) as fc.Arbitrary<Entry>;
};
const NAMES = ['radiator', 'radiator hose', 'hose', 'left axle', 'axle', 'fan'];
const amendment: fc.Arbitrary<Entry> = fc.oneof(
  fc.constant<Entry>({ kind: 'amend', undo: true }),
  fc.record({ kind: oneOf('amend' as const), field: oneOf('part', 'item', 'for'), value: fc.constantFrom(...NAMES) }),
  fc.record({ kind: oneOf('amend' as const), field: oneOf('state'), value: oneOf('on', 'off') }),
  fc.record({ kind: oneOf('amend' as const), field: oneOf('machine'), value: oneOf('winch', 'Heron') }),
) as fc.Arbitrary<Entry>;
const notes = fc.array(fc.record({ entries: fc.array(fc.oneof({ weight: 4, arbitrary: entryOver(NAMES) }, { weight: 1, arbitrary: amendment }), { minLength: 1, maxLength: 3 }), machine: oneOf('Heron', 'winch') }), { maxLength: 25 });

describe('the state of the shop', () => {
  it('is what a replay of the whole log gives, whatever was said, struck and changed', () => {
    fc.assert(fc.property(notes, said => {
      const shop = new BenchShop();
      for (const n of said) shop.say(n.entries, { machine: n.machine });
      expect(isDeepStrictEqual(replayAll(shop.log.store), shop.log.shop)).toBe(true);
    }), FEW);
  });

  it('is the same from a snapshot and what came after it', () => {
    fc.assert(fc.property(notes, fc.nat(25), (said, at) => {
      const shop = new BenchShop();
      said.forEach((n, i) => { if (i === at) saveSnapshot(shop.log); shop.say(n.entries, { machine: n.machine }); });
      const again = openLog(shop.log.store);
      expect(isDeepStrictEqual(again.shop, shop.log.shop)).toBe(true);
      if (at > 0 && at < said.length) expect(again.snapshotAt).toBeGreaterThan(0);
    }), FEW);
  });

  it('is as before when the last note is struck and the striking is struck', () => {
    fc.assert(fc.property(notes, said => {
      const shop = new BenchShop();
      for (const n of said) shop.say(n.entries, { machine: n.machine });
      const before = structuredClone(shop.log.shop);
      shop.say([{ kind: 'amend', undo: true }]);
      shop.say([{ kind: 'amend', undo: true }]);
      expect(isDeepStrictEqual(shop.log.shop, before)).toBe(true);
    }), FEW);
  });

  it('does not hang on the order of notes about unrelated parts', () => {
    const stream = (names: string[]): fc.Arbitrary<Entry[]> => fc.array(entryOver(names), { maxLength: 10 });
    fc.assert(fc.property(stream(['radiator', 'hose']), stream(['clutch plate', 'gear lever']), fc.array(fc.boolean(), { minLength: 20, maxLength: 20 }), (one, two, coin) => {
      const told = (first: readonly Entry[], second: readonly Entry[], coins: readonly boolean[]): unknown => {
        const shop = new BenchShop();
        const [a, b] = [[...first], [...second]];
        for (let i = 0; a.length || b.length; i++) shop.say([(coins[i] && a.length) || !b.length ? a.shift()! : b.shift()!], { at: '2026-03-02T08:00:00+00:00' });
        return unnumbered(shop);
      };
      const unmetered = (e: Entry): boolean => e.kind !== 'weather' && !(e.kind === 'reading' && e.what === 'running time');
      const [a, b] = [one.filter(unmetered), two.filter(unmetered)];
      expect(told(a, b, coin)).toEqual(told(b, a, coin));
    }), FEW);
  });
});

/** The state without the numbers of entries, and lists of the machine in no order. */
function unnumbered(shop: BenchShop): unknown {
  const strip = (_: string, value: unknown): unknown => {
    if (value instanceof Map) return Object.fromEntries([...value].sort(([a], [b]) => (String(a) < String(b) ? -1 : 1)));
    if (value && typeof value === 'object' && !Array.isArray(value)) { const { id: _id, note: _note, ...rest } = value as Record<string, unknown>; return rest; }
    return value;
  };
  const state = JSON.parse(JSON.stringify(shop.log.shop, strip)) as { machines: Record<string, { rules: unknown[] }>; hands: unknown[] };
  const sorted = (list: unknown[]): unknown[] => list.map(x => JSON.stringify(x)).sort();
  return { ...state, hands: sorted(state.hands), machines: Object.values(state.machines).map(m => ({ ...m, rules: sorted(m.rules) })) };
}

describe('a log that is open in two places', () => {
  it('is caught up with what the other one recorded, corrections too', () => {
    const dir = freshDir();
    const one = new BenchShop(dir);
    const two = openLog(openStore(dir));
    onTestFinished(() => { one.log.store.close(); two.store.close(); });
    one.say([{ kind: 'want', item: 'bolts', qty: 2 }]);
    catchUp(two);
    expect(isDeepStrictEqual(two.shop, one.log.shop)).toBe(true);
    const { note } = keepNote(two.store, aNote({ chat: 'bench' }));
    record(two, note, [{ kind: 'amend', field: 'qty', value: 6 }, { kind: 'fit', part: 'hood', state: 'off' }]);
    catchUp(one.log);
    expect(one.thing('bolt').wants[0]!.qty).toBe(6);
    expect(isDeepStrictEqual(two.shop, one.log.shop)).toBe(true);
  });

  it('is caught up before it records, so that names mean the same in both', () => {
    const dir = freshDir();
    const [one, two] = [new BenchShop(dir), new BenchShop(dir)];
    onTestFinished(() => { one.log.store.close(); two.log.store.close(); });
    one.say([{ kind: 'fit', part: 'piston rings', state: 'off' }]);
    two.say([{ kind: 'fit', part: 'rings', state: 'on' }]);
    expect([...two.machine().things.keys()]).toEqual(['piston ring']);
  });
});

describe('a transaction that is rolled back', () => {
  it('leaves neither entry nor trace in the state', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'fit', part: 'hood', state: 'off' }]);
    const failing = (): void => shop.log.store.transaction(() => { shop.say([{ kind: 'fit', part: 'hood', state: 'on' }, { kind: 'fit', part: 'lamp', state: 'on' }]); throw new Error('power cut'); });
    expect(failing).toThrow('power cut');
    catchUp(shop.log);
    expect(shop.thing('hood').fit?.state).toBe('off');
    expect([...shop.machine().things.keys()]).toEqual(['hood']);
    shop.say([{ kind: 'fit', part: 'hood', state: 'tight' }]);
    expect(isDeepStrictEqual(replayAll(shop.log.store), shop.log.shop)).toBe(true);
  });
});

describe('a snapshot', () => {
  it('is kept now and then by a log that runs on, so that a cold start has little to fold', () => {
    const shop = new BenchShop();
    shop.log.store.transaction(() => { for (let i = 0; i < 5_001; i++) shop.say([{ kind: 'fit', part: 'hood', state: i % 2 ? 'on' : 'off' }]); });
    expect(shop.log.snapshotAt).toBe(0);
    catchUp(shop.log);
    expect([shop.log.snapshotAt, openLog(shop.log.store).snapshotAt]).toEqual([5_001, 5_001]);
  });
});

describe('a snapshot that can\'t be read', () => {
  it('costs only a replay', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'fit', part: 'hood', state: 'off' }]);
    saveSnapshot(shop.log);
    shop.log.store.run(`UPDATE snapshot SET body = x'00ff'`);
    expect(isDeepStrictEqual(openLog(shop.log.store).shop, shop.log.shop)).toBe(true);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { warnings, type Warned } from '../../../domain/answers/warn.ts';
import type { Entry } from '../../../domain/model/entry.ts';
import { BenchShop } from '../log/tools/shop.ts';
import { ask, NOW } from './tools/ask.ts';

const warned = (shop: BenchShop, ...entries: Entry[]): Warned => warnings(shop.log.shop, entries, NOW, 'Heron');
const after = (...said: Entry[]): BenchShop => { const shop = new BenchShop(); for (const entry of said) shop.say([entry]); return shop; };
const rule = (first: string, then: string): Entry => ({ kind: 'rule', first, then });

describe('a rule that would close a circle', () => {
  it('is refused, and the circle spelled out', () => {
    const shop = after(rule('radiator', 'fan'), rule('fan', 'fan belt'), rule('paint the hood', 'radiator'));
    const { warnings: said, refused } = warned(shop, { kind: 'remark', text: 'x' }, rule('fan belt', 'paint the hood'));
    expect(refused).toEqual([1]);
    expect(said).toMatchObject([{ kind: 'circle', path: ['fan belt', 'paint the hood', 'radiator', 'fan', 'fan belt'] }]);
  });

  it('is one that puts a thing before itself, or two of one note that face each other', () => {
    expect(warned(after(), rule('hood', 'the hood'))).toMatchObject({ refused: [0], warnings: [{ path: ['hood', 'the hood'] }] });
    expect(warned(after(), rule('hood', 'lamp'), rule('lamp', 'hood')).refused).toEqual([1]);
  });

  it('is not one about another work, another machine, or one that is over', () => {
    expect(warned(after(rule('hood', 'lamp')), rule('lamp', 'paint the hood')).refused).toEqual([]);
    expect(warned(after({ ...rule('hood', 'lamp'), machine: 'winch' } as Entry), rule('lamp', 'hood')).refused).toEqual([]);
    expect(warned(after(rule('hood', 'lamp'), { kind: 'fit', part: 'lamp', state: 'on' }), rule('lamp', 'hood')).refused).toEqual([]);
  });

  it('is found exactly when the rules have one: what is left never has a circle', () => {
    const part = fc.constantFrom('a1', 'b1', 'c1', 'd1', 'e1');
    fc.assert(fc.property(fc.array(fc.tuple(part, part), { maxLength: 14 }), pairs => {
      const shop = new BenchShop();
      const edges: [string, string][] = [];
      for (const [first, then] of pairs) {
        const { refused } = warned(shop, rule(first, then));
        expect(refused.length === 1).toBe(first === then || reaches(edges, then, first));
        if (refused.length === 0) { shop.say([rule(first, then)]); edges.push([first, then]); }
      }
    }), { numRuns: 60 });
  });
});

/** Reachability by repeated closure over all pairs (Warshall 1962), as an oracle for the search. */
function reaches(edges: readonly [string, string][], from: string, to: string): boolean {
  const known = new Set(edges.map(([a, b]) => `${a} ${b}`));
  for (let grown = true; grown;) {
    grown = false;
    for (const ab of [...known]) for (const [c, d] of edges) {
      const [a, b] = ab.split(' ');
      if (b === c && !known.has(`${a} ${d}`)) { known.add(`${a} ${d}`); grown = true; }
    }
  }
  return known.has(`${from} ${to}`);
}

describe('putting on for good', () => {
  const on: Entry = { kind: 'fit', part: 'radiator', state: 'on' };

  it('against a rule of one\'s own is warned of', () => {
    const shop = after(rule('pressure test the radiator', 'radiator'));
    expect(warned(shop, on)).toEqual({ refused: [], warnings: [{ kind: 'rule', part: 'radiator', first: 'pressure test the radiator', then: 'radiator' }] });
    expect(warned(shop, { kind: 'fit', part: 'radiator', state: 'temporary' }).warnings).toEqual([]);
    expect(warned(shop, { kind: 'work', part: 'radiator', action: 'pressure test' }, on).warnings).toEqual([]);
  });

  it('while something for it is still to be got is warned of', () => {
    const shop = after({ kind: 'want', item: 'top hose', for: 'radiator' }, { kind: 'want', item: 'radiator cap' }, { kind: 'want', item: 'bolts' }, { kind: 'order', item: 'radiator cap', expected: '2026-03-12' });
    expect(warned(shop, on).warnings).toEqual([
      { kind: 'wanted', part: 'radiator', item: 'top hose', status: 'needed' }, { kind: 'wanted', part: 'radiator', item: 'radiator cap', status: 'ordered', expected: '2026-03-12' }]);
    expect(warned(shop, { kind: 'bought', item: 'top hose' }, { kind: 'arrival', item: 'radiator cap' }, on).warnings).toEqual([]);
  });

  it('against the usual order of assembly is warned of, where the log shows the other part not on', () => {
    const shop = after({ kind: 'fit', part: 'left brake shoes', state: 'off' }, { kind: 'fit', part: 'right brake shoes', state: 'temporary' });
    const drum = (part: string): Entry => ({ kind: 'fit', part, state: 'on' });
    expect(warned(shop, drum('left brake drum')).warnings).toMatchObject([{ kind: 'order', part: 'left brake drum', first: 'left brake shoes', source: 'common practice, no source' }]);
    expect(warned(shop, drum('brake drum')).warnings).toHaveLength(2);
    expect(warned(shop, { kind: 'fit', part: 'left brake shoes', state: 'on' }, drum('left brake drum')).warnings).toEqual([]);
    expect(warned(after(), drum('left brake drum')).warnings).toEqual([]);
    expect(warned(after(drum('brake drum'), { kind: 'fit', part: 'brake shoes', state: 'off' }), { kind: 'fit', part: 'brake drum', state: 'tight' }).warnings).toEqual([]);
  });

  it('in an order that was turned down, or that one\'s own rule has the other way, is not', () => {
    const shop = after({ kind: 'fit', part: 'brake shoes', state: 'off' });
    const [said] = warned(shop, { kind: 'fit', part: 'brake drum', state: 'on' }).warnings;
    if (said?.kind !== 'order') throw new Error('no warning of the usual order');
    expect(warnings(shop.log.shop, [{ kind: 'fit', part: 'brake drum', state: 'on' }], NOW, 'Heron', new Set([said.rule])).warnings).toEqual([]);
    shop.say([rule('brake drum', 'brake shoes')]);
    expect(warned(shop, { kind: 'fit', part: 'brake drum', state: 'on' }).warnings).toEqual([]);
  });

  it('before a job that usually comes first is warned of', () => {
    const shop = after({ kind: 'job', do: 'paint', part: 'battery box' });
    expect(warned(shop, { kind: 'fit', part: 'battery', state: 'on' }).warnings).toMatchObject([{ kind: 'order', first: 'paint the battery box' }]);
  });

  it('is kept all the same', () => {
    const shop = after({ kind: 'want', item: 'top hose', for: 'radiator' });
    shop.say([on]);
    expect(shop.thing('radiator').fit?.state).toBe('on');
    expect(ask(shop, { kind: 'buy' }).items).toHaveLength(1);
  });
});

it('a work against a rule is warned of too', () => {
  const shop = after(rule('polish the shaft', 'pour the babbitt'));
  expect(warned(shop, { kind: 'work', part: 'babbitt', action: 'pour' }).warnings).toMatchObject([{ kind: 'rule', first: 'polish the shaft' }]);
  expect(warned(shop, { kind: 'work', part: 'babbitt', action: 'pour', done: false }).warnings).toEqual([]);
});

import { describe, expect, it } from 'vitest';
import { blockers, type Thing } from '../../../domain/plan/blockers.ts';
import { findCircle } from '../../../domain/plan/circle.ts';

const network = (things: Thing[]) => new Map(things.map((thing) => [thing.id, thing]));
const today = '2026-05-04';

/** The radiator waits for its hoses (on order), for the fan belt (not bought) and for the water pump, whose shaft is out for work. */
const heron = network([
  { id: 'radiator', cause: 'not done', what: 'radiator', act: 'fit radiator', hours: 2, needs: ['hoses', 'pump', 'belt', 'gone'] },
  { id: 'hoses', cause: 'on order', what: 'hoses', clears: '2026-05-08', needs: [] },
  { id: 'belt', cause: 'not bought', what: 'fan belt', act: 'buy fan belt', price: 14, needs: [] },
  { id: 'pump', cause: 'not done', what: 'water pump', act: 'fit water pump', hours: 1.5, needs: ['shaft', 'bracket'] },
  { id: 'shaft', cause: 'out', what: 'pump shaft', clears: '2026-05-12', needs: [] },
  { id: 'bracket', cause: 'temporary', what: 'pump bracket', act: 'tighten pump bracket', hours: 0.25, needs: [] },
]);

describe('what holds up a part', () => {
  it('is a tree down to acts, cheapest branch first, with the earliest day of each', () => {
    expect(blockers(heron, 'radiator', { today })).toEqual({
      ok: true,
      causes: [
        { cause: 'not done', what: 'water pump', act: 'fit water pump', clears: '2026-05-12', causes: [
          { cause: 'temporary', what: 'pump bracket', act: 'tighten pump bracket', clears: today, causes: [] },
          { cause: 'out', what: 'pump shaft', clears: '2026-05-12', causes: [] },
        ] },
        { cause: 'not bought', what: 'fan belt', act: 'buy fan belt', clears: today, causes: [] },
        { cause: 'on order', what: 'hoses', clears: '2026-05-08', causes: [] },
      ],
      acts: [
        { id: 'bracket', act: 'tighten pump bracket', what: 'pump bracket', hours: 0.25, clears: today },
        { id: 'belt', act: 'buy fan belt', what: 'fan belt', price: 14, clears: today },
      ],
    });
  });

  it('has no day where something under it has none', () => {
    const unknown = new Map(heron).set('shaft', { id: 'shaft', cause: 'out', what: 'pump shaft', needs: [] });
    const result = blockers(unknown, 'radiator', { today });
    expect(result.ok && result.causes.find(({ what }) => what === 'water pump')).not.toHaveProperty('clears');
    const planned = blockers(unknown, 'radiator', { today, earliest: (id) => (id === 'shaft' ? '2026-06-01' : undefined) });
    expect(planned.ok && planned.causes.find(({ what }) => what === 'water pump')).toHaveProperty('clears', '2026-06-01');
  });

  it('opens a shared cause once', () => {
    const shared = network([
      { id: 'a', cause: 'not done', what: 'a', needs: ['b', 'c'] },
      { id: 'b', cause: 'not done', what: 'b', act: 'fit b', needs: ['d'] },
      { id: 'c', cause: 'not done', what: 'c', act: 'fit c', needs: ['d'] },
      { id: 'd', cause: 'not done', what: 'd', act: 'weld d', needs: ['e'] },
      { id: 'e', cause: 'not bought', what: 'e', act: 'buy e', needs: [] },
    ]);
    const result = blockers(shared, 'a', { today });
    expect(result.ok && result.causes.map(({ what, causes }) => [what, causes[0]!.causes.length])).toEqual([['b', 1], ['c', 0]]);
    expect(result.ok && result.acts.map(({ act }) => act)).toEqual(['buy e']);
  });

  it('is nothing for a part that nothing holds up or that it does not know', () => {
    expect(blockers(heron, 'belt', { today })).toEqual({ ok: true, causes: [], acts: [] });
    expect(blockers(heron, 'hood', { today })).toEqual({ ok: true, causes: [], acts: [] });
  });

  it('refuses a circle with its path in the names of the person', () => {
    const round = new Map(heron).set('shaft', { id: 'shaft', cause: 'rule', what: 'pump shaft', needs: ['radiator'] });
    const result = blockers(round, 'radiator', { today });
    expect(result).toMatchObject({ ok: false, why: 'circle' });
    expect(!result.ok && result.path).toEqual(['radiator', 'pump shaft', 'water pump', 'radiator']);
  });
});

describe('findCircle', () => {
  it('names the path, or nothing', () => {
    expect(findCircle([['a', 'b'], ['b', 'c'], ['a', 'c']])).toBeUndefined();
    expect(findCircle([['a', 'b'], ['b', 'c'], ['c', 'b']])).toEqual(['b', 'c', 'b']);
    expect(findCircle([['a', 'a']])).toEqual(['a', 'a']);
    const chain = Array.from({ length: 50_000 }, (_, i) => [`${i}`, `${i + 1}`] as const);
    expect(findCircle(chain)).toBeUndefined();
    expect(findCircle([...chain, ['50000', '0']])).toHaveLength(50_002);
  });
});

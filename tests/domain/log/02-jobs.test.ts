import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../domain/model/entry.ts';
import { BenchShop } from './tools/shop.ts';

const jobsAfter = (job: string, ...then: Entry[]): string[] => {
  const shop = new BenchShop();
  shop.say([{ kind: 'job', do: job, part: 'hood' }]);
  for (const entry of then) shop.say([entry]);
  return shop.thing('hood').jobs.map(j => j.do);
};

describe('a job', () => {
  it('is the same job when it is said again', () => expect(jobsAfter('paint', { kind: 'job', do: 'paint', part: 'hood' })).toEqual(['paint']));

  it.each<[string, Entry]>([
    ['paint', { kind: 'work', part: 'hood', action: 'paint' }],
    ['paint', { kind: 'work', part: 'hood', action: 'spray' }],
    ['paint', { kind: 'work', part: 'hood', action: 'repaint' }],
    ['refit', { kind: 'fit', part: 'hood', state: 'on' }],
    ['put', { kind: 'fit', part: 'hood', state: 'tight' }],
    ['retorque', { kind: 'fit', part: 'hood', state: 'tight' }],
    ['pull', { kind: 'fit', part: 'hood', state: 'off' }],
    ['replace', { kind: 'fit', part: 'hood', state: 'on' }],
    ['inspect', { kind: 'finding', part: 'hood', condition: 'sound' }],
    ['measure', { kind: 'reading', part: 'hood', what: 'gap', value: 2, unit: 'mm' }],
    ['send', { kind: 'out', part: 'hood', where: 'blaster' }],
  ])('%s is ended by %j', (job, entry) => expect(jobsAfter(job, entry)).toEqual([]));

  it.each<[string, Entry]>([
    ['patch', { kind: 'work', part: 'hood', action: 'weld' }],
    ['paint', { kind: 'work', part: 'hood', action: 'prime' }],
    ['paint', { kind: 'work', part: 'hood', action: 'paint', done: false }],
    ['paint', { kind: 'work', part: 'fender', action: 'paint' }],
    ['refit', { kind: 'fit', part: 'hood', state: 'temporary' }],
    ['refit', { kind: 'fit', part: 'hood', state: 'tried' }],
    ['retorque', { kind: 'fit', part: 'hood', state: 'on' }],
    ['paint', { kind: 'finding', part: 'hood', condition: 'sound', verdict: 'good' }],
  ])('%s stays open after %j', (job, entry) => expect(jobsAfter(job, entry)).toEqual([job]));

  it('is begun by work that is not finished', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'job', do: 'sand', part: 'hood' }, { kind: 'work', part: 'hood', action: 'sand', done: false }]);
    expect(shop.thing('hood').jobs).toMatchObject([{ do: 'sand', begun: true }]);
  });
});

describe('a recheck', () => {
  it('is ended by the same look later, not by the note that asked for it', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'recheck', part: 'head', do: 'retorque', after: 2, unit: 'hours' }, { kind: 'fit', part: 'head', state: 'tight' }]);
    expect(shop.thing('head').rechecks).toHaveLength(1);
    shop.say([{ kind: 'fit', part: 'head', state: 'on' }]);
    expect(shop.thing('head').rechecks).toHaveLength(1);
    shop.say([{ kind: 'fit', part: 'head', state: 'tight' }]);
    expect(shop.thing('head').rechecks).toHaveLength(0);
  });

  it('takes the place of an earlier one of its kind', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'recheck', part: 'belt', do: 'check', after: 1, unit: 'weeks' }]);
    shop.say([{ kind: 'recheck', part: 'belt', do: 'look', due: '2026-04-01' }, { kind: 'recheck', part: 'belt', do: 'retension', after: 5, unit: 'hours' }]);
    expect(shop.thing('belt').rechecks.map(r => [r.do, r.due])).toEqual([['look', '2026-04-01'], ['retension', undefined]]);
  });
});

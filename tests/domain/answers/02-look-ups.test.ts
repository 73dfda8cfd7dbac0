import { describe, expect, it } from 'vitest';
import { linkMedia } from '../../../domain/store/media.ts';
import { BenchShop } from '../log/tools/shop.ts';
import { ask } from './tools/ask.ts';

describe('where', () => {
  it('a thing was put, or that it is out, or on the machine', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'stow', part: 'feeder springs', where: 'coffee tin' }, { kind: 'fit', part: 'seat spring', state: 'on' }, { kind: 'out', part: 'magneto', where: 'rewinder', until: '2026-03-20' }], { at: '2026-03-02T10:00:00+00:00' });
    expect(ask(shop, { kind: 'where', part: 'feeder spring' })).toEqual({ kind: 'where', part: 'feeder spring', where: 'coffee tin', since: '2026-03-02T10:00:00+00:00' });
    expect(ask(shop, { kind: 'where', part: 'springs' }).where).toBe('coffee tin');
    expect(ask(shop, { kind: 'where', part: 'magneto' })).toEqual({ kind: 'where', part: 'magneto', where: null, out: { where: 'rewinder', until: '2026-03-20' } });
    expect(ask(shop, { kind: 'where', part: 'seat spring' })).toEqual({ kind: 'where', part: 'seat spring', where: null, fit: 'on' });
    expect(ask(shop, { kind: 'where', part: 'sky hook' })).toEqual({ kind: 'where', part: 'sky hook', where: null });
  });
});

describe('how it was', () => {
  const shop = new BenchShop();
  shop.say([{ kind: 'reading', part: 'top pitman cap', what: 'shims', value: 3, unit: 'count', asWas: true }], { at: '2026-03-02T10:00:00+00:00' });
  shop.say([{ kind: 'reading', part: 'top pitman cap', what: 'shims', value: 2, unit: 'count' }, { kind: 'reading', part: 'head', what: 'gap', value: 0.5, unit: 'mm' }], { at: '2026-03-03T10:00:00+00:00' });
  shop.say([{ kind: 'remark', text: 'The pulley had the dished washer outermost' }, { kind: 'fit', part: 'pulley', state: 'off' }]);
  shop.say([{ kind: 'remark', text: 'The pulley had the dished washer outermost' }]);
  shop.say([{ kind: 'remark', text: 'I like that pulley' }]);

  it('is what was read before it came apart', () => expect(ask(shop, { kind: 'wasHow', part: 'top pitman cap', what: 'shim' })).toEqual({
    kind: 'wasHow', part: 'top pitman cap', what: 'shim', readings: [{ what: 'shims', value: 3, unit: 'count', asWas: true, at: '2026-03-02T10:00:00+00:00', part: 'top pitman cap' }], notes: [] }));
  it('is told by what was remarked of it', () => expect(ask(shop, { kind: 'wasHow', part: 'pulley' })).toEqual({ kind: 'wasHow', part: 'pulley', readings: [], notes: ['The pulley had the dished washer outermost'] }));
  it('is marked where it was only measured since', () => expect(ask(shop, { kind: 'wasHow', part: 'head', what: 'gap' }).readings).toMatchObject([{ value: 0.5, asWas: false }]));
  it('is not made up', () => {
    expect(ask(shop, { kind: 'wasHow', part: 'head', what: 'torque' }).readings).toEqual([]);
    expect(ask(shop, { kind: 'wasHow', part: 'gizmo' })).toEqual({ kind: 'wasHow', part: 'gizmo', readings: [], notes: [] });
  });
});

describe('what is provisional', () => {
  it('is what is tried or temporary, the longest so first, by machine or part or anywhere', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'fit', part: 'hood', state: 'tried' }], { at: '2026-03-05T10:00:00+00:00' });
    shop.say([{ kind: 'fit', part: 'lamp', state: 'temporary', with: 'wire', machine: 'winch' }], { at: '2026-03-01T10:00:00+00:00' });
    shop.say([{ kind: 'fit', part: 'seat', state: 'temporary' }, { kind: 'fit', part: 'seat', state: 'on' }, { kind: 'fit', part: 'hood hinge', state: 'temporary' }], { at: '2026-03-06T10:00:00+00:00' });
    expect(ask(shop, { kind: 'provisional' }).items.map(i => [i.part, i.state, i.machine])).toEqual([['lamp', 'temporary', 'winch'], ['hood', 'tried', 'Heron'], ['hood hinge', 'temporary', 'Heron']]);
    expect(ask(shop, { kind: 'provisional', part: 'winch' }).items).toEqual([{ part: 'lamp', state: 'temporary', since: '2026-03-01T10:00:00+00:00', with: 'wire', machine: 'winch' }]);
    expect(ask(shop, { kind: 'provisional', part: 'hood' }).items.map(i => i.part)).toEqual(['hood', 'hood hinge']);
    expect(ask(shop, { kind: 'provisional', part: 'gizmo' }).items).toEqual([]);
  });
});

describe('what is due to be looked at again', () => {
  it('by the day', () => {
    const shop = new BenchShop();
    // Calendar facts: 2028 is a leap year; a month from 31 January is the last day of February (ISO 8601 arithmetic as luxon does it).
    shop.say([{ kind: 'recheck', part: 'belt', do: 'check', after: 2, unit: 'weeks' }], { at: '2028-02-20T10:00:00+00:00' });
    shop.say([{ kind: 'recheck', part: 'king bolt', do: 'check', after: 1, unit: 'months' }], { at: '2028-01-31T10:00:00+00:00' });
    shop.say([{ kind: 'recheck', part: 'spring', do: 'look', due: '2028-03-10' }], { at: '2028-02-20T10:00:00+00:00' });
    const on = (at: string): [string | undefined, string, boolean?][] => ask(shop, { kind: 'due' }, at).items.map(i => [i.part, i.when, i.overdue]);
    expect(on('2028-02-28T23:00:00+00:00')).toEqual([['king bolt', '2028-02-29', undefined], ['belt', '2028-03-05', undefined], ['spring', '2028-03-10', undefined]]);
    expect(on('2028-03-05T01:00:00+00:00')).toEqual([['king bolt', '2028-02-29', true], ['belt', '2028-03-05', true], ['spring', '2028-03-10', undefined]]);
  });

  it('by running time and distance, counted from when it was asked for', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'reading', part: 'engine', what: 'running time', value: 1_204, unit: 'h' }]);
    shop.say([{ kind: 'recheck', part: 'head', do: 'retorque', after: 2, unit: 'hours' }, { kind: 'recheck', part: 'brakes', do: 'check', after: 50, unit: 'miles' }]);
    const when = (): string[] => ask(shop, { kind: 'due' }).items.map(i => `${i.part}: ${i.when}`);
    expect(when()).toEqual(['head: after 2 hours running', 'brakes: after 50 miles']);
    shop.say([{ kind: 'reading', part: 'engine', what: 'running time', value: 1_205.25, unit: 'h' }]);
    expect(when()).toEqual(['head: after 2 hours running, 0.75 to go', 'brakes: after 50 miles']);
    shop.say([{ kind: 'reading', part: 'engine', what: 'running time', value: 1_206, unit: 'h' }]);
    expect(ask(shop, { kind: 'due' }).items[0]).toMatchObject({ part: 'head', do: 'retorque', when: 'now', overdue: true });
  });

  it('counts from nought where no meter was read before', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'recheck', part: 'wheels', do: 'check', after: 20, unit: 'hours' }]);
    shop.say([{ kind: 'reading', part: 'Heron', what: 'running time', value: 20, unit: 'h' }]);
    expect(ask(shop, { kind: 'due' }).items[0]).toMatchObject({ part: 'wheels', overdue: true });
  });

  it('is settled by a look when it was due, not by one before', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'recheck', part: 'spring', do: 'check', due: '2026-03-08' }], { at: '2026-03-02T10:00:00+00:00' });
    shop.say([{ kind: 'finding', part: 'spring', condition: 'sound' }], { at: '2026-03-05T10:00:00+00:00' });
    expect(ask(shop, { kind: 'due' }).items).toHaveLength(1);
    shop.say([{ kind: 'finding', part: 'spring', condition: 'sound' }], { at: '2026-03-09T10:00:00+00:00' });
    expect(ask(shop, { kind: 'due' }).items).toEqual([]);
  });

  it('is beside it what the trade looks at again after such a part went on, until somebody asks for it', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'fit', part: 'left front wheel', state: 'on' }, { kind: 'fit', part: 'fan belt', state: 'tried' }, { kind: 'fit', part: 'seat', state: 'on' }]);
    // 3 and 10 hours: one maker's manual, named in domain/lore/rechecks.ts.
    expect(ask(shop, { kind: 'due' }).usual.map(u => [u.do, u.part, u.after, u.unit])).toEqual([['tighten', 'wheel nuts', 3, 'hours']]);
    shop.say([{ kind: 'recheck', part: 'wheel nuts', do: 'tighten', after: 3, unit: 'hours' }]);
    expect(ask(shop, { kind: 'due' }).usual).toEqual([]);
  });
});

describe('history', () => {
  const shop = new BenchShop();
  const on = (day: string) => ({ at: `2026-03-${day}T10:00:00+00:00` });
  shop.say([{ kind: 'fit', part: 'governor', state: 'off' }], { ...on('02'), text: 'Governor is off.' });
  shop.say([{ kind: 'fit', part: 'hood', state: 'off' }], { ...on('02'), text: 'Hood off too.' });
  shop.say([{ kind: 'work', part: 'governor weights', action: 'clean' }], { ...on('04'), text: 'Cleaned the governor weights.' });
  shop.say([{ kind: 'work', part: 'governor', action: 'paint' }], { ...on('05'), text: 'Painted the governor.' });
  shop.say([{ kind: 'amend', undo: true }], { ...on('05'), text: 'Scratch that.' });
  shop.say([], { ...on('05'), text: 'Where is the governor?' });
  shop.say([{ kind: 'fit', part: 'drum', state: 'off' }], { ...on('05'), machine: 'winch', text: 'Drum is off.' });
  const texts = (question: { part?: string; from?: string; to?: string }): string[] => ask(shop, { kind: 'history', ...question }).items.map(i => i.text);

  it('of a part is what was said of it and of what belongs to it, in order, less what was struck', () => expect(texts({ part: 'governor' })).toEqual(['Governor is off.', 'Cleaned the governor weights.']));
  it('of a day is what was said that day', () => {
    expect(texts({ from: '2026-03-02', to: '2026-03-02' })).toEqual(['Governor is off.', 'Hood off too.']);
    expect(texts({ from: '2026-03-05', to: '2026-03-05' })).toEqual(['Drum is off.']);
  });
  it('of a part in some days is both', () => expect(texts({ part: 'governor', from: '2026-03-03', to: '2026-03-31' })).toEqual(['Cleaned the governor weights.']));
  it('of a machine is what was said of it', () => expect(texts({ part: 'winch' })).toEqual(['Drum is off.']));
  it('of a thing never heard of is empty', () => expect(texts({ part: 'gizmo' })).toEqual([]));
});

describe('pictures', () => {
  it('are the files tied to the part and what belongs to it', () => {
    const shop = new BenchShop();
    const [said] = shop.say([{ kind: 'fit', part: 'governor', state: 'off' }, { kind: 'fit', part: 'governor weights', state: 'off' }]);
    for (const hash of ['aa', 'bb']) shop.log.store.run('INSERT INTO media (hash, mime, ext, bytes, at) VALUES (?, ?, ?, ?, ?)', hash, 'image/png', 'png', 1, 'now');
    linkMedia(shop.log.store, { hash: 'bb', note: said!.note, machine: 'heron', part: 'governor' });
    linkMedia(shop.log.store, { hash: 'aa', note: said!.note, machine: 'heron', part: 'governor weight' });
    expect(ask(shop, { kind: 'picture', part: 'the governor' }).files.map(f => f.split('/').at(-1))).toEqual(['bb.png', 'aa.png']);
    expect(ask(shop, { kind: 'picture', part: 'hood' }).files).toEqual([]);
  });
});

describe('the weather', () => {
  const shop = new BenchShop();
  shop.say([{ kind: 'weather', sky: 'dry', from: '2026-03-10', to: '2026-03-12' }, { kind: 'weather', sky: 'rain', from: '2026-03-12', to: '2026-03-12' }, { kind: 'weather', sky: 'wind', from: '2026-03-14', to: '2026-03-14' }]);
  it('is what the person last said of each day, and no more', () => expect(ask(shop, { kind: 'forecast', for: 'paint the hood' })).toEqual({
    kind: 'forecast', for: 'paint the hood', basis: 'said', coat: true, caution: expect.stringContaining('Spray paint'),
    windows: [{ from: '2026-03-10', to: '2026-03-11', fit: true, why: ['dry'] }, { from: '2026-03-12', to: '2026-03-12', fit: false, why: ['rain'] }, { from: '2026-03-14', to: '2026-03-14', fit: false, why: ['wind'] }] }));
  it('that spoils paint leaves other work', () => expect(ask(shop, { kind: 'forecast', for: 'grease the axle', from: '2026-03-14', to: '2026-03-14' }).windows).toMatchObject([{ fit: true }]));
  it('of a day nobody spoke of is not known', () => expect(ask(shop, { kind: 'forecast', from: '2026-03-20' }).windows).toEqual([]));
});

it('a finish is not named without a plan', () => expect(ask(new BenchShop(), { kind: 'finish', part: 'Heron' })).toMatchObject({ p50: null, p80: null, why: expect.any(String) }));

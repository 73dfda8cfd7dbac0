import { describe, expect, it } from 'vitest';
import { headWord } from '../../../domain/log/naming.ts';
import { readPhrase } from '../../../domain/log/phrase.ts';
import { BenchShop } from './tools/shop.ts';

const withParts = (...parts: string[]): BenchShop => {
  const shop = new BenchShop();
  for (const part of parts) shop.say([{ kind: 'fit', part, state: 'off' }]);
  return shop;
};

describe('a name', () => {
  it.each([['wear plate on bottom', 'plate'], ['radiator hose', 'hose'], ['fan', 'fan'], ['on', 'on']])('%s is the name of a %s', (key, head) => expect(headWord(key)).toBe(head));

  it('in a short form means the one thing that it can mean', () => {
    const shop = withParts('piston rings', 'radiator');
    shop.say([{ kind: 'finding', part: 'rings', condition: 'stuck' }]);
    expect(shop.thing('piston ring').finding?.condition).toBe('stuck');
  });

  it('is a name of its own where it could mean several, or another thing of the same beginning', () => {
    const shop = withParts('left front wheel', 'right front wheel', 'pump leathers');
    shop.say([{ kind: 'work', part: 'front wheel', action: 'paint' }, { kind: 'fit', part: 'pump', state: 'off' }]);
    expect(shop.thing('front wheel').works.size).toBe(1);
    expect(shop.thing('pump').fit?.state).toBe('off');
    expect(shop.thing('left front wheel').works.size).toBe(0);
  });

  it('of several is not the one side that was spoken of so far', () => {
    const shop = withParts('left bracket');
    shop.say([{ kind: 'stow', part: 'brackets', where: 'blue bin' }, { kind: 'work', part: 'the bracket', action: 'paint' }]);
    expect(shop.thing('bracket').place?.where).toBe('blue bin');
    const one = withParts('left bracket');
    one.say([{ kind: 'work', part: 'the bracket', action: 'paint' }]);
    expect(one.thing('left bracket').works.size).toBe(1);
  });

  it('is settled by what is on order when something comes', () => {
    const shop = withParts('front wheel cylinders', 'rear wheel cylinders');
    shop.say([{ kind: 'order', item: 'rear wheel cylinders' }]);
    shop.say([{ kind: 'arrival', item: 'wheel cylinders' }]);
    expect(shop.thing('rear wheel cylinder').orders).toEqual([]);
  });

  it('may carry the machine in front of it', () => {
    const shop = withParts('radiator');
    shop.say([{ kind: 'fit', part: 'Heron radiator', state: 'on' }]);
    expect(shop.thing('radiator').fit?.state).toBe('on');
  });

  it('stays what it meant when it was said, though a likelier thing turns up later', () => {
    const shop = new BenchShop();
    shop.say([{ kind: 'fit', part: 'rings', state: 'off' }]);
    shop.say([{ kind: 'fit', part: 'piston rings', state: 'on' }]);
    expect([shop.thing('ring').fit?.state, shop.thing('piston ring').fit?.state]).toEqual(['off', 'on']);
  });

  it('in a remark ties it to the known things it names, the longest name only', () => {
    const shop = withParts('radiator', 'radiator hose');
    const [remark] = shop.say([{ kind: 'remark', text: 'The radiator hoses had been cut short at some time' }]);
    expect(remark!.refs).toEqual([{ key: 'radiator hose', name: 'radiator hose' }]);
  });

  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])('%s is a name like any other', part => {
    const shop = withParts(part);
    expect(shop.machine().things.size).toBe(1);
    expect([...shop.machine().things.values()][0]!.fit?.state).toBe('off');
  });
});

describe('a phrase', () => {
  const { log } = withParts('drain plug', 'change wheel', 'wheel bearing', 'Heron');
  const machine = [...log.shop.machines.values()][0]!;
  it.each([
    ['polish the shaft', { key: 'shaft', verb: 'polish' }],
    ['bend the brake lines', { key: 'brake line', verb: 'bend' }],
    ['straighten banjo', { key: 'banjo', verb: 'straighten' }],
    ['spindle', { key: 'spindle' }],
    ['mount the change wheels', { key: 'change wheel' }],
    ['put the hood back on', { key: 'hood' }],
    ['hood off', { key: 'hood', off: true }],
    ['take off the hood', { key: 'hood', off: true }],
    ['pull the engine', { key: 'engine', off: true }],
    ['drain plug', { key: 'drain plug' }],
    ['oil pump', { key: 'oil pump' }],
    ['drain the sump', { key: 'sump', verb: 'drain' }],
    ['grease wheel bearings', { key: 'wheel bearing', verb: 'grease' }],
    ['pressure test the radiator', { key: 'radiator', verb: 'pressure test' }],
    ['lift the engine back in', { key: 'engine', verb: 'lift' }],
    ['paint', { key: '', verb: 'paint' }],
  ])('%s is read as %j', (phrase, meant) => {
    const { name: _, ...ref } = readPhrase(machine, phrase);
    expect(ref).toEqual(meant);
  });
});

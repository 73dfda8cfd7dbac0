import { describe, expect, it } from 'vitest';
import { readAsks } from '../../../nlp/meanings/asks/read.ts';
import { openSheet } from '../../../nlp/sheet.ts';

const asked = (text: string, learned: boolean) => readAsks(openSheet(text, { at: '2026-03-19T10:00:00-04:00' }), learned).map(a => a.ask);

describe('questions, rules and net together', () => {
  it.each([
    ['Rear bush: reamed it and pressed it in. An hour, incl. looking for the reamer.', 'where'], ['Left tyre holds air, the right one is weather cracked but it\'ll go on.', 'forecast'],
    ['Winter list: loosen the belts, clean the tank.', 'provisional'],
  ])('a word that often asks makes no question of what is told: %s', (text, kind) => {
    expect(asked(text, false).map(a => a.kind)).toEqual([kind]);
    expect(asked(text, true)).toEqual([]);
  });

  it('one that no rule knows is asked where the net is sure', () => {
    const text = 'cheapest anybody has come up with on gear oil';
    expect(asked(text, false)).toEqual([]);
    expect(asked(text, true)).toEqual([{ kind: 'cheapest', item: 'gear oil' }]);
  });

  it('a sum that no wording asks for is the one that its figures make whole', () => {
    const text = 'The gearbox is 210 kilos. If I hang it from two chains and each lies at fifty degrees, what carries each of them?';
    expect(asked(text, false)).toEqual([]);
    expect(asked(text, true)).toEqual([{ kind: 'sum', of: 'sling', given: { load: 210, loadUnit: 'kg', angle: 50, legs: 2 } }]);
  });

  it('what a sentence goes on to is asked about too', () => {
    expect(asked('how many hours on the gearbox and on the axle', true)).toEqual([{ kind: 'timeSpent', part: 'gearbox' }, { kind: 'timeSpent', part: 'axle' }]);
    expect(asked('how many hours on the gearbox, and put the axle on the stand', true)).toEqual([{ kind: 'timeSpent', part: 'gearbox' }]);
  });

  it('one that a rule knows stands where the note is nothing else, strange as its words are', () => {
    expect(asked('how deep am i in on the trailer', true)).toEqual([{ kind: 'spent', part: 'trailer' }]);
  });
});

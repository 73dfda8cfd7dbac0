import { expect, test } from 'vitest';
import { mendHeard } from '../../../nlp/hear/mend/mend.ts';

const NAMES = ['Heron', 'brake shoes', 'cider press', 'water hopper', 'crankshaft', 'tie rod', 'wear plate', 'leathers'];
const mend = (text: string, sense = {}) => mendHeard(text, NAMES, sense).text;

test.each([
  // fractions as recognisers write them
  ['a 7 slash 16 bolt', 'a 7/16 bolt'],
  ['the gap is 5-16ths', 'the gap is 5/16'],
  ['1-3-slash 8 rod', '1 3/8 rod'],
  ['bar of 3 and 5-8 flat', 'bar of 3 5/8 flat'],
  ['torque for 7-8-5 grade 8', 'torque for 7/8 fine grade 8'],
  // threads
  ['studs are 7/16 cores, dry', 'studs are 7/16 coarse, dry'],
  ['a half inch course tap', 'a half inch coarse tap'],
  ['an 10 by 1.5 bolt', 'M10 by 1.5 bolt'],
  // thous
  ['gapped to 25,000ths', 'gapped to 25 thousandths'],
  ['shims of 2,000, 3,500 and 5,000', 'shims of 2 thou, 3 and a half thou and 5 thou'],
  ['end play is 6 though.', 'end play is 6 thou.'],
  ['two mills dry', 'two mils dry'],
  // small words
  ['$40 for M.', "$40 for 'em."],
  // names of this shop, alone and in pieces
  ['the break shoes came', 'the brake shoes came'],
  ['on the side or press today', 'on the cider press today'],
  ['drained the waterhopper', 'drained the water hopper'],
  ['crank shaft is out', 'crankshaft is out'],
])('%s → %s', (heard, meant) => {
  expect(mend(heard)).toBe(meant);
});

test.each([
  'I wanted to break it even though it was shut.',
  '3 slash 7 is no size of a rule',
  'an 8 by 4 sheet of ply',
  'about 1,500 rpm with the play in it',
  'paid $2,500 for shims',
  'I bought 12 though I need only 9',
  'the mill and a half ton of grain',
  'at 5-16 Mill Lane',
  'M 8 bolts, for M 8 nuts',
  'the front wheels are better on the Heron',
  'wrote a letter to the dealer',
  'crankshaft end play is six thou',
  'one rod is tied up',
  'bear in mind the plates',
])('%s stays', (text) => {
  expect(mendHeard(text, NAMES)).toEqual({ text, changes: [] });
});

test('an everyday word gives way to a name of the shop only when it was unsure', () => {
  expect(mend('cut two letters for the pump')).toBe('cut two letters for the pump');
  expect(mend('cut two letters for the pump', { unsure: ['letters'] })).toBe('cut two leathers for the pump');
});

test('a rare word that sounds like one of the trade is that word', () => {
  const isCommon = (word: string) => !['arba', 'emory'].includes(word);
  expect(mend('polished the arba with emory', { isCommon })).toBe('polished the arbor with emery');
});

test('every change says what it was and why', () => {
  expect(mendHeard('break shoes', NAMES).changes).toEqual([{ from: 'break shoes', to: 'brake shoes', why: 'sounds like a name of this shop' }]);
});

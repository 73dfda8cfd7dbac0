import { expect, test } from 'vitest';
import type { HeardWord } from '../../../nlp/hear/doubt.ts';
import { leansOn } from '../../../nlp/hear/lean.ts';
import { readNote } from '../../../nlp/read.ts';

const NAMES = ['Heron', 'radiator', 'oil cooler', 'king pin'];
const lean = (text: string, unsure: string[] = [], overNoise: HeardWord[] = []) => leansOn(text, readNote(text, { at: '2026-03-04T10:00:00Z', parts: NAMES.slice(1), machines: ['Heron'] }), { unsure, overNoise, names: NAMES });

test.each([
  ['Took the radiator off.', []],
  ['Took the radiator off.', ['radiator']], // the shop's own name, however it was scored
  ['Took the radiator off.', ['the', 'off']], // little words change no fact
  ['Cleaned the head gasket.', ['gasket']], // two words of one known part vouch for one another
  ['How do I get the bracket off?', ['bracket']], // a question writes nothing down
])('%s with %j unsure is logged', (text, unsure) => {
  expect(lean(text, unsure)).toEqual([]);
});

test.each([
  ['Took the splunge off.', [], 'splunge'], // neither the trade nor the shop has it
  ['Cleaned the bracket.', ['bracket'], 'bracket'],
  ['Bought a belt for 18 dollars at the co-op.', ['18'], '18'],
  ['The winding measures 4.2 ohms.', ['4.2'], '4.2'],
  ['Soldered the radiator.', ['Soldered'], 'soldered'], // a deed is kept by its base verb
  ['Took the bracket off by the cutcher.', ['cutcher'], 'cutcher'],
  ['Prime the bonnet.', [], 'prime'], // an order to oneself, or its ending swallowed
])('%s with %j unsure is asked for %s', (text, unsure, word) => {
  expect(lean(text, unsure)).toContain(word);
});

const overNoise = (text: string, scores: Record<string, number>) => lean(text, [], Object.entries(scores).map(([word, score]) => ({ word, score })));

test.each([
  ['Cleaned the head gasket.', { gasket: -0.6 }, 'gasket'], // the shop doesn't know it: a faint word is enough, though it is the trade's
  ['Took the radiator off.', { radiator: -2 }, 'radiator'], // the shop's own
  ['Cleaned the oil cooler.', { cleaned: -2 }, 'cleaned'],
  ['The radiator is not cracked.', { not: -2 }, 'not'],
  ['Cleaned the oil cooler. See you at dinner.', { dinner: -2 }, 'dinner'], // it need not stand in an entry: a deed may have been misheard there
  ['Scratch that.', { Scratch: -2 }, 'scratch'], // what strikes an entry writes too
])('%s with %j over a machine is asked for %s', (text, scores, word) => {
  expect(overNoise(text, scores)).toContain(word);
});

test.each([
  ['Cleaned the head gasket.', { gasket: -0.4 }],
  ['Cleaned the left radiator.', { cleaned: -1, left: -1, radiator: -1 }], // a thing that the shop knows, by a longer name,
  ['Cleaned the cooler.', { cooler: -1 }], // or by a short one
  ['Took the radiator off.', { the: -3, off: -3 }], // little words change no fact
  ['Took the radiator off.', { radiate: -3, her: -3 }], // mended since
  ['How do I get the radiator off?', { radiator: -3 }],
])('%s with %j over a machine is logged or answered', (text, scores) => {
  expect(overNoise(text, scores)).toEqual([]);
});

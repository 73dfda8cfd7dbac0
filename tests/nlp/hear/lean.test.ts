import { expect, test } from 'vitest';
import { leansOn } from '../../../nlp/hear/lean.ts';
import { readNote } from '../../../nlp/read.ts';

const NAMES = ['Heron', 'radiator', 'oil cooler', 'king pin'];
const lean = (text: string, unsure: string[] = []) => leansOn(text, readNote(text, { at: '2026-03-04T10:00:00Z', parts: NAMES.slice(1), machines: ['Heron'] }), { unsure, names: NAMES });

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

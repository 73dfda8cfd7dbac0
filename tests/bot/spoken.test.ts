import { afterEach, beforeEach, expect, test } from 'vitest';
import type { HeardWord } from '../../nlp/hear/doubt.ts';
import { shopInMemory } from './shop-in-memory.ts';

let shop: ReturnType<typeof shopInMemory>;
beforeEach(() => { shop = shopInMemory(); });
afterEach(() => shop.close());

const AT = '2026-03-04T10:00:00+01:00';
const heard = (text: string, unsure: string[] = [], doubtful = false, overNoise: HeardWord[] = []) =>
  shop.say(text, AT, { spoken: { raw: text, doubtful, unsure, overNoise } });

test('a spoken note that leans on nothing unsure is logged, and its words are said back', () => {
  const reply = heard('Took the radiator off.');
  expect(reply.entries).toHaveLength(1);
  expect(reply.say).toContain('I heard: "Took the radiator off."');
});

test('one that leans on an unsure word is asked about, logged at yes, and not at no', () => {
  const asked = heard('Cleaned the bracket.', ['bracket']);
  expect(asked.entries).toEqual([]);
  expect(asked.say).toContain("I'm unsure of: bracket");
  expect(asked.say).not.toContain('I heard: ');
  expect(shop.say('yes', AT).entries.map(({ entry }) => entry)).toMatchObject([{ kind: 'work', part: 'bracket', action: 'clean' }]);
  expect(heard('Greased the clamp.', ['clamp']).question).not.toBeNull();
  expect(shop.say('no', AT).entries).toEqual([]);
});

test('words that end in a full stop are quoted with that one alone', () => {
  expect(heard('Cleaned the bracket.', ['bracket']).say).toContain('I heard "Cleaned the bracket." I\'m unsure');
  expect(heard('cleaned the bracket', ['bracket']).say).toContain('I heard "cleaned the bracket". I\'m unsure');
});

test('an unsure word that nothing leans on, and typed words, are not asked about', () => {
  expect(heard('Took the radiator off.', ['the']).entries).toHaveLength(1);
  expect(heard('What do I still have to buy?', ['buy']).question).toBeNull();
  expect(shop.say('Cleaned the bracket.', AT).entries).toHaveLength(1);
});

test('a name of the shop is taken, however it was scored', () => {
  shop.say('Took the splunge off.', AT);
  expect(heard('Cleaned the splunge.', ['splunge']).entries).toHaveLength(1);
});

test('over a machine the shop\'s own name is asked about too, and a question is answered all the same', () => {
  shop.say('Took the splunge off.', AT);
  const asked = heard('Cleaned the splunge.', ['splunge'], false, [{ word: 'splunge', score: -2 }]);
  expect(asked.entries).toEqual([]);
  expect(asked.question?.text).toBe('I heard "Cleaned the splunge." I\'m unsure of: splunge. Is that right?');
  expect(shop.say('yes', AT).entries.map(({ entry }) => entry)).toMatchObject([{ kind: 'work', part: 'splunge', action: 'clean' }]);
  expect(heard('Where is the splunge?', ['splunge'], false, [{ word: 'splunge', score: -2 }]).answers).toHaveLength(1);
});

test.each([
  ['Soldered the clamp to the bracket.', ['Soldered', 'clamp'], ['Soldered', 'clamp']], // each once, as it stands there
  ['Bought the belt for $86 at the co-op.', ['$86'], ['$86']],
  ['Cleaned the bracket at the back.', ['bracket', 'at', 'the'], ['bracket']], // no little words
  ['Cleaned the bracket and the baler.', ['bailer', 'bracket'], ['bracket']], // nor what mending took out
])('of %s with %j unsure, %j are shown', (text, unsure, shown) => {
  expect(heard(text, unsure).say).toContain(`I'm unsure of: ${shown.join(', ')}. Is that right?`);
});

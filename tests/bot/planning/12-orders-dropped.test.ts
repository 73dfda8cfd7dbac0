import { afterEach, describe, expect, it } from 'vitest';
import { readDropped } from '../../../bot/planning/rule-dropped.ts';
import type { AheadAnswer } from '../../../domain/model/answer.ts';
import { shopInMemory } from '../shop-in-memory.ts';

const AT = '2026-06-02T10:00:00+02:00';
let shop = shopInMemory();
afterEach(() => { shop.close(); shop = shopInMemory(); });
const say = (...words: string[]): string => words.map(w => shop.say(w, AT).say).at(-1)!;

describe('an order that does not hold after all', () => {
  it.each([
    ["the pump doesn't have to go on before the radiator", { first: 'pump', then: 'radiator' }], ['no need to wait for the water pump before the radiator', { first: 'water pump', then: 'radiator' }],
    ["I don't need the fan belt on before the radiator goes on after all", { first: 'fan belt', then: 'radiator' }], ['the hood needn\'t be on before the lamps', { first: 'hood', then: 'lamps' }],
    ['forget the rule about the bonnet', { about: 'bonnet' }], ['drop the order that says pump before radiator', { first: 'pump', then: 'radiator' }],
  ])('%s', (words, dropped) => { expect(readDropped(words)).toEqual(dropped); });
  it.each(['pump goes on before the radiator', 'cancel the order for the belt', "does the pump have to go on before the radiator?", "don't forget the gasket before the head goes on", "the belt doesn't fit", "the belt doesn't go on before the radiator", "I don't fit the hood before the lamps", "I don't have the seals before Friday"])
  ('is not said by: %s', words => { expect(readDropped(words)).toBeUndefined(); });

  it("strikes the person's own, which then holds up nothing", () => {
    say('switch to Heron', 'radiator is off', 'water pump goes on before the radiator');
    expect(say("what's holding up the radiator")).toContain('water pump');
    expect(say("the water pump doesn't have to go on before the radiator")).toBe('Struck: water pump before radiator.');
    expect(say("what's holding up the radiator")).not.toContain('water pump comes first');
  });
  it('turns down one of the trade, for good', () => {
    say('switch to Heron', 'radiator is off', 'need a fan belt');
    expect(say("what's holding up the radiator")).toContain('fan belt');
    expect(say("the fan belt doesn't have to go on before the radiator")).toContain("fan belt before radiator doesn't count here");
    expect(say("what's holding up the radiator")).not.toContain('fan belt');
  });
  it('says so where none is held, and logs nothing', () => {
    say('switch to Heron', 'radiator is off');
    const reply = shop.say("the horn doesn't have to go on before the radiator", AT);
    expect(reply.say).toBe('I hold no order that puts the horn before the radiator.');
    expect(reply.entries).toEqual([]);
  });
});

describe('a part that is away', () => {
  it('comes back before the whole that has its name goes on, as the question what holds it up has it', () => {
    say('switch to Heron', 'two hours every evening', 'radiator is off', 'radiator core is out at the radiator shop, back on the 20th');
    const { days } = shop.say("what's the plan", AT).answers[0] as AheadAnswer;
    const works = days.flatMap(d => d.works);
    expect(works).toContain('fit the radiator core');
    expect(works.indexOf('fit the radiator core')).toBeLessThan(works.indexOf('fit the radiator'));
    expect(say("what's holding up the radiator")).toContain('Sat 20 Jun');
  });
});

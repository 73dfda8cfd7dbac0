import { afterEach, describe, expect, it } from 'vitest';
import type { Answer, AnswerOf, NextAnswer } from '../../../domain/model/answer.ts';
import { readHelpHere } from '../../../bot/planning/help-here.ts';
import { readHoist } from '../../../bot/planning/hoist-said.ts';
import { rereadAll } from '../../../bot/reread.ts';
import { shopInMemory } from '../shop-in-memory.ts';

/** A Tuesday. */
const AT = '2026-06-02T10:00:00+02:00';
let shop = shopInMemory();
afterEach(() => { shop.close(); shop = shopInMemory(); });
const asked = <K extends Answer['kind']>(_: K, words: string, at = AT) => shop.say(words, at).answers.at(-1) as AnswerOf<K>;
const next = (at = AT): string[] => (asked('next', "what's next", at) as NextAnswer).jobs.map(j => `${j.do} ${j.part}: ${j.why.join(', ')}`);

describe('somebody who is there now', () => {
  it.each([
    ["my neighbour's here now", {}], ["Dave's here to help for an hour", { to: '11:00' }], ["neighbour's here till four", { to: '16:00' }], ["I've got my neighbour here", {}],
    ['got a hand till half one', { to: '13:30' }], ["somebody's here to help for half an hour", { to: '10:30' }], ["my neighbour's here till nine tonight", { to: '21:00' }], ["my mate's here until half four this afternoon", { to: '16:30' }], ['my brother just turned up', {}], ['two of us today', {}],
    ['my son came over to help with the engine', { for: 'engine' }], ["the boy's here for a couple of hours", { to: '12:00' }], ["my wife's helping me today", {}],
    ["I'm on my own today", { none: true }], ["neighbour's gone home", { none: true }], ['no help today', { none: true }],
  ])('%s', (words, more) => { expect(readHelpHere(words, AT)).toEqual({ kind: 'hands', when: '2026-06-02', ...more }); });

  it.each(["Dave's here", "the postman's here", 'the coupling is here', 'the seal came', "my neighbour's tractor is here", 'is my neighbour here', "if my neighbour's here", "I've got the new belt here",
    'the engine is over in the barn', 'the radiator has gone', "the water pump's left", 'my brother is coming Saturday', "dealer's here", 'he came over', "I've got two shims here", "he's gone"])('is not said by: %s', words => {
    expect(readHelpHere(words, AT)).toBeUndefined();
  });

  it('reaches what is next, ends when it was said to, and is over when they are gone', () => {
    for (const w of ['switch to Heron', 'need to bleed the brakes', 'need to clean the seat']) shop.say(w, AT);
    expect(next().join()).not.toContain('bleed');
    const reply = shop.say("my neighbour's here till noon, what's next", AT);
    expect(reply.entries.map(e => e.entry)).toMatchObject([{ kind: 'hands', when: '2026-06-02', to: '12:00' }]);
    expect((reply.answers[0] as NextAnswer).jobs[0]).toMatchObject({ do: 'bleed', part: 'brakes', why: ['help is here until 12:00'] });
    expect(next('2026-06-02T12:30:00+02:00').join()).not.toContain('bleed');
    shop.say("he's gone", AT);
    expect(next().join()).not.toContain('bleed');
  });

  it('can be struck like anything that was said, and is not lost by a new reading', () => {
    shop.say('switch to Heron', AT);
    shop.say("my neighbour's here now", AT);
    expect(rereadAll(shop.deps, { keep: false, onDifference: () => {} }).changed).toBe(0);
    shop.say('scratch that', AT);
    expect(shop.deps.log.shop.hands).toEqual([]);
  });
});

describe('a hoist', () => {
  it.each([["I've got a chain hoist", true], ['we have an engine crane', true], ["there's a gantry in the shop", true], ['I borrowed an engine crane from my neighbour', true], ['no hoist here', false],
    ["I don't have a hoist", false], ['the hoist has gone back', false], ['the hoist is back', true], ['I need a hoist', undefined], ['I bought a hoist, 120', undefined], ['do I have a hoist?', undefined], ['hoist the engine', undefined]])('%s: %s', (words, has) => {
    expect(readHoist(words)).toBe(has);
  });

  const begin = (): void => { for (const w of ['switch to Heron', 'two hours every evening', 'engine is off']) shop.say(w, AT); };

  it('is counted on until the person says otherwise, and that is said', () => {
    begin();
    expect(next()).toEqual(['fit engine: it is off, and nothing holds it up']);
    expect(asked('finish', 'when will Heron be done').why).toContain('For fit the engine a hoist is counted on');
  });
  it('does for the second pair of hands; with none, heavy work waits for help, and says what to do about it', () => {
    begin();
    shop.say('no hoist here', AT);
    expect(next()).toEqual([]);
    expect(asked('blocked', "what's holding up the engine").causes).toMatchObject([{ cause: 'help', what: 'fit engine', act: 'get help or a hoist for engine' }]);
    expect(asked('finish', 'when will Heron be done').why).toContain('For fit the engine help is counted on');
    shop.say("my neighbour's here now", AT);
    expect(next()).toEqual(['fit engine: help is here']);
    shop.say("he's gone", AT);
    shop.say("I've got a chain hoist now", AT);
    expect(next()).toEqual(['fit engine: it is off, and nothing holds it up']);
    expect(asked('blocked', "what's holding up the engine").clear).toBe(true);
  });
});

import { afterEach, describe, expect, it } from 'vitest';
import type { WhatIfAnswer } from '../../../domain/model/answer.ts';
import { shopInMemory } from '../shop-in-memory.ts';

const AT = '2026-06-01T18:00:00+02:00';
let shop = shopInMemory();
afterEach(() => { shop.close(); shop = shopInMemory(); });

/** A pump that waits for a coupling on order, with nothing else to do. */
const begin = (): void => {
  for (const w of ['switch to Heron', 'two hours every evening', 'hydraulic pump is off', 'ordered a hydraulic pump coupling from the bearing house, 40, due the 20th of June', "the hydraulic pump coupling goes in before the hydraulic pump goes on"]) shop.say(w, AT);
};
const asked = (words: string): WhatIfAnswer => {
  const reply = shop.say(words, AT);
  expect(reply.entries).toEqual([]);
  expect(reply.answers, `${words}: ${reply.say}`).toHaveLength(1);
  return reply.answers[0] as WhatIfAnswer;
};

describe('what if', () => {
  it('a thing comes sooner: the end is sooner, and it says what goes sooner then', () => {
    begin();
    const a = asked('what if the coupling comes Friday');
    expect(a.kind).toBe('whatIf');
    expect(a.before.p50! >= '2026-06-20').toBe(true);
    expect(a.after.p50! < '2026-06-12').toBe(true);
    expect(a.sooner).toContain('fit the hydraulic pump');
  });
  it('keeps nothing of it', () => {
    begin();
    const before = structuredClone(shop.deps.log.shop);
    const plain = shop.say('when will the machine be done?', AT).answers;
    asked('suppose the coupling is three weeks late');
    asked('what if I had four hours every evening');
    expect(shop.deps.log.shop).toEqual(before);
    expect(shop.say('when will the machine be done?', AT).answers).toEqual(plain);
  });
  it('a thing comes later: the end is later', () => {
    begin();
    const a = asked('what if the coupling is three weeks late?');
    expect(a.after.p50! > a.before.p50!).toBe(true);
    expect(a.later).toContain('fit the hydraulic pump');
  });
  it('a work is skipped', () => {
    begin();
    shop.say('paint the hydraulic pump', AT);
    expect(asked('what if I skip the paint')).toMatchObject({ supposed: 'you skip the paint' });
    expect(asked('what if I skip painting the hydraulic pump?').after.p50).not.toBeNull();
  });
  it('help comes, it rains, or there is more time', () => {
    begin();
    shop.say('my cousin is coming on the 27th of June to help lift the engine', AT);
    expect(asked('suppose my neighbour comes Saturday').kind).toBe('whatIf');
    expect(asked('what if it rains all week').kind).toBe('whatIf');
    expect(asked('what if I worked Saturdays nine to five too').kind).toBe('whatIf');
  });
  it.each(["what if my cousin doesn't come", 'what if I get another hour every evening', "what if I don't bother painting the hydraulic pump", 'suppose I find the head gasket is junk and needs replacing'])('%s', words => {
    begin();
    shop.say('paint the hydraulic pump', AT);
    shop.say('my cousin is coming on the 27th of June to help bleed the brakes', AT);
    expect(asked(words).after.p50).not.toBeNull();
  });
  it.each([
    ["what if the coupling's a week late", 'later'], ['what happens if the coupling is late', 'later'], ['what if I buy the coupling today', 'sooner'], ['would it help if the coupling came tomorrow', 'sooner'],
    ['if the coupling came tomorrow would that help', 'sooner'], ['what if I order the coupling on the 30th of June', 'later'], ['what if I only work Saturdays', 'later'],
    ['what if I take three weeks off from the 10th of June', 'later'],
  ])('%s: %s', (words, way) => {
    begin();
    const { before, after } = asked(words);
    expect(way === 'later' ? after.p50! > before.p50! : after.p50! < before.p50!, `${before.p50} → ${after.p50}`).toBe(true);
  });
  it('several at once: each counts, and only what was understood is said', () => {
    begin();
    shop.say('need to paint the hydraulic pump', AT);
    const both = asked('what if the coupling comes Friday and I skip the paint');
    expect(both.supposed).toBe('the coupling comes Friday and you skip the paint');
    expect(both.sooner).toContain('fit the hydraulic pump');
    expect(both.after.p50! <= asked('what if the coupling comes Friday').after.p50!).toBe(true);
    expect(asked('what if the coupling comes Friday and the moon is blue').supposed).toBe('the coupling comes Friday');
  });
  it('help that was asked for a job and does not come leaves the job waiting for two', () => {
    for (const w of ['switch to Heron', 'two hours every evening', 'front axle is off', 'my brother comes on the 6th of June to help with the front axle']) shop.say(w, AT);
    expect(asked("what if my brother can't come on the 6th of June").later).toContain('fit the front axle');
    expect(asked('what if nobody comes to help').why).toBe('No day for: fit the front axle.');
  });
  it('a week early, or longer at the place it is out at', () => {
    begin();
    const early = asked('what if the coupling arrives a week early');
    expect(early.after.p50! < early.before.p50!).toBe(true);
    for (const w of ['radiator is off', 'radiator is out at the radiator shop, back on the 10th of June']) shop.say(w, AT);
    expect(asked('what if it takes the radiator shop another three weeks').later).toContain('fit the radiator');
  });
  it('a thing never comes: there is no day, and it says for what', () => {
    begin();
    expect(asked('what if the coupling never comes')).toMatchObject({ after: { p50: null }, why: expect.stringContaining('hydraulic pump') });
  });
  it.each(['what if I do it all alone', 'what if nobody helps me', 'what if I had no help at all', 'what if I do it without help', 'suppose nobody comes to help'])('%s: what takes two has no day then', words => {
    begin();
    shop.say('need to bleed the brakes', AT);
    expect(asked(words)).toMatchObject({ after: { p50: null }, why: 'No day for: bleed the brakes.' });
  });
  it('no help on one day, or no hoist, puts off what takes two to the next day that somebody is counted on', () => {
    for (const w of ['switch to Heron', 'two hours every evening', 'Saturdays nine to five too', 'engine is off', 'need to bleed the brakes', 'my brother is coming on the 6th of June to help bleed the brakes']) shop.say(w, AT);
    const a = asked("what if my brother can't come on the 6th of June");
    expect([a.before.p50, a.after.p50! > a.before.p50!]).toEqual(['2026-06-06', true]);
    expect(asked('what if I borrowed a hoist').after).toEqual(expect.objectContaining({ p50: a.before.p50 }));
    shop.say('no hoist here', AT);
    expect(asked('what if I hired a hoist').sooner).toContain('fit the engine');
  });
  it.each(['what if I leave the hydraulic pump unpainted', 'what if I leave painting the hydraulic pump till winter', 'what if I skip the pump'])('%s: that work is left out', words => {
    begin();
    shop.say('paint the hydraulic pump', AT);
    expect(asked(words).after.p50).not.toBeNull();
  });
  it('of what is not to come says so', () => {
    begin();
    expect(shop.say('what if the flux capacitor comes Friday', AT).say).toContain('I know of no flux capacitor');
  });
  it('of a sum stays a sum', () => {
    begin();
    shop.say('what drop on 25 foot of 12 gauge at 30 amps, 12 volts?', AT);
    const reply = shop.say('and what if I go 10 gauge?', AT);
    expect(reply.answers.map(a => a.kind)).toEqual(['sum']);
  });
  it.each(['if it rains tomorrow I will stay inside', 'say hello to the dog', 'the radio says rain all week', 'I suppose the pump is fine'])('is not: %s', words => {
    begin();
    expect(shop.say(words, AT).answers.filter(a => a.kind === 'whatIf')).toEqual([]);
  });
});

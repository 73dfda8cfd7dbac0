import { afterEach, describe, expect, it } from 'vitest';
import { shopInMemory } from '../shop-in-memory.ts';
import { chanceAsked, dayNamed, wholeFinish } from '../../../bot/planning/asked-day.ts';

/** 2026-06-01 is a Monday. */
const AT = '2026-06-01T18:00:00+02:00';
let shop = shopInMemory();
afterEach(() => { shop.close(); shop = shopInMemory(); });
const told = (...words: string[]) => { let last = shop.say('switch to Heron', AT); for (const w of words) last = shop.say(w, AT); return last; };

describe('when will it be done', () => {
  it('is answered of the machine in hand, and with the chance of a day that is named', () => {
    const reply = told('hood is off', 'paint the hood', 'will it be done by the 20th of June?');
    expect(reply.answers).toMatchObject([{ kind: 'finish', by: '2026-06-20' }]);
    expect(reply.answers[0]).toMatchObject({ chance: expect.any(Number), p50: expect.stringMatching(/^2026-06/) });
    expect(reply.say).toMatch(/chance|certain/);
    expect(reply.buttons).toContainEqual({ label: 'Draw it', send: 'draw it' });
  });
  it('says what it assumed of the hours, until they are said', () => {
    expect(told('paint the hood', 'when will it be done?').say).toContain('as you never said your hours');
    expect(told('two hours most evenings, Saturdays till noon').say).toContain('Mon–Thu 18:00–20:00, Sat 08:00–12:00');
    expect(told('when will it be done?').say).not.toContain('never said');
  });
  it('is handed out where the program can work it out aside, with the machine and the day', () => {
    shop.deps.handsOut = ask => ask.kind === 'finish';
    const reply = told('paint the hood', 'will it be done by 20 June?');
    expect(reply.answers).toEqual([]);
    expect(reply.later).toMatchObject([{ kind: 'finish', ask: { by: '2026-06-20' }, machine: expect.stringMatching(/heron/i) }]);
    expect(reply.say).toBe('Working it out…');
  });
});

describe('the day that is named', () => {
  it.each([
    ['done by Friday', '2026-06-05'], ['done before Friday', '2026-06-04'], ['will it be done by July', '2026-07-01'], ['done by the end of August', '2026-08-31'],
    ['done by 20 June', '2026-06-20'],
  ])('%s', (said, day) => expect(dayNamed(said, { at: AT })).toBe(day));
  it.each(['when will it be done', 'done by and by', 'done by someone'])('none: %s', said => expect(dayNamed(said, { at: AT })).toBeUndefined());
});

describe('the chance of a day', () => {
  it.each([
    ['chance of the bonnet by the 30th of June', { kind: 'finish', part: 'bonnet', by: '2026-06-30' }], ['what are the odds of having the radiator on before 20 June', { kind: 'finish', part: 'radiator', by: '2026-06-19' }],
    ['odds of finishing by 20 June', { kind: 'finish', by: '2026-06-20' }], ['will I make it by 20 June?', { kind: 'finish', by: '2026-06-20' }],
  ])('%s', (said, ask) => expect(chanceAsked(said, { at: AT })).toEqual(ask));
  it.each(['what are the chances', 'no chance of the belt by Friday', "Radiator's off, what are the chances of the bonnet by Friday?", 'the chance find of the day'])('not alone: %s', said => expect(chanceAsked(said, { at: AT })).toBeUndefined());
});

describe('the whole of it', () => {
  it.each(['when will it be done', 'When will she be running?', "what are the odds it's done by 1 July", 'how long till this is finished', 'when will I be done', 'will it all be finished by August', 'how far off is she?'])
  ('%s', said => expect(wholeFinish(said)).toEqual({ kind: 'finish' }));
  it.each(['when did it come', 'it is done', 'when will the paint be dry', 'when will it arrive so I can get it done', 'she ran when I was done', 'how long is it'])
  ('not: %s', said => expect(wholeFinish(said)).toBeUndefined());
});

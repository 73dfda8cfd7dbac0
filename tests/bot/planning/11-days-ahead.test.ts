import { afterEach, describe, expect, it } from 'vitest';
import { readAhead } from '../../../bot/planning/ahead-asked.ts';
import type { AheadAnswer } from '../../../domain/model/answer.ts';
import { shopInMemory } from '../shop-in-memory.ts';

const AT = '2026-06-02T10:00:00+02:00'; // a Tuesday
let shop = shopInMemory();
afterEach(() => { shop.close(); shop = shopInMemory(); });
const heron = (...words: string[]): void => { for (const w of ['switch to Heron', 'two hours every evening', ...words]) shop.say(w, AT); };
const answer = (words: string): AheadAnswer => shop.say(words, AT).answers[0] as AheadAnswer;

describe('the days ahead', () => {
  it.each([
    ["what's the plan?", {}], ['plan for the week', { from: '2026-06-02', to: '2026-06-07' }], ["what's the plan for Saturday", { from: '2026-06-06', to: '2026-06-06' }],
    ['show me the schedule for next week', { from: '2026-06-08', to: '2026-06-14' }], ['what does the weekend look like', { from: '2026-06-06', to: '2026-06-07' }],
    ['what am I doing on Saturday?', { from: '2026-06-06', to: '2026-06-06' }], ['plan for the next two weeks', { from: '2026-06-02', to: '2026-06-15' }],
    ["what's planned for tomorrow", { from: '2026-06-03', to: '2026-06-03' }], ['in what order do I do things', {}], ['list the jobs in order', {}],
  ])('%s', (words, span) => { expect(readAhead(words, AT)).toEqual(span); });
  it.each(["what's on today", "what's the plan for today", 'plan the top face of the casting', 'what does the radiator look like', "what's the plan for the radiator", 'what order did the shims go in', 'order a fan belt', 'schedule 40 pipe, two feet'])
  ('is not asked by: %s', words => { expect(readAhead(words, AT)).toBeUndefined(); });

  it('gives each day its work, in the order that the works need', () => {
    heron('grease the steering box', 'fan belt goes on before the radiator', 'radiator goes on before the bonnet');
    const { days } = answer("what's the plan");
    const when = (work: string): string => days.find(d => d.works.includes(work))!.day;
    expect(days.map(d => d.day)).toEqual([...days.map(d => d.day)].sort());
    expect(when('fit the fan belt') <= when('fit the radiator') && when('fit the radiator') <= when('fit the bonnet')).toBe(true);
    expect(days.flatMap(d => d.works)).toContain('grease the steering box');
    for (const d of days) for (const other of answer(`what's the plan for ${d.day}`).days) expect(other.day).toBe(d.day);
  });
  it('says so where a day has none, and where nothing is left', () => {
    heron('grease the steering box');
    expect(shop.say('plan for next week', AT).say).toBe('Nothing is planned for Mon 8 Jun to Sun 14 Jun.');
    shop.say('greased the steering box', AT);
    expect(shop.say("what's the plan", AT).say).toContain('nothing left to do');
  });
  it('pages a long list', () => {
    heron(...['fan', 'radiator', 'carburetor', 'generator', 'magneto', 'clutch', 'gearbox', 'water pump', 'manifold', 'governor'].map(p => `need to rebuild the ${p}`));
    expect(shop.say("what's the plan", AT).say).toContain('say "more"');
    expect(shop.say('more', AT).say).toMatch(/^• /);
  });
});

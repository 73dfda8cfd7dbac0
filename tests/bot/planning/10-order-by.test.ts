import { afterEach, describe, expect, it } from 'vitest';
import type { OrderByAnswer } from '../../../domain/model/answer.ts';
import { readOrderBy } from '../../../bot/planning/order-by-asked.ts';
import { shopInMemory } from '../shop-in-memory.ts';

const AT = '2026-06-02T10:00:00+02:00';
let shop = shopInMemory();
afterEach(() => { shop.close(); shop = shopInMemory(); });

describe('when to order', () => {
  it.each([
    ['when do I have to order the belt', 'belt'], ['when do I need to order the fan belt by?', 'fan belt'], ['by when should I order the seal', 'seal'], ["what's the latest I can order the points", 'points'],
    ['how long can I leave ordering the seal', 'seal'], ['how long can I wait to order the gasket', 'gasket'], ['what do I need to order by when', null], ['when do I have to order things', null],
    ['which parts must I order by when', null], ['order-by dates', null], ['what do I need to order and by when', null], ['by when must I order what', null], ['what day do I have to buy the oil by', 'oil'],
  ])('%s: %s', (words, item) => { expect(readOrderBy(words)).toEqual({ item }); });
  it.each(['when did I order the belt', 'when was the seal ordered', 'order the belt', 'what do I still need to buy', 'when will the belt come', 'when I order the belt I will get two'])('is not asked by: %s', words => { expect(readOrderBy(words)).toBeUndefined(); });

  it('leaves the delivery time before the end, soonest first, and says what to do now', () => {
    for (const w of ['switch to Heron', 'two hours every evening', 'fan is off', 'need to paint the frame', 'need to paint the hood', 'need to rebuild the carburetor', 'need to rebuild the water pump', 'need a fan belt', 'need a gasket for the carburetor']) shop.say(w, AT);
    const all = shop.say('what do I need to order by when', AT);
    const { items } = all.answers[0] as OrderByAnswer;
    expect(items.map(i => i.item).sort()).toEqual(['fan belt', 'gasket']);
    expect([...items].sort((a, b) => (a.by < b.by ? -1 : 1))).toEqual(items);
    const finish = shop.say('when will Heron be done', AT).answers[0] as { p80: string };
    for (const { by } of items) expect(by >= '2026-06-02' && by < finish.p80).toBe(true);
    expect(all.say).toMatch(/^To keep the end where it is, order by:\n• /);
    expect(shop.say('when do I have to order the belt', AT).say).toMatch(/^Order the fan belt (by|now)/);
    expect(shop.say('when do I have to order the radiator', AT).say).toContain('I know of no radiator to order.');
  });
  it('says when nothing is left to order', () => {
    for (const w of ['switch to Heron', 'need to paint the frame']) shop.say(w, AT);
    expect(shop.say('what must I order by when', AT).say).toBe('Nothing is left to order.');
  });
});

import { describe, expect, test } from 'vitest';
import { drawMoneyAndHours } from '../../../bot/draw/money-and-hours.ts';
import { png } from '../../../bot/draw/png.ts';
import { hoursOverTime, moneyOverTime } from '../../../domain/answers/over-time.ts';
import { spent } from '../../../domain/answers/spent.ts';
import { timeSpent } from '../../../domain/answers/time-spent.ts';
import { BenchShop } from '../../domain/log/tools/shop.ts';

const shop = new BenchShop();
shop.say([{ kind: 'bought', item: 'gasket set', price: 84 }, { kind: 'hours', hours: 3, part: 'radiator' }], { at: '2026-02-03T18:00:00+01:00' });
shop.say([{ kind: 'bought', item: 'hoses & <clips>', price: 36.5 }, { kind: 'hours', hours: 2 }], { at: '2026-03-03T18:00:00+01:00' });
shop.say([{ kind: 'hours', hours: 9, total: true }], { at: '2026-04-03T18:00:00+02:00' });
shop.say([{ kind: 'bought', item: 'enamel', price: 94 }, { kind: 'hours', hours: 1.5, part: 'hood' }], { at: '2026-05-03T18:00:00+02:00' });
const more = { past: shop.log.past };
const money = moneyOverTime(spent(shop.log.shop, { kind: 'spent' }, more));
const hours = hoursOverTime(shop.log.shop, {}, more);
const drawn = (given: Partial<Parameters<typeof drawMoneyAndHours>[0]> = {}) => drawMoneyAndHours({ money, hours, at: '2026-06-01T18:00:00+02:00', zone: 'Europe/Paris', ...given });

describe('sums over time', () => {
  test('end at what the answers say', () => {
    expect(money.map(s => s.sum)).toEqual([84, 120.5, 214.5]);
    // Three and two hours, then nine in all, then one and a half more.
    expect(hours.map(s => s.sum)).toEqual([3, 5, 9, 10.5]);
    expect(hours.at(-1)!.sum).toBe(timeSpent(shop.log.shop, { kind: 'timeSpent' }, more).hours);
  });
  test('of a part are its own', () => expect(hoursOverTime(shop.log.shop, { part: 'hood' }, more).map(s => s.sum)).toEqual([1.5]));
});

describe('the drawing', () => {
  test('says the sums in words, names the biggest steps and escapes what was said', () => {
    const svg = drawn()!;
    for (const words of ['Money and hours so far', 'Money: 214.50', 'Hours: 10.5 h', 'enamel 94', 'gasket set 84', 'hoses &#38; &#60;clips&#62; 36.50']) expect(svg).toContain(words);
  });
  test('steps stand where their day is: half way of the axis is half way of the sheet', () => {
    const at = (day: string) => { const svg = drawn({ money: [{ at: '2026-02-01T12:00:00Z', sum: 1, by: 1 }, { at: day, sum: 2, by: 1 }, { at: '2026-02-11T12:00:00Z', sum: 3, by: 1 }], hours: [], at: '2026-02-11T12:00:00Z' })!; return /<polyline points="([^"]+)"/.exec(svg)![1]!.split(' ').map(p => Number(p.split(',')[0])); };
    const xs = at('2026-02-06T12:00:00Z');
    expect(xs[3]! - xs[1]!).toBeCloseTo((xs[5]! - xs[1]!) / 2, 0);
  });
  test('of money alone has one panel, and of nothing there is none', () => {
    expect(drawn({ hours: [] })).toContain('Money so far');
    expect(drawn({ hours: [] })).not.toContain('Hours');
    expect(drawn({ money: [], hours: [] })).toBeUndefined();
  });
  test('becomes a PNG, whatever the span: a day, a year, ten years', () => {
    for (const at of ['2026-05-04T09:00:00+02:00', '2027-05-03T09:00:00+02:00', '2036-05-03T09:00:00+02:00']) expect([...png(drawn({ at })!).subarray(1, 4)].map(c => String.fromCharCode(c)).join('')).toBe('PNG');
  });
});

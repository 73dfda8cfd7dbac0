import psychrolib from 'psychrolib';
import { afterEach, describe, expect, it } from 'vitest';
import { readCoatWeather } from '../../../bot/planning/coat-measured.ts';
import type { ForecastAnswer } from '../../../domain/model/answer.ts';
import { shopInMemory } from '../shop-in-memory.ts';

const AT = '2026-06-02T10:00:00+02:00';
let shop = shopInMemory();
afterEach(() => { shop.close(); shop = shopInMemory(); });

describe('a surface measured before a coat', () => {
  it.each([
    ['surface is 8 degrees C, air is 10 C and humidity 85', { surface: 8, air: 10, humidity: 85, unit: '°C' }],
    ['metal is at 12 degrees, air 15, humidity 60 percent, can I spray', { surface: 12, air: 15, humidity: 60 }],
    ['bonnet surface 54 F, air 60 F, 50% humidity', { part: 'bonnet', surface: 54, air: 60, humidity: 50, unit: '°F' }],
    ['the surface reads 9 C, dew point 7 C, ok to spray?', { surface: 9, dew: 7, unit: '°C' }],
    ['steel temperature 14.5, in here it\'s 18 and inside 17, 70 % rh', { surface: 14.5, air: 17, humidity: 70 }],
  ])('%s', (words, means) => { expect(readCoatWeather(words)).toEqual(means); });
  it.each(["it's 11 Celsius in here and 80 percent humidity, what's the dew point?", 'the surface plate is 12 by 18', 'surface is 8 degrees', 'air 15 and humidity 60', 'steel 3 mm, air gap 15 thou, humidity 60', 'surface 8 C, air 10 C, humidity 850'])
  ('is not said by: %s', words => { expect(readCoatWeather(words)).toBeUndefined(); });

  // 10 °C at least for the usual coat: common practice, no source. Dew point: psychrolib (ASHRAE equations). ISO 8502-4: steel at least 3 °C over it.
  it.each([[8, 10, 85], [12, 15, 60], [20, 21, 95], [25, 20, 70], [6.9, 10, 60]])('at %d °C in air of %d °C and %d %%', (surface, air, humidity) => {
    psychrolib.SetUnitSystem(psychrolib.SI);
    const margin = surface - psychrolib.GetTDewPointFromRelHum(air, humidity / 100);
    const reply = shop.say(`surface ${surface} C, air ${air} C, humidity ${humidity} percent`, AT);
    const { measured } = reply.answers[0] as ForecastAnswer;
    expect(Math.abs(measured!.margin! - margin)).toBeLessThan(0.11);
    expect(measured!.fit).toBe(margin >= 3 && surface >= 10);
    expect(reply.entries.map(e => e.entry)).toMatchObject([{ part: 'surface', value: surface }, { part: 'air', what: 'temperature', value: air }, { part: 'air', what: 'humidity', value: humidity, unit: '%' }]);
    expect(reply.say).toContain('breathing gear');
  });
  it('leaves the rest of the note to be read', () => {
    for (const words of ['Sanded the bonnet. Surface 12 C, air 15 C, humidity 60 percent. Can I spray?', 'sanded the bonnet, surface is 12 C, air 15 C and humidity 60 percent']) {
      const reply = shop.say(words, AT);
      expect(reply.entries.map(e => e.entry.kind)).toEqual(['work', 'reading', 'reading', 'reading']);
      expect(reply.answers).toHaveLength(1);
    }
  });
  it('too cold comes before what the sky allows', () => {
    shop.say('dry till Sunday', AT);
    expect(shop.say('surface 8 C, air 10 C, humidity 85 percent', AT).say).toMatch(/not enough[^]*Your words let/);
  });
});

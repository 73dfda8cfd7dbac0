import { afterEach, describe, expect, it } from 'vitest';
import { planSettings } from '../../../bot/planning/settings.ts';
import { shopInMemory } from '../shop-in-memory.ts';

const AT = '2026-06-01T18:00:00+02:00';
let shop = shopInMemory();
afterEach(() => { shop.close(); shop = shopInMemory(); });

describe('the hours that are planned with', () => {
  it('are those said, the last word for each day', () => {
    shop.say('two hours most evenings, Saturdays till noon', AT);
    shop.say('Sundays too, nine to noon', AT);
    expect(planSettings(shop.deps, AT)).toMatchObject({ hoursFrom: 'said' });
    expect(planSettings(shop.deps, AT).hours!.weekly.map(w => `${w.weekday} ${w.from}`)).toEqual(['1 18:00', '2 18:00', '3 18:00', '4 18:00', '6 08:00', '7 09:00']);
  });
  it('log no hours and leave the words kept', () => {
    const reply = shop.say('two hours most evenings', AT);
    expect(reply.entries).toEqual([]);
    expect(shop.say('two hours today on the radiator', AT).entries).toHaveLength(1);
  });
  it('are learned from the notes where they were never said', () => {
    for (let d = 1; d <= 28; d++) if (d % 7 === 4 || d % 7 === 6) {
      const day = `2026-05-${String(d).padStart(2, '0')}`;
      shop.say('checked the oil', `${day}T19:00:00+02:00`);
      shop.say('greased the hub', `${day}T21:00:00+02:00`);
    }
    const { hours, hoursFrom } = planSettings(shop.deps, AT);
    expect(hoursFrom).toBe('learned');
    expect(hours!.weekly.map(w => w.from)).toEqual(['19:00', '19:00']);
  });
  it('have none on days away, and keep the usual week', () => {
    shop.say('switch to Heron', AT);
    shop.say('check the oil', AT);
    const end = () => (shop.say('when will the machine be done?', AT).answers[0] as { p50: string }).p50;
    expect(end()).toBe('2026-06-01');
    expect(shop.say("I'm away until Friday", AT).say).toBe("I'll plan nothing for today to Thu 4 Jun.");
    expect(end()).toBe('2026-06-05');
    shop.say('two hours most evenings', AT);
    expect(planSettings(shop.deps, AT).hours!.exceptions.map(e => e.date)).toEqual(['2026-06-01', '2026-06-02', '2026-06-03', '2026-06-04']);
  });
  it('are nobody\'s guess with a fresh log', () => expect(planSettings(shop.deps, AT).hours).toBeUndefined());
});

describe('a usual order that is turned down', () => {
  const begin = (): string => {
    shop.say('switch to Heron', AT);
    shop.say('fan is off', AT);
    shop.say('radiator is off', AT);
    return shop.say('radiator is on for good', AT).say;
  };
  it('is warned of once, and never again after "ignore that"', () => {
    expect(begin()).toContain('fan usually comes before the radiator');
    expect(shop.say('ignore that', AT).say).toContain('won\'t bring it up again');
    shop.say('radiator is off', AT);
    expect(shop.say('radiator is on for good', AT).say).not.toContain('usually');
    expect(planSettings(shop.deps, AT).refused!.size).toBe(1);
  });
  it('is spoken of when asked what holds up a part, apart from the person\'s own causes, until it is turned down', () => {
    for (const w of ['switch to Heron', 'fan is off', 'radiator is off']) shop.say(w, AT);
    const ask = () => shop.say("what's holding up the radiator?", AT);
    expect(ask().answers[0]).toMatchObject({ clear: true, causes: [], usual: [{ first: 'fit the fan' }] });
    expect(ask().say).toContain('usually fit the fan first');
    shop.say("that order doesn't matter here", AT);
    expect(ask().say).toBe('Nothing holds up the radiator.');
  });
  it('stays when the words turn down nothing that was spoken of', () => {
    shop.say('fan is off', AT);
    expect(shop.say('ignore that', AT).say).not.toContain('bring it up');
    expect(planSettings(shop.deps, AT).refused!.size).toBe(0);
  });
});

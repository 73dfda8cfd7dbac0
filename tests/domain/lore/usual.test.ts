import { describe, expect, it } from 'vitest';
import { actOf } from '../../../domain/lore/act.ts';
import { usualConditions } from '../../../domain/lore/conditions.ts';
import { lagBetween, usualCure } from '../../../domain/lore/cures.ts';
import { usualHours } from '../../../domain/lore/hours.ts';
import { usualRechecks } from '../../../domain/lore/rechecks.ts';
import { orderRules } from '../../../domain/lore/order/all.ts';

describe('usual conditions', () => {
  const of = (phrase: string) => usualConditions(actOf(phrase));

  it('a coat wants dry air, warmth, 3 °C over the dew point, daylight, and no break', () => {
    expect(of('paint the hood')).toMatchObject({ unbroken: true, conditions: { hands: 1, dry: true, maxRh: 85, minTempC: 10, dewMargin: 3, cureHours: 6, daylight: true } });
    expect(of('prime the frame').conditions.place).toBe('outdoors');
    expect(of('paint the hood').caution).toMatch(/supplied air/);
  });

  it('what is heavy wants help or a hoist, and a word of caution', () => {
    expect(of('left rear wheel')).toMatchObject({ orHoist: true, conditions: { hands: 2 } });
    expect(of('engine off').conditions.hands).toBe(2);
    expect(of('engine').caution).toMatch(/blocked and chocked/);
    expect(of('steering wheel').conditions.hands).toBe(1);
    expect(of('clean the engine').conditions).toMatchObject({ hands: 1, place: 'outdoors' });
  });

  it('bleeding brakes wants a second person and no hoist', () => {
    expect(of('bleed the brakes')).toMatchObject({ orHoist: false, conditions: { hands: 2 } });
  });

  it('ordinary work asks for nothing', () => {
    expect(of('fan belt')).toEqual({ conditions: { place: 'either', hands: 1 }, unbroken: false, orHoist: false, source: 'common practice, no source' });
  });

  it.each(['weld the fuel tank', 'charge the battery', 'start the engine', 'seal the fuel tank', 'pressure plate', 'tire', 'test the hydraulics', 'lift the engine'])('%s carries a caution', (phrase) => {
    expect(of(phrase).caution).toBeTruthy();
  });
});

describe('usual hours', () => {
  const of = (phrase: string) => usualHours(actOf(phrase));

  it('are three points in order for every act that the lore knows', () => {
    for (const { first, then } of orderRules) {
      for (const phrase of [first, then]) {
        const { low, likely, high } = of(phrase.replace('*', 'the bracket'));
        expect(0 < low && low <= likely && likely <= high, phrase).toBe(true);
      }
    }
  });

  it('tell a big thing from a small one', () => {
    expect(of('rebuild the engine').likely).toBeGreaterThan(of('rebuild the carburetor').likely);
    expect(of('fan belt').likely).toBeLessThan(of('left rear wheel').likely);
    expect(of('paint the frame').likely).toBeGreaterThan(of('paint the bracket').likely);
    expect(of('engine off').likely).toBeGreaterThan(of('seat off').likely);
  });
});

describe('usual cures', () => {
  it('go by the product, else by the verb', () => {
    expect(usualCure(actOf('paint the hood'), 'red oxide primer')).toMatchObject({ lag: 'dry', recoat: 4 });
    expect(usualCure(actOf('prime the hood'), 'epoxy primer')).toMatchObject({ lag: 'cure', handle: 24 });
    expect(usualCure(actOf('seal the fuel tank'), 'tank sealer')).toMatchObject({ handle: 96 });
    expect(usualCure(actOf('paint the hood'))).toMatchObject({ recoat: 24, handle: 48 });
    expect(usualCure(actOf('fan belt'))).toBeUndefined();
  });

  it('wait less for the next coat than for fitting', () => {
    const paint = actOf('paint the hood');
    expect(lagBetween(paint, actOf('paint the hood'))).toEqual({ hours: 24, lag: 'dry' });
    expect(lagBetween(paint, actOf('hood'))).toEqual({ hours: 48, lag: 'dry' });
    expect(lagBetween(actOf('fan'), actOf('radiator'))).toBeUndefined();
  });
});

describe('usual rechecks', () => {
  it('of wheels and belts after their first hours', () => {
    expect(usualRechecks(actOf('left front wheel'))).toMatchObject([{ do: 'tighten', part: 'wheel nuts', after: 3, unit: 'hours' }, { after: 10 }]);
    expect(usualRechecks(actOf('fan belt'))).toMatchObject([{ do: 'adjust', part: 'fan belt', unit: 'hours' }]);
    expect(usualRechecks(actOf('steering wheel'))).toEqual([]);
    expect(usualRechecks(actOf('front wheel off'))).toEqual([]);
  });
});

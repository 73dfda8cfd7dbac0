import { describe, expect, it } from 'vitest';
import type { ForecastHour } from '../../../domain/plan/forecast.ts';
import { planWork } from '../../../domain/plan/plan.ts';
import { at, clock, job, planned, planOf, shop } from './tools/jobs.ts';

/** Hourly, mild and dry, from Monday 4 May on; hours may be changed. */
function mild(days: number, change: (hour: Date) => Partial<ForecastHour> = () => ({})): ForecastHour[] {
  return Array.from({ length: days * 24 }, (_, h) => {
    const start = new Date(at('2026-05-04 00:00') + h * 3_600_000);
    return { startUtc: start.toISOString(), hours: 1, tempC: 18, dewC: 8, rh: 52, popPct: 5, precipMm: 0, windMs: 2, gustMs: null, ...change(start) };
  });
}
const onDay = (date: string) => (hour: Date) => clock(hour.getTime())!.includes(date);

describe('one plan of the work', () => {
  // Monday 18-20 clean (2 h), Tuesday 18-20 and Wednesday 18-19 weld (3 h): laid down overnight.
  it('fills the evenings and lays a job down overnight', () => {
    const plan = planned(shop([job('clean', 2), job('weld', 3, { after: [{ job: 'clean' }] })]));
    expect(clock(planOf(plan, 'clean').start)).toBe('Mon 2026-05-04 18:00');
    expect(planOf(plan, 'weld').pieces.map(({ from, to }) => [clock(from), clock(to)])).toEqual([
      ['Tue 2026-05-05 18:00', 'Tue 2026-05-05 20:00'], ['Wed 2026-05-06 18:00', 'Wed 2026-05-06 19:00'],
    ]);
    expect(planOf(plan, 'weld').why).toEqual([{ why: 'after', job: 'clean', until: at('2026-05-04 20:00') }, { why: 'hours', until: at('2026-05-05 18:00') }]);
    expect(clock(plan.finish)).toBe('Wed 2026-05-06 19:00');
  });

  // Primer Monday 18-20 cures 48 h of any clock: until Wednesday 20:00, so the top coat starts Thursday 18:00.
  it('waits for a cure by the clock on the wall and says so', () => {
    const plan = planned(shop([job('prime', 2), job('paint', 1, { after: [{ job: 'prime', lagHours: 48, lag: 'cure' }] }), job('file', 1)]));
    expect(clock(planOf(plan, 'paint').start)).toBe('Thu 2026-05-07 18:00');
    expect(planOf(plan, 'paint').why[0]).toEqual({ why: 'lag', job: 'prime', lag: 'cure', hours: 48, until: at('2026-05-06 20:00') });
    expect(clock(planOf(plan, 'file').end)).toBe('Tue 2026-05-05 19:00'); // something else meanwhile
  });

  it('keeps a coat in one go: no room between other work, none over a night', () => {
    const plan = planned(shop([job('coat', 2, { unbroken: true, notBefore: { at: at('2026-05-04 18:30'), what: 'surface warm' } })]));
    expect(planOf(plan, 'coat').pieces.map(({ from }) => clock(from))).toEqual(['Tue 2026-05-05 18:00']);
    expect(planOf(plan, 'coat').why.map(({ why }) => why)).toEqual(['date', 'stretch']);
  });

  it('works out of doors in dry hours and indoors meanwhile', () => {
    const weather = { forecast: mild(7, (hour) => (onDay('2026-05-04')(hour) || onDay('2026-05-05')(hour) ? { precipMm: 1, popPct: 90 } : {})) };
    const plan = planned(shop([job('wash', 2, { conditions: { place: 'outdoors' } }), job('sort', 4)], { weather }));
    expect(clock(planOf(plan, 'wash').start)).toBe('Wed 2026-05-06 18:00');
    expect(planOf(plan, 'wash').why).toEqual([{ why: 'wet', until: at('2026-05-05 20:00') }]);
    expect(clock(planOf(plan, 'sort').end)).toBe('Tue 2026-05-05 20:00');
  });

  it("takes the person's word over the service's", () => {
    const forecast = mild(7, (hour) => (onDay('2026-05-04')(hour) ? { precipMm: 1 } : {}));
    const wash = [job('wash', 1, { conditions: { place: 'outdoors' } })];
    expect(clock(planned(shop(wash, { weather: { forecast, said: [{ date: '2026-05-04', sky: 'dry' }] } })).finish)).toBe('Mon 2026-05-04 19:00');
    expect(clock(planned(shop(wash, { weather: { forecast, said: [{ date: '2026-05-05', sky: 'rain' }] } })).finish)).toBe('Wed 2026-05-06 19:00');
  });

  it('wants a coat dry through its first cure', () => {
    // Rain at 03:00 on Tuesday: a coat that must stay dry six hours can't end at 19:00 on Monday plus a cure to 01:00? It can; with ten hours it can't.
    const forecast = mild(7, (hour) => (clock(hour.getTime())!.endsWith('2026-05-05 03:00') ? { precipMm: 2 } : {}));
    const coat = (cureHours: number) => planned(shop([job('coat', 1, { unbroken: true, conditions: { place: 'outdoors', cureHours } })], { weather: { forecast } }));
    expect(clock(coat(6).finish)).toBe('Mon 2026-05-04 19:00');
    expect(clock(coat(10).finish)).toBe('Tue 2026-05-05 19:00');
  });

  it('waits for the dew margin and for warmth', () => {
    const forecast = mild(7, (hour) => (onDay('2026-05-04')(hour) ? { tempC: 10, dewC: 8.5, rh: 90 } : onDay('2026-05-05')(hour) ? { tempC: 4, dewC: -2, rh: 60 } : {}));
    const plan = planned(shop([job('coat', 1, { conditions: { dewMargin: 3, minTempC: 10 } })], { weather: { forecast } }));
    expect(planOf(plan, 'coat').why.map(({ why }) => why)).toEqual(['dew', 'cold']);
    expect(clock(plan.finish)).toBe('Wed 2026-05-06 19:00');
    const warm = planned(shop([job('coat', 1, { conditions: { dewMargin: 3, minTempC: 10 } })], { weather: { forecast, heated: true } }));
    expect(clock(warm.finish)).toBe('Mon 2026-05-04 19:00');
  });

  it('lifts when there is help, and has no date when none was promised', () => {
    const lift = [job('lift', 1, { conditions: { hands: 2 } })];
    const plan = planned(shop(lift, { help: [{ date: '2026-05-09', from: '10:00', to: '12:00' }] }));
    expect(clock(planOf(plan, 'lift').start)).toBe('Sat 2026-05-09 10:00');
    expect(planOf(plan, 'lift').why).toEqual([{ why: 'help', until: at('2026-05-09 10:00') }]);
    const stuck = planned(shop([...lift, job('after', 1, { after: [{ job: 'lift' }] })]));
    expect(stuck.stuck).toEqual([{ id: 'after', why: [{ why: 'after', job: 'lift' }] }, { id: 'lift', why: [{ why: 'help' }] }]);
    expect(stuck.finish).toBeUndefined();
    const usual = planned(shop(lift, { helpUsually: [{ weekday: 6, from: '08:00', to: '12:00' }] }));
    expect(clock(usual.finish)).toBe('Sat 2026-05-09 09:00');
  });

  it('waits for daylight by the sun', () => {
    // Sunset at New York on 4 December 2026 is 16:28 (any almanac); evenings are dark, so Saturday morning.
    const plan = planned(shop([job('match colour', 1, { conditions: { daylight: true } })], { now: at('2026-12-01 08:00'), site: { latitude: 40.7, longitude: -74 } }));
    expect(clock(plan.finish)).toBe('Sat 2026-12-05 09:00');
    expect(plan.jobs[0]!.why).toEqual([{ why: 'dark', until: at('2026-12-04 20:00') }]);
  });

  it('waits for what is on order, for what must still be ordered, and for work done elsewhere', () => {
    const belt = at('2026-05-07 12:00');
    const plan = planned(shop([
      job('fit belt', 1, { needs: ['belt'] }),
      job('fit hose', 1, { needs: ['hose'] }),
      job('machine', 72, { conditions: { hands: 0 } }),
      job('fit head', 1, { after: [{ job: 'machine' }] }),
    ], { supplies: [{ id: 'belt', what: 'belt', arrives: { low: belt, likely: belt, high: belt } }, { id: 'hose', what: 'hose', leadDays: { low: 8, likely: 8, high: 8 } }] }));
    expect(clock(planOf(plan, 'fit belt').start)).toBe('Thu 2026-05-07 18:00');
    expect(planOf(plan, 'fit belt').why[0]).toEqual({ why: 'supply', supply: 'belt', until: belt });
    expect(clock(planOf(plan, 'fit hose').start)).toBe('Tue 2026-05-12 18:00');
    expect(clock(planOf(plan, 'machine').end)).toBe('Thu 2026-05-07 08:00');
    expect(clock(planOf(plan, 'fit head').start)).toBe('Thu 2026-05-07 19:00');
  });

  it('refuses a circle with its path', () => {
    expect(planWork(shop([job('a', 1, { after: [{ job: 'b' }] }), job('b', 1, { after: [{ job: 'a' }] })]))).toEqual({ ok: false, why: 'circle', path: ['b', 'a', 'b'] });
  });

  it('is empty for an empty shop, and has no dates without free hours or for a supply nobody knows', () => {
    expect(planned(shop([]))).toMatchObject({ jobs: [], stuck: [], finish: undefined });
    const never = planned(shop([job('file', 1)], { hours: { zone: 'UTC', weekly: [], exceptions: [] } }));
    expect(never).toMatchObject({ jobs: [], stuck: [{ id: 'file', why: [{ why: 'hours' }] }], finish: undefined });
    expect(planned(shop([job('fit', 1, { needs: ['belt'] })])).stuck).toEqual([{ id: 'fit', why: [{ why: 'supply', supply: 'belt', until: undefined }] }]);
  });

  it('keeps a coat that is too long for any evening, in pieces, rather than never', () => {
    const plan = planned(shop([job('coat', 5, { unbroken: true })]));
    expect(planOf(plan, 'coat').pieces.length).toBeGreaterThan(1);
    expect(planOf(plan, 'coat').why.at(-1)).toEqual({ why: 'tooLong', hours: 4 });
  });

  it('does not depend on the order in which unrelated jobs were noted', () => {
    const jobs = ['a', 'b', 'c', 'd'].map((id, i) => job(id, 1 + i, i > 1 ? { after: [{ job: 'a', lagHours: 20 }] } : {}));
    expect(planned(shop(jobs.toReversed()))).toEqual(planned(shop(jobs)));
  });
});

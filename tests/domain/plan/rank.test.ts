import { describe, expect, it } from 'vitest';
import type { ForecastHour } from '../../../domain/plan/forecast.ts';
import { rankNext } from '../../../domain/plan/rank.ts';
import { nextReasonWords } from '../../../domain/answers/why.ts';
import { reasonWords } from '../../../bot/say/plan-reasons.ts';
import { at, job, planned, planOf, shop, zone } from './tools/jobs.ts';

const now = at('2026-05-04 13:20');
const dryTill = (hour: number): ForecastHour[] => Array.from({ length: 24 }, (_, h) => ({
  startUtc: new Date(at('2026-05-04 13:00') + h * 3_600_000).toISOString(), hours: 1, tempC: 15, dewC: 5, rh: 50, popPct: null,
  precipMm: 13 + h >= hour ? 1 : 0, windMs: 1, gustMs: null,
}));
const jobs = [
  job('pump', 0.6), job('radiator', 2, { after: [{ job: 'pump' }] }), job('fan', 1, { after: [{ job: 'radiator' }] }),
  job('wash', 1, { conditions: { place: 'outdoors' } }), job('lift', 1, { conditions: { hands: 2 } }),
  job('hoses', 1, { needs: ['hose'] }), job('coat', 2, { unbroken: true }), job('sort', 5), job('file', 0.5),
];
const ids = (list: { id: string }[]) => list.map(({ id }) => id);

describe('next', () => {
  const words = (list: ReturnType<typeof rankNext>) => Object.fromEntries(list.map(({ id, reasons }) => [id, reasons.map((r) => nextReasonWords(r, { zone, now, nameOf: (x) => x }))]));

  it('gives three ready jobs with reasons, the dry hours first when rain is near', () => {
    const list = rankNext(shop(jobs, { now, weather: { forecast: dryTill(15) } }), { minutes: 60 });
    expect(words(list)).toEqual({ wash: ['dry until 15:00', 'fits your 60 minutes'], pump: ['unlocks 2 others', 'fits your 60 minutes'], file: ['fits your 60 minutes'] });
    expect(ids(list)).toEqual(['wash', 'pump', 'file']);
  });

  it('keeps to the place, and indoors when it rains', () => {
    expect(ids(rankNext(shop(jobs, { now }), { place: 'outdoors' }))).toEqual(['wash']);
    expect(ids(rankNext(shop(jobs, { now, weather: { forecast: dryTill(13) } })))).not.toContain('wash');
    expect(ids(rankNext(shop(jobs, { now, weather: { said: [{ date: '2026-05-04', sky: 'rain' }] } }), { place: 'outdoors' }))).toEqual([]);
  });

  it('looks at the last begun hour of a first cure too', () => {
    // 13:20, an hour of work and two of cure: till 16:20.
    const coat = job('coat', 1, { unbroken: true, conditions: { place: 'outdoors', dry: true, cureHours: 2 } });
    const offered = (rain: number) => ids(rankNext(shop([coat], { now, weather: { forecast: dryTill(rain) } })));
    expect([offered(16), offered(17)]).toEqual([[], ['coat']]);
  });

  it('lifts only with help, and then first', () => {
    expect(ids(rankNext(shop(jobs, { now })))).not.toContain('lift');
    const helped = rankNext(shop(jobs, { now, help: [{ date: '2026-05-04', from: '13:00', to: '15:00' }] }));
    expect(helped[0]).toEqual({ id: 'lift', reasons: [{ why: 'helpUntil', until: at('2026-05-04 15:00') }] });
    expect(ids(rankNext(shop(jobs, { now }), { helpHere: true }))[0]).toBe('lift');
  });

  it('does not begin what must be done in one go without the time for it', () => {
    const only = (minutes: number) => ids(rankNext(shop([job('coat', 2, { unbroken: true }), job('sort', 5)], { now }), { minutes }));
    expect(only(60)).toEqual(['sort']);
    expect(only(120)).toEqual(['coat', 'sort']);
    expect(only(20)).toEqual([]);
  });

  it('brings up a temporary fit in the way, what has come in, and what decides the finish', () => {
    const list = rankNext(shop(jobs, { now }), {}, {
      temporary: new Map([['pump', { part: 'pump bracket', since: '2026-04-01' }]]), inHand: new Map([['sort', 'belt']]), critical: new Map([['file', 0.9]]),
    });
    expect(words(list)).toEqual({ pump: ['pump bracket is only on for now', 'unlocks 2 others'], file: ['the finish hangs on it'], sort: ['belt is in'] });
  });

  it('says at least that nothing holds it up', () => {
    expect(rankNext(shop([job('sort', 5)], { now }))).toEqual([{ id: 'sort', reasons: [{ why: 'ready' }] }]);
  });
});

describe('reasons in words', () => {
  it('read as the person would say them', () => {
    const input = shop([job('prime', 2), job('paint', 1, { after: [{ job: 'prime', lagHours: 110, lag: 'cure' }] }), job('lift', 1, { conditions: { hands: 2 } })]);
    const plan = planned(input);
    const say = (why: Parameters<typeof reasonWords>[0][]) => why.map((reason) => reasonWords(reason, { zone, now: input.now, nameOf: (id) => id }));
    expect(say(planOf(plan, 'paint').why)).toEqual(['waits for prime to cure until Sat 10:00']);
    expect(say(plan.stuck[0]!.why)).toEqual(['needs a second pair of hands, none promised']);
  });
});

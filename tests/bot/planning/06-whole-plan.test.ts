import { afterEach, describe, expect, it } from 'vitest';
import { factsFor } from '../../../bot/planning/facts.ts';
import { openSimulator } from '../../../bot/planning/simulator.ts';
import { wholePlan } from '../../../bot/planning/whole-plan.ts';
import type { Task } from '../../../bot/planning/task.ts';
import { workOut } from '../../../bot/planning/work-out.ts';
import { BENCH } from '../../../bot/incoming.ts';
import { receiver } from '../../../bot/receive.ts';
import { createService } from '../../../bot/serve.ts';
import type { Talk } from '../../../bot/service.ts';
import { loadSample } from '../../../bot/sample.ts';
import { takeTurn } from '../../../bot/turn.ts';
import type { Cause } from '../../../domain/model/answer.ts';
import { shopInMemory } from '../shop-in-memory.ts';

const AT = '2026-06-01T18:00:00+02:00';
const DAY = /^\d{4}-\d\d-\d\d$/;
let shop = shopInMemory();
afterEach(() => { shop.close(); shop = shopInMemory(); });
const all = (causes: readonly Cause[]): Cause[] => causes.flatMap(c => [c, ...all(c.causes)]);

describe('the whole plan', () => {
  it('of the sample shop has days, reasons and no start before its earliest', () => {
    loadSample(shop.deps, takeTurn);
    const plan = wholePlan(shop.deps.log.shop, { at: AT, zone: 'Europe/Paris' }, factsFor(shop.deps, AT));
    expect(plan.jobs.length).toBeGreaterThan(10);
    for (const j of plan.jobs) {
      expect(j.start, `${j.do} ${j.part}`).toMatch(DAY);
      expect(j.earliest!).toMatch(DAY);
      expect(j.earliest! <= j.start!, `${j.do} ${j.part}`).toBe(true);
      expect(j.start! >= AT.slice(0, 10)).toBe(true);
      expect(j.why.length).toBeGreaterThan(0);
    }
    expect(plan.finish.p50).toMatch(DAY);
    expect(plan.finish.p50! <= plan.finish.p80!).toBe(true);
    expect(plan.finish.driver).toBeTruthy();
    for (const c of plan.blockers.flatMap(b => all(b.causes))) expect(c.clears, `${c.cause} ${c.what}`).toMatch(DAY);
  });
  it('has an order-by day for every thing that is wanted', () => {
    for (const w of ['switch to Heron', 'need a fan belt', 'need a water pump gasket for the water pump', 'water pump is off']) shop.say(w, AT);
    const { orderBy } = wholePlan(shop.deps.log.shop, { at: AT, zone: 'Europe/Paris' }, factsFor(shop.deps, AT));
    expect(orderBy.map(o => o.item).sort()).toEqual(['fan belt', 'water pump gasket']);
    for (const o of orderBy) expect(o.by >= AT.slice(0, 10)).toBe(true);
  });
  it('of an empty shop is empty', () =>
    expect(wholePlan(shop.deps.log.shop, { at: AT, zone: 'UTC' }, factsFor(shop.deps, AT))).toEqual({ jobs: [], blockers: [], orderBy: [], finish: { p50: null, p80: null, driver: null }, basis: ['Nothing is open.'] }));
});

describe('worked out aside', () => {
  it('a finish follows its note, which was answered at once; other notes are answered meanwhile', async () => {
    for (const w of ['switch to Heron', 'hood is off', 'paint the hood']) shop.say(w, AT);
    const simulator = openSimulator();
    const deps = { ...shop.deps, handsOut: () => true };
    const service = createService({ deps, receiving: receiver({ store: deps.log.store }), workOut: (task, at) => workOut(deps, task as Task, at, simulator.simulate) });
    const heard: Talk[] = [];
    service.onTalk(t => heard.push(t));
    const ask = (key: string, text: string) => service.take({ key, door: 'terminal', chat: BENCH, at: AT, text });
    const first = await ask('a', 'when will the machine be done?');
    expect(first).toMatchObject({ say: 'Working it out…', answers: [] });
    expect((await ask('b', "what's due?")).answers.map(a => a.kind)).toEqual(['due']);
    await service.close();
    await simulator.close();
    const later = heard.find(t => t.text === '' && t.id === first.note)!;
    expect(later.say).toMatch(/as likely as not/);
    expect(service.talk(undefined, 10).find(t => t.id === first.note)!.say).toContain('as likely as not');
  });
});

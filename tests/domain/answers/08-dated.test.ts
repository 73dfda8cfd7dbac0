import { describe, expect, it } from 'vitest';
import { shopInMemory } from '../../bot/shop-in-memory.ts';
import type { BlockedAnswer, BuyAnswer } from '../../../domain/model/answer.ts';
import { factsFor } from '../../../bot/planning/facts.ts';
import { wholePlan } from '../../../bot/planning/whole-plan.ts';

const AT = '2026-05-02T09:00:00+02:00';
const told = (...notes: string[]) => {
  const shop = shopInMemory();
  for (const note of ['switch to Heron', 'two hours every evening', ...notes]) shop.say(note, AT);
  return { ...shop, plan: () => wholePlan(shop.deps.log.shop, { at: AT, zone: shop.deps.zone }, factsFor(shop.deps, AT)) };
};

describe('the earliest day that something clears', () => {
  it('is when the paint is dry, not when it is laid on, and the job it holds up starts no sooner', () => {
    const shop = told('paint the rims before the tyres go on');
    const { causes } = shop.say("what's holding up the tyres", AT).answers[0] as BlockedAnswer;
    const { jobs, blockers } = shop.plan();
    const tyres = jobs.find(j => j.part === 'tyres')!;
    expect(causes[0]).toMatchObject({ cause: 'rule', clears: tyres.earliest });
    expect(blockers.find(b => b.part === 'tyres')!.causes[0]!.clears).toBe(tyres.earliest);
    expect(tyres.earliest! > jobs.find(j => j.part === 'rims')!.earliest!).toBe(true);
    shop.close();
  });
});

describe('a thing wanted for two parts', () => {
  it('is two things to get, each with its own day to order by, holding up its own part alone', () => {
    const shop = told('need a gasket for the water pump', 'need a gasket for the valve cover', 'water pump is off', 'valve cover is off');
    expect((shop.say('what do I still need to buy', AT).answers[0] as BuyAnswer).items).toHaveLength(2);
    const { orderBy, jobs } = shop.plan();
    expect(orderBy.map(o => o.item)).toEqual(['gasket for the valve cover', 'gasket for the water pump']);
    const why = (part: string) => jobs.find(j => j.part === part && j.do !== 'get')!.why.join('; ');
    expect(why('water pump')).toContain('gasket for the water pump');
    expect(why('water pump')).not.toContain('valve cover');
    shop.close();
  });
});

describe('work on one part', () => {
  it('a tank is flushed before it is sealed, a part cleaned before it is painted', () => {
    const shop = told('need to seal the fuel tank', 'need to flush the fuel tank', 'need to paint the fan', 'need to clean the fan');
    const start = (verb: string) => shop.plan().jobs.findIndex(j => j.do === verb);
    expect(start('flush')).toBeLessThan(start('seal'));
    expect(start('clean')).toBeLessThan(start('paint'));
    shop.close();
  });
});

describe('a coat that was just laid on', () => {
  it('is told with its usual time, though nobody said to wait; a wait that was said beats it', () => {
    const shop = told('hood is off', 'painted the hood with enamel');
    const said = () => shop.say("what's holding up the hood", '2026-05-02T12:00:00+02:00');
    expect(said().answers[0]).toMatchObject({ clear: true, causes: [], curing: [{ coat: 'enamel', lag: 'dry', hours: 48, until: '2026-05-04' }] });
    expect(said().say).toBe('Nothing you said holds up the hood, but the enamel on it usually has to dry until Mon 4 May: 48 hours at about 20 °C (common practice, no source; its sheet decides).');
    shop.say('leave the hood alone for 5 hours', AT);
    expect(said().answers[0]).not.toHaveProperty('curing');
    shop.close();
  });
});

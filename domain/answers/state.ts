import type { StateAnswer, ThingState } from '../model/answer.ts';
import { nameKey } from '../model/names.ts';
import { dayOf } from '../log/days.ts';
import type { Shop, Thing } from '../log/shop.ts';
import { covered, hereOf, lookUp } from './find.ts';
import type { More, Now } from './given.ts';
import { some, supplies } from './supply.ts';

/** How a part and what belongs to it stand now; nothing that was put right since, nothing twice. */
export function state(shop: Shop, said: string, now: Now, more: More): StateAnswer {
  const found = lookUp(shop, said, more.machine);
  const things = found ? covered(found) : sharing(shop, said, more);
  return { kind: 'state', part: said, things: things.map(t => ofThing(t, now)).filter(tells) };
}

/** "The clutch", where there is a clutch plate and clutch fingers: every thing with that word in its name. */
function sharing(shop: Shop, said: string, more: More): Thing[] {
  const words = nameKey(said).split(' ');
  return [...hereOf(shop, more.machine)?.things.values() ?? []].filter(t => words.every(w => t.key.split(' ').includes(w)));
}

function ofThing(t: Thing, now: Now): ThingState {
  return {
    part: t.name,
    ...some({
      fit: t.fit && { state: t.fit.state, ...some({ with: t.fit.with }), since: t.fit.at },
      finding: t.finding && stillSo(t) ? { condition: t.finding.condition, ...some({ verdict: t.finding.verdict }), since: t.finding.at } : undefined,
      where: t.place?.where, out: t.out && some({ where: t.out.where, until: t.out.until && dayOf(t.out.until) }),
    }),
    jobs: t.jobs.filter(j => !j.begun).map(j => j.do), begun: t.jobs.filter(j => j.begun).map(j => j.do),
    supply: supplies(t, dayOf(now.at)), rechecks: t.rechecks.map(r => r.do),
  };
}

/** A fault that was answered, and whatever was wrong before it came back from a shop, is past. */
const stillSo = (t: Thing): boolean =>
  !(t.back && t.back.id > t.finding!.id) && (!/^(repair|replace)$/.test(t.finding!.verdict ?? '') || t.fault?.id === t.finding!.id);

const tells = (s: ThingState): boolean => Boolean(s.fit ?? s.finding ?? s.where ?? s.out) || s.jobs.length + s.begun.length + s.supply.length + s.rechecks.length > 0;

import type { Thing } from '../../../domain/log/shop.ts';
import { isCoating } from '../../../domain/answers/weather.ts';
import { act } from '../../../domain/lore/act.ts';
import { usualCure } from '../../../domain/lore/cures.ts';
import { skyAt, wetSpells } from '../../weather/wet.ts';
import { nextQuiet } from '../local-time.ts';
import { allThings, type About, type Look, type Occasion } from '../occasion.ts';

const HOUR = 3_600_000;
/** Rain this near is worth a word; before the quiet begins the night is looked through too, for nothing is said in it. */
const NEAR_HOURS = 6;
const BEFORE_QUIET_HOURS = 3;

const OUTSIDE = /\b(?:outside|outdoors|out back|out front|yard|garden|drive ?way|on the drive|lawn|grass|field|orchard|clothes ?line|washing line|fence|carport|on the trailer|in the open|patio|under the sky|porch rail)\b/;

/** Rain on its way onto what lies outside, or onto a fresh coat that is not known to be under a roof. Said while it is still dry, once a day and part. */
export const rain: Look = about => {
  const spell = coming(about);
  if (!spell) return [];
  return allThings(about.shop).flatMap(({ machine, thing, name }): Occasion[] => {
    const coat = freshCoat(thing, about.at);
    const outside = thing.place && OUTSIDE.test(thing.place.where.toLowerCase()) ? thing.place.where : undefined;
    const underRoof = (thing.place && !outside) || thing.out;
    // A machine that lives outside gets wet each time; only its fresh coat is worth a word.
    if (!(coat && !underRoof) && !(outside && thing.key)) return [];
    const stop = ['rain', machine.key, thing.key].join('|');
    return [{ topic: 'rain', key: `${stop}|${about.today}`, stop, part: name, from: spell.from, said: spell.said, ...(about.source && !spell.said ? { source: about.source } : {}), ...(coat ? { coat } : {}), ...(outside ? { outside } : {}) }];
  });
};

function coming({ weather, at, now, settings }: About): { from: number; said: boolean } | undefined {
  if (skyAt(weather, now.zone)(at) === 'wet') return undefined;
  const quiet = nextQuiet(at, settings.quiet, now.zone);
  const until = quiet && quiet[0] - at <= BEFORE_QUIET_HOURS * HOUR ? Math.max(at + NEAR_HOURS * HOUR, quiet[1] + HOUR) : at + NEAR_HOURS * HOUR;
  return wetSpells(weather, at, until, now.zone)[0];
}

/** What was laid on it and has not had its usual time to be handled. */
function freshCoat(thing: Thing, at: number): string | undefined {
  for (const work of thing.works.values()) {
    if (!work.done || !isCoating(work.action)) continue;
    const cure = usualCure(act(work.action, thing.name), work.product);
    if (cure && Date.parse(work.at) + cure.handle * HOUR > at && Date.parse(work.at) <= at) return work.product ?? work.action;
  }
  return thing.wait?.until !== undefined && Date.parse(thing.wait.until) > at && [...thing.works.values()].some(w => isCoating(w.action)) ? 'coat' : undefined;
}

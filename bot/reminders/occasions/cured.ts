import type { Thing } from '../../../domain/log/shop.ts';
import { act } from '../../../domain/lore/act.ts';
import { usualCure } from '../../../domain/lore/cures.ts';
import { isCoating } from '../../../domain/answers/weather.ts';
import { momentOf } from '../local-time.ts';
import { allThings, keyOf, type Facts, type Look, type Occasion } from '../occasion.ts';

const HOUR = 3_600_000;
/** A cure that ended longer ago than this is no news. */
const NEWS_DAYS = 3;

/** What was told to be left alone, or was coated, sealed or glued, has had its time: the person's word about it, else the usual. */
export const cured: Look = ({ shop, at, now, mark }) => allThings(shop).flatMap(({ machine, thing, name }): Occasion[] => {
  const ended = endOf(thing, now.zone);
  if (!ended) return [];
  const key = keyOf('cured', machine, thing, ended.id);
  const isNews = ended.since <= at && (at - ended.since <= NEWS_DAYS * 24 * HOUR || mark(key)?.putOffUntil !== undefined);
  const job = thing.jobs[0];
  return isNews ? [{ topic: 'cured', key, stop: key, part: name, since: ended.since, ...(ended.usual ? { usual: ended.usual } : {}), ...(job ? { then: job.do } : {}) }] : [];
});

const CURING = /^(?:seal|glue)/;

function endOf(thing: Thing, zone: string): { id: number; since: number; usual?: Extract<Facts, { topic: 'cured' }>['usual'] } | undefined {
  const works = [...thing.works.values()].filter(w => w.done && (isCoating(w.action) || CURING.test(w.action))).sort((a, b) => a.id - b.id);
  const work = works.at(-1);
  if (thing.wait && (!work || thing.wait.id >= work.id)) return thing.wait.until === undefined ? undefined : { id: thing.wait.id, since: thing.wait.until.length === 10 ? momentOf(thing.wait.until, '00:00', zone) : Date.parse(thing.wait.until) };
  const cure = work && usualCure(act(work.action, thing.name), work.product);
  return cure && { id: work.id, since: Date.parse(work.at) + cure.handle * HOUR, usual: { product: work.product ?? work.action, hours: cure.handle } };
}

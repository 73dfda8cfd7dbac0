import { isPlaceNoun } from '../../clauses/name-kinds.ts';
import { isKnownPart } from '../../dimensions/part/known.ts';
import { snap } from '../../dimensions/part/snap.ts';
import type { Thing } from '../../clauses/clause.ts';
import type { Sheet } from '../../types.ts';
import { nounClasses, singular } from '../../words/nouns.ts';
import { NAMED } from '../../words/quantities.ts';
import type { Telling } from '../telling.ts';

/** Whether a figure may be of what has this name: not what it was read with, nor where that was done, nor a spot on the part. */
export function measurable(sheet: Sheet, name: string): boolean {
  if (isKnownPart(sheet.ctx.parts, name) || snap(name, sheet.ctx).known) return true;
  const head = name.split(' ').at(-1)!, whole = nounClasses(name), of = whole.size ? whole : nounClasses(head);
  if (NOT_THINGS.test(name) || SPOTS.test(name) || READ_WITH.test(name)) return false;
  if ((of.has('tool') || of.has('place')) && !of.has('part') && !of.has('fastener')) return false;
  return !NAMED.test(name) && !NAMED.test(name.split(' ').map(singular).join(' '));
}

/** What was spoken of last and may be measured: "had a file through them, gap is now…" is no gap of the file's. */
export const spokenOf = (t: Telling): Thing | undefined => {
  const all = t.memory.all().filter(x => !(x.np && isPlaceNoun(x.np) && !x.np.known)), topic = t.memory.topic();
  return all.find(x => measurable(t.sheet, x.name)) ?? (topic && measurable(t.sheet, topic.name) ? topic : undefined);
};

/** Words that stand where a noun might and name nothing. */
const NOT_THINGS = /^(back|mid|even|dead|both ends|half|full|full length|full travel|mid travel|mid stroke|run in|warm up|first|second|third|fourth|other|others|rest|same|start|end|ends)$/;
/** Where on a part: "at the tight spot", "on the slack side". */
const SPOTS = /\b(spot|spots|place|places|point|side|sides)$/;
/** What a figure is read with. */
const READ_WITH = /\b(scales?|pencil|finger|fingernail|thumb|nail file|file|bench|tape|rule|ruler|stick|string|wire gauge|lead wire|feelers?|feeler gauges?|plastic gauge|indicator|dial|clock|mike|mic|micrometer|calipers?|meter|multimeter|gauge|square|straight ?edge|chalk|card|paper|shadow|eye|refractometer|hydrometer)$/;

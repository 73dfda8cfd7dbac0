import { nameKey } from '../../../domain/model/names.ts';
import type { Weighed } from '../../likely/net/weighed.ts';
import { choice } from '../../likely/choice.ts';
import { saidIn, valueIn, wordsIn, type Said } from '../../likely/said.ts';
import { stretchOf } from '../../likely/stretch-of.ts';
import { figuresOf } from '../lib/figures.ts';
import { labelOf } from '../lib/label.ts';
import { quantityOf, suits } from '../lib/quantity.ts';
import type { Found } from '../../types.ts';
import { asWas } from '../reading/as-was.ts';
import { table } from '../../words/table.ts';
import type { Telling } from '../telling.ts';

/** How sure the net must be of the words for what was measured. */
const SURE = 0.7;
/** How strongly the net must speak for what a figure measures, or for its unit, where the note does not say it (log odds). */
const MEASURES = 0, IN = 0;

/** Words that say only that a figure was read, or that it is one. */
const READ = /^(wore|worn|clears?|runs?|ran|draws?|shows?|reads?|says|measures?|mikes|mics|pulled|gapped|torqued|set|adjusted|point|hours?|miles)$/;

/** What a machine's hours and miles are. */
const METERED = { hours: 'running time', miles: 'distance' };

/** What a length measures where nothing says it. */
const SIZE = 'size', LENGTH = /^(in|ft|mm|cm|m)$/;

/** What the net takes a figure to measure, where that can be in the figure's unit. */
function measures(says: ReadonlyMap<string, number>, f: Found): string | undefined {
  const what = choice(says, 'what ', MEASURES);
  return what !== undefined && suits(what, f.dim === 'measure' ? f.value.unit : undefined) ? what : undefined;
}

/**
 * What was read off a part in a stretch of a clause: the value with its unit (where it has none, that of the clause's first figure), and what it measures. Nothing where that is not
 * said (unless the net is `sure` that the figure was read, and it is a count or a length), or where the book says it.
 */
export function readOff(t: Telling, net: Weighed, said: Said, sure = false): Read | undefined {
  const read = offIn(t, net, said, sure), noun = read && NOUN[read.what.toLowerCase().split(' ').at(-1)!];
  return read && noun !== undefined ? { ...read, what: noun } : read;
}

/** What is measured by what is said of it: "two inches wide", "stands proud by five thou". */
const NOUN: Readonly<Record<string, string>> = table({ proud: 'protrusion', protrude: 'protrusion', protrudes: 'protrusion', wide: 'width', deep: 'depth', thick: 'thickness', long: 'length', high: 'height', tall: 'height', weighs: 'weight' });

type Read = { what: string; value: number; unit?: string; asWas?: true };

function offIn(t: Telling, net: Weighed, said: Said, sure: boolean): Read | undefined {
  const found = valueIn(t.sheet, said, ['measure', 'percent', 'number', 'span']), { clause } = t;
  if (!found || figuresOf(t.sheet, clause).some(f => f.from < found.to && found.from < f.to && labelOf(t.sheet, ...f.lead).book)) return undefined; // what the book says was not read off the part
  const k = clause.items.findIndex(i => i.from <= found.from && found.from < i.to), q = k < 0 ? undefined : quantityOf(t, clause, found, k), was = asWas(t, clause) ? { asWas: true as const } : {};
  const telling = saidIn(t.sheet, net, found, 'reading what'), named = telling && !READ.test((wordsIn(t.sheet, telling) ?? '').toLowerCase()) ? telling : undefined, says = net.alone(...stretchOf(t.sheet, found)), counted = sure ? clause.items[k]?.np : undefined;
  const what = named && named.p > SURE && wordsIn(t.sheet, named) || (found.dim === 'span' && /^(hours|miles)$/.test(found.value.unit) ? METERED[found.value.unit as 'hours' | 'miles'] : q?.what) || measures(says, found) || (sure ? named && wordsIn(t.sheet, named) || (found.dim === 'measure' && LENGTH.test(found.value.unit) ? SIZE : undefined) : undefined);
  if (counted && counted.count === ('value' in found.value ? found.value.value : undefined) && !q?.unit) return { what: counted.name, value: counted.count!, unit: 'count', ...was };
  if (what === undefined) return undefined;
  if (found.dim === 'measure') return { what, value: found.value.value, unit: found.value.unit, ...was };
  if (found.dim === 'percent') return { what, value: found.value.value, unit: '%', ...was };
  if (found.dim === 'span') return /^(hours|miles)$/.test(found.value.unit) ? { what, value: found.value.amount, unit: found.value.unit === 'miles' ? 'mi' : 'h', ...was } : undefined;
  const first = clause.items.find(i => i.f?.dim === 'measure' && i.from < found.from)?.f, same = first?.dim === 'measure' ? first.value : undefined;
  // "number one 24 bar. Number two 25.": the same quantity is in the unit of the reading before; running time says nothing of the next.
  const before = same ? undefined : t.told.findLast(x => x.entry.kind === 'reading' && x.entry.unit !== undefined)?.entry;
  const like = before?.kind === 'reading' && nameKey(before.what) === nameKey(what) && !/^(count|h|mi)$/.test(before.unit ?? '') ? before : undefined;
  if (like && !(like.unit === 'in' && like.value < 0.2)) return { what: like.what, value: found.value.value, unit: like.unit!, ...was };
  const by = same || q?.unit && q.unit !== 'in' ? undefined : choice(says, 'in ', IN); // "in" is only what such a quantity is mostly in
  const thou = by === 'thou' || same?.unit === 'in' && same.value < 0.2 && Number.isInteger(found.value.value); // "twelve thou, exhaust sixteen"
  const unit = same?.unit ?? (by === 'thou' ? 'in' : by) ?? q?.unit;
  return { what, value: thou ? found.value.value / 1000 : found.value.value, ...(unit !== undefined ? { unit } : {}), ...was };
}

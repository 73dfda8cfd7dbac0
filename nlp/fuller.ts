import type { Entry } from '../domain/model/entry.ts';
import type { Placed } from './clauses/clauses.ts';
import { isKnownPart } from './dimensions/part/known.ts';
import type { Told } from './meanings/telling.ts';
import type { Sheet } from './types.ts';
import { singular } from './words/nouns.ts';

/** The fields of an entry that name a thing. */
const NAMES = ['part', 'item'] as const;

/**
 * A thing that was named in full ("boot bearings", "tow shaker crank") and is named in short after that ("bearings came", "the crank's brazed") is the same
 * thing, and keeps the name it was given. Not where the shop has the short name for something, nor where two things that were spoken of end in it.
 */
export function fuller(sheet: Sheet, x: Told): Told {
  const entry = x.entry as unknown as Record<string, string | undefined>;
  const made: Record<string, string> = {};
  for (const field of NAMES) {
    const name = entry[field], full = name && !isKnownPart(sheet.ctx.parts, name) ? inFull(x, name) : undefined;
    if (full) made[field] = full;
  }
  return Object.keys(made).length ? { ...x, entry: { ...x.entry, ...made } as Entry } : x;
}

function inFull(x: Told, name: string): string | undefined {
  const said = words(name), fronts = new Set<string>(), { memory } = x.clause as Placed;
  for (const things of [memory.all(), memory.passing()]) {
    const ends = things.map(t => words(t.name)).map((w, i) => (w.slice(-said.length).join(' ') === said.join(' ') ? things[i]!.name.toLowerCase().split(' ').slice(0, w.length - said.length).join(' ') : undefined));
    if (!(ends.findLast(f => f !== undefined) ?? '')) continue; // named in short from the first
    for (const front of ends) if (front && !WHICH.test(front)) fronts.add(front);
  }
  return fronts.size === 1 ? `${[...fronts][0]!} ${name}` : undefined;
}

/** Words that say which one or what it was like, and name nothing by themselves. */
const WHICH = /\b(last|old|new|next|other|same|first|second|third|whole|spare|only|best|worst|big|small|little|long|short|proper|wrong|good|bad|broken|few|more|half)\b/;

const words = (name: string): string[] => name.toLowerCase().split(' ').map(singular);

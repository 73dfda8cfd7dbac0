import type { EntryOf } from '../../model/entry.ts';
import { nameKey } from '../../model/names.ts';
import type { ReadingNow, Said, Thing } from '../shop.ts';
import { isLooking, mends, sameWork, verbFamily } from '../verbs.ts';

/** Findings, measurements, works and what is still to do. */
export function found(thing: Thing, entry: EntryOf<'finding'>, said: Said): void {
  const finding = { ...said, condition: entry.condition, verdict: entry.verdict };
  thing.finding = finding;
  if (entry.verdict === 'repair' || entry.verdict === 'replace') thing.fault = finding;
  else if (entry.verdict === 'good' || entry.verdict === 'reuse') thing.fault = undefined;
  lookedAt(thing, said);
}

/** As it was and as it was left are kept apart, each by what was measured. */
export function measured(thing: Thing, entry: EntryOf<'reading'>, said: Said): void {
  const reading: ReadingNow = { ...said, what: entry.what, value: entry.value, unit: entry.unit };
  (entry.asWas ? thing.asWas : thing.asLeft).set(nameKey(entry.what), reading);
  if (entry.asWas !== true) lookedAt(thing, said);
}

/** A look ends a job of looking at once; a recheck only if it was due by then, which is judged when it is asked. */
function lookedAt(thing: Thing, said: Said): void {
  thing.jobs = thing.jobs.filter(job => !isLooking(job.do));
  for (const recheck of thing.rechecks) if (isLooking(recheck.do)) recheck.looked = said;
}

export function worked(thing: Thing, entry: EntryOf<'work'>, said: Said, note: number): void {
  const done = entry.done !== false;
  thing.works.set(verbFamily(entry.action), { ...said, action: entry.action, product: entry.product, done });
  if (!done) {
    for (const job of thing.jobs) if (sameWork(job.do, entry.action)) job.begun = true;
    return;
  }
  thing.jobs = thing.jobs.filter(job => !sameWork(job.do, entry.action));
  thing.rechecks = thing.rechecks.filter(r => r.note === note || !sameWork(r.do, entry.action));
  if (mends(entry.action) && thing.fault?.verdict === 'repair') thing.fault = undefined;
}

/** A job said again is the same job. */
export function toDo(thing: Thing, entry: EntryOf<'job'>, said: Said): void {
  if (!thing.jobs.some(job => sameWork(job.do, entry.do))) thing.jobs.push({ ...said, do: entry.do });
}

/** A recheck of the same kind said again takes the place of the one before. */
export function toLookAgain(thing: Thing, entry: EntryOf<'recheck'>, said: Said, note: number): void {
  const todo = entry.do ?? 'check';
  thing.rechecks = thing.rechecks.filter(r => !sameWork(r.do, todo));
  thing.rechecks.push({ ...said, note, do: todo, after: entry.after, unit: entry.unit, due: entry.due });
}

import type { WasHowAnswer, WasReading } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import { nameKey } from '../model/names.ts';
import type { Shop, Thing } from '../log/shop.ts';
import type { More } from './given.ts';
import { covered, lookUp } from './find.ts';
import { some } from './supply.ts';

/** Words by which a remark tells how things were. */
const AS_WAS = /\b(was|were|came|had|originally|original|before|factory)\b/i;

/**
 * How a part was before it came apart: readings taken as-was and remarks that tell of it. Where nothing was taken as-was, what was
 * measured since, marked as not as-was; nothing is made up.
 */
export function wasHow(shop: Shop, ask: AskOf<'wasHow'>, more: More): WasHowAnswer {
  const found = ask.part === undefined ? undefined : lookUp(shop, ask.part, more.machine, t => t.asWas.size > 0);
  const base = { kind: 'wasHow' as const, part: ask.part ?? '', ...some({ what: ask.what }) };
  if (!found) return { ...base, readings: [], notes: [] };
  const things = covered(found);
  const was = things.flatMap(t => readings(t, true, ask.what));
  const notes = more.past.remarksAbout(found.machine.key, found.ref.key).flatMap(e => e.entry.kind === 'remark' && AS_WAS.test(e.entry.text) ? [e.entry.text] : []);
  return { ...base, readings: was.length || notes.length ? was : things.flatMap(t => readings(t, false, ask.what)), notes };
}

function readings(thing: Thing, asWas: boolean, what: string | undefined): WasReading[] {
  const wanted = nameKey(what ?? '').split(' ').filter(Boolean);
  return [...(asWas ? thing.asWas : thing.asLeft)].filter(([key]) => wanted.every(w => key.split(' ').includes(w)))
    .map(([, r]) => ({ what: r.what, value: r.value, ...some({ unit: r.unit }), asWas, at: r.at, part: thing.name }));
}

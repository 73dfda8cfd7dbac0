import type { Sheet } from '../types.ts';
import { nounClasses } from '../words/nouns.ts';
import { PERSONS } from '../words/persons.ts';
import type { Clause, Thing } from './clause.ts';
import type { Cut } from './split.ts';
import { isMachine, isSource, isStuff, partLike } from './name-kinds.ts';

/** The part that a sentence is headed by ("down tube: elbow gears all good"), where what follows is said of its own pieces. A machine owns no names. */
export function headingOf(sheet: Sheet, before: Clause | undefined, cut: Cut): Thing | undefined {
  const head = before?.subj[0];
  if (!before || !head?.np || before.pred !== 'none' || before.subj.length > 1 || before.items.some(i => !i.np && !/^(mark|intj|adv|cc)$/.test(i.t))) return undefined;
  const marked = cut.join === ':' || /^(-|–|—)$/.test(before.items.at(-1)!.low) || cut.items[0]?.pause === true;
  return marked && !head.carried && !head.machine && !isMachine(sheet, head.name) && !isStuff(head.name) && !PERSONS.test(head.name) && (head.np.known || nounClasses(head.name.split(' ').at(-1)!).has('part')) ? head : undefined;
}

/** Puts the heading in front of the pieces that a clause speaks of; a side or end of it goes before its name ("drive side pitman bearing"). */
export function underHeading(sheet: Sheet, c: Clause, heading: Thing): void {
  if (c.pred === 'have' && c.who || c.verb && /^(say|want|quote|ask|charge|need|order|get|buy)$/.test(c.verb.base ?? '')) return;
  c.subj = c.subj.map(t => named(sheet, c, t, heading));
}

/** "I'll keep an eye on the knuckle": a piece that the heading has named keeps that name in the rest of the sentence. */
export function namedBefore(c: Clause, earlier: readonly Thing[]): void {
  c.obj = c.obj.map(t => (t.carried || t.np?.known ? t : { ...t, name: earlier.find(e => e.np?.name === t.name)?.name ?? t.name }));
  for (const i of c.items) if (i.np && !i.np.known && i.from >= c.from) { const e = earlier.find(x => x.np!.name === i.np!.name && x.from !== i.from); if (e) i.np = { ...i.np, name: e.name }; }
}

function named(sheet: Sheet, c: Clause, t: Thing, heading: Thing): Thing {
  const words = heading.name.split(' '), last = words.at(-1)!;
  if (t.carried || t.from < c.from || !t.np || t.np.known || t.np.stands || t.machine || t.choices || !partLike(sheet, t.name) || isStuff(t.name) || isSource(t.np) || isMachine(sheet, t.name)) return t;
  if (t.name.split(' ').some(w => w === last || w === last.replace(/s$/, ''))) return t;
  if (/(^| )(sides?|ends?)$/.test(t.name)) return { ...t, name: `${t.name} ${heading.name}` };
  return { ...t, name: `${heading.name} ${t.name}` };
}

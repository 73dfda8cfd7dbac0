import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause } from '../clauses/clause.ts';
import { paired } from './lib/rule-pair.ts';
import { phrase } from './lib/rule-phrase.ts';
import { sequence } from './lib/rule-sequence.ts';
import { awaited } from './out.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';
import { wait } from './wait.ts';

/** One thing before another: "before the spindle goes in I've got to…", "don't pour till it's polished", "can't… until". */
export const rule: Meaning = t => {
  const c = t.clause;
  if (c.asks || /\b(till|until|'til)\b/.test(lowText(t)) && dims(c.items, 'when').length) return undefined;
  if (/\b(again|another look)\b/.test(lowText(t)) && c.items.some(i => i.f?.dim === 'when' || i.f?.dim === 'span')) return undefined; // to be looked at again, whatever hangs on it
  if (/^this time\b/.test(t.clauses[t.at + 1] ? lowText(t, t.clauses[t.at + 1]!) : '')) return undefined; // "till this time tomorrow" is a day
  if (dims(c.items, 'span').length && wait(t)) return undefined; // "give it two days to go off before we fill it"
  const steps = sequence(t);
  if (steps.length) {
    const said = steps.map(s => ({ first: phrase(t, s.first, 'first'), then: phrase(t, s.then, 'then') }));
    if (said.every(s => s.first && s.then)) { for (const s of steps) (s.then as Clause & { spoken?: boolean }).spoken = true; for (const x of t.clauses) if (steps.some(s => s.then.from === x.from)) (x as Clause & { spoken?: boolean }).spoken = true; return said.map(s => ({ kind: 'rule', ...s }) as Entry); }
  }
  const pair = paired(t);
  if (!pair) return undefined;
  let first = phrase(t, pair.first, 'first');
  let then = phrase(t, pair.then, 'then');
  const other = t.memory.all().find(x => x.name !== pair.first.subj[0]?.name && x.name !== pair.first.obj[0]?.name)?.name;
  if (then && pair.then.subj.concat(pair.then.obj).every(s => s.carried) && pair.then.subj.concat(pair.then.obj).some(s => first?.endsWith(s.name)) && other) then = then.replace(pair.then.subj.concat(pair.then.obj)[0]!.name, other);
  if (first && !pair.then.subj.concat(pair.then.obj).every(s => s.carried) && pair.first.subj.concat(pair.first.obj).every(s => s.carried) && then === first && other) first = other;
  const before = t.told.findLast(x => x.entry.kind === 'job')?.entry;
  if (pair.first.who === 'that' && /^(do|finish|be)$/.test(pair.first.verb?.base ?? '') && before?.kind === 'job') first = before.part ? `${before.do} the ${before.part}` : before.do; // "not until that's done"
  if (first && then && first.endsWith(` ${then}`) && pair.first.obj[0]?.carried && pair.first.verb) first = `${pair.first.verb.base} it`; // "leave the plugs out until you've turned it over"
  if (!first || !then || first === then) return undefined;
  for (const x of [pair.first, pair.then]) (x as Clause & { spoken?: boolean }).spoken = true;
  return [{ kind: 'rule', first, then } as Entry, ...alsoFirst(t, pair.first, then), ...awaited(t, pair.first)];
};

/** "…till the ways have been scraped and the oil grooves cut": what else is waited for goes on after the "and" with a thing of its own. */
function alsoFirst(t: Telling, first: Clause, then: string): Entry[] {
  const k = t.clauses.indexOf(first), c = k < t.at ? undefined : t.clauses[k + 1];
  if (!c || k < 0 || !/^(till|until|'til|before)$/.test(first.sub ?? '') || c.join !== 'and' || c.sub || c.asks || c.neg || !c.subj.length || c.subj.some(s => s.carried) || !(c.passive || c.pred === 'none' && c.items.some(i => i.t === 'prt'))) return [];
  const said = phrase(t, { ...c, passive: c.passive }, 'first');
  if (!said || said === then) return [];
  (c as Clause & { spoken?: boolean }).spoken = true;
  return [{ kind: 'rule', first: said, then } as Entry];
}

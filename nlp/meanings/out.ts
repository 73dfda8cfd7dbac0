import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause } from '../clauses/clause.ts';
import { isMachine, partLike } from '../clauses/name-kinds.ts';
import { nounClasses } from '../words/nouns.ts';
import { isClass, verbForms } from '../words/verbs.ts';
import { dayIn } from './lib/day.ts';
import { trim } from './lib/fields.ts';
import { moneyClause, sumsIn } from './lib/money.ts';
import { spanForward } from './lib/reach.ts';
import { bareSeller } from './lib/sellers.ts';
import { heldBy } from './out/held.ts';
import { POSTED, target } from './out/place.ts';
import { purpose } from './out/purpose.ts';
import { tells } from './out/tells.ts';
import { CONDITION } from '../words/conditions.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

/** A part that has left the shop for work: where, what for, until when. */
export const out: Meaning = t => {
  const c = t.clause;
  if (/\bon (back ?)?order\b/.test(lowText(t))) return undefined; // "on order with the spray depot"
  if (c.neg || c.asks || c.reality !== 'deed' && !(c.reality === 'plan' && inHand(t, c)) || c.sub && /^(if|unless|when|before|that)$/.test(c.sub) && !(c.sub === 'until')) return undefined;
  const kept = heldBy(t, c);
  if (kept) return kept;
  const base = c.verb?.base ?? '';
  if (c.verb?.form === 'ing' && !c.passive && c.items.some(i => i.f?.dim === 'when' && !i.f.value.vague && (i.f.value.from ?? '') > t.sheet.ctx.at.slice(0, 10)) && !/\b(till|until|by|back)\b/.test(lowText(t))) return undefined; // "I'm bringing it in to the electrician Monday week" is yet to be
  if (base === 'go' && (c.verb!.form === 'ing' || c.verb!.form === 's') || dims(c.items, 'measure').length && !/^(send|ship|take|post)$/.test(base)) return undefined; // "is going to the shop on Monday" is yet to be
  const bareSent = c.verb !== undefined && /^(past|part)$/.test(c.verb.form ?? '') && /^(send|ship|post|mail|take|drop|give|courier|deliver|cart|hand)$/.test(base) && !c.who && !c.obj.length && c.subj.length > 0; // "blade sent to the saw doctor"
  const passive = c.passive || bareSent || c.verb?.base === 'leave' && c.subj.length > 0 && !c.who || c.pred === 'be' || c.pred === 'none' || /^(go|come)$/.test(base);
  const things = (passive || /^(i|we)$/.test(c.who ?? '') && !c.obj.length && c.subj.some(s => !s.carried) ? c.subj : c.obj).filter(s => s.name && !isMachine(t.sheet, s.name) && partLike(t.sheet, s.name) && !(nounClasses(s.name).has('tool') && !nounClasses(s.name).has('part') && !s.np?.known));
  const n = t.clauses[t.at + 1];
  if (moneyClause(t, c) || c.pred === 'none' && dims(c.items, 'number').length || n?.join === ':' && moneyClause(t, n)) return undefined;
  if (/\bon (back )?order\b/.test(lowText(t))) return undefined;
  if (!things.length || c.verb?.form === 'base' && !/^(put|set)$/.test(base)) return undefined;
  const place = target(t, c);
  const sent = /^(send|ship|post|mail|freight|courier)$/.test(base) && (place !== undefined || /\b(off|out|away|in)\b/.test(c.prt.join(' ')));
  const taken = /^(take|drop|run|drive|bring|hand|carry|deliver|leave|give|haul|go|be|cart|tow|trailer|lug|chuck|stick|pop|put)$/.test(base) && place !== undefined && (!/^(chuck|stick|pop|put)$/.test(base) || POSTED.test(lowText(t)))
    || /^(take|run|drive|carry|haul|cart|tow|lug)$/.test(base) && !c.passive && /\b(in|off|away|over|down|up)\b/.test(c.prt.join(' ')) && purpose(c) !== undefined && !/\bto (get|have) (it|them) (on|off|out|in)\b/.test(lowText(t));
  const away = !c.verb && !c.rest.some((i, k) => i.t === 'adj' && CONDITION.has(i.low) && !/^(away|gone|out|off)$/.test(i.low) && c.rest[k + 1]?.low === 'at') && (c.pred === 'be' || c.pred === 'none') && place !== undefined && /\b(at|with|over at|away at|off at|in at|out at|out|down at|up at|gone to|still at|over to|away to|off to|down to|out to|up to|in the (post|mail) to|on (its|their|the) way to|in)\b/.test(lowText(t)) && !/\bback from\b/.test(lowText(t));
  const bare = !c.verb && c.pred === 'none' && place !== undefined && c.items.findIndex(i => i.low === 'to') === c.items.findIndex(i => i.from >= (c.subj.at(-1)?.to ?? 0));
  const unnamed = !c.verb && (c.pred === 'be' || c.pred === 'none') && /\b(away|gone|out|off|in) (for|to be|being|getting|at the)(?! the (week|day|night))\b/.test(lowText(t)) && purpose(c) !== undefined || base === 'go' && /^(past|part)$/.test(c.verb!.form ?? '') && /\b(off|away|out|in) (for|to be|to get)\b/.test(lowText(t)) && purpose(c) !== undefined; // "the crank's away for grinding", "the shafts have gone off to be sprayed"
  const treated = c.passive && /^(past|part)$/.test(c.verb?.form ?? '') && (isClass(base, 'work') || /ed$/.test(c.verb!.low) && !verbForms(c.verb!.low).length) && place !== undefined && /\b(went|gone|gone off|is|'s|are) (?:\S+ )?(?:to (?:be|get|have)|getting|being)\b/.test(lowText(t)); // "went to get hot-tanked at the rebuilder's"
  if (!sent && !taken && !away && !bare && !unnamed && !treated) return undefined;
  const end = spanForward(t, n => tells(t, n), 3);
  const reach = t.clauses.slice(t.at, end + 1);
  const where = place ?? bareSeller(t, reach.map((r, n) => (n === 0 ? { ...r, items: r.items.slice(Math.max(r.vi, 0) + 1) } : r)));
  const until = reach.map((r, n) => (n === 0 && dated(t, r) || /\b(could|might|may) (well )?be\b/.test(lowText(t, r)) ? undefined : dayIn(t, r, true))).find(Boolean);
  const act = treated ? base : reach.map(r => purpose(r)).find(Boolean);
  const asked = reach.slice(1).find(r => moneyClause(t, r));
  const price = asked && sumsIn(t, asked.from, asked.to, false).price;
  return [...things.map(s => trim({ kind: 'out', part: s.name, where, until, do: act }) as Entry), ...(price !== undefined ? [trim({ kind: 'quote', item: things[0]!.name, source: place, price }) as Entry] : [])];
};

/** "is getting recored in town": done to it now, away from here. */
const inHand = (t: Telling, c: Clause): boolean => c.passive && /\b(is|are|'s|'re) (still |now |currently )?(getting|being)\b/.test(lowText(t)) && (!dims(c.items, 'when').length || /\b(ready|back|due|by|till|until|since)\b/.test(lowText(t)));

/** "left it at the machine shop on Monday": the day it went, not the day it comes back. */
export const dated = (t: Telling, c: Clause): boolean => dims(c.items, 'span').length > 0 && /\b(been|had|since)\b/.test(lowText(t, c)) || /^(past|part)$/.test(c.verb?.form ?? '') && !/\b(till|until|back|ready|by|due|for (?=the \d|end|mon|tue|wed|thu|fri|sat|sun|next|this|tomorrow)|promised|done|expect\w*|says?|said|reckons?|in (a|\w+) (days?|weeks?|months?))\b/.test(lowText(t, c)) && dims(c.items, 'when').length > 0;

/** "…until the king bolt's back from the blacksmith": what is awaited from there is out. */
export function awaited(t: Telling, c: Clause): Entry[] {
  const k = c.items.findIndex((i, n) => i.low === 'back' && c.items[n + 1]?.low === 'from' && c.items[n + 2]?.np);
  const part = c.subj[0]?.name;
  if (k < 0 || !part) return [];
  const place = target(t, { ...c, items: c.items.map(i => (i.low === 'from' ? { ...i, low: 'to' } : i)) });
  if (!place) return [];
  const after = t.clauses[t.clauses.indexOf(c) + 1];
  const until = dayIn(t, c, true) ?? (after && tells(t, after) ? dayIn(t, after, true) : undefined);
  if (after && tells(t, after)) (after as Clause & { spoken?: boolean }).spoken = true;
  return [trim({ kind: 'out', part, where: place, until }) as Entry];
}


import { actOf } from './act.ts';
import type { Odds } from './likely/odds.ts';
import { asThat } from './meanings/job/as-that.ts';
import type { Telling } from './meanings/telling.ts';
import { isFastener } from './meanings/lib/fields.ts';
import { NAMED } from './words/quantities.ts';
import { isClass } from './words/verbs.ts';

/**
 * Whether a meaning that gives these kinds need not be asked of a clause: the odds (one for each clause of the note; none where they have no say) speak plainly against
 * them, and it does not go on about something said before in words that tell no kind by themselves.
 */
export const silenced = (t: Telling, kinds: readonly string[], odds: readonly (Odds | undefined)[]): boolean =>
  (odds[t.at]?.against(kinds) ?? false) && t.clause.join !== ':' && !goesOn(t, kinds);

/** Figures, prices and goods are often told in a row, the later ones without a word of what they are ("fronts 28, rears 12"); a deal answers a price heard before. */
function goesOn(t: Telling, kinds: readonly string[]): boolean {
  const last = t.told.at(-1);
  if (last && ROWS.test(last.entry.kind) && kinds.includes(last.entry.kind) && t.clauses.slice(Math.max(0, t.at - 2), t.at).includes(last.clause)) return true;
  if (last?.entry.kind === 'finding' && kinds.includes('finding') && last.clause === t.clauses[t.at - 1] && t.clause.join === ',' && (t.clause.items.length <= 4 || [...t.clause.subj, ...t.clause.obj].every(x => x.carried))) return true; // "…, no ridge", "…, it's got to be replaced"
  if (kinds.includes('reading') && NAMED.test(t.clauses[t.at - 1]?.subj.at(-1)?.name.split(' ').at(-1) ?? '')) return true; // "runout on the shaft: I get seven thou"
  if (last?.entry.kind === 'fit' && last.entry.state === 'tried' && kinds.includes('fit')) return true; // "…, then off again"
  if (last?.entry.kind === 'fit' && kinds.includes('fit') && t.clause.subj.length > 0 && t.clause.subj.every(x => isFastener(x.name))) return true; // "plates are on but the bolts are only finger tight"
  if (kinds.includes('fit') && isClass(t.clause.verb?.base ?? '', 'tight') && t.clause.items.some(i => i.f?.dim === 'measure')) return true; // "on, and torqued to 60" tightens what is on
  if (t.clauses.length === 1 && kinds.includes('amend') && actOf(t.sheet, [], []) === 'undo') return true; // "scratch that", whatever went before
  if (kinds.includes('job') && last && /^(work|job)$/.test(last.entry.kind) && asThat(t)) return true; // "I'll do the right one tomorrow"
  if (t.clauses.length === 1 && kinds.includes('job') && bids(t) || kinds.includes('fit') && takenOff(t)) return true;
  return kinds.some(k => /^(order|bought|arrival)$/.test(k)) && t.prior.some(e => /^(quote|order|out)$/.test(e.kind));
}

/** "took the splunge off", all by itself: what the shop calls its parts is the shop's own affair. */
export const takenOff = ({ clause: c, clauses }: Telling): boolean => clauses.length === 1 && /^(past|part)$/.test(c.verb?.form ?? '') && isClass(c.verb!.base!, 'off') && c.prt.includes('off') && c.obj.length > 0 && !c.neg && !c.asks && c.reality === 'deed';

/** Kinds that are told in rows. */
const ROWS = /^(reading|quote|order|bought|want|hours|weather|amend)$/;

/** "take the head off": an order to oneself, which a note may be all by itself, as may be what must be done: "need to paint the pump". */
export const bids = ({ clause: c, clauses }: Telling): boolean => clauses.length === 1 && c.reality === 'must' || c.verb?.form === 'base' && c.obj.length > 0 && c.items.find(i => !/^(mark|cc|adv|intj)$/.test(i.t)) === c.verb;

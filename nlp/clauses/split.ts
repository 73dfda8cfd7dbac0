import { withoutIntroductions } from './introduced.ts';
import type { Item } from './items.ts';
import { withoutLead, withoutWith } from './lead.ts';
import { opensAfter, opensSub } from './joined.ts';
import { finite, hasPredicate, isSubjectPronoun, last } from './predicate.ts';
import { opensQuestion } from './question-order.ts';
import { plainOrder, withoutRelatives } from './reorder.ts';
import { opensAfterBreath, opensHere } from './run-on.ts';
import { straightened } from './straightened.ts';
import { toDo } from './to-do.ts';
import { whatIDid } from './what-i-did.ts';

/** A clause's items, with the word that joins it to what went before and the subordinator that opens it. */
export interface Cut { items: Item[]; join?: string; sub?: string; /** The conjunction itself. */ cc?: Item; /** Opens with a question's own word order. */ asks?: boolean }

/** How strongly what was learned must say that a clause begins where no rule sees one, and that none does where a rule of run-on speech sees one (log odds). */
const BEGINS = 1, GOES_ON = -1;

/**
 * Cuts a sentence into clauses, with or without its commas: at conjunctions that a verb or a new subject follows, at subordinators, and in run-on
 * speech where a clause that has its verb is followed by a new subject with a verb of its own, or by a new verb; and where what was learned is sure of it
 * (`begins`: log odds that a clause begins at a token).
 */
export function splitClauses(items: readonly Item[], begins?: (token: number) => number): Cut[] {
  const out: Cut[] = [];
  items = plainOrder(straightened(withoutRelatives(withoutWith(withoutLead(withoutIntroductions(whatIDid(toDo(items))))))));
  let cur: Cut = { items: [] };
  const close = (next: Cut): void => { if (says(cur.items)) out.push(cur); else if (cur.join && !next.join) next.join = cur.join; cur = next; };
  for (let k = 0; k < items.length; k++) {
    const it = items[k]!;
    const asks = opensQuestion(items, k, cur.items);
    const before = cur.items.findLast(x => x.t !== 'adv');
    if ((asks || it.t === 'do' && items[k + 1]?.np) && (it.t === 'do' || it.t === 'modal' || it.t === 'be') && before?.t === 'verb' && /^(see|check|find|wonder|ask|know)$/.test(before.base ?? '')) { close({ items: [], sub: 'if' }); cur.items.push(it); continue; } // "to see does it clear"
    if (asks) { close({ items: [], asks: true, ...(joinBefore(cur) ? { join: joinBefore(cur)! } : {}) }); cur.items.push(it); continue; }
    if (it.low === 'that' && it.t === 'sub' && /^(note|notice|find|see|discover|observe|confirm|establish|record|report)$/.test(last(cur.items)?.base ?? '') && !cur.items.some(x => x.t === 'modal' || x.t === 'neg' || x.t === 'do') && opensSub(items, k)) { close({ items: [] }); continue; } // what was found to be so is so
    if (it.t === 'sub' && opensSub(items, k)) { close({ items: [], sub: it.low }); continue; }
    if (it.low === 'when' && cur.items.some(x => x.np) && isSubjectPronoun(items[k + 1]) && finite(items[k + 2])) { close({ items: [], sub: it.low }); continue; }
    if (it.low === 'where' && items.slice(k + 1, k + 3).some(x => x.np && /\b(book|manual|spec)$/.test(x.np.said))) { close({ items: [], sub: it.low }); continue; }
    if (it.t === 'wh' && hasPredicate(cur.items) && !/^(how|what)$/.test(it.low)) { close({ items: [], sub: it.low }); continue; }
    if (it.t === 'cc') {
      if (it.low === 'so' && items[k + 1]?.low === 'much') { cur.items.push(it); continue; } // "nobody so much as breathes on it"
      if (it.low === 'so' || opensAfter(items, k + 1, cur.items)) { close({ items: [], join: it.low, cc: it }); continue; }
    } else if (it.t === 'mark' && /^[,:;—–-]+$|^\.{2,}$|^…$|^\($|^\)$/.test(it.low)) {
      if (it.low === ':' || opensAfter(items, k + 1, cur.items)) { cur.items.push(it); close({ items: [], join: it.low }); continue; }
    } else {
      const learned = begins?.(it.from) ?? 0;
      if (learned > GOES_ON && (opensHere(items, k, cur.items) || it.pause && opensAfterBreath(items, k, cur.items))) close({ items: [] });
      else if (learned > BEGINS && mayEnd(cur.items) && !isFronted(cur.items, it) && it.low !== 'no' && it.np?.quant !== 'no') {
        const join = joinBefore(cur);
        if (join) cur.items.pop();
        close({ items: [], ...(join ? { join } : {}) });
      }
    }
    if (it.t === 'wh' && !says(cur.items) && !cur.asks) cur.sub ??= it.low;
    cur.items.push(it);
  }
  close({ items: [] });
  return out.flatMap((c, k) => (k > 0 && goesWith(out[k - 1]!, c, out[k + 1]) ? [] : out[k + 1] && goesWith(c, out[k + 1]!, out[k + 2]) ? [{ ...c, items: [...c.items, out[k + 1]!.cc!, ...out[k + 1]!.items] }] : [c]));
}

/** "primed the hood and the grille with grey epoxy | leave it…": what stands between "and" and where run-on speech turns to something new, and has no verb of its own, is the rest of what went before. */
const goesWith = (before: Cut, c: Cut, after: Cut | undefined): boolean => c.join === 'and' && c.cc !== undefined && c.items[0]?.np !== undefined && c.items.every(i => i.np || /^(prep|prt|adv)$/.test(i.t)) && !hasPredicate(c.items)
  && before.items.at(-1)?.np !== undefined && before.items.some(i => i.t === 'verb') && after !== undefined && after.join === undefined && after.sub === undefined && !after.asks;

/** Whether there is more than marks and words that join. */
const says = (items: readonly Item[]): boolean => items.some(i => i.t !== 'mark' && i.t !== 'intj' && i.t !== 'cc');

/** Whether a clause may end with what it has so far: not in the midst of "she's had" or "make sure the dowels are in". */
const mayEnd = (items: readonly Item[]): boolean => says(items) && !isSubjectPronoun(items.at(-1)) && items.at(-1)!.low !== 'sure';

/** "A hundred and sixty they had off me": a figure put in front of who asked it. */
const isFronted = (items: readonly Item[], next: Item): boolean => items.length === 1 && items[0]!.f !== undefined && /^(they|he|she)$/.test(next.low);

const joinBefore = (cur: Cut): string | undefined => (cur.items.at(-1)?.t === 'cc' ? cur.items.at(-1)!.low : undefined);

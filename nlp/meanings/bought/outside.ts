import type { Entry } from '../../../domain/model/entry.ts';
import { isClass } from '../../words/verbs.ts';
import { sourceIn, trim } from '../lib/fields.ts';
import { isSeller } from '../lib/goods.ts';
import { sumsIn } from '../lib/money.ts';
import { lowText, type Telling } from '../telling.ts';
import { work } from '../work.ts';
import { whence } from './came-back.ts';

/** Words for what a shop did rather than for a thing it sold. */
export const LABOUR = /^(trouble|pains|labou?r|work|job|time|effort|service|services|favou?r|repair|repairs|rebore|reline|relining|regrind|regrinding|rewind|rewinding|recore|rebuild|rebuilding|reconditioning|refurb|overhaul|welding|machining|plating|chroming|casting work|balancing|grinding|skim|skimming|boring|honing|sleeving|metalling|remetalling|babbitting|galvanising|galvanizing|blasting|turning|fitting|metal spraying|tempering|hardening)$/;

/** "I paid the 210": outside work just come back, from where it was; without the name of a part, of what is spoken of. */
export function outside(t: Telling, price: number | undefined, to?: string): Entry[] | undefined {
  const seen = [...t.prior, ...t.told.map(x => x.entry)];
  const back = seen.findLast(e => e.kind === 'arrival' || e.kind === 'out') ?? seen.findLast(e => e.kind === 'work');
  const item = back ? ('item' in back ? back.item : 'part' in back ? back.part : undefined) : t.memory.topic()?.name;
  const gone = seen.findLast(e => e.kind === 'out' && (!item || e.part === item));
  const here = t.clauses.slice(0, t.at).map(x => sourceIn(t.sheet, x.items)?.source).findLast(Boolean);
  return item && !isSeller(item) && price !== undefined ? [trim({ kind: 'bought', item, source: to ?? (gone?.kind === 'out' ? gone.where : undefined) ?? here ?? whence(t, item), price }) as Entry] : undefined;
}

/** "He rewound it, sixty quid", "a hundred and sixty they had off me": what a shop's own work cost, said after it. */
export function charged(t: Telling): Entry[] | undefined {
  const c = t.clause, prev = t.clauses[t.at - 1], last = t.told.at(-1);
  if (/\b(they|he|she) (had|took|charged|stung|rushed|wanted|relieved|got|screwed|skinned|billed|did)( me)?( of)?( off| out of)?( me)?\b/.test(lowText(t)) && t.sheet.found.some(f => (f.dim === 'money' || f.dim === 'number') && f.from === c.from)) return outside(t, sumsIn(t, c.from, c.to, true).price);
  if (/\b(invoice|bill|account)\b.*\b(settled|paid|cleared)\b|\b(settled|paid|cleared) (the|his|their|her) (invoice|bill|account)\b/.test(lowText(t)) && sumsIn(t, c.from, c.to, true).price !== undefined) return outside(t, sumsIn(t, c.from, c.to, true).price);
  if (c.verb || c.pred !== 'none' || !prev || !/^(he|they|she|person)$/.test(prev.who ?? '') || last?.clause !== prev || last.entry.kind !== 'work' || !c.items.some(i => i.f?.dim === 'money') || c.items.some(i => i.np)) return undefined;
  return outside(t, sumsIn(t, c.from, c.to, true).price);
}

/** His work, and its price beside it: "he rewound it for sixty". */
export function theirWork(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (!/^(he|they|she|person)$/.test(c.who ?? '') || !isClass(c.verb?.base ?? '', 'work') || !c.items.some(i => i.f?.dim === 'money')) return undefined;
  const did = work(t);
  const paid = outside(t, sumsIn(t, c.from, c.to, true).price);
  return did?.length && paid ? [...did, ...paid.map(p => ({ ...p, item: (did[0] as { part: string }).part }) as Entry)] : undefined;
}

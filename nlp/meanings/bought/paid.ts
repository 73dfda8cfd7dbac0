import { dims, type Clause } from '../../clauses/clause.ts';
import { isSeller } from '../lib/goods.ts';
import { lowText, type Telling } from '../telling.ts';
import { LABOUR } from './outside.ts';

/** "paid", "gave him twenty for", "handed over", "shelled out": money that left the pocket. `money`: whether a sum is told with it. */
export function paysOut(t: Telling, c: Clause, money: boolean): boolean {
  const base = c.verb?.base ?? '', text = lowText(t);
  const ended = /\b(ended|wound|finished) up (paying|giving|forking|shelling|costing me)\b/.test(text);
  if (!ended && /^(base|ing)$/.test(c.verb?.form ?? 'base') && c.verb?.low !== 'put') return false;
  if (base === 'pay' || ended) return true;
  if (!/\b(for|on)\b/.test(text) || !money && !c.items.some((i, k) => i.f?.dim === 'number' && /^(for|on)$/.test(c.items[k + 1]?.low ?? ''))) return false;
  return base === 'give' && (c.obj.some(o => isSeller(o.name)) || /\bgave (him|her|them|the \S+( \S+)?) /.test(text)) || base === 'hand' && /\bover\b/.test(text) || /^(shell|fork|stump|cough|splash|lay|part|dish)$/.test(base) && /\b(out|over|up|with|down)\b/.test(text);
}

/** "cost me 165", "set me back forty", "the shop charged 120 for the rebore", "that belt cost nine dollars": what was asked and paid. `money` as above. */
export function costs(t: Telling, c: Clause, money: boolean): boolean {
  const base = c.verb?.base ?? '', text = lowText(t), me = /\b(me|us)\b/.test(text);
  if (!money && !dims(c.items, 'number').length || /\b(last (time|year)|years ago|back then|used to be|in (19|20)\d\d)\b/.test(text)) return false;
  if (me && (base === 'cost' || (base === 'set' || c.verb?.low === 'set') && /\bback\b/.test(text) || /^(rush|sting|charge|skin|bill|invoice|relieve)$/.test(base))) return true;
  if (/^(bill|invoice|total|damage|job|labou?r|tab|account)$/.test(c.subj[0]?.np?.said ?? '') || LABOUR.test(c.subj[0]?.np?.said ?? '')) return /^(come|run|be)$/.test(c.verb?.base ?? (c.pred === 'be' ? 'be' : '')) && c.items.some(i => /^(was|were|came|ran)$/.test(i.low));
  const past = /^(past|part)$/.test(c.verb?.form ?? '') && !c.items.some(i => /^(would|could|used)$/.test(i.low));
  return past && (base === 'cost' && c.subj.some(s => !s.carried && !isSeller(s.name)) && !/\b(new|when|originally|back then|in nineteen)\b/.test(text) || /^(charge|bill|invoice)$/.test(base) && /\bfor\b/.test(text));
}

/** "Paid the magneto man 120 for it": the seller, where he is named as who got the money. */
export const paidTo = (c: Clause): string | undefined => c.obj.find(o => isSeller(o.name))?.name;

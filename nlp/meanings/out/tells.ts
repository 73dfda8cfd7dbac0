import type { Clause } from '../../clauses/clause.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { isClass } from '../../words/verbs.ts';
import { dayIn } from '../lib/day.ts';
import { moneyClause } from '../lib/money.ts';
import { lowText, type Telling } from '../telling.ts';
import { purpose } from './purpose.ts';

/** A clause that goes on about what is out: what is done to it, when it comes back. */
export function tells(t: Telling, c: Clause): boolean {
  if (c.asks) return false;
  const text = lowText(t, c);
  if (/^(and )?(he|she|they|the man) (swears|says|said|reckons|promised|promises|figures|thinks|tells me|told me|swore)( that)?$/.test(text)) return true;
  if (c.reality === 'plan' && /^(he|she|they|person)$/.test(c.who ?? '') && c.verb && isClass(c.verb.base!, 'work') && (!c.obj.length || c.obj.some(o => o.carried))) return true;
  if (c.pred === 'none' && !c.subj.some(s => !s.carried) && moneyClause(t, c) && c.items.every(i => !i.np)) return true;
  if (/\b(he|they|she|man|shop) (says?|said|reckons?|promised|figures?)\b|\b(says|said|saying|reckons|promised)\b/.test(text) && dayIn(t, c, true) !== undefined && !c.subj.some(s => !s.carried && partLike(t.sheet, s.name))) return true;
  if (c.pred === 'none' && !c.subj.some(s => !s.carried) && dayIn(t, c, true) !== undefined && (/\bback\b/.test(text) || c.items.filter(i => i.t !== 'mark').every(i => i.f || i.t === 'adv' || i.t === 'prep' || i.t === 'cc' || i.t === 'det'))) return true;
  if (/^(could|might|may|should|ought to) (well |easily )?be \S+ (days?|weeks?|months?|fortnight)( yet| though)?$|^(could|might|should) be (a )?(fortnight|week|month)$/.test(text)) return true;
  return /^(and |but |so |is (?=expected|due|promised|back|ready)|he |he's |hes |hell |he'll |says |she |they |it |which |should |supposed |says? |said |back |due |ready |for |to |will |'ll |i get |i'll |promised |reckons? |call |expected |fingers |the man |be )/.test(`${text} `) && (dayIn(t, c, true) !== undefined || purpose(c) !== undefined || /\b(back|ready|says|said)\b/.test(text)) && !/\b(arrived|came)\b/.test(text) && !(/^(i|we)$/.test(c.who ?? '') && !/get (it|them) back|have (it|them) back/.test(text)) && !c.subj.some(s => !s.carried && !/^(they|he|she|it|person)$/.test(c.who ?? ''));
}

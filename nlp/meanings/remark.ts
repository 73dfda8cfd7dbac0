import type { Entry } from '../../domain/model/entry.ts';
import type { Clause } from '../clauses/clause.ts';
import type { Placed } from '../clauses/clauses.ts';
import { isTradeWord, nounClasses } from '../words/nouns.ts';
import { lowText, clauseText, type Meaning, type Telling } from './telling.ts';

/** Statements worth keeping that give no other entry: what is not so, what may be, what was only meant or heard about the machine. */
export const remark: Meaning = t => {
  const c = t.clause;
  if (c.asks || /^(which|who|that|than|so|how|what|where)$/.test(c.sub ?? '') || c.join === 'so') return undefined;
  if (t.told.some(x => x.rule !== 'remark' && (x.clause as Placed).sentence === (c as Placed).sentence)) return undefined;
  return worth(t, c) ? [{ kind: 'remark', text: clauseText(t) } as Entry] : undefined;
};

function worth(t: Telling, c: Clause): boolean {
  if (c.neg && c.reality === 'deed' && c.verb && c.pred === 'verb' && /^(i|we)?$/.test(c.who ?? '') && c.verb.form !== 'ing') return false;
  if (!c.verb && c.pred !== 'be' && c.pred !== 'have') return c.items.some(i => i.low === 'no' || i.np?.quant === 'no') && shopTalk(t, c);
  return shopTalk(t, c);
}

/** Whether a clause speaks of the shop's things at all, by name or by a pronoun for one. */
export function shopTalk(t: Telling, c: Clause): boolean {
  const named = c.items.some(i => i.np && (i.np.known || nounClasses(i.np.said).size > 0 && !onlyPlace(i.np.said) || nounClasses(i.np.said.split(' ').at(-1)!).has('part')));
  if (named) return true;
  return c.items.some(i => i.t === 'pron' && /^(it|them|they|that|those|one)$/.test(i.low)) && c.subj.concat(c.obj).some(s => s.carried && isTradeWord(s.name.split(' ').at(-1)!)) && /(not|n't|if|would|should|could|might|never|book|says?)/.test(lowText(t));
}
const onlyPlace = (said: string): boolean => { const k = nounClasses(said); return k.size > 0 && [...k].every(x => x === 'place' || x === 'source' || x === 'tool'); };

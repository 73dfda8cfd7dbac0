import type { Entry } from '../../domain/model/entry.ts';
import type { Clause } from '../clauses/clause.ts';
import { isTradeWord, nounClasses } from '../words/nouns.ts';
import { PERSONS } from '../words/persons.ts';
import { DURATION, FAMILIES } from './lib/remarkable.ts';
import { lowText, type Telling } from './telling.ts';

/**
 * One remark for a run of clauses that gave no entry, or none: what is worth keeping says something of the shop's things that is not plainly so (a doubt, a
 * condition, a wish, another's word, regret), or something so that no kind holds (a trial run, time without a measure, how it lay before it came apart).
 * Everything else that was not read stays unread: jokes, moods and plain negations are no remarks. `beside`: the sentence gave an entry already, so that
 * only what is said outright counts.
 */
export function remark(run: readonly Telling[], beside: boolean): Entry | undefined {
  const first = run[0]!;
  const { sheet } = first;
  const lead = first.clause, from = lead.sub && sheet.tokens[lead.from - 1]?.low === lead.sub ? lead.from - 1 : lead.from, to = run.at(-1)!.clause.to;
  const text = sheet.text.slice(sheet.tokens[from]!.start, sheet.tokens[to - 1]!.end).trim();
  if (!text || run.some(t => t.clause.reality === 'past plan' && !/\b(should|could|ought|wish)\b/.test(lowText(t)))) return undefined;
  const low = run.map(t => `${t.clause.sub ? `${t.clause.sub} ` : ''}${lowText(t)}`).join(' , ').toLowerCase();
  const shop = run.some(t => shopTalk(t.clause)), carried = run.some(t => partCarried(t.clause));
  const family = FAMILIES.find(f => f.says.test(low) && (!f.not || !f.not.test(low)) && (!beside || f.beside) && (f.about === 'anything' || shop || f.about === 'it' && carried));
  if (family) return { kind: 'remark', text } as Entry;
  if (beside || DURATION.test(low)) return undefined;
  if (supposed(run) && (shop || carried)) return { kind: 'remark', text } as Entry;
  return shop && HEARSAY.test(low) && !SKY.test(low) && (run[0]!.clause.who === 'person' || PERSONS.test(low) || /^(\w+ )?(he|they|she|someone|somebody|everybody|everyone)\b/.test(low)) ? { kind: 'remark', text } as Entry : undefined;
}

const HEARSAY = /\b(says?|saying|said|told|tells|claims?|claimed|reckons?|reckoned|swears?|swore|maintains?|maintained|insists?|insisted|figures|thinks|believes|warned|warns|apparently)\b/;
const SKY = /\b(rain|snow|frost|wind|dry|hot|weather|forecast)\b/;

/** "if the barrel is out of round I will need…": a statement held to a condition, not one that goes to see whether it is so. */
const supposed = (run: readonly Telling[]): boolean => run.some((t, k) => {
  const c = t.clause;
  if (!/^(if|unless)$/.test(c.sub ?? '') && !(c.reality === 'cond' && c.sub === undefined && c.join !== 'so') || /^(see|check|know|find|ask|tell|wonder|look|test)\b/.test(run[k - 1]?.clause.verb?.base ?? t.clauses[t.at - 1]?.items.at(-1)?.base ?? '')) return false;
  return run.length === 1 && c.sub === undefined || run.some(o => o !== t && o.clause.pred !== 'none') || run.length === 1 && c.pred !== 'none' && c.items.length > 4;
});

/** Whether a clause speaks of the shop's things by name. */
const shopTalk = (c: Clause): boolean => c.items.some(i => i.np && (i.np.known || ofTrade(i.np.said)));
/** "it", "them" that stand for a part. */
const partCarried = (c: Clause): boolean => c.subj.concat(c.obj).some(s => s.carried && isTradeWord(s.name.split(' ').at(-1)!));

const ofTrade = (said: string): boolean => {
  const head = nounClasses(said.split(' ').at(-1)!), k = nounClasses(said).size ? nounClasses(said) : head;
  return k.size > 0 && ![...k].every(x => x === 'place' || x === 'source' || x === 'quantity') || head.has('part') || head.has('machine');
};

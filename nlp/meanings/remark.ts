import type { Entry } from '../../domain/model/entry.ts';
import type { Clause } from '../clauses/clause.ts';
import { isTradeWord, nounClasses } from '../words/nouns.ts';
import { lowText, type Telling } from './telling.ts';

/** The marks of a statement that is worth keeping though it says nothing that is so: doubt, wish, duty, hearsay about the machine. */
const UNREAL = /\b(if|unless|should|would|could|might|maybe|perhaps|wish|hope|not sure|don't know|doubt|think|wonder|supposed|book|manual|says|said|told|reckons?|going to|gonna|need|ought|'d like|forgot|remember|keep thinking|swear|probably|seems?)\b/;

/** One remark for a sentence whose clauses gave no entry, or none when it is chatter or a plain negation. */
export function remark(sentence: readonly Telling[]): Entry | undefined {
  const first = sentence[0]!;
  const { sheet } = first;
  const lead = sentence[0]!.clause, from = lead.sub && sheet.tokens[lead.from - 1]?.low === lead.sub ? lead.from - 1 : lead.from, to = sentence.at(-1)!.clause.to;
  const text = sheet.text.slice(sheet.tokens[from]!.start, sheet.tokens[to - 1]!.end).trim();
  const low = sentence.map(t => `${t.clause.sub ? `${t.clause.sub} ` : ''}${lowText(t)}`).join(' , ');
  if (sentence.some(t => t.clause.verb?.base === 'think' && t.clause.verb.form === 'past')) return undefined;
  if (sentence.every(t => denied(t.clause)) || !sentence.some(t => worth(t.clause, low))) return undefined;
  return text ? { kind: 'remark', text } as Entry : undefined;
}

/** "didn't order it", "thermostat housing isn't": said not to be so, and no more. */
const denied = (c: Clause): boolean => c.reality === 'past plan' || c.items.length > 1 && c.items.find(i => i.t !== 'cc' && i.t !== 'mark' && i.t !== 'adv')?.np?.quant === 'no' && c.pred === 'none' || /^no\b/.test(c.items[0]?.low ?? '') && c.pred === 'none' || c.neg && c.reality === 'deed' && (c.pred === 'be' && c.rest.length === 0 || c.pred === 'verb' && c.verb?.form !== 'ing');

function worth(c: Clause, low: string): boolean {
  if (!c.verb && c.pred === 'none') return c.items.some(i => i.low === 'no' || i.np?.quant === 'no') && shopTalk(c, low);
  return shopTalk(c, low);
}

/** Whether a clause speaks of the shop's things, by name or, where the sentence is in doubt about something, by a pronoun. */
function shopTalk(c: Clause, low: string): boolean {
  if (c.items.some(i => i.np && (i.np.known || named(i.np.said)))) return true;
  if (/\b(book|manual|spec|data sheet)\b.*\b(says?|calls?|gives?|reckons?)\b/.test(low)) return true;
  return UNREAL.test(low) && c.subj.concat(c.obj).some(s => s.carried && isTradeWord(s.name.split(' ').at(-1)!));
}

const named = (said: string): boolean => {
  const k = nounClasses(said), head = nounClasses(said.split(' ').at(-1)!);
  return k.size > 0 && ![...k].every(x => x === 'place' || x === 'source' || x === 'tool') || head.has('part');
};

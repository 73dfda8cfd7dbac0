import type { Clause } from '../../clauses/clause.ts';
import { bare } from '../../clauses/as-said.ts';
import { isPlaceNoun, isSource, isStuff } from '../../clauses/name-kinds.ts';
import { isKnownPart } from '../../dimensions/part/known.ts';
import type { Phrase } from '../../dimensions/part/phrase.ts';
import { textOf } from '../../dimensions/part/text-of.ts';
import { EVERYDAY } from '../../words/everyday.ts';
import { isTradeWord, nounClasses } from '../../words/nouns.ts';
import { PERSONS } from '../../words/persons.ts';
import { TRADE_ENDING } from '../../words/sources.ts';
import { isClass } from '../../words/verbs.ts';
import type { Telling } from '../telling.ts';
import { purpose } from './purpose.ts';

/** The shop or person it went to: a source, a person or a trade after "to", "at", "with", "over to". */
export function target(t: Telling, c: Clause): string | undefined {
  for (const [k, i] of c.items.entries()) {
    const np = c.items[k + 1]?.np;
    if (i.low === 'for' && c.verb?.base !== 'leave') continue;
    if (!/^(to|at|with|by|into|in|for)$/.test(i.low) || !np || np.stands) continue;
    const said = np.said;
    const treated = purpose(c);
    const trade = isSource(np) || PERSONS.test(said) || /(er|or|smith|wright|ist|works|ician)s?$/.test(said) && !isPart(t, said) && TRADE_ENDING.test(said) || /^(town|machining|the shop|works|vo-tech|college)$/.test(said) || proper(t, np) && /^(to|with)$/.test(i.low) || (treated !== undefined && SENDS.test(c.verb?.base ?? 'be') || c.items[k - 1]?.np !== undefined && /^(post|mail)$/.test(c.items[k - 1]!.np!.said)) && /^(to|with|at)$/.test(i.low) && (!isPart(t, said) || /^(post|mail)$/.test(c.items[k - 1]?.np?.said ?? '')) && !isPlaceNoun(np) && !nounClasses(said).has('machine') && !nounClasses(said).has('tool') && !nounClasses(said.split(' ').at(-1)!).has('machine') && partish(said);
    if (np.quant === 'no' || isStuff(said) || /^(house|home|barn|place|garage|counter|yard|market|show|fair|rally|auction|sale)$/.test(said) && treated === undefined) continue;
    if (/\b(scrap|dump|tip|skip|bin|landfill)\b/.test(said)) continue;
    const handed = i.low === 'to' && /^(give|send|take|hand|post|pass)$/.test(c.verb?.base ?? '') && c.items[k + 2]?.t === 'to' && c.items[k + 3]?.t === 'verb' && isClass(c.items[k + 3]!.base!, 'work') && !isPart(t, said) && (!isPlaceNoun(np) || isSource(np)); // "gave the pump to Dave to rebuild"
    if (!trade && !handed || (i.low === 'in' || i.low === 'by') && !/(shop|works|yard|foundry|town|city|'s)$/.test(said) || i.low === 'in' && (/^(town|city)$/.test(said) && treated === undefined || !c.verb && said === 'shop')) continue;
    let to = k + 2;
    while (c.items[to] && /^(in|at|down|up|across|over|on|of|from)$/.test(c.items[to]!.low) && c.items[to + 1]?.np) to += 2;
    const text = textOf(t.sheet, c.items[k + 1]!.from, c.items[to - 1]!.to);
    return /^my\b/i.test(text) ? text : bare(text);
  }
  return undefined;
}
export const isPart = (t: Telling, said: string): boolean => isKnownPart(t.sheet.ctx.parts, said) || !isSourceName(said) && [...nounClasses(said), ...nounClasses(said.split(' ').at(-1)!)].some(k => k === 'part' || k === 'fastener' || k === 'machine' || k === 'tool');
const isSourceName = (said: string): boolean => nounClasses(said).has('source') || nounClasses(said.split(' ').at(-1)!).has('source');
/** A name in capitals that does not open the note: "to Dave", "with old Tom". */
export const proper = (t: Telling, np: Phrase): boolean => { const k = t.sheet.tokens.slice(np.from, np.to).findIndex(x => /^[A-Z][a-z]+$/.test(x.text)); return np.count === undefined && k >= 0 && np.from + k > 0 && !isTradeWord(t.sheet.tokens[np.from + k]!.low); };
const SENDS = /^(send|ship|post|mail|take|drop|give|leave|run|drive|carry|haul|cart|deliver|hand|bring|courier|freight|be|go)$/;
export const POSTED = /\b(in|into) the (post|mail)\b/;
/** A plain name of one or two words, not a time or a figure of speech. */
const partish = (said: string): boolean => !/\d/.test(said) && said.split(' ').length <= 4 && !EVERYDAY.has(said);


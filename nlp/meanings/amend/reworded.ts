import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Placed } from '../../clauses/clauses.ts';
import { singular } from '../../words/nouns.ts';
import { SIDES } from '../../words/sides.ts';
import type { Telling } from '../telling.ts';

/** Fields of an entry that are words, in the order in which a contrast is looked for in them. */
const WORDED = ['part', 'item', 'source', 'where', 'with', 'spec', 'product'] as const;
const W = "((?:(?!not\\b|instead\\b|rather\\b|i\\b)[\\w/.'-]+ ){0,4}[\\w/.'-]+)";
const LEAD = "^(?:(?:no|nah|naw|nope|er|sorry|actually|correction|oops|wait|hang on|tell a lie|i tell a lie|ah|och|ach|oh|well|that|and|but|my mistake) )*";
const IS = "(?:(?:it|that|they|those|this) ?(?:'s|'re|is|are|was|were|should be|should 've been|should have been|should read) |(?:should 've|should have|i should 've|i should have) (?:said|been|put|written) |should be |i (?:meant|mean) |i meant to say |meant |make (?:that|it|them|those) |read |say )?";
/** "the idler, not the tensioner", "not the tensioner, the idler", "I said tensioner, I meant idler". The groups: new and old, or old and new. */
const PLACED = /^(?:in|on|at|behind|under|over|beside|by|inside) /;
const PLACE = "(?:in|on|at|from|behind|under|over|beside|by) (?:the )?";
const TAIL = "(?:(?: i| he| she| they| the| and| there| that| now| so| was| what| as) ?.*)?$";
const NEW_OLD = [new RegExp(`${LEAD}${IS}(?:the |a |an )?${W}(?: (?:i meant|i mean|i was (?:on about|thinking of|talking about)|that was it))? (?:and )?(?:not|instead of|rather than) (?:the |a |an |in the |on the |from the )?${W}$`), new RegExp(`${LEAD}${IS}(?:the |a |an )?${W} not (?:the |a |an |${PLACE})?${W}${TAIL}`), new RegExp(`${LEAD}(?:they|it) (?:went|goes|go|are|is|'s|'re) ${W} not (?:the |a |an |${PLACE})?${W}$`)];
const OLD_NEW = [new RegExp(`${LEAD}not (?:the |a |an |${PLACE})?${W} (?:but )?(?:it (?:'s|was|is)|is|they (?:'re|are|went|were)|that (?:'s|was)) (?:the |a |an )?${W}${TAIL}`), new RegExp(`${LEAD}not (?:the |a |an |in the |on the |from the )?${W} (?:but )?(?:it 's |it was |they 're |i meant |that 's )?(?:the |a |an )${W}$`), new RegExp(`${LEAD}i (?:said|put|wrote|told you|called it|had) (?:the |a |an )?${W} (?:but |and )?(?:i )?(?:meant|mean|it 's|it was|it should be|should be|should 've been|should have been) (?:the |a |an )?${W}$`)];

/** A word of an earlier entry put right by another: what the note says it was not stands in that entry. */
export function reworded(t: Telling): Entry[] | undefined {
  if (t.at > 0 && t.told.length) return undefined;
  const own = (t.clause as Placed).sentence, clauses = t.clauses.filter(c => (c as Placed).sentence === own && c.from >= t.clause.from);
  if (clauses.some(c => c.asks)) return undefined;
  let from = t.clause.from; // with the words of correction that the clauses leave out
  while (from > 0 && !/^[.!?]$/.test(t.sheet.tokens[from - 1]!.low)) from--;
  const text = t.sheet.tokens.slice(from, clauses.at(-1)!.to).map(x => x.low).filter(w => /[a-z0-9]/.test(w)).join(' ');
  for (const [patterns, flip] of [[NEW_OLD, false], [OLD_NEW, true]] as const) for (const re of patterns) {
    const m = re.exec(text), got = m && put(t, flip ? m[2]! : m[1]!, flip ? m[1]! : m[2]!);
    if (!got) continue;
    for (const c of clauses) (c as Clause & { spoken?: boolean }).spoken = true;
    return got;
  }
  return undefined;
}

function put(t: Telling, now: string, old: string): Entry[] | undefined {
  const each = (w: string): string => singular(w.replace(/(\d)s$/, '$1')), was = old.split(' ').map(each), new_ = now.replace(/^(?:in|on|at|from|off) (?:the )?/, '').replace(/ (?:now|instead|again)$/, '').replace(/(\d)s\b/g, '$1').replace(/ ones?$/, '');
  if (was.every(w => /^(it|that|them|this|yet|now|here|there|on|off|in|out|one|so|sure|good|bad|tight|loose)$/.test(w)) || was.every(w => SIDES.has(w)) && new_.split(' ').every(w => SIDES.has(w)) || /^\d+(\.\d+)?$/.test(now) && /^\d+(\.\d+)?$/.test(old)) return undefined;
  for (const e of [...t.prior].reverse()) for (const field of WORDED) {
    const value = (e as Record<string, unknown>)[field];
    if (typeof value !== 'string') continue;
    if (field === 'where' && PLACED.test(now) && value.toLowerCase().split(' ').map(each).join(' ').includes(was.join(' '))) return [{ kind: 'amend', field, value: now.replace(/ (?:now|instead|again)$/, '') } as Entry];
    const words = value.toLowerCase().split(' '), at = words.findIndex((_, i) => was.every((w, k) => each(words[i + k] ?? '') === w));
    if (at < 0) continue;
    const tail = words.slice(at + was.length), ends = new_.split(' ').at(-1), shared = tail.findIndex(w => singular(w) === singular(ends!));
    const made = [...words.slice(0, at), new_, ...tail.slice(shared >= 0 ? shared + 1 : 0)].join(' ');
    return made === value.toLowerCase() ? undefined : [{ kind: 'amend', field, value: made } as Entry];
  }
  return undefined;
}

import type { Sheet } from '../types.ts';
import type { Clause, Reality } from './clause.ts';

/** "assuming the block is sound", "as long as it's straight", "in case it leaks": said as a condition without an "if". */
export function supposed(sheet: Sheet, c: Clause): boolean {
  const lead = sheet.tokens.slice(Math.max(0, c.from - 3), c.from).map(t => t.low).join(' '), own = sheet.tokens.slice(c.from, c.from + 3).map(t => t.low).join(' ');
  return /(^| )(assuming|supposing|suppose|provided|provided that|providing|in case|as long as|so long as|on condition that)$/.test(lead) || /^(assuming|supposing|suppose|provided|providing|in case|as long as|so long as|on condition)\b/.test(own);
}

/** Whoever was at the machine before: what he did to it is no work of the shop's. */
export const BODGER = /\b(somebody|someone|whoever|(some|the|that|a|which) (\w+ )?(clown|fool|idiot|genius|butcher|cowboy|eejit|joker|bodger|animal|bright spark|muppet|hero|wally|hooligan|numpty|halfwit|clever dick|previous fella|last fella|last bloke|last fellow|last guy|last lot|fella before me|man before me|fellow before me)|(previous|last|former|old|first) (owner|man|fella|bloke|fellow|guy|lot|mechanic))\b/;

/** How a clause stands to the truth, by its auxiliaries, adverbs and who it is said of. */
export function reality(c: Clause): Reality {
  const words = c.items.map(i => i.low);
  const head = c.items.map(i => (i.np && /\b(must|may|might|will|can|should)\b/.test(i.low) ? '·' : i.low)).slice(0, Math.max(c.vi, 0) + 1).join(' ');
  if (c.sub && /^(if|unless|lest|except|whether)$/.test(c.sub)) return 'cond';
  if (/\b(apparently|supposedly|allegedly|reportedly|by all accounts)\b/.test(words.join(' '))) return 'hearsay';
  if (c.passive && /\bby (somebody|someone|whoever|the (last|previous) \w+)\b/.test(words.join(' '))) return 'hearsay';
  if ((/^(somebody|someone|whoever)$/.test(c.who ?? '') || BODGER.test(words.slice(0, Math.max(c.vi, 0)).join(' '))) && c.verb && (!c.passive || /^(somebody|someone)$/.test(c.who ?? '')) && /^(past|part)$/.test(c.verb.form ?? '') && !/^(come|call|ring|phone|offer|help|be|say)$/.test(c.verb.base ?? '')) return 'hearsay';
  if (/\b(nearly|almost|damn near|all but)\b/.test(head) && c.pred !== 'be' && c.pred !== 'none' && !/^(finish|do|complete)$/.test(c.verb?.base ?? '') && !/\b(finished|done)\b/.test(head)) return 'past plan';
  if (/\b(probably|possibly|perhaps|maybe|likely)\b/.test(c.items.filter((i, k) => !(/^(maybe|perhaps|possibly|probably)$/.test(i.low) && (c.items[k + 1]?.f || c.items[k + 1]?.np?.count !== undefined))).map(i => i.low).join(' ')) && (c.pred === 'be' || c.pred === 'none') && !c.items.some(i => i.f?.dim === 'when' || i.f?.dim === 'money')) return 'maybe';
  if (/\b(was|were) (just |only |really )?(going|gonna|about|meant|supposed|planning|hoping) to\b|\bmeant to\b|\bshould 've\b|\bshould have\b|\bcould 've\b|\bwould 've\b|\bwould have\b|\bcould have\b|\bought to have\b/.test(head)) return 'past plan';
  if (/\b(needs?|wants?|requires?) \w+ing\b/.test(words.join(' ')) || /^(?:\S+ ){0,4}?(?:still |yet )?to be\b/.test(head) && !c.items.slice(0, c.vi).some(i => i.t === 'have' || i.t === 'modal' || i.t === 'verb' || i.t === 'be' && i.low !== 'be')) return 'must';
  if (/(^| )(is|are|'s|'re|'m) (all |just |finally )?getting \w+$/.test(head) && c.verb && /^(past|part)$/.test(c.verb.form ?? '')) return 'plan'; // "it's getting replaced"
  if (/\b(need|needs|have|has|had|'ve got|'s got|got|must|ought) to\b|\bmust\b|\bshould\b|\bwants? to be\b|\bbetter\b|\bsupposed to\b/.test(head)) return /\bhad to\b/.test(head) ? 'deed' : 'must';
  if (/(^| )(i|we) (still |also |yet )?('ve|'m|am|are|'re) (still |also |yet )?to /.test(head)) return 'must'; // "I've to drift the bushes out", "I'm to see to the pins"
  if (/\bto be$|\bto be \S+$/.test(head) && c.passive && !/\b(want|wants|going|gonna|likely|sure)\b/.test(head)) return 'must'; // "head bolts to be retorqued"
  if (/\b(wouldn't|couldn't|won't)\b/.test(head)) return 'maybe';
  if (/\b(might|may|could|perhaps|maybe|possibly|probably|would|i 'd)\b/.test(head) && !/\bcould (see|hear|feel|get)\b/.test(head)) return /\b(would|'d) (like|love|rather)|\bwish\b/.test(head) ? 'wish' : 'maybe';
  if (/(^|\s)'d\b/.test(head)) return 'maybe';
  if (/(^| )'ll( |$)|\b(will|shall|going to|won't|shan't|plan to|planning to|propose to|want to|intend to|about to)\b/.test(head)) return 'plan';
  if (/^(i|we)$/.test(c.who ?? '') && c.verb?.form === 'ing' && /^(send|post|ship|mail)$/.test(c.verb.base ?? '') && /(^| )('m|am|'re|are)\b/.test(head)) return 'plan'; // "I'm sending it out first thing"
  if (/\b(wish|hope|hoping|hopefully|like to|love to)\b/.test(head)) return 'wish';
  if (/\bcan\b/.test(head)) return 'maybe';
  return 'deed';
}

import type { Clause } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { lowText, next, previous, type Telling } from '../telling.ts';

const LEAD = String.raw`^(?:(?:and|but|so|also|oh|still|then|now|plus|well|no|yes|right|too|, ?) )*`;
/** Ways to say that something must be got, other than "need" and "buy"; the things follow. */
const PHRASES: readonly RegExp[] = [
  new RegExp(String.raw`${LEAD}(?:(?:i|we) (?:'m|am|'re|are) )?(?:still |also |all |nearly |almost |running |getting )*(?:short|short of|short on|missing|lacking|in need of|in the market for|low on|out of|down to (?:the|my|our) last(?: \w+)? of|down to (?:the|my|our) last)(?= )`),
  new RegExp(String.raw`${LEAD}(?:i|we) (?:'m|am|'re|are) (?:still |also |really )*after(?= )`),
  new RegExp(String.raw`${LEAD}(?:(?:i|we) )?(?:'ve |have )?(?:just |nearly |about )*(?:ran|run) (?:clean |right )?out of(?= )`),
  /(?:^| )(?:'s|is|are|'re) (?:crying|screaming|begging|dying) (?:out )?for(?= )/,
  /(?:^| )(?:could|'d) (?:really |well )?(?:do with|use)(?= (?:an?|some|another|two|three|four|new|a couple)\b)(?! a (?:good |bit|wash|clean|coat|hand|lick|rest|drink|drop|polish|rub|tidy|service|weld|going|looking|grease|squirt|look|tweak|touch|skim|rebuild|dose|bath))/,
  /\b(?:put|write|mark|sign|jot|stick) (?:me|us) down for(?= )/,
  new RegExp(String.raw`${LEAD}(?:i|we) (?:still )?could (?:really )?(?:do with|use)(?= )`),
  /\b(?:remember|forget|mind|note to self) (?:: )?to (?:go )?(?:get|buy|order|pick up|grab|fetch)(?= )/,
  /\b(?:be obliged to|wish to|like to|have to|need to|must|be glad to|going to have to) (?:obtain|procure|acquire|purchase|secure|source)(?= )/,
  new RegExp(String.raw`${LEAD}(?:kindly |please |pls )(?:obtain|procure|order|get|buy|add)(?= )`),
  /\b(?:better|might as well) (?:get|buy|order|pick up|grab)(?= )/,
  /\b(?:need|have|got|must|going|want)(?: to)? (?:lay (?:my |our )?hands on|get (?:my |our )?hands on|get hold of|get ahold of|track down|hunt (?:up|down)|send (?:away |off )?for|scare up|rustle up|dig up|round up|source|chase up|chase down|come by|ferret out|see about (?:a|an|some|getting)|stock up on|restock|replenish|top up on)(?= )/,
  /^(?:(?:and|but|so|also|oh) )*(?:there (?:'s|is|are)|(?:i|we) (?:'ve|have)(?: got)?|got) (?:no|n't any|not any)(?= )(?=.* (?:left|remaining)\b)/,
  new RegExp(String.raw`${LEAD}no(?= )(?=.* (?:left|remaining)(?: at all| anywhere)? $)`),
  new RegExp(String.raw`${LEAD}(?:(?:i|we) (?:'m|am|'re|are) )?(?:still |also |now )*(?:looking|looking out|on the lookout|hunting|searching|scouting|shopping|on the hunt|in search|keeping an eye out|in the hunt)(?: round| around| out)? (?:for|of)(?= (?!the |my |his |her |it |that |where |what |why |leaks?|trouble))`),
];
const LISTED = /\b(?:put|add|stick|write|chuck|jot|pop|throw|get|whack) (?=.*\b(?:on|to|onto) (?:the|my) (?:\S+ )?list\b)/;
const HEAD = /^(?:and |also |so )*(?:still )?(?:to (?:buy|get|order|pick up)|(?:the |my )?(?:shopping|parts|buying|wants?|wanted) list|(?:parts|items|bits|things|materials|spares) (?:needed|wanted|required|to (?:get|buy|order))|needed|wanted|required|(?:the )?following(?: \w+)? (?:are|is) (?:required|needed|wanted)|(?:kindly |please )?(?:add|put|stick|pop|write|note) (?:it |these |this |the following )?(?:to|on|down on) (?:the |my )?(?:\S+ )?list(?: of (?:requirements|parts|wants|needs))?|shopping|needs?|buy|get|bits needed|still (?:needed|wanted))(?: for (?:the )?[a-z -]+)? ?(?::|-|–)?$/;

/** Item index just after a phrase that says something must be got. */
export function phrasedWant(c: Clause): number | undefined {
  const { items } = c;
  const text = `${items.map(i => i.low).join(' ')} `;
  for (const re of PHRASES) {
    const m = re.exec(text);
    if (m && /\bran\b/.test(m[0]) && c.join) continue; // "painted half and ran out" tells why it stopped
    if (!m || /\bout of (?:round|true|line|square|the|it|here|time|patience|puff|breath|hours|daylight|light|steam|sight|reach|order|gear|balance|bounds|shape|tune|petrol station)\b/.test(text) || /\b(?:a hand|another hand|help|hands|pair of hands|lie down)\b/.test(text) && /could/.test(m[0])) continue;
    return indexAt(items, m.index + m[0].length);
  }
  const listed = LISTED.exec(text);
  if (listed && !/\boff\b/.test(text)) return indexAt(items, listed.index + listed[0].length - 1);
  return undefined;
}

/** The item that begins at or after an offset of the joined words. */
function indexAt(items: readonly Item[], offset: number): number | undefined {
  let at = 0;
  for (const [k, i] of items.entries()) { if (at >= offset - 1 || at + i.low.length > offset) return k; at += i.low.length + 1; }
  return undefined;
}

/** "To buy:", "shopping list:" before the things themselves. */
export const headsWants = (t: Telling, c: Clause): boolean => HEAD.test(lowText(t, c)) && (t.sheet.tokens[c.to - 1]?.low === ':' || t.sheet.tokens[c.to]?.low === ':' || /^[-.]$/.test(t.sheet.tokens[c.to - 1]?.low ?? ''));
/** Whether this clause is such a heading with things after it. */
export const opensList = (t: Telling): boolean => { const n = next(t); return n !== undefined && headsWants(t, t.clause) && n.pred === 'none' && !n.asks && n.items.some(i => i.np !== undefined); };
/** Whether this clause stands right under such a heading. */
export const underList = (t: Telling): boolean => { const p = previous(t); return p !== undefined && headsWants(t, p); };

/** "two hose clamps needed", "a gasket is wanted": the things are the subject. */
export const isCalledFor = (t: Telling, c: Clause): boolean =>
  c.subj.length > 0 && c.subj.every(s => !s.carried && !/^(no|neither)$/.test(s.np?.quant ?? '')) && (/^(need|want|require)$/.test(c.verb?.base ?? '') && /^(past|part)$/.test(c.verb!.form ?? '') || toBeGot(t, c)) && !c.obj.length && !/\b(was|were|had|been|what|help|hand|all|everything|that)\b/.test(lowText(t, c)) && c.subj.every(s => partLike(t.sheet, s.name));

/** "one adapter is to be procured", "a new seal must be bought", "two clips to be got". */
const toBeGot = (t: Telling, c: Clause): boolean =>
  /^(buy|get|order|procure|obtain|purchase|acquire|source|find)$/.test(c.verb?.base ?? '') && c.reality === 'must' && /\b(to be|must be|should be|got to be|has to be|have to be|needs? to be|will have to be|needs? (buying|ordering|getting|sourcing|purchasing))\b/.test(lowText(t, c));

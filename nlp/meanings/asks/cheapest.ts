import type { Ask } from '../../../domain/model/ask.ts';
import { spokenOf } from './spoken-of.ts';
import type { AskRule, Seen } from './rule.ts';

const BEST = String.raw`(?:cheapest|lowest|best|keenest|least expensive|least|most reasonable|dearest)`;
const cheap = (s: Seen): Ask[] | undefined => {
  const item = s.names[0] ?? spokenOf(s.desk, s.start);
  return item && !/^(?:thing|part|one|way|bit|option)s?$/.test(item) ? s.names.length > 1 ? s.names.map(i => ({ kind: 'cheapest', item: clean(i) })) : [{ kind: 'cheapest', item: clean(item) }] : undefined;
};
const clean = (item: string): string => item.replace(/ (?:price|quote|deal|landed|delivered)$/, '');
/** "got the cheapest one they had": a deed is not a question. */
const told = (s: Seen): boolean => /^[^?]*\b(?:i|we)(?: ve| have|ve| could)? (?:found|seen|saw|got|find|heard|had|been quoted)\b[^?]*\b(?:was|is|at|for) [^?]*\d[^?]*$/.test(s.desk.text.slice(s.start)) || /\b(?:got|bought|took|went (?:with|for)|ordered|picked|chose|paid|used|it was|its|was|thats|that was|found) (?:the |a |at the |his |for the )*$/.test(s.desk.text.slice(Math.max(0, s.start - 30), s.start)) && !/\b(?:who|whos|what|whats|which|where|have i|ive|did i)\b[^.?!]{0,24}$/.test(s.desk.text.slice(Math.max(0, s.start - 40), s.start));

/** The best price landed at the shop. */
export const CHEAPEST: readonly AskRule[] = [
  { name: 'who has X cheapest', open: /\b(?:whos|wholl|who|who is|who has|who can|who will|which (?:place|yard|shop|one))(?: (?:s|has|got|sells|sell|does|stocks|is|selling|doing|had|have|do|give|get|let|supply|make|me|us))* /, things: 'list', tail: /^ (?:for )?(?:the )?(?:cheapest|cheaper|for least|least|at the best price|best price|lowest|least money)\b/, tailNeeded: true, weight: 5, make: s => cheap(s) },
  { name: 'cheapest price on X', open: new RegExp(String.raw`\b(?:the )?${BEST}(?: (?:price|prices|quote|quotes|deal|deals|offer|cost|landed (?:price|cost)|landed|place|spot|source|one|supplier|bid|money|figure|way|landing|delivered price))+(?: (?:so far|ive|i|have|i have|heard|got|had|seen|been quoted|quoted|i was quoted|found|was|is|landed|delivered|yet|we|at the shop|all in|to (?:buy|get|order|pick up)|gave|for me|for getting|with shipping|including shipping|anybody|anyone|has|quoted me|on offer|i can get|i could get|there is|out there|around|going|to date))* (?:on|for|of|to (?:buy|get)|a|an) ?`), things: 'list', weight: 4, make: s => told(s) ? undefined : cheap(s) },
  { name: 'best price I have heard for X', open: new RegExp(String.raw`\b${BEST} (?:price|quote|deal|offer)\b[^.?!,]{0,40}? (?:on|for|of) (?=(?:the|my|a|an|that|those|[a-z]))`), things: 'list', weight: 3, make: s => told(s) ? undefined : cheap(s) },
  { name: 'cheapest X', open: /\b(?:cheapest|least expensive)(?: (?:place|spot|source|way|one|supplier|price|shop|outfit))?(?: (?:to (?:buy|get|order)|for|on|of|ive (?:heard|seen|found|been quoted)|i (?:heard|found)|landed|delivered|so far))* ?/, things: 'list', weight: 2, make: s => told(s) || !mine(s) ? undefined : cheap(s) },
  { name: 'better buy on X', open: /\b(?:which|what|whats|who)(?: is| are| s)?(?: (?:the|a|my))* (?:better|best) (?:buy|bargain|deal|value)(?: (?:on|for|of))? /, things: 'list', weight: 7, make: s => cheap(s) },
  { name: 'which quote on X is best', open: /\b(?:which|what)(?: of the| of my)? (?:price|quote|offer|deal|one|place|seller|supplier)s?(?: (?:i have|ive got|i got|ive had|that i had))? (?:on|for|of) /, things: 'list', tail: /^ (?:is|was|are|works? out|comes? out|came out|turned out|lands?)(?: (?:the|to be|at|out))* (?:best|cheapest|cheaper|lowest|least|keenest)\b/, tailNeeded: true, weight: 5, make: s => cheap(s) },
  { name: 'best price anyone gave me on X', open: new RegExp(String.raw`\b${BEST}(?: (?:landed|delivered|all in|posted|shipped))? (?:price|quote|deal|offer|figure)s? (?:that )?(?:any ?(?:body|one)s?|some ?(?:body|one)s?|i|ive|weve|theyve)(?: (?:s|has|have|had|ever|been|got|was))*(?: (?:given|gave|quoted|offered|asked|named|told|heard|seen|found|wanted|got))*(?: (?:me|us|so far|yet))* (?:on|for|of) `), things: 'list', weight: 6, make: s => told(s) ? undefined : cheap(s) },
  { name: 'who is cheapest on X', open: new RegExp(String.raw`\b(?:who|whos|who is|who has|which (?:place|one|shop|supplier|yard|outfit)|wheres|where is|where was|where|whod|who had|what place)(?: (?:the|has|had|was|is|s|did|come out|came out|coming out|gave|give|me|of them|came|came in|got|quoted|wanted|wants|do i|can i|i|would|be|it|comes out|worked out|comes in|works out|lands|charges?|sells?|asked|asks?|quote))* (?:cheap(?:est)?|cheaper|lowest|best|least)\b(?: (?:number|figure|bid|tender|ticket|sticker|money|price|prices|quote|deal|landed|delivered|all in|money|off|offer|so far|yet))*(?: (?:on|for|with|with the|to get|to buy|out for))? ?`), things: 'list', weight: 3, make: s => told(s) ? undefined : cheap(s) },
  { name: 'what is the least I can pay for X', open: /\bwhat(?:s| is| was)? (?:the )?(?:least|lowest|best|cheapest) (?:i (?:can|could|would|ve|have|was|got)|anyone|anybody|ive|that|price)\b[^.?!]{0,30}? (?:for|on) /, things: 'list', weight: 3, make: s => cheap(s) },
  { name: 'the least I can get X for', open: /\b(?:least|cheapest|lowest) (?:i|we) (?:can|could|have|ve) (?:get|got|buy|find|had|pick up) /, things: 'list', tail: /^ for\b/, weight: 4, make: s => cheap(s) },
  { name: 'price on X', open: /\b(?:whats|what is|what was|what were|what are|what) (?:the )?(?:prices?|quotes?)(?: (?:have i|did i|ive|i|have|got|been|had|heard|so far|was i|quoted|do i have|we|ve|get|is|hear))* (?:on|for|of) /, things: 'list', weight: 1, make: s => cheap(s) },
  { name: 'how much is a X', open: /\bhow much (?:is|are|s|for|would|does|do|will) (?=(?:an?|new|another|some) )/, things: 'list', tail: /^ (?:be|cost|run(?: me)?|go for|set me back)\b/, weight: 1, make: s => /^(?: now| these days| landed)*(?: ?[?.!,]|$)/.test(s.desk.text.slice(s.end)) ? cheap(s) : undefined },
  { name: 'cheapest one I heard', open: /(?:^|[.?!;,] )(?:the )?(?:cheapest|lowest|best)(?: (?:one|price|quote|of them|of those))?(?: (?:that )?(?:i|ive|i have)(?: (?:have|been))? (?:heard|found|seen|had|got|quoted))(?= ?(?:$|[?.,]))/, weak: true, weight: 1, make: s => cheap(s) },
  { name: 'where is cheapest', open: /\b(?:wheres|where is|whos|who is|who was|which is|which one is|whats) (?:the )?(?:cheapest|cheaper)(?=(?: one| then| now| landed)*(?: ?[?.!,]|$))/, weight: 6, make: s => cheap(s) },
  { name: 'quotes for X', open: /\b(?:compare|list|show me|go over|which is cheaper|whos cheaper|who is cheaper|rank|all the|run through)(?: me)?(?: (?:the|all|all the|my))* (?:prices?|quotes?|offers?)(?: (?:on|for|of))? /, things: 'list', weight: 2, make: s => cheap(s) },
  { name: 'what did they want for X', open: /\b(?:what did|how much did|what do|whatd|what were|how much was|how much were)(?: [a-z]+){0,4} (?:want|wanting|asking|ask|quote(?: me)?|quoted|charge|say)(?: (?:for|on)) /, things: 'list', weight: 2, make: s => cheap(s) },
  { name: 'where to buy X cheapest', open: /\b(?:wheres|where is|wherell|where|who|whod) (?:the )?(?:can |should |do |would |could |to |will |might )?(?:i |we |you )?(?:get|buy|order|pick up|find|for) /, things: 'list', tail: /^ (?:the |for )?(?:cheapest|cheap|(?:the )?least money|for (?:the )?least|at the best price|landed cheapest|for the best (?:price|money))/, tailNeeded: true, weight: 5, make: s => cheap(s) },
];

/** A bare "cheapest" asks at the head of a clause or after a question word. */
const mine = (s: Seen): boolean => {
  const before = s.desk.text.slice(Math.max(0, s.start - 60), s.start);
  return /(?:^|[.?!;,] |\b(?:and|the|whos?|whos got|what|whats|which|wheres|show me|give me|find|tell me|get|my|was|is|me|got|so|or|has|had) )(?:the |me |my |uh )*$/.test(before);
};

import type { Ask } from '../../../domain/model/ask.ts';
import { sentenceAt, thingAt } from './desk.ts';
import type { AskRule, Seen } from './rule.ts';

type Status = 'needed' | 'ordered' | 'late';
const GET = String.raw`(?:buy|get|order|pick up|purchase|get hold of|send for|find|source|track down|go and get|shop for|acquire|pick|grab|be got|be bought|be ordered|get in|lay (?:my )?hands on|hunt (?:up|down)|scare up|rustle up|send off for)`;
const LATE = String.raw`(?:(?:ought|supposed|meant|due) to (?:have been|be) here(?: by now| already)?|should be here by now|late|overdue|past due|behind schedule|(?:gone |run(?:ning)? |slipped |well |got )?(?:past|beyond|over) (?:its|their|the)(?: (?:due|delivery|promised|arrival))? (?:date|day|time)|running behind|slipped|should(?: have|ve| of) (?:come|been here|arrived|turned up|landed|shown up)(?: by now| already)?|(?:hasnt|havent|has not|not) (?:come|arrived|turned up|shown up|shown)(?: yet| on time)?|still not (?:here|come|arrived|turned up)|running late|gone missing|was due already)`;
const ORDER = String.raw`(?:on order|ordered|on the way|on its way|in the post|in the mail|coming|in transit|on back ?order|being sent|to arrive|due in|still to come|yet to (?:come|arrive|land)|not (?:here|arrived) yet|outstanding|in the works from|due to (?:come|arrive|land|turn up|show up|be delivered)|i(?:m| am) (?:still )?waiting (?:on|for)|expected)`;

/** What is still to be got, what is ordered, what is late. */
export const BUY: readonly AskRule[] = [
  { name: 'what does X still need', open: /\bwhat(?: else)?(?: parts| bits| hardware| stuff| things| bolts)? (?:does|do) /, things: 'one', tail: /^ (?:still )?(?:need|want|require|lack)(?: yet| still| to be bought| buying| getting)?(?= ?(?:$|[?.,]|and\b))/, tailNeeded: true, weight: 2, make: s => [{ kind: 'buy', status: 'needed', part: s.names[0] }] },
  { name: 'what needs buying', open: /\b(?:what(?:s)?|anything|what else|what parts|is there anything)(?: still| else| parts| that)* (?:remains?|is left|remaining|is outstanding|needs?|wants?|need|want|requires?|to be|left|needed|wanted|wanting)(?: (?:still|yet))?(?: (?:buying|getting|ordering|picking up|sourcing|purchasing)| to be (?:bought|ordered|got))?(?= ?(?:$|[?.,]|for\b|on\b|and\b|in\b))/, weight: 2, make: s => /(?:buying|getting|ordering|picking up|sourcing|purchasing|bought|ordered|got|needed|wanted|wanting)(?: (?:still|yet))?$/.test(s.m[0]) ? buy(s, 'needed') : undefined },
  { name: 'still to buy', open: /(?:^|[.?!;:,] |\band )(?:(?:what(?:s)?|anything) )?(?:still|left|yet|parts)(?: left)?(?: to)? (?:to )?(?:buy|get|order|purchase|needed)(?= ?(?:\?|$|for\b|on\b))/, weak: true, weight: 2, make: s => buy(s, 'needed') },
  { name: 'what do I need to buy', open: new RegExp(String.raw`\bwhat(?:s|all| all| else| parts| bits| stuff| things)?(?: (?:parts|else|bits|things|bolts|hardware|stuff))? (?:do|did|have|must|should|ought|would|am|will) i (?:(?:still|also|actually|yet|just|even|got|have|need|needing|want|going|left|supposed|ought) )*(?:to )?(?:go )?${GET}\b(?! (?:done|through|on with|up to|at|done|anywhere|finished))`), weight: 3, make: s => /\bwhat(?: [a-z]+)? did i (?:get|find|pick|order|buy)\b/.test(s.m[0]) ? undefined : buy(s, 'needed') },
  { name: 'what I need to buy', open: new RegExp(String.raw`\bwhat(?: all| else| parts)? i (?:(?:still|also|yet|got|have|need|want|ought|must) )*(?:to )?(?:go )?${GET}\b`), weak: true, weight: 2, make: s => buy(s, 'needed') },
  { name: "what's left to buy", open: new RegExp(String.raw`\b(?:whats|what is|what are|anything|is there anything|anything else|whats still|whatve i|what have i|what has|whats there|what else is|what else) (?:there |still |left |got |else |need(?:ed|s)? |that needs |that |needing |needs |wants |wanting |wanted |yet |remaining |to be |parts |i |have |do i )*(?:to )?(?:be )?(?:buy|get|order|purchase|pick up|bought|ordered|got|getting|buying|ordering)\b(?! (?:done|on order|on the|here))(?: in\b)?`), weight: 3, make: s => /on order|ordered\b/.test(s.m[0]) && !/to (?:be )?order(?:ed)?|need/.test(s.m[0]) ? buy(s, 'ordered') : /(?:have i|whatve i) got$|ive got$/.test(s.m[0]) ? undefined : buy(s, 'needed') },
  { name: 'shopping list', open: /\b(?:on )?(?:the )?(?:shopping|parts|buying|wants?|wanted|to buy|needs?|to get|order)(?: |-)list\b|\blist of (?:what|everything|the parts|parts|stuff) (?:i )?(?:still )?(?:need|have to|to)\b[^.?!,]*/, weak: true, weight: 2, make: s => headed(s) || /\b(?:added?|put|on|to) (?:it |that |them )?(?:on |to )?(?:the|my) $/.test(s.desk.text.slice(0, s.start)) ? undefined : buy(s, 'needed') },
  { name: 'what parts do I need', open: /\bwhat(?: all| else)?(?: parts| bits| stuff| hardware| bolts| things)? (?:do i|am i|are we|do we|does it|is it|will i) (?:still |yet |also )*(?:need(?: for| on)?|short(?: of| for)?|missing|lacking|want|after)(?= ?(?:$|[?.,]|for\b|still\b|on\b|and (?:what|where|how|is|who)\b))/, weight: 2, make: s => buy(s, 'needed') },
  { name: "what's on order", open: new RegExp(String.raw`\b(?:what|whats|whatve|anything|which|which parts|which bits|have i|list|show me|did i|is there anything|is anything|any parts|parts|whats all)\b(?: (?:all|else|parts|bits|stuff|things|have|has|had|is|are|do|did|am|i|ive|got|thats|that is|there|still|now|the|my|any|anything|currently|at present|at the moment|we|weve|on|are there|was|orders|sitting))* ${ORDER}`), weight: 2, make: s => /^(?:parts|list)/.test(s.m[0]) && !head(s) || /did i (?:still )?(?:coming|expected)/.test(s.m[0]) ? undefined : /ordered$/.test(s.m[0]) && new RegExp(`^(?: (?:is|was|thats|that is|and|still|are|has|have|hasnt))* ?${LATE}`).test(s.desk.text.slice(s.end, s.stop)) && !/^(?: (?:that|thats|and|but|still|is|has|have))* (?:hasnt|havent|has not|have not|not) /.test(s.desk.text.slice(s.end, s.stop)) ? buy(s, 'late') : buy(s, 'ordered') },
  { name: 'what am I waiting on', open: /\bwhat(?: parts| orders| bits| deliveries| else)?(?: am i| are we|s) (?:i )?(?:still )?(?:waiting|expecting|due(?! (?:to|for)\b)|owed)\b(?: (?:on|for))?(?: (?:in the (?:post|mail)|to (?:arrive|come|show up|land)|parts))?/, weight: 1, make: s => buy(s, 'ordered') },
  { name: "what's late", open: new RegExp(String.raw`\b(?:what|whats|whatve|which|anything|is anything|are any|any|anythings|whos|has anything|is there anything|have any|did anything|list|show me)\b(?:(?!\b(?:and|or) (?:what|where|how|can|is)[a-z]*\b)[^.?!;,]){0,40}?\b${LATE}`), weight: 5, make: s => /^ (?:for|a) (?:a )?(?:re ?)?(?:check|look|torque)/.test(s.desk.text.slice(s.end)) ? undefined : buy(s, /\bordered (?:and|but|that|thats|which) ?(?:has|have|is|are|still)?(?:nt| not)? ?(?:not )?(?:come|arrived|turned up|been delivered|delivered|here|yet|in)*/.test(s.m[0]) && !/\b(?:late|overdue|should|by now|past|supposed|ought)\b/.test(s.m[0]) ? 'ordered' : 'late') },
  { name: 'are X late', open: /\b(?:are|is|have|has) (?=(?:the|my|those|that)\b)/, things: 'list', tail: new RegExp(String.raw`^ (?:still |now |all )?(?:${LATE}|${ORDER})`), tailNeeded: true, weak: true, weight: 3, make: s => s.names.map(part => ({ kind: 'buy', status: new RegExp(LATE).test(s.tail![0]) ? 'late' as const : 'ordered' as const, part })) },
  { name: 'orders', open: /(?:^|[.?!;,] |\b(?:and|show me|list|check) )(?:(?:my|the|open|outstanding|all|current) )*orders(?= ?(?:$|[?.,]))/, weight: 1, make: s => buy(s, 'ordered') },
  { name: 'to get for X', open: /(?:^|[.?!;,] |\band )(?:still )?(?:left )?to (?:buy|get|order)(?= (?:for|on) |\?|$)/, weak: true, weight: 1, make: s => s.desk.sentences.length && /^(?: ?\?| for | on |$)/.test(s.desk.text.slice(s.end)) ? buy(s, 'needed') : undefined },
];

/** "Shopping list. Head bolts, eight.", "Shopping list for the press: two bearings": a heading over what follows, and no question. */
const headed = (s: Seen): boolean => {
  const after = s.desk.text.slice(s.end), sentence = sentenceAt(s.desk, s.start);
  if (/^(?: for [a-z ]+)? ?:/.test(after)) return true;
  const next = s.desk.sentences.find(x => x.start >= s.stop);
  return !sentence.asked && next !== undefined && !next.asked && head(s) && !/\b(?:show|read|give|tell|whats|what|print|list) /.test(s.desk.text.slice(sentence.start, s.start)) && !/^ ?(?:show|read|whats?|where|how|when|who|and|also|any|is|are|can|did|please|thanks)\b/.test(s.desk.text.slice(next.start));
};

const head = (s: Seen): boolean => s.desk.text.slice(Math.max(0, s.start - 2), s.start).trim() === '' || /[.?!,;] $/.test(s.desk.text.slice(0, s.start));

function buy(s: Seen, status: Status): Ask[] {
  const rest = s.desk.text.slice(s.end, s.stop);
  const m = /^(?: (?:still|yet|now|today|else|right now|again|at the moment|in town|so far|parts|wise))*,? (?:for|on|to finish|to do|to get) (?=(?:the|my|this|that|our|[a-z]+)\b)/.exec(rest);
  const t = m && thingAt(s.desk, s.end + m[0].length, s.stop);
  const inside = /\b(?:for|on) (?=(?:the|my|this|that) )/.exec(s.m[0]);
  const u = !t && inside ? thingAt(s.desk, s.start + inside.index + inside[0].length, s.stop) : undefined;
  const titled = /^([a-z]+(?: [a-z]+){0,2}): ?$/.exec(s.desk.text.slice(sentenceAt(s.desk, s.start).start, s.start));
  const part = (t ?? u)?.name ?? titled?.[1];
  return [{ kind: 'buy', status, ...(part && !/^(?:order|shopping|list|time|moment|now|good|way|post|mail|back|friday|town)$/.test(part) ? { part } : {}) }];
}

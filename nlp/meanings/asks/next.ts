import type { Ask } from '../../../domain/model/ask.ts';
import { sentenceAt } from './desk.ts';
import { spell } from './spell.ts';
import type { AskRule, Seen } from './rule.ts';

export const INSIDE = /\b(?:inside|indoors?|in(?:side)? the (?:shop|garage|shed|barn|workshop|hall|byre|warm|dry|cellar|basement)|under (?:cover|a roof|the roof|the shed|(?:the |a )?(?:shelter|lean ?to|awning))|out of the (?:wet|rain|wind|cold|sun|weather|heat)|by the (?:stove|fire|heater)|in the (?:house|kitchen|dry|porch|stable|mill)|in (?:a|the) heated|heated (?:side|end|part)|shed job|at the bench|on the bench|in here)\b/;
export const OUTSIDE = /\b(?:outside|outdoors?|out of doors|out in the (?:yard|sun|open|air|heat|cold|field|lane)|in the (?:yard|sun|open|fresh air)|out (?:there|back)|under the (?:open )?sky|outdoor)\b/;
const SPELL = String.raw`(?: (?:now|next|today|tonight|inside|outside|indoors?|outdoors?|first|then|this|morning|afternoon|evening|arvo|with|in|for|right|straight away|here|there|still|while|until|on|to|do|at|the|bench|weekend|tomorrow))*`;

/** What one does with a job in hand. */
const DO = String.raw`(?:do|be doing|be at|be getting on with|get done|get on with|get at|get into|get stuck into|tackle|knock (?:out|off|over)|work (?:on|at)|start(?: on)?|crack on with|fit in|squeeze in|finish(?: off)?|attack|polish off|make a start on|manage|pick (?:at|away at)|have a go at|chip away at|turn my hand to|put my hand to|potter at|clear off)`;

/** What can be done now, in the time and place that there is. */
export const NEXT: readonly AskRule[] = [
  { name: "what's to do", open: /\b(?:whats|what is|anything)(?: there)?(?: left)? to (?:do|be at|get on with|be done|tackle)(?= ?(?:$|[?.,]|inside|outside|indoors|outdoors|in\b|with\b|for\b|now\b|next\b|today\b|tonight\b))(?: (?:inside|outside|indoors|outdoors|now|next|today|tonight))?/, weight: 2, make: s => next(s) },
  { name: "what's doable", open: /\bwhat(?:s| is| would be)?(?: there)? (?:thats )?(?:doable|possible|practical|worth doing|worth starting|quick|small enough)(?: (?:to do|to start|to finish|now|then|here))*/, weight: 2, make: s => next(s) },
  { name: 'a job I could do', open: new RegExp(String.raw`\b(?:whats|what is|what are|is there|are there|any|got|have you|give me|find me|name me|suggest)(?: (?:a|an|any|some|one|another|the|good|small|little|quick|wee|short|best|decent|handy|useful|job|jobs|thing|things|bit|bits|piece|work|of|something|anything|there|that|which|got))* (?:i|we) (?:can|could|might|may|should|would) (?:(?:usefully|get|best|maybe|still|now|actually) )*${DO}(?! (?:to|about|it|the|them|that|this)\b)${SPELL}`), weight: 2, weak: true, make: s => next(s) },
  { name: 'anything I can do', open: new RegExp(String.raw`(?:^|[.?!;,] |\band )(?:anything|something|owt|summat|any (?:jobs?|work))(?: (?:waiting|left|going|there|on me|for me|on the list|else|that|which|small|useful|quick))* (?:i|we) (?:can|could|might) (?:(?:usefully|still|now|maybe) )*${DO}(?! (?:to|about|with (?:it|the)|it|the|them|that|this)\b)${SPELL}`), weak: true, weight: 4, make: s => next(s) },
  { name: 'what can be done', open: new RegExp(String.raw`\b(?:what|anything|what else|what work|what jobs?) (?:can|could|might|may|should|is to|remains to|ought to) (?:usefully |still |now |best )?be (?:done|got on with|started|tackled|finished|attempted|got at|worked on|undertaken)\b(?! (?:to|about|with|before|on)\b)${SPELL}`), weight: 3, make: s => next(s) },
  { name: "what's ready to work on", open: /\bwhat(?:s| is| are| jobs?(?: are| is)?| work(?: is)?| bits(?: are)?| things(?: are)?)(?: (?:there|now|all|currently|actually))* (?:ready (?:to be (?:worked on|done|started|tackled)|to (?:do|start|tackle|work on|go at|go)|for me)|open(?: to me| for work| for business)?|free to (?:start|do|go)|clear to (?:start|do)|waiting (?:for me|on me)|workable|available(?: to me)?|on the (?:go|cards)|unblocked|not (?:held up|blocked|waiting))(?= ?(?:$|[?.,]|now|today|and|inside|outside|indoors|outdoors|in\b|for\b|with\b))/, weight: 3, make: s => next(s) },
  { name: 'jobs not held up', open: /\b(?:what|which)(?: of (?:the|my))? (?:jobs?|things?|bits?|parts?|work)(?: (?:that|which))? (?:arent|isnt|are not|is not)(?: (?:being|still|currently|now))* (?:held up|waiting|blocked|stuck|stopped|hung up|delayed|tied up)(?: (?:by|on|for)(?: (?:any ?thing|something|parts?|paint|anybody|anyone))?)?/, weight: 5, make: s => next(s) },
  { name: 'inside jobs?', open: /(?:^|[.?!;,:] |\b(?:any|some|what|and|for|so|then|got any|give me) )(?:inside|indoors?|outside|outdoors?|bench|dry|rainy day|wet weather|short|quick|small|little) (?:jobs?|work|stuff|things)(?= ?(?:\?|$|\.|,|for\b|to do\b|today\b|tonight\b|i can\b|in\b|now\b|please\b|what\b|have (?:i|we|you)\b|are there\b))/, weak: true, weight: 2, make: s => next(s) },
  { name: 'time, whats good', open: /(?<=\b(?:inside|outside|indoors|outdoors|minutes|hours?) )(?:whats (?:good|possible|worth doing)|what can i do)(?= ?(?:$|[?.,]|and\b))/, weight: 1, make: s => spare(s, 0) ? next(s) : undefined },
  { name: 'time. what?', open: /(?:^|[.?!;,:] )(?:what|what (?:can|to|do i|should i) do|what now|whats (?:good|on|doable|possible)|jobs?|ideas|options|suggest(?:ions)?)(?= ?\?)/, weight: 1, make: s => spare(s, -1) || spare(s, 0) || spare(s, -2) ? next(s) : undefined },
  { name: 'what can I do', open: new RegExp(String.raw`\b(?:what(?:s)?|what (?:else|jobs?|work|bits?|little jobs?|small jobs?)|anything|something|is there anything|is there something|any jobs?|any work)(?: is| are)?(?: there)?(?: that| which)? ?(?:can|could|should|would|might|shall|ought|do|am|will) i (?:(?:best|usefully|actually|be|get|to|usefully|really|still|go|supposed|going|now) )*(?:do|doing|done|on with|getting on with|getting into|getting done|tackle|knock (?:out|off)|work(?:ing)? on|start(?: on)?|crack on with|fit in|get on with|finish|attack|pick|polish off|make a start on|get stuck into|manage|make|at|next|get through|squeeze in)(?! (?:to|about|with|it|the|them|that|this|if|need)\b)${SPELL}`), weight: 2, make: s => next(s) },
  { name: 'what can two of us do', open: new RegExp(String.raw`\bwhat (?:can|could|might|should) (?:(?:the )?(?:two|three|four|both|pair|lot) (?:of us|[a-z]+)|one (?:man|woman|person|pair of hands)|a (?:man|woman|body|fellow|person|lad) (?:alone |on (?:his|her) own )?|a pair of us) (?:(?:usefully|best|get|be) )*${DO}(?! (?:to|about|with|it|the|them|that|this|if)\b)${SPELL}`), weight: 2, make: s => next(s) },
  { name: "what's on today", open: /\b(?:whats|what is|what have i|what have i got) (?:on|lined up|planned|on the (?:cards|go|list|bench))(?: for)? (?:today|tonight|tomorrow|this (?:morning|afternoon|evening)|the (?:day|morning|afternoon|evening|weekend))(?= ?(?:$|[?.,!]))/, weight: 4, make: s => next(s) },
  { name: 'what next', open: /(?:^|[.?!;,:] |\b(?:so|and|now|well|ok|okay|right|then|but) )what(?: (?:now|then))?(?: (?:comes|is))? next(?= ?(?:$|[?.,!]))/, weight: 2, make: s => next(s) },
  { name: 'to be doing', open: new RegExp(String.raw`\b(?:what(?:s| is)?(?: there)?|anything|is there anything|something)(?: (?:there|left|else))* (?:to be (?:doing|at|getting on with)|(?:have|do) (?:i|we) (?:got |have )?(?:waiting )?(?:to|i can) (?:do|be at|get on with))${SPELL}(?= ?(?:$|[?.,!]|inside|outside|in\b|while|that|for\b|before\b))(?! that (?:needs|is|was)\b)(?! (?:before|for) (?:the|i|we)\b)`), weight: 2, make: s => next(s) },
  { name: 'what will I do', open: new RegExp(String.raw`\bwhat(?:ll| will| shall) (?:i|we) (?:(?:best|usefully|be|get) )*${DO}(?! (?:to|about|with|it|the|them|that|this|if)\b)${SPELL}`), weight: 2, make: s => next(s) },
  { name: "what's there I can do", open: new RegExp(String.raw`\b(?:whats|what is|what jobs are|is|anything|what)(?: there)?(?: anything| something)?(?: that)? i (?:can|could|should|might) (?:(?:be|usefully|get) )*(?:do|doing|done|tackle|knock out|get done|work on|be at|on with|start)(?! (?:to|about|it|the|them)\b)${SPELL}`), weight: 2, weak: true, make: s => next(s) },
  { name: 'anything for indoors', open: /(?:^|[.?!;,:] |\b(?:there|got|is|and|for|any|some) )(?:anything|something|owt|summat|stuff|jobs?)(?: (?:short|quick|small|little|easy|useful|light|handy|and|or|that is|thats))* (?:indoors?|outdoors?|inside|outside|under cover|in the (?:dry|warm|shed|shop|barn|garage))(?=[^.?!]{0,40}(?:\?|$))/, weak: true, weight: 3, make: s => next(s) },
  { name: 'a shed job I can do', open: new RegExp(String.raw`\b(?:whats|what is|is there|have i(?: got)?|got)(?: (?:an?|any|some|the|good|quick|short|small|little|shed|shop|bench|inside|indoor|outside|outdoor|yard|house))* jobs? (?:that )?(?:i|we) (?:can|could|might) ${DO}`), weight: 3, make: s => next(s) },
  { name: 'have I anything I can do', open: /\b(?:have (?:i|we)(?: got)?|is there|do i have|what have i got)(?: (?:anything|something|owt|any jobs?|any work|a job|thats|that))+\b(?=[^.?!]*\b(?:(?:i|we) (?:can|could) (?:do|start|finish|tackle|be at|get done|work)|(?:keeps?|keep) me (?:in|out|under|busy|occupied|going)|(?:wants|needs) doing (?:in|out|under|today|now|while)))/, weight: 5, make: s => next(s) },
  { name: 'what wants doing inside', open: /\b(?:what|whats|anything|owt)(?: (?:jobs?|have|i|got|is|there|that|work|outside|inside))* (?:wants|needs|want|need) doing (?=(?:inside|outside|indoors?|outdoors?|under cover|in the (?:dry|warm|shed|shop|barn))\b)/, weight: 5, make: s => next(s) },
  { name: 'what is there for me to do', open: /\b(?:whats|what is)(?: there| left)+ for (?:me|us)(?: to (?:do|be at))? (?=(?:next |now |then )?(?:inside|outside|indoors?|outdoors?|under cover|out in|in the)\b)/, weight: 3, make: s => next(s) },
  { name: 'what can anybody do', open: new RegExp(String.raw`\bwhat (?:all |else )?(?:can|could|might) (?:us|we all|a (?:person|man|body|fella)|anybody|somebody|one) (?:(?:usefully|best|get|be|still) )*${DO}(?! (?:to|about|it|the|them|that|this|if)\b)${SPELL}`), weight: 3, make: s => next(s) },
  { name: 'what all could I do', open: new RegExp(String.raw`\bwhat all (?:can|could|might|should) i ${DO}(?! (?:to|about|it|the|them|that|this|if)\b)${SPELL}`), weight: 3, make: s => next(s) },
  { name: 'what do I do with an hour', open: /\bwhat (?:do|shall|will|should|can) i do with (?=(?:an?|half|the|my|#|\d|[a-z]+) (?:an? )?(?:spare )?(?:hours?|minutes|quarter)\b)/, weight: 4, make: s => next(s) },
  { name: "what'll fit in", open: /\bwhatll (?:fit|go|squeeze) (?:in|into)\b/, weight: 3, make: s => next(s) },
  { name: "what's next", open: /\b(?:whats|what is|what comes|so whats|what do i do|what should i do|what shall i do|what am i doing|what goes|whats the|what job is|whats up|what to do|what would you do)(?: next| the next (?:job|thing|step)| next job| (?:best )?(?:job|thing) to do(?: next)?| the next best)(?: (?:now|then|on (?:the )?(?:list|agenda)|to do|up|inside|outside|indoors|outdoors))*(?! (?:week|month|year|due))/, weight: 2, make: s => /^ (?:week|month|to (?:buy|get|order))/.test(s.desk.text.slice(s.end)) ? undefined : next(s) },
  { name: 'next job', open: /(?:^|[.?!;,] |\b(?:and|so|okay|right|give me the|show me the|tell me the) )(?:the )?next (?:job|thing to do|step|task|up)s?(?= ?(?:$|[?.,]))|(?:^|[.?!;] )next ?\?/, weight: 1, make: s => next(s) },
  { name: 'what have I got indoors', open: /\b(?:whats|what|anything|what have i got|what work have i|what jobs have i(?: got)?|what is there|whatve i got|have i anything|got anything|have i got anything|any jobs?|any work|anything useful|is there anything|what(?:s| is) there)(?: (?:have i got|ive got|there|is|left|to do|that needs doing|going|for|doing|waiting|i|can|do|jobs?|in|the|way of|got|else|ready|work))* (?:indoors?|outdoors?|inside|outside|in the shop|in the garage|under cover|for (?:indoors|outdoors|inside|outside))(?! (?:the|diameter|my|of(?! an? (?:couple|hour|few)\b)|bolts?|bearing|edge))/, weight: 2, make: s => next(s) },
  { name: 'time, anything?', open: /(?:^|[.?!;,] )(?:anything|any ideas?|any suggestions?|what (?:then|now)|suggestions?|whatll i do|what is there|whats there|what for|so what|what have you got(?: for me)?|what fits|whats(?: a)? quick|something quick|what can i (?:fit in|squeeze in)|whats small enough|what(?:s| is) worth (?:doing|starting))(?= ?(?:\?|$|\.|to do|worth doing|i can))(?: (?:to do|worth doing|i can do|i can get done))?/, weight: 1, make: s => spare(s, -1) || spare(s, 0) ? next(s) : undefined },
  { name: 'fits in # minutes', open: /\b(?:what|whats|anything|is there anything|which jobs?|any jobs?|something|what jobs?)(?: (?:will|would|jobs?|i can|can i|thats|thatll|that|have i|i have|ive|got|there|is|else|could i|could))* (?:fits?(?: in)?|takes?|quick|short|(?:get )?done in|doable in|squeeze in|fill)(?: (?:in|into|under|less than|with|about|only|around|just))*(?= )/, weight: 2, weak: true, make: s => spare(s, 0) ? next(s) : undefined },
  { name: 'what should I work on', open: /\b(?:what|which (?:job|part|bit)|where)(?: (?:should|do|can|shall|would|could) (?:i|we|you (?:say|suggest|reckon) i))? (?:start|tackle|work on|begin|get on with|crack on with|go at|turn to|do)(?: (?:first|next|now|today|tonight|tomorrow|this (?:morning|afternoon|evening|weekend)))+/, weak: true, weight: 1, make: s => next(s) },
  { name: 'something for inside', open: /(?:^|[.?!;:] |\b(?:give me|gimme|find me|so|and|got) )(?:something|anything|a job|some work)(?: (?:small|quick|little|easy|short|useful|handy))?(?: (?:to do|i can do))? (?:for )?(?:inside|indoors?|outside|outdoors?|in the (?:dry|warm|shop|shed)|under cover|at the bench)(?= ?(?:$|[?.,]|for\b|in\b|while\b|until\b|till\b))/, weight: 3, make: s => next(s) },
  { name: 'give me a job', open: /\b(?:give|find|suggest|pick|got|throw)(?: me)? (?:something|a (?:small |quick |little |wee )?job|jobs?|work)(?: (?:to do|i can do|to be at|to get on with|for|that))?/, weak: true, weight: 1, make: s => next(s) },
];

/** "is it dry enough to paint outdoors, and what can I do": what another question says of its place and time is not said of this one. */
const aside = (before: string): string => (/^(?:(?:so|and|well) )*(?:is|are|will|can|could|what|whats|where|how|when)\b/.test(before) && /,? and $/.test(before) ? '' : before);

/** A length of time named in this sentence (0), the one before (-1) or the one after (1). */
function spare(s: Seen, shift: 0 | 1 | -1 | -2): number | undefined {
  const here = sentenceAt(s.desk, s.start);
  const i = s.desk.sentences.indexOf(here as never) + shift;
  const at = s.desk.sentences[i] ?? (shift === 0 ? here : undefined);
  if (!at) return undefined;
  return spell(s.desk, at.start, at.end)?.minutes;
}

function next(s: Seen): Ask[] {
  const before = aside(s.desk.text.slice(sentenceAt(s.desk, s.start).start, s.start));
  const after = s.desk.text.slice(s.start, s.stop);
  const cut = /(?:,? and|,) (?:whats|what|where|wheres|how|when|whens|who)\b/.exec(after.slice(8));
  const own = cut ? after.slice(0, cut.index + 8) : after;
  const place = INSIDE.test(own) ? 'indoors' as const : OUTSIDE.test(own) ? 'outdoors' as const
    : INSIDE.test(before) && /\b(?:stuck|staying|stay|im|keep me|warm)\b/.test(before) ? 'indoors' as const
    : INSIDE.test(before) || OUTSIDE.test(before) ? (INSIDE.test(before) ? 'indoors' as const : 'outdoors' as const)
    : INSIDE.test(previous(s)) && /\b(?:stuck|staying|stay|im in|minutes|hours?)\b/.test(previous(s)) ? 'indoors' as const
    : /^ ?(?:indoors?|inside)\b/.test(previous(s)) ? 'indoors' as const : /^ ?(?:outdoors?|outside)\b/.test(previous(s)) ? 'outdoors' as const : undefined;
  const ago = /\b(?:free|spare|left|got|ive|have|before)\b/.test(previous(s, -2)) && previous(s).length < 24 ? spare(s, -2) : undefined;
  const near = (/\b(?:within the|(?:for|in) the next|the next) hour\b/.test(after) ? 60 : undefined) ?? minutesIn(s, s.start, s.start + own.length) ?? minutesIn(s, s.start - before.length, s.start, true) ?? (/\b(?:ive|i have|got|have|only|spare|theres|before|till|until|free|left|with|only)\b|^[a-z0-9 ]{0,18}\.? ?$/.test(previous(s)) ? spare(s, -1) : undefined) ?? ago ?? timeAfter(s);
  return [{ kind: 'next', ...(near ? { minutes: Math.round(near) } : {}), ...(place ? { place } : {}) }];
}
/** "Anything I can get on with? I've forty minutes.": the time is said afterwards. */
const timeAfter = (s: Seen): number | undefined => (/^ ?(?:(?:well|so|only|because|cause) )*(?:ive|i have|got|theres|i only have)\b/.test(previous(s, 1)) ? spare(s, 1) : undefined);
function previous(s: Seen, shift = -1): string {
  const i = s.desk.sentences.indexOf(sentenceAt(s.desk, s.start) as never) + shift, p = s.desk.sentences[i];
  return p ? s.desk.text.slice(p.start, p.end) : '';
}
/** A free span of time: before the question it must be said to be had ("I've got an hour"). */
function minutesIn(s: Seen, start: number, end: number, before = false): number | undefined {
  const f = spell(s.desk, start, end);
  if (!f) return undefined;
  if (before && !/\b(?:ive|i have|got|have|only|spare|theres|with|if i|about|free|for|meanwhile|meantime|take|call it|say|till|until|before|theres|leaves|left|kill|another|down to|fill)\b[^.?!]*$/.test(s.desk.text.slice(start, f.start))) return /^\s*$/.test(s.desk.text.slice(start, f.start)) ? f.minutes : undefined;
  return f.minutes;
}

import { asking, type AskRule } from './rule.ts';
import type { Ask } from '../../../domain/model/ask.ts';

const PUT = String.raw`(?:put|stick|stuck|leave|left|stash|stashed|hide|hid|set|lay|store|stored|stow|stowed|keep|kept|chuck|chucked|drop|toss|throw|place|park|file|squirrel|end up putting|got to with|go with|do with|wind up putting|placed|shove|hang|box up|pack away|tuck)`;
const OATH = String.raw`(?: ?(?:the|in the|on) (?:devil|hell|heck|blazes|earth|world|shop|shed|garage|barn|name of \w+)| on gods (?:green )?earth| ?abouts| exactly| again)?`;
const TAIL = /^ ?(?:away|to|at|now|again|gone(?: to)?|got to|kept|hid|stashed|down|off to|i pulled|living|these days|put)\b/;
const each = (names: string[]): Ask[] => names.map(part => ({ kind: 'where', part }));

/** Where was it put. */
export const WHERE: readonly AskRule[] = [
  { name: 'where did I put X', open: new RegExp(String.raw`\bwhere?(?:d|s)?${OATH} (?:did |do |have |had |would |could |might )?(?:i|we|you)(?: have| ve)?(?: go and| actually| last| just)? ${PUT}(?: away| up| down)?(?= )`), things: 'list', tail: TAIL, weight: 3, make: s => /^where (?:i|we) /.test(s.m[0]) && (!asking(s.desk, s.start) || /\b(?:is|are|was|were|right|back|just|exactly|stay|stays|leave it) $/.test(s.desk.text.slice(0, s.start))) ? undefined : each(s.names) },
  { name: 'where have I got X', open: /\bwhere (?:have|had|do) (?:i|we) (?:got|have|keep) /, things: 'list', tail: TAIL, weight: 2, make: s => each(s.names) },
  { name: 'where did X go', open: new RegExp(String.raw`\bwhere(?:d|${OATH} (?:did|have|has|do|does)) `), things: 'list', tail: /^ (?:go|get to|gone|got to|end up|wind up|live|sit|get put|disappear(?: to)?|vanish(?: to)?|get stashed|hide|get off to|belong)\b/, tailNeeded: true, weight: 2, make: s => each(s.names) },
  { name: 'where are X', open: new RegExp(String.raw`\bwher?e?(?:s${OATH}|${OATH}(?: is| are| re| was| were| would| ll))${OATH}(?: be)?(?= )`), things: 'list', tail: TAIL, make: s => /^ (?:leaking|worn|cracked|rusted|soft|gone soft|going to|coming|supposed|cheap)/.test(s.desk.text.slice(s.end)) ? undefined : each(s.names) },
  { name: 'where the X are', open: /\bwhere(?= (?:the|my|those|all the|that|ive|i)\b)(?: ive| i)?(?: put| left| stuck| stashed| hid| kept| stowed| set| got)?/, things: 'list', tail: /^ (?:is|are|was|were|went|go|got to|have got to|has got to|ended up|live|lives|at|get to|got put|have gone)\b/, weak: true, make: s => (s.tail || / (?:put|left|stuck|stashed|hid|kept|stowed|got)$/.test(s.m[0])) && !/^ (?:soft|worn|cracked|leaking|rusted|thin|bad|loose|pitted|gone|off|out|sitting)/.test(s.desk.text.slice(s.end)) ? each(s.names) : undefined },
  { name: 'which shelf are X on', open: /\b(?:which|what|whats) (?:shelf|drawer|box|bin|tin|can|bucket|place|corner|cupboard|tray|coffee can|tub|pail|jar|rack|bench|hook|bag|crate)(?: of mine)? (?:did i (?:put|leave|stick)|have i got|has|holds|is|are|were|was) /, things: 'list', tail: /^ (?:in|on|into|under|put in)\b/, weight: 2, make: s => each(s.names) },
  { name: 'find me X', open: /(?:^|[.?!,;] |\b(?:and|please|help me|can you|could you|help|me to|trying to|where can i|how do i) )(?:find|locate|track down|hunt (?:up|down))(?: me| out where)? (?!out)/, things: 'list', make: s => /^ (?:price|cheap|supplier|source|somewhere|someone)/.test(s.desk.text.slice(s.end)) || s.names.some(n => /price|cheap|supplier|dealer|source|deal/.test(n)) ? undefined : each(s.names) },
  { name: 'have you seen X', open: /\b(?:have you|has anyone|anyone|anybody|you) seen /, things: 'list', make: s => each(s.names) },
  { name: 'location of X', open: /\b(?:location|whereabouts)(?: of| for)? /, things: 'list', weak: true, make: s => each(s.names) },
  { name: 'what did I do with X', open: /\bwhat (?:the (?:devil|hell|heck) )?(?:did|have) i (?:do|done) with /, things: 'list', weight: 4, make: s => each(s.names) },
  { name: 'cannot find X', open: /\bcan ?t (?:find|lay my hands on|put my hand on|locate|see) /, things: 'list', tail: /^,? (?:where\b|any idea|did i|anywhere)/, tailNeeded: true, make: s => each(s.names) },
  { name: 'X, where', open: /(?:^|[.?!;] )(?=[a-z ]+,? where(?: (?:is it|are they|did (?:i|it|they)|have i)| ?\?))/, things: 'list', tail: /^,? where(?:s|re)?(?: (?:is it|are they|did i put (?:it|them)|did (?:it|they) (?:go|get to)|have i (?:put|got) (?:it|them)|at))?/, tailNeeded: true, make: s => each(s.names) },
];

import type { Ask } from '../../../domain/model/ask.ts';
import { verbForms } from '../../words/verbs.ts';
import { spokenOf } from './spoken-of.ts';
import { thingAt } from './thing-at.ts';
import type { AskRule, Seen } from './rule.ts';

const on = (part: string | undefined): Ask[] | undefined => part ? [{ kind: 'blocked', part }] : undefined;
const HOLD = String.raw`(?:hold(?:s|ing)?(?: me)? (?:up|back)|keep(?:s|ing)? me from|st(?:ands?|anding|ood) (?:still )?between (?:me|us) and|stop(?:s|ping)?(?: me)?(?: from)?|block(?:s|ing)?|keep(?:s|ing)?(?: me)? from|prevent(?:s|ing)?(?: me)?(?: from)?|delay(?:s|ing)?|(?:stand(?:s|ing)? )?in the (?:way|road|path) of|between me and|hang(?:s|ing) up|the (?:hold ?up|holdup|hang ?up|hold up) (?:on|with)|jamming up|the delay (?:on|with)|left before i can|to (?:be )?do(?:ne)? before)`;
/** "putting the seat on", "paint", "fit": the verb before the part, so that the part alone is named. */
const DOING = /^ ?(?:me )?(?:from )?(?:to |about |on )?(?:(?:getting|get|go(?:ing)?|start(?:ing)?|finish(?:ing)?|begin(?:ning)?|proceed(?:ing)?|carry(?:ing)?|press(?:ing)?(?= on)|push(?:ing)?(?= on)|crack(?:ing)?(?= on)) (?:on with |on |to |and |ahead and |ahead with |with )?)?([a-z]+(?:ing)?)? ?(?:up |down |in |on |back |off |out |together )*(?=(?:the|my|that|those|it|them|both|[a-z]))/;

function partAfter(s: Seen, from = s.end): { name: string; end: number } | undefined {
  const text = s.desk.text.slice(from, s.stop);
  const m = DOING.exec(text);
  if (m?.[1] && (verbForms(m[1]).length || /ing$/.test(m[1]) && /^(?:the|my|that|this|those|it|them)\b/.test(text.slice(m[0].length)))) { // "stepping the mast": a deed though no word list knows it
    const t = thingAt(s.desk, from + m[0].length, s.stop);
    if (t) return t;
  }
  const work = /^ ?the (?:(?:re)?[a-z]+ing|fitment|refit|assembly|installation|mounting|completion|painting) of (?=[a-z])/.exec(text);
  const bare = work ?? /^ ?(?:me )?(?:from )?(?:to |about |on )?(?:getting|get|going|go|starting|start|finishing|finish|beginning|begin|proceed(?:ing)?|carry(?:ing)?|press(?:ing)?|push(?:ing)?|crack(?:ing)?)(?: on with| on| to| and| ahead with| up| with)? (?=(?:the|my|this|that|it)\b)/.exec(text);
  return thingAt(s.desk, from + (bare?.[0].length ?? 0), s.stop);
}

/** What holds up a part or job; can it be done yet. */
export const BLOCKED: readonly AskRule[] = [
  { name: 'any reason I cannot', open: /\b(?:any|what|whats the|is there any|is there a|give me a|one good)(?: (?:good|earthly|particular|sound|other|real|obvious))? reasons? (?:why )?(?:that )?(?:i |it |we )?(?:can ?t|cannot|shouldn ?t|couldn ?t|not to|i can ?t) /, weight: 3, make: s => on((partAfter(s) ?? it(s))?.name) },
  { name: 'any reason X cannot', open: /\b(?:any|what|is there any|is there a|whats the)(?: (?:good|earthly|particular|sound|other|real|obvious))? reasons? (?:why )?(?:that )?(?=(?:the|my|that|those|this)\b)/, things: 'one', tail: /^ (?:can ?t|cannot|couldn ?t|shouldn ?t|wont|isnt|arent) (?:yet )?(?:go|be|get|come|have|take|on|back)?\b/, tailNeeded: true, weight: 3, make: s => on(s.names[0]) },
  { name: 'what has me held up on X', open: /\bwhat(?:s| is| has| have)?(?: got)? (?:me|us) (?:held|hung|tied|stuck|stopped|stalled|bogged)(?: (?:up|down|back))?(?: (?:on|with|over|at|from))? /, weight: 4, make: s => on(partAfter(s)?.name) },
  { name: 'impediment to X', open: /\b(?:what|is there any|is there an?|any|are there any|which|what other)(?: (?:further|remaining|the|is|are|still))* (?:impediments?|obstacles?|hindrances?|obstructions?|barriers?|bottlenecks?|snags?|hold ?ups?|delays?|objections?|outstanding (?:items?|work|matters?))(?: (?:there|is|are|remains?|remaining|stands?|exists?|still|left|if any))* (?:to|for|with|on|against|before|in the way of) /, weak: true, weight: 4, make: s => /^any/.test(s.m[0]) && s.desk.text[s.stop - 1] !== '?' && / (?:is|are|was|were) /.test(s.desk.text.slice(s.end, s.stop)) ? undefined : on(partAfter(s)?.name) },
  { name: 'left to do before X', open: /\b(?:whats|what is|what else is|what have i got|what do i have|is there (?:anything|much)|anything|how much is)(?: (?:still|there|all))* (?:left|still|yet|remaining|to be done|to do)(?: (?:to do|to be done|undone|to finish|outstanding))* (?:before|so that|until|till|ahead of)(?: i can| we can)? (?=(?:the|my|that|this|it|[a-z]+ing)\b)/, weight: 5, make: s => on(partAfter(s)?.name) },
  { name: 'what remains before X', open: /\bwhat(?: (?:else|all|work|still|yet))* (?:remains|is left|is outstanding|stands|is wanting|is wanted)(?: (?:to do|to be done|undone|still))* (?:before|ahead of|until|till) (?=(?:the|my|that|this|it)\b)/, things: 'one', weight: 5, make: s => on(s.names[0]) },
  { name: 'holding X up', open: /\b(?:whats|what is|anything|something|what else is)(?: still)? (?:holding|hanging|keeping|tying) (?=(?:the|my|that|this|those|it|them) )/, things: 'one', tail: /^ (?:up|back|from (?:going|being|getting)|off|out of|out)\b/, tailNeeded: true, weight: 4, make: s => on(s.names[0]) },
  { name: 'what does X need before', open: /\bwhat(?: all| else)? (?:does|do|is|must|should|has|have) /, things: 'one', tail: /^ (?:still )?(?:need|want|wait(?:ing)? (?:on|for)|lack|require|missing|got to have|have to have|take)(?: (?:done|doing|to have|to be done|fitted))* (?:before|ahead of|first|so)\b/, tailNeeded: true, weight: 4, make: s => on(s.names[0]) },
  { name: "what's holding up X", open: new RegExp(String.raw`\b(?:whats|what is|what|whats still|whats all|what all is|what else is|anything|is (?:there )?(?:something|anything)|something|somethings|is anything still|tell me whats|who is|whos)(?: (?:still|else|thats|that is|is|all|now|that|it|really|do i have))* ${HOLD}`), weight: 3, make: s => {
    const t = partAfter(s) ?? (/\b(?:it|that|them)?\b/.test(s.desk.text.slice(s.end, s.stop)) ? it(s) : undefined);
    return on(t?.name); } },
  { name: 'why can I not', open: /\bwhy (?:can ?t|cannot|couldn ?t|can i not|am i not able to|wont|arent i|havent i) (?:i |it |we )?(?:yet |just |still )?(?:be able to )?/, weight: 3, make: s => on(partAfter(s)?.name) },
  { name: 'what can I not do on X', open: /\bwhat (?:can ?t|cannot) (?:i|we) (?:do|get on with|start|finish|touch)(?: (?:yet|now|still))* (?:on|to|with|at) (?=(?:the|my|that|this|it)\b)/, things: 'one', weight: 3, make: s => on(s.names[0]) },
  { name: 'why is X not on', open: /\b(?:why (?:isnt|arent|is|are|hasnt|havent)|whys|how come) /, things: 'one', tail: /^ (?:not |still not |still )?(?:on|done|finished|painted|back|fitted|in|off|held up|stuck|waiting|ready|been|going|together|not)\b[^.?!,]*/, tailNeeded: true, weight: 2, make: s => on(s.names[0]) },
  { name: 'can I VERB X yet', open: /\b(?:can|could|may|might|am i (?:clear|good|ok|okay|all right|alright|right|set|cleared|fit|ready|able|free|allowed)|is it (?:ok|okay|safe|all right|alright|time|too soon|too early)|should|are we (?:clear|good|ready)) (?:i |we |one |to |for |me )*(?:now |still |already |finally |just |at last |go ahead and |safely |get on and |get |start |begin |be )*(?=[a-z])/, weight: 1, make: s => canI(s) },
  { name: 'can X go on', open: /\b(?:can|could|may|might|will|is|are) (?=(?:the|my|that|those|it|they|[a-z]+ )\b)/, things: 'one', tail: /^ (?:ready|clear|good|okay|ok|fit|all set|set|free|able|safe)? ?(?:now |yet |to |be )*(?:go|come|be|get|have its|go back|start|for|to go|going)? ?(?:back )?(?:on|in|up|together|fitted|painted|primed|bolted|hung|assembled|mounted|installed|put|torqued|welded|machined|sprayed|filled|started|fired|run|paint|primer|top ?coat|assembly|fitting|installed|reassembly|reassembled|closed|buttoned|bled|set|dropped|lowered|refitted)\b(?: (?:back|on|in|up|together|for good|yet|now|again|down))*/, tailNeeded: true, weight: 2, make: s => ready(s) ? on(s.names[0]) : undefined },
  { name: 'is X ready', open: /\b(?:is|are) /, things: 'one', tail: /^ (?:all |now |finally |still )?(?:ready|clear|good to go|clear to go|cleared|free to go|held up|blocked|stuck|stopped|waiting (?:on|for) (?:anything|something)(?: at all| else)?)\b(?: (?:to|for|on|by|yet|now)[^.?!,]*)?(?= ?(?:\?|$|,|\.|and|or|yet))/, tailNeeded: true, weak: true, weight: 2, make: s => on(s.names[0]) },
  { name: 'what is X waiting on', open: /\b(?:whats|what is|what are|what|why is|what do|what does|whatre) /, things: 'one', tail: /^ (?:still )?(?:waiting (?:on|for)|held up (?:by|on|for)|hung up on|wait(?:ing)? on|stuck (?:on|for)|need (?:before|first|doing before|done before)|needing before|lacking|hanging on|blocked by|depend on|depending on|short of before)\b/, tailNeeded: true, weight: 3, make: s => on(s.names[0]) },
  { name: 'what am I waiting on for X', open: /\bwhat(?: else)? (?:am i|are we|do i) (?:still )?(?:waiting (?:on|for)|need(?: to (?:do|have|get)(?: done)?)?|have to do|got to do|must i do)(?: (?:done|first))? (?:before (?:i can|i|we can|we|the|my)?|so i can|to (?:be able to )?(?=(?:put|fit|hang|paint|mount|bolt)\b)|with|on the|with the|for the) ?/, weight: 2, make: s => {
    const t = s.m[0].endsWith('the ') ? thingAt(s.desk, s.end, s.stop) ?? partAfter(s) : partAfter(s); return on(t?.name); } },
  { name: 'what do I want doing before X', open: /\bwhat(?: else| all)? (?:do|must|have|should|will) (?:i|we) (?:still )?(?:want|need|have|got|get|be)?(?: to)? ?(?:doing|done|do|see to|finish|get done|sort)(?: (?:first|yet))? (?:before|ahead of) (?:the |i can |i )?/, weight: 4, make: s => on(partAfter(s, back(s))?.name) },
  { name: 'what has to happen before X', open: /\bwhat(?:s| all)? (?:has|have|needs?|had|must|still needs|still has|still needs?|left|still|all has|comes|goes|should be|should|else has|else needs|to do)(?: (?:to|be|done|happen|go on|come|first|get|doing|have))* (?:before|ahead of|so)(?: (?:i|we|the|can|could|it))*/, weight: 3, make: s => {
    const t = partAfter(s, back(s)); return on(t?.name); } },
  { name: 'how come X is not', open: /\bhow come (?:i can ?t |i still can ?t |i couldnt )?/, weight: 2, make: s => on(partAfter(s)?.name) },
  { name: 'anything in the way', open: /\b(?:anything|something|is (?:there )?(?:anything|something)|whats|what is)(?: still| left| to)? (?:hold(?:ing)? (?:it|me|that|them) (?:up|back)|in the way|stopping (?:me|it|that)|holding things up|in my way)\b/, weight: 3, make: s => on(it(s)?.name) },
];

const it = (s: Seen): { name: string } | undefined => { const name = spokenOf(s.desk, s.start); return name ? { name } : undefined; };
const back = (s: Seen): number => s.desk.text.slice(0, s.end).endsWith(' the') ? s.end - 4 : s.end;

/** "can I put the seat on yet": a verb of the trade and a part; not "can I get", "can I see", "can I use". */
function canI(s: Seen): Ask[] | undefined {
  const opener = s.m[0];
  if (/\b(?:i|we|he|she|they|you)(?: still| only| then| just| at last)? $/.test(s.desk.text.slice(0, s.start + /^ */.exec(opener)![0].length))) return undefined; // "before I can get at it" tells
  const got = /\bget $/.test(opener), rest = (got ? 'get ' : '') + s.desk.text.slice(s.end, s.stop);
  const verb = /^([a-z]+)/.exec(rest)?.[1] ?? '';
  const yet = /\b(?:yet|now|already|today)\b/.test(rest) || /\b(?:clear|good|ready|safe|allowed|free|able|too soon|too early|time)\b/.test(opener);
  if (/^get (?:at|to|on|onto|into|back|in) /.test(rest)) return on(thingAt(s.desk, s.end - (got ? 4 : 0) + /^get [a-z]+ (?:with |to |at |on )?/.exec(rest)![0].length, s.stop)?.name);
  if (/^(?:do|see|have|use|get|buy|ask|say|know|be|find|expect|afford|reach|count|weld|save|run|swap|substitute|go with|borrow|make|claim|trust|reuse)$/.test(verb) && !yet) return undefined;
  if (/^(?:see|have|ask|say|know|find|buy|do)$/.test(verb)) return undefined;
  if (/^(?:should)/.test(opener) && !yet) return undefined;
  if (/\b(?:how|what|when|where|which|who) $/.test(s.desk.text.slice(0, s.start)) || /\b(?:what|how|which|where|when)(?: [a-z]+){0,3} $/.test(s.desk.text.slice(Math.max(0, s.start - 24), s.start))) return undefined;
  if (!/^(?:can|could|may|might|should) (?:i|we|one)\b/.test(opener) && !/ (?:to|for|i|me) /.test(opener)) return undefined;
  if (!verbForms(verb).length && !/^(?:start|go|put|fit|paint|button|close|drop|hang|mount|proceed|carry|press|push|crack)/.test(verb)) return undefined;
  const t = partAfter(s);
  return on(t?.name ?? it(s)?.name);
}

/** "is the hood ready for paint", "can the pulley go on yet"; "will it go on" is a hope and "is it in" a question of place. */
function ready(s: Seen): boolean {
  const opener = s.m[0].trim(), tail = s.tail?.[0] ?? '';
  if (/^(?:can|could|will)$/.test(opener) && !/^ (?:now |yet |just |still )*(?:go|come|be|get|have|start|stay)\b/.test(tail)) return false; // "put the draper can this on"
  if (opener === 'will') return /\byet|now\b/.test(tail) || s.desk.text.slice(s.end, s.end + 5).includes('yet');
  if (opener === 'is' || opener === 'are') return /\b(?:ready|clear|(?<!for )good|ok|okay|fit|set|free|able|safe)\b/.test(tail);
  return true;
}

import { slateOf } from '../../../dimensions/rule.ts';
import { type Desk, sentenceAt } from '../desk.ts';
import type { Candidate } from './candidates.ts';
import { wholeOf } from './kind.ts';
import { SUM_NAMES } from './names.ts';
import { TOLD } from './told.ts';
import { Scope } from './scope.ts';

/** What joins a question to the one before it. */
const JOINED = String.raw`(?:and |or |but |then |so |also |ok |okay |now )*`;
/** "it", "that", "would it be", "does it come to": words between "what" and the case that is put. */
const OF_IT = String.raw`(?: (?:is|are|does|do|would|will|it|that|this|be|come to|comes to|go|want|give|i|get|need|then))*`;
const CASE = String.raw`(?:with|at|on|for|if|using|before|under|when)\b`;
const FOLLOW = new RegExp(String.raw`(?:^|[.?!;,] |\s)(${JOINED}(?:${[
  String.raw`(?:what|how)(?:s|d)?(?: it| that)? (?:if|about|bout|would it be|happens)\b`,
  String.raw`how (?:much|many|far|fast|hot|tight|long|big|strong|cold)(?: [a-z]+)? ${CASE}`,
  String.raw`(?:and )?what (?:makes|gives|gets|makes up) (?=#)`,
  String.raw`i(?: would|d)? (?:also )?(?:like|want) (?:the figure|it|that|to know)(?: also| too)? (?:at|for|with) `,
  String.raw`(?:what|whats|whatd|whatll)${OF_IT} ${CASE}`,
  String.raw`(?:and|or|but) (?:would|will|does|is) (?:it|that|they)(?: be| get| come)?(?: (?:any|much|a lot|a bit))?(?: [a-z]+er)? (?:at|with|on|if|using)\b`,
  String.raw`(?:and|or) what (?:would|will) (?:it|that|they) (?:be|go|want|take) (?=[a-z]+(?: instead)? ?(?:[?.]|$))`,
  String.raw`(?:versus|vs|as against|compared (?:to|with)) (?=(?:an?|one|the)\b|#)`,
  String.raw`(?:do|run|work|figure) (?:it|that) (?:again|over|out again)? ?(?:in|with|at|for|using)\b`,
  String.raw`what of (?=(?:an?|one|the)\b|#)`,
  String.raw`(?:how (?:much|many)|what)(?: [a-z]+){0,2} if (?:i|we)\b`,
  String.raw`then (?:again|the same|same again|tell me|give me) (?:with|at|on|for|in)\b`,
  String.raw`(?:suppose|supposing|imagine|say)(?: that)? (?:i|we|it|they|the|its|theyre|there|a|an)\b`,
  String.raw`(?:give|tell) (?:it to me|me (?:it|that|one)|me|it) (?:for|at|with|in) (?=#|the\b|an? )`,
  String.raw`(?:were|should) (?:i|we|it|they|the [a-z]+) (?:to )?`,
].join('|')}))`, 'g');
/** A question that by its wording only puts another case of what was asked before: "what is it if", "how much with". */
export const VARIED = new RegExp(String.raw`^${JOINED}(?:(?:what|whats|whatd|whatll)${OF_IT}|how (?:much|far|fast|hot|tight|long|big)(?: [a-z]+)?) ${CASE}`);
/** "and what three", "and which for a half inch", "and what would 40 be", "or maybe four flats", "and then ten gauge": turns to another figure where the first question has all it needs. */
const AND = new RegExp(String.raw`(?:^|[.?!;] |,? )(${[
  String.raw`(?:and|or)(?: then)? (?:the )?same [a-z]+(?: and [a-z]+)? (?:but\b|(?:with|at|for|in|on)\b)`,
  String.raw`(?:and |or )?then(?: (?:again|the same))?(?: (?:at|for|with|on|in))? (?=#)`,
  String.raw`(?:and|or) double\b`,
  String.raw`(?:and|or) can (?=#)`,
  String.raw`an (?=if\b)`,
  String.raw`(?:and|or|then|also|same)(?: (?:again|thing|question|but))*,? (?:for|at|of|if|with|on|from|to|in|say|using|before|the same)\b`,
  String.raw`(?:and|or|also)(?: then| maybe| perhaps| again| even)* (?=an? |the |one |anothers?\b|#|\d|m ?[#\d])`,
  String.raw`(?:and|or|also) (?:what|how much|how many|which)(?: (?:would|does|is|do|of|for|in))* (?=#|m ?[#\d])`,
].join('|')})`, 'g');
/** A sentence that puts another case: "For 60?", "In 12?", "Same in oak". */
const HEAD = /^(?:(?:for|at|with|if|now (?:with|do|at|for|in|give me|make it|try)|(?:and )?without|give me|do me|do it again|same|or|against|versus|then (?:again|the same|same again|with|for|at|in)|the (?:alternative|other(?: one)?) is)\b|(?:and|or) (?:in )?[a-z]+ ?\?)/;
/** Words that open another case though nothing asks: "While you're at it, anti-seize instead.", "Then the 3/8 coarse.", "Redo it with 8 gauge." */
const INSTEAD = /^(?:and |or |then |ok |okay |so |also |now )*(?:again|call it|make it|try|while youre at it|re(?:do|peat|compute|figure|work|run|calculate)|(?:the )?same|for comparison|if not)\b|^then (?!(?:i|ill|im|we|well|ive|he|she|they|it|its)\b)|\binstead[.?]? ?$/;
/** "In 12?", "Two flats?", "And .003?", "then 6": nothing but a figure, asked or put after the question. */
const LONE = /^(?:and |or |then |but )?(?:in |on |to |at |for )?(?:an? )?#~*(?!~)(?:[ -][a-z%]+){0,2} ?\?|^then (?:at |for )?#~*(?!~)(?:[ -][a-z%]+)? ?\.?$/;

/** Where the words after a sum's question turn to another figure: "what if", and at the head of a sentence or near its end "and for", "and at". */
export function followPoints(desk: Desk, c: Candidate, floor: number, to: number): number[] {
  const from = c.asked ?? c.end, { mask } = slateOf(desk.line, desk.sheet.ctx.at);
  const text = mask.slice(from, to), out: number[] = [];
  for (const m of text.matchAll(FOLLOW)) out.push(from + m.index + m[0].length - m[1]!.length);
  for (const m of text.matchAll(AND)) {
    const at = from + m.index + m[0].length - m[1]!.length;
    const listed = c.kind.inline === false && !/\b(?:if|for|can|would|does) ?$/.test(m[1]!); // a condition is no further figure of a list, nor is what it is for
    if (headOf(desk, at) || /[?] ?$/.test(desk.text.slice(0, at))) out.push(at);
    else if (!listed && complete(desk, c, floor, at, to, /\b(?:if|but|double) ?$/.test(m[1]!))) out.push(at);
  }
  for (const s of desk.sentences) if (s.start > from && s.start < to && (HEAD.test(desk.text.slice(s.start)) || LONE.test(mask.slice(s.start)) || (s.asked || INSTEAD.test(desk.text.slice(s.start, s.end)) || /\bsame [a-z]+ ?[.]? ?$/.test(desk.text.slice(s.start, s.end)) || wholly(desk, c, s)) && complete(desk, c, floor, s.start, to))) out.push(s.start);
  return [...new Set(out)].sort((a, b) => a - b).filter((p, i, all) => i === 0 || p - all[i - 1]! > 4);
}

/** What leads to another offer: "or 340", "and another's 95", "and then 325 with tax", "and 62, same tax". */
const ANEW = /^(?:or|vs|versus|and anothers?|anothers?|and one (?:thats|at|for)|(?:and )?then|and (?:(?!\b(?:or|percent|freight|shipping|post|carriage|core)\b)[^.?!])*\bsame)\b/;
/** Within a sentence "and at 60" is another question only when the first has all it needs and what follows would change it. */
function complete(desk: Desk, c: Candidate, floor: number, at: number, to: number, adds = false): boolean {
  const first = c.kind.given(new Scope(desk, floor, at, c.start));
  const must = c.kind.full ?? c.kind.wants, sets = must ? [must, ...(c.kind.telling ?? [])] : SUM_NAMES[c.kind.of]?.whole ?? [];
  if (!wholeOf(sets, first)) return false;
  const next = Object.keys(c.kind.given(new Scope(desk, at, Math.min(to, sentenceAt(desk, at).end)), first)).filter(f => !f.endsWith('Unit'));
  const there = (f: string): boolean => first[f] !== undefined || adds && (c.kind.extra ?? []).includes(f) || (c.kind.either ?? []).some(set => set.includes(f) && set.some(other => first[other] !== undefined));
  return next.length > 0 && (next.every(there) || c.kind.anew !== undefined && next.includes(c.kind.anew) && (ANEW.test(desk.text.slice(at)) || /\b(?:both|each|either)\b/.test(desk.text.slice(sentenceAt(desk, c.start).start, at))));
}
/** "The manifold studs are 5/16 coarse, grade 5, with copper slip." after a torque was asked: by itself all that the sum needs. */
function wholly(desk: Desk, c: Candidate, s: { start: number; end: number }): boolean {
  if (!c.kind.telling || TOLD.test(desk.text.slice(s.start, s.end))) return false;
  const own = c.kind.given(new Scope(desk, s.start, s.end, s.start));
  return wholeOf(c.kind.telling, own) !== undefined;
}
const headOf = (desk: Desk, at: number): boolean => desk.sentences.some(s => at - s.start >= 0 && at - s.start <= 1);

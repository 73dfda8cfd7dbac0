import type { Desk } from '../desk.ts';
import { joinOf, leadOf } from '../lead.ts';
import { ASK_NOT, rhetorical } from '../rhetoric.ts';
import { spokenOf } from '../spoken-of.ts';
import { thingAt } from '../thing-at.ts';

/** A sentence or clause that asks, though no rule knows its wording. `text`: without the words that only lead in to it. */
export interface Stretch { start: number; end: number; text: string; /** Where `text` begins. */ from: number; /** Led in to, or marked with "?". */ sure: boolean }

/** Words that open a question or a request by themselves. */
const OPENS = /^(?:what|whats|whatll|whatve|whatd|where|wheres|whered|whereabouts|when|whens|who|whos|whod|why|how|hows|howd|which|(?:is|are|was|were|do|does|did|can|could|will|would|shall|should|have|has|am)(?= (?!be |been |have |has |not |never |just |only |still |now |all |no |to )[a-z])|any|anything|anybody|anyone|anywhere|show|give|list|tell|remind|tot|tote|add up|total up|sum up|tally|work out|find|let me see|let me have|run me|read|check|name|print|pull up|bring up|dig out|look up|go over|go through|run through|summari[sz]e|recap|too (?:wet|damp|cold|hot|humid|windy|early|late|soon)|dry enough|warm enough|ok to|okay to|safe to|fit to|clear to|good to|alright to|status|something (?:to (?:do|be at|tackle|start|get on with)|i (?:can|could)|small|quick)|totals?|sum total|grand total|owt|whatevers?|if (?:i|we|it) [^?]*? (?:will|would|can|could|what|whats|how|do|does|am|are|should) (?:it|i|we|the|they|there|that))\b/;
/** The order of a question leaves no doubt of it. */
const INVERTED = /^(?:(?:what|where|how|who|why|when)(?: (?:is|are|was|were|did|do|does|have|has|had|can|could|will|would|should)\b|s\b)|how (?:many|much|long|far|soon)\b|which [a-z]+ (?:is|are|was|were|did|do|does|have|has)\b|(?:did|do|have|can|could|am|should) (?:i|we)\b|(?:is|are|was|were|has|have|did|does|do|will) (?:it|there|any|anything|the|my|that|those)\b)/;
/** "What was short was the oil." */
const CLEFT = /^whats? (?:(?:was|is|were|are|s) )?(?:(?!\b(?:when|before|that|which|where|while|as|if|until|it|they|i|we|or|and|there)\b)[^?]){0,40}? (?:was|is|were|are) (?!it\b|there\b|that\b)[^?]*$/;
/** Words in the order of a statement: what a thing is, or where it is, is told. */
const TOLD = /^(?:how|what|who|when|where|which|why)\b(?! (?:is|isnt|are|arent|was|were|wasnt|do|does|did|didnt|can|could|will|would|shall|should|have|has|hasnt|havent|am|s|many|much|long|about|if|else|all|parts?|bits?|jobs?|on|in|far|deep|soon|close|near|early|late|next|now|then|way|side|end|order|hole|shelf|drawer|tin|box|bin|of|one|ones|day|time|date|size)\b)[^?]*$/;
/** "Can't find the pin. Where." */
const BARE = /^where[.?]*$/;
/** "what follow ups do I have": a noun between, and then the order of a question. */
const TURNED = /^(?:what|which|how|whose) (?!(?:i|we|you|it|the|my|he|they|she)\b)(?:[a-z]+ ){1,4}(?:is|are|was|were|do|does|did|have|has|had|can|could|will|would|should|am) (?:i|we|you|it|they|there|the|my|that|those)\b/;
const MID = String.raw`(?:what (?:is|was|were|are|did|do|does|have|has|would|can|should|else)|whats|whatve|where (?:is|are|did|do|have|was|were|has)|wheres|how (?:many|much|long|far|soon|is|was|were|did|do|does)|hows|when (?:is|will|do|can|did|was|does)|whens|who (?:is|has|had|was)|whos|which (?:way|side|shelf)|can (?:i|we|it|the)|could i|am i|is (?:it|there|the|anything)|are there|have i|did i|do i|show me|tell me|give me|remind me|why (?:is|cant|isnt|cannot))`;
const CUT = new RegExp(String.raw`(?:,? (?:and|or|but|so|also|then|plus) (?=(?:(?:what|where|when|how|who|why|which|show|give|list|tell|remind|any)[a-z]*\b|(?:is|are|was|were|can|do|did|does|have|has|am|could|will|should) (?:i|we|you|it|they|he|she|there|the|my|that|those|any[a-z]*)\b))|, (?=${MID}\b)|(?<=[a-z] )(?=${MID}\b))`, 'g');
/** "last thing I touched, what was it?": only asks what stands before it. */
const ECHO = /, (?:what|where|which|when|how|who) (?:was|is|were|are|did|does) (?:it|that|they|them|he|she)(?: (?:go|be|now|again))? ?\?|, (?:can|cant|can ?t|could|did|didnt|is|isnt|am|arent|have|havent|do|dont|will|wont|should|shouldnt|was|wasnt) (?:i|it|we|they|there|he|she) ?\?/;
const UNKNOWN = /\b(?:couldn ?t|could not|i dont|nobody|who) (?:say|know|tell|knows)\b|\bwould have thought\b/;
const NEVER_MIND = /^(?:dont|do not|never)(?: (?:you|even|go|bother|start))* (?:ask|asking|tell|mention|mind|care|remind|want to know|need to know)\b/;

/** The stretches of a note that ask, cut where "and" or the bare order of words leads into another question or request. */
export function asking(desk: Desk): Stretch[] {
  return desk.sentences.flatMap(s => {
    const text = desk.text.slice(s.start, s.end), cuts: number[] = [], echo = ECHO.test(text);
    let last = 0;
    for (const m of text.matchAll(CUT)) {
      const at = m.index + m[0].length;
      if (echo && m[0].startsWith(',') && ECHO.exec(text)!.index === m.index) continue;
      if (at - last < 4 || /^(?:what|which|how|who|when|where|why)s?\b/.test(text.slice(at)) && (leadOf(text.slice(last)) >= at - last || /\b(?:see|know|knew|check|tell|told|show|find out|on|of|about|to|for|from|in|with|at|depends|that|than|not|is|was|like|tells?(?: you| me| us)|told (?:you|me|us|him|them)|shows?(?: you| me| us)|showed(?: me| us)?|asked?|asks|wonder(?:s|ed|ing)?|says?|said)$/.test(text.slice(last, m.index + (m[0] ? 0 : -1)).trim()) && !m[0].trim())) continue;
      if (!m[0].trim() && /^(?:show|tell|give|remind) me/.test(text.slice(at)) && /\b(?:they|he|she|it|you|i|we|who|to|would|dont|will|can|could|did|do|[a-z]+s)$/.test(text.slice(last, at).trim())) continue;
      if (!m[0].trim() && !/^(?:what|where|how|when|who|which|why|show|tell|give|remind)/.test(text.slice(at)) && /\b(?:what[a-z]*|wheres?|hows?|whens?|whos?|which|why|if|whether|before|till|until|that|than|anything|something|everything)\b/.test(text.slice(last, at))) continue;
      cuts.push(at); last = at;
    }
    const starts = [0, ...cuts];
    return starts.flatMap((from, i): Stretch[] => {
      const to = starts[i + 1] ?? text.length, piece = text.slice(from, to), lead = leadOf(piece), head = Math.max(lead, joinOf(piece)), rest = piece.slice(head);
      const sure = lead > 0 || INVERTED.test(rest) && !CLEFT.test(rest.trim()) || s.asked && i === starts.length - 1;
      if (UNKNOWN.test(rest) || NEVER_MIND.test(piece) || rhetorical(piece) || /^(?:do )?what i (?:did|done|found) ?[?]/.test(rest) || ASK_NOT.test(text.slice(0, from)) || !sure && (!OPENS.test(rest) || CLEFT.test(rest.trim()) || TOLD.test(rest.trim()) && !TURNED.test(rest) && !BARE.test(rest.trim()))) return [];
      return [{ start: s.start + from, end: s.start + to, text: rest, from: s.start + from + head, sure }];
    });
  });
}

/** What a question speaks of that is no thing of the shop. */
const IDLE = /^(?:hope|chance|sign|wants?|shopping|buying|hours?|weather|rain|money|cost|price|quote|quotes?|list|story|time|times|job|jobs|work|bits?|things?|stuff|parts?|rest|lot|one|ones|shop|slave bolts|bolts? counter|recheck|rechecks|checks?|photo|last|most|day|week|rate|good|way|left|supper|moment|now|damage|total|number|figure|score|status|progress|record|records|notes?|log|history|end|start|top|bottom|side|order|orders|suppliers?|post|mail|house|shed|barn|garage|bench|weekend|month|year|today|tomorrow|yesterday|morning|afternoon|evening|night|minute|hour|spring|summer|autumn|fall|winter|fair|show|season|harvest|plan|picture|book|books|bill|tab|tally|sum|amount|date|deadline|beginning|meantime|dark|light|sun|wind|cold|heat|wet|dry|damp|chance|job in hand|teardown|strip ?down|strip|whole thing|thing|state|sort|kind|word|mix|place|spot)$/;

/** What is measured or set about a part, named only where no part is. */
const OF_A_PART = /^(?:(?:original|old|right|first) )?(?:measurements?|settings?|gaps?|clearances?|chamfer|figure|positions?|prices?|quotes?|reading|torque|timing|play|angle|height|depth|length|orientation|arrangement|sequence|photographs|shot|plan|parcels?|eye|hand|look|clue|idea|goer|going over|inspections?|pull|green cupboard|weather|rate)$/;
/** "can that go back", "where did it go": the thing was named before. */
const OF_THAT = /^(?:[a-z ]{3,30}[:,] )?(?:can|could|is|are|was|were|should|will|why (?:cant|isnt|wont)|where(?:s| is| are| did| do)?|how (?:is|was|did|were)|when(?:s| is| was| will| did)?|did|has|have|what (?:was|did|is)) (?:that|it|they|she|those|them|he)\b(?! [a-z]+s\b)/;

/** The first thing named after one of these words, else what "it" stands for. */
export function about(desk: Desk, c: Stretch, words = /\b(?:on|of|for|with|to|in|into|about|from|the|my|that|this|his|those|these|any|a|an)\b ?/g): string | undefined {
  const that = OF_THAT.exec(c.text), before = that ? spokenOf(desk, c.from + that[0].length) : undefined;
  if (before) return before;
  let second: string | undefined;
  for (const m of c.text.matchAll(words)) {
    const det = /^(?:the|my|that|this|his|those|these|any|an?)/.test(m[0]);
    const t = thingAt(desk, c.from + m.index + (det ? 0 : m[0].length), c.end);
    if (!t || t.name.length <= 2 || /(?:^| )time$/.test(t.name) || IDLE.test(t.name)) continue;
    if (!OF_A_PART.test(t.name)) return t.name;
    second ??= t.name;
  }
  return /\b(?:it|them|its|they|itll|that)\b/.test(c.text) ? spokenOf(desk, c.from) ?? second : second;
}

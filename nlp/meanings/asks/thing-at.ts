import { isPlural } from '../../clauses/name-kinds.ts';
import { charOf, pastOf } from '../../dimensions/line.ts';
import { knownNames } from '../../dimensions/part/known.ts';
import { phraseAt } from '../../dimensions/part/phrase.ts';
import { singular } from '../../words/nouns.ts';
import { type Desk, sentenceAt } from './desk.ts';
import { nameLimit, NOT_A_THING } from './name-limit.ts';
import { machineOf, namedIn, spokenOf } from './spoken-of.ts';
import { cutSet } from './name-end.ts';
import { plainName } from './plain-name.ts';

/** More characters than any list of names: a bound for huge notes. */
const FURTHEST = 400;

/** "a set of points" is points. */
const LOT = /^(?:(?:an?|the|my|another|them|those|that|this) )?(?:(?:new|full|whole|spare|wee|peedie|little|small|big|old) )?(?:set|pair|couple|box|handful|bunch|packet|pack|bag|sack|roll|tin|jar|tub) (?:of|wi|with)(?: the)? (?=[a-z])(?!(?:them|it|those|these)\b)/;

/** "them oiler wicks", "they hub caps": said for those. */
const THEM = /^(?:them|they) (?=(?:(?!(?:up|down|in|on|off|out|away|is|was|as|this|has|does|goes|go|went|yet|and|or|to|at|for|when|before|last|get|got|end|are|were|have)\b)[a-z]+ ){0,2}(?!(?:is|was|as|this|has|does|goes|pieces|things)\b)[a-z]{2,}[a-z]s\b)/;

/** "that other thing, the felt seals": a word that stands in till the name comes. */
const STAND_IN = /^(?:the|that|those) (?:other )?(?:thing(?:y|s|ies|ummy|amajig)?|what(?:sit|chamacallit|not)s?|doo(?:dad|hickey|dah)s?|wotsits?),? (?:the,? )*(?=(?:the|my) [a-z])/;

/** The one thing named at this character of the line; "it" and the like are the thing spoken of before. */
export function thingAt(desk: Desk, at: number, bound = sentenceAt(desk, at).end): { name: string; end: number } | undefined {
  const { line, sheet, text } = desk;
  let from = at;
  while (text[from] === ' ') from++;
  from += STAND_IN.exec(text.slice(from, from + 60))?.[0].length ?? 0;
  from += LOT.exec(text.slice(from, from + 36))?.[0].length ?? 0;
  from += THEM.exec(text.slice(from, from + 60))?.[0].length ?? 0;
  const limit = Math.min(bound, from + FURTHEST);
  if (from >= limit || /[?!]/.test(text[from]!)) return undefined;
  const pron = /^(?:it|them|that|those|this|these|they|her|him|she|he|both of them|the both of them|the lot)(?! (?:two|three|four|five|six|several) )(?=s\b|ll\b|d\b|re\b|ve\b|[^a-z]|$)(?! [a-z]+ (?:is|are)\b)/.exec(text.slice(from, limit));
  const token = line.tokenAt[from];
  if (token === undefined) return undefined;
  const to = nameLimit(sheet, token, limit >= text.length ? sheet.tokens.length : line.tokenAt[limit] ?? sheet.tokens.length);
  const phrase = phraseAt(sheet, token, to);
  const owner = /^(?:its|their) /.test(text.slice(from)) ? desk.spoken.filter(s => s.end <= from).at(-1) : undefined;
  const of = phrase && /^ (?:for|off|off of|out of|from) it\b/.exec(text.slice(pastOf(desk.line, phrase.to), limit)) ? spokenOf(desk, from) : undefined;
  const owned = owner ? `${owner.name} ` : of && of !== phrase?.name ? `${of} ` : '';
  const many = phrase && /^s\b/.test(text.slice(pastOf(line, phrase.to))) && /\b(?:have|are|were|do|did|will|can) (?:the|my|those) $/.test(text.slice(0, charOf(line, phrase.nameFrom)));
  if (phrase && many && !NOT_A_THING.test(phrase.name)) return { name: `${phrase.name}s`, end: pastOf(line, phrase.to) + 1 }; // "have the injectors been tested": no "is" of a single one
  if (phrase && !phrase.stands && !NOT_A_THING.test(phrase.name) && phrase.nameFrom - token <= 3) return cutSet(desk, { name: owned + (phrase.known ? phrase.name : fuller(desk, plainName(phrase.name, knownNames(sheet.ctx.parts ?? NO_NAMES)), token, text.slice(from))), end: pastOf(desk.line, phrase.to) });
  if (pron) {
    const meant = meantAfter(desk, from + pron[0].length);
    if (meant) return { name: meant, end: from + pron[0].length };
    const name = /^(?:her|she|he|him)$/.test(pron[0]) ? machineOf(desk, from) ?? spokenOf(desk, from) : (/^(?:they|them)$/.test(pron[0]) ? countedOf(desk, from) : undefined) ?? spokenOf(desk, from);
    return name && !SHAPE.test(text.slice(from, limit)) ? { name, end: from + pron[0].length } : shaped(desk, from, limit);
  }
  return siblingAt(desk, from, limit) ?? shaped(desk, from, limit);
}

/** "what has it stood me, the brakes I mean": "it" is explained afterwards. */
export function meantAfter(desk: Desk, at: number): string | undefined {
  const { end } = sentenceAt(desk, at), rest = desk.text.slice(at, end);
  for (const m of rest.matchAll(/,? (?=(?:the|my|that|those) [a-z ]+,? (?:i mean|i meant|that is|thats what i mean|i should say)(?= ?(?:$|[?.!,])))/g)) {
    const t = thingAt(desk, at + m.index + m[0].length, end);
    if (t && /^,? (?:i mean|i meant|that is|thats|i should)/.test(desk.text.slice(t.end, end))) return t.name;
  }
  return undefined;
}

/** "how many shims under the cap, and where are they": they are the shims, where the cap is but one. */
function countedOf(desk: Desk, before: number): string | undefined {
  const last = desk.spoken.filter(s => s.end <= before).at(-1);
  return last && !isPlural(last.name) ? last.counted : undefined;
}

/** "the left one" after "the right brake drum": the same thing on the other side. */
function siblingAt(desk: Desk, from: number, limit: number): { name: string; end: number } | undefined {
  const m = /^(?:the|my) ((?:left|right|front|rear|back|top|bottom|inner|outer|upper|lower|near ?side|off ?side)(?: hand)?) ones?\b/.exec(desk.text.slice(from, limit));
  const other = m && spokenOf(desk, from)?.replace(SIDE, '');
  return m && other ? { name: `${m[1]!} ${/one$/.test(m[0]) && isPlural(other) ? other.replace(/[a-z]+$/, singular) : other}`, end: from + m[0].length } : undefined;
}
const SIDE = /^(?:left|right|front|rear|back|top|bottom|inner|outer|upper|lower|near ?side|off ?side)(?: hand)? /;

/** "those running boards": words that the tagger does not hold for a name are one after an article, up to the next word of another kind. */
const SHAPE = /^(?:the|my|them|those|these|that|this|our) (?!(?:since|cost|costs|in|into|on|landed|done|finished)\b)([a-z]+(?: [a-z]+){0,2}?)(?= ?(?:$|[?.,!;:]|(?:and|or|so|for|since|on|in|at|when|before|yet|altogether|all|by|to|with|go|goes|gone|get|is|are|was|were|be|been|land|sat|did|has|have|had|up|back|now|last|this|from|up|off|out|please|going|come|came|again|before|look|looked)\b))/;
/** "a 6308": a thing that goes by its number. */
const NUMBERED = /^an? (\d{3,5}[a-z]{0,3})(?= ?(?:$|[?.,!]|and\b|landed\b|delivered\b))/;
function shaped(desk: Desk, from: number, limit: number): { name: string; end: number } | undefined {
  const number = NUMBERED.exec(desk.text.slice(from, limit));
  if (number) return { name: number[1]!, end: from + number[0].length };
  const m = SHAPE.exec(desk.text.slice(from, limit));
  if (!m || /\b(?:is|are|i|you|it|them|of|was|what|where|how|when|who|will|can|do|did|has|have|best|cheapest|most|least|same|other|left|right|lot|hell|devil)\b/.test(m[1]!) || NOT_A_THING.test(m[1]!)) return undefined;
  return { name: m[1]!, end: from + m[0].length };
}

const NO_NAMES: readonly string[] = [];
/** "the bank" after "battery bank": the fuller name that the note gave before. */
function fuller(desk: Desk, name: string, token: number, said: string): string {
  if (!/^(?:the|that|those|this|these|such) /.test(said)) return name;
  desk.named ??= namedIn(desk.sheet);
  return desk.named.filter(n => n.to <= token && n.name.endsWith(` ${name}`)).at(-1)?.name ?? name;
}

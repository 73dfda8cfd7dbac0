import type { Ask } from '../../../domain/model/ask.ts';
import { nameKey } from '../../../domain/model/names.ts';
import { charOf, type Line, lineOf, pastOf, tokensOf } from '../../dimensions/line.ts';
import { isShorthand } from '../../dimensions/shorthand.ts';
import { knownNames, type KnownNames } from '../../dimensions/part/known.ts';
import { phraseAt } from '../../dimensions/part/phrase.ts';
import { daysIn } from '../../dimensions/when/rules.ts';
import { isoOf } from '../../dimensions/when/days.ts';
import type { Direction } from '../../dimensions/when/simple.ts';
import { openSheet } from '../../sheet.ts';
import { isSource } from '../../clauses/things.ts';
import { isMachine } from '../../clauses/things.ts';
import { nounClasses } from '../../words/nouns.ts';
import { sentences } from '../../text/sentences.ts';
import type { Found, Sheet } from '../../types.ts';

/** A question found: characters [start, end) of the line. `weight` settles which of two that begin together is meant. */
export interface Hit { start: number; end: number; asks: Ask[]; rule: string; weight: number; used?: [number, number][] }

/** Things named in a row ("the springs and the lubricator"), and where they end. */
export interface Things { names: string[]; end: number }

interface Named { name: string; to: number; known: boolean }
/** More tokens than any name has, and more characters than any list of names: a bound for huge notes. */
const WIDEST = 24, FURTHEST = 400;

/** What the rules of questions look at: the line, its sentences, and how to read a name or a day at a place of it. */
export interface Desk {
  sheet: Sheet;
  line: Line;
  text: string;
  /** Sentences as characters [start, end), with their closing mark. */
  sentences: { start: number; end: number; asked: boolean }[];
  /** Names of parts and machines asked about so far, for "it" and "both of them". */
  spoken: { name: string; end: number }[];
  /** Everything named in the note, found when first needed. */
  named?: Named[];
}

export function openDesk(sheet: Sheet): Desk {
  const line = lineOf(sheet.tokens);
  const cuts = sentences(sheet.tokens, sheet.text).map(s => ({ start: charOf(line, s.from), end: charOf(line, s.to), asked: s.mark === '?' }));
  return { sheet, line, text: line.text, sentences: cuts, spoken: [] };
}

export const sentenceAt = (desk: Desk, at: number): { start: number; end: number; asked: boolean } =>
  desk.sentences.find(s => at >= s.start && at < s.end) ?? { start: 0, end: desk.text.length, asked: false };

const NOT_A_THING = /^(?:many .*|how .*|dew point|reasons?|yet|now|today|so far|what|when|where|how|who|why|is|are|was|were|do|does|did|i|you|we|they|he|she|and|or|but|if|time|day|days|week|hours?|minutes?|money|dollars|please|thanks|any(?:thing|body|one)|some(?:thing|body|one)|every(?:thing|body|one)|nobody|trouble|idea|one|ones|lately|recently|again|before|after|photos?|pictures?|pics?|cheapest|rain|weather|morning|afternoon|evening|night|tomorrow|yesterday|moment|minute|rate|cost|price|set|pair|ocht|owt|aught)$/;

/** "a set of points" is points. */
const LOT = /^(?:(?:an?|the|my|another) )?(?:(?:new|full|whole|spare) )?(?:set|pair|couple|box|handful|bunch|packet|pack) of (?=[a-z])(?!(?:them|it|those|these)\b)/;

/** The one thing named at this character of the line; "it" and the like are the thing spoken of before. */
export function thingAt(desk: Desk, at: number, bound = sentenceAt(desk, at).end): { name: string; end: number } | undefined {
  const { line, sheet, text } = desk;
  let from = at;
  while (text[from] === ' ') from++;
  from += LOT.exec(text.slice(from, from + 24))?.[0].length ?? 0;
  const limit = Math.min(bound, from + FURTHEST);
  if (from >= limit) return undefined;
  const pron = /^(?:it|them(?! [a-z]+s\b)|that|those|this|these|they|her|him|she|he|both of them|the both of them|the lot)(?=s\b|ll\b|d\b|re\b|ve\b|[^a-z]|$)(?! [a-z]+ (?:is|are)\b)/.exec(text.slice(from, limit));
  const token = line.tokenAt[from];
  if (token === undefined) return undefined;
  const to = nameLimit(sheet, token, limit >= text.length ? sheet.tokens.length : line.tokenAt[limit] ?? sheet.tokens.length);
  const phrase = phraseAt(sheet, token, to);
  const owner = /^(?:its|their) /.test(text.slice(from)) ? desk.spoken.filter(s => s.end <= from).at(-1) : undefined;
  const of = phrase && /^ (?:for|off|off of|out of|from) it\b/.exec(text.slice(pastOf(desk.line, phrase.to), limit)) ? spokenOf(desk, from) : undefined;
  const owned = owner ? `${owner.name} ` : of && of !== phrase?.name ? `${of} ` : '';
  if (phrase && !phrase.stands && !NOT_A_THING.test(phrase.name) && phrase.nameFrom - token <= 3) return cutSet(desk, { name: owned + (phrase.known ? phrase.name : fuller(desk, plainName(phrase.name, knownNames(sheet.ctx.parts ?? NO_NAMES)), token, text.slice(from))), end: pastOf(desk.line, phrase.to) });
  if (pron) {
    const name = /^(?:her|she|he|him)$/.test(pron[0]) ? machineOf(desk, from) ?? spokenOf(desk, from) : spokenOf(desk, from);
    return name && !SHAPE.test(text.slice(from, limit)) ? { name, end: from + pron[0].length } : shaped(desk, from, limit);
  }
  return siblingAt(desk, from, limit) ?? shaped(desk, from, limit);
}

/** "the left one" after "the right brake drum": the same thing on the other side. */
function siblingAt(desk: Desk, from: number, limit: number): { name: string; end: number } | undefined {
  const m = /^(?:the|my) ((?:left|right|front|rear|back|top|bottom|inner|outer|upper|lower|near ?side|off ?side)(?: hand)?) ones?\b/.exec(desk.text.slice(from, limit));
  const was = m && spokenOf(desk, from);
  return was ? { name: `${m[1]!} ${was.replace(SIDE, '')}`, end: from + m[0].length } : undefined;
}
const SIDE = /^(?:left|right|front|rear|back|top|bottom|inner|outer|upper|lower|near ?side|off ?side)(?: hand)? /;

/** "those running boards": words that the tagger does not hold for a name are one after an article, up to the next word of another kind. */
const SHAPE = /^(?:the|my|them|those|these|that|this|our) ([a-z]+(?: [a-z]+){0,2}?)(?= ?(?:$|[?.,!;:]|(?:and|or|so|for|since|on|in|at|when|before|yet|altogether|all|by|to|with|go|goes|gone|get|is|are|was|were|be|been|land|sat|did|has|have|had|up|back|now|last|this|from|up|off|out|please|going|come|came|again|before|look|looked)\b))/;
function shaped(desk: Desk, from: number, limit: number): { name: string; end: number } | undefined {
  const m = SHAPE.exec(desk.text.slice(from, limit));
  if (!m || /\b(?:is|are|i|you|it|them|of|was|what|where|how|when|who|will|can|do|did|has|have|best|cheapest|most|least|same|other|left|right|lot|hell|devil)\b/.test(m[1]!) || NOT_A_THING.test(m[1]!)) return undefined;
  return { name: m[1]!, end: from + m[0].length };
}

/** "the windmill set me back", "the linkage set before": the verb is no part of the name. */
const cutSet = (desk: Desk, t: { name: string; end: number }): { name: string; end: number } => {
  const more = / (?:(?:adjust(?:ing|er|ment)|lock(?:ing)?|grub|drain|bleed|fixing|mounting|retaining|clamp(?:ing)?|pinch|stop|idle) (?:screw|nut|bolt|plug|ring|pin|spring|collar|plate)s?|tag|plate|label|stamp|sticker|decal|drawing|sketch|manual|kit)(?=$|[ ?.,!])/y;
  more.lastIndex = t.end;
  const m = more.exec(desk.text);
  if (m) return { name: t.name + m[0], end: t.end + m[0].length };
  return / set$/.test(t.name) && (/^ (?:me back|before|at|to|when)\b/.test(desk.text.slice(t.end)) || /\bhow (?:was|were|is|are|had i|did i have)(?: [a-z]+){1,5}$/.test(desk.text.slice(Math.max(0, t.end - 60), t.end))) ? { name: t.name.slice(0, -4), end: t.end - 4 } : t;
};

/** A name ends before words that never are in one, whatever the tagger holds them for. */
const NEVER = /^(?:during|upon|afore|thus|these|those|hooked|routed|mounted|shimmed|gapped|strung|clocked|live|lives|ready|running|going|land|can|will|hid|anywhere|still|ever|usually|goes|went|held|altogether|cheapest|cheaper|please|pls|plz|yet|anyway|landed|delivered|thanks|mate|gona|gonna|b4|so|today|tomorrow|yesterday|tonight)$/;
function nameLimit(sheet: Sheet, from: number, to: number): number {
  const ends = (i: number): boolean => sheet.tokens[i]!.low === 'end' && sheet.tokens[i + 1]?.low === 'up';
  for (let i = from + 1; i < to; i++) if (NEVER.test(sheet.tokens[i]!.low) || ends(i) || isShorthand(sheet.tokens[i]!.low)) return i;
  return to;
}

const NO_NAMES: readonly string[] = [];
/** "the bank" after "battery bank": the fuller name that the note gave before. */
function fuller(desk: Desk, name: string, token: number, said: string): string {
  if (!/^(?:the|that|those|this|these|such) /.test(said)) return name;
  desk.named ??= namedIn(desk.sheet);
  return desk.named.filter(n => n.to <= token && n.name.endsWith(` ${name}`)).at(-1)?.name ?? name;
}

const FEELING = /^(?:wee|bloody|damn|damned|wretched|blasted|ruddy|flaming|flipping|stupid|silly|such|cursed|confounded) (?=[a-z])/;
const LOOKS = /^(?:little|big|small|wee|large|long|short|brass|bronze|oak|steel|iron|cast|rubber|copper|wooden|rusty|nice|fancy|bloody|damn|damned|wretched|good|cheapest|best|blasted|tiny|whole|ruddy|red|green|blue|black|blue|grey|gray|yellow|white)$/;
/** "the little brass lubricator" where the shop has one "lubricator": words of looks and stuff do not make it another part. */
function plainName(said: string, known: KnownNames): string {
  const words = said.replace(/^(?:cheapest|best) /, '').replace(FEELING, '').split(' ');
  for (let k = 1; k < words.length && LOOKS.test(words[k - 1]!); k++) {
    const hit = known.exact(nameKey(words.slice(k).join(' ')));
    if (hit) return hit.toLowerCase();
  }
  return words.join(' ');
}

/** Things in a row from this character: "the springs and the little lubricator", up to what is no thing. */
export function thingsAt(desk: Desk, at: number, limit = sentenceAt(desk, at).end): Things | undefined {
  const first = thingAt(desk, at, limit);
  if (!first) return undefined;
  const names = [first.name];
  let end = first.end;
  for (;;) {
    const more = /^(?:,? and (?:also )?|, ?(?:and )?| plus |,? or )(?=(?:the|my|those|that|both|a|an|[a-z]+)\b)/.exec(desk.text.slice(end, limit));
    if (!more) break;
    if (OPENS.test(desk.text.slice(end + more[0].length, limit))) break;
    const next = thingAt(desk, end + more[0].length, limit);
    if (next && /^ and all\b/.test(desk.text.slice(next.end, limit))) break;
    if (!next || /^(?: ?(?:is|are|was|were|has|have|does|did|went|goes|came|comes|wants|needs)\b|s\b)/.test(desk.text.slice(next.end, limit))) break;
    names.push(next.name);
    end = next.end;
  }
  return { names, end };
}

/** A word that opens another question or request is not the next thing of a list. */
const OPENS = /^(?:what|where|how|when|who|why|which|is|are|can|could|show|tell|give|pull|any|do|did|have|list|find|will|remind)[a-z]*\b/;

/** What "it" is: the thing asked about last, else the last thing named before, here or in the note before. */
export function spokenOf(desk: Desk, before: number): string | undefined {
  const asked = desk.spoken.filter(s => s.end <= before).at(-1);
  if (asked) return asked.name;
  const stop = desk.line.tokenAt[before] ?? desk.sheet.tokens.length;
  desk.named ??= namedIn(desk.sheet);
  const here = lastOf(desk.named.filter(n => n.to <= stop));
  if (here) return here;
  const { prior, ...rest } = desk.sheet.ctx;
  for (const text of [...prior ?? []].reverse()) {
    const name = lastOf(namedIn(openSheet(text, rest)));
    if (name) return name;
  }
  return undefined;
}

/** "her" is the machine or the engine that was named. */
function machineOf(desk: Desk, before: number): string | undefined {
  const stop = desk.line.tokenAt[before] ?? desk.sheet.tokens.length;
  desk.named ??= namedIn(desk.sheet);
  const here = desk.named.filter(n => n.to <= stop).flatMap(n => ownerIn(desk.sheet, n.name)).at(-1);
  if (here) return here;
  const { prior, ...rest } = desk.sheet.ctx;
  for (const text of [...prior ?? []].reverse()) {
    const before = openSheet(text, rest), owner = namedIn(before).flatMap(n => ownerIn(before, n.name)).at(-1);
    if (owner) return owner;
  }
  return undefined;
}
/** The machine of a name: itself, or the one that owns the part ("the tractor's radiator"). */
function ownerIn(sheet: Sheet, name: string): string[] {
  const owner = name.replace(/['’]s .*$/, '');
  return isMachine(sheet, owner) || nounClasses(owner).has('machine') ? [owner] : [];
}

/** Things that the shop knows are meant before others. */
const lastOf = (named: readonly Named[]): string | undefined => (named.filter(n => n.known).at(-1) ?? named.at(-1))?.name;

/** Everything named in the note, in order; what only dates, counts or places it is left out. */
function namedIn(sheet: Sheet): Named[] {
  const out: Named[] = [];
  for (let i = 0; i < sheet.tokens.length;) {
    const skip = sheet.tags[i] === 'prep' || NEVER.test(sheet.tokens[i]!.low);
    const p = skip ? undefined : phraseAt(sheet, i, nameLimit(sheet, i, Math.min(sheet.tokens.length, i + WIDEST)));
    if (p && !p.stands && !NOT_A_THING.test(p.name) && !isSource(p) && !inFound(sheet, p.from, p.to)) out.push({ name: p.name, to: p.to, known: !!p.known });
    i = p ? Math.max(p.to, i + 1) : i + 1;
  }
  return out;
}
const inFound = (sheet: Sheet, from: number, to: number): boolean => sheet.found.some(f => f.dim !== 'number' && f.from <= from && to <= f.to);

/** Days named within the characters [start, end), as the fields of a question. */
export function daysOf(desk: Desk, start: number, end: number, dir: Direction): { from?: string; to?: string } {
  const d = daysIn(desk.line, desk.sheet.ctx.at, dir).find(x => x.start >= start - 8 && x.end <= end + 1 && x.end > start);
  return d ? { from: isoOf(d.from), ...(d.open ? {} : { to: isoOf(d.to) }) } : {};
}

/** What the dimensions found within the characters [start, end). */
export function foundIn(desk: Desk, start: number, end: number): (Found & { start: number; end: number })[] {
  return desk.sheet.found.map(f => ({ ...f, start: charOf(desk.line, f.from), end: pastOf(desk.line, f.to) })).filter(f => f.start >= start && f.end <= end);
}

export { tokensOf };

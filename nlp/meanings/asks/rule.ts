import type { Ask } from '../../../domain/model/ask.ts';
import { mayMatch } from '../../text/pattern-index.ts';
import { type Desk, type Hit, sentenceAt } from './desk.ts';
import { ASK_NOT, rhetorical } from './rhetoric.ts';
import { thingsAt, type Things } from './things-at.ts';
import { thingAt } from './thing-at.ts';

/** What a rule's `make` is told: the opening match, the things named after it, the tail after those, and where it all lies. */
export interface Seen { m: RegExpExecArray; names: string[]; tail?: RegExpExecArray; desk: Desk; start: number; end: number; /** End of the sentence. */ stop: number }

/**
 * A question as a picture: `open`, then things (none, one, a list, or perhaps one), then `tail`.
 * `weak`: it is a question only where the note asks: a "?", the head of a clause, or "remind me", "any idea", "I want to know" before it.
 */
export interface AskRule {
  name: string;
  open: RegExp;
  things?: 'one' | 'list' | 'maybe';
  tail?: RegExp;
  tailNeeded?: boolean;
  weak?: boolean;
  /** "the spring off the door" is the door's: the owner goes in front of the name. */
  owner?: boolean;
  weight?: number;
  make(seen: Seen): Ask[] | undefined;
}

const INDIRECT = /\b(?:remind me|tell me|let me know|do you know|you know|(?:want|need|like|love|care) to know|wonder|wondering|any idea|any ideas|no idea|not sure|unsure|i forget|ive forgotten|i forgot|(?:can ?t|dont|cannot|couldn ?t) (?:for the life of me )?(?:remember|recall|think|find)|show me|look up|find out|work out|figure out|give me|ask(?:ing)?|curious|check|list|question|see|say|hear|read|run|go|notion|clue|(?:can|do|could|would|will) you (?:remember|recall|recollect|tell)|happen to know|like to ask|state|advise me(?: of)?|inform me(?: of)?|may i ask|might i ask|could i ask|(?:may|could|can|might) i have|let me have|id like|i would like|i should like)[ ,:]*(?:again |about |of |out |me |us |over |through |as to |whether |if |just |exactly |is |was |on |the |my |all |any |a |some |back |up )*$/;
const CLAUSE_HEAD = /(?:^|[.?!,;:] |\b(?:and|or|but|so|now|okay|ok|right|hey|well|also|then|please|anyway|by the way|btw|oh|just|plus|actually|listen|quick question|question|pawl|righto|mate|yet)[, ]+|^- )$/;

/** Whether the words before `at` make what follows a question, or its sentence is marked as one. */
export function asking(desk: Desk, at: number): boolean {
  const s = sentenceAt(desk, at);
  const before = desk.text.slice(Math.max(s.start, at - 120), at);
  return s.asked || /\b(?:what|whats|whatve|which|how|whos|is there|are there|do i have|have i got|got any)(?: (?:is|are|s|on|the|my|a|any|in|all|of|are|there|got|i|have))* $/.test(before) || before.trim() === '' || INDIRECT.test(before) || CLAUSE_HEAD.test(before);
}

/** "I know who has it cheapest", "he asked where it went": knowing and being asked are told. */
const KNOWS = /\b(?:i|we|he|she|they) (?:know|knew|found out|worked out|told \w+|asked(?: (?:me|us|him|her|them))?|asks|remember(?:ed)?|see|saw|figured out) $/;

/** Two people ask as one does: where a pattern has "am I", "I've" or "I", "are we", "we've" and "we" do as well. */
const forUs = (source: string): string => source.replace(/\bam i(?=[ )|(?])/g, '(?:am i|are we)').replace(/(?<=[ (|:]|\\b)(?:ive|im)(?=[ )|(?])/g, w => `(?:${w}|${w === 'ive' ? 'weve' : 'were'})`).replace(/(?<=[ (|:]|\\b)i(?=[ )|(?])/g, '(?:i|we)');

const compiled = new Map<RegExp, RegExp>();
/** The same pattern for finding all of its matches, made once. */
export function global(re: RegExp): RegExp {
  let g = compiled.get(re);
  if (!g) compiled.set(re, g = new RegExp(forUs(re.source), 'g'));
  return g;
}

/** Every match of such a pattern in a text. */
export function everyMatch(pattern: RegExp, text: string): RegExpExecArray[] {
  const out: RegExpExecArray[] = [];
  pattern.lastIndex = 0;
  for (let m = pattern.exec(text); m; m = pattern.exec(text)) { out.push(m); if (m[0] === '') pattern.lastIndex++; }
  return out;
}

/** Everything that a list of rules finds in the note. */
export function hitsOf(desk: Desk, rules: readonly AskRule[]): Hit[] {
  const out: Hit[] = [];
  for (const rule of mayMatch(rules, r => global(r.open), desk.text)) {
    const open = global(rule.open);
    open.lastIndex = 0;
    for (let m = open.exec(desk.text); m; m = open.exec(desk.text)) {
      const hit = tryRule(desk, rule, m);
      if (hit) out.push(hit);
      open.lastIndex = m.index + Math.max(1, hit ? m[0].length : 1);
    }
  }
  return out;
}

/** "where I put the belt is where it belongs" tells. */
function cleft(desk: Desk, head: number, end: number): boolean {
  const s = sentenceAt(desk, head);
  if (!s.asked && head - s.start < 6 && /^whats? (?:is |was |s )?[a-z]+ing\b/.test(desk.text.slice(head, head + 30)) && /^(?: [a-z]+){0,4}? (?:is|was|are|were) (?!it\b|there\b|that\b)/.test(desk.text.slice(end, s.end))) return true; // "what's holding the bell on is two screws"
  return head === s.start && !s.asked && /^(?:where|what|how|when|why) (?:i|we|he|she|they|you|it|the|my|that)\b/.test(desk.text.slice(head, head + 14)) && /^(?: [a-z]+){0,3}? (?:is|was|are|were|has|had|ll|will|wont)\b(?! (?:i|we|it|they)\b)/.test(desk.text.slice(end, s.end));
}

function owned(desk: Desk, t: Things, stop: number): Things {
  const m = /^ (?:off|off of|of|out of|from|belonging to) (?=(?:the|my)\b)/.exec(desk.text.slice(t.end, stop));
  const whose = m && thingAt(desk, t.end + m[0].length, stop);
  return whose && t.names.at(-1)!.startsWith(whose.name) ? { ...t, end: whose.end } : whose ? { names: [...t.names.slice(0, -1), `${whose.name} ${t.names.at(-1)!}`], end: whose.end } : t;
}

/** A pattern that takes in the "and" before it: what follows that word is the head of a clause. */
const JOINS = /^(?:and|plus) /;

function tryRule(desk: Desk, rule: AskRule, m: RegExpExecArray): Hit | undefined {
  const head = m.index + (/^[.?!;:, -]+(?=.)/.exec(m[0])?.[0].length ?? 0);
  const s = sentenceAt(desk, head);
  let end = m.index + m[0].length;
  if (end > s.end + 1) return undefined;
  if (rule.weak && !asking(desk, head) && !asking(desk, head + (JOINS.exec(m[0])?.[0].length ?? 0)) || rhetorical(desk.text.slice(s.start, s.end)) || ASK_NOT.test(desk.text.slice(Math.max(0, head - 40), head)) || KNOWS.test(desk.text.slice(Math.max(0, head - 24), head))) return undefined;
  let things: Things | undefined;
  if (rule.things) {
    const one = rule.things === 'list' ? thingsAt(desk, end, s.end) : thingAt(desk, end, s.end);
    things = one && ('names' in one ? one : { names: [one.name], end: one.end });
    if (!things && rule.things !== 'maybe') return undefined;
    if (things && rule.owner) things = owned(desk, things, s.end);
    if (things) end = things.end;
  }
  const named = end;
  const tail = rule.tail?.exec(desk.text.slice(end, Math.min(s.end, end + 400))) ?? undefined;
  if (rule.tailNeeded && !tail) return undefined;
  if (tail) end += tail[0].length;
  if (tail && things && rule.things === 'list') {
    const more = /^,? (?:and|or)(?: also)? (?=(?:the|my|those)\b)/.exec(desk.text.slice(end, s.end));
    const rest = more && thingsAt(desk, end + more[0].length, s.end);
    if (rest && /^ ?(?:$|[?.,!]|(?:out of|for|off|from|with) (?:it|them)\b)/.test(desk.text.slice(rest.end, s.end))) { things = { names: [...things.names, ...rest.names], end: rest.end }; end = rest.end; }
  }
  if (cleft(desk, head, named)) return undefined;
  const asks = rule.make({ m, names: things?.names ?? [], ...(tail ? { tail } : {}), desk, start: head, end, stop: s.end });
  return asks?.length ? { start: head, end, asks, rule: rule.name, weight: rule.weight ?? 0 } : undefined;
}

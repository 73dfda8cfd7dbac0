import type { Ask } from '../../../domain/model/ask.ts';
import { type Desk, type Hit, sentenceAt } from './desk.ts';

/** Of hits that overlap the heavier stays, then the earlier, then the longer; taken back ("never mind") and said twice are dropped. */
export function choose(desk: Desk, hits: readonly Hit[]): Hit[] {
  const kept: Hit[] = [];
  for (const h of [...hits].sort((a, b) => b.weight - a.weight || a.start - b.start || b.end - a.end)) {
    if (!kept.some(k => h.start < k.end && k.start < h.end) && !takenBack(desk, h)) kept.push(h);
  }
  return once(eitherOr(desk, kept.sort((a, b) => a.start - b.start)));
}

/** "can I get at the hinges, or are those waiting too", "can I paint Sunday or will it rain": what follows "or" in the same sentence asks the same again. */
function eitherOr(desk: Desk, hits: Hit[]): Hit[] {
  return hits.filter((h, i) => {
    const before = hits[i - 1];
    return !before || before.asks[0]!.kind !== h.asks[0]!.kind || !/^(?:blocked|forecast|finish)$/.test(h.asks[0]!.kind) || sentenceAt(desk, before.start) !== sentenceAt(desk, h.start) || !/,? or (?:else )?$/.test(desk.text.slice(before.start, h.start)) || !/^(?:are|is|will|do|does|should|must|have)\b/.test(desk.text.slice(h.start));
  });
}

const BACK = /^[ .?!,]*(?:oh |no |ah )?(?:never ?mind|nevermind|forget (?:it|that|i asked|the)|scrap that|scratch that|doesnt matter|actually,? no\b|no,? (?:tell|give|make|work out|what i) |never mind that|found (?:it|them)|dont bother|dont answer that|no matter|ha\b|i know where)\b/;
const takenBack = (desk: Desk, h: Hit): boolean => BACK.test(desk.text.slice(Math.max(h.end, restOf(desk, h)))) || RATHER.test(desk.text.slice(sentenceAt(desk, h.start).end));
/** "What size do I want? Actually no, tell me…": the next sentence asks something else instead. */
const RATHER = /^ ?(?:actually,? no\b|no,? (?:wait|actually|sorry)\b|scratch that|scrap that|forget that|never ?mind(?: that)?\b)/;
/** End of the sentence when only a few words of it are left. */
const restOf = (desk: Desk, h: Hit): number => { const e = sentenceAt(desk, h.start).end; return e - h.end < 12 ? e : h.end; };

const key = (a: Ask): string => JSON.stringify({ ...a, span: undefined });
/** "can I paint it yet or is something still holding it up" asks one thing. */
export function once(hits: Hit[]): Hit[] {
  const seen = new Set<string>();
  return hits.map(h => ({ ...h, asks: h.asks.filter(a => !seen.has(key(a)) && seen.add(key(a))) })).filter(h => h.asks.length);
}

const LEAD = /(?:^|[.?!;,] ?|\s)((?:(?:and|also|but|so|now|then|or|okay|ok|right|hey|well|please|just|um|remind me|tell me|can you|could you|would you|do you know|i want to know|id like to know|i need to know|i was wondering|im wondering|wondering|any idea|any chance you know|let me know|quick question|question|show me|i forget|i cant remember|again|oh|anyway|by the way|btw|pawl|actually|like|see|what about|how about|hang on|one more|for the|at|the|a)[, :]*)+)$/;
/** A clause that states something new after the question. */
const STATES = /^[^.?!]*?(,? (?:and|but|so|because|cause|then) (?:i|ive|im|ill|its|he|hes|she|they|theyre|we|the [a-z]+(?: [a-z]+)? (?:is|are|was|were|came|has))\b(?! (?:want|need|would|wonder|was wondering|dont know|cant|figure|reckon|think|spent|put|did|have to|got to|have got to)))/;

/** The characters that a question takes up: with the words that lead into it, up to the next question or the end of its sentence. */
export function extents(desk: Desk, hits: readonly Hit[]): { from: number; to: number }[] {
  const starts = hits.map((h, i) => {
    const floor = Math.max(sentenceAt(desk, h.start).start, hits[i - 1]?.end ?? 0);
    const lead = LEAD.exec(desk.text.slice(floor, h.start));
    return lead ? h.start - lead[1]!.length : h.start;
  });
  return hits.map((h, i) => {
    const stop = Math.max(h.end, Math.min(sentenceAt(desk, Math.max(h.start, h.end - 1)).end, starts[i + 1] ?? Infinity));
    const more = STATES.exec(desk.text.slice(h.end, stop));
    return { from: starts[i]!, to: more ? h.end + more[0].length - more[1]!.length : stop };
  });
}

import type { Ask, AskOf } from '../../domain/model/ask.ts';
import type { ReadContext } from '../../domain/model/reading.ts';
import { addDays, dayOf } from '../../domain/log/days.ts';
import { openSheet } from '../../nlp/sheet.ts';

const BY = /\b(?:by|before|in time for|until|till)\b(?!.*\b(?:by|before)\b)/i;

/** The finish asked for with the day it names ("done by June", "before Saturday"): its chance is then part of the answer. */
export function withDay(ask: AskOf<'finish'>, text: string, ctx: ReadContext): AskOf<'finish'> {
  if (ask.by !== undefined) return ask;
  const [from, to] = ask.span ?? [0, text.length];
  const by = dayNamed(text.slice(from, to), ctx) ?? dayNamed(text.slice(from), ctx);
  return by ? { ...ask, by } : ask;
}

/**
 * "By Friday" counts Friday, "before Friday" does not. "By June" is by its first day, said in June by its last. A vague time names no day.
 */
export function dayNamed(text: string, ctx: ReadContext): string | undefined {
  const word = BY.exec(text);
  if (!word) return undefined;
  const sheet = openSheet(text, { at: ctx.at });
  const when = sheet.found.find(f => f.dim === 'when' && sheet.tokens[f.to - 1]!.start > word.index);
  if (when?.dim !== 'when' || when.value.vague) return undefined;
  const { from = when.value.to, to = from } = when.value;
  if (from === undefined || to === undefined) return undefined;
  const begins = from > dayOf(ctx.at);
  if (/before/i.test(word[0])) return begins ? addDays(from, -1) : undefined;
  return from !== to && begins && !/\b(end|last)\b/i.test(text) ? from : to;
}

const WHOLE = String.raw`(?:it(?: all)?|she|he|this(?: thing)?|everything|all of it|the whole (?:thing|job|lot)|the (?:machine|tractor|project|job)|i|we)`;
const DONE = String.raw`(?:done|finished|finish|complete(?:d)?|running|ready|going|back together|on the road|roadworthy|driv\w+|moving)`;
const WHEN_DONE = [
  new RegExp(String.raw`(?:^|[.?!,;:] ?|\b(?:so|and|but|ok|know|figure|reckon|guess|think|me) |^)when(?:'ll|'s|s| will| is| are| can| do| might| would| could| am)?(?: \w+){0,3}? ?\b${WHOLE}\b(?:'s|'ll)?(?: \w+){0,4}? \b${DONE}\b`, 'i'),
  new RegExp(String.raw`\bhow (?:long|soon|far|much longer|many (?:days|weeks|months))\b(?: \w+){0,4}? ?\b${WHOLE}\b(?:'s|'ll)?(?: \w+){0,3}? \b${DONE}\b|\bhow (?:far (?:off|away)|close) (?:is|are|am) ${WHOLE}\b[ ?]*$`, 'i'),
  new RegExp(String.raw`\b(?:will|can|could|do you think|what are the (?:odds|chances)(?: that)?|what's the chance(?: that)?|any chance)\b(?: that)? ${WHOLE}\b(?:'s|'ll)?(?: \w+){0,3}? \b${DONE}\b(?: \w+){0,2}? (?:by|before|in time for)\b`, 'i'),
];

const MADE = /^(?:(?:and|so|well|ok(?:ay)?)[, ]+)*(?:will|can|could|shall|do you think) (?:i|we) (?:really |actually |still )?(?:make it|manage(?: it)?|get there|be done|be finished|be through|make (?:that|the date)) (?:by|before|in time for) /i;
/** Group 1: what is to be done by then, where it is named. */
const CHANCE = /^(?:(?:and|so|well|ok(?:ay)?|now)[, ]+)*(?:(?:what(?:'s|s| is| are|re| would you say are)?|how are|is there|give me|any|the|good|a|my|our) )*(?:chances?|odds|likelihood|probability)(?: (?:of|on|that|for|are|is|there|i|we|i'll|we'll|i'd|will|to|me|my|us|have|having|get|getting|see|seeing|finish|finishing|be|being|driv(?:e|ing)|run|running|start|starting|move|moving|use|using))*(?: (?:it|her|this|that|everything|the lot|all of it)\b| (?:the |my |that )?(?!(?:done|finished|ready|over|through|complete|running|going|on time)\b)(.+?))?(?: (?:being|is|be|gets?|will be|to be|on|in|done|finished|ready|back|together|painted|running|complete|going|fitted))* (?:by|before|in time for) \S/i;

/** "The chance of the bonnet by June", "will I make it before Friday": of that part, else of the whole machine. Undefined: no such question, or no day in it. */
export function chanceAsked(text: string, ctx: ReadContext): AskOf<'finish'> | undefined {
  const said = text.replace(/[’‘]/g, "'");
  if (said.split(/\s+/).length > 20) return undefined;
  const chance = CHANCE.exec(said);
  const by = chance || MADE.test(said) ? dayNamed(said, ctx) : undefined;
  return by ? { kind: 'finish', ...(chance?.[1] ? { part: chance[1].toLowerCase() } : {}), by } : undefined;
}

/** "When will it be done", "will she be running by June": the whole of the machine in hand, where the words before name no part. */
export function wholeFinish(text: string): Ask | undefined {
  const said = text.replace(/[’‘]/g, "'");
  if (/\b(arrive|come in|deliver|cure|dry|back from)\w*\b|\b(?:was|were|did|ran|had)\b/i.test(said) || said.split(/\s+/).length > 16) return undefined;
  return WHEN_DONE.some(re => re.test(said)) ? { kind: 'finish' } : undefined;
}

import type { ReadContext, Reading } from '../../domain/model/reading.ts';
import type { Supposed } from '../../domain/answers/what-if.ts';
import { addDays, dayOf } from '../../domain/log/days.ts';
import { openSheet } from '../../nlp/sheet.ts';
import { PERSONS } from '../../nlp/words/persons.ts';
import { readHoist } from './hoist-said.ts';
import type { SaidHours } from './settings.ts';
import { daysOf, hoursOf } from './supposed-hours.ts';

/** A supposition in the person's words, and what it supposes. */
export interface Suppose { words: string; supposed: Supposed }

const LEAD = /^(?:(?:and|so|ok(?:ay)?|but|now|right|well|hey|hm+)[, ]+)*(?:what if|what happens if|what would happen if|what (?:about|changes) if|(?:would|will|does|do|is) (?:it|that|anything|things)(?: \w+){1,2} if|suppos(?:e|ing)(?: that)?|say that|let'?s say(?: that)?|imagine(?: that)?|assum(?:e|ing)(?: that)?|say)[, ]+/i;
/** "When will it be done if the coupling comes Friday". */
const ASKED_IF = /^(?:and )?(?:when|how (?:long|soon|much)|will|would|does it)\b.*?\b(?:if|supposing)\s+(.+)$/i;
/** "If the points came tomorrow, would that help". */
const IF_FIRST = /^(?:(?:and|so|ok(?:ay)?|but|now)[, ]+)*if (.+?),? (?:would|will|does|do|is) (?:that|it|this) (?:help|change|matter|make|be|speed|hurt|delay|hold)\b.*$/i;
/** The question that follows a supposition says nothing more: "…, when will it be done?" But "I do it alone" asks nothing. */
const ASKED_AFTER = /(?<!^(?:i|we)\s*)[,;.]?\s*(?:then\s+|and\s+)?\b(?:when|how (?:long|soon|much|far)|would|will|does|do|can|could|is)\b(?: (?:will|would|is|does|do|can|could))? (?:it|she|that|this|i|we|the|everything|they|be)\b.*$/i;

const COMES = /^(?:the|my|that|those|these|his|our)?\s*(.+?)\s+(?:(?:do|does|did|should|were to|was to|would|could|might|'ll|will|only|finally|really|all)\s+)*(?:(?:isn't|aren't|doesn't|don't|won't)\s+(?:\w+\s+){0,2}?(?:till|until|before)|comes? back|gets? back|comes? in|comes?|came|coming|arrives?|arrived|gets? here|got here|turns? up|turned up|shows? up|showed up|(?:is|are|was|were) (?:here|in|back|delivered|coming)|lands?)\b(.*)$/i;
const SLIPS = /^(?:the|my|that|those|these)?\s*(.+?)\s+(?:(?:is|are|was|were|runs?|comes?|arrives?|turns up|shows up|gets? here|gets?|slips?|takes?)\s+)(?:by\s+|another\s+)?(.*?)(?:\s+(?:late|later|longer|more|early|earlier|sooner))?$/i;
/** "It takes the radiator shop another two weeks", "the radiator shop needs two weeks longer". */
const TAKES = /^(?:it takes |they need at |)(?:the |my )?(.+?) (?:(?:needs?|takes?|wants?) )?((?:another|a further|an extra) .+?|(?:an?|one|two|three|four|\d+) (?:days?|weeks?|months?) (?:more|longer))$/i;
const SKIP = /^(?:i|we)\s*(?:'d|'ll|just|simply|only|were to|was to|would)?\s*(?:skip(?:ped)?(?: out)?|put off|leave out|left out|leave off|leave|don'?t(?: bother(?: with| to)?| do)?|didn'?t(?: bother(?: with| to)?| do)?|do not|forget(?: about)?|drop(?:ped)?|do without|did without|never(?: bother with)?|go without)\s+(.+?)(?:\s+(?:altogether|entirely|for now|at all|undone|off|out|(?:for|till|until|to) (?:later|last|another (?:day|time|year)|next (?:year|winter|spring|summer)|(?:the )?(?:winter|spring|autumn|summer)|afterwards?)|as (?:it|they) (?:is|are)))?$/i;
const UNDONE = /^(?:i|we)\s*(?:'d|'ll)? ?(?:leave|left|keep|kept) (.+?) un(\w+?)(?:ed|d)$/i;
const HELP = /^(?:i|we)\s+(?:get|got|have|had|find|found)\s+(?:some |a bit of )?(?:help|a (?:second |spare )?(?:pair of )?hands?|somebody|someone)\b(.*)$/i;

/** Whether words begin as a supposition. */
export const soundsSupposed = (text: string): boolean => LEAD.test(text.trim()) && !/^say\b(?! that)/i.test(text.trim());

/** A supposition read from the words; undefined when they suppose nothing of the shop. `read`: the reader of notes, for what is said as a note would say it. */
export function supposedBy(text: string, ctx: ReadContext, read: (text: string) => Reading, hours: Pick<SaidHours, 'weekly' | 'exceptions'>): Suppose | undefined {
  const said = text.trim().replace(/[’‘]/g, "'").replace(/[?!.\s]+$/, '');
  const lead = LEAD.exec(said);
  const words = lead ? said.slice(lead[0].length).replace(ASKED_AFTER, '').replace(/[,;.\s]+$/, '') : IF_FIRST.exec(said)?.[1] ?? ASKED_IF.exec(said)?.[1];
  if (!words || words.split(/\s+/).length < 2) return undefined;
  const whole = words.replace(IS_SHORT, '$1 is ').replace(LATE_ALONE, '$1 $2 a week late');
  const one = (rest: string): One | undefined => oneSupposed(rest, ctx, read, hours);
  // "The coupling comes Friday and I skip the paint": each on its own; only what was understood is said to be supposed.
  const parts = whole.split(AND).map(part => ({ part: part.replace(LATE_ALONE, '$1 $2 a week late'), supposed: one(part.replace(LATE_ALONE, '$1 $2 a week late')) })).filter(p => p.supposed);
  if (parts.length > 1) return { words: parts.map(p => spoken(p.part)).join(' and '), supposed: { kind: 'all', all: parts.map(p => p.supposed!) } };
  const supposed = one(whole);
  if (parts.length === 1 && AND.test(whole) && supposed?.kind !== 'entries') return { words: spoken(parts[0]!.part), supposed: parts[0]!.supposed! };
  return supposed && { words: spoken(whole), supposed };
}

type One = Exclude<Supposed, { kind: 'all' }>;
/** Where another supposition may begin. */
const AND = /,? and (?=(?:i|we|it|nobody|there|my|the|that|those) )/i;

const oneSupposed = (rest: string, ctx: ReadContext, read: (text: string) => Reading, hours: Pick<SaidHours, 'weekly' | 'exceptions'>): One | undefined =>
  aloneOf(rest) ?? hoistOf(rest) ?? noHelpOf(rest, ctx) ?? helpOf(rest, ctx) ?? daysOf(rest, hours, ctx) ?? skipOf(rest) ?? hoursOf(rest, hours) ?? skyOf(rest, ctx) ?? slipOf(rest, ctx)
  ?? neverOf(rest) ?? gettingOf(rest, ctx) ?? comingOf(rest, ctx) ?? asNote(rest.replace(/^(?:i|we) (?:find|found|see|saw|learn|hear|heard|discover)(?: out)?(?: that)? /i, ''), read);

/** The person's words as they are said back to them. */
const spoken = (rest: string): string =>
  rest.replace(/\bi am\b/gi, 'you are').replace(/\bmyself\b/gi, 'yourself').replace(/\bme\b/g, 'you').replace(/^(?:I|We)\b/i, 'you').replace(/\bmy\b/gi, 'your');

/** "The coupling's a week late"; the same ending says whose: "the pump's seal is late". */
const IS_SHORT = /\b(\w+)'s (?=(?:an?|one|two|three|four|\d+|late|here|coming|not|back|delayed|in on)\b)/gi;
/** Late by nobody knows how much is taken for a week, and said so. */
const LATE_ALONE = /^(.+?) (is|are|was|were|comes|runs) (?:late|delayed|held up)$/i;

/** Nobody there to help at any time: "I do it all alone", "nobody helps me", "there's no help". */
function aloneOf(rest: string): One | undefined {
  const alone = /\b(?:without (?:any |the |some )?(?:help|a (?:second |spare )?(?:pair of )?hands?)|(?:all )?alone|on my own|by myself|single[- ]handed)\b[ a-z]{0,12}$/i.test(rest) && /^(?:i|we)\b/i.test(rest);
  const nobody = /^(?:nobody|no one|no-one) (?:helps?|can help|comes?(?: to help)?|is (?:here|there|around)(?: to help)?)(?: me| us| out| at all)*$/i.test(rest)
    || /^(?:(?:i|we) (?:had|have|get|got|find|found)|there(?:'s| is| was)) no (?:help|helper|second pair of hands)(?: at all| for .+)?$/i.test(rest);
  return alone || nobody ? { kind: 'noHelp', ever: true } : undefined;
}

const hoistOf = (rest: string): One | undefined => {
  const has = readHoist(rest.replace(/^(i|we) (?:hire|rent|borrow|buy|get|find|rig(?: up)?|had|own|did have)\b/i, '$1 have').replace(/^(.+ (?:hoist|crane)) (?:breaks|goes back|fails)$/i, '$1 broke').replace(/^(i|we) (?:didn't|did not) have/i, "$1 don't have"));
  return has === undefined ? undefined : { kind: 'hoist', has };
};

/** "The belt never comes", "the seal doesn't come". */
const neverOf = (rest: string): One | undefined => {
  const m = /^(?:the |my |that |those |these )?(.+?) (?:never (?:comes?|arrives?|turns? up|shows? up|gets? here)|(?:doesn't|don't|won't) (?:come|arrive|turn up|show up)(?: at all)?)$/i.exec(rest);
  return m ? { kind: 'comes', item: m[1]!, never: true } : undefined;
};

/** "I get the belt today", "I pick the seals up on Monday"; ordered on a day it comes as long after as such things take. */
function gettingOf(rest: string, ctx: ReadContext): One | undefined {
  const m = /^(?:i|we)(?:'d|'ll| could| can)? (get|got|buy|bought|fetch|fetched|collect|collected|pick|picked|have|had|order|ordered)(?: up)? (?:the |my |that |those |these |an? |some |two |new )*(.+?)(?: up)?(?: (?:on |by |in |next |this )?((?:next |this )?\S+(?: \S+){0,2}))?$/i.exec(rest);
  if (!m) return undefined;
  // The item and its day in one: the longest tail that is a day.
  const words = `${m[2]}${m[3] ? ` ${m[3]}` : ''}`.split(' ');
  for (let cut = 1; cut < words.length; cut++) {
    const tail = words.slice(cut).join(' ').replace(/^(?:on|by|in) /, '');
    const on = /^(?:today|now|right now|this (?:morning|afternoon|evening))$/i.test(tail) ? dayOf(ctx.at) : dayIn(tail, ctx);
    if (on === undefined || /^(?:up|on|by|in)$/i.test(words[cut - 1]!)) continue;
    const item = words.slice(0, cut).join(' ').replace(/ (?:up|on|by|in)$/i, '');
    return /^order/i.test(m[1]!) ? { kind: 'comes', item, orderedOn: on } : { kind: 'comes', item, on };
  }
  return /^order/i.test(m[1]!) ? { kind: 'comes', item: words.join(' '), orderedOn: dayOf(ctx.at) } : undefined;
}

const dayIn = (text: string, ctx: ReadContext): string | undefined => {
  const when = openSheet(text, { at: ctx.at }).found.find(f => f.dim === 'when');
  return when?.dim === 'when' && !when.value.vague ? when.value.from ?? when.value.to : undefined;
};

/** "My neighbour comes Saturday", "I get help on Sunday". */
function helpOf(rest: string, ctx: ReadContext): One | undefined {
  const person = COMES.exec(rest);
  const comes = person && isPerson(person[1]!);
  const after = comes ? person[2]! : HELP.exec(rest)?.[1];
  if (after === undefined) return undefined;
  const when = dayIn(after, ctx) ?? (comes ? undefined : dayOf(ctx.at));
  return when === undefined ? undefined : { kind: 'entries', entries: [{ kind: 'hands', when }] };
}

const isPerson = (said: string): boolean => PERSONS.test(said) || /^(?:help|somebody|someone|nobody|he|she|they|a (?:second |spare )?pair of hands)$/i.test(said);

/** "My cousin doesn't come", "nobody comes Saturday". */
function noHelpOf(rest: string, ctx: ReadContext): One | undefined {
  const m = /^(?:my |the |our )?(.+?)\s+(?:(?:doesn't|don't|won't|can't|cannot|does not|will not|isn't|is not|aren't)\s+(?:\w+\s+)?(?:come|coming|show up|turn up|make it|help|here)|(?:falls|drops|backs|cries|calls) off|(?:backs|drops|cries) out|cancels|comes?)\b(.*)$/i.exec(rest);
  if (!m || !isPerson(m[1]!) || (/\bcomes?\b/.test(m[0]) && !/n't|\bnot\b|cannot|^nobody/i.test(rest)) || /\b(?:till|until|before)\b/.test(m[2]!)) return undefined;
  const on = dayIn(m[2]!, ctx);
  return { kind: 'noHelp', ...(on === undefined ? {} : { on }) };
}

const skipOf = (rest: string): One | undefined => {
  // "I leave the shell unpainted".
  const undone = UNDONE.exec(rest);
  if (undone) return { kind: 'skip', phrase: `${undone[2]!} ${undone[1]!}` };
  const m = SKIP.exec(rest);
  return m ? { kind: 'skip', phrase: m[1]!.replace(/^to /, '') } : undefined;
};

/** "It rains all week", "it stays dry until Sunday". */
function skyOf(rest: string, ctx: ReadContext): One | undefined {
  const said = /^(?:we|i) (?:get|got|have|had) (?:a |some |another )?(dry|wet|rainy|rain|frost|snow)\w* ?(?:week|spell|weather|few days|day|days)?\b(.*)$/i.exec(rest) ?? /^there(?:'s| is| was) (rain|frost|snow)\b(.*)$/i.exec(rest);
  const m = said ?? /^(?:it|the weather)(?:'s| is| stays| turns| keeps| does| starts| will be)? ?(rain|dry|wet|snow|freez|frost|pour)\w*(?: out)?\b(.*)$/i.exec(rest);
  if (!m) return undefined;
  const today = dayOf(ctx.at);
  const when = openSheet(rest, { at: ctx.at }).found.find(f => f.dim === 'when');
  const days = when?.dim === 'when' && !when.value.vague ? when.value : { from: today, to: addDays(today, /fortnight|two weeks/.test(m[2]!) ? 13 : 6) };
  const sky = ({ dry: 'dry', snow: 'snow', freez: 'frost', frost: 'frost' } as const)[m[1]!.toLowerCase()] ?? 'rain';
  return { kind: 'entries', entries: [{ kind: 'weather', sky, from: days.from ?? today, to: days.to ?? days.from ?? today }] };
}

/** "The coupling is a week late", "the magneto takes two weeks longer". */
function slipOf(rest: string, ctx: ReadContext): One | undefined {
  if (!/\b(?:late|later|longer|slips?|another|further|extra|early|earlier|sooner)\b/.test(rest)) return undefined;
  const m = TAKES.exec(rest) ?? SLIPS.exec(rest);
  const span = m && openSheet(m[2]!, { at: ctx.at }).found.find(f => f.dim === 'span');
  if (!m || span?.dim !== 'span') return undefined;
  const days = { minutes: 0, hours: 1 / 24, days: 1, weeks: 7, months: 30, years: 365, miles: 0 }[span.value.unit] * span.value.amount;
  return days > 0 ? { kind: 'comes', item: m[1]!, laterDays: /\b(?:early|earlier|sooner)\b/.test(rest) ? -days : days } : undefined;
}

/** "The coupling comes Friday"; without a day only where it is said to be here. "Not until Friday" is from that day on. */
function comingOf(rest: string, ctx: ReadContext): One | undefined {
  const m = COMES.exec(rest);
  if (!m) return undefined;
  const on = dayIn(m[2]!, ctx);
  if (on !== undefined) return { kind: 'comes', item: m[1]!, on };
  if (/\btoday|now|already|here\b/.test(m[0])) return { kind: 'comes', item: m[1]!, on: dayOf(ctx.at) };
  return /\btomorrow\b/.test(m[0]) ? { kind: 'comes', item: m[1]!, on: addDays(dayOf(ctx.at), 1) } : undefined;
}

/** Anything else that a note can state: rain, a finding, a part on. */
function asNote(rest: string, read: (text: string) => Reading): One | undefined {
  const { entries, asks, questions } = read(rest);
  const kept = entries.filter(e => e.kind !== 'remark' && e.kind !== 'amend');
  return kept.length && !asks.length && !questions.length ? { kind: 'entries', entries: kept } : undefined;
}

import type { OneSupposed, Supposed } from '../../domain/answers/what-if.ts';
import type { ReadContext, Reading } from '../../domain/model/reading.ts';
import type { SaidHours } from './settings.ts';
import { aloneOf, helpOf, hoistOf, noHelpOf } from './supposed-help.ts';
import { daysOf, hoursOf } from './supposed-hours.ts';
import { skyOf } from './supposed-sky.ts';
import { comingOf, gettingOf, neverOf, slipOf } from './supposed-supplies.ts';

/** A supposition in the person's words, and what it supposes. */
interface Suppose { words: string; supposed: Supposed }

const LEAD = /^(?:(?:and|so|ok(?:ay)?|but|now|right|well|hey|hm+)[, ]+)*(?:what if|what happens if|what would happen if|what (?:about|changes) if|(?:would|will|does|do|is) (?:it|that|anything|things)(?: \w+){1,2} if|suppos(?:e|ing)(?: that)?|say that|let'?s say(?: that)?|imagine(?: that)?|assum(?:e|ing)(?: that)?|say)[, ]+/i;
/** "When will it be done if the coupling comes Friday". */
const ASKED_IF = /^(?:and )?(?:when|how (?:long|soon|much)|will|would|does it)\b.*?\b(?:if|supposing)\s+(.+)$/i;
/** "If the points came tomorrow, would that help". */
const IF_FIRST = /^(?:(?:and|so|ok(?:ay)?|but|now)[, ]+)*if (.+?),? (?:would|will|does|do|is) (?:that|it|this) (?:help|change|matter|make|be|speed|hurt|delay|hold)\b.*$/i;
/** The question that follows a supposition says nothing more: "…, when will it be done?" But "I do it alone" asks nothing. */
const ASKED_AFTER = /(?<!^(?:i|we)\s*)[,;.]?\s*(?:then\s+|and\s+)?\b(?:when|how (?:long|soon|much|far)|would|will|does|do|can|could|is)\b(?: (?:will|would|is|does|do|can|could))? (?:it|she|that|this|i|we|the|everything|they|be)\b.*$/i;

/** Whether words begin as a supposition. */
export const soundsSupposed = (text: string): boolean => LEAD.test(text.trim()) && !/^say\b(?! that)/i.test(text.trim());

/** A supposition read from the words; undefined when they suppose nothing of the shop. `read`: the reader of notes, for what is said as a note would say it. */
export function supposedBy(text: string, ctx: ReadContext, read: (text: string) => Reading, hours: Pick<SaidHours, 'weekly' | 'exceptions'>): Suppose | undefined {
  const said = text.trim().replace(/[’‘]/g, "'").replace(/[?!.\s]+$/, '');
  const lead = LEAD.exec(said);
  const words = lead ? said.slice(lead[0].length).replace(ASKED_AFTER, '').replace(/[,;.\s]+$/, '') : IF_FIRST.exec(said)?.[1] ?? ASKED_IF.exec(said)?.[1];
  if (!words || words.split(/\s+/).length < 2) return undefined;
  const whole = words.replace(IS_SHORT, '$1 is ').replace(LATE_ALONE, '$1 $2 a week late');
  const one = (rest: string): OneSupposed | undefined => oneSupposed(rest, ctx, read, hours);
  // "The coupling comes Friday and I skip the paint": each on its own; only what was understood is said to be supposed.
  const parts = whole.split(AND).map(part => ({ part: part.replace(LATE_ALONE, '$1 $2 a week late'), supposed: one(part.replace(LATE_ALONE, '$1 $2 a week late')) })).filter(p => p.supposed);
  if (parts.length > 1) return { words: parts.map(p => spoken(p.part)).join(' and '), supposed: { kind: 'all', all: parts.map(p => p.supposed!) } };
  const supposed = one(whole);
  if (parts.length === 1 && AND.test(whole) && supposed?.kind !== 'entries') return { words: spoken(parts[0]!.part), supposed: parts[0]!.supposed! };
  return supposed && { words: spoken(whole), supposed };
}

/** Where another supposition may begin. */
const AND = /,? and (?=(?:i|we|it|nobody|there|my|the|that|those) )/i;

const oneSupposed = (rest: string, ctx: ReadContext, read: (text: string) => Reading, hours: Pick<SaidHours, 'weekly' | 'exceptions'>): OneSupposed | undefined =>
  aloneOf(rest) ?? hoistOf(rest) ?? noHelpOf(rest, ctx) ?? helpOf(rest, ctx) ?? daysOf(rest, hours, ctx) ?? skipOf(rest) ?? hoursOf(rest, hours) ?? skyOf(rest, ctx) ?? slipOf(rest, ctx)
  ?? neverOf(rest) ?? gettingOf(rest, ctx) ?? comingOf(rest, ctx) ?? asNote(rest.replace(/^(?:i|we) (?:find|found|see|saw|learn|hear|heard|discover)(?: out)?(?: that)? /i, ''), read);

/** The person's words as they are said back to them. */
const spoken = (rest: string): string =>
  rest.replace(/\bi am\b/gi, 'you are').replace(/\bmyself\b/gi, 'yourself').replace(/\bme\b/g, 'you').replace(/^(?:I|We)\b/i, 'you').replace(/\bmy\b/gi, 'your');

/** "The coupling's a week late"; the same ending says whose: "the pump's seal is late". */
const IS_SHORT = /\b(\w+)'s (?=(?:an?|one|two|three|four|\d+|late|here|coming|not|back|delayed|in on)\b)/gi;
/** Late by nobody knows how much is taken for a week, and said so. */
const LATE_ALONE = /^(.+?) (is|are|was|were|comes|runs) (?:late|delayed|held up)$/i;

const SKIP = /^(?:i|we)\s*(?:'d|'ll|just|simply|only|were to|was to|would)?\s*(?:skip(?:ped)?(?: out)?|put off|leave out|left out|leave off|leave|don'?t(?: bother(?: with| to)?| do)?|didn'?t(?: bother(?: with| to)?| do)?|do not|forget(?: about)?|drop(?:ped)?|do without|did without|never(?: bother with)?|go without)\s+(.+?)(?:\s+(?:altogether|entirely|for now|at all|undone|off|out|(?:for|till|until|to) (?:later|last|another (?:day|time|year)|next (?:year|winter|spring|summer)|(?:the )?(?:winter|spring|autumn|summer)|afterwards?)|as (?:it|they) (?:is|are)))?$/i;
const UNDONE = /^(?:i|we)\s*(?:'d|'ll)? ?(?:leave|left|keep|kept) (.+?) un(\w+?)(?:ed|d)$/i;

/** "I skip the paint", "I don't bother with the seal". */
const skipOf = (rest: string): OneSupposed | undefined => {
  // "I leave the shell unpainted".
  const undone = UNDONE.exec(rest);
  if (undone) return { kind: 'skip', phrase: `${undone[2]!} ${undone[1]!}` };
  const m = SKIP.exec(rest);
  return m ? { kind: 'skip', phrase: m[1]!.replace(/^to /, '') } : undefined;
};

/** Anything else that a note can state: rain, a finding, a part on. */
function asNote(rest: string, read: (text: string) => Reading): OneSupposed | undefined {
  const { entries, asks, questions } = read(rest);
  const kept = entries.filter(e => e.kind !== 'remark' && e.kind !== 'amend');
  return kept.length && !asks.length && !questions.length ? { kind: 'entries', entries: kept } : undefined;
}

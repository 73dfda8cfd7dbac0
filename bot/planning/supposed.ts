import type { ReadContext, Reading } from '../../domain/model/reading.ts';
import type { Supposed } from '../../domain/answers/what-if.ts';
import { addDays, dayOf } from '../../domain/log/days.ts';
import { openSheet } from '../../nlp/sheet.ts';
import { readHours } from '../../nlp/settings/hours.ts';
import { PERSONS } from '../../nlp/words/persons.ts';
import { withHours } from './hours-kept.ts';
import type { SaidHours } from './settings.ts';

/** A supposition in the person's words, and what it supposes. */
export interface Suppose { words: string; supposed: Supposed }

const LEAD = /^(?:(?:and|so|ok(?:ay)?|but|now|right|well|hey|hm+)[, ]+)*(?:what if|what happens if|what would happen if|what (?:about|changes) if|suppos(?:e|ing)(?: that)?|say that|let'?s say(?: that)?|imagine(?: that)?|assum(?:e|ing)(?: that)?|say)[, ]+/i;
/** "When will it be done if the coupling comes Friday". */
const ASKED_IF = /^(?:and )?(?:when|how (?:long|soon|much)|will|would|does it)\b.*?\b(?:if|supposing)\s+(.+)$/i;
/** The question that follows a supposition says nothing more: "…, when will it be done?" */
const ASKED_AFTER = /[,;.]?\s*(?:then\s+|and\s+)?\b(?:when|how (?:long|soon|much|far)|would|will|does|do|can|could|is)\b(?: (?:will|would|is|does|do|can|could))? (?:it|she|that|this|i|we|the|everything|they|be)\b.*$/i;

const COMES = /^(?:the|my|that|those|these|his|our)?\s*(.+?)\s+(?:(?:do|does|did|should|were to|was to|would|could|might|'ll|will|only|finally|really|all)\s+)*(?:(?:isn't|aren't|doesn't|don't|won't)\s+(?:\w+\s+){0,2}?(?:till|until|before)|comes? back|gets? back|comes? in|comes?|came|coming|arrives?|arrived|gets? here|got here|turns? up|turned up|shows? up|showed up|(?:is|are|was|were) (?:here|in|back|delivered|coming)|lands?)\b(.*)$/i;
const SLIPS = /^(?:the|my|that|those|these)?\s*(.+?)\s+(?:(?:is|are|was|were|runs?|comes?|gets?|slips?|takes?)\s+)(?:by\s+|another\s+)?(.*?)(?:\s+(?:late|later|longer|more))?$/i;
const SKIP = /^(?:i|we)\s*(?:'d|'ll|just|simply|only|were to|was to|would)?\s*(?:skip(?:ped)?|leave out|left out|leave off|leave|don'?t(?: bother(?: with| to)?| do)?|didn'?t(?: bother(?: with| to)?| do)?|do not|forget(?: about)?|drop(?:ped)?|do without|did without|never(?: bother with)?|go without)\s+(.+?)(?:\s+(?:altogether|entirely|for now|at all|undone|off|out))?$/i;
const HELP = /^(?:i|we)\s+(?:get|got|have|had|find|found)\s+(?:some |a bit of )?(?:help|a (?:second |spare )?(?:pair of )?hands?|somebody|someone)\b(.*)$/i;
const WORK_HOURS = /^(?:i|we)\s*(?:'d|could|can|would|were to|was to)?\s*(?:work(?:ed|ing)?|had|have|got|get|put in|did|do|manage[d]?|spend|spent)\b\s*(.+)$/i;

/** Whether words begin as a supposition. */
export const soundsSupposed = (text: string): boolean => LEAD.test(text.trim()) && !/^say\b(?! that)/i.test(text.trim());

/** A supposition read from the words; undefined when they suppose nothing of the shop. `read`: the reader of notes, for what is said as a note would say it. */
export function supposedBy(text: string, ctx: ReadContext, read: (text: string) => Reading, hours: Pick<SaidHours, 'weekly' | 'exceptions'>): Suppose | undefined {
  const said = text.trim().replace(/[’‘]/g, "'").replace(/[?!.\s]+$/, '');
  const lead = LEAD.exec(said);
  const rest = lead ? said.slice(lead[0].length).replace(ASKED_AFTER, '').replace(/[,;.\s]+$/, '') : ASKED_IF.exec(said)?.[1];
  if (!rest || rest.split(/\s+/).length < 2) return undefined;
  const supposed = noHelpOf(rest, ctx) ?? helpOf(rest, ctx) ?? skipOf(rest) ?? hoursOf(rest, hours) ?? skyOf(rest, ctx) ?? slipOf(rest, ctx) ?? comingOf(rest, ctx) ?? asNote(rest.replace(/^(?:i|we) (?:find|found|see|saw|learn|hear|heard|discover)(?: out)?(?: that)? /i, ''), read);
  return supposed && { words: rest.replace(/^(I|We)\b/, w => (w === 'I' ? 'you' : 'you')).replace(/^(i|we)\b/, 'you').replace(/\bmy\b/gi, 'your'), supposed };
}

const dayIn = (text: string, ctx: ReadContext): string | undefined => {
  const when = openSheet(text, { at: ctx.at }).found.find(f => f.dim === 'when');
  return when?.dim === 'when' && !when.value.vague ? when.value.from ?? when.value.to : undefined;
};

/** "My neighbour comes Saturday", "I get help on Sunday". */
function helpOf(rest: string, ctx: ReadContext): Supposed | undefined {
  const person = COMES.exec(rest);
  const comes = person && isPerson(person[1]!);
  const after = comes ? person[2]! : HELP.exec(rest)?.[1];
  if (after === undefined) return undefined;
  const when = dayIn(after, ctx) ?? (comes ? undefined : dayOf(ctx.at));
  return when === undefined ? undefined : { kind: 'entries', entries: [{ kind: 'hands', when }] };
}

const isPerson = (said: string): boolean => PERSONS.test(said) || /^(?:help|somebody|someone|nobody|he|she|they|a (?:second |spare )?pair of hands)$/i.test(said);

/** "My cousin doesn't come", "nobody comes Saturday". */
function noHelpOf(rest: string, ctx: ReadContext): Supposed | undefined {
  const m = /^(?:my |the |our )?(.+?)\s+(?:(?:doesn't|don't|won't|can't|cannot|does not|will not|isn't|is not|aren't)\s+(?:\w+\s+)?(?:come|coming|show up|turn up|make it|help|here)|(?:falls|drops|backs|cries|calls) off|(?:backs|drops|cries) out|cancels|comes?)\b(.*)$/i.exec(rest);
  if (!m || !isPerson(m[1]!) || (/\bcomes?\b/.test(m[0]) && !/n't|\bnot\b|cannot|^nobody/i.test(rest)) || /\b(?:till|until|before)\b/.test(m[2]!)) return undefined;
  const on = dayIn(m[2]!, ctx);
  return { kind: 'noHelp', ...(on === undefined ? {} : { on }) };
}

const skipOf = (rest: string): Supposed | undefined => {
  const m = SKIP.exec(rest);
  return m ? { kind: 'skip', phrase: m[1]!.replace(/^to /, '') } : undefined;
};

/** Other hours, or longer ones: "another hour every evening". */
function hoursOf(rest: string, now: Pick<SaidHours, 'weekly' | 'exceptions'>): Supposed | undefined {
  const m = WORK_HOURS.exec(rest);
  const more = m && /\b(?:another|an extra|one more|extra|more)\b/.test(m[1]!) ? readHours(m[1]!.replace(/\banother\b|\ban extra\b|\bone more\b/, 'an').replace(/\b(?:extra|more)\b/, '').replace(/\s+/g, ' ')) : undefined;
  if (more) return { kind: 'hours', hours: longer(now, more.weekly) };
  const read = m ? readHours(m[1]!.replace(/\binstead\b/, '').trim()) : readHours(rest);
  return read && { kind: 'hours', hours: withHours(now, read) };
}

/** The same week with so much more on those of its days; a day without hours gets them. */
function longer(now: Pick<SaidHours, 'weekly' | 'exceptions'>, more: SaidHours['weekly']): Pick<SaidHours, 'weekly' | 'exceptions'> {
  const minutes = (t: string): number => Number(t.slice(0, 2)) * 60 + Number(t.slice(3));
  const clock = (m: number): string => `${String(Math.floor(m / 60)).padStart(2, '0')}:${String(m % 60).padStart(2, '0')}`;
  const added = new Map(more.map(w => [w.weekday, w]));
  const stretched = now.weekly.map(w => { const a = added.get(w.weekday); return a ? { ...w, to: clock(Math.min(1440, minutes(w.to) + minutes(a.to) - minutes(a.from))) } : w; });
  return { weekly: [...stretched, ...more.filter(w => !now.weekly.some(x => x.weekday === w.weekday))], exceptions: now.exceptions };
}

/** "It rains all week", "it stays dry until Sunday". */
function skyOf(rest: string, ctx: ReadContext): Supposed | undefined {
  const m = /^(?:it|the weather)(?:'s| is| stays| turns| keeps| does| starts| will be)? ?(rain|dry|wet|snow|freez|frost|pour)\w*(?: out)?\b(.*)$/i.exec(rest);
  if (!m) return undefined;
  const today = dayOf(ctx.at);
  const when = openSheet(rest, { at: ctx.at }).found.find(f => f.dim === 'when');
  const days = when?.dim === 'when' && !when.value.vague ? when.value : { from: today, to: addDays(today, /fortnight|two weeks/.test(m[2]!) ? 13 : 6) };
  const sky = ({ dry: 'dry', snow: 'snow', freez: 'frost', frost: 'frost' } as const)[m[1]!.toLowerCase()] ?? 'rain';
  return { kind: 'entries', entries: [{ kind: 'weather', sky, from: days.from ?? today, to: days.to ?? days.from ?? today }] };
}

/** "The coupling is a week late", "the magneto takes two weeks longer". */
function slipOf(rest: string, ctx: ReadContext): Supposed | undefined {
  if (!/\b(?:late|later|longer|slips?|another)\b/.test(rest)) return undefined;
  const m = SLIPS.exec(rest);
  const span = m && openSheet(m[2]!, { at: ctx.at }).found.find(f => f.dim === 'span');
  if (!m || span?.dim !== 'span') return undefined;
  const days = { minutes: 0, hours: 1 / 24, days: 1, weeks: 7, months: 30, years: 365, miles: 0 }[span.value.unit] * span.value.amount;
  return days > 0 ? { kind: 'comes', item: m[1]!, laterDays: days } : undefined;
}

/** "The coupling comes Friday"; without a day only where it is said to be here. "Not until Friday" is from that day on. */
function comingOf(rest: string, ctx: ReadContext): Supposed | undefined {
  const m = COMES.exec(rest);
  if (!m) return undefined;
  const on = dayIn(m[2]!, ctx);
  if (on !== undefined) return { kind: 'comes', item: m[1]!, on };
  if (/\btoday|now|already|here\b/.test(m[0])) return { kind: 'comes', item: m[1]!, on: dayOf(ctx.at) };
  return /\btomorrow\b/.test(m[0]) ? { kind: 'comes', item: m[1]!, on: addDays(dayOf(ctx.at), 1) } : undefined;
}

/** Anything else that a note can state: rain, a finding, a part on. */
function asNote(rest: string, read: (text: string) => Reading): Supposed | undefined {
  const { entries, asks, questions } = read(rest);
  const kept = entries.filter(e => e.kind !== 'remark' && e.kind !== 'amend');
  return kept.length && !asks.length && !questions.length ? { kind: 'entries', entries: kept } : undefined;
}

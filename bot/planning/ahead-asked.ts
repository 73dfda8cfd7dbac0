import { ahead, type DaySpan } from '../../domain/answers/ahead.ts';
import { addDays, dayOf } from '../../domain/log/days.ts';
import { openSheet } from '../../nlp/sheet.ts';
import { sayAnswer } from '../say/answer.ts';
import { compose } from '../say/reply.ts';
import { paged } from '../turn/pages.ts';
import type { Turn, TurnOut } from '../turn/types.ts';
import { DRAW_IT } from './draw-button.ts';
import { keepDrawable } from './draw-it.ts';
import { factsFor } from './facts.ts';

const LEAD = String.raw`^(?:(?:and|so|ok(?:ay)?|but|right|well|now|hey|please|tell me|show me|give me|read me|let's (?:see|hear|have))[, ]+)*`;
const PLAN = String.raw`(?:the |my |our |a |this |next )?(?:plan|plans|schedule|programme|timetable|running order|order of (?:work|jobs|things))`;
/** What is left in group 1 names the time. */
const ASKS = [
  new RegExp(String.raw`${LEAD}(?:(?:what|how)(?:'s| is| are)? )?${PLAN}(?: (?:looking|like|now|then|of work|of jobs))*(?: (?:for|on|over|of) (.+)| (today|tonight|tomorrow|this \w+|next \w+|from \w+ on))?$`, 'i'),
  new RegExp(String.raw`${LEAD}what(?:'s| is| have (?:i|we) got)? (?:planned|lined up|laid out|scheduled)(?: (?:for|on|over) (.+)| (tomorrow|this \w+|next \w+))?$`, 'i'),
  new RegExp(String.raw`${LEAD}(?:what|how) (?:does|do|will|is) (.+?) (?:look|looking|shape up|shaping up)(?: like)?$`, 'i'),
  new RegExp(String.raw`${LEAD}what (?:am i|are we) (?:(?:supposed|meant|due) to be )?(?:doing|down for|on)(?: (?:on|over|for))? ((?:this |next |the )?\w+)$`, 'i'),
  new RegExp(String.raw`${LEAD}(?:in )?(?:what|which) order (?:do|should|must|shall|will|would|can) (?:i|we) (?:(?:best|have to|need to) )?(?:do|tackle|take|work) (?:things|it|them|it all|everything|the (?:jobs|work|lot|rest)|all (?:of )?(?:it|this|that|them))(?: in)?$`, 'i'),
  new RegExp(String.raw`${LEAD}(?:list|lay out|put|give me|read out) (?:all )?(?:the |my )?(?:jobs|work)(?: (?:out|left|to do))? (?:in order|by day|day by day|in (?:the|their) order)$`, 'i'),
];
/** Hours of today are the question what is next. */
const NOW = /^(?:today|tonight|now|this (?:morning|afternoon|evening|arvo))$/i;

/** The days whose plan is asked for; all to come where no time is named. Undefined: something else is asked. */
export function readAhead(text: string, at: string): DaySpan | undefined {
  const said = text.trim().replace(/[’‘]/g, "'").replace(/[?.!\s]+$/, '');
  if (said.split(/\s+/).length > 14) return undefined;
  const m = ASKS.map(re => re.exec(said)).find(found => found !== null);
  if (!m) return undefined;
  const time = (m[1] ?? m[2] ?? '').replace(/^the (?=(?:coming |next )?(?:week|month)\b)/i, 'this ').trim();
  if (!time) return {};
  if (NOW.test(time)) return undefined;
  const days = /^the (?:rest of the week|days (?:ahead|to come)|weeks (?:ahead|to come))$/i.exec(time);
  if (days) return /week$/.test(time) ? { from: dayOf(at), to: addDays(dayOf(at), 6) } : {};
  const { found } = openSheet(time, { at });
  const when = found.find(f => f.dim === 'when');
  const span = /^(?:the )?(?:next|coming) /i.test(time) ? found.find(f => f.dim === 'span' && (f.value.unit === 'days' || f.value.unit === 'weeks')) : undefined;
  if (span?.dim === 'span') return { from: dayOf(at), to: addDays(dayOf(at), Math.round(span.value.amount * (span.value.unit === 'weeks' ? 7 : 1)) - 1) };
  if (when?.dim !== 'when' || when.value.vague) return undefined;
  const { from, to } = when.value;
  return { ...(from === undefined ? {} : { from: from < dayOf(at) && (to ?? from) >= dayOf(at) ? dayOf(at) : from }), ...(to === undefined ? {} : { to }) };
}

/** The work as it is laid out, day by day; handed out where simulations are. Undefined: not asked. */
export function aheadAsked(turn: Turn): TurnOut | undefined {
  const { incoming: { at, text }, deps, note, machine } = turn;
  const span = readAhead(text, at);
  if (!span) return undefined;
  keepDrawable(turn, [{ kind: 'finish' }]);
  if (deps.handsOut?.({ kind: 'finish' })) return { reply: { ...compose({ note: note.id, at, lines: ['Working it out…'] }), later: [{ kind: 'ahead', span, machine }] } };
  const answer = ahead(deps.log.shop, span, { at, zone: deps.zone }, factsFor(deps, at, machine));
  const { say, page, buttons } = paged(sayAnswer(answer, { at }));
  return { reply: { ...compose({ note: note.id, at, lines: [say] }), answers: [answer], buttons: [...buttons, ...(answer.days.length ? [DRAW_IT] : [])] }, page };
}

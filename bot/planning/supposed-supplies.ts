import type { OneSupposed } from '../../domain/answers/what-if.ts';
import { addDays, dayOf } from '../../domain/log/days.ts';
import type { ReadContext } from '../../domain/model/reading.ts';
import { openSheet } from '../../nlp/sheet.ts';
import { COMES, dayIn } from './comes-when.ts';

const SLIPS = /^(?:the|my|that|those|these)?\s*(.+?)\s+(?:(?:is|are|was|were|runs?|comes?|arrives?|turns up|shows up|gets? here|gets?|slips?|takes?)\s+)(?:by\s+|another\s+)?(.*?)(?:\s+(?:late|later|longer|more|early|earlier|sooner))?$/i;
/** "It takes the radiator shop another two weeks", "the radiator shop needs two weeks longer". */
const TAKES = /^(?:it takes |they need at |)(?:the |my )?(.+?) (?:(?:needs?|takes?|wants?) )?((?:another|a further|an extra) .+?|(?:an?|one|two|three|four|\d+) (?:days?|weeks?|months?) (?:more|longer))$/i;

/** "The belt never comes", "the seal doesn't come". */
export const neverOf = (rest: string): OneSupposed | undefined => {
  const m = /^(?:the |my |that |those |these )?(.+?) (?:never (?:comes?|arrives?|turns? up|shows? up|gets? here)|(?:doesn't|don't|won't) (?:come|arrive|turn up|show up)(?: at all)?)$/i.exec(rest);
  return m ? { kind: 'comes', item: m[1]!, never: true } : undefined;
};

/** "I get the belt today", "I pick the seals up on Monday"; ordered on a day it comes as long after as such things take. */
export function gettingOf(rest: string, ctx: ReadContext): OneSupposed | undefined {
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

/** "The coupling is a week late", "the magneto takes two weeks longer". */
export function slipOf(rest: string, ctx: ReadContext): OneSupposed | undefined {
  if (!/\b(?:late|later|longer|slips?|another|further|extra|early|earlier|sooner)\b/.test(rest)) return undefined;
  const m = TAKES.exec(rest) ?? SLIPS.exec(rest);
  const span = m && openSheet(m[2]!, { at: ctx.at }).found.find(f => f.dim === 'span');
  if (!m || span?.dim !== 'span') return undefined;
  const days = { minutes: 0, hours: 1 / 24, days: 1, weeks: 7, months: 30, years: 365, miles: 0 }[span.value.unit] * span.value.amount;
  return days > 0 ? { kind: 'comes', item: m[1]!, laterDays: /\b(?:early|earlier|sooner)\b/.test(rest) ? -days : days } : undefined;
}

/** "The coupling comes Friday"; without a day only where it is said to be here. "Not until Friday" is from that day on. */
export function comingOf(rest: string, ctx: ReadContext): OneSupposed | undefined {
  const m = COMES.exec(rest);
  if (!m) return undefined;
  const on = dayIn(m[2]!, ctx);
  if (on !== undefined) return { kind: 'comes', item: m[1]!, on };
  if (/\btoday|now|already|here\b/.test(m[0])) return { kind: 'comes', item: m[1]!, on: dayOf(ctx.at) };
  return /\btomorrow\b/.test(m[0]) ? { kind: 'comes', item: m[1]!, on: addDays(dayOf(ctx.at), 1) } : undefined;
}

import type { OneSupposed } from '../../domain/answers/what-if.ts';
import { addDays, dayOf } from '../../domain/log/days.ts';
import type { ReadContext } from '../../domain/model/reading.ts';
import { openSheet } from '../../nlp/sheet.ts';

/** "It rains all week", "it stays dry until Sunday". */
export function skyOf(rest: string, ctx: ReadContext): OneSupposed | undefined {
  const said = /^(?:we|i) (?:get|got|have|had) (?:a |some |another )?(dry|wet|rainy|rain|frost|snow)\w* ?(?:week|spell|weather|few days|day|days)?\b(.*)$/i.exec(rest) ?? /^there(?:'s| is| was) (rain|frost|snow)\b(.*)$/i.exec(rest);
  const m = said ?? /^(?:it|the weather)(?:'s| is| stays| turns| keeps| does| starts| will be)? ?(rain|dry|wet|snow|freez|frost|pour)\w*(?: out)?\b(.*)$/i.exec(rest);
  if (!m) return undefined;
  const today = dayOf(ctx.at);
  const when = openSheet(rest, { at: ctx.at }).found.find(f => f.dim === 'when');
  const days = when?.dim === 'when' && !when.value.vague ? when.value : { from: today, to: addDays(today, /fortnight|two weeks/.test(m[2]!) ? 13 : 6) };
  const sky = ({ dry: 'dry', snow: 'snow', freez: 'frost', frost: 'frost' } as const)[m[1]!.toLowerCase()] ?? 'rain';
  return { kind: 'entries', entries: [{ kind: 'weather', sky, from: days.from ?? today, to: days.to ?? days.from ?? today }] };
}

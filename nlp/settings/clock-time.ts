import { WORDS, numberSaid } from './hour-words.ts';
import { table } from '../words/table.ts';

const HOUR = `(\\d{1,2}|${WORDS.slice(1).join('|')})`;
const MINUTES: Record<string, number> = table({ 'o\'clock': 0, oclock: 0, fifteen: 15, twenty: 20, thirty: 30, 'forty five': 45, 'forty-five': 45, ten: 10, 'oh five': 5 });
const DAY_PART = /\s*(a\.?m\.?|p\.?m\.?|in the morning|in the afternoon|in the evening|at night|of an evening|of a morning)$/;

/** A time of day as a source of a pattern, for a rule that has to know where one ends. */
export const CLOCK = String.raw`(?:half (?:past )?${HOUR.replace('(', '(?:')}|(?:a )?quarter (?:past|to|of|after|till) ${HOUR.replace('(', '(?:')}|noon|midday|midnight|\d{1,2}[:.h]\d\d|\d{4}(?: hours)?|${HOUR.replace('(', '(?:')}(?: (?:o'?clock|fifteen|thirty|forty[- ]five|twenty|ten|oh five))?)(?:\s*(?:a\.?m\.?|p\.?m\.?|in the morning|in the afternoon|in the evening|at night|of an evening|of a morning))?`;

/**
 * A time of day by the whole of some words, HH:MM: "half six" (30 past), "quarter to seven", "6.30 am", "nine at night", "0630". A bare
 * figure up to twelve is taken before or after noon as `bare` says. Undefined: no time of day.
 */
export function clockTime(said: string, bare: 'am' | 'pm'): string | undefined {
  const low = said.toLowerCase().replace(/[’‘]/g, "'").replace(/\s+/g, ' ').trim();
  const part = DAY_PART.exec(low)?.[1];
  const core = part ? low.slice(0, low.length - DAY_PART.exec(low)![0].length) : low;
  if (/^(noon|midday)$/.test(core)) return '12:00';
  if (core === 'midnight') return '00:00';
  const minutes = minutesOf(core);
  if (minutes === undefined || minutes >= 24 * 60) return undefined;
  const late = part ? /^p|afternoon|evening|night/.test(part) : bare === 'pm';
  const hour = Math.floor(minutes / 60);
  // A leading nought, four digits or an hour past twelve are read as they stand.
  const asIs = hour > 12 || (!part && /^0\d|^\d{4}/.test(core));
  const small = part && /night/.test(part) && hour % 12 < 5;
  const whole = asIs ? minutes : (minutes % (12 * 60)) + (late && !small ? 12 * 60 : 0);
  return clockAt(whole);
}

/** HH:MM of so many whole minutes after midnight. */
export const clockAt = (minutes: number): string => `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;

/** Minutes from the beginning of the (half) day. */
function minutesOf(core: string): number | undefined {
  const half = new RegExp(`^half (?:past )?${HOUR}$`).exec(core);
  if (half) return numberSaid(half[1]!) * 60 + 30;
  const quarter = new RegExp(`^(?:a )?quarter (past|after|to|of|till) ${HOUR}$`).exec(core);
  if (quarter) return numberSaid(quarter[2]!) * 60 + (/past|after/.test(quarter[1]!) ? 15 : -15);
  const figures = /^(\d{1,2})[:.h](\d\d)$/.exec(core) ?? /^(\d\d)(\d\d)(?: hours)?$/.exec(core);
  if (figures) return Number(figures[2]) < 60 ? Number(figures[1]) * 60 + Number(figures[2]) : undefined;
  const plain = new RegExp(`^${HOUR}(?: (o'?clock|fifteen|thirty|forty[- ]five|twenty|ten|oh five))?$`).exec(core);
  return plain ? numberSaid(plain[1]!) * 60 + (plain[2] ? MINUTES[plain[2]] ?? 0 : 0) : undefined;
}

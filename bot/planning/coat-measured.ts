import type { Entry } from '../../domain/model/entry.ts';
import { dayOf } from '../../domain/log/days.ts';
import { weatherUnits, sign } from '../../domain/answers/weather-units.ts';
import { contextOf } from '../turn/context.ts';
import { readSafely } from '../turn/read-safely.ts';
import type { Recorded, Turn, TurnOut } from '../turn/types.ts';

const DEGREES = String.raw`(?<n>-?\d{1,3}(?:\.\d+)?) ?(?:°|º|deg(?:ree)?s?\b)? ?(?<unit>c|f|celsius|centigrade|fahrenheit)?\b`;
const IS = String.raw`(?:'s|s)?(?: (?:is|are|at|reads?|measures?|of|now|about|surface|temp|temperature|just))*:? `;
const SURFACE = new RegExp(String.raw`\b(?:(?:the )?(?<part>[a-z]+(?: [a-z]+)?) )?(?:surface|steel|metal|panel|skin|sheet metal)(?: temp(?:erature)?)?${IS}${DEGREES}`, 'i');
const AIR = new RegExp(String.raw`\b(?:air(?: temp(?:erature)?)?|ambient|outside|inside|in here|the shop|shop)${IS}${DEGREES}`, 'i');
const HUMIDITY = /\b(?:humidity|r\.?h\.?|relative humidity)(?:'s|s)?(?: (?:is|at|of|reads?|now|about))*:? (\d{1,3}(?:\.\d+)?)(?: ?%| ?per ?cent)?|\b(\d{1,3}(?:\.\d+)?) ?(?:%|per ?cent) (?:relative )?(?:humidity|rh)\b/i;
const DEW = new RegExp(String.raw`\bdew ?point${IS}${DEGREES}`, 'i');
/** Words that are no part's name. */
const NO_PART = /^(?:the|a|my|its|and|with|now|so|ok|okay|measured|bare|steel|metal|surface|air|can|is)\b/i;

interface CoatWeather { part?: string; surface: number; air?: number; humidity?: number; dew?: number; unit?: '°C' | '°F' }

/** What was measured before a coat: the surface, and the dew point or the air that it comes of. Undefined: not both. Numbers in the note's unit, `unit` where it is said. */
export function readCoatWeather(text: string): CoatWeather | undefined {
  const said = text.replace(/[’‘]/g, "'");
  const surface = SURFACE.exec(said)?.groups;
  if (!surface || /\bdew ?point ?\?|\bwhat(?:'s| is) the dew/i.test(said)) return undefined;
  const air = AIR.exec(said)?.groups, humid = HUMIDITY.exec(said), dew = DEW.exec(said)?.groups;
  const humidity = humid ? Number(humid[1] ?? humid[2]) : undefined;
  if (!dew && (!air || humidity === undefined || humidity > 100)) return undefined;
  const unit = [surface, air, dew].map(g => g?.['unit']?.[0]?.toUpperCase()).find(u => u !== undefined);
  const part = surface['part'] && !NO_PART.test(surface['part']) ? surface['part'].toLowerCase() : undefined;
  return {
    ...(part ? { part } : {}), surface: Number(surface['n']), ...(air ? { air: Number(air['n']) } : {}), ...(humidity === undefined ? {} : { humidity }),
    ...(dew ? { dew: Number(dew['n']) } : {}), ...(unit ? { unit: unit === 'F' ? '°F' as const : '°C' as const } : {}),
  };
}

/** "Surface 12, air 15 and 70 percent humidity, can I spray": kept as readings, and what they mean for a coat is said. Undefined: not measured so. */
export function coatMeasured(turn: Turn, recorded: Recorded): TurnOut | undefined {
  const { incoming: { text, at }, deps, note } = turn;
  const measured = readCoatWeather(text);
  if (!measured) return undefined;
  const unit = measured.unit ?? sign(weatherUnits(deps.log.shop, deps.zone));
  const reading = (part: string, what: string, value: number | undefined, of: string = unit): Entry[] => (value === undefined ? [] : [{ kind: 'reading', part, what, value, unit: of }]);
  const entries = [
    ...reading(measured.part ?? 'surface', measured.part ? 'surface temperature' : 'temperature', measured.surface), ...reading('air', 'temperature', measured.air),
    ...reading('air', 'humidity', measured.humidity, '%'), ...reading('air', 'dew point', measured.dew),
  ];
  const today = dayOf(at);
  const ask = { kind: 'forecast' as const, for: measured.part ? `paint ${measured.part}` : 'paint', from: today, to: today };
  // What else the note says is read as ever; a question about the coat is answered by what was measured.
  const rest = text.split(/(?<=[.!?;,])\s+|\n+/).filter(s => ![SURFACE, AIR, HUMIDITY, DEW].some(re => re.test(s))).join(' ');
  const said = rest ? readSafely(rest, contextOf(turn), deps) : undefined;
  const asks = [...said?.asks.filter(a => a.kind !== 'forecast' && a.kind !== 'blocked') ?? [], ask];
  return recorded(turn, [...said?.entries ?? [], ...entries], note, { asks, unread: said?.unread });
}

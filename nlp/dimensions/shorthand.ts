import type { Token } from '../types.ts';
import { UNIT } from './measure/units.ts';
import { table } from '../words/table.ts';

/** Words as thumbs write them, and what they stand for. */
const SHORT: Record<string, string> = table({
  wat: 'what', wot: 'what', wats: 'whats', wots: 'whats', wut: 'what', wuts: 'whats', hw: 'how', hows: 'hows', wen: 'when', wens: 'whens', wer: 'where', wher: 'where', wheres: 'wheres',
  n: 'and', nd: 'and', an: 'an', b4: 'before', bfore: 'before', '2day': 'today', '2mrw': 'tomorrow', '2moro': 'tomorrow', '2morrow': 'tomorrow', tmw: 'tomorrow', '2nite': 'tonight', tonite: 'tonight',
  gona: 'going to', gunna: 'going to', wkend: 'weekend', wknd: 'weekend', pls: 'please', plz: 'please', wether: 'weather', weathr: 'weather', ordr: 'order', orderd: 'ordered', u: 'you', ur: 'your',
  finishd: 'finished', thru: 'through', til: 'till', cheepest: 'cheapest', chepest: 'cheapest', stoppin: 'stopping', holdin: 'holding', yday: 'yesterday', ystrdy: 'yesterday', hav: 'have', cn: 'can', shud: 'should', cud: 'could',
  torq: 'torque', tork: 'torque', tourque: 'torque', humidty: 'humidity', antifreze: 'antifreeze', gettin: 'getting', doin: 'doing', waitin: 'waiting', missin: 'missing', wantin: 'wanting', spose: 'suppose', reckn: 'reckon', abt: 'about',
  wht: 'what', whts: 'whats', whr: 'where', whrs: 'wheres', whn: 'when', whns: 'whens', cheapst: 'cheapest', chpst: 'cheapest', tackd: 'tacked',
  // As it is said in the north.
  hoo: 'how', hoos: 'hows', whan: 'when', whaur: 'where', whaurs: 'wheres', dae: 'do', hiv: 'have', hae: 'have', wis: 'was', tae: 'to', fae: 'from', frae: 'from', ootside: 'outside', onything: 'anything', feenished: 'finished', afore: 'before',
});
/** Words of this kind never belong to the name of a part. */
export const isShorthand = (low: string): boolean => low in SHORT && low !== 'an';

/** Words of number, unit and money are never misheard names. */
const MEASURED = new RegExp(`^(?:${UNIT}|dollars?|bucks?|quid|cents?|pounds?|core|ton|percent|shipping|freight|carriage|post)$`);

/** The tokens of "2mrw" are "2" and "mrw". */
const AFTER_TWO: Record<string, string> = table({ mrw: 'tomorrow', moro: 'tomorrow', morow: 'tomorrow', morrow: 'tomorrow', nite: 'tonight', night: 'tonight', day: 'today' });

const ARTICLE = /^(?:the|my|a|an|it|this|that|next|me|get|do|be|go|put|fit|paint|buy)$/;

/** "whit" asks before a verb or a person; elsewhere it is a thread. */
const WHIT_ASKS = /^(?:s|is|was|wis|did|dae|do|does|hae|hiv|have|has|can|will|would|am|are|else|way|i|we)$/;
/** A mark that is written out, as in a wire: by itself or in capitals between capitals. */
function spoken(tokens: readonly Token[], i: number): string | undefined {
  const { low, text } = tokens[i]!, next = tokens[i + 1];
  if (low === 'query' && (text === 'QUERY' || !next || /^[.?]$/.test(next.low))) return '?';
  return text === 'STOP' && i > 0 && /^[^a-z]*$/.test(tokens[i - 1]!.text) && (!next || /^[^a-z]*$/.test(next.text)) ? '.' : undefined;
}

/** What a token says when it is written short: "b4" is "before", "4 the pump" is "for the pump", "w/" is "with". */
export function longhand(tokens: readonly Token[], i: number): string {
  const low = tokens[i]!.low, next = tokens[i + 1]?.low ?? '', prev = tokens[i - 1]?.low ?? '';
  if (tokens[i]!.mended && (low !== 'with' || /^\d/.test(prev)) && MEASURED.test(tokens[i]!.text.toLowerCase())) return tokens[i]!.text.toLowerCase();
  if (low === '2' && tokens[i + 1]?.start === tokens[i]!.end && Object.hasOwn(AFTER_TWO, next)) return '';
  if (prev === '2' && tokens[i - 1]!.end === tokens[i]!.start && Object.hasOwn(AFTER_TWO, low)) return AFTER_TWO[low]!;
  if (low === '2' && (ARTICLE.test(next) || (/^(?:good|down|due|back|up)$/.test(prev) && next === '-'))) return 'to';
  if (low === '4' && ARTICLE.test(next) && !/^(?:a|an|get|do|be|go|put|fit|paint|buy)$/.test(next)) return 'for';
  if (low === 'n' && (/^m\b/.test(next) || /\d/.test(prev) && next === 'm')) return low;
  if (low === 'w' && (next === '/' || !/^\d/.test(prev)) && i > 0 || low === 'w' && next === '/') return 'with';
  if (low === '/' && prev === 'w') return '';
  if (low === 'whit' && (WHIT_ASKS.test(next) || /^['’]s$/.test(next))) return 'what';
  const mark = low === 'query' || low === 'stop' ? spoken(tokens, i) : undefined;
  if (mark) return mark;
  return Object.hasOwn(SHORT, low) ? SHORT[low]! : low;
}

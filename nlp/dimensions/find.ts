import type { ReadContext } from '../../domain/model/reading.ts';
import type { Found, Token } from '../types.ts';
import { lineOf } from './line.ts';

/** Everything measurable in the tokens: numbers, measures, threads, money, days, spans of time, percents. */
export function findDimensions(tokens: Token[], _ctx: ReadContext): Found[] {
  lineOf(tokens);
  return [];
}

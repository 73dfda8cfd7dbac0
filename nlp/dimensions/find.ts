import type { ReadContext } from '../../domain/model/reading.ts';
import type { Found, Token } from '../types.ts';
import { lineOf } from './line.ts';
import { measurePieces } from './measure/rules.ts';
import { moneyPieces } from './money/rules.ts';
import { numberPieces } from './number/rules.ts';
import { percentPieces } from './percent/rules.ts';
import { slateOf, toFound } from './rule.ts';
import { spanPieces } from './span/rules.ts';
import { threadPieces } from './thread/rules.ts';
import { whenPieces } from './when/rules.ts';

/** Everything measurable in the tokens: numbers, measures, threads, money, days, spans of time, percents. */
export function findDimensions(tokens: Token[], ctx: ReadContext): Found[] {
  const slate = slateOf(lineOf(tokens), ctx.at);
  const all = [...measurePieces(slate), ...threadPieces(slate), ...moneyPieces(slate), ...spanPieces(slate), ...percentPieces(slate), ...whenPieces(slate)];
  const larger = all.filter(a => !all.some(b => b !== a && b.sure === 'certain' && b.end - b.start > a.end - a.start && covers(b, a) && (a.sure === 'implied' || b.dim === 'thread')));
  const numbers = numberPieces(slate).filter(n => !larger.some(l => l.sure === 'certain' && covers(l, n)));
  return [...numbers, ...larger].map(p => toFound(slate.line, p)).sort((a, b) => a.from - b.from || b.to - a.to);
}

/** A number inside something larger that is certain is that thing's number and not one by itself. */
const covers = (l: { start: number; end: number }, n: { start: number; end: number }): boolean => l.start <= n.start && n.end <= l.end;

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
  const over = covering(all, slate.line.text.length), fine = (a: { dim: string; start: number; end: number }): boolean => a.dim === 'money' && /^\d*\.\d{3,}$/.test(slate.line.text.slice(a.start, a.end)); // three decimals are no money
  const larger = all.filter(a => { if (fine(a)) return false; const b = over[a.start]; return !b || b === a || !covers(b, a) || b.end - b.start <= a.end - a.start || !(a.sure === 'implied' || b.dim === 'thread'); });
  const kept = covering(larger, slate.line.text.length);
  const numbers = numberPieces(slate).filter(n => { const b = kept[n.start]; return !b || !covers(b, n); });
  return [...numbers, ...larger].map(p => toFound(slate.line, p)).sort((a, b) => a.from - b.from || b.to - a.to);
}

/** For each character the longest certain piece that it lies in. */
function covering<P extends { start: number; end: number; sure: string }>(pieces: readonly P[], length: number): (P | undefined)[] {
  const out = new Array<P | undefined>(length);
  for (const p of [...pieces].filter(x => x.sure === 'certain').sort((a, b) => (a.end - a.start) - (b.end - b.start))) out.fill(p, p.start, p.end);
  return out;
}

/** A number inside something larger that is certain is that thing's number and not one by itself. */
const covers = (l: { start: number; end: number }, n: { start: number; end: number }): boolean => l.start <= n.start && n.end <= l.end;

import { sheetBefore } from '../../../sheet.ts';
import { foundIn, openDesk } from '../desk.ts';
import type { Figure, Given, Scope } from './scope.ts';

/** "with a 16 on the countershaft": of the two pulleys of the sum before, that which was told of beside the same word, in this note or the one before. */
export function toldBeside(scope: Scope, f: Figure, prev: Given): 'd1' | 'd2' | undefined {
  if (prev.d1 === prev.d2) return undefined;
  const word = /^ ?(?:inch |mm |in )?(?:pulley |sheave |one |wheel )?on (?:the |my |that )?([a-z]+)/.exec(scope.after(f))?.[1];
  const before = sheetBefore(scope.desk.sheet.ctx);
  for (const [desk, end] of [[scope.desk, scope.start], ...(before ? [[openDesk(before), before.text.length] as const] : [])] as const) {
    const figures = foundIn(desk, 0, end).filter(x => x.dim === 'measure' || x.dim === 'number');
    const named = (['d1', 'd2'] as const).flatMap(name => figures.filter(x => x.value.value === prev[name]).map(x => ({ name, at: x.start })));
    if (!named.length) continue;
    if (!word) return nearer(f, prev) ?? named.sort((a, b) => b.at - a.at)[0]!.name; // without a word the one told of last
    const on = new RegExp(`^[^,;?]{1,24}? on (?:the |my |that )?${word}`);
    const straight = named.find(n => { const m = on.exec(desk.text.slice(n.at)); return m && !figures.some(x => x.start > n.at && x.start < n.at + m[0].length); });
    if (straight) return straight.name; // "four inch on the blower": before one that only stands near the word
    const places = [...desk.text.slice(0, end).matchAll(new RegExp(`\\b${word}`, 'g'))].map(m => m.index);
    const apart = (at: number): number => Math.min(...places.filter(p => !/[,.;?]|\band\b/.test(desk.text.slice(Math.min(p, at), Math.max(p, at)))).map(p => Math.abs(p - at)));
    const near = named.filter(n => apart(n.at) < Infinity).sort((a, b) => apart(a.at) - apart(b.at))[0];
    if (near) return near.name;
  }
  return undefined;
}

/** "if I drop to a five" after a six and a 36: a pulley is changed for one of about its size. Undefined where it is as near to either. */
export function nearer(f: { value: number; unit?: string }, prev: Given): 'd1' | 'd2' | undefined {
  const { d1, d2 } = prev;
  if (typeof d1 !== 'number' || typeof d2 !== 'number' || f.value <= 0) return undefined;
  const [a, b] = [d1, d2].map(d => Math.abs(Math.log(f.value / d))) as [number, number];
  return Math.max(a, b) > 1.5 * Math.min(a, b) ? (a < b ? 'd1' : 'd2') : undefined;
}

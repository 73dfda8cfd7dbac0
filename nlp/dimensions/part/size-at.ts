import type { Sheet } from '../../types.ts';
import { countValue } from './count.ts';
import { textOf } from './text-of.ts';

/** A count, then perhaps a size, before a noun: "three 3/8 bolts", "two dozen hose clamps", "a half inch tap". */
export function sizeAt(sheet: Sheet, i: number, to: number): { to: number; count?: number; spec?: string } | undefined {
  const { tokens, tags, found } = sheet;
  if (tags[i] !== 'num' && !/^(pair|dozen|set|couple)$/.test(tokens[i]?.low ?? '')) return undefined;
  const size = found.filter(f => f.from === i && f.to < to && (f.dim === 'thread' || f.dim === 'measure' || f.dim === 'number' && (f.value.form === 'fraction' || f.value.form === 'mixed'))).sort((a, b) => b.to - a.to)[0];
  const by = size ? sizeBy(sheet, size.to, to) : undefined;
  if (size && by !== undefined && ['noun', 'adj'].includes(tags[by]!)) return { to: by, spec: textOf(sheet, i, by) };
  if (size && tags[size.to] !== 'num' && ['noun', 'adj'].includes(tags[size.to]!)) return { to: size.to, spec: textOf(sheet, i, size.to) };
  if (found.some(f => f.from <= i && i < f.to && (f.dim === 'money' || f.dim === 'span' || f.dim === 'measure' || f.dim === 'when' || f.dim === 'percent') && f.sure === 'certain')) return undefined;
  const n = found.filter(f => f.from === i && f.dim === 'number' && f.to < to).sort((a, b) => b.to - a.to)[0];
  const end = n ? n.to : i + 1;
  const value = n && n.dim === 'number' ? n.value.value : countValue(tokens[i]!.low);
  if (value === undefined) return undefined;
  if (/^[\d/.]+$/.test(tokens[i]!.low) && tokens[i + 1]?.low === 'in' && tokens[i + 1]!.start === tokens[i]!.end && tags[i + 2] === 'noun') return { to: i + 2, spec: textOf(sheet, i, i + 2) }; // "3in screws"
  if (/^\d{4,}$/.test(tokens[i]!.low) && tags[end] === 'noun') return { to: end, spec: tokens[i]!.text }; // "6203 bearings" are known by their number
  const next = sizeAt(sheet, end, to);
  if (next?.spec) return { to: next.to, count: value, spec: next.spec };
  const after = tokens[end]?.low ?? '';
  if (/^(pair|pairs|dozen|set|sets)$/.test(after)) return { to: tokens[end + 1]?.low === 'of' ? end + 2 : end + 1, count: after.startsWith('pair') ? value * 2 : after === 'dozen' ? value * 12 : value };
  const tag = tags[end];
  if (tag !== 'noun' && tag !== 'adj' && tag !== 'pron') return undefined;
  const hyphened = sheet.text[tokens[end - 1]!.end] === '-';
  if (hyphened || !Number.isInteger(value) || tag === 'noun' && value > 1 && !pluralAhead(sheet, end, to)) return undefined;
  return { to: end, count: value };
}

/** "three eighths by two bolts": where the second dimension of a size ends, when a noun follows it. */
function sizeBy(sheet: Sheet, from: number, to: number): number | undefined {
  if (!/^(by|x)$/.test(sheet.tokens[from]?.low ?? '')) return undefined;
  const n = sheet.found.filter(f => f.from === from + 1 && f.to < to && (f.dim === 'number' || f.dim === 'measure')).sort((a, b) => b.to - a.to)[0];
  return n?.to;
}

/** Whether the noun run from here ends in a plural, so that a number before it counts. */
function pluralAhead(sheet: Sheet, from: number, to: number): boolean {
  let k = from;
  while (k + 1 < to && (sheet.tags[k + 1] === 'noun' || sheet.tags[k + 1] === 'pron' && sheet.tags[k] === 'adj' || sheet.tags[k] === 'adj' && sheet.tags[k + 1] === 'adj')) k++;
  const low = sheet.tokens[k]!.low;
  return /s$/.test(low) && !/ss$/.test(low) || /^(teeth|feet|men|people|knives|pair|dozen|each|apiece)$/.test(low);
}

import type { Clause } from '../../clauses/clause.ts';
import { textOf } from '../../dimensions/part/text-of.ts';
import { openSheet } from '../../sheet.ts';
import type { Found, Sheet } from '../../types.ts';
import type { Telling } from '../telling.ts';

/** The size of what is wanted with the new figure in the place of the old one: that which the note names ("quarter inch, not three eighths"), else the only one there or the one of its unit; else the new words alone. */
export function respec(t: Telling, c: Clause, was: string, f: { from: number; to: number }): string {
  const now = textOf(t.sheet, f.from, f.to);
  const n = t.clauses[t.at + 1];
  const both = n && n.items[0]?.t === 'neg' ? [...c.items, ...n.items] : c.items;
  if (n && both !== c.items) (n as Clause & { spoken?: boolean }).spoken = true;
  const not = both.findIndex(i => i.t === 'neg');
  const old = not >= 0 ? both.slice(not + 1).find(i => i.f) : undefined;
  const words = old ? textOf(t.sheet, old.from, old.to).toLowerCase() : undefined;
  if (words && was.toLowerCase().includes(words)) return was.toLowerCase().replace(words, now.toLowerCase());
  if (/^(by|x)$/.test(t.sheet.tokens[f.to]?.low ?? '')) return now;
  const spec = openSheet(was, { at: t.sheet.ctx.at }), sizes = sizesOf(spec), after = t.sheet.tokens[f.to]?.low;
  const next = (s: Found): string | undefined => spec.tokens[s.to]?.low;
  const fresh = t.sheet.found.find(x => x.from === f.from && x.to === f.to);
  const one = sizes.find(s => after !== undefined && next(s) === after) ?? (sizes.length === 1 ? sizes[0] : fresh && nearestOf(sizes, fresh));
  if (!one) return now;
  const unitToo = one.dim === 'measure' && fresh?.dim === 'number' && one.to - one.from > 1; // "fourteen gauge… twelve": the unit stays
  const [a, b] = [spec.tokens[one.from]!.start, spec.tokens[one.to - (unitToo ? 2 : 1)]!.end];
  return `${was.slice(0, a)}${now}${was.slice(b)}`;
}

/** The figure of a size nearest in proportion to the new one, for a slip is seldom far off. */
function nearestOf(sizes: readonly Found[], fresh: Found): Found | undefined {
  const at = inches(fresh), off = (s: Found): number => Math.abs(Math.log((inches(s) ?? 0) / (at ?? 0)));
  return at === undefined ? undefined : sizes.filter(s => (inches(s) ?? 0) > 0).sort((a, b) => off(a) - off(b))[0];
}
const INCHES: Readonly<Record<string, number>> = { ft: 12, mm: 1 / 25.4, m: 39.37 };
const inches = (f: Found): number | undefined => (f.dim === 'measure' ? f.value.value * (INCHES[f.value.unit] ?? 1) : f.dim === 'number' ? f.value.value : undefined);

/** The figures of a size, the widest where several were found in the same words. */
function sizesOf(sheet: Sheet): Found[] {
  const all = sheet.found.filter(f => /^(measure|number|thread|money)$/.test(f.dim)).sort((a, b) => (b.to - b.from) - (a.to - a.from));
  return all.filter((f, i) => !all.slice(0, i).some(o => o.from < f.to && f.from < o.to)).sort((a, b) => a.from - b.from);
}

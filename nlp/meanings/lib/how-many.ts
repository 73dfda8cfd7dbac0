import type { Clause } from '../../clauses/clause.ts';
import type { Sheet } from '../../types.ts';
import { singular } from '../../words/nouns.ts';
import { verbForms } from '../../words/verbs.ts';
import type { Telling } from '../telling.ts';

const headOf = (name: string): string => singular(name.split(' ').at(-1)!);

/** Verbs after which a bare number is how many were got, and what stands after such a number. */
const GOT = /^(order|take|get|buy|have|want)$/, OF_THEM = /^(of|off|from|at|there|,|\.)$/;

/**
 * How many of a thing clauses that follow each other deal in, up to token `to`: the count before its name ("two bearings"), "both", else a bare number
 * ("ten at 3.20 apiece", "fourteen of them", "I took four", "2 off"). Undefined where they don't say.
 */
export function countSaid(sheet: Sheet, clauses: readonly Clause[], item: string, to = clauses.at(-1)!.to): number | undefined {
  const head = headOf(item), low = (k: number): string => sheet.tokens[k]?.low ?? '';
  for (const c of clauses) {
    if (/\b(?:both|the pair)\b/.test(sheet.tokens.slice(c.from, c.to).map(t => t.low).join(' '))) return 2;
    const own = c.items.find(i => i.np?.count !== undefined && (i.np.stands || headOf(i.np.said) === head))?.np?.count;
    if (own !== undefined) return own;
  }
  return sheet.found.flatMap(f => {
    if (f.dim !== 'number' || f.from < clauses[0]!.from || f.to > to || !Number.isInteger(f.value.value) || f.value.value < 2 || f.value.value > 500) return [];
    const next = low(f.to), at = /^(at|@)$/.test(next) && sheet.found.some(m => m.from === f.to + 1 && (m.dim === 'money' || m.dim === 'number'));
    const got = verbForms(low(f.from - 1)).some(v => GOT.test(v.base)) && (OF_THEM.test(next) || f.to >= sheet.tokens.length), off = next === 'off' && /^([,.;]|)$/.test(low(f.to + 1)), them = next === 'of' && /^(them|em|'em|those|it)$/.test(low(f.to + 1)) || low(f.from - 2) === 'for' && low(f.from - 1) === 'the';
    return at || got || off || them || next === 'from' || f.from === clauses[0]!.from && next === 'of' ? [f.value.value] : [];
  })[0];
}

/** How many of a thing clauses deal in by their own words, or as many as were wanted or quoted before. */
export function howMany(t: Telling, clauses: readonly Clause[], item: string): number | undefined {
  const said = countSaid(t.sheet, clauses, item);
  if (said !== undefined) return said;
  const wanted = [...t.prior, ...t.told.map(x => x.entry)].findLast(e => (e.kind === 'want' || e.kind === 'quote') && e.qty !== undefined && headOf(e.item) === headOf(item));
  return wanted && 'qty' in wanted ? wanted.qty : undefined;
}

/** Whether the price that the notes before gave for a thing was for one of them: "145 apiece", "34.50 a bearing". */
export function pricedSingly(t: Telling, item: string, price: number): boolean {
  const head = singular(item.split(' ').at(-1)!), said = [...(t.sheet.ctx.prior ?? []), t.sheet.text].join(' ').toLowerCase();
  const at = said.lastIndexOf(String(price).replace(/\.0$/, ''));
  return new RegExp(String.raw`^\S*(?: \S+){0,3}? ?,? ?(?:each|apiece|a piece|ea|per piece|(?:an?|per) ${head.replace(/[^a-z ]/g, '.')})\b`).test(at >= 0 ? said.slice(at) : '')
    || at < 0 && new RegExp(String.raw`\b(?:each|apiece|a piece|(?:an?|per) ${head.replace(/[^a-z ]/g, '.')})\b(?! (?:long|of))`).test((t.sheet.ctx.prior ?? []).join(' ').toLowerCase());
}

import type { Clause } from '../../clauses/clause.ts';
import { singular } from '../../words/nouns.ts';
import { lowText, type Telling } from '../telling.ts';

/**
 * How many of a thing a stretch of clauses deals in, where its name carries no count: "ten at 3.20 apiece", "fourteen of them", "ordered both",
 * "for the two boot bearings", or as many as were wanted. Undefined where nothing says so.
 */
export function howMany(t: Telling, clauses: readonly Clause[], item: string): number | undefined {
  const head = singular(item.split(' ').at(-1)!);
  for (const c of clauses) {
    if (/\b(?:both|the pair)\b/.test(lowText(t, c))) return 2;
    for (const [k, i] of c.items.entries()) {
      if (i.np?.count !== undefined && (i.np.stands || singular(i.np.said.split(' ').at(-1)!) === head)) return i.np.count;
      const n = i.f?.dim === 'number' ? i.f.value.value : undefined, next = c.items[k + 1];
      if (n === undefined || !Number.isInteger(n) || n < 2 || n > 500) continue;
      if (next?.low === 'at' && /^(money|number)$/.test(c.items[k + 2]?.f?.dim ?? '') || next?.low === 'of' && c.items[k + 2]?.t === 'pron') return n;
    }
  }
  const wanted = [...t.prior, ...t.told.map(x => x.entry)].findLast(e => (e.kind === 'want' || e.kind === 'quote') && e.qty !== undefined && singular(e.item.split(' ').at(-1)!) === head);
  return wanted && 'qty' in wanted ? wanted.qty : undefined;
}

/** Whether the price that the notes before gave for a thing was for one of them: "145 apiece", "34.50 a bearing". */
export function pricedSingly(t: Telling, item: string, price: number): boolean {
  const head = singular(item.split(' ').at(-1)!), said = [...(t.sheet.ctx.prior ?? []), t.sheet.text].join(' ').toLowerCase();
  const at = said.lastIndexOf(String(price).replace(/\.0$/, ''));
  return new RegExp(String.raw`^\S*(?: \S+){0,3}? ?,? ?(?:each|apiece|a piece|ea|per piece|(?:an?|per) ${head.replace(/[^a-z ]/g, '.')})\b`).test(at >= 0 ? said.slice(at) : '')
    || at < 0 && new RegExp(String.raw`\b(?:each|apiece|a piece|(?:an?|per) ${head.replace(/[^a-z ]/g, '.')})\b(?! (?:long|of))`).test((t.sheet.ctx.prior ?? []).join(' ').toLowerCase());
}

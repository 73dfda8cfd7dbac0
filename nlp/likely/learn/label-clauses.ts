import { createWriteStream } from 'node:fs';
import { readByRules } from '../../read.ts';
import type { Found } from '../../types.ts';
import { verbForms } from '../../words/verbs.ts';
import { weigh } from '../net/weighed.ts';
import { stretchOf } from '../stretch-of.ts';
import type { Sort } from '../sort.ts';
import { labels } from './labels.ts';
import { annotated, phrases, questions } from './notes.ts';

/**
 * Writes every annotated note with its clauses and what each tells, one JSON object a line, for the net to learn from (`net/learn.py`):
 * `npm run learn:labels -- FILE`. Which clause an entry was said in goes by its words and by what the net, as it stands, says of the clause.
 */
const [to] = process.argv.slice(2);
if (!to) { console.error('Use: npm run learn:labels -- FILE'); process.exit(2); }
const out = createWriteStream(to);
for (const n of [...annotated(), ...phrases()]) {
  const { sheet, clauses, told } = readByRules(n.text, { at: n.at, parts: n.known?.parts, machines: n.known?.machines, prior: n.prior });
  const net = weigh(n.text, n.prior?.at(-1)), chances = clauses.map(c => new Map<Sort, number>([...net?.told(...stretchOf(sheet, c)) ?? []].map(([sort, z]) => [sort, 1 / (1 + Math.exp(-z))])));
  const of = labels(sheet.tokens, clauses, told, n.entries, (c, s) => chances[c]!.get(s) ?? 0);
  out.write(`${JSON.stringify({
    file: n.file, text: n.text, prior: n.prior, never: n.never, entries: n.entries, asks: n.asks, tokens: sheet.tokens.map(t => [t.low, t.start, t.end, verbForms(t.low).map(f => f.base)]),
    values: sheet.found.flatMap(f => valuesOf(f).map(v => [f.from, f.to, v, f.dim])),
    clauses: clauses.map((c, k) => ({ from: c.from, to: c.to, is: [...of[k]!.is], maybe: [...of[k]!.maybe], tells: of[k]!.tells })),
  })}\n`);
}
// Of a phrase that is there to ask, nothing is known but what it asks.
for (const n of await questions()) out.write(`${JSON.stringify({ file: n.file, text: n.text, prior: n.prior, entries: [], asks: n.asks, tokens: [], values: [], clauses: [] })}\n`);
out.end();

/** What a dimension's stretch may be said to be, in an entry. */
function valuesOf(f: Found): (number | string)[] {
  switch (f.dim) {
    case 'when': return [f.value.from, f.value.to].filter(v => v !== undefined);
    case 'span': return [f.value.amount, ...(f.value.unit === 'minutes' ? [f.value.amount / 60] : [])];
    case 'thread': return [];
    default: return [f.value.value];
  }
}

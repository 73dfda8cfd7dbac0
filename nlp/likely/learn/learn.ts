import { writeFileSync } from 'node:fs';
import { readByRules } from '../../read.ts';
import { signsOf } from '../signs.ts';
import { labels, type Label } from './labels.ts';
import { annotated, phrases } from './notes.ts';
import { namedExamples } from './named.ts';
import { sortOf, type Sort } from '../sort.ts';
import { logistic, tableOf } from './logistic.ts';

/**
 * Learns what each sign of a clause speaks for, from the annotated notes under fixtures/notes (those under kept/ are left alone), the contract's
 * development notes where they lie beside the project, and the phrases of the corpora, and writes weights.json and names.json. Which clause an entry was said in is not annotated, so it is learned in rounds: labelled by the words, learned, and
 * labelled again with what was learned of the notes' other parts. Deterministic; takes some minutes. Run it after the clauses, the signs or the notes change.
 * `npm run learn -- --hold a,b`: nothing is learned from the notes of these files, so that what was learned can be measured on them.
 */
const ROUNDS = 2, PARTS = 3, RARE = 2, SMALL = 0.15;
const hold = new Set(process.argv[2] === '--hold' ? process.argv[3]?.split(',').map(f => `${f}.jsonl`) : []);
const phrased = phrases();
// The contract's own notes and the phrases count twice: a phrase stands for a family of notes.
const notes = [...annotated().filter(n => !hold.has(n.file)).flatMap(n => (n.file === 'dev-notes.jsonl' ? [n, n] : [n])), ...phrased, ...phrased.map(n => ({ ...n, fresh: false }))];

const read = notes.map(n => ({ n, ...readByRules(n.text, { at: n.at, parts: n.known?.parts, machines: n.known?.machines, prior: n.prior }) }));
const counts = new Map<string, number>();
const signed = read.map(r => r.clauses.map((_, at) => [...signsOf(r.clauses, at)]));
for (const s of signed.flat(2)) counts.set(s, (counts.get(s) ?? 0) + 1);
const signs = [...counts].filter(([, n]) => n >= RARE).map(([s]) => s).sort();
const place = new Map(signs.map((s, i) => [s, i]));
const rows = signed.map(clauses => clauses.map(own => own.flatMap(s => place.get(s) ?? [])));
const sorts: Sort[] = [...new Set(notes.flatMap(n => n.entries.map(sortOf)))].filter(s => s !== 'remark').sort();

const table = tableOf(rows.flat(), signs.length), first: number[] = [];
for (let i = 0, at = 0; i < rows.length; at += rows[i++]!.length) first.push(at);

let labelled = label(() => 0), learned: Float64Array[] = [];
for (let round = 0; round < ROUNDS; round++) {
  const fair = read.map(r => r.clauses.map(() => new Map<Sort, number>()));
  for (let part = 0; part < PARTS; part++) {
    learned = learn(labelled, i => i % PARTS !== part, learned);
    read.forEach((_, i) => { if (i % PARTS === part) rows[i]!.forEach((row, c) => sorts.forEach((s, k) => fair[i]![c]!.set(s, chance(learned[k]!, row)))); });
  }
  labelled = label((i, c, s) => fair[i]![c]!.get(s) ?? 0);
  console.log(`round ${round + 1}: ${labelled.flat().reduce((n, l) => n + l.is.size, 0)} entries placed in ${labelled.flat().length} clauses`);
}
learned = learn(labelled, () => true, learned);
const out: Record<string, number[]> = {};
signs.forEach((s, j) => { const w = sorts.flatMap((_, k) => (Math.abs(learned[k]![j]!) >= SMALL ? [k, rounded(learned[k]![j]!)] : [])); if (w.length) out[s] = w; });
writeFileSync(new URL('../weights.json', import.meta.url), `${JSON.stringify({ sorts, bias: learned.map(w => rounded(w[signs.length]!)), signs: out }).replace(/\],"/g, '],\n"')}\n`);
console.log(`${notes.length} notes, ${signs.length} signs, ${Object.keys(out).length} kept`);

// Which of the names that an entry may have is its own: from notes that no rule was written to, where the rules' choice is as good as it is for strangers.
const examples = read.filter((_, i) => notes[i]!.fresh).flatMap(r => namedExamples(r.sheet, r.told, r.n.entries));
const often = new Map<string, number>();
for (const x of examples) for (const s of x.signs) often.set(s, (often.get(s) ?? 0) + 1);
const nameSigns = [...often].filter(([, n]) => n > RARE).map(([s]) => s).sort(), namePlace = new Map(nameSigns.map((s, i) => [s, i]));
const names = logistic(tableOf(examples.map(x => [...x.signs].flatMap(s => namePlace.get(s) ?? [])), nameSigns.length), Uint32Array.from(examples.keys()), Uint8Array.from(examples, x => Number(x.right)), undefined, 200);
writeFileSync(new URL('../names.json', import.meta.url), `${JSON.stringify(Object.fromEntries(nameSigns.flatMap((s, i) => (Math.abs(names[i]!) >= SMALL ? [[s, rounded(names[i]!)]] : [])))).replace(/,"/g, ',\n"')}\n`);
console.log(`${examples.length} names, ${nameSigns.length} signs`);

function label(p: (note: number, clause: number, sort: Sort) => number): Label[][] {
  return read.map((r, i) => labels(r.sheet.tokens, r.clauses, r.told, r.n.entries, (c, s) => p(i, c, s)));
}

/** Weights of each sort from the notes chosen; a phrase that must never be of one kind says nothing of the others. */
function learn(labelled: Label[][], chosen: (note: number) => boolean, start: readonly Float64Array[]): Float64Array[] {
  return sorts.map((sort, k) => {
    const use: number[] = [], hit = new Uint8Array(table.at.length - 1);
    read.forEach((r, i) => {
      if (!chosen(i) || r.n.never !== undefined && r.n.never !== sort.split(' ')[0]) return;
      rows[i]!.forEach((_, c) => { const l = labelled[i]![c]!, row = first[i]! + c; if (!l.maybe.has(sort)) { use.push(row); hit[row] = Number(l.is.has(sort)); } });
    });
    return logistic(table, Uint32Array.from(use), hit, start[k]);
  });
}

function chance(w: Float64Array, row: readonly number[]): number {
  let z = w[signs.length]!;
  for (const j of row) z += w[j]!;
  return 1 / (1 + Math.exp(-z));
}
function rounded(x: number): number { return Math.round(x * 100) / 100; }

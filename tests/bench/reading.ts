import nlp from 'compromise';
import { readdirSync, readFileSync } from 'node:fs';
import { readNote } from '../../nlp/read.ts';
import { quantile } from './log/measure.ts';

/**
 * How fast notes are read: `npm run bench:reading`. Every note of fixtures/notes with a shop of 5,000 known parts, then of 50,000, beside
 * compromise (a general tagger of English) over the same notes in the same run. Each note is timed by its best of three readings, so that
 * what else the machine does shows less.
 */
interface Noted { at: string; text: string; prior?: string[]; known?: { machines?: string[]; parts?: string[] } }

const folder = new URL('../../fixtures/notes/', import.meta.url);
const notes = readdirSync(folder).filter(f => f.endsWith('.jsonl'))
  .flatMap(f => readFileSync(new URL(f, folder), 'utf8').split('\n').filter(Boolean).map(l => JSON.parse(l) as Noted));

const SIDES = ['left', 'right', 'front', 'rear', 'upper', 'lower', 'inner', 'outer', 'spare', 'top'];
const OWNERS = ['engine', 'gearbox', 'axle', 'steering', 'brake', 'clutch', 'pump', 'governor', 'winch', 'binder', 'elevator', 'reel', 'drum', 'feeder', 'mower', 'drill', 'baler', 'press', 'saw', 'cooling', 'fuel', 'lift', 'hitch', 'seat', 'hood'];
const PARTS = ['bearing', 'seal', 'shaft', 'spring', 'bracket', 'cover', 'plate', 'pin', 'lever', 'rod', 'arm', 'housing', 'gasket', 'bush', 'gear', 'pulley', 'belt', 'chain', 'hose', 'pipe'];

/** A shop's part names, each made of a side, an owner, a part and, from the 5,001st on, a number. */
const madeUpNames = (count: number): string[] => Array.from({ length: count }, (_, i) => {
  const base = `${SIDES[i % 10]} ${OWNERS[Math.floor(i / 10) % 25]} ${PARTS[Math.floor(i / 250) % 20]}`;
  return i < 5_000 ? base : `${base} ${Math.floor(i / 5_000) + 1}`;
});

/** Best of three, one time a note in milliseconds, sorted. */
function times(act: (note: Noted) => unknown): number[] {
  const best = new Array<number>(notes.length).fill(Infinity);
  for (let round = 0; round < 3; round++) notes.forEach((note, i) => {
    const from = performance.now();
    act(note);
    best[i] = Math.min(best[i]!, performance.now() - from);
  });
  return best.sort((a, b) => a - b);
}

function line(name: string, sorted: readonly number[], base?: readonly number[]): void {
  const sum = (l: readonly number[]): number => l.reduce((a, b) => a + b, 0);
  const perSecond = 1000 * notes.length / sum(sorted);
  console.log(`${name.padEnd(34)}${perSecond.toFixed(0).padStart(6)} notes/s  p50 ${quantile(sorted, 0.5).toFixed(2)}  p99 ${quantile(sorted, 0.99).toFixed(2)} ms${base ? `  ${(sum(sorted) / sum(base)).toFixed(2)} times the baseline` : ''}`);
}

console.log(`${notes.length} notes`);
const general = times(note => nlp(note.text).json());
line('compromise, tags (baseline)', general);
for (const count of [0, 5_000, 50_000]) {
  // One array for all notes: the index of a shop's names is kept with their list, as it is in a running shop.
  const parts = madeUpNames(count);
  line(`read, ${count.toLocaleString('en')} known parts`, times(({ at, text, prior, known }) => readNote(text, { at, machines: known?.machines ?? [], parts, ...(prior ? { prior } : {}) })), general);
}

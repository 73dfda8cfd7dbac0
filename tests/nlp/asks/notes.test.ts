import { existsSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readAsks } from '../../../nlp/meanings/asks/read.ts';
import { openSheet } from '../../../nlp/sheet.ts';
import { f1 as score, type Fact, type Note, notesOf as lines } from '../notes.ts';

// The questions of annotated notes: of the contract's own development notes (beside the repository, when they are there) and of the notes
// annotated before the reader was run on them. A question counts when its kind and its naming field agree.

const NAMING = { blocked: 'part', where: 'part', wasHow: 'part', history: 'part', picture: 'part', cheapest: 'item', sum: 'of' };
const asked = (n: Note): Fact[] => readAsks(openSheet(n.text, { at: n.at, ...(n.known?.parts ? { parts: n.known.parts } : {}), ...(n.known?.machines ? { machines: n.known.machines } : {}), ...(n.prior ? { prior: n.prior } : {}) })).map(r => r.ask as Fact);
const f1 = (notes: readonly Note[]): { score: number; wrong: string[] } => score(notes, 'asks', NAMING, asked);

describe('questions of annotated notes', () => {
  const dev = new URL('../../../../shared/contract/dev-notes.jsonl', import.meta.url);
  it.skipIf(!existsSync(dev))('the development notes: F1 at least 0.98 (skipped where ../shared is not beside the repository)', () => {
    const { score, wrong } = f1(lines(dev));
    expect(score, wrong.join('\n')).toBeGreaterThanOrEqual(0.98);
  });

  it('questions and statements written before the reader was run on them, then used to mend it: F1 at least 0.95', () => {
    const { score, wrong } = f1(lines(new URL('questions.jsonl', import.meta.url)));
    expect(score, wrong.join('\n')).toBeGreaterThanOrEqual(0.95);
  });

  const own = new URL('../../../fixtures/notes/', import.meta.url);
  // Voices that the reader was hardly tuned on hold the lower figure that it has reached with strangers; to be raised, never lowered.
  const reached: Record<string, number> = { 'quizzer.jsonl': 0.97, 'visitors.jsonl': 0.9, 'beekeeper.jsonl': 0.93, 'counter.jsonl': 0.6, 'surveyor.jsonl': 0.91, 'gaugeman.jsonl': 0.43 };
  it.each(readdirSync(own).filter(f => f.endsWith('.jsonl')).map(f => [f, reached[f] ?? 0.95] as const))('fixtures/notes/%s: F1 at least %d', (f, least) => {
    const { score, wrong } = f1(lines(new URL(f, own)));
    expect(score, wrong.join('\n')).toBeGreaterThanOrEqual(least);
  });
});

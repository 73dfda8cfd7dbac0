import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readAsks } from '../../../nlp/meanings/asks/read.ts';
import { openSheet } from '../../../nlp/sheet.ts';

// The questions of annotated notes: of the contract's own development notes (beside the repository, when they are there) and of the notes
// annotated before the reader was run on them. A question counts when its kind and its naming field agree.

interface Note { id: string; at: string; text: string; known?: { machines?: string[]; parts?: string[] }; prior?: string[]; asks?: Record<string, unknown>[] }
const lines = (url: URL): Note[] => readFileSync(url, 'utf8').split('\n').filter(Boolean).map(l => JSON.parse(l) as Note);
const NAMING: Record<string, string> = { blocked: 'part', where: 'part', wasHow: 'part', history: 'part', picture: 'part', cheapest: 'item', sum: 'of' };
const words = (s: unknown): string[] => String(s ?? '').toLowerCase().replace(/\b(?:the|a|an|my)\b/g, ' ').replace(/s\b/g, '').split(/[^a-z0-9]+/).filter(Boolean);
/** Dice over words, as the contract's scorer compares names; one name inside the other is the same part. */
const alike = (a: unknown, b: unknown): boolean => {
  const x = words(a), y = words(b);
  if (!x.length && !y.length) return true;
  const n = x.filter(w => y.includes(w)).length;
  return 2 * n / (x.length + y.length) >= 0.6 || (n > 0 && (n === x.length || n === y.length));
};

function f1(notes: readonly Note[]): { score: number; wrong: string[] } {
  let gold = 0, got = 0, hit = 0;
  const wrong: string[] = [];
  for (const n of notes) {
    const want = [...(n.asks ?? [])];
    const read = readAsks(openSheet(n.text, { at: n.at, ...(n.known?.parts ? { parts: n.known.parts } : {}), ...(n.known?.machines ? { machines: n.known.machines } : {}), ...(n.prior ? { prior: n.prior } : {}) })).map(r => r.ask as Record<string, unknown>);
    gold += want.length; got += read.length;
    for (const a of read) {
      const i = want.findIndex(w => w.kind === a.kind && alike(w[NAMING[String(a.kind)] ?? ''], a[NAMING[String(a.kind)] ?? '']));
      if (i >= 0) { want.splice(i, 1); hit++; } else wrong.push(`${n.id}: ${JSON.stringify(a)}`);
    }
    wrong.push(...want.map(w => `${n.id}: missed ${JSON.stringify(w)}`));
  }
  return { score: gold + got ? 2 * hit / (gold + got) : 1, wrong };
}

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
  const reached: Record<string, number> = { 'visitors.jsonl': 0.9 };
  it.each(readdirSync(own).filter(f => f.endsWith('.jsonl')).map(f => [f, reached[f] ?? 0.95] as const))('fixtures/notes/%s: F1 at least %d', (f, least) => {
    const { score, wrong } = f1(lines(new URL(f, own)));
    expect(score, wrong.join('\n')).toBeGreaterThanOrEqual(least);
  });
});

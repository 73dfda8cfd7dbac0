import { readFileSync } from 'node:fs';

/** Annotated notes, and how near a reading comes to them: the counts that F1 is made of, by the contract's way of comparing names. */
export interface Note {
  id: string; at: string; text: string; known?: { machines?: string[]; parts?: string[] }; prior?: string[];
  entries?: Fact[]; asks?: Fact[];
}
export type Fact = Record<string, unknown> & { kind?: string; maybe?: boolean };

export const notesOf = (url: URL): Note[] => readFileSync(url, 'utf8').split('\n').filter(Boolean).map(l => JSON.parse(l) as Note);

const words = (s: unknown): string[] => String(s ?? '').toLowerCase().replace(/['’]s\b/g, '').replace(/\b(?:the|a|an|my|of|in|on|at|to|and)\b/g, ' ').replace(/s\b/g, '').split(/[^a-z0-9.]+/).filter(Boolean);

/** Dice over words, 0.6 at least, or one name inside the other: the same thing. */
function alike(a: unknown, b: unknown): boolean {
  const x = words(a), y = words(b);
  if (!x.length && !y.length) return true;
  const n = x.filter(w => y.includes(w)).length;
  return 2 * n / (x.length + y.length) >= 0.6 || (n > 0 && (n === x.length || n === y.length));
}

/** F1 of facts over notes, and each fact missed or made up. `naming` says which field of a kind names it; none is compared where it has none. */
export function f1(notes: readonly Note[], list: 'entries' | 'asks', naming: Readonly<Record<string, string>>, read: (n: Note) => readonly Fact[]): { score: number; wrong: string[] } {
  let gold = 0, got = 0, hit = 0;
  const wrong: string[] = [];
  for (const n of notes) {
    const want = [...(n[list] ?? [])];
    for (const fact of read(n)) {
      const i = want.findIndex(w => w.kind === fact.kind && alike(w[naming[String(w.kind)] ?? ''], fact[naming[String(w.kind)] ?? '']));
      const [was] = i >= 0 ? want.splice(i, 1) : [];
      if (was?.maybe) continue; // two annotators would differ: counts neither way
      got++;
      if (was) { gold++; hit++; } else wrong.push(`${n.id}: ${JSON.stringify(fact)}`);
    }
    const missed = want.filter(w => !w.maybe);
    gold += missed.length;
    wrong.push(...missed.map(w => `${n.id}: missed ${JSON.stringify(w)}`));
  }
  return { score: gold + got ? 2 * hit / (gold + got) : 1, wrong };
}

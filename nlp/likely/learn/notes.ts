import { existsSync, readdirSync, readFileSync } from 'node:fs';
import type { Ask } from '../../../domain/model/ask.ts';
import type { Entry } from '../../../domain/model/entry.ts';
import type { AskCorpus } from '../../meanings/corpus/phrase.ts';
import { CORPORA } from '../../meanings/corpus/told/all.ts';

/** A note to learn from. `never`: a phrase that must not be read as this kind, which says nothing of the others. */
export interface Note { text: string; at: string; known?: { machines?: string[]; parts?: string[] }; prior?: string[]; entries: (Entry & { maybe?: boolean })[]; asks?: (Ask & { maybe?: boolean })[]; never?: string; file: string }

const AT = '2026-03-19T10:00:00-04:00';

/** Every annotated note of the project but those under kept/, and the contract's development notes where they lie beside it. */
export function annotated(): Note[] {
  const folder = new URL('../../../fixtures/notes/', import.meta.url), dev = new URL('../../../../shared/contract/dev-notes.jsonl', import.meta.url);
  const files = [folder, new URL('learned/', folder)].flatMap(d => readdirSync(d).filter(f => f.endsWith('.jsonl')).sort().map(f => new URL(f, d)));
  return [...files, ...(existsSync(dev) ? [dev] : [])].flatMap(f => readFileSync(f, 'utf8').split('\n').filter(Boolean)
    .map(l => ({ ...JSON.parse(l) as Note, file: f.pathname.split('/').at(-1)! })));
}

/** The phrases of the corpora, with what they mean and what they must not be read as. */
export const phrases = (): Note[] => CORPORA.flatMap(c => [
  ...c.phrases.map((p): Note => ({ file: 'phrases', text: p.text, at: p.at ?? AT, known: { parts: [...p.parts ?? []], machines: [...p.machines ?? []] }, ...(p.prior ? { prior: [...p.prior] } : {}), entries: p.entries as unknown as Entry[] })),
  ...c.never.map((text): Note => ({ file: 'phrases', text, at: AT, entries: [], never: c.kind })),
]);

/** The phrases of the corpora of questions, with what they ask and what asks nothing; what they tell beside is not said. */
export async function questions(): Promise<Note[]> {
  const root = new URL('../../meanings/corpus/', import.meta.url), out: Note[] = [];
  for (const f of ['', 'sums/'].flatMap(dir => readdirSync(new URL(dir || '.', root)).filter(f => f.endsWith('.ts')).sort().map(f => `${dir}${f}`))) {
    for (const c of Object.values(await import(new URL(f, root).href) as Record<string, AskCorpus | undefined>)) {
      if (!Array.isArray(c?.phrases) || !c.phrases[0]?.asks) continue;
      for (const p of c.phrases) out.push({ file: 'questions', text: p.text, at: p.at ?? AT, ...(p.prior ? { prior: [...p.prior] } : {}), entries: [], asks: p.asks as unknown as Ask[] });
      for (const text of c.never) out.push({ file: 'questions', text, at: AT, entries: [], asks: [] });
    }
  }
  return out;
}

import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { SUMS } from '../../../domain/sums/catalogue.ts';
import { SUM_KINDS } from '../../../nlp/meanings/asks/sums/kinds.ts';
import type { AskCorpus } from '../../../nlp/meanings/corpus/phrase.ts';

// What is asked for in words is what the sums can work out: the reader may not import them, so the names are held together here.

const fieldsOf = new Map(SUMS.map(s => [s.of, new Set(Object.keys(s.fields))]));

describe('sums in words and the catalogue of sums', () => {
  it('every sum that can be asked for is in the catalogue', () => {
    expect(SUM_KINDS.map(k => k.of).filter(of => !fieldsOf.has(of))).toEqual([]);
  });
  it('every sum of the catalogue can be asked for', () => {
    const asked = new Set(SUM_KINDS.map(k => k.of));
    expect([...fieldsOf.keys()].filter(of => !asked.has(of))).toEqual([]);
  });
  it('every figure that a corpus gives is a field of its sum, or the unit of one', async () => {
    const root = new URL('../../../nlp/meanings/corpus/sums/', import.meta.url);
    const wrong: string[] = [];
    for (const f of readdirSync(root)) {
      for (const value of Object.values(await import(new URL(f, root).href) as Record<string, AskCorpus>)) {
        for (const p of value?.phrases ?? []) for (const a of p.asks) {
          if (a.kind !== 'sum') continue;
          const fields = fieldsOf.get(String(a.of));
          for (const name of Object.keys(a.given as object)) if (!fields?.has(name.replace(/Unit$/, ''))) wrong.push(`${f}: ${String(a.of)}.${name}`);
        }
      }
    }
    expect([...new Set(wrong)]).toEqual([]);
  });
});

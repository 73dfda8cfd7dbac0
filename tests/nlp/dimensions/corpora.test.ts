import { describe, expect, it } from 'vitest';
import type { DimCorpus } from '../../../nlp/dimensions/corpus.ts';
import { findDimensions } from '../../../nlp/dimensions/find.ts';
import { MEASURE_CORPUS } from '../../../nlp/dimensions/measure/corpus.ts';
import { MONEY_CORPUS } from '../../../nlp/dimensions/money/corpus.ts';
import { NUMBER_CORPUS } from '../../../nlp/dimensions/number/corpus.ts';
import { PERCENT_CORPUS } from '../../../nlp/dimensions/percent/corpus.ts';
import { SPAN_CORPUS } from '../../../nlp/dimensions/span/corpus.ts';
import { THREAD_CORPUS } from '../../../nlp/dimensions/thread/corpus.ts';
import { WHEN_CORPUS } from '../../../nlp/dimensions/when/corpus.ts';
import { tokenize } from '../../../nlp/text/tokens.ts';
import type { Dim } from '../../../nlp/types.ts';

// Every phrase of every corpus: read from its first word to its last, once, with the right value; and never where it must not be.

const AT = '2026-03-19T10:00:00-05:00';
const found = (text: string, dim: Dim, at = AT) => {
  const tokens = tokenize(text);
  return findDimensions(tokens, { at }).filter(f => f.dim === dim)
    .map(f => ({ text: text.slice(tokens[f.from]!.start, tokens[f.to - 1]!.end), value: f.value as unknown as Record<string, unknown> }));
};
const corpora: readonly DimCorpus<Dim>[] = [NUMBER_CORPUS, MEASURE_CORPUS, THREAD_CORPUS, MONEY_CORPUS, WHEN_CORPUS, SPAN_CORPUS, PERCENT_CORPUS] as unknown as DimCorpus<Dim>[];

for (const corpus of corpora) {
  describe(corpus.dim, () => {
    it.each(corpus.reads.map(p => [p.text, p] as const))('reads %s', (text, p) => {
      const got = found(text, corpus.dim, p.at);
      expect(got.map(g => g.text)).toEqual([p.part ?? text]);
      for (const [k, v] of Object.entries(p.value)) {
        if (typeof v === 'number') expect(got[0]!.value[k], k).toBeCloseTo(v, 8);
        else expect(got[0]!.value[k], k).toEqual(v);
      }
    });
    it.each(corpus.never)('finds none in "%s"', text => { expect(found(text, corpus.dim)).toEqual([]); });
  });
}

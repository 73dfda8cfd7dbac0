import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { findDimensions } from '../../../nlp/dimensions/find.ts';
import { tokenize } from '../../../nlp/text/tokens.ts';

// Number words and fractions spelled by another library (num2words 0.5.14, named in the files), read back by this one.

const rows = (name: string): [string, string][] => readFileSync(new URL(name, import.meta.url), 'utf8').split('\n').filter(l => l && !l.startsWith('#')).map(l => l.split('\t') as [string, string]);
/** The number that covers the whole phrase. */
const whole = (text: string): number | undefined => {
  const tokens = tokenize(text);
  const f = findDimensions(tokens, { at: '2026-03-19T10:00:00Z' }).find(x => x.dim === 'number' && x.from === 0 && x.to === tokens.length);
  return f?.dim === 'number' ? f.value.value : undefined;
};
const wrong = (list: [string, string][], value: (s: string) => number) =>
  list.map(([text, said]) => ({ text, want: value(said), got: whole(text) })).filter(r => r.got === undefined || Math.abs(r.got - r.want) > 1e-9);

describe('numbers spelled by num2words', () => {
  const numbers = rows('spelled-numbers.tsv'), fractions = rows('spelled-fractions.tsv');
  it(`reads ${numbers.length} whole and decimal numbers in words`, () => {
    expect(numbers.length).toBeGreaterThanOrEqual(2000);
    expect(wrong(numbers, Number)).toEqual([]);
  });
  it(`reads ${fractions.length} fractions and mixed numbers in words`, () => {
    expect(fractions.length).toBeGreaterThanOrEqual(2000);
    expect(wrong(fractions, s => { const [a, b] = s.split('/').map(Number); return a! / b!; })).toEqual([]);
  });
});

import { BertTokenizer } from '@xenova/transformers';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { net } from '../../../nlp/likely/net/net.ts';
import { piecesOf } from '../../../nlp/likely/net/pieces.ts';
import { Weighed } from '../../../nlp/likely/net/weighed.ts';
import { notesOf } from '../notes.ts';

const { vocabulary, heads } = net();
const spelled = (text: string): string[] => { const byId = [...vocabulary.keys()]; return piecesOf(text, vocabulary).map(p => byId[p.id]!); };

describe('word pieces', () => {
  it('are the longest that the vocabulary has, with where they stand', () => {
    expect(spelled('Greased the kingpin')).toEqual(['grease', '##d', 'the', 'king', '##pin']);
    const text = 'café: 5/8-11';
    expect(piecesOf(text, vocabulary).map(p => text.slice(p.start, p.end))).toEqual(['café', ':', '5', '/', '8', '-', '11']);
  });

  // Checked against the tokenizer of a general-purpose library (transformers.js, its BERT tokenizer) with the same vocabulary.
  it('are those of a general-purpose library, for every note of four voices', () => {
    const other = new BertTokenizer({
      version: '1.0', truncation: null, padding: null, added_tokens: [], post_processor: null, decoder: { type: 'WordPiece', prefix: '##', cleanup: false },
      normalizer: { type: 'BertNormalizer', clean_text: true, handle_chinese_chars: true, strip_accents: null, lowercase: true }, pre_tokenizer: { type: 'BertPreTokenizer' },
      model: { type: 'WordPiece', unk_token: '[UNK]', continuing_subword_prefix: '##', max_input_chars_per_word: 100, vocab: Object.fromEntries(vocabulary) },
    } as never, { unk_token: '[UNK]' } as never);
    const texts = ['typist', 'british', 'machinist', 'terse'].flatMap(f => notesOf(new URL(`../../../fixtures/notes/${f}.jsonl`, import.meta.url)).map(n => n.text));
    expect(texts.length).toBeGreaterThan(100);
    for (const text of texts) expect(piecesOf(text, vocabulary).map(p => p.id), text).toEqual(other.encode(text, { add_special_tokens: false }));
  });
});

describe('what the net says of a note', () => {
  const told = (text: string, from: string) => new Weighed(text, undefined).told(text.indexOf(from), text.indexOf(from) + from.length)!;
  const likeliest = (z: ReadonlyMap<string, number>): string => [...z].filter(([s]) => heads.sorts.includes(s)).reduce((a, b) => (b[1] > a[1] ? b : a))[0];

  it('is said of each stretch of it by itself', () => {
    const text = 'Took the mudguard off. The stay behind it is bent.';
    expect(likeliest(told(text, 'Took the mudguard off'))).toBe('fit off');
    expect(likeliest(told(text, 'The stay behind it is bent'))).toBe('finding');
  });

  it('points to what "it" is, in the note or the one before', () => {
    const words = (text: string, from: string, sort: string, prior?: string): string[] => {
      const { before, own } = new Weighed(text, prior).named(text.indexOf(from), text.indexOf(from) + from.length, sort);
      return [...new Set([...before.filter(p => p.p > 0.5).map(p => prior!.slice(p.start, p.end)), ...own.filter(p => p.p > 0.5).map(p => text.slice(p.start, p.end))])].map(w => w.toLowerCase());
    };
    expect(words('The water pump was full of mud. Cleaned it out with paraffin.', 'Cleaned it out with paraffin', 'work')).toEqual(['water', 'pump']);
    expect(words('Painted it grey.', 'Painted it grey', 'work', 'Took the radiator cowl off.')).toEqual(['radiator', 'cowl']);
  });

  it('tells a question from a statement', () => {
    const z = (text: string, kind: string): number => new Weighed(text, undefined).asked().find(a => a.kind === kind)!.z;
    expect(z('what do I still need to buy for the lift', 'buy')).toBeGreaterThan(0);
    expect(z('bought two hoses for the lift', 'buy')).toBeLessThan(0);
  });

  it('is a number for any words, and the same each time', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), fc.option(fc.string({ maxLength: 100 }), { nil: undefined }), (text, prior) => {
      const a = new Weighed(text, prior), b = new Weighed(text, prior), of = a.told(0, text.length);
      for (const z of of?.values() ?? []) expect(Number.isFinite(z)).toBe(true);
      expect(b.told(0, text.length)).toEqual(of);
      for (const p of a.named(0, text.length, 'work').own) expect(p.p >= 0 && p.p <= 1).toBe(true);
    }), { numRuns: 40 });
  });

  it('is said of the beginning of a note that has no end', () => {
    expect(new Weighed('washer '.repeat(5_000), undefined).told(0, 20)).toBeDefined();
  });
});

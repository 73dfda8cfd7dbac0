import { expect, test } from 'vitest';
import type { Entry } from '../../../domain/model/entry.ts';
import { readNote } from '../../../nlp/read.ts';

const found = (text: string) => readNote(text, { at: '2026-05-05T10:00:00-04:00' }).entries.filter((e): e is Extract<Entry, { kind: 'finding' }> => e.kind === 'finding').map(e => [e.part, e.condition, e.verdict]);

test('what is told of a part in one breath is one finding', () => {
  expect(found("Belt guard's cracked, and bent, but it'll do.")).toEqual([['belt guard', 'cracked, bent', 'reuse']]);
});

test('what is thought of it, in a sentence of its own, is its verdict', () => {
  expect(found("Left lever pin is scored. Junk.")).toEqual([['left lever pin', 'scored', 'replace']]);
});

test('how it was and how it is now are two', () => {
  expect(found('Water tank was leaking at the seam. Soldered it, filled it, it holds.').map(f => f[1])).toEqual(['leaking at the seam', 'holds']);
});

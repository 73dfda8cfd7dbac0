import { expect, test } from 'vitest';
import { readNote } from '../../../nlp/read.ts';

const fits = (text: string) => readNote(text, { at: '2026-05-05T10:00:00-04:00' }).entries.map(({ sure: _, span: __, ...e }) => e);

test('what a part was driven on with does not hold it', () => {
  expect(fits("Gear's driven home on the shaft with a brass drift.")).toEqual([{ kind: 'fit', part: 'gear', state: 'on' }]);
});

test('what holds it does, whatever stands beside', () => {
  expect(fits("Bonnet's held with one bolt.")).toEqual([{ kind: 'fit', part: 'bonnet', state: 'temporary', with: 'one bolt' }]);
});

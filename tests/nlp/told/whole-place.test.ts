import { expect, test } from 'vitest';
import { readNote } from '../../../nlp/read.ts';

const where = (text: string) => readNote(text, { at: '2026-05-05T10:00:00-04:00' }).entries.flatMap(e => (e.kind === 'stow' ? [e.where] : []));

test('a place is told with all that says where it is', () => {
  expect(where('Put the pins in the blue tin, under the seed shelf.')).toEqual(['in the blue tin, under the seed shelf']);
  expect(where('The valve springs are in the red crate with the lid, on the top shelf.')).toEqual(['in the red crate with the lid, on the top shelf']);
});

test('and ends where something else begins', () => {
  expect(where('Put the pins in the blue tin, the springs are lost.')).toEqual(['in the blue tin']);
});

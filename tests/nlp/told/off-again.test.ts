import { expect, test } from 'vitest';
import { readNote } from '../../../nlp/read.ts';

const fits = (text: string) => readNote(text, { at: '2026-05-05T10:00:00-04:00' }).entries.flatMap(e => (e.kind === 'fit' ? [`${e.state} ${e.part}`] : []));

test('what was tried in its place and is away again is off', () => {
  expect(fits('Tried the bonnet on for fit. It touches the stack. Off again.')).toEqual(['tried bonnet', 'off bonnet']);
  expect(fits('Offered up the seat pan to see if it clears, then took it back down.')).toEqual(['tried seat pan', 'off seat pan']);
});

test('what is only going to come off is not off yet', () => {
  expect(fits('Tried the bonnet on for fit. It comes off again tomorrow.')).toEqual(['tried bonnet']);
  expect(fits('Tried the bonnet on for fit. It has to come off again for paint.')).toEqual(['tried bonnet']);
});

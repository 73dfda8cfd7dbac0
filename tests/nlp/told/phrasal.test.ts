import { expect, test } from 'vitest';
import { readNote } from '../../../nlp/read.ts';

const deeds = (text: string) => readNote(text, { at: '2026-05-05T10:00:00-04:00' }).entries.flatMap(e => (e.kind === 'work' ? [e.action] : e.kind === 'job' || e.kind === 'recheck' || e.kind === 'out' ? [e.do] : []));

test('a verb keeps the particle that makes it another deed', () => {
  expect(deeds('Built the worn eye up with weld.')).toEqual(['build up']);
  expect(deeds('The pivot has to be built up.')).toEqual(['build up']);
  expect(deeds('Rubbed the bonnet down.')).toEqual(['rub down']);
  expect(deeds('Go over the drawbar pins again after five hours.')).toEqual(['go over']);
});

test('and drops one that only says how', () => {
  expect(deeds('Cleaned the jets out.')).toEqual(['clean']);
  expect(deeds('Welded the bracket up.')).toEqual(['weld']);
});

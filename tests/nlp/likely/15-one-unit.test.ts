import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../domain/model/entry.ts';
import { readNote } from '../../../nlp/read.ts';

const readings = (text: string) => readNote(text, { at: '2026-05-05T10:00:00-04:00' }).entries.filter((e): e is Extract<Entry, { kind: 'reading' }> => e.kind === 'reading').map(({ value, unit }) => [value, unit]);

describe('readings of one quantity in a row', () => {
  it('are in the unit that one of them has', () => expect(readings('Spindle: front bearing 3 thou clearance, rear 1.5.')).toEqual([[0.003, 'in'], [0.0015, 'in']]));
  it('are so where the last has it', () => expect(readings('number three cylinder um compression is eighty eight and number four is a hundred and fourteen pounds')).toEqual([[88, 'psi'], [114, 'psi']]));
  it('are not where another quantity has it', () => expect(readings('Crown wheel backlash 9 thou, and I counted 14 rollers in the pinion bearing.')).toEqual([[0.009, 'in'], [14, 'count']]));
});

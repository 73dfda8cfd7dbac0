import { describe, expect, it } from 'vitest';
import { namedBy } from '../../../domain/model/named-by.ts';
import { readNote } from '../../../nlp/read.ts';

const names = (text: string, prior?: string) => readNote(text, { at: '2026-05-05T10:00:00-04:00', ...(prior ? { prior: [prior] } : {}) }).entries.map(e => namedBy(e));

describe('what an entry is about', () => {
  it('is the pump, though "oil" alone is a stuff', () => expect(new Set(names('The oil pump I have stripped, cleaned in paraffin and rebuilt with new gears.'))).toEqual(new Set(['oil pump'])));
  it('is not what it was full of', () => expect(names('Gearbox was full of creek water. Drained it, then degreased the gearbox case.').slice(-2)).toEqual(['gearbox', 'gearbox case']));
  it('is what the note before said in full', () => expect(names('Polished the journal with crocus paper.', 'Number two big end journal is scored, though not deeply.')).toEqual(['number two big end journal']));
  it('is the other of two where only the side is said again', () => expect(names('front hub bearing 3 thou clearance, rear 1.5')).toEqual(['front hub bearing', 'rear hub bearing']));
});

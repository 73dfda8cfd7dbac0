import { describe, expect, it } from 'vitest';
import { readNote } from '../../../nlp/read.ts';

const told = (text: string, prior: string) => readNote(text, { at: '2026-03-03T10:00:00-05:00', prior: [prior] }).entries.map(({ sure: _, span: __, ...e }) => e);
const AWAY = 'Took the drum shaft in to the welder, he builds it up and turns it.';

describe('a day set anew for what is awaited', () => {
  it('corrects the day of it, though no word says so', () => expect(told('welder called he says not till the nineteenth his wife had the baby', AWAY)).toEqual([{ kind: 'amend', field: 'until', value: '2026-03-19' }]));
  it('is told whatever else the note is about', () => expect(told('no drag link end til the 6th, courier lost it & found it again', 'Ordered the drag link end from the steering place.')).toEqual([{ kind: 'amend', field: 'expected', value: '2026-03-06' }]));
  it('is none where nothing is awaited', () => expect(told('he says not till the nineteenth his wife had the baby', 'Greased the hubs.').filter(e => e.kind === 'amend')).toEqual([]));
});

describe('help told over several clauses', () => {
  it('is read from the note on the whole', () => expect(readNote('Two men from the basket works are coming on Saturday. They will help me walk the engine to its bed.', { at: '2026-03-03T10:00:00-05:00' }).entries.map(({ sure: _, span: __, ...e }) => e)).toEqual([{ kind: 'hands', when: '2026-03-07', for: 'walk the engine to its bed' }]));
});

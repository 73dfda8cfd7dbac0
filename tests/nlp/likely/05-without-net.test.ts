import { expect, it, vi } from 'vitest';
import { readNote } from '../../../nlp/read.ts';

// A machine that the runtime isn't made for: the net can't be loaded.
vi.mock('../../../nlp/likely/net/net.ts', () => ({ hasNet: () => false, net: () => { throw new Error('there is none'); } }));

it('without the net a note is read by rules', () => {
  const { entries, asks } = readNote('Took the radiator off. What do I need to buy?', { at: '2026-03-19T10:00:00-04:00' });
  expect(entries.map(e => [e.kind, 'part' in e && e.part])).toEqual([['fit', 'radiator']]);
  expect(asks.map(a => a.kind)).toEqual(['buy']);
});

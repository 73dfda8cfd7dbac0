import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../domain/model/entry.ts';
import { qualified } from '../../../nlp/likely/attributes.ts';
import type { Weighed } from '../../../nlp/likely/net/weighed.ts';
import type { Told } from '../../../nlp/meanings/telling.ts';
import { openSheet } from '../../../nlp/sheet.ts';

/** What becomes of an entry that the rules read from a one-clause note, where the net says this of it (log odds). */
function told(text: string, entry: object, says: Record<string, number>): Entry {
  const sheet = openSheet(text, { at: '2026-03-19T10:00:00-04:00' }), z = new Map(Object.entries(says));
  const x = { entry, clause: { from: 0, to: sheet.tokens.length }, rule: 'rule' } as unknown as Told;
  return qualified(sheet, x, { told: () => z, alone: () => new Map() } as unknown as Weighed, []).entry;
}

describe('what the net says of an entry against the rules', () => {
  const bent = { kind: 'finding', part: 'rod', condition: 'bent', verdict: 'replace' };
  it('takes a verdict off where it denies it, and leaves one that it does not', () => {
    expect(told('rod is bent', bent, { replace: -3 })).toEqual({ kind: 'finding', part: 'rod', condition: 'bent' });
    expect(told('rod is bent', bent, { replace: 1 })).toEqual(bent);
  });
  it('puts the state of a fit right only where another is plainly likelier', () => {
    const off = { kind: 'fit', part: 'cap nuts', state: 'off' };
    expect(told('cap nuts pulled to 45', off, { 'fit off': -4, 'fit tight': 2 })).toEqual({ ...off, state: 'tight' });
    expect(told('cap nuts pulled to 45', off, { 'fit off': 1, 'fit tight': 2 })).toEqual(off);
  });
});

import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../domain/model/entry.ts';
import { readNote } from '../../../nlp/read.ts';
import { Odds } from '../../../nlp/likely/odds.ts';
import { likelierDeal } from '../../../nlp/meanings/likely/deal.ts';
import type { Telling } from '../../../nlp/meanings/telling.ts';
import { afterSpan } from '../../../nlp/meanings/recheck/after-span.ts';

/** What becomes of a deal that a rule read, where the net takes it for another kind. */
function taken(entry: Entry, likelier: string): Entry {
  const clause = {}, told = [{ entry, clause, rule: entry.kind }];
  likelierDeal({ clause, told, clauses: [clause], at: 0 } as unknown as Telling, new Odds({ z: new Map([[likelier, 3], [entry.kind, -3]]), loudest: () => '' }));
  return told[0]!.entry;
}

describe('a deal that the net takes for another', () => {
  it('keeps what such a deal has', () => {
    expect(taken({ kind: 'order', item: 'belt', price: 40, shipping: 6, expected: '2026-04-01' } as Entry, 'bought')).toEqual({ kind: 'bought', item: 'belt', price: 40 });
    expect(taken({ kind: 'order', item: 'belt', price: 40, shipping: 6, expected: '2026-04-01' } as Entry, 'quote')).toEqual({ kind: 'quote', item: 'belt', price: 40, shipping: 6 });
  });
  it('is no price heard where none was said', () => expect(taken({ kind: 'order', item: 'belt', source: 'belt man' } as Entry, 'quote').kind).toBe('order'));
});

describe('the time after which a thing is looked at again', () => {
  it('is in hours, days, weeks, months or miles; years are so many months', () => {
    expect(afterSpan({ amount: 10, unit: 'hours' })).toEqual({ after: 10, unit: 'hours' });
    expect(afterSpan({ amount: 2, unit: 'years' })).toEqual({ after: 24, unit: 'months' });
  });
  it('is never minutes', () => expect(afterSpan({ amount: 20, unit: 'minutes' })).toBeUndefined());
});

describe('what was paid for several at so much each', () => {
  it('is the sum of all', () => expect(readNote('Tyre man brought out four rear tyres, 260 apiece, and I paid him there and then.', { at: '2026-03-03T10:00:00-05:00' }).entries).toMatchObject([{ kind: 'bought', price: 1040 }]));
});

describe('an order of what a seller quoted before', () => {
  const QUOTES = 'Implement dealer is 64 for the rear bearing. The bearing outfit across from the plant is 41.50 and 8 for the truck.';
  const order = (text: string) => readNote(text, { at: '2026-03-03T10:00:00-05:00', prior: [QUOTES] }).entries.map(({ sure: _, span: __, ...e }) => e);
  it('carries the price that he quoted, and its carriage', () => expect(order('Bearing outfit it is, called it in before my shift. Tuesday, the girl said.')).toMatchObject([{ kind: 'order', item: 'rear bearing', price: 41.5, shipping: 8 }]));
});

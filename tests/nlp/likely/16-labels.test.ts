import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../domain/model/entry.ts';
import { labels } from '../../../nlp/likely/learn/labels.ts';
import { readByRules } from '../../../nlp/read.ts';

/** The words of the clause that each entry is laid to. */
function laid(text: string, entries: Entry[]): (string | undefined)[] {
  const { sheet, clauses, told } = readByRules(text, { at: '2026-05-05T10:00:00-04:00' }), of = labels(sheet.tokens, clauses, told, entries, () => 0);
  return entries.map((_, k) => { const c = clauses[of.findIndex(l => l.tells.includes(k))]; return c && text.slice(sheet.tokens[c.from]!.start, sheet.tokens[c.to - 1]!.end); });
}

describe('the clause that an annotated entry was said in', () => {
  it('is the one with its deed, though its part is named in another', () => expect(laid('Sanded the rust off the fender, then primed it.', [{ kind: 'work', part: 'fender', action: 'sand' }, { kind: 'work', part: 'fender', action: 'prime' }])).toEqual(['Sanded the rust off the fender,', 'then primed it.']));
  it('is the one whose deed is done again there', () => expect(laid('Drilled the drain, retapped it.', [{ kind: 'work', part: 'drain', action: 'drill' }, { kind: 'work', part: 'drain', action: 'tap' }])).toEqual(['Drilled the drain,', 'retapped it.']));
  it('is none where nothing of it is said', () => expect(laid('Tea first.', [{ kind: 'work', part: 'fender', action: 'sand' }])).toEqual([undefined]));
});

import { describe, expect, it } from 'vitest';
import { readByRules } from '../../../nlp/read.ts';
import { nameRun } from '../../../nlp/likely/name-run.ts';
import { spotOf, type Stretch } from '../../../nlp/likely/spot.ts';
import type { Told } from '../../../nlp/meanings/telling.ts';
import type { Sheet } from '../../../nlp/types.ts';

const AT = '2026-03-19T10:00:00-04:00';
const said = (text: string, kind: string, where: (sheet: Sheet, x: Told) => Stretch | undefined): (string | undefined)[] => {
  const { sheet, told } = readByRules(text, { at: AT });
  return told.filter(x => x.entry.kind === kind).map(x => { const s = where(sheet, x); return s && sheet.tokens.slice(s.from, s.to).map(t => t.low).join(' '); });
};

describe('the word or figure that an entry was told with', () => {
  it.each([
    ['All 4 rings are gapped at 4 thou.', 'reading', '4 thou'], ['Forty minutes on the carburettor.', 'hours', 'forty minutes'], ['Wire-brushed the drawbar.', 'work', 'wire-brushed'],
    ['The impeller is wafer-thin.', 'finding', 'wafer-thin'],
  ])('of %s', (text, kind, words) => expect(said(text, kind, spotOf)).toEqual([words]));
});

describe('the words that name what an entry is about', () => {
  it('stand in its own clause', () => expect(said('The radiator is off and the fan shroud is off too.', 'fit', nameRun)).toEqual(['radiator', 'fan shroud']));
  it('are none where the clause only says "it"', () => expect(said('Found the dynamo. Took it off.', 'fit', nameRun)).toEqual([undefined]));
});

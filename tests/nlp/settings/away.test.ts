import { describe, expect, test } from 'vitest';
import { AWAY_PHRASES, NOT_AWAY } from '../../../nlp/settings/corpus/away.ts';
import { readAway } from '../../../nlp/settings/away.ts';

const AT = '2026-06-01T18:00:00+02:00';
describe('days away', () => {
  test.each(AWAY_PHRASES)('%s', (said, from, to) => expect(readAway(said, AT)).toEqual({ from, to }));
  test.each(NOT_AWAY)('not: %s', said => expect(readAway(said, AT)).toBeUndefined());
});

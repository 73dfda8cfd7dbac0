import { describe, expect, it } from 'vitest';
import { openSheet } from '../../../nlp/sheet.ts';

const AT = '2026-03-19T10:00:00-04:00';
const said = (text: string): string => openSheet(text, { at: AT }).tokens.map(t => t.low).join(' ');
const traced = (text: string): string[] => openSheet(text, { at: AT }).trace.map(t => t.rule);

describe('tidying', () => {
  it.each([
    ['fillers', 'um the hub uh is off', 'the hub is off', 'filler'],
    ['a word said twice', 'masked the the plate', 'masked the plate', 'stutter'],
    ['a recogniser loop', 'hub is off hub is off hub is off hub is off', 'hub is off', 'recogniser loop'],
    ['a goodbye over silence', 'Hub is off. Thanks for watching.', 'hub is off .', 'recogniser goodbye'],
    ['a set phrase', 'Hub is off, fingers crossed.', 'hub is off , .', 'set phrase'],
  ])('drops %s, and says so', (_, text, want, rule) => { expect(said(text)).toBe(want); expect(traced(text)).toContain(rule); });

  it('keeps millimetres, and words that may stand twice', () => {
    expect(said('bore is 65 mm')).toBe('bore is 65 mm');
    expect(said('I had had it off')).toBe('i had had it off');
  });

  it.each([
    ['four no five bolts', 'five bolts'], ['the play is twelve, no, I read it wrong, twenty-one thou', 'the play is twenty one thou'], ['the left no the right one is bent', 'the right one is bent'],
  ])('keeps the last of what was put right in one breath: %s', (text, want) => { expect(said(text)).toBe(want); });
  it('takes back nothing where nothing is put right', () => { expect(said('no shims, two bolts')).toBe('no shims , two bolts'); });
});

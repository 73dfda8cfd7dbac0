import { describe, expect, it } from 'vitest';
import { phraseAt } from '../../../nlp/dimensions/part/phrase.ts';
import { knownNames } from '../../../nlp/dimensions/part/known.ts';
import { openSheet } from '../../../nlp/sheet.ts';

const AT = '2026-03-19T10:00:00-04:00';
const phrase = (text: string, parts: string[] = []) => { const s = openSheet(text, { at: AT, parts }); return s.tokens.map((_, i) => phraseAt(s, i)).find(p => p !== undefined); };

describe('a part by its phrase', () => {
  it.each([
    ['the carb', 'carb'], ['both final drive covers', 'final drive covers'], ['four new wear plates', 'wear plates'], ['my old magneto', 'magneto'], ['the cracked head', 'head'], ['the left front wheel', 'left front wheel'],
    ['a three-point linkage', 'three-point linkage'], ['the forty tooth change wheel', 'forty tooth change wheel'], ['the hit-and-miss engine', 'hit-and-miss engine'], ['the gribble bracket', 'gribble bracket'],
  ])('%s', (text, name) => { expect(phrase(text)?.name).toBe(name); });

  it('counts, and keeps sizes apart', () => {
    expect(phrase('six discs')).toMatchObject({ name: 'discs', count: 6 });
    expect(phrase('two 3/8 bolts')).toMatchObject({ name: 'bolts', count: 2, spec: '3/8' });
  });
  it('is the one known name with that head', () => { expect(phrase('the rings', ['piston rings', 'piston'])).toMatchObject({ name: 'piston rings', known: true }); });
  it.each([['the radiator', 'rad'], ['the rad', 'radiator'], ['the carburetor', 'carb']])('%s is %s where the shop calls it so', (said, name) => { expect(phrase(said, [name])).toMatchObject({ name, known: true }); });
  it('is a choice where several fit', () => { expect(phrase('the kingpin', ['left kingpin', 'right kingpin'])?.choices).toEqual(['left kingpin', 'right kingpin']); });
  it('is not a name that only begins so', () => { expect(phrase('the generator', ['generator bracket'])).toMatchObject({ name: 'generator' }); });
});

describe('the index of known names', () => {
  it('finds by every word, by key, and is kept for the same list', () => {
    const names = ['Left Kingpin', 'right kingpin', 'gear box'];
    const index = knownNames(names);
    expect(index.exact('gearbox')).toBe('gear box');
    expect(index.holding(['kingpin'])).toEqual(['Left Kingpin', 'right kingpin']);
    expect(knownNames(names)).toBe(index);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sentences } from '../../../nlp/text/sentences.ts';
import { tokenize } from '../../../nlp/text/tokens.ts';

const lows = (s: string): string => tokenize(s).map(t => t.low).join(' ');

describe('tokens', () => {
  it.each([
    ["plunger's out", "plunger 's out"], ['dont know', "don't know"], ['gotta braze', 'got to braze'], ['1-1/2 inch', '1-1/2 inch'], ['5/8-11', '5/8-11'], ['M12x1.75', 'm12x1.75'],
    ['40psi', '40 psi'], ['$62.50', '$ 62.50'], ['hit-and-miss', 'hit-and-miss'], ['thirty-two', 'thirty two'], ['half-inch', 'half inch'], ['5-foot', '5 foot'], ['the 26th', 'the 26th'], ['1,400 lb', '1,400 lb'], ['.004', '.004'], ['2½"', '2½ "'], ['20°F', '20 °f'], ["clean 'em", 'clean them'], ['it’s', "it 's"],
  ])('%s', (text, want) => { expect(lows(text)).toBe(want); });

  it('stand where they say they stand, in order, with only white space and inner hyphens between', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 120 }), text => {
      let at = 0;
      for (const t of tokenize(text)) {
        expect(t.start).toBeGreaterThanOrEqual(at);
        expect(text.slice(t.start, t.end)).toBe(t.text);
        expect(text.slice(at, t.start)).toMatch(/^[\s-]*$/u);
        at = t.end;
      }
      expect(text.slice(at)).toMatch(/^[\s-]*$/u);
    }));
  });
});

describe('sentences', () => {
  const cut = (s: string): string[] => { const t = tokenize(s); return sentences(t, s).map(x => s.slice(t[x.from]!.start, t[x.to - 1]!.end)); };
  it('close at their marks and at line breaks', () => { expect(cut('Carb off. Cleaned it?\nJets in the tin')).toEqual(['Carb off.', 'Cleaned it?', 'Jets in the tin']); });
  it('do not close inside a figure', () => { expect(cut("They're M16, class 8.8. What now?")).toEqual(["They're M16, class 8.8.", 'What now?']); });
  it('go on after trailing off', () => { expect(cut('Call it an hour... no, two hours.')).toEqual(['Call it an hour... no, two hours.']); });
});

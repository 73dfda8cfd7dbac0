import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { readAsk, readAsks } from '../../../nlp/meanings/asks/read.ts';
import { openSheet } from '../../../nlp/sheet.ts';

// Which words of the note a question takes up, and which only feed a sum, so that no entry is made of either.

const AT = '2026-03-19T10:00:00-05:00';
const stretches = (text: string) => {
  const sheet = openSheet(text, { at: AT });
  const said = (a: number, b: number): string => sheet.text.slice(sheet.tokens[a]!.start, sheet.tokens[b - 1]!.end);
  return readAsks(sheet).map(r => ({ asks: said(r.from, r.to), used: r.used.map(([a, b]) => said(a, b)) }));
};

describe('the stretch of a question', () => {
  it('begins where the question does, in a run-on sentence too', () => {
    expect(stretches('sanded the hood inside and out can i paint it yet')).toEqual([{ asks: 'can i paint it yet', used: [] }]);
  });
  it('ends where a new statement begins', () => {
    expect(stretches('Where are the sail arm bolts? Greased the pivot.')[0]!.asks).toBe('Where are the sail arm bolts?');
  });
  it('is one a question', () => {
    expect(stretches('what rechecks are due and where did i put the keys').map(s => s.asks)).toEqual(['what rechecks are due', 'and where did i put the keys']);
  });
  it('names the sentences whose figures only feed a sum', () => {
    expect(stretches("Engine's got a 9 inch pulley, the saw's got a 14, and the engine does 600. What does the blade turn?"))
      .toEqual([{ asks: 'What does the blade turn?', used: ["Engine's got a 9 inch pulley, the saw's got a 14, and the engine does 600."] }]);
  });
  it('leaves a statement before the figures alone', () => {
    const [s] = stretches('Oiled the treadle pins. Flywheel groove is 18 inches, spindle pulley is 4 inches and the belt is 75 inches long. What centres does that want?');
    expect(s!.used.join(' ')).not.toContain('Oiled');
    expect(s!.used.join(' ')).toContain('18 inches');
  });
  it('is handed out by the stretch that a question begins in', () => {
    const sheet = openSheet('Greased the hub. Where are the shims?', { at: AT });
    expect(readAsk(sheet, 0, 4)).toBeUndefined();
    expect(readAsk(sheet, 4, sheet.tokens.length)).toHaveLength(1);
  });
});

describe('any note', () => {
  it('gives questions whose stretches lie within it, and the same ones twice', () => {
    const word = fc.constantFrom('what', 'where', 'how', 'many', 'did', 'i', 'put', 'the', 'hub', 'shims', '5/8', 'coarse', 'grade', '5', 'and', 'at', 'three', 'mils', '?', '.', ',', 'torque', 'is', 'it', 'due', 'whats', 'on', 'order', '12', 'thou', 'in', 'mm', 'yesterday', 'for', 'belt', 'inch', 'rain', 'can');
    fc.assert(fc.property(fc.array(word, { maxLength: 25 }), ws => {
      const text = ws.join(' '), sheet = openSheet(text, { at: AT }), n = sheet.tokens.length;
      const read = readAsks(sheet);
      for (const r of read) {
        expect(r.from).toBeGreaterThanOrEqual(0); expect(r.to).toBeGreaterThan(r.from); expect(r.to).toBeLessThanOrEqual(n);
        for (const [a, b] of r.used) { expect(a).toBeGreaterThanOrEqual(0); expect(b).toBeLessThanOrEqual(n); expect(b).toBeGreaterThan(a); }
      }
      expect(readAsks(openSheet(text, { at: AT })).map(r => r.ask)).toEqual(read.map(r => r.ask));
    }), { numRuns: 300 });
  });
  it('may be any string at all', () => {
    fc.assert(fc.property(fc.string({ maxLength: 200 }), text => { readAsks(openSheet(text, { at: AT })); }), { numRuns: 300 });
  });
});

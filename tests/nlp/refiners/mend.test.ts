import { describe, expect, it } from 'vitest';
import { openSheet } from '../../../nlp/sheet.ts';

const AT = '2026-03-19T10:00:00-04:00';
const said = (text: string, parts: string[] = [], machines: string[] = []): string => openSheet(text, { at: AT, parts, machines }).tokens.map(t => t.low).join(' ');

// What the recogniser makes of shop talk: mishearings recorded from it on spoken notes, and a fast thumb's shorthand (common practice, no source).
describe('mending', () => {
  it.each([
    ['flywheel on the treble lathe', [], ['treadle lathe'], 'flywheel on the treadle lathe'],
    ['the magnet oh is dead', ['magneto'], [], 'the magneto is dead'],
    ['hug bearing is rough', ['hub bearing'], [], 'hub bearing is rough'],
    ['king bold is ready', ['king bolt'], [], 'king bolt is ready'],
    ['rake wheel pushings', ['left rake wheel bushing'], [], 'rake wheel bushings'],
    ['where plates are gone', ['wear plates'], [], 'wear plates are gone'],
    ['the break lines leak', [], [], 'the brake lines leak'],
    ['a coat of prime her', [], [], 'a coat of primer'],
    ['brgs packed w/ grease b4 lunch', [], [], 'bearings packed with grease before lunch'],
    ['left whel bearing shot', ['left wheel bearing'], [], 'left wheel bearing shot'],
    ['stacked agianst the wall', [], [], 'stacked against the wall'],
  ])('%s', (text, parts, machines, want) => { expect(said(text, parts, machines)).toBe(want); });

  it.each([
    ['took a break for tea', ['brake']], ['where is the plate', ['wear plates']], ['my barber has a piano', ['barrel']], ['a dozen kilos of it', []], ['he was bold', ['king bolt']], ['the letter came', ['pump leathers']],
  ])('leaves alone what is meant: %s', (text, parts) => { expect(said(text, parts)).toBe(text); });

  it('keeps what was said, and traces the change', () => {
    const sheet = openSheet('hug bearing is rough', { at: AT, parts: ['hub bearing'] });
    expect(sheet.tokens[0]).toMatchObject({ text: 'hug', low: 'hub', mended: true, start: 0, end: 3 });
    expect(sheet.trace.some(t => t.stage === 'mend' && t.text === 'hug' && t.gave === 'hub')).toBe(true);
  });
});

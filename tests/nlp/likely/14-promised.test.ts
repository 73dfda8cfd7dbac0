import { describe, expect, it } from 'vitest';
import { readNote } from '../../../nlp/read.ts';

const AT = '2026-05-05T10:00:00-04:00'; // a Tuesday
const told = (text: string) => readNote(text, { at: AT }).entries.map(({ sure: _, span: __, ...e }) => e);

describe('a day promised in a clause of its own', () => {
  it('is when the part that is out comes back', () => expect(told('Radiator went to the radiator shop. They said I could have it back a week from Friday.')).toEqual([{ kind: 'out', part: 'radiator', where: 'radiator shop', until: '2026-05-15' }]));
  it('is when what was ordered is to be here', () => expect(told('Ordered two belts from the belt place, 20 each. The girl said to look for them Thursday.')).toMatchObject([{ kind: 'order', item: 'belts', expected: '2026-05-07' }]));
  it('is read, and not left over', () => expect(readNote('Radiator went to the radiator shop. They said I could have it back a week from Friday.', { at: AT }).unread).toEqual([]));
  it('is not the day it went', () => expect(told('Injector pump went to the injection shop on Saturday for calibration.')).toMatchObject([{ kind: 'out', part: 'injector pump', where: 'injection shop' }]));
  it('leaves that day off', () => expect(told('Injector pump went to the injection shop on Saturday for calibration.')[0]).not.toHaveProperty('until'));
});

describe('another look', () => {
  it('is told with its own deed', () => expect(told('Re-tension the belt in three weeks.')).toEqual([{ kind: 'recheck', part: 'belt', do: 're-tension', after: 3, unit: 'weeks' }]));
  it('is told with the deed of a typist in a hurry', () => expect(told('retorq the head after 10 hrs')).toEqual([{ kind: 'recheck', part: 'head', do: 'retorque', after: 10, unit: 'hours' }]));
});

import { expect, test } from 'vitest';
import { readNote } from '../../../nlp/read.ts';

const told = (text: string, parts?: string[]) => readNote(text, { at: '2026-05-05T10:00:00-04:00', ...(parts ? { parts } : {}) }).entries.map(({ sure: _, span: __, ...e }) => e);

test('corners and hands in letters are the sides of a part', () => {
  expect(told('LF wheel off.')).toEqual([{ kind: 'fit', part: 'left front wheel', state: 'off' }]);
  expect(told('RR wheel is on for good.')).toEqual([{ kind: 'fit', part: 'right rear wheel', state: 'on' }]);
  expect(told('LH lamp cracked, RH fine.')).toEqual([{ kind: 'finding', part: 'left lamp', condition: 'cracked' }, { kind: 'finding', part: 'right lamp', condition: 'fine', verdict: 'good' }]);
});

test('they stay as they are where the shop has a name with them', () => {
  expect(told('RH lift rod is off.', ['RH lift rod'])).toEqual([{ kind: 'fit', part: 'rh lift rod', state: 'off' }]);
});

test('an article, a copula and hours as they are said in the north or typed in haste', () => {
  expect(told('Took t bonnet off.')).toEqual([{ kind: 'fit', part: 'bonnet', state: 'off' }]);
  expect(told('lamps r off')).toEqual([{ kind: 'fit', part: 'lamps', state: 'off' }]);
  expect(told('Twa oors on the gearbox.')).toEqual([{ kind: 'hours', hours: 2, part: 'gearbox' }]);
});

test('a sum in rand is money, with a space for its thousands too', () => {
  expect(told('Ordered the vaporiser from the foundry, R1 180 and R95 carriage.')).toEqual([{ kind: 'order', item: 'vaporiser', source: 'foundry', price: 1180, shipping: 95 }]);
});

import { expect, test } from 'vitest';
import { readNote } from '../../../nlp/read.ts';

const AT = '2026-03-19T12:00:00-05:00';
const names = (text: string, prior: string[], parts: string[] = []): (string | undefined)[] =>
  readNote(text, { at: AT, prior, parts }).entries.filter(e => e.kind !== 'remark').map(e => ('part' in e ? e.part : 'item' in e ? e.item : undefined));

test('a thing named in short keeps the name that it was given in full', () => {
  expect(names('The bearings came.', ['Ordered two boot bearings from the mill supply.'])).toEqual(['boot bearings']);
  expect(names("Crank's brazed and dressed off.", ["The tow shaker crank is cracked at the web."])).toEqual(['tow shaker crank', 'tow shaker crank']);
  expect(names('Axle boxes are full of grease. Washed the boxes with paraffin.', [])).toEqual(['axle boxes', 'axle boxes']);
});

test('two things that end in it leave the short name alone', () => {
  expect(names('The bearings came.', ['Ordered two boot bearings and two head bearings from the mill supply.'])).toEqual(['bearings']);
});

test('a short name that came first stays what it is', () => {
  expect(names('Greased the chain.', ['The chain is rusty.', 'Ordered a drive chain.'])).toEqual(['chain']);
});

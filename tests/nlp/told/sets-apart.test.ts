import { expect, test } from 'vitest';
import type { Told } from '../../../nlp/meanings/telling.ts';
import { tidied } from '../../../nlp/meanings/finding/tidied.ts';

const found = (condition: string, verdict?: string) => tidied([{ entry: { kind: 'finding', part: 'louvres', condition, ...(verdict ? { verdict } : {}) } } as unknown as Told]).map(x => [(x.entry as { condition: string }).condition, (x.entry as { verdict?: string }).verdict]);

test('each of several sets of one kind is a finding, with the verdict that its words say or that was left for it', () => {
  expect(found('nine sound, two have slats gone', 'repair')).toEqual([['nine sound', 'good'], ['two have slats gone', 'repair']]);
  expect(found('96 whole, 11 cracked, 7 in crumbs')).toEqual([['96 whole', undefined], ['11 cracked', undefined], ['7 in crumbs', undefined]]);
});

test('what is joined by "and", or is a size, is one', () => {
  expect(found('eleven missing and four bent')).toEqual([['eleven missing and four bent', undefined]]);
  expect(found('one foot long, two inch wide')).toEqual([['one foot long, two inch wide', undefined]]);
});

test('who saw it and what may be done about it are no part of how it is; what says nothing is no finding', () => {
  expect(found('turned out to be bent')).toEqual([['bent', undefined]]);
  expect(found('split I can solder', 'repair')).toEqual([['split', 'repair']]);
  expect(found('of it')).toEqual([]);
  expect(found("louder than I'd like")).toEqual([["louder than I'd like", undefined]]);
});

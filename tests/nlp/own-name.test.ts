import { describe, expect, it } from 'vitest';
import { readNote } from '../../nlp/read.ts';

const AT = '2026-06-09T10:00:00+00:00';
const named = (text: string, parts: string[], machines: string[] = []) => readNote(text, { at: AT, parts, machines }).entries.map(e => ('part' in e ? e.part : 'item' in e ? e.item : undefined));

describe("the shop's own name of what is said with more ahead of it", () => {
  it.each([
    ['Grader clutch plate is worn to the rivets.', ['clutch plate'], [], 'clutch plate'],
    ['Kiln fan hub is cracked.', ['bearing'], ['kiln fan'], 'hub'],
    ['Kiln fan hub is cracked.', ['kiln fan hub'], ['kiln fan'], 'kiln fan hub'],
  ])('%s', (text, parts, machines, name) => expect(named(text, parts, machines)).toEqual([name]));
  it.each([
    ['Left hub is cracked.', ['hub'], 'left hub'],
    ['Water pump is weeping.', ['pump'], 'water pump'],
    ['Fan hub is cracked.', ['hub', 'fan'], 'fan hub'],
  ])('not where the words ahead tell which, make another part of the trade, or name one of the shop: %s', (text, parts, name) => expect(named(text, parts)).toEqual([name]));
});

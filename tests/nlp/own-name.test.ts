import { describe, expect, it } from 'vitest';
import { readNote } from '../../nlp/read.ts';

const AT = '2026-06-09T10:00:00+00:00';
const named = (text: string, parts: string[], machines: string[] = []) => readNote(text, { at: AT, parts, machines }).entries.map(e => ('part' in e ? e.part : 'item' in e ? e.item : undefined));

describe("the shop's own name of what is said with more ahead of it", () => {
  it.each([
    ['Grader clutch plate is worn to the rivets.', ['clutch plate'], [], 'clutch plate'],
    ['Kiln fan hub is cracked.', ['bearing'], ['kiln fan'], 'hub'],
    ['Kiln fan hub is cracked.', ['kiln fan hub'], ['kiln fan'], 'kiln fan hub'],
    ['Number two headblock rack is cracked.', ['no. 1 headblock rack', 'no. 2 headblock rack'], [], 'no. 2 headblock rack'],
    ['No. 2 rack is cracked.', ['no. 1 headblock rack', 'no. 2 headblock rack'], [], 'No. 2 rack'],
    ['#2 headblock rack is cracked.', ['no. 2 headblock rack'], [], 'no. 2 headblock rack'],
    ['No. 3 crossmember is cracked.', [], [], 'No. 3 crossmember'],
    ['Linings came back from the reliner.', ['steering brake linings', 'left steering brake lining', 'right steering brake lining'], [], 'steering brake linings'],
    ['Put three hours in on the mill.', ['carriage'], ['sawmill'], 'sawmill'],
  ])('%s', (text, parts, machines, name) => expect(named(text, parts, machines)).toEqual([name]));
  it.each([
    ['Left hub is cracked.', ['hub'], 'left hub'],
    ['Water pump is weeping.', ['pump'], 'water pump'],
    ['Fan hub is cracked.', ['hub', 'fan'], 'fan hub'],
    ['Linings are cracked.', ['clutch linings', 'left brake lining'], 'linings'],
  ])('not where the words ahead tell which, make another part of the trade, or name one of the shop: %s', (text, parts, name) => expect(named(text, parts)).toEqual([name]));
});

import { expect, test } from 'vitest';
import { choiceMeant } from '../../bot/turn/choice.ts';

const ends = ['left tie rod end', 'right tie rod end'];
test.each([
  ['right', ends[1]], ['the right one', ends[1]], ['2', ends[1]], ['Left.', ends[0]], ['um the left', ends[0]], ['right tie rod end', ends[1]], ['I meant the left one', ends[0]],
  ['tie rod end', undefined], ['3', undefined], ['', undefined], ['the radiator is off', undefined], ['right hub bearing is rough and the seal leaks badly', undefined],
])('"%s" means %s', (said, meant) => expect(choiceMeant(said, ends)).toBe(meant));

test.each([['5', '5 (three lines)'], ['grade 8', undefined], ['8', '8 (six lines)'], ['three lines', '5 (three lines)'], ['1', undefined]])(
  'among figures "%s" means %s, never a place in the list', (said, meant) => expect(choiceMeant(said, ['2 (no lines)', '5 (three lines)', '8 (six lines)'])).toBe(meant));

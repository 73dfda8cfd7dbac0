import { expect, test } from 'vitest';
import { choiceMeant } from '../../bot/turn/choice.ts';

const ends = ['left tie rod end', 'right tie rod end'];
test.each([
  ['right', ends[1]], ['the right one', ends[1]], ['2', ends[1]], ['Left.', ends[0]], ['um the left', ends[0]], ['right tie rod end', ends[1]], ['I meant the left one', ends[0]],
  ['tie rod end', undefined], ['3', undefined], ['', undefined], ['the radiator is off', undefined], ['right hub bearing is rough and the seal leaks badly', undefined],
])('"%s" means %s', (said, meant) => expect(choiceMeant(said, ends)).toBe(meant));

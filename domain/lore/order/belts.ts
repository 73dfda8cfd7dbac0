import { usual } from './rule.ts';

export const belts = usual('belts', [
  ['crankshaft pulley', 'fan belt', 'the belt runs on it'],
  ['fan pulley', 'fan belt', 'the belt runs on it'],
  ['generator', 'fan belt', 'the belt is tightened by swinging it'],
  ['water pump', 'fan belt', 'the belt runs on its pulley'],
  ['fan belt', 'radiator', 'an endless belt goes on from the front'],
  ['crankshaft pulley', 'radiator', 'its nut needs a bar from the front'],
  ['align the fan pulley', 'adjust the fan belt', 'a belt out of line wears and jumps, however tight'],
  ['adjust the fan belt', 'start the engine', 'a slack belt drives neither pump nor generator'],
  ['fan belt', 'hood', 'the belt is reached from above'],
  ['belt pulley', 'drive belt', 'the belt runs on it'],
]);

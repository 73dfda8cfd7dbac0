import type { UnaskedReply } from '../put-off.ts';

/** Replies to a word unasked, said on Thursday 19 March 2026 at 09:00, and notes that must never be taken for one. */
export const AT = '2026-03-19T09:00:00+01:00';
export const REPLY_PHRASES: readonly (readonly [said: string, means: UnaskedReply])[] = [
  ['later', { do: 'later', hours: 3, plain: true }],
  ['Not now.', { do: 'later', hours: 3, plain: true }],
  ['not yet', { do: 'later', hours: 3, plain: true }],
  ['remind me later', { do: 'later', hours: 3 }],
  ['remind me again later', { do: 'later', hours: 3 }],
  ['in an hour', { do: 'later', hours: 1, plain: true }],
  ['remind me in two hours', { do: 'later', hours: 2 }],
  ['remind me in half an hour', { do: 'later', hours: 0.5 }],
  ['remind me in 20 minutes', { do: 'later', hours: 1 / 3 }],
  ['tomorrow', { do: 'later', day: '2026-03-20', plain: true }],
  ['remind me tomorrow', { do: 'later', day: '2026-03-20' }],
  ['Remind me Monday.', { do: 'later', day: '2026-03-23' }],
  ['remind me of that on Saturday', { do: 'later', day: '2026-03-21' }],
  ['tell me again next week', { do: 'later', day: '2026-03-23' }],
  ['remind me in three days', { do: 'later', day: '2026-03-22' }],
  ['remind me tonight', { do: 'later', day: '2026-03-19', evening: true }],
  ['this evening', { do: 'later', day: '2026-03-19', evening: true, plain: true }],
  ['Stop telling me that', { do: 'stop' }],
  ['don\'t tell me that again', { do: 'stop' }],
  ['stop reminding me about that', { do: 'stop' }],
  ['stop reminding me', { do: 'stop' }],
  ['stop', { do: 'stop', plain: true }],
  ['more', { do: 'more', plain: true }],
  ['why?', { do: 'more', plain: true }],
  ['put off word 12', { do: 'later', hours: 3, word: 12 }],
  ['stop word 3', { do: 'stop', word: 3 }],
  ['more of word 4', { do: 'more', word: 4 }],
];

export const NOT_REPLIES: readonly string[] = [
  'remind me Monday to check the belt', 'tomorrow I paint the hood', 'help tomorrow', 'stop the engine', 'stop telling me about late parts', 'later model water pump', 'in an hour I have to leave',
  'remind me to grease it tomorrow', 'paint it later', 'two hours', 'three days', 'not the left one', 'not enough shims', 'more shims', 'why is the radiator waiting', 'put off the paint', 'the hood comes Monday', 'check it in three days',
];

/** Said on Monday 2026-06-01 at 18:00: the days away, both ends included; and phrases that name none. */
export const AWAY_PHRASES: readonly (readonly [said: string, from: string, to: string])[] = [
  ["I'm away next week", '2026-06-08', '2026-06-14'],
  ["I'm away until Friday", '2026-06-01', '2026-06-04'],
  ['no shop time this weekend', '2026-06-06', '2026-06-07'],
  ["I can't get to the shop till Monday", '2026-06-01', '2026-06-07'],
  ["we're on holiday from 4 July to 18 July", '2026-07-04', '2026-07-18'],
  ["I'll be out of town on Saturday", '2026-06-06', '2026-06-06'],
];
export const NOT_AWAY: readonly string[] = [
  'the magneto is away until Friday', "I'm away", 'put the rags away', 'the carburettor is away at the machinist, back Friday', "I can't get the pulley off till Monday",
  "I'm going to paint the hood next week", 'my cousin is away next week', 'away with the old paint',
];

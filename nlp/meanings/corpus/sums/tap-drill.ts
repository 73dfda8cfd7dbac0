import { type AskCorpus, sums } from '../phrase.ts';

export const TAP_DRILL_CORPUS: AskCorpus = {
  phrases: [
    { text: 'what drill to tap M8 with pitch 1.25, 75 %', asks: [{ kind: 'sum', of: 'tapDrill', given: { size: 'M8x1.25', percent: 75 } }] },
    { text: 'The M6 hole has stripped. If I go up to M8 by 1.25, what drill, at 65 percent?', asks: [{ kind: 'sum', of: 'tapDrill', given: { size: 'M8x1.25', percent: 65 } }] },
    ...sums('tapDrill', { size: '1/2-13', percent: 75 }, [
      'what drill for a half inch coarse tap at 75 percent', 'tap drill for 1/2-13 75%', 'What size drill do I use for a 1/2-13 tap, 75 percent thread?', "I'm tapping half inch coarse, 75 percent, what drill", 'half thirteen seventy five percent thread what do i drill it', 'tapping drill for half inch coarse at seventy-five percent', 'What do I drill for a half-inch coarse thread at 75 percent?', 'how big a hole for a half inch coarse tap, 75 percent', 'drill size for 1/2-13 at 75 percent please', 'which drill goes before a half inch coarse tap for 75 percent thread',
    ]),
    ...sums('tapDrill', { size: 'M8x1.25' }, ['what drill for an M8 by 1.25 tap', 'tap drill for M8 coarse?', 'M8x1.25, what size hole do I drill to tap it', 'what size drill bit for m8 1.25 tap']),
    ...sums('tapDrill', { size: '10-32', percent: 60 }, ['ten thirty-two at sixty percent what tap drill', 'tap drill for 10-32 at 60 percent', 'what drill for a number ten fine at 60 percent']),
    { text: 'what tap drill for 1/4-20 at 75 percent? And for 5/16-18?', asks: [{ kind: 'sum', of: 'tapDrill', given: { size: '1/4-20', percent: 75 } }, { kind: 'sum', of: 'tapDrill', given: { size: '5/16-18', percent: 75 } }] },
    { text: 'What drill goes before a 7/16 coarse tap at 70 percent? And before 1/4-20 at 60?', asks: [{ kind: 'sum', of: 'tapDrill', given: { size: '7/16-14', percent: 70 } }, { kind: 'sum', of: 'tapDrill', given: { size: '1/4-20', percent: 60 } }] },
    { text: 'tap drill for a quarter inch fine at seventy and for a three eighths coarse at sixty five', asks: [{ kind: 'sum', of: 'tapDrill', given: { size: '1/4-28', percent: 70 } }, { kind: 'sum', of: 'tapDrill', given: { size: '3/8-16', percent: 65 } }] },
  ],
  never: ['Drilled and tapped it half inch coarse.', 'Tapped the hole 3/8-16.', 'Drill press is back on its feet.', 'The drill needs new discs.', 'Need a 3/8-16 tap.'],
};

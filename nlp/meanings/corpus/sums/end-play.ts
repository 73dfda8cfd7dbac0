import { type AskCorpus, sums } from '../phrase.ts';

export const END_PLAY_CORPUS: AskCorpus = {
  phrases: [
    { text: 'the nut has fourteen threads to the inch. what end play by slackening it one flat, and what by four?', asks: [{ kind: 'sum', of: 'endPlay', given: { pitch: 14, flats: 1 } }, { kind: 'sum', of: 'endPlay', given: { pitch: 14, flats: 4 } }] },
    { text: "nut is 14 threads to the inch, half a turn... no, two flats, what's that in end play?", asks: [{ kind: 'sum', of: 'endPlay', given: { pitch: 14, flats: 2 } }] },
    { text: 'Nut on the thrust is ten to the inch and I turned it back three flats. How much float?', asks: [{ kind: 'sum', of: 'endPlay', given: { pitch: 10, flats: 3 } }] },
    { text: 'the nuts eighteen threads to the inch and i back it off two flats no one flat what end play does that give me', asks: [{ kind: 'sum', of: 'endPlay', given: { pitch: 18, flats: 1 } }] },
    ...sums('endPlay', { pitch: 16, flats: 2 }, [
      "Nut's sixteen threads to the inch. If I back it off two flats how much end play is that?", '16 tpi backed off 2 flats how much end play', 'sixteen threads per inch and i back it off two flats whats that in end play', 'How much end play do I get backing a 16 thread per inch nut off two flats?', "what end play does two flats give on a 16 tpi nut", 'two flats on a sixteen thread nut, how much end float', 'If the spindle is 16 threads an inch and I go back two flats what clearance is that', "backed off two flats, 16 threads to the inch. How much play?", 'tell me the end play for two flats at 16 threads per inch', 'what is the end play with a 16 tpi spindle nut backed off two flats',
    ]),
    ...sums('endPlay', { pitch: 1.5, pitchUnit: 'mm', flats: 1 }, ['1.5 mm pitch nut backed off one flat, how much end float', 'nut is 1.5 mm pitch, one flat back, what end play is that']),
    { text: 'Thrust nut is 12 threads to the inch, one flat, how much end play? And two flats?', asks: [{ kind: 'sum', of: 'endPlay', given: { pitch: 12, flats: 1 } }, { kind: 'sum', of: 'endPlay', given: { pitch: 12, flats: 2 } }] },
    { text: 'Crank nut is 22 threads to the inch. What end play does one flat give, and what three?', asks: [{ kind: 'sum', of: 'endPlay', given: { pitch: 22, flats: 1 } }, { kind: 'sum', of: 'endPlay', given: { pitch: 22, flats: 3 } }] },
    { text: 'sixteen threads to the inch how much end play for two flats and then four flats', asks: [{ kind: 'sum', of: 'endPlay', given: { pitch: 16, flats: 2 } }, { kind: 'sum', of: 'endPlay', given: { pitch: 16, flats: 4 } }] },
    { text: 'Thread is 20 to the inch. One flat back, how much end play? Five flats?', asks: [{ kind: 'sum', of: 'endPlay', given: { pitch: 20, flats: 1 } }, { kind: 'sum', of: 'endPlay', given: { pitch: 20, flats: 5 } }] },
    { text: 'the nut is twelve threads to the inch and i back it two flats or maybe three flats what end play is that', asks: [{ kind: 'sum', of: 'endPlay', given: { pitch: 12, flats: 2 } }, { kind: 'sum', of: 'endPlay', given: { pitch: 12, flats: 3 } }] },
    { text: 'four flats then', prior: ['fourteen threads to the inch, what end play is one flat'], asks: [{ kind: 'sum', of: 'endPlay', given: { pitch: 14, flats: 4 } }] },
    { text: 'Lock nut is 14 tpi, backed off 2 flats then 5 flats, end play each?', asks: [{ kind: 'sum', of: 'endPlay', given: { pitch: 14, flats: 2 } }, { kind: 'sum', of: 'endPlay', given: { pitch: 14, flats: 5 } }] },
    { text: 'The collar has a sixteen-per-inch thread and I go back three flats, how much end play?', asks: [{ kind: 'sum', of: 'endPlay', given: { pitch: 16, flats: 3 } }] },
    { text: "Lock nut, ten threads to the inch. How much end play is half a flat, sorry, a full flat?", asks: [{ kind: 'sum', of: 'endPlay', given: { pitch: 10, flats: 1 } }] },
  ],
  never: ['Blower shaft end play is twenty-one thou.', 'Backed the nut off two flats.', 'End play was eight thou before.', 'Thread is sixteen to the inch.', 'And three flats more tomorrow.'],
};

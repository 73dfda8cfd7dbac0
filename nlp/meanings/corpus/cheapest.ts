import { type AskCorpus, same } from './phrase.ts';

export const CHEAPEST_CORPUS: AskCorpus = {
  phrases: [
    ...same({ kind: 'cheapest', item: 'fan belt' }, ['cheapest I got on that fan belt', 'chpst fan belt?', 'The fan belt is gone. Who has new ones cheapest?', 'The fan belt has gone. Which one is the least, landed?']),
    { text: "who's cheapest for three quarter inch chain", asks: [{ kind: 'cheapest', item: 'three quarter inch chain' }] },
    { text: "cheapest I've heard on a 6204", asks: [{ kind: 'cheapest', item: '6204' }] },
    ...same({ kind: 'cheapest', item: 'fan belt' }, ['Does anybody have a fan belt under twenty?', 'has anyone quoted me less than thirty for a fan belt', "what's cheap on a fan belt", 'Whose price is best on a fan belt?', 'Who offers a fan belt at the least cost?', 'list please. also cheapest fan belt', "who's got the best price on a fan belt, all charges included"]),
    ...same({ kind: 'cheapest', item: 'inner tube' }, ['whats the cheapest anybody has told me on an inner tube', "Cheapest anyone's quoted on an inner tube?", 'anybody got an inner tube cheaper than what I wrote down', 'have I a lower price than 20 on the inner tube']),
    { text: 'The dealer wants sixty for a seat. Who has been cheapest on one so far?', asks: [{ kind: 'cheapest', item: 'seat' }] },
    { text: 'cheapest on them roller bearings landed here', asks: [{ kind: 'cheapest', item: 'roller bearings' }] },
    ...same({ kind: 'cheapest', item: 'battery' }, ["which is the better buy on the battery"]),
    ...same({ kind: 'cheapest', item: 'tail spring' }, ["what's the best delivered price anybody's given me on a tail spring?", "who'll do me a tail spring the cheapest", "where'll I get a tail spring for the least money"]),
    ...same({ kind: 'cheapest', item: 'head gasket' }, [
      'who has the cheapest head gasket', "What's the best price on a head gasket?", 'cheapest head gasket', 'cheapest price on a head gasket landed', 'where can I get a head gasket cheapest', 'best price so far on a head gasket', "What's the lowest price I've heard for a head gasket?", 'who was cheapest for the head gasket',
      'cheapest quote on a head gasket', 'which place was cheapest on the head gasket', 'tell me who is cheapest on the head gasket', 'whos cheapest on a head gasket', 'what is the least I can get a head gasket for', 'who sells the cheapest head gasket', 'what prices have I got for a head gasket', "best deal on a head gasket?",
    ]),
    { text: 'whos got the cheapest fan belt and the cheapest hose', asks: [{ kind: 'cheapest', item: 'fan belt' }, { kind: 'cheapest', item: 'hose' }] },
  ],
  never: ['Bought the cheapest one they had.', 'The salvage yard was cheapest so I went there.', 'Cheap paint, and it shows.', 'He gave me his best price, forty.', 'Best day in weeks.'],
};

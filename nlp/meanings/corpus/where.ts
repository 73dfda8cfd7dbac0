import { type AskCorpus, same } from './phrase.ts';

export const WHERE_CORPUS: AskCorpus = {
  phrases: [
    { text: 'Where did them cotter pins end up?', asks: [{ kind: 'where', part: 'cotter pins' }] },
    { text: "where's the tin of cotter pins, and the scraper while you're at it", asks: [{ kind: 'where', part: 'cotter pins' }, { kind: 'where', part: 'scraper' }] },
    ...same({ kind: 'where', part: 'marker arm' }, ['Which shed did the marker arm end up in?', 'what did I put the marker arm in?', 'Whatever did I do with the marker arm?']),
    ...same({ kind: 'where', part: 'oil cup' }, ["where in blazes is the oil cup", "where on earth did the oil cup land", "Where did the wee oil cup land?"]),
    { text: 'Reel pins, where did they end up? Also that wee bearing cap, I had it in my hand a minute ago.', asks: [{ kind: 'where', part: 'reel pins' }, { kind: 'where', part: 'bearing cap' }] },
    { text: 'Where are the reel pins? And the springs?', asks: [{ kind: 'where', part: 'reel pins' }, { kind: 'where', part: 'springs' }] },
    ...same({ kind: 'where', part: 'governor springs' }, [
      'where did i put the governor springs', 'Where are the governor springs?', 'Wheres the governor springs got to', 'any idea where the governor springs are',
      'remind me where I stashed the governor springs', 'Which drawer are the governor springs in?', "I can't remember where I put the governor springs.",
      'where have I got the governor springs', 'What did I do with the governor springs?', "Where'd the governor springs end up?", 'where on earth are the governor springs',
      'find me the governor springs', 'tell me where the governor springs went', 'Where do I keep the governor springs', 'where are those governor springs hid', 'have you seen the governor springs anywhere',
      'governor springs, where are they?', 'where abouts are the governor springs', 'need to know where I left the governor springs',
    ]),
    ...same({ kind: 'where', part: 'piston rings' }, ['where are the rings', 'Where did the rings get to?', "what box are the rings in"], { parts: ['piston rings', 'cylinder'] }),
    { text: 'where did i leave the pushrods and the rocker shaft', asks: [{ kind: 'where', part: 'pushrods' }, { kind: 'where', part: 'rocker shaft' }] },
    { text: 'Degreased the feed rolls. Where are the keys?', asks: [{ kind: 'where', part: 'keys' }] },
    { text: 'Where in the shop did I put the brass tag?', asks: [{ kind: 'where', part: 'brass tag' }] },
  ],
  never: ['Sharpen the knives, oil the gear, find the oil can.', 'I put it where a man can reach it.', 
    "He asked where I got the jet.",
    'The bolts are where I left them.', 'Sanded the fender where the paint had gone soft.', "I don't know where this is going.", 'Put the springs where the rings were.',
    'Where it rubs I filed it down.', 'Where the devil did I put my tea. Never mind.', 'Found where it was leaking.', 'wear plates are gone',
  ],
};

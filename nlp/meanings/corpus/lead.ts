import { type AskCorpus, same } from './phrase.ts';

/** Questions that are led in to, or come in no wording of their own kind; and those that want no answer. */
export const LEAD_CORPUS: AskCorpus = {
  phrases: [
    ...same({ kind: 'where', part: 'carburettor float' }, [
      "I'm damned if I can remember what shelf I left the carburettor float on.", "I'd dearly like to know where the carburettor float has got to.", 'Clean forgot where I stuck the carburettor float',
      "You wouldn't happen to know where the carburettor float is?", 'been racking my brains where the carburettor float went', "It'd be handy to know which drawer the carburettor float is in.", "Can't for the life of me think where I put the carburettor float",
    ]),
    ...same({ kind: 'blocked', part: 'engine' }, ["I'd like to know if I can drop the engine in.", 'We need to know whether the engine can go back in', 'Could you tell me whether the engine is ready to go in', "I was wondering if it's okay to drop the engine in"]),
    ...same({ kind: 'wasHow', part: 'worm', what: 'end float' }, ['remind me what the end float was on the worm before teardown', "I don't suppose you know what the end float on the worm was originally?", 'any record of what the end float was on the worm']),
    ...same({ kind: 'finish' }, ["what's your best guess on when she runs", 'give me your honest estimate of when I will be finished', 'am i going to make the fair with this thing']),
    ...same({ kind: 'history', part: 'injectors' }, ['have the injectors been tested yet', 'Have the injectors ever been cleaned?']),
    ...same({ kind: 'forecast', for: 'undercoat the wings', from: '2026-03-19', to: '2026-03-19' }, ['Too damp to undercoat the wings today?', 'Is it too damp to undercoat the wings today?']),
    ...same({ kind: 'next' }, ["Which jobs aren't held up by anything?", 'Where should I start today?', "what work isn't waiting on parts"]),
    { text: 'Put another 2 hours in on the hood. What does that bring me to?', asks: [{ kind: 'timeSpent', part: 'hood' }] },
    { text: 'Bought a fan belt at the parts store for 18 bucks, so what am I up to all told?', asks: [{ kind: 'spent' }] },
  ],
  never: [
    "Don't ask me how long I've spent on that carburetor.", "I hate to think what I've spent on this.", 'Who in their right mind puts a bolt in from that side?', 'Why do I do this to myself.', "Guess what? It's seized.",
    'Where I put the spare belt is where it belongs, on the nail by the door.', 'How that shaft never broke I will never know.', 'What I need is two more clevis pins.', 'What was short was the oil.', "Who knew you could get those rebuilt?",
    'When it is dry I will paint the seat.', "Would you believe it, it's cracked.", "Isn't she lovely?",
  ],
};

/** Sentences that follow up a question with another thing, side, day or measure. */
export const LIKEWISE_CORPUS: AskCorpus = {
  phrases: [
    ...same({ kind: 'where', part: 'left headlamp' }, ['and the left one?', 'what about the left one', 'And the other one?', 'same for the left', 'the left?'], { prior: ['Where did I put the right headlamp?'] }),
    ...same({ kind: 'wasHow', part: 'right knife head', what: 'shims' }, ['what about the other side', 'and the right?', 'And on the other side?'], { prior: ['How many shims were under the left knife head?'] }),
    ...same({ kind: 'spent', part: 'loader' }, ['and in money?', 'and money?', 'what about in dollars'], { prior: ['How many hours have I got in the loader?'] }),
    ...same({ kind: 'forecast', from: '2026-03-22', to: '2026-03-22' }, ['and Sunday?', 'what about Sunday'], { prior: ["What's the weather doing tomorrow?"] }),
    ...same({ kind: 'next', minutes: 60, place: 'outdoors' }, ['and outside?'], { prior: ['What can I do indoors with an hour?'] }),
    ...same({ kind: 'cheapest', item: 'release bearing' }, ['and a release bearing?', 'what about a release bearing'], { prior: ['Cheapest clutch plate?'] }),
    { text: 'Where did I leave the float? And the needle?', asks: [{ kind: 'where', part: 'float' }, { kind: 'where', part: 'needle' }] },
    { text: 'Could I stitch the canvas today? The reel too?', asks: [{ kind: 'blocked', part: 'canvas' }, { kind: 'blocked', part: 'reel' }] },
  ],
  never: ['And the left one is cracked.', 'The other one too.'],
};

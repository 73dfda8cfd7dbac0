import { type AskCorpus, same } from './phrase.ts';

export const PROVISIONAL_CORPUS: AskCorpus = {
  phrases: [
    ...same({ kind: 'provisional', part: 'winch' }, ["what's on that winch that ain't bolted for real", 'anything on the winch I only propped there', 'a list of whatever I have merely pinned on the winch', 'what have I only wedged on the winch', 'Any of the parts I have merely trial-fitted to the winch?']),
    { text: "when will the winch be ready and what's temporary on her yet", asks: [{ kind: 'finish', part: 'winch' }, { kind: 'provisional', part: 'winch' }] },
    { text: "what's due, what's temp", asks: [{ kind: 'due' }, { kind: 'provisional' }] },
    ...same({ kind: 'provisional', part: 'baler' }, ["what's lashed up on the baler"]),
    ...same({ kind: 'provisional' }, ["which bits are only pinched up", "what's not on for keeps", "is there anything still to be tightened properly?"]),
    ...same({ kind: 'provisional', part: 'mower' }, ["anything on the mower held with wire?", "what's just held on temporary on the mower", "Tell me what is not yet fixed for good on the mower"]),
    ...same({ kind: 'provisional', part: 'baler' }, [
      "What's only temporary on the baler?", 'what on the baler is just finger tight', 'anything on the baler thats not on for good', 'list what is provisional on the baler', 'whats only mocked up on the baler',
      "which bits on the baler are only hung", "what have I got on the baler that's just tacked", 'What still has to come off again on the baler?', 'remind me what is only held on temporarily on the baler', "what's loose on the baler",
      'whats on the baler just for now', 'tell me whats not tight on the baler', 'What parts are temporary on the baler?', 'What have I only test fitted on the baler',
    ]),
    ...same({ kind: 'provisional' }, ["what's temporary", 'anything still just finger tight', 'what have I got thats only provisional', 'Whats not on for good yet?', 'show me everything thats only tried', 'what is still mocked up']),
  ],
  never: ['The fender is only finger tight.', 'Hung the door with two bolts just for now.', "It's only temporary.", 'Seat is just sitting there for a mock-up.', 'not on for good yet'],
};

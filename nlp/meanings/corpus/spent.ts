import { type AskCorpus, same } from './phrase.ts';

export const SPENT_CORPUS: AskCorpus = {
  phrases: [
    ...same({ kind: 'spent', part: 'tedder' }, ['whats it cost me so far the tedder', 'what am I down in money on the tedder']),
    { text: 'hours on the tedder, total, bucks too', asks: [{ kind: 'timeSpent', part: 'tedder' }, { kind: 'spent', part: 'tedder' }] },
    { text: "what's it all cost me so far, the tedder I mean", asks: [{ kind: 'spent', part: 'tedder' }] },
    { text: '$ on sweep rake? $ on tedder? hours on both', asks: [{ kind: 'spent', part: 'sweep rake' }, { kind: 'spent', part: 'tedder' }, { kind: 'timeSpent', part: 'sweep rake' }, { kind: 'timeSpent', part: 'tedder' }] },
    { text: 'tedder $ so far?', asks: [{ kind: 'spent', part: 'tedder' }] },
    ...same({ kind: 'spent' }, ["What's it all cost me so far?", 'Expenditure to date, if you please.', "what's the total I've laid out"]),
    ...same({ kind: 'spent', part: 'tedder' }, ["what's the total we've shelled out on this tedder", 'the total of dollars in the tedder'] ),
    ...['how much have I laid out on the tedder and hours', 'What have I sunk into the tedder, $ and hrs?', 'what have I spent on the tedder, in money and in hours'].map(text => ({ text, asks: [{ kind: 'spent', part: 'tedder' }, { kind: 'timeSpent', part: 'tedder' }] })),
    ...same({ kind: 'spent' }, ['How much have I spent?'], { machines: ['tedder'] }),
    ...same({ kind: 'spent', part: 'winch' }, ['what did I pay out on the winch', 'how much have I tipped into the winch', 'what have I chucked at the winch so far', 'What does that make my total on the winch?']),
    { text: 'what did i pay for chain and sprocket altogether', asks: [{ kind: 'spent', part: 'chain' }, { kind: 'spent', part: 'sprocket' }] },
    { text: 'What have I got in the winch so far, money wise?', asks: [{ kind: 'spent', part: 'winch' }] },
    { text: 'How long have I put into the winch, and the money too?', asks: [{ kind: 'timeSpent', part: 'winch' }, { kind: 'spent', part: 'winch' }] },
    ...same({ kind: 'spent', part: 'sprayer' }, ["May I have the expenditure on the sprayer to date", "what does the sprayer stand me"]),
    ...same({ kind: 'spent', part: 'baler' }, ["what is the baler after costing me so far", "How much is in the baler so far?", "What have I parted with for the baler?", "how much money's gone into the baler"]),
    { text: 'What have I got into this generator so far, money and time both?', asks: [{ kind: 'spent', part: 'generator' }, { kind: 'timeSpent', part: 'generator' }] },
    ...same({ kind: 'spent', part: 'windmill' }, [
      'how much have I spent on the windmill', 'what have I spent on the windmill', 'how much money is in the windmill so far', 'total money on the windmill', 'what has the windmill cost me', 'how much have i sunk into the windmill', "What's the windmill cost me so far?",
      'what have I put into the windmill in dollars', 'how many dollars have I got in the windmill', 'tell me what I have spent on the windmill', 'how much am I into the windmill for', 'what am I in for on the windmill', 'total spent on the windmill', "what's the damage so far on the windmill",
      'how much did I blow on the windmill', 'money spent on the windmill', 'how much has the windmill set me back', 'how much cash have I put in the windmill',
    ]),
    ...same({ kind: 'spent' }, ['how much have I spent', 'what have I spent so far', 'total spent so far', 'How much money have I put in altogether?', "what's the total spend to date", 'so how much am i out of pocket']),
    ...same({ kind: 'spent', part: 'axle' }, ['how much am I out of pocket on the axle']),
  ],
  never: ['Cost of the radiator to date is 240.', 
    "Table's hung on the rail with two clamps.", 'The feed screw is in for keeps.','Spent forty dollars on hose.', 'I have spent enough on that windmill.', "Don't ask how much I spent.", 'Spent three hours on the windmill.'],
};

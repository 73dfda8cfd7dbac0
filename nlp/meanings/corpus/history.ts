import { type AskCorpus, same } from './phrase.ts';

export const HISTORY_CORPUS: AskCorpus = {
  phrases: [
    { text: 'what did I do with the winch on Monday', asks: [{ kind: 'history', part: 'winch', from: '2026-03-16', to: '2026-03-16' }] },
    ...same({ kind: 'history', from: '2026-03-18', to: '2026-03-18' }, ['what I do yesterday']),
    { text: 'photos of the arbor, and the last thing I did to the arbor', asks: [{ kind: 'picture', part: 'arbor' }, { kind: 'history', part: 'arbor' }] },
    ...same({ kind: 'history', part: 'arbor', from: '2026-02-01' }, ['What was made on the arbor since the first of February?']),
    { text: 'What has been done to the arbor since the first of February, and how many hours is that?', asks: [{ kind: 'history', part: 'arbor', from: '2026-02-01' }, { kind: 'timeSpent', part: 'arbor', from: '2026-02-01' }] },
    ...same({ kind: 'history', part: 'head' }, ["what work went into the head", "What has the head had done to it?"]),
    ...same({ kind: 'history', part: 'arbor' }, [
      'what did I do on the arbor', 'what have I done to the arbor', 'What was done to the arbor?', 'show me the history of the arbor', 'what work has been done on the arbor', 'when did I grease the arbor', 'tell me what I did to the arbor',
      'arbor history', 'list everything I did on the arbor', 'when was the arbor last greased', 'what happened with the arbor', 'what have I got done on the arbor so far', 'remind me what I did to the arbor', 'When did I last work on the arbor?', 'give me the work done on the arbor', 'have I greased the arbor',
    ]),
    ...same({ kind: 'history', from: '2026-03-17', to: '2026-03-17' }, ['what did I do on Tuesday', 'What was it I did on Tuesday?', 'what did i get done tuesday', 'what was I at on Tuesday', 'remind me what I did on Tuesday', 'what work did I do on Tuesday', 'What happened on Tuesday?', 'what did I get through on Tuesday']),
    ...same({ kind: 'history', from: '2026-03-18', to: '2026-03-18' }, ['what did I do yesterday', 'What did I get done yesterday?', 'so what was I doing yesterday']),
    ...same({ kind: 'history', from: '2026-03-09', to: '2026-03-15' }, ['what did I do last week', 'What did I get done last week?', 'list what I did last week']),
    ...same({ kind: 'history', part: 'governor', from: '2026-03-01', to: '2026-03-10' }, ['what did i do to the governor between the first and the tenth', 'what did I do on the governor from the first to the tenth', 'What was done to the governor between March 1 and March 10?']),
    ...same({ kind: 'history', part: 'baler', from: '2026-02-01', to: '2026-02-28' }, ['what did I do on the baler in February', 'What work was done on the baler in February?', 'what did i get done on the baler last month']),
  ],
  never: ['You know what I did? Put it on backwards.', 'Did the left one as well.', 'What I did was heat the hub.', 'I did nothing on Tuesday.', 'did the points and plugs'],
};

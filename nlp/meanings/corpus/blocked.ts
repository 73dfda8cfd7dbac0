import { type AskCorpus, same } from './phrase.ts';

export const BLOCKED_CORPUS: AskCorpus = {
  phrases: [
    { text: 'may the fenders go on yet', asks: [{ kind: 'blocked', part: 'fenders' }] },
    ...same({ kind: 'blocked', part: 'boom' }, ["what's stopping me stepping the boom", 'What is keeping me from bedding the boom down?', 'may I proceed with the boom yet', "What can't I do yet on the boom?", 'Is the boom still waiting on anything?']),
    ...same({ kind: 'blocked', part: 'cab' }, ["what do I want doing before the cab can go on"]),
    ...same({ kind: 'blocked', part: 'flywheel' }, ["What's standing between me and hanging the flywheel?", "May I ask what is preventing the fitting of the flywheel?", "what has me held up on the flywheel", "What's in the road of the flywheel going back on?", "What still needs doing ahead of the flywheel?", "any reason the flywheel can't go in", "Can I still get at the flywheel, or is that waiting on something too?", "am I right to bolt the flywheel on"]),
    ...same({ kind: 'blocked', part: 'radiator' }, [
      "what's holding up the radiator", 'can I put the radiator on yet', 'Can the radiator go on yet?', 'why can\'t I fit the radiator', 'what is stopping me from putting the radiator on', "What's the holdup on the radiator?", 'is the radiator ready to go on',
      'what am I waiting on for the radiator', 'am I clear to fit the radiator', 'what does the radiator need before it goes on', 'can i mount the radiator now', "what's keeping me from hanging the radiator", 'what has to be done before the radiator can go on',
      'whats blocking the radiator', 'Is anything holding up the radiator?', 'what is the radiator waiting on', "why isn't the radiator on yet", 'tell me whats holding the radiator up', 'anything in the way of fitting the radiator', 'what still stands between me and the radiator',
      'is it ok to put the radiator back in now', 'what do I need to do before I can fit the radiator', "what's the radiator stuck on", 'how come I can\'t put the radiator on', 'could I bolt the radiator up yet',
    ]),
    { text: 'Sanded the hood inside and out. Can I paint it yet?', asks: [{ kind: 'blocked', part: 'hood' }] },
    { text: 'greased the pulley can it go on now', asks: [{ kind: 'blocked', part: 'pulley' }] },
  ],
  never: ['Any obstacle to the head going on is gone now that the studs are in.', 
    "Put the canvas can this on the rollers to see if it tracks.",'I can put the radiator on tomorrow.', "Can't hitch the sweep until the king bolt's back.", 'I can weld the back one.', 'Nothing is holding it up now.', 'The radiator is ready.', 'So what can you do.'],
};

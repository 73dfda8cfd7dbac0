import { type AskCorpus, same } from './phrase.ts';

export const DUE_CORPUS: AskCorpus = {
  phrases: same({ kind: 'due' }, [
    'have any rechecks come round', "what all's due", 'is it anything I need to check back on',
    'what came due this week', 'anything else come due?', 'Is anything on the baler due a look over?', 'what is overdue for a second look', 'whats up for a recheck this week', 'Is there anything I ought to have looked at by now?',
    'Which nuts did I say I would go round again?', 'what have I promised to look back at', 'Is it time to check anything again?', 'Is anything else of mine due for inspection?',
    "What's due for a recheck?", 'what rechecks are due', 'anything due to be looked at again', 'any rechecks coming up', 'is there anything I should be checking again', 'what needs checking again',
    'what was I supposed to check again', 'list the rechecks', 'What have I got to look at again?', 'any idea whats due', 'do I have any rechecks outstanding', 'what am I meant to be keeping an eye on',
    'whats due', 'remind me whats due', 'which things are due a second look', 'anything needs retorquing', 'what has to be retorqued', 'show me what rechecks are due this week', 'Is anything overdue for a check?', 'What wants looking at again',
  ]),
  never: ['The baler is due a look over in May.', 'Retorque is due after ten hours.', 'The bill is due Friday.', 'She is due back on the first.', 'Check the wheels after the first 20 hours.', 'I need to look at that again.'],
};

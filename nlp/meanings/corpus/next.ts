import { type AskCorpus, same } from './phrase.ts';

export const NEXT_CORPUS: AskCorpus = {
  phrases: [
    ...same({ kind: 'next', minutes: 40, place: 'outdoors' }, ["Anything I can get on with outside? I've 40 minutes.", 'owt I can be getting on with outdoors for forty minutes', 'gimme something outside for forty minutes']),
    ...same({ kind: 'next', minutes: 45, place: 'indoors' }, ['What can I do out of the rain for three quarters of an hour?', 'got forty five minutes inside whats good', 'Got 45 minutes under cover, what is there?']),
    ...same({ kind: 'next', minutes: 60, place: 'outdoors' }, ["What's left for me outdoors if I've got an hour?", 'what all could i do outside with an hour', 'what can a person do outside in an hour']),
    { text: 'what do i do with half an hour', asks: [{ kind: 'next', minutes: 30 }] },
    ...same({ kind: 'next', place: 'indoors' }, ['what have I got that wants doing inside', 'Anything quick indoors?', 'what can I do by the stove']),
    { text: 'have i got anything i can do in the dry for half an hour', asks: [{ kind: 'next', minutes: 30, place: 'indoors' }] },
    { text: 'whats a shed job i can knock over in an hour', asks: [{ kind: 'next', minutes: 60, place: 'indoors' }] },
    { text: "what have i got that'll fill twenty minutes while the load shifts round", asks: [{ kind: 'next', minutes: 20 }] },
    { text: 'In the circumstances, what may usefully be done under cover within the hour?', asks: [{ kind: 'next', minutes: 60, place: 'indoors' }] },
    { text: 'something for inside, twenty minutes', asks: [{ kind: 'next', minutes: 20, place: 'indoors' }] },
    { text: "it's wet out, what can I do", asks: [{ kind: 'next' }] },
    { text: "it's dry, what'll I do outside?", asks: [{ kind: 'next', place: 'outdoors' }] },
    { text: 'School bus is at ten to three so call it forty minutes, what can I knock off outside?', asks: [{ kind: 'next', minutes: 40, place: 'outdoors' }] },
    { text: "I've half an hour before tea, what's a job I could get done?", asks: [{ kind: 'next', minutes: 30 }] },
    ...same({ kind: 'next' }, ["what's ready to be worked on", "What jobs are open to me now?", "what can be got on with"]),
    ...same({ kind: 'next' }, ["what's next", 'what can I do now', 'What should I work on next?', 'anything I can do', 'whats the next job', 'what do I do next', "What's to do?", 'tell me what I can get on with', 'what should I tackle first', 'give me something to do', 'next job', 'What could I be getting on with', 'So what now?'].filter(t => t !== 'So what now?')),
    ...same({ kind: 'next', minutes: 30 }, ["I've got half an hour. What can I do?", 'what can i do in half an hour', 'What fits in thirty minutes?', 'got 30 minutes, whats next', 'anything I can get done in half an hour', 'half an hour free what should i do', 'Half an hour before supper. Anything?', 'what could I knock out in thirty minutes', 'is there anything i can do with half an hour']),
    ...same({ kind: 'next', minutes: 120, place: 'indoors' }, ['what can I do inside for two hours', "I've got two hours and it's raining, what's there to do indoors?", 'anything to do in the shop for a couple of hours', 'two hours. what have I got indoors', 'any indoor jobs for two hours']),
    ...same({ kind: 'next', place: 'outdoors' }, ['what can i do outside', 'Anything I can be at outdoors?', 'what outside work have I got', 'any outdoor jobs']),
    ...same({ kind: 'next', minutes: 45, place: 'indoors' }, ['three quarters of an hour to kill inside, what can I do', '45 minutes indoors, what should I tackle', "Stuck inside with 45 minutes. What's next?"]),
  ],
  never: ['I know what to do with the old belt.', 'He asked what next and we said dinner.', "I'm going to grind the key next.", 'Next week I will paint it.', 'They come in boxes of twelve so what can you do.', 'Half an hour on the pinion face.', 'Two hours on the sweep.', 'Nothing I can do about it now.'],
};

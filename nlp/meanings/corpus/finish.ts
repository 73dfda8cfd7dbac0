import { type AskCorpus, same } from './phrase.ts';

export const FINISH_CORPUS: AskCorpus = {
  phrases: [
    { text: 'FENDER ON STOP COMPLETION DATE QUERY', asks: [{ kind: 'finish' }] },
    ...same({ kind: 'finish', part: 'tedder' }, ['when will it be finished, this tedder', 'are we done yet with the tedder', 'whan will the tedder be feenished']),
    ...same({ kind: 'finish' }, ['when may I call this done', 'how far off is it', 'how soon am I spraying with it']),
    ...same({ kind: 'finish', part: 'seeder' }, ['Is the seeder ever to be finished?', 'when do I get a finished seeder', 'When, in your opinion, will the seeder be complete?']),
    ...same({ kind: 'finish' }, ['how long left', "When'll she be done?", 'is there any hope of this thing being finished', 'when do you reckon she ploughs']),
    { text: "Greased the tailgate on the bench. When's it going to be done?", asks: [{ kind: 'finish' }] },
    { text: 'photos of the gearbox, and when will I be finished with it', asks: [{ kind: 'picture', part: 'gearbox' }, { kind: 'finish', part: 'gearbox' }] },
    ...same({ kind: 'finish', part: 'reaper' }, ['whenll the reaper be rolling', 'Is the reaper anywhere near finished?', 'Will I ever finish the reaper?', 'when do you reckon the reaper will cut its first acre', "How far's the reaper from finished?"]),
    ...same({ kind: 'finish', part: 'reaper' }, ['when will it be ready', 'When do you figure this thing will run?'], { machines: ['reaper'] }),
    { text: 'How many hours have I put in the reaper, and when will she be done?', asks: [{ kind: 'timeSpent', part: 'reaper' }, { kind: 'finish', part: 'reaper' }] },
    ...same({ kind: 'finish', part: 'pump' }, ["when might I hope to have the pump back in service", "how far off finished is the pump"]),
    ...same({ kind: 'finish', part: 'combine' }, ["So when does this combine see a field?", "when will the combine turn a wheel", "when do I get my combine back", "how much longer on the combine", "What date are we looking at for the combine?"]),
    ...same({ kind: 'finish', part: 'spreader' }, [
      'when will the spreader be done', "When's the spreader going to be finished?", 'when do you think the spreader will be ready', 'how long until the spreader is done', 'when will I be finished with the spreader', 'how long till the spreader is running', 'what day will the spreader be finished', 'when is the spreader going to be done',
      'whens the spreader finished at this rate', 'when do you reckon the spreader will be done', 'will the spreader be done by spring', 'how close is the spreader to being finished', 'finish date for the spreader', 'when can I expect the spreader to be done', 'how much longer on the spreader till its done', 'when will I have the spreader going again', 'how far off is the spreader from being finished', 'when do I finish the spreader', 'any idea when the spreader will be done',
    ]),
  ],
  never: [
    'When I get the pump back I will fit it.','The spreader is finished.', 'When the spreader is done I will start on the rake.', "I'll be done with it Friday.", 'Finish the deck first.', 'When it goes on for real I will use new bolts.'],
};

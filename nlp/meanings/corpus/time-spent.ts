import { type AskCorpus, same } from './phrase.ts';

export const TIME_SPENT_CORPUS: AskCorpus = {
  phrases: [
    ...same({ kind: 'timeSpent', part: 'baler' }, ["how long's the baler taken", 'how long in all have I spent on the baler', 'How long am I at the baler?']),
    { text: 'how many hours and how much money have I in the baler', asks: [{ kind: 'timeSpent', part: 'baler' }, { kind: 'spent', part: 'baler' }] },
    ...same({ kind: 'timeSpent', part: 'baler', from: '2026-02-01' }, ["what have I spent on the baler, hours I mean, since the first of February", 'What have I laid out upon the baler in hours since the first of February?']),
    { text: 'How long have I spent on the baler? And the expense, while we are at it.', asks: [{ kind: 'timeSpent', part: 'baler' }, { kind: 'spent', part: 'baler' }] },
    { text: 'how long have I been at the baler and the money, what does that come to', asks: [{ kind: 'timeSpent', part: 'baler' }, { kind: 'spent', part: 'baler' }] },
    ...same({ kind: 'timeSpent', part: 'mill' }, ['mill hours so far?']),
    ...same({ kind: 'timeSpent', part: 'forage wagon' }, ['total hours on this thing', 'how many hours have I in this yoke'], { machines: ['forage wagon'] }),
    { text: 'How much have I laid out on the seeder, and how many hours since the first of February?', asks: [{ kind: 'spent', part: 'seeder' }, { kind: 'timeSpent', part: 'seeder', from: '2026-02-01' }] },
    { text: 'what have i spent on the seeder, and the hours', asks: [{ kind: 'spent', part: 'seeder' }, { kind: 'timeSpent', part: 'seeder' }] },
    ...same({ kind: 'timeSpent', part: 'seeder', from: '2026-03-01' }, ['how many hours in the seeder since the start of March', 'How many hours have I given the seeder this month?']),
    ...same({ kind: 'timeSpent', part: 'head' }, ["how long did the head take me"]),
    { text: 'how many hours all in on the gearbox and the clutch', asks: [{ kind: 'timeSpent', part: 'gearbox' }, { kind: 'timeSpent', part: 'clutch' }] },
    ...same({ kind: 'timeSpent', part: 'clutch' }, ["how much of my life has gone into the clutch", "how many evenings have I given the clutch", "How long's that make on the clutch?"]),
    ...same({ kind: 'timeSpent', part: 'grain drill' }, [
      'how many hours have I got in the grain drill', 'how long have I spent on the grain drill', 'total hours on the grain drill', 'How much time have I put into the grain drill?', 'hours on the grain drill so far', 'what hours have I got on the grain drill', 'how many hours so far on the grain drill',
      'tell me the hours on the grain drill', 'how many hours went into the grain drill', 'time spent on the grain drill', 'How long have I been working on the grain drill?', 'what are my hours on the grain drill', 'add up the hours on the grain drill', 'how many hours am I into the grain drill', 'how long did I spend on the grain drill',
    ]),
    ...same({ kind: 'timeSpent', part: 'mill', from: '2026-03-16' }, ['how many hours on the mill since monday', 'how long have i spent on the mill since monday', 'hours on the mill since Monday?']),
    ...same({ kind: 'timeSpent', from: '2026-03-09', to: '2026-03-15' }, ['how many hours did I put in last week', 'how long did I work last week', 'total hours last week']),
    ...same({ kind: 'timeSpent', part: 'truck', from: '2026-02-01', to: '2026-02-28' }, ['how many hours did I spend on the truck in February', 'time spent on the truck in February']),
  ],
  never: ['Hours on the seeder to date, eleven and a half by my book.', 'Total hours for the seeder: 41 and a half.', 'Three hours on the grain drill.', 'Nine hours all told on that sheller.', 'How long it takes is anybody\'s guess.', 'Ran it for two hours.', 'Retorque after two hours running.'],
};

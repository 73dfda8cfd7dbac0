import { type DimCorpus, type DimPhrase } from '../corpus.ts';

const on = (at: string, pairs: readonly (readonly [string, string, string?])[]): DimPhrase<'when'>[] =>
  pairs.map(([text, from, to]) => ({ text, at, value: { from, ...(to === '' ? {} : { to: to ?? from }) } }));

/** Thursday, 19 March 2026. */
const THURSDAY = '2026-03-19T10:00:00-05:00';
export const WHEN_CORPUS: DimCorpus<'when'> = {
  dim: 'when',
  reads: [
    ...on(THURSDAY, [
      ['today', '2026-03-19'], ['tonight', '2026-03-19'], ['this arvo', '2026-03-19'], ['this morning', '2026-03-19'], ['tomorrow', '2026-03-20'], ['tomorrow morning', '2026-03-20'], ['tmrw', '2026-03-20'], ['yesterday', '2026-03-18'], ['last night', '2026-03-18'], ['the day after tomorrow', '2026-03-21'], ['the day before yesterday', '2026-03-17'],
      ['Friday', '2026-03-20'], ['Thursday', '2026-03-26'], ['next Tuesday', '2026-03-24'], ['last Tuesday', '2026-03-17'], ['this Saturday', '2026-03-21'], ['Friday week', '2026-03-27'], ['Tuesday week', '2026-03-31'], ['a week from Friday', '2026-03-27'], ['week from Friday', '2026-03-27'], ['a week on Monday', '2026-03-30'], ['a week from tomorrow', '2026-03-27'], ['tomorrow week', '2026-03-27'], ['a fortnight from Friday', '2026-04-03'], ['a week today', '2026-03-26'],
      ['the weekend', '2026-03-21', '2026-03-22'], ['this weekend', '2026-03-21', '2026-03-22'], ['next weekend', '2026-03-28', '2026-03-29'], ['last weekend', '2026-03-14', '2026-03-15'], ['next week', '2026-03-23', '2026-03-29'], ['last week', '2026-03-09', '2026-03-15'], ['the week after next', '2026-03-30', '2026-04-05'], ['next month', '2026-04-01', '2026-04-30'], ['the rest of the week', '2026-03-19', '2026-03-22'],
      ['the 26th', '2026-03-26'], ['the twenty-sixth', '2026-03-26'], ['the 5th', '2026-04-05'], ['the 31st', '2026-03-31'], ['the nineteenth', '2026-03-19'], ['the twentieth of May', '2026-05-20'], ['May 20', '2026-05-20'], ['20 May', '2026-05-20'], ['May the 20th', '2026-05-20'], ['March 3rd 2027', '2027-03-03'], ['January 5', '2027-01-05'], ['2026-07-01', '2026-07-01'],
      ['end of the month', '2026-03-31'], ['the end of next month', '2026-04-30'], ['the first of next month', '2026-04-01'], ['the start of next week', '2026-03-23'], ['in three weeks', '2026-04-09'], ['in a fortnight', '2026-04-02'], ['in two days', '2026-03-21'], ['three weeks from now', '2026-04-09'], ['two weeks ago', '2026-03-05'], ['a week ago Tuesday', '2026-03-10'],
      ['between Friday and Sunday', '2026-03-20', '2026-03-22'], ['from Monday to Wednesday', '2026-03-23', '2026-03-25'], ['tomorrow through Sunday', '2026-03-20', '2026-03-22'], ['Mon-Wed', '2026-03-23', '2026-03-25'], ['Saturday and Sunday', '2026-03-21', '2026-03-22'], ['since Monday', '2026-03-16', ''], ['since the first', '2026-03-01', ''], ["since New Year's", '2026-01-01', ''],
      ['Christmas', '2026-12-25'], ['Boxing Day', '2026-12-26'], ['Easter', '2026-04-05'], ['Good Friday', '2026-04-03'], ['Thanksgiving', '2026-11-26'],
      ['Friday of next week', '2026-03-27'], ['Tuesday next week', '2026-03-24'], ['Friday of this week', '2026-03-20'], ['the start of the month', '2026-03-01'], ['Saturday after Thanksgiving', '2026-11-28'], ['Friday before Easter', '2026-04-03'],
      ['Wednesday the first', '2026-04-01'], ['Thursday the second', '2026-04-02'], ['Sat the 28th', '2026-03-28'], ['the first Saturday of April', '2026-04-04'], ['the last Sunday in March', '2026-03-29'], ['the second Tuesday of next month', '2026-04-14'], ['the last weekend of March', '2026-03-28', '2026-03-29'],
    ]),
    { text: 'in September', part: 'September', at: THURSDAY, value: { from: '2026-09-01', to: '2026-09-30' } },
    { text: 'should be back on the first', part: 'the first', at: THURSDAY, value: { from: '2026-04-01', to: '2026-04-01' } },
    { text: 'from 3 to 12 April', part: '3 to 12 April', at: THURSDAY, value: { from: '2026-04-03', to: '2026-04-12' } },
    { text: 'Friday at 3pm', at: THURSDAY, value: { from: '2026-03-20', to: '2026-03-20', time: '15:00' } },
    // The year's end, leap days, and the days on which clocks change in North America and Europe: a day is a day.
    ...on('2026-12-31T23:30:00-08:00', [['tomorrow', '2027-01-01'], ['the day after tomorrow', '2027-01-02'], ['next week', '2027-01-04', '2027-01-10'], ['the 2nd', '2027-01-02'], ['end of the month', '2026-12-31'], ['in three weeks', '2027-01-21']]),
    ...on('2028-02-28T21:00:00+01:00', [['tomorrow', '2028-02-29'], ['the day after tomorrow', '2028-03-01'], ['end of the month', '2028-02-29'], ['the 29th', '2028-02-29'], ['in two days', '2028-03-01'], ['a week from tomorrow', '2028-03-07']]),
    ...on('2027-02-28T21:00:00+01:00', [['tomorrow', '2027-03-01'], ['the 29th', '2027-03-29'], ['end of the month', '2027-02-28']]),
    ...on('2026-03-07T23:45:00-05:00', [['tomorrow', '2026-03-08'], ['the day after tomorrow', '2026-03-09'], ['in two days', '2026-03-09'], ['yesterday', '2026-03-06']]),
    ...on('2026-10-24T00:15:00+01:00', [['tomorrow', '2026-10-25'], ['the day after tomorrow', '2026-10-26'], ['a week from tomorrow', '2026-11-01']]),
    ...on('2026-01-31T12:00:00+00:00', [['in a month', '2026-02-28'], ['next month', '2026-02-01', '2026-02-28']]),
  ],
  never: ['the second ring', 'the first coat', 'the third hole', 'I may go', 'sat on the bench', 'march on', 'soon', 'sometime next week', 'one of these days', 'later', 'happy new year', 'the sun is out', 'wed the two halves', 'and we\'d hang the door', 'early next week'],
};

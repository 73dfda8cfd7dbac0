import { type DimCorpus, read } from '../corpus.ts';

export const SPAN_CORPUS: DimCorpus<'span'> = {
  dim: 'span',
  reads: read<'span'>([
    ['two hours', { amount: 2, unit: 'hours' }], ['half an hour', { amount: 0.5, unit: 'hours' }], ['an hour and a quarter', { amount: 1.25, unit: 'hours' }], ['an hour and a half', { amount: 1.5, unit: 'hours' }], ['two and three quarter hours', { amount: 2.75, unit: 'hours' }], ['two and a half hours', { amount: 2.5, unit: 'hours' }],
    ['three quarters of an hour', { amount: 0.75, unit: 'hours' }], ['40 minutes', { amount: 40, unit: 'minutes' }], ['15 mins', { amount: 15, unit: 'minutes' }], ['2 hrs', { amount: 2, unit: 'hours' }], ['two hours and twenty minutes', { amount: 2 + 20 / 60, unit: 'hours' }], ['an hour', { amount: 1, unit: 'hours' }],
    ['a fortnight', { amount: 2, unit: 'weeks' }], ['three weeks', { amount: 3, unit: 'weeks' }], ['seven days', { amount: 7, unit: 'days' }], ['a month', { amount: 1, unit: 'months' }], ['a week', { amount: 1, unit: 'weeks' }], ['50 miles', { amount: 50, unit: 'miles' }], ['fifty miles', { amount: 50, unit: 'miles' }], ['20 hours', { amount: 20, unit: 'hours' }],
    ['a couple of hours', { amount: 2, unit: 'hours' }], ['a half hour', { amount: 0.5, unit: 'hours' }], ['two hours', { amount: 2, unit: 'hours' }], ['a day and a half', { amount: 1.5, unit: 'days' }], ['1.5 hours', { amount: 1.5, unit: 'hours' }], ['three hours an a half', { amount: 3.5, unit: 'hours' }],
  ]),
  never: ['most of the morning', 'a while', 'all day', 'next week', 'hour meter', 'soon', '60 miles an hour'],
};

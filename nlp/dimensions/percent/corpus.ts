import { type DimCorpus, read } from '../corpus.ts';

export const PERCENT_CORPUS: DimCorpus<'percent'> = {
  dim: 'percent',
  reads: read<'percent'>([['75 percent', { value: 75 }], ['seventy per cent', { value: 70 }], ['50%', { value: 50 }], ['7.5 %', { value: 7.5 }], ['six and a quarter percent', { value: 6.25 }], ['fifty-five percent', { value: 55 }], ['80 pct', { value: 80 }]]),
  never: ['half and half', 'a hundred bolts', 'percent', '5 pieces'],
};

import { type DimCorpus, read } from '../corpus.ts';

export const MONEY_CORPUS: DimCorpus<'money'> = {
  dim: 'money',
  reads: [
    ...read<'money'>([
      ['$18', { value: 18 }], ['$36.99', { value: 36.99 }], ['£40', { value: 40 }], ['€12.50', { value: 12.5 }], ['86 dollars', { value: 86 }], ['sixty-two bucks', { value: 62 }], ['forty quid', { value: 40 }], ['12 euros', { value: 12 }],
      ['41 dollars and 50 cents', { value: 41.5 }], ['one hundred and eighty nine dollars', { value: 189 }], ['a hundred and thirty-five dollars for the lot', { value: 135, per: 'lot' }], ['fifty cents', { value: 0.5 }], ['a fiver', { value: 5 }], ['a tenner', { value: 10 }],
      ['6 bucks a foot', { value: 6, per: 'foot' }], ['27 each', { value: 27, per: 'each' }], ['fifteen apiece', { value: 15, per: 'each' }], ['$40 the pair', { value: 40, per: 'pair' }], ['$1,250', { value: 1250 }], ['two grand', { value: 2000 }],
      ['fifty-nine ninety-five', { value: 59.95 }], ['forty one ninety', { value: 41.9 }], ['78p each', { value: 0.78, per: 'each' }], ['thirty one eighty five', { value: 31.85 }], ['twelve fifty', { value: 12.5 }], ['38.75', { value: 38.75 }], ['62.50', { value: 62.5 }],
      ['9 shipping', { value: 9, role: 'shipping' }], ['fourteen carriage', { value: 14, role: 'shipping' }], ['a fiver post', { value: 5, role: 'shipping' }], ['free shipping', { value: 0, role: 'shipping' }], ['no freight', { value: 0, role: 'shipping' }], ['shipping is 12', { value: 12, role: 'shipping' }], ['$8 for postage', { value: 8, role: 'shipping' }],
      ['6 to mail them', { value: 6, role: 'shipping' }], ['15 to put them on the bus', { value: 15, role: 'shipping' }], ['six pound fifty carriage', { value: 6.5, role: 'shipping' }], ['twelve to get it here', { value: 12, role: 'shipping' }], ['six fifty post', { value: 6.5, role: 'shipping' }],
      ['freight thrown in', { value: 0, role: 'shipping' }], ['eats the shipping', { value: 0, role: 'shipping' }], ['with the freight in', { value: 0, role: 'shipping' }], ['including carriage', { value: 0, role: 'shipping' }], ['postage on him', { value: 0, role: 'shipping' }],
      ['one forty each', { value: 140, per: 'each' }], ['two fifteen a foot', { value: 2.15, per: 'foot' }], ['two ninety five each', { value: 2.95, per: 'each' }], ['twelve pound fifty', { value: 12.5 }],
      ['twenty quid core charge', { value: 20, role: 'core' }], ['core charge is 30', { value: 30, role: 'core' }],
    ]),
    { text: 'they want 140 for it', part: '140', value: { value: 140 } },
    { text: 'said 30 even', part: '30 even', value: { value: 30 } },
    { text: 'two dozen hose clamps for 19', part: '19', value: { value: 19 } },
  ],
  never: ['M8 by 1.25', 'ten thou', '40 psi', 'three weeks', 'four bolts', 'six foot of hose', 'check it at 50 miles', '5/8-11', 'grade 5'],
};

import { alike, type DimCorpus, read } from '../corpus.ts';

const v = (value: number) => ({ value });
export const NUMBER_CORPUS: DimCorpus<'number'> = {
  dim: 'number',
  reads: [
    ...read<'number'>([
      ['seven', v(7)], ['twenty-one', v(21)], ['twenty one', v(21)], ['thirty-four', v(34)], ['a hundred', v(100)], ['a hundred and thirty-five', v(135)], ['hundred and ten', v(110)], ['hundred eighty', v(180)], ['one hundred and eighty nine', v(189)], ['two hundred ten', v(210)],
      ['thirty-two hundred', v(3200)], ['two thousand and ten', v(2010)], ['a thousand', v(1000)], ['twelve hundred and fifty', v(1250)], ['1,400', v(1400)], ['34', v(34)], ['6.3', v(6.3)], ['.004', v(0.004)],
      ['six point three', v(6.3)], ['point oh one five', v(0.015)], ['seventeen twenty-five', v(1725)], ['eighteen oh five', v(1805)], ['one seventy-five', v(175)], ['two and a half', v(2.5)], ['two and three quarters', v(2.75)], ['1-1/4', v(1.25)], ['2½', v(2.5)],
      ['two dozen', v(24)], ['a dozen', v(12)], ['half a dozen', v(6)], ['minus three', v(-3)], ['fourty', v(40)], ['ninty', v(90)], ['5 hundred', v(500)],
    ]),
    ...alike<'number'>({ value: 2, about: true }, ['a couple']),
    { text: 'about twelve', part: 'twelve', value: { value: 12, about: true } },
  ],
  never: ['the left one', 'one of them', 'a new one', 'no idea', 'the second ring', 'for good', 'to the bench'],
};

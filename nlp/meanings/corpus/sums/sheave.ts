import { type AskCorpus, sums } from '../phrase.ts';

const A = { d1: 4, d1Unit: 'in', d2: 12, d2Unit: 'in', rpm1: 1725 };
export const SHEAVE_CORPUS: AskCorpus = {
  phrases: [
    { text: "Motor pulley is 5 and a half, shaft pulley is 9, motor turns 1740. What's the shaft doing, and what length belt on 20 inch centers?", asks: [{ kind: 'sum', of: 'sheave', given: { d1: 5.5, d1Unit: 'in', d2: 9, d2Unit: 'in', rpm1: 1740 } }, { kind: 'sum', of: 'belt', given: { d1: 5.5, d1Unit: 'in', d2: 9, d2Unit: 'in', centre: 20, centreUnit: 'in' } }] },
    { text: 'Motor has a 4 inch pulley and runs 1750, I need the fan near 600. What size sheave is that, and at 500?', asks: [{ kind: 'sum', of: 'sheave', given: { d1: 4, d1Unit: 'in', rpm1: 1750, rpm2: 600 } }, { kind: 'sum', of: 'sheave', given: { d1: 4, d1Unit: 'in', rpm1: 1750, rpm2: 500 } }] },
    { text: 'The mill wants to turn 2800. Its sheave is a 5 inch, the engine\'s is 14. What does the engine have to run?', asks: [{ kind: 'sum', of: 'sheave', given: { d1: 14, d1Unit: 'in', d2: 5, d2Unit: 'in', rpm2: 2800 } }] },
    ...sums('sheave', A, [
      'motor runs 1725 with a 4 inch pulley and theres a 12 inch on the saw how fast does the saw turn', 'Motor turns 1725, 4 inch pulley on the motor, 12 inch on the mandrel. What speed does the mandrel run?', "What's the blade speed with a 4 inch motor pulley at 1725 and a 12 inch on the arbor?", '1725 rpm motor, four inch driving a twelve inch, what rpm',
      "The motor's a 1725 and it's got a four inch pulley. The saw has a twelve. What'll the saw do?", 'How many revs does a 12 inch pulley turn driven by a 4 inch at 1725 rpm', 'If the motor does 1725 with a 4 inch sheave what does a 12 inch sheave turn', 'seventeen twenty five motor four inch pulley twelve inch pulley on the pump what does the pump turn', 'work out the shaft speed, 4 inch on the motor at 1725 rpm and 12 inch on the shaft', 'what speed will I get with a 4 inch motor pulley turning 1725 and a 12 inch driven',
    ]),
    ...sums('sheave', { d1: 5, d1Unit: 'in', rpm1: 1750, rpm2: 500 }, ['motor does 1750 with a 5 inch pulley, I want 500 at the mill, what size pulley', "What pulley do I need on the fan to turn 500 off a 5 inch at 1750 rpm?", 'five inch pulley on a 1750 motor and the saw needs 500 what size pulley goes on the saw']),
    ...sums('sheave', { d1: 100, d1Unit: 'mm', d2: 250, d2Unit: 'mm', rpm1: 1440 }, ['100 mm pulley on a 1440 rpm motor, 250 mm on the compressor, how fast does the compressor run', 'motor 1440 rpm 100mm pulley compressor 250mm pulley what speed']),
    { text: 'Engine does 600 with a 9 inch pulley, saw has a 14. What does it turn? And if I put a 10 inch on the engine?', asks: [{ kind: 'sum', of: 'sheave', given: { d1: 9, d1Unit: 'in', d2: 14, d2Unit: 'in', rpm1: 600 } }, { kind: 'sum', of: 'sheave', given: { d1: 10, d1Unit: 'in', d2: 14, d2Unit: 'in', rpm1: 600 } }] },
    { text: 'and with a 12 on the saw?', prior: ['motor runs 1725 with a 4 inch pulley and theres a 10 inch on the saw how fast does the saw turn'], asks: [{ kind: 'sum', of: 'sheave', given: { ...A, d2: 12 } }] },
    { text: 'The countershaft has a 12 inch pulley at 350 rpm and the mortiser a 4 inch. How fast does the mortiser turn? And with a 15 on the countershaft?', asks: [{ kind: 'sum', of: 'sheave', given: { d1: 12, d1Unit: 'in', d2: 4, d2Unit: 'in', rpm1: 350 } }, { kind: 'sum', of: 'sheave', given: { d1: 15, d1Unit: 'in', d2: 4, d2Unit: 'in', rpm1: 350 } }] },
    { text: 'Motor turns 1440 with a 90 millimetre pulley and the fan has one of 280. What does the fan do? Then with one of 315?', asks: [{ kind: 'sum', of: 'sheave', given: { d1: 90, d1Unit: 'mm', d2: 280, d2Unit: 'mm', rpm1: 1440 } }, { kind: 'sum', of: 'sheave', given: { d1: 90, d1Unit: 'mm', d2: 315, d2Unit: 'mm', rpm1: 1440 } }] },
    { text: "Engine pulley is 7 inch, the generator's got a 3 inch and the engine runs 600. What speed is the generator?", asks: [{ kind: 'sum', of: 'sheave', given: { d1: 7, d1Unit: 'in', d2: 3, d2Unit: 'in', rpm1: 600 } }] },
  ],
  never: ['The engine runs 600 now.', 'Put a 12 inch pulley on the saw.', 'Governor is set at 550.', 'Ran it up to 1200 and shut it down.'],
};

import { type AskCorpus, sums } from '../phrase.ts';

const INCH = { d1: 6, d1Unit: 'in', d2: 14, d2Unit: 'in', centre: 30, centreUnit: 'in' };
const MM = { d1: 120, d1Unit: 'mm', d2: 300, d2Unit: 'mm', centre: 700, centreUnit: 'mm' };
export const BELT_CORPUS: AskCorpus = {
  phrases: [
    { text: 'Motor pulley 130 mil, rotor pulley 210, 640 centres. What length of belt?', asks: [{ kind: 'sum', of: 'belt', given: { d1: 130, d1Unit: 'mm', d2: 210, d2Unit: 'mm', centre: 640, centreUnit: 'mm' } }] },
    { text: 'belt on a 5 inch and a 9 inch pulley, centres of twenty inches, how long is the belt and what about 26?', asks: [{ kind: 'sum', of: 'belt', given: { d1: 5, d1Unit: 'in', d2: 9, d2Unit: 'in', centre: 20, centreUnit: 'in' } }, { kind: 'sum', of: 'belt', given: { d1: 5, d1Unit: 'in', d2: 9, d2Unit: 'in', centre: 26, centreUnit: 'in' } }] },
    { text: 'Pulleys 90 mm and 200 mm, and the belt in the drawer is 1500 mm. What centres?', asks: [{ kind: 'sum', of: 'belt', given: { d1: 90, d1Unit: 'mm', d2: 200, d2Unit: 'mm', length: 1500, lengthUnit: 'mm' } }] },
    { text: "engine pulley's five and a half inch, other one's sixteen, 34 inch centres. how long a belt? and if the small one was five inch?", asks: [{ kind: 'sum', of: 'belt', given: { d1: 5.5, d1Unit: 'in', d2: 16, d2Unit: 'in', centre: 34, centreUnit: 'in' } }, { kind: 'sum', of: 'belt', given: { d1: 5, d1Unit: 'in', d2: 16, d2Unit: 'in', centre: 34, centreUnit: 'in' } }] },
    ...sums('belt', INCH, [
      'how long a belt for a 6 inch and a 14 inch pulley on 30 inch centres', 'what length of belt do I need, 6 inch pulley, 14 inch pulley, 30 inches centre to centre', 'six inch and fourteen inch pulleys thirty inches apart what belt', "Pulleys are 6 inch and 14 inch, centres 30 inches. What's the belt length?",
      'belt length for 6 and 14 inch pulleys at 30 inch centers', 'What size belt for a six inch and a fourteen inch sheave, thirty inch centres?', "Motor's got a 6 inch pulley, mill's got a 14, shafts are 30 inches apart. How long is the belt?", 'I want to know how long the belt is on 6 inch and 14 inch pulleys 30 inches apart', 'work out the belt length for a 6 inch and 14 inch pulley with 30 inches between centres', 'centre distance 30 inches, pulleys 6 inch and 14 inch, what does that belt need to be',
    ]),
    ...sums('belt', MM, ['pulleys 120 mm and 300 mm, centre distance 700 mm, how long is the belt', 'How long a belt for 120 and 300 millimetre pulleys at 700 millimetre centres?', 'what length belt 120mm pulley 300mm pulley 700mm centres']),
    ...sums('belt', { d1: 4, d1Unit: 'in', d2: 10, d2Unit: 'in', length: 80, lengthUnit: 'in' }, ["I've an 80 inch belt, pulleys are 4 inch and 10 inch. What centres?", 'what centre distance for a 4 inch and a 10 inch pulley with a belt 80 inches long', "how far apart do I set the shafts for an 80 inch belt on 4 inch and 10 inch pulleys"]),
    { text: 'how long a belt for a 6 inch and a 14 inch pulley on 30 inch centres? And on 32?', asks: [{ kind: 'sum', of: 'belt', given: INCH }, { kind: 'sum', of: 'belt', given: { ...INCH, centre: 32 } }] },
    { text: 'Motor pulley is 5 inch, saw pulley 10, centers 30 inches. How long a belt? What if I shift the motor back to four foot?', asks: [{ kind: 'sum', of: 'belt', given: { d1: 5, d1Unit: 'in', d2: 10, d2Unit: 'in', centre: 30, centreUnit: 'in' } }, { kind: 'sum', of: 'belt', given: { d1: 5, d1Unit: 'in', d2: 10, d2Unit: 'in', centre: 4, centreUnit: 'ft' } }] },
    { text: 'Pulleys are 5 and 10 inch and the belt is 90 inches long. How far apart do I set the shafts? And if I splice it out to 102?', asks: [{ kind: 'sum', of: 'belt', given: { d1: 5, d1Unit: 'in', d2: 10, d2Unit: 'in', length: 90, lengthUnit: 'in' } }, { kind: 'sum', of: 'belt', given: { d1: 5, d1Unit: 'in', d2: 10, d2Unit: 'in', length: 102, lengthUnit: 'in' } }] },
    { text: 'what about if i drag it out to six foot', prior: ['motor pulley is 5 inch, saw pulley 10 inch, centers 5 feet, how long a belt'], asks: [{ kind: 'sum', of: 'belt', given: { d1: 5, d1Unit: 'in', d2: 10, d2Unit: 'in', centre: 6, centreUnit: 'ft' } }] },
    { text: 'it was 180 on the fan not 160, same again', prior: ['Belt for 90 and 160 mm pulleys, 450 mm apart, how long?'], asks: [{ kind: 'sum', of: 'belt', given: { d1: 90, d1Unit: 'mm', d2: 180, d2Unit: 'mm', centre: 450, centreUnit: 'mm' } }] },
    { text: 'Five inch and eleven inch pulleys. I\'ve got the belt at 72 inches. How far apart do I set the shafts?', asks: [{ kind: 'sum', of: 'belt', given: { d1: 5, d1Unit: 'in', d2: 11, d2Unit: 'in', length: 72, lengthUnit: 'in' } }] },
    { text: 'what about a nine in place of the eleven', prior: ['I\'ve a belt 72 inches long, pulleys are 5 and 11 inch. What centres?'], asks: [{ kind: 'sum', of: 'belt', given: { d1: 5, d1Unit: 'in', d2: 9, d2Unit: 'in', length: 72, lengthUnit: 'in' } }] },
  ],
  never: ["Fan belt's tight.", 'The belt is 75 inches long.', 'Belt came off twice.', 'Need belt lacing about six foot.', 'When it came apart the blower belt was crossed.'],
};

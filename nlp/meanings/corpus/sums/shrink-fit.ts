import { type AskCorpus, sums } from '../phrase.ts';

const G = { diameter: 2.75, diameterUnit: 'in', interference: 0.0025, interferenceUnit: 'in', material: 'steel' };
export const SHRINK_FIT_CORPUS: AskCorpus = {
  phrases: [
    { text: 'bush is bronze, two and a quarter across, and a thou and a quarter of squeeze. what heat will take it?', asks: [{ kind: 'sum', of: 'shrinkFit', given: { diameter: 2.25, diameterUnit: 'in', interference: 0.00125, interferenceUnit: 'in', material: 'bronze' } }] },
    { text: 'how hot to shrink on a brass ring no hang on the ring is steel, two inch bore and two thou interference', asks: [{ kind: 'sum', of: 'shrinkFit', given: { diameter: 2, diameterUnit: 'in', interference: 0.002, interferenceUnit: 'in', material: 'steel' } }] },
    { text: 'sleeve in stainless seventy mil diameter, forty microns of interference, how warm must it be', asks: [{ kind: 'sum', of: 'shrinkFit', given: { diameter: 70, diameterUnit: 'mm', interference: 0.04, interferenceUnit: 'mm', material: 'stainless' } }] },
    ...sums('shrinkFit', G, [
      "hub's two and three quarter inch steel with two and a half thou interference, how hot do I get it", 'steel hub 2-3/4 inch 2.5 thou interference how hot', 'How hot do I heat a steel hub, 2 3/4 inch bore, 2.5 thou interference?', 'what temperature for a steel hub two and three quarter inches with two and a half thou interference', 'Steel ring gear, 2.75 inch, two and a half thou tight. How much heat does it need?', 'i have two and a half thou interference on a two and three quarter inch steel hub how hot do i need it', 'how hot must a 2.75 inch steel hub be to go on with 2.5 thou of interference', 'what do I heat a 2-3/4 inch steel hub to for 2.5 thou interference', 'how much heat for a 2.75 inch steel collar with 2.5 thou of interference', 'Want to shrink a steel hub on, 2.75 inches, two and a half thou interference. What temp?',
    ]),
    ...sums('shrinkFit', { diameter: 60, diameterUnit: 'mm', interference: 0.05, interferenceUnit: 'mm', material: 'cast iron' }, ['cast iron pulley 60 mm bore 0.05 mm interference how hot do I get it', 'how hot for a 60 mm cast iron hub with 0.05 mm interference']),
    { text: 'Steel hub, 2.75 inch, 2.5 thou interference. How hot? And with 2 thou?', asks: [{ kind: 'sum', of: 'shrinkFit', given: G }, { kind: 'sum', of: 'shrinkFit', given: { ...G, interference: 0.002 } }] },
    { text: 'Steel collar, three and a quarter bore, two thousandths interference, how hot do I get it?', asks: [{ kind: 'sum', of: 'shrinkFit', given: { diameter: 3.25, diameterUnit: 'in', interference: 0.002, interferenceUnit: 'in', material: 'steel' } }] },
    { text: "What does the hub need to be heated to for a 1.625 bore steel hub with 2 thou interference?", asks: [{ kind: 'sum', of: 'shrinkFit', given: { diameter: 1.625, diameterUnit: 'in', interference: 0.002, interferenceUnit: 'in', material: 'steel' } }] },
  ],
  never: ['Got the hub hot with the torch and the bushing dropped right in.', 'Heated the hub.', 'Engine runs hot.', 'It was hot in the shop.', 'Pressed it in with two thou interference.'],
};

import { type AskCorpus, sums } from '../phrase.ts';

const G = { volts: 6, amps: 11, length: 18, lengthUnit: 'ft', gauge: 14 };
export const VOLT_DROP_CORPUS: AskCorpus = {
  phrases: [
    { text: 'what voltage drop at 12 volts, 14 amps, eight metres of 2.5 mil to the lamps?', asks: [{ kind: 'sum', of: 'voltDrop', given: { volts: 12, amps: 14, length: 8, lengthUnit: 'm', gauge: 2.5, gaugeUnit: 'mm²' } }] },
    { text: 'wiring: 6 mil cable, 20 metres of it, 230 volts, motor draws 12 amps. drop?', asks: [{ kind: 'sum', of: 'voltDrop', given: { volts: 230, amps: 12, length: 20, lengthUnit: 'm', gauge: 6, gaugeUnit: 'mm²' } }] },
    { text: 'voltage drop on 60 feet of ten gauge at 230 and 8 amps', asks: [{ kind: 'sum', of: 'voltDrop', given: { volts: 230, amps: 8, length: 60, lengthUnit: 'ft', gauge: 10 } }] },
    { text: 'run me some numbers work light six volt no twelve volt nine amps twenty five feet of sixteen gauge whats the drop and do it again in twelve gauge', asks: [{ kind: 'sum', of: 'voltDrop', given: { volts: 12, amps: 9, length: 25, lengthUnit: 'ft', gauge: 16 } }, { kind: 'sum', of: 'voltDrop', given: { volts: 12, amps: 9, length: 25, lengthUnit: 'ft', gauge: 12 } }] },
    { text: '32 volt line, 140 feet of number 6, pulling 15 amps. How much goes missing on the way? And suppose I strung number 4 instead.', asks: [{ kind: 'sum', of: 'voltDrop', given: { volts: 32, amps: 15, length: 140, lengthUnit: 'ft', gauge: 6 } }, { kind: 'sum', of: 'voltDrop', given: { volts: 32, amps: 15, length: 140, lengthUnit: 'ft', gauge: 4 } }] },
    ...sums('voltDrop', G, [
      "what's the voltage drop on 18 feet of 14 gauge at 6 volts and 11 amps", '6 volts 11 amps eighteen feet of fourteen gauge how much am i losing', '18 foot of 14 gauge, 6 volt system, 11 amps. Volt drop?', 'How many volts do I lose in 18 feet of 14 gauge, 6 volts, 11 amps?', "headlights draw 11 amps on 6 volts through 18 feet of 14 gauge, what do I lose", 'how much voltage is lost over 18 feet of 14 gauge wire carrying 11 amps at 6 volts', 'I want to know the volt drop, 6 volts, 11 amps, 18 feet of 14 gauge', "what's the drop in 18 ft of 14 ga at 11 amps, 6 volts", 'voltage loss on 18 feet of number 14 wire, 6 volts, 11 amps?', 'fourteen gauge wire eighteen feet long six volts eleven amps whats the drop',
    ]),
    ...sums('voltDrop', { volts: 12, amps: 5, length: 8, lengthUnit: 'm', gauge: 2.5, gaugeUnit: 'mm²' }, ['12 volts, 5 amps, 8 metres of 2.5 square mm, what is the volt drop', 'voltage drop over 8 metres of 2.5 mm² at 12 volts and 5 amps']),
    ...sums('voltDrop', { volts: 12, amps: 20, length: 15, lengthUnit: 'ft' }, ['what gauge wire for 20 amps at 12 volts over 15 feet', 'What size wire do I need for 20 amps, 12 volts, 15 feet?', 'how heavy a wire for 15 feet at 12 volts and 20 amps']),
    { text: 'How much am I losing in 18 feet of 14 gauge at 6 volts, 11 amps? What if I went to 10 gauge?', asks: [{ kind: 'sum', of: 'voltDrop', given: G }, { kind: 'sum', of: 'voltDrop', given: { ...G, gauge: 10 } }] },
    { text: 'and with 12 gauge?', prior: ['voltage drop on 18 feet of 14 gauge at 6 volts and 11 amps?'], asks: [{ kind: 'sum', of: 'voltDrop', given: { ...G, gauge: 12 } }] },
    { text: '24 volts, 10 amps, 20 feet. How much do I lose in 12 gauge? In 10?', asks: [{ kind: 'sum', of: 'voltDrop', given: { volts: 24, amps: 10, length: 20, lengthUnit: 'ft', gauge: 12 } }, { kind: 'sum', of: 'voltDrop', given: { volts: 24, amps: 10, length: 20, lengthUnit: 'ft', gauge: 10 } }] },
    { text: '24 volts, 10 amps, 20 feet of 14 gauge, what is the drop? And what in 12 gauge?', asks: [{ kind: 'sum', of: 'voltDrop', given: { volts: 24, amps: 10, length: 20, lengthUnit: 'ft', gauge: 14 } }, { kind: 'sum', of: 'voltDrop', given: { volts: 24, amps: 10, length: 20, lengthUnit: 'ft', gauge: 12 } }] },
    { text: 'ten gauge then same thing', prior: ['12 volts, 9 amps, 30 feet of 14 gauge, what do I lose'], asks: [{ kind: 'sum', of: 'voltDrop', given: { volts: 12, amps: 9, length: 30, lengthUnit: 'ft', gauge: 10 } }] },
    { text: 'no it was 13 amps, do that again', prior: ['12 volts, 9 amps, 30 feet of 14 gauge, what do I lose'], asks: [{ kind: 'sum', of: 'voltDrop', given: { volts: 12, amps: 13, length: 30, lengthUnit: 'ft', gauge: 14 } }] },
    { text: '6 volt, no, 12, the run is 18 feet of 12 gauge at 7 amps, what is the drop', asks: [{ kind: 'sum', of: 'voltDrop', given: { volts: 12, amps: 7, length: 18, lengthUnit: 'ft', gauge: 12 } }] },
    { text: '12 volts, five lamps at 2 amps so 10 all up, 22 feet of 10 gauge. Drop? Then recompute for 8 gauge.', asks: [{ kind: 'sum', of: 'voltDrop', given: { volts: 12, amps: 10, length: 22, lengthUnit: 'ft', gauge: 10 } }, { kind: 'sum', of: 'voltDrop', given: { volts: 12, amps: 10, length: 22, lengthUnit: 'ft', gauge: 8 } }] },
    { text: "Plough lamp: 20 ft of 14 ga, 12 v, 6 a. Drop?", asks: [{ kind: 'sum', of: 'voltDrop', given: { volts: 12, amps: 6, length: 20, lengthUnit: 'ft', gauge: 14 } }] },
  ],
  never: ['Battery is sitting at 6.3 volts.', 'Voltage drops to 5.9 with the lights on.', 'Ran 18 feet of 14 gauge to the tail light.', 'Dropped the magneto off.', 'need 20 feet of 14 gauge wire'],
};

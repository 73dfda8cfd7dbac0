import { type AskCorpus, sums } from '../phrase.ts';

export const CONVERT_CORPUS: AskCorpus = {
  phrases: [
    { text: '.0625 in = ? mm. 18 N·m = ? lb-in', asks: [{ kind: 'sum', of: 'convert', given: { value: 0.0625, from: 'in', to: 'mm' } }, { kind: 'sum', of: 'convert', given: { value: 18, from: 'N·m', to: 'lb-in' } }] },
    { text: 'what does eleven newton metres come to in inch pounds', asks: [{ kind: 'sum', of: 'convert', given: { value: 11, from: 'N·m', to: 'lb-in' } }] },
    { text: 'what is 17 mil in inches', asks: [{ kind: 'sum', of: 'convert', given: { value: 17, from: 'mm', to: 'in' } }] },
    { text: "seven litres, what's that in pints? and gallons?", asks: [{ kind: 'sum', of: 'convert', given: { value: 7, from: 'L', to: 'pt' } }, { kind: 'sum', of: 'convert', given: { value: 7, from: 'L', to: 'gal' } }] },
    { text: 'forty mil what is that in inches, and two hundred pounds in kilos for the weights', asks: [{ kind: 'sum', of: 'convert', given: { value: 40, from: 'mm', to: 'in' } }, { kind: 'sum', of: 'convert', given: { value: 200, from: 'lb', to: 'kg' } }] },
    { text: "His book's in newton metres and my wrench isn't. What's 30 of them in foot-pounds?", asks: [{ kind: 'sum', of: 'convert', given: { value: 30, from: 'N·m', to: 'lb-ft' } }] },
    { text: 'What, furthermore, is 0.6 of a millimetre expressed in inches?', asks: [{ kind: 'sum', of: 'convert', given: { value: 0.6, from: 'mm', to: 'in' } }] },
    ...sums('convert', { value: 45, from: 'N·m', to: 'lb-ft' }, ['convert 45 newton metres to foot pounds', "what's 45 newton metres in foot pounds", 'how many foot pounds is 45 Nm', '45 newton meters in foot-pounds?', 'forty five newton metres to foot pounds', 'What would 45 newton metres be in foot pounds?', 'turn 45 newton metres into foot pounds for me', 'what is forty-five newton meters as foot pounds', 'how many foot pounds in 45 newton metres', 'I need 45 Nm in foot pounds']),
    ...sums('convert', { value: 0.012, from: 'in', to: 'mm' }, ["what's twelve thou in millimetres", '12 thou in mm?', 'how many millimetres is twelve thou', 'convert twelve thou to millimetres', 'what is .012 inches in metric', 'twelve thou to mm']),
    ...sums('convert', { value: 40, from: 'psi', to: 'bar' }, ['40 psi in bar', 'how many bar is 40 psi', 'convert 40 psi to bar', 'what is 40 psi in bar']),
    ...sums('convert', { value: 12, from: 'L', to: 'qt' }, ['how many quarts is 12 litres', 'convert twelve litres to quarts', "what's 12 liters in quarts"]),
    ...sums('convert', { value: 80, from: '°C', to: '°F' }, ['what is 80 Celsius in Fahrenheit', 'convert 80 C to Fahrenheit', '80 degrees celsius in fahrenheit?']),
    { text: "what's 10 thou in millimetres? And 15 thou?", asks: [{ kind: 'sum', of: 'convert', given: { value: 0.01, from: 'in', to: 'mm' } }, { kind: 'sum', of: 'convert', given: { value: 0.015, from: 'in', to: 'mm' } }] },
    { text: 'convert 10 inches to mm and 3 feet to metres', asks: [{ kind: 'sum', of: 'convert', given: { value: 10, from: 'in', to: 'mm' } }, { kind: 'sum', of: 'convert', given: { value: 3, from: 'ft', to: 'm' } }] },
    { text: '700 inch pounds, what is that in foot pounds? And the jam nut is 18 to the inch, two flats back, how much end play do I get?', asks: [{ kind: 'sum', of: 'convert', given: { value: 700, from: 'lb-in', to: 'lb-ft' } }, { kind: 'sum', of: 'endPlay', given: { pitch: 18, flats: 2 } }] },
    { text: 'what is 22 millimeters in inches and where did i put the gauge glass', asks: [{ kind: 'sum', of: 'convert', given: { value: 22, from: 'mm', to: 'in' } }, { kind: 'where', part: 'gauge glass' }] },
    { text: "I'm converting the Heron's book, 350 inch pounds to newton metres", asks: [{ kind: 'sum', of: 'convert', given: { value: 350, from: 'lb-in', to: 'N·m' } }] },
    { text: "in bar what's 60 psi", asks: [{ kind: 'sum', of: 'convert', given: { value: 60, from: 'psi', to: 'bar' } }] },
    { text: "what's four thou in microns", asks: [{ kind: 'sum', of: 'convert', given: { value: 0.004, from: 'in', to: 'µm' } }] },
  ],
  never: ['It is 34.9 millimetres, so it is an inch and three eighths.', 'Measured 12 thou.', 'Converted it to twelve volts.', 'Changed the oil in the gearbox.', 'Put the bolts in a can.'],
};

import { type AskCorpus, sums } from '../phrase.ts';

/** The further sums of the shop: holes, bolts, fits, wires. */
export const WORKSHOP_CORPUS: AskCorpus = {
  phrases: [
    ...sums('clearanceHole', { size: '1/2-13' }, ['clearance hole for half inch coarse bolt?', 'what drill for a clearance hole on 1/2-13', 'what size clearance hole for a 1/2-13 bolt', 'how big a clearance hole for half inch coarse']),
    ...sums('clearanceHole', { size: 'M10', fit: 'close' }, ['clearance hole for M10, close fit', 'what hole clears an M10 with a close fit', 'M10 close fit clearance hole?']),
    ...sums('clearanceHole', { size: '1/2' }, ['what size hole lets a half inch bolt through with clearance', 'clearance drill for a half inch bolt']),
    ...sums('pipeThread', { size: '1/4' }, ['what drill for quarter inch npt', 'tap drill for 1/4 NPT', 'What size hole for a 1/4 inch pipe tap?', 'drill for a quarter inch pipe thread?']),
    ...sums('pipeThread', { size: '1/2' }, ['what do I drill for half inch NPT', '1/2 NPT what drill', 'how many threads to the inch on half inch pipe thread']),
    ...sums('drillSize', { drill: '#7' }, ['how big is a number seven drill', 'what size is a #7 drill', 'what diameter is a number 7 drill bit']),
    ...sums('drillSize', { drill: 'F' }, ['how big is a letter F drill', 'what size is an F drill']),
    ...sums('substitute', { size: '1/2-13', grade: '5', newGrade: '8' }, ['can I use a grade 8 instead of a grade 5 1/2-13', 'can i put grade 8 half inch coarse in place of grade 5', 'Is a grade 8 okay for a grade 5 in half inch coarse?'].slice(0, 2)),
    ...sums('substitute', { size: '3/8-16', grade: '8', newGrade: '5', joint: 'shear' }, ['can I use a grade 5 shear bolt instead of grade 8, 3/8-16']),
    ...sums('boltStrength', { size: '1/2-13', grade: '5' }, ['what is the proof load of a 1/2-13 grade 5', 'how strong is a half inch coarse grade 5 bolt', 'breaking strength of a 1/2-13 grade 5, what is it']),
    ...sums('isoFit', { diameter: 30, diameterUnit: 'mm', fit: 'H7/g6' }, ['what are the limits for 30 mm H7/g6', 'limits for H7/g6 at 30 mm?', 'what does a 30 mm H7 g6 fit come out at']),
    ...sums('pressFit', { holeLow: 1.25, holeHigh: 1.2505, shaftLow: 1.2512, shaftHigh: 1.2517 }, ['hole is 1.2500 to 1.2505 and the shaft is 1.2512 to 1.2517, how much interference', 'what interference have I got, bore 1.2500 to 1.2505, shaft 1.2512 to 1.2517']),
    ...sums('bushing', { diameter: 1.5, diameterUnit: 'in' }, ['what running clearance for a bronze bushing on a 1.5 inch shaft', 'how much clearance does a bushing want on an inch and a half shaft']),
    ...sums('bearingGrease', { diameter: 80, diameterUnit: 'mm', width: 18, widthUnit: 'mm' }, ['how much grease for a bearing 80 mm outside and 18 mm wide', 'how much grease in an 80 mm bearing 18 mm wide']),
    ...sums('fuse', { amps: 12 }, ['what fuse for 12 amps', 'what size fuse do I need for a 12 amp load', 'how big a fuse for 12 amps']),
    ...sums('fuse', { watts: 55, volts: 12 }, ['what fuse for a 55 watt lamp on 12 volts', '55 watts at 12 volts, what size fuse']),
    ...sums('wireGauge', { gauge: 14 }, ['what is 14 gauge in square mm', 'how thick is 14 gauge wire', 'how many square millimetres is 14 gauge']),
    ...sums('ohmsLaw', { volts: 6, ohms: 1.5 }, ['how many amps at 6 volts through 1.5 ohms', 'what current does 1.5 ohms draw on 6 volts', '6 volts and 1.5 ohms how many amps']),
    ...sums('sixToTwelve', { amps: 4 }, ['what resistor to run a 6 volt 4 amp motor on 12 volts', 'what resistor do I need for a six volt part drawing 4 amps on twelve volts']),
    ...sums('battery', { volts: 6.2 }, ['battery reads 6.2 volts, how charged is it', 'how full is a battery at 6.2 volts', 'what state of charge is 6.2 volts']),
    ...sums('alternatorSpeed', { d1: 6, d1Unit: 'in', d2: 2.5, d2Unit: 'in', rpm1: 1500 }, ['how fast does the alternator turn with a 6 inch crank pulley, 2.5 inch on the alternator, engine at 1500', 'crank pulley 6 inch, alternator pulley 2.5 inch, engine 1500 rpm, what alternator speed']),
  ],
  never: ['Blew a fuse.', 'Put in a 15 amp fuse.', 'Drilled a clearance hole.', 'Battery reads 6.2 volts.', 'Greased the bearing.', 'Cut a half inch pipe thread on it.'],
};

import { told, type ToldCorpus } from './phrase.ts';

const read = (part: string, what: string, value: number, unit?: string, asWas?: boolean): Record<string, unknown> =>
  ({ kind: 'reading', part, what, value, ...(unit ? { unit } : {}), ...(asWas ? { asWas } : {}) });

export const READINGS: ToldCorpus = {
  kind: 'reading',
  phrases: [
    ...told([read('battery bank', 'cells', 16, 'count')], ['Battery bank, sixteen cells.', 'The battery bank has sixteen cells.', 'battery bank 16 cells'].slice(0, 2)),
    ...told([read('top slipper', 'shims', 2, 'count', true), read('bottom slipper', 'shims', 1, 'count', true)], ['As found, the top slipper had two shims and the bottom slipper had one.', 'top slipper had two shims and the bottom slipper had one when I stripped it'], { parts: ['top slipper', 'bottom slipper'] }),
    ...told([read('pinion bearing', 'preload', 1.4, 'N·m')], ['Preload on the pinion bearing is fourteen newton metres, no, what am I saying, one point four newton metres.', 'preload on the pinion bearing is fourteen newton metres no what am i saying one point four newton metres'], { parts: ['pinion bearing'] }),
    ...told([read('coil', 'primary resistance', 2.8, 'Ω')], ["Measured the coil's primary resistance, 2.8 ohms.", "I measured the coil's primary resistance, 2.8 ohms."], { parts: ['coil'] }),
    ...told([read('cage', 'staves', 18, 'count')], ['Counted the staves in the cage: eighteen.'], { parts: ['cage'] }),
    ...told([read('big end', 'shims on the flywheel side', 4, 'count'), read('big end', 'shims on the pump side', 3, 'count')], ['Big end has four shims on the flywheel side and three on the pump side.'], { parts: ['big end'] }),
    ...told([read('grain auger', 'running time', 12.5, 'h')], ["The auger's hour meter just rolled over 12.5.", 'Hour meter on the auger says 12.5.', "12.5 hours on the auger's meter.", 'Meter on the auger reads 12.5 hours.'], { machines: ['grain auger', 'Heron'] }),
    ...told([read('engine', 'running time', 6, 'h')], ['Hour meter on the engine says 6 hours.', 'The hour meter on the engine reads 6.'], { machines: ['grain auger', 'Heron'] }),
    ...told([read('saw blade', 'diameter', 30, 'in'), read('saw blade', 'teeth', 64, 'count')], ['Saw blade is 30 inches in diameter and carries 64 teeth.', 'The saw blade is 30 inches in diameter and has 64 teeth.'], { parts: ['saw blade'] }),
    ...told([read('crankshaft', 'end float', 0.008, 'in')], ['Crankshaft end float is eight thou.', 'crankshaft end float 8 thou', 'Crankshaft end float: 8 thou.', 'The end float on the crankshaft is eight thou.', "Crankshaft's end float is 8 thou.", 'um crankshaft end float eight thou']),
    ...told([read('spindle', 'runout at the nose', 0.0004, 'in'), read('spindle', 'runout at eight inches out', 0.0012, 'in')], ['Spindle runout: four tenths at the nose, a thou and two tenths at eight inches out.'], { parts: ['spindle'] }),
    ...told([read('cylinder', 'bore at the top', 3.503, 'in'), read('cylinder', 'bore at the bottom', 3.498, 'in')], ['Cylinder bore 3.503 at the top, 3.498 at the bottom.', 'cylinder bore: top 3.503, bottom 3.498', 'cylinder bore 3.503 top 3.498 bottom', 'Cylinder bore measures 3.503 top and 3.498 bottom.']),
    ...told([read('number one', 'compression', 95, 'psi'), read('number two', 'compression', 60, 'psi')], ['compression: number one 95 psi, number two 60 psi', 'Compression 95 psi on number one, 60 psi on number two.']),
    ...told([read('number one', 'compression', 95), read('number two', 'compression', 60)], ['compression 95 on one, 60 on two', 'Compression is 95 on number one and 60 on number two.']),
    ...told([read('inlet tappet', 'clearance', 0.012, 'in'), read('exhaust tappet', 'clearance', 0.015, 'in')], ['tappets: inlet 12 thou, exhaust 15', 'tappets inlet 12 thou exhaust 15 thou'].slice(0, 1)),
    ...told([read('front main journal', 'diameter', 1.998, 'in'), read('rear main journal', 'diameter', 1.9965, 'in')], ['Front main journal mics 1.998, rear main journal 1.9965.', 'front main journal 1.998 in, rear main journal 1.9965 in', "mic'd the front main journal at 1.998 in and the rear main journal at 1.9965 in"].slice(0, 2)),
    ...told([read('battery', 'voltage', 12.6, 'V')], ['Battery reads 12.6 V.', 'battery 12.6 volts', 'Battery is at 12.6 volts.', 'The battery shows twelve point six volts.', "Battery's sitting at 12.6 volts."]),
    ...told([read('safety valve', 'lifting pressure', 148, 'psi')], ['Safety valve lifts at 148 psi.', 'The safety valve lifted at 148 psi.'], { parts: ['safety valve'] }),
    ...told([read('thermostat', 'opening temperature', 82, '°C')], ['Thermostat opens at 82 C.', 'thermostat opened at 82 degrees C']),
    ...told([read('steering box', 'play', 0.0625, 'in')], ["There's a sixteenth of play in the steering box.", 'steering box has a sixteenth of an inch of play', 'a sixteenth of an inch of play in the steering box'].slice(0, 2)),
    ...told([read('flywheel', 'runout', 0.006, 'in')], ['Flywheel runs out six thou.', 'The flywheel runs six thou out.', 'flywheel runout 6 thou']),
    ...told([read('crown wheel', 'backlash', 0.009, 'in')], ['Backlash on the crown wheel is nine thou.', 'Crown wheel backlash nine thou.', 'crown wheel has nine thou backlash']),
    ...told([read('brake drum', 'diameter', 10.04, 'in')], ['Brake drum measures 10.040 in.', 'brake drum 10.040, limit 10.060', 'Brake drum is 10.040 in diameter.']),
    ...told([read('front cap', 'shims', 5, 'count', true), read('rear cap', 'shims', 3, 'count', true)], ['As removed, front cap had five shims, rear cap had three.', 'front cap had five shims and rear cap had three when I took it apart', 'shims as found. front cap 5, rear cap 3.'], { parts: ['front cap', 'rear cap'] }),
    ...told([read('plunger knife', 'gap', 0.125, 'in', true)], ['Plunger knife gap was an eighth before teardown.', 'before strip-down the plunger knife gap was 1/8 in'].slice(0, 1), { parts: ['plunger knife'] }),
    ...told([read('pressure switch', 'cut-in', 80, 'psi', true), read('pressure switch', 'cut-out', 120, 'psi', true)], ['Pressure switch, as found: cut-in 80 psi, cut-out 120 psi.'], { parts: ['pressure switch'] }),
    ...told([read('heron', 'running time', 1423, 'h')], ["The Heron's done 1423 hours.", 'Heron hour meter reads 1423.', '1423 hours on the clock'].slice(0, 1), { machines: ['Heron'] }),
    ...told([read('heron', 'running time', 1423, 'h')], ['Hour meter reads 1423.', '1423 hours on the clock', 'hour meter at 1423'].slice(0, 2), { machines: ['Heron'] }),
    ...told([read('radiator cap', 'pressure', 7, 'psi')], ['Radiator cap holds 7 psi.', 'radiator cap holds seven pounds psi'].slice(0, 1)),
    ...told([read('bull gear', 'teeth', 84, 'count')], ['Bull gear has 84 teeth.', 'I counted 84 teeth on the bull gear.', "Bull gear's got 84 teeth."]),
    ...told([read('top ring', 'gap', 0.35, 'mm'), read('second ring', 'gap', 0.9, 'mm')], ['Top ring gap 0.35 mm. Second ring gap 0.90 mm.', 'top ring gap 0.35 mm, second ring gap 0.9 mm'], { parts: ['top ring', 'second ring'] }),
    ...told([read('grate', 'bars', 28, 'count')], ['the grate i counted twenty eight bars', 'the grate i counted twenty eight bars on it']),
  ],
  never: [
    'Two tenths of a thou, for anybody reading this.', "Ram rod's pitted about a foot up from the gland.", 'The chain is a foot too long.', 'Six needles are required, not five.',
    'Book says the end float is eight thou.', 'The manual gives 60 foot-pounds for the head.', 'End float should be eight thou.', 'A fella at coffee claims the gearbox takes thirty quarts.', 'My neighbour reckons the head takes 60 foot pounds.',
    'Need a 3/8 bolt two inches long.', 'Ordered three feet of 5/8 hose.', 'I want the gap at 15 thou.', 'If the end float is over ten thou I will shim it.', 'Going to set the gap to 15 thou.', 'What is 40 thou in millimetres?',
    'Bought a 12 mm drill for 8 dollars.', 'Leave it for 16 hours.', 'Two hours on the radiator.', 'Drilled it out to take a half-inch bolt.', 'Used a quart of oil.', 'Cut four inches off the pipe.', 'The clutch was never right.', 'He wants 40 for it.',
  ],
};

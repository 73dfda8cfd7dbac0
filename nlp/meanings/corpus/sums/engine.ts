import { type AskCorpus, sums } from '../phrase.ts';

/** The further sums of engines, drives, liquids, lifting and paint. */
export const ENGINE_CORPUS: AskCorpus = {
  phrases: [
    ...sums('displacement', { bore: 4, boreUnit: 'in', stroke: 5, strokeUnit: 'in', cylinders: 2 }, ['what is the displacement with a 4 inch bore, 5 inch stroke and 2 cylinders', 'bore 4 inches stroke 5 inches two cylinders whats the displacement', 'how many cubic inches is a two cylinder 4 inch bore by 5 inch stroke']),
    ...sums('compression', { bore: 4, boreUnit: 'in', stroke: 5, strokeUnit: 'in', chamber: 12, chamberUnit: 'cu in' }, ['compression ratio with 4 inch bore, 5 inch stroke and a 12 cubic inch chamber?', 'what is the compression ratio, bore 4 inches, stroke 5 inches, chamber 12 cubic inches']),
    ...sums('ringGap', { bore: 4, boreUnit: 'in' }, ['what ring gap for a 4 inch bore', 'how much end gap should the rings have in a 4 inch bore', 'what should the ring gap be on a four inch bore']),
    ...sums('twoStroke', { fuel: 5, fuelUnit: 'L', ratio: 50 }, ['how much two stroke oil to 5 litres at 50 to 1', 'how much oil for 5 litres of petrol at 50:1', 'how much oil goes in 5 litres at fifty to one mix']),
    ...sums('boiling', { cap: 7, capUnit: 'psi', percent: 50 }, ['what does it boil at with a 7 psi cap and 50 percent antifreeze', 'boiling point with a 7 psi cap, 50 percent', 'at what temperature does a 50 percent mix boil under a 7 psi cap']),
    ...sums('pressureLeak', { pressure1: 40, pressure1Unit: 'psi', pressure2: 35, pressure2Unit: 'psi', time: 10 }, ['went from 40 psi to 35 psi in 10 minutes how big a leak is that', 'pressure fell from 40 psi to 35 psi in ten minutes, how bad is the leak']),
    ...sums('hydraulic', { pressure: 2000, pressureUnit: 'psi', bore: 3, boreUnit: 'in' }, ['how much force does a 3 inch cylinder push at 2000 psi', 'what will a 3 inch ram lift at 2000 psi', 'how much push from a 3 inch bore cylinder at 2000 psi']),
    ...sums('roadSpeed', { rpm: 1500, ratio: 60, radius: 24, radiusUnit: 'in' }, ['what road speed at 1500 rpm, 60 to 1, 24 inch loaded radius', 'how fast does it go at 1500 rpm geared 60 to 1 on a 24 inch radius tyre']),
    ...sums('gearing', { teeth1: 12, teeth2: 36 }, ['what ratio is a 12 tooth driving a 36 tooth', '12 tooth to a 36 tooth sprocket what ratio']),
    ...sums('gearing', { teeth1: 12, teeth2: 36, rpm1: 300 }, ['12 tooth sprocket at 300 rpm driving a 36 tooth, how fast does it turn']),
    ...sums('beltNumber', { section: 'B', length: 45, lengthUnit: 'in' }, ['what B section belt is nearest 45 inches', 'which standard belt, B section, for 45 inches']),
    ...sums('beltTension', { span: 20, spanUnit: 'in', section: 'A' }, ['how much deflection for an A section belt with a 20 inch span', 'what belt tension on a 20 inch span, A section']),
    ...sums('adjustableSheave', { d1: 4, d1Unit: 'in', turns: 2, pitch: 20 }, ['adjustable sheave 4 inch closed, 20 tpi, two turns open, what is the pitch diameter', '4 inch variable pulley opened two turns, 20 threads per inch, what diameter is that']),
    ...sums('slingCapacity', { rating: 2000, ratingUnit: 'lb', angle: 45 }, ['what is a 2000 pound sling good for at 45 degrees', 'sling rated 2000 pounds at 45 degrees, what is it good for']),
    ...sums('twoPoint', { load: 800, loadUnit: 'lb', a: 2, aUnit: 'ft', b: 3, bUnit: 'ft' }, ['800 pounds, balance point 2 feet from one jack and 3 feet from the other, what does each jack carry', 'what is on each end if it weighs 800 pounds and balances 2 feet from one and 3 feet from the other']),
    ...sums('filmThickness', { dry: 2, dryUnit: 'mil', solids: 50 }, ['what wet film for 2 mils dry at 50 percent solids', 'how thick wet for 2 mils dry, 50 percent solids']),
    ...sums('paintMix', { parts: [4, 1, 1], total: 3, totalUnit: 'qt' }, ['4 to 1 to 1, how much hardener for 3 quarts mixed', 'how much of each for 3 quarts total at 4:1:1']),
  ],
  never: ['Compression was 90 pounds.', 'Gapped the rings at sixteen thou.', 'It boiled over.', 'Mixed it fifty to one.', 'Ram lifts fine now.', 'It held 40 psi for ten minutes.'],
};

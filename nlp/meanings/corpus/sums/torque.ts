import { type AskCorpus, sums } from '../phrase.ts';

export const TORQUE_CORPUS: AskCorpus = {
  phrases: [
    { text: 'M12 with pitch 1.75, grade 8.8, dry: what torque?', asks: [{ kind: 'sum', of: 'torque', given: { size: 'M12x1.75', grade: '8.8', surface: 'dry' } }] },
    { text: 'what torque for a 3/4 coarse grade 8 plated, and same bolt with anti-seize', asks: [{ kind: 'sum', of: 'torque', given: { size: '3/4-10', grade: '8', surface: 'plated' } }, { kind: 'sum', of: 'torque', given: { size: '3/4-10', grade: '8', surface: 'anti-seize' } }] },
    { text: 'Head bolts, 1/2 coarse, grade 8, oiled. Number please.', asks: [{ kind: 'sum', of: 'torque', given: { size: '1/2-13', grade: '8', surface: 'oiled' } }] },
    { text: "What do I pull a half-inch fine grade 5 down to, plated? How 'bout dry?", asks: [{ kind: 'sum', of: 'torque', given: { size: '1/2-20', grade: '5', surface: 'plated' } }, { kind: 'sum', of: 'torque', given: { size: '1/2-20', grade: '5', surface: 'dry' } }] },
    ...sums('torque', { size: '5/8-11', grade: '5', surface: 'oiled' }, [
      "what's the torque on a 5/8-11 grade 5, oiled", 'five eighths eleven grade five oiled whats it want', 'How tight do I pull a five-eighths coarse grade 5 bolt with oil on the threads?', 'torque for 5/8 coarse grade 5 oiled',
      'I need the torque for five eighths coarse, grade five, lubed', 'Studs are 5/8-11, grade 5, threads oiled. What torque?', 'how many foot pounds for a five eighths eleven grade five oiled', 'what do I tighten a 5/8 UNC grade 5 bolt to if the threads are oiled',
      'give me the torque on five eighths coarse grade 5 wet', 'what should I torque 5/8-11 grade 5 to, oiled?', 'tell me what to pull a 5/8 coarse grade 5 stud to with oil', 'grade 5, 5/8-11, oil on it, what torque', 'what does a 5/8-11 grade 5 want oiled',
    ]),
    ...sums('torque', { size: 'M12x1.75', grade: '8.8', surface: 'dry' }, [
      'M12 by one seventy-five class eight eight dry what torque', "what's the torque on an M12x1.75 8.8 dry", 'how tight for an M12 by 1.75, class 8.8, dry', 'torque on M12 coarse class 8.8 dry?', 'M12x1.75, class 8.8, dry threads. What do I pull it to?', 'how many newton metres for an M12 coarse 8.8 dry',
    ]),
    ...sums('torque', { size: '1/2-20', grade: '8' }, ['what torque for half inch fine grade 8', 'how tight do half inch fine grade eight bolts go', 'whats a half-inch fine grade 8 torque to']),
    ...sums('torque', { size: '3/8-16', grade: '2', surface: 'plated' }, ['torque on 3/8-16 grade 2 zinc plated', 'three eighths sixteen grade two plated what do i pull it to']),
    ...sums('torque', { size: '7/16-14', grade: '5', surface: 'anti-seize' }, ['what torque for seven sixteenths coarse grade 5 with never-seize', '7/16 coarse, grade 5, copper slip on the threads, how tight?']),
    { text: 'and if its plated', prior: ['what torque for 5/8-11 grade 5 dry'], asks: [{ kind: 'sum', of: 'torque', given: { size: '5/8-11', grade: '5', surface: 'plated' } }] },
    { text: 'What about dry?', prior: ['whats the torque on half inch coarse grade 8 oiled'], asks: [{ kind: 'sum', of: 'torque', given: { size: '1/2-13', grade: '8', surface: 'dry' } }] },
    { text: 'what torque for 1/2-13 grade 5 dry? And for grade 8?', asks: [{ kind: 'sum', of: 'torque', given: { size: '1/2-13', grade: '5', surface: 'dry' } }, { kind: 'sum', of: 'torque', given: { size: '1/2-13', grade: '8', surface: 'dry' } }] },
    { text: 'what torque for M10x1.5 class 10.9 oiled and M8x1.25', asks: [{ kind: 'sum', of: 'torque', given: { size: 'M10x1.5', grade: '10.9', surface: 'oiled' } }, { kind: 'sum', of: 'torque', given: { size: 'M8x1.25', grade: '10.9', surface: 'oiled' } }] },
    { text: 'whats the torque on 3/8 coarse grade 8 dry and what is it if i oil them', asks: [{ kind: 'sum', of: 'torque', given: { size: '3/8-16', grade: '8', surface: 'dry' } }, { kind: 'sum', of: 'torque', given: { size: '3/8-16', grade: '8', surface: 'oiled' } }] },
    { text: 'M8x1.25 class 8.8 whats the torque plated and what would it be with anti seize', asks: [{ kind: 'sum', of: 'torque', given: { size: 'M8x1.25', grade: '8.8', surface: 'plated' } }, { kind: 'sum', of: 'torque', given: { size: 'M8x1.25', grade: '8.8', surface: 'anti-seize' } }] },
    { text: '1/2-13 studs, grade 8, dry. And if I oil them?', asks: [{ kind: 'sum', of: 'torque', given: { size: '1/2-13', grade: '8', surface: 'dry' } }, { kind: 'sum', of: 'torque', given: { size: '1/2-13', grade: '8', surface: 'oiled' } }] },
    { text: 'quarter inch and five sixteenths, both fine, grade eight oiled, what do I pull them to', asks: [{ kind: 'sum', of: 'torque', given: { size: '1/4-28', grade: '8', surface: 'oiled' } }, { kind: 'sum', of: 'torque', given: { size: '5/16-24', grade: '8', surface: 'oiled' } }] },
    { text: 'Cap bolts are M16x2, 10.9, plated. Newton metres, please.', asks: [{ kind: 'sum', of: 'torque', given: { size: 'M16x2', grade: '10.9', surface: 'plated' } }] },
    { text: 'M8x1.25 8.8 dry? 10.9 oiled?', asks: [{ kind: 'sum', of: 'torque', given: { size: 'M8x1.25', grade: '8.8', surface: 'dry' } }, { kind: 'sum', of: 'torque', given: { size: 'M8x1.25', grade: '10.9', surface: 'oiled' } }] },
    { text: 'What torque for 3/8 coarse grade 5 oiled? Same question for 7/16.', asks: [{ kind: 'sum', of: 'torque', given: { size: '3/8-16', grade: '5', surface: 'oiled' } }, { kind: 'sum', of: 'torque', given: { size: '7/16-14', grade: '5', surface: 'oiled' } }] },
    { text: 'whats a 1/2 coarse grd 8 pull to dry, and 5/8 coarse grd 5 plated', asks: [{ kind: 'sum', of: 'torque', given: { size: '1/2-13', grade: '8', surface: 'dry' } }, { kind: 'sum', of: 'torque', given: { size: '5/8-11', grade: '5', surface: 'plated' } }] },
    { text: "What torque for M18s, 8.8, oiled?", asks: [{ kind: 'sum', of: 'torque', given: { size: 'M18', grade: '8.8', surface: 'oiled' } }] },
    { text: "What torque for M14 by 2 bolts, 10.9, dry?", asks: [{ kind: 'sum', of: 'torque', given: { size: 'M14x2', grade: '10.9', surface: 'dry' } }] },
    { text: "What torque for a half inch coarse, sorry, three eighths coarse, grade 8, oiled?", asks: [{ kind: 'sum', of: 'torque', given: { size: '3/8-16', grade: '8', surface: 'oiled' } }] },
    { text: "The hoop bolts are half inch fine, grade five. What would those take oiled?", asks: [{ kind: 'sum', of: 'torque', given: { size: '1/2-20', grade: '5', surface: 'oiled' } }] },
    { text: "what newton metres for M14 class 10.9 dry, and what's 130 N·m in foot-pounds", asks: [{ kind: 'sum', of: 'torque', given: { size: 'M14', grade: '10.9', surface: 'dry' } }, { kind: 'sum', of: 'convert', given: { value: 130, from: 'N·m', to: 'lb-ft' } }] },
  ],
  never: ['Torqued the head to 90 foot-pounds.', 'Retorque after two hours.', 'Put four 5/8 grade 5 bolts in it.', 'Did the big end up to 35 foot-pounds.', 'The lug nuts are 80 foot-pounds.', 'Torque wrench is in the drawer.', 'need four half inch coarse grade 8 bolts'],
};

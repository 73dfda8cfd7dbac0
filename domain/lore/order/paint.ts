import { usual } from './rule.ts';

const SHEET = "paint makers' instructions generally; the product's own sheet beats this";

export const paint = usual('paint', [
  ['degrease *', 'blast *', 'grease is driven into the metal'],
  ['degrease *', 'sand *', 'grease is rubbed into the scratches'],
  ['blast *', 'prime *', 'bare steel is primed the same day', SHEET],
  ['clean *', 'prime *', 'primer holds on clean metal only', SHEET],
  ['clean *', 'paint *', 'paint holds on clean metal only', SHEET],
  ['degrease *', 'prime *', 'primer does not hold on grease', SHEET],
  ['degrease *', 'paint *', 'paint does not hold on grease', SHEET],
  ['blast *', 'paint *', 'blasting would take the paint off again'],
  ['weld *', 'paint *', 'heat burns paint off'],
  ['straighten *', 'paint *', 'hammering cracks a coat'],
  ['weld *', 'prime *', 'heat burns primer off, and paint spoils the weld'],
  ['weld *', 'blast *', 'scale of the weld has to come off too'],
  ['straighten *', 'prime *', 'hammering cracks a coat'],
  ['drill *', 'prime *', 'edges of a hole need primer too'],
  ['mask *', 'prime *', 'threads, faces and bearings stay bare'],
  ['prime *', 'paint *', 'top coat holds on primer', SHEET],
  ['sand *', 'paint *', 'dust in a wet coat stays there'],
  ['seal *', 'paint *', 'seams are closed between primer and top coat'],
  ['paint *', 'unmask *', 'tape comes off when the coat has set'],
  ['paint *', '*', 'backs and edges are out of reach once it is on'],
  ['clean the engine', 'mask the engine', 'tape does not hold on oil'],
  ['paint the engine', 'wiring harness', 'overspray on wires and terminals'],
  ['paint the frame', 'wiring harness', 'overspray on wires and terminals'],
  ['paint the frame', 'fuel line', 'lines and clips lie on the painted frame'],
  ['paint the engine', 'exhaust manifold', 'its own heat-proof coat is put on apart'],
  ['test the engine', 'paint the engine', 'leaks are found on bare iron'],
]);

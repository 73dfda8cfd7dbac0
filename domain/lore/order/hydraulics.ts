import { usual } from './rule.ts';

export const hydraulics = usual('hydraulics', [
  ['clean the hydraulic tank', 'hydraulic pump', 'one chip scores a pump'],
  ['hydraulic pump', 'hydraulic line', 'the lines start at it'],
  ['control valve', 'hydraulic line', 'the lines end on it'],
  ['lift cylinder seal', 'lift cylinder', 'bench work'],
  ['hone the lift cylinder', 'lift cylinder seal', 'a scored bore cuts a fresh seal'],
  ['rockshaft bushing', 'rockshaft', 'the shaft runs in it'],
  ['rockshaft', 'lift arm', 'the arms sit on its splines'],
  ['lift arm', 'lift link', 'the links hang on the arms'],
  ['lift cylinder', 'lift cover', 'it is under the cover'],
  ['hydraulic filter', 'fill the hydraulic tank', 'the first fill carries the dirt'],
  ['hydraulic line', 'fill the hydraulic tank', 'it would run out again'],
  ['fill the hydraulic tank', 'bleed the hydraulics', 'a pump must not run dry'],
  ['bleed the hydraulics', 'test the hydraulics', 'trapped air makes a load drop'],
]);

import { usual } from './rule.ts';

export const sheetMetal = usual('sheet metal', [
  ['try the hood', 'paint the hood', 'holes are moved and edges filed before paint, not after'],
  ['try the fender', 'paint the fender', 'holes are moved and edges filed before paint, not after'],
  ['try the grille', 'paint the grille', 'holes are moved and edges filed before paint, not after'],
  ['drill the dash', 'paint the dash', 'a drill skates on paint and bares the edge'],
  ['fender bracket', 'fender', 'it bolts to the bracket'],
  ['rear wheel', 'fender', 'a wheel swung in scratches a finished fender'],
  ['wiring harness', 'dash', 'the harness is led through before the dash closes the way'],
  ['dash', 'gauge', 'gauges sit in the dash'],
  ['fuel tank', 'hood', 'the tank is under the hood'],
  ['radiator', 'hood', 'the front of the hood rests on the radiator or its shell'],
  ['grille', 'hood', 'the hood is lined up to the grille'],
  ['hood hinge', 'hood', 'it hangs on the hinge'],
  ['start the engine', 'hood', 'leaks of a first run are found with the tin off'],
  ['seat spring', 'seat', 'the seat sits on it'],
  ['fender', 'light', 'the lights bolt to the fenders'],
  ['paint the hood', 'decal', 'decals go on hard paint'],
]);

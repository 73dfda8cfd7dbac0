import { usual } from './rule.ts';

export const ignition = usual('ignition', [
  ['timing gear', 'magneto', 'it is timed to the gears'],
  ['distributor drive', 'distributor', 'its drive sets where the rotor points'],
  ['impulse coupling', 'magneto', 'it sits on the magneto shaft'],
  ['set the points', 'time the ignition', 'the gap moves the timing'],
  ['condenser', 'set the points', 'it is screwed down beside them'],
  ['distributor', 'time the ignition', 'it is turned to time it'],
  ['magneto', 'time the ignition', 'it is turned to time it'],
  ['rotor', 'distributor cap', 'it sits under the cap'],
  ['distributor cap', 'plug wire', 'the wires end in it'],
  ['gap the spark plug', 'spark plug', 'bench work'],
  ['spark plug', 'plug wire', 'the wires end on them'],
  ['ignition coil', 'coil wire', 'it ends on the coil'],
  ['set the valves', 'spark plug', 'the engine turns easily by hand while the plugs are out'],
  ['time the ignition', 'start the engine', 'wildly early it kicks back'],
]);

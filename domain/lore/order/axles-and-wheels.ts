import { usual } from './rule.ts';

export const axlesAndWheels = usual('axles and wheels', [
  ['axle pivot bushing', 'front axle', 'the axle swings on it'],
  ['front axle', 'spindle', 'the spindle hangs in its end'],
  ['spindle', 'wheel hub', 'the hub turns on it'],
  ['bearing cup', 'wheel bearing', 'cup and cone are a pair, and the cup is pressed in first'],
  ['pack the wheel bearing', 'wheel hub', 'grease does not get in afterwards'],
  ['wheel bearing', 'wheel hub', 'the inner one goes in before the hub is on the spindle'],
  ['hub seal', 'wheel hub', 'it is pressed in from behind'],
  ['wheel stud', 'wheel', 'the wheel hangs on them'],
  ['wheel hub', 'wheel', 'the wheel bolts to it'],
  ['adjust the wheel bearing', 'wheel', 'end play is felt and measured at the bare hub'],
  ['paint the rim', 'tire', 'the bead covers the edge of the rim'],
  ['inner tube', 'tire', 'the tube goes in before the second bead'],
  ['tire', 'wheel', 'a tire is mounted and inflated off the machine'],
  ['differential', 'axle shaft', 'the shaft ends in it'],
  ['axle shaft', 'final drive', 'the shaft carries its pinion'],
  ['axle seal', 'wheel hub', 'it is behind the hub'],
  ['final drive', 'rear wheel', 'the wheel hangs on its shaft'],
  ['fender bracket', 'rear wheel', 'its bolts are behind the wheel'],
  ['fill the final drive', 'drive the tractor', 'dry gears score in a few yards'],
  ['rear wheel', 'ballast weight', 'the weights bolt to the wheel'],
]);

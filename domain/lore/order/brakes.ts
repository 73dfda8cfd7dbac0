import { usual } from './rule.ts';

export const brakes = usual('brakes', [
  ['axle seal', 'brake shoe', 'oil on fresh linings ruins them'],
  ['machine the brake drum', 'brake shoe', 'shoes are chosen and arced to the size of the drum'],
  ['rivet the brake lining', 'brake shoe', 'bench work'],
  ['wheel cylinder', 'brake shoe', 'the shoes bear on it'],
  ['brake shoe', 'brake drum', 'the drum covers the shoes'],
  ['brake return spring', 'brake drum', 'the drum covers the springs'],
  ['master cylinder', 'brake line', 'the lines start at it'],
  ['wheel cylinder', 'brake line', 'the lines end on it'],
  ['brake line', 'bleed the brakes', 'a closed system first'],
  ['adjust the brakes', 'bleed the brakes', 'shoes far from the drum hide air in the pedal'],
  ['brake drum', 'adjust the brakes', 'shoes are set to the drum'],
  ['brake cross-shaft', 'brake pedal', 'the pedal hangs on it'],
  ['brake pedal', 'brake rod', 'the rod ends on it'],
  ['brake rod', 'adjust the brakes', 'both sides are set by their rods'],
  ['brake drum', 'rear wheel', 'it is behind the wheel'],
  ['adjust the brakes', 'drive the tractor', 'it must stop before it goes'],
]);

import type { UsualLook } from '../model/answer.ts';
import { actOf, type Act } from './act.ts';
import { isMeant } from './match.ts';
import { COMMON_PRACTICE } from './order/rule.ts';

/** What is looked at again after an act, and when: hours are running hours of the engine. */
type Recheck = Omit<UsualLook, 'machine'>;

type Row = readonly [act: string, again: string, part: string, after: number, unit: Recheck['unit'], why: string, source?: string];

const ONE_MANUAL = 'one maker\'s manual: 3 h, 10 h, then daily for a week; others 1 h and 10 h';
const BREAK_IN = 'one maker\'s manual 50 h, another 5 h; 20 to 50 h for a rebuilt engine is common practice, no source';

const ROWS: readonly Row[] = [
  ['wheel', 'tighten', 'wheel nuts', 3, 'hours', 'nuts settle into fresh paint and seats', ONE_MANUAL],
  ['wheel', 'tighten', 'wheel nuts', 10, 'hours', 'and once more', ONE_MANUAL],
  ['cylinder head', 'tighten', 'cylinder head', 1, 'hours', 'the gasket settles with the first heat; some gaskets must not be touched again: its maker says'],
  ['tighten the cylinder head', 'tighten', 'cylinder head', 1, 'hours', 'the gasket settles with the first heat; some gaskets must not be touched again: its maker says'],
  ['set the valves', 'check', 'valve clearance', 10, 'hours', 'seats and rockers bed in'],
  ['engine', 'change', 'engine oil', 20, 'hours', 'the first oil carries the first wear', BREAK_IN],
  ['fan belt', 'adjust', 'fan belt', 5, 'hours', 'a new belt stretches in its first hours'],
  ['drive belt', 'adjust', 'drive belt', 5, 'hours', 'a new belt stretches in its first hours'],
  ['radiator hose', 'tighten', 'hose clamps', 1, 'hours', 'hoses settle with the first heat'],
  ['fill the radiator', 'check', 'coolant level', 1, 'hours', 'trapped air comes out'],
  ['fill the radiator', 'test', 'antifreeze', 12, 'months', 'before each winter'],
  ['exhaust manifold', 'tighten', 'exhaust manifold nuts', 2, 'hours', 'its gasket settles with the first heat'],
  ['carburetor', 'check', 'fuel leaks', 1, 'hours', 'gaskets and olives settle'],
  ['fuel line', 'check', 'fuel leaks', 1, 'hours', 'olives settle'],
  ['seal the fuel tank', 'check', 'fuel filter', 5, 'hours', 'flakes show there first'],
  ['set the points', 'check', 'points gap', 10, 'hours', 'a new rubbing block beds in'],
  ['time the ignition', 'check', 'timing', 10, 'hours', 'the gap, and timing with it, moves while points bed in'],
  ['adjust the brakes', 'adjust', 'brakes', 5, 'hours', 'new linings bed in'],
  ['bleed the brakes', 'check', 'brake fluid', 1, 'weeks', 'a slow leak shows by then'],
  ['adjust the clutch', 'adjust', 'clutch free play', 5, 'hours', 'a new disc beds in and the play goes'],
  ['adjust the wheel bearing', 'check', 'wheel bearing end play', 10, 'hours', 'cups settle'],
  ['pack the wheel bearing', 'pack', 'wheel bearing', 12, 'months', 'yearly or every 500 hours'],
  ['set the toe-in', 'check', 'toe-in', 10, 'hours', 'joints settle'],
  ['tie rod', 'tighten', 'tie rod ends', 5, 'hours', 'tapers settle'],
  ['steering box', 'check', 'steering box oil', 5, 'hours', 'a fresh seal shows a leak by then'],
  ['fill the final drive', 'check', 'final drive oil level', 5, 'hours', 'oil creeps into bearings and corners'],
  ['fill the hydraulic tank', 'change', 'hydraulic filter', 10, 'hours', 'the first hours carry the dirt'],
  ['hydraulic line', 'check', 'hydraulic leaks', 1, 'hours', 'fittings settle under pressure'],
  ['battery', 'check', 'battery terminals', 1, 'months', 'lead creeps'],
  ['generator', 'check', 'charging', 5, 'hours', 'brushes bed in'],
  ['flywheel', 'check', 'flywheel bolts', 10, 'hours', 'where an opening lets you reach them'],
  ['tire', 'check', 'tire pressure', 1, 'weeks', 'a fresh tube that leaks shows by then'],
];

const read = ROWS.map((row) => ({ row, act: actOf(row[0]) }));

/** The usual rechecks after an act. */
export function usualRechecks(one: Act): Recheck[] {
  return read.filter(({ act }) => isMeant(one, act)).map(({ row: [, again, part, after, unit, why, source = COMMON_PRACTICE] }) => ({ do: again, part, after, unit, why, source }));
}

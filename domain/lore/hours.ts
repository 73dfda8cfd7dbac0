import type { ThreePoint } from '../plan/three-point.ts';
import { rememberedBy } from '../model/remembered.ts';
import { actKey, actOf, type Act } from './act.ts';
import { isKindOf } from './words.ts';

/** Usual hours of one person, at best, likely, at worst. All of it common practice, no source: the person's own log beats it. */
type Row = readonly [verbs: readonly string[] | 'fit' | 'any', parts: readonly string[] | 'any', low: number, likely: number, high: number];

/** The first row that fits counts, so the particular come first. */
const ROWS: readonly Row[] = [
  [['rebuild'], ['engine'], 30, 60, 120],
  [['rebuild'], ['gearbox', 'hydraulic pump', 'rear axle', 'differential'], 8, 16, 40],
  [['rebuild'], ['carburetor', 'water pump', 'master cylinder', 'wheel cylinder'], 1.5, 3, 6],
  [['rebuild'], ['magneto', 'distributor', 'generator', 'starter', 'governor'], 2, 4, 8],
  [['rebuild'], 'any', 2, 5, 12],
  [['paint', 'prime'], ['engine', 'frame', 'tractor', 'machine', 'chassis', 'gearbox'], 2, 4, 7],
  [['paint', 'prime', 'varnish', 'coat'], ['wheel', 'rim', 'hood', 'fender', 'grille'], 0.75, 1.5, 3],
  [['paint', 'prime', 'varnish', 'coat'], 'any', 0.4, 0.75, 1.5],
  [['blast'], ['frame', 'wheel', 'rim', 'rear wheel'], 1.5, 3, 6],
  [['blast', 'sand', 'derust', 'scrape'], 'any', 0.5, 1.5, 4],
  [['straighten', 'patch'], ['hood', 'fender', 'grille'], 2, 5, 12],
  [['weld', 'braze', 'solder'], 'any', 0.5, 1.5, 4],
  [['mask'], 'any', 0.5, 1, 2.5],
  [['unmask'], 'any', 0.2, 0.4, 1],
  [['clean', 'degrease'], ['engine', 'gearbox', 'frame', 'tractor', 'machine', 'chassis', 'block'], 1.5, 3, 6],
  [['clean', 'degrease', 'wash'], 'any', 0.3, 0.75, 2],
  [['wire'], ['tractor', 'machine', 'engine'], 6, 12, 24],
  [['bleed'], 'any', 0.5, 1, 2.5],
  [['adjust', 'time', 'set'], 'any', 0.3, 0.75, 2],
  [['tighten', 'torque'], 'any', 0.1, 0.3, 0.75],
  [['check', 'measure', 'test'], 'any', 0.2, 0.5, 1.5],
  [['drain', 'fill', 'flush'], 'any', 0.25, 0.6, 1.5],
  [['grease', 'oil', 'pack'], 'any', 0.2, 0.4, 1],
  [['hone', 'bore', 'ream', 'lap', 'machine'], 'any', 0.75, 2, 5],
  [['seal', 'glue', 'coat'], 'any', 0.3, 0.75, 1.5],
  [['free', 'extract', 'soak'], 'any', 0.3, 1.5, 6],
  [['make', 'fabricate'], 'any', 1, 3, 8],
  [['order', 'buy', 'collect', 'send'], 'any', 0.2, 0.5, 2],
  [['start'], 'any', 0.5, 2, 6],
  [['remove'], ['engine', 'gearbox', 'rear axle', 'front axle'], 2.5, 5, 12],
  [['remove'], 'any', 0.3, 0.75, 2.5],
  ['fit', ['engine', 'gearbox', 'rear axle', 'front axle', 'final drive'], 3, 6, 14],
  ['fit', ['cylinder head', 'crankshaft', 'wiring harness', 'clutch disc', 'oil pan'], 1.5, 3, 7],
  ['fit', ['rear wheel', 'radiator', 'fuel tank', 'steering box', 'water pump', 'hydraulic pump', 'exhaust manifold', 'brake shoe', 'tire'], 0.75, 1.5, 4],
  ['fit', ['hood', 'fender', 'grille', 'dash'], 0.75, 2, 5],
  ['fit', ['belt', 'hose', 'decal', 'gauge', 'light', 'battery', 'spark plug', 'cap', 'knob', 'clip', 'gasket'], 0.2, 0.5, 1.25],
  ['fit', 'any', 0.4, 1, 2.5],
  ['any', 'any', 0.5, 1, 3],
];

/** How long an act usually takes. */
export const usualHours = rememberedBy(actKey, (one: Act): ThreePoint => {
  const verb = one.off ? 'remove' : one.verb;
  const [, , low, likely, high] = ROWS.find(([verbs, parts]) => isVerbIn(verbs, verb) && isPartIn(parts, one))!;
  return { low, likely, high };
});

const isVerbIn = (verbs: Row[0], verb: string | undefined) => verbs === 'any' || (verbs === 'fit' ? verb === undefined : verb !== undefined && verbs.includes(verb));
const isPartIn = (parts: Row[1], { words }: Act) => parts === 'any' || parts.some((part) => isKindOf(words, actOf(part).words));

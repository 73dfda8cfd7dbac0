import { nameWords } from '../model/names.ts';
import type { Act } from './act.ts';
import { COMMON_PRACTICE } from './order/rule.ts';

/** How long a product is left alone at about 20 °C. Hours. Its sheet beats all of this; cold and damp make it longer. */
interface Cure {
  /** What waits: `cure`, `dry`, `cool`, `soak`. */
  lag: 'cure' | 'dry' | 'cool' | 'soak';
  /** Until the next coat of the same can go on. */
  recoat: number;
  /** Until it can be handled, fitted, filled or tightened against. */
  handle: number;
  /** Until it is as hard or as fast as it gets. */
  full: number;
  source: string;
}

type Row = readonly [words: readonly string[], lag: Cure['lag'], recoat: number, handle: number, full: number];

/** By words of the product, the more particular first. All common practice, no source. */
const PRODUCTS: readonly Row[] = [
  [['epoxy', 'primer'], 'cure', 4, 24, 168],
  [['etch', 'primer'], 'dry', 1, 4, 24],
  [['zinc', 'primer'], 'dry', 4, 24, 72],
  [['rust', 'converter'], 'dry', 4, 24, 48],
  [['primer'], 'dry', 4, 16, 72],
  [['two-pack'], 'cure', 4, 24, 168],
  [['urethane'], 'cure', 4, 24, 168],
  [['enamel'], 'dry', 24, 48, 336],
  [['heat', 'paint'], 'dry', 1, 24, 48],
  [['lacquer'], 'dry', 1, 12, 168],
  [['varnish'], 'dry', 24, 48, 168],
  [['bed', 'liner'], 'cure', 4, 24, 168],
  [['tank', 'sealer'], 'cure', 24, 96, 168],
  [['seam', 'sealer'], 'cure', 2, 24, 72],
  [['silicone'], 'cure', 1, 24, 24],
  [['gasket', 'maker'], 'cure', 1, 24, 24],
  [['gasket', 'sealer'], 'dry', 0.25, 2, 24],
  [['thread', 'sealer'], 'cure', 0, 4, 24],
  [['thread', 'locker'], 'cure', 0, 1, 24],
  [['threadlocker'], 'cure', 0, 1, 24],
  [['retainer'], 'cure', 0, 4, 24],
  [['contact', 'cement'], 'dry', 0.5, 24, 48],
  [['epoxy'], 'cure', 4, 16, 72],
  [['filler'], 'cure', 0.5, 1, 24],
  [['penetrating', 'oil'], 'soak', 12, 24, 72],
  [['paint'], 'dry', 24, 48, 336],
];

const VERBS: Readonly<Record<string, Row>> = {
  prime: [[], 'dry', 4, 16, 72],
  paint: [[], 'dry', 24, 48, 336],
  varnish: [[], 'dry', 24, 48, 168],
  coat: [[], 'dry', 12, 24, 168],
  seal: [[], 'cure', 1, 24, 24],
  glue: [[], 'cure', 1, 24, 48],
  weld: [[], 'cool', 0, 1, 1],
  braze: [[], 'cool', 0, 1, 1],
  soak: [[], 'soak', 12, 24, 72],
  degrease: [[], 'dry', 0, 1, 2],
  clean: [[], 'dry', 0, 0.5, 2],
};

/** The usual cure after an act, by what was used, else by the verb; `undefined` where nothing has to wait. */
export function usualCure(one: Act, product?: string): Cure | undefined {
  const words = new Set(product ? nameWords(product) : []);
  const row = PRODUCTS.find(([needed]) => needed.every((word) => words.has(word))) ?? VERBS[one.verb ?? ''];
  if (!row) return undefined;
  const [, lag, recoat, handle, full] = row;
  return { lag, recoat, handle, full, source: COMMON_PRACTICE };
}

/** How long the next act on the same part waits after this one: a coat on a coat waits for `recoat`, anything else for `handle`. */
export function lagBetween(first: Act, then: Act, product?: string): { hours: number; lag: Cure['lag'] } | undefined {
  const cure = usualCure(first, product);
  if (!cure) return undefined;
  const coats = new Set(['prime', 'paint', 'varnish', 'coat', 'sand', 'seal']);
  const hours = coats.has(first.verb ?? '') && coats.has(then.verb ?? '') ? cure.recoat : cure.handle;
  return hours > 0 ? { hours, lag: cure.lag } : undefined;
}

import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import type { Entry } from '../../../domain/model/entry.ts';

/** A made-up shop of any length, the same for the same seed: six machines, some 1,200 names, the mix of kinds of a busy person. */
const MACHINES = ['Heron', 'winch', 'hay press', 'grain drill', 'stationary engine', 'old trailer'];
const SIDES = ['left', 'right', 'front', 'rear', 'upper', 'lower'];
const NOUNS = ['radiator', 'fan', 'carburettor', 'magneto', 'clutch plate', 'brake drum', 'axle', 'wheel bearing', 'fuel tank', 'manifold', 'water pump', 'governor', 'hood', 'fender', 'seat spring',
  'track rod', 'drag link', 'king pin', 'piston', 'valve', 'pushrod', 'camshaft', 'oil pump', 'starter', 'dynamo', 'belt', 'hose', 'pulley', 'gear lever', 'draw bar', 'lift arm', 'cylinder', 'gasket', 'bushing'];
const DO = ['clean', 'paint', 'weld', 'grind', 'straighten', 'polish', 'prime', 'grease'];
const SOURCES = ['belt supply', 'the bearing place', 'scrap yard', 'steel supplier', 'neighbour'];
const SKIES = ['rain', 'dry', 'frost', 'wind'] as const;
const STATES = ['off', 'off', 'tried', 'temporary', 'on', 'tight'] as const;

/** Kinds with how often they come in a hundred entries. */
const MIX: [Entry['kind'], number][] = [['work', 24], ['fit', 14], ['finding', 11], ['reading', 11], ['job', 9], ['want', 6], ['hours', 5], ['stow', 5], ['remark', 4], ['order', 3], ['arrival', 2],
  ['bought', 2], ['recheck', 1], ['quote', 1], ['wait', 1]];
const RARE: Entry['kind'][] = ['out', 'weather', 'hands', 'rule', 'amend'];

export interface MadeUpNote { key: string; at: string; machine: string; text: string; entries: Entry[] }

export function* madeUpShop(notes: number, seed = 1): Generator<MadeUpNote> {
  const random = xoroshiro128plus(seed);
  const below = (n: number): number => uniformInt(random, 0, n - 1);
  const pick = <T>(list: readonly T[]): T => list[below(list.length)]!;
  const start = Date.UTC(2016, 0, 4, 8);
  for (let i = 0; i < notes; i++) {
    const at = new Date(start + i * 45 * 60_000).toISOString().replace(/\.\d+Z$/, '+00:00');
    const part = `${pick(SIDES)} ${pick(NOUNS)}`;
    const entries = [made(pick, below, part, at)];
    if (below(3) === 0) entries.push(made(pick, below, part, at));
    yield { key: `made-up:${seed}:${i}`, at, machine: pick(MACHINES), text: `${part}: ${JSON.stringify(entries[0])}`.slice(0, 110), entries };
  }
}

function kindOf(below: (n: number) => number): Entry['kind'] {
  let at = below(100);
  for (const [kind, share] of MIX) if ((at -= share) < 0) return kind;
  return RARE[below(RARE.length)]!;
}

function made(pick: <T>(list: readonly T[]) => T, below: (n: number) => number, part: string, at: string): Entry {
  const price = 5 + below(20_000) / 100;
  const later = (days: number): string => new Date(Date.parse(at) + days * 86_400_000).toISOString().slice(0, 10);
  const kind = kindOf(below);
  switch (kind) {
    case 'fit': return { kind, part, state: pick(STATES), with: 'four bolts' };
    case 'finding': return { kind, part, condition: 'worn at one end', verdict: pick(['good', 'reuse', 'watch', 'repair', 'replace'] as const) };
    case 'reading': return below(8) === 0 ? { kind, part: 'engine', what: 'running time', value: Date.parse(at) / 3.6e8 - 3_000, unit: 'h' }
      : { kind, part, what: pick(['end play', 'gap', 'shims']), value: below(40) / 1000, unit: 'in', asWas: below(2) === 0 };
    case 'work': return { kind, part, action: pick(DO), product: 'wire wheel' };
    case 'job': return { kind, part, do: pick(DO) };
    case 'want': return { kind, item: part, qty: 1 + below(4), for: below(3) ? undefined : `${pick(SIDES)} ${pick(NOUNS)}` };
    case 'order': return { kind, item: part, source: pick(SOURCES), price, shipping: 9, expected: later(7) };
    case 'bought': return { kind, item: part, source: pick(SOURCES), price };
    case 'quote': return { kind, item: part, source: pick(SOURCES), price, shipping: 12 };
    case 'arrival': return { kind, item: part };
    case 'rule': return { kind, first: `${pick(DO)} the ${part}`, then: `${pick(SIDES)} ${pick(NOUNS)}` };
    case 'recheck': return { kind, part, do: 'check', after: 20, unit: pick(['hours', 'weeks'] as const) };
    case 'stow': return { kind, part, where: `shelf ${below(9)}` };
    case 'out': return { kind, part, where: 'machine shop', until: later(10), do: 'grind' };
    case 'wait': return { kind, part, after: 2, unit: 'days' };
    case 'hours': return { kind, part, hours: (1 + below(12)) / 4 };
    case 'hands': return { kind, when: later(3), for: `lift the ${part}` };
    case 'weather': return { kind, sky: pick(SKIES), from: later(1), to: later(2) };
    case 'amend': return below(2) ? { kind, undo: true } : { kind, field: 'part', value: part };
    case 'remark': return { kind, text: `the ${part} was there with two washers behind it` };
  }
}

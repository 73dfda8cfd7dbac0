import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import type { Entry } from '../../../domain/model/entry.ts';

/**
 * A made-up shop of any length, the same for the same seed: six machines, some 1,200 names, the mix of kinds of a busy person who
 * finishes what is begun: some dozens of things are open at any time, however long the log.
 */
const MACHINES = ['Heron', 'winch', 'hay press', 'grain drill', 'stationary engine', 'old trailer'];
const SIDES = ['left', 'right', 'front', 'rear', 'upper', 'lower'];
const NOUNS = ['radiator', 'fan', 'carburettor', 'magneto', 'clutch plate', 'brake drum', 'axle', 'wheel bearing', 'fuel tank', 'manifold', 'water pump', 'governor', 'hood', 'fender', 'seat spring',
  'track rod', 'drag link', 'king pin', 'piston', 'valve', 'pushrod', 'camshaft', 'oil pump', 'starter', 'dynamo', 'belt', 'hose', 'pulley', 'gear lever', 'draw bar', 'lift arm', 'cylinder', 'gasket', 'bushing'];
const DO = ['clean', 'paint', 'weld', 'grind', 'straighten', 'polish', 'prime', 'grease'];
const SOURCES = ['belt supply', 'the bearing place', 'scrap yard', 'steel supplier', 'neighbour'];
const SKIES = ['rain', 'dry', 'frost', 'wind'] as const;
const STATES = ['off', 'off', 'temporary', 'on', 'tight'] as const;
const VERDICTS = ['good', 'reuse', 'watch', undefined, 'repair', 'replace'] as const;
/** So many jobs, wants, rechecks and temporary fits of a machine are open before the oldest is seen to. */
const OPEN = 8;

/** Kinds with how often they come in a hundred entries. */
const MIX: [Entry['kind'], number][] = [['work', 24], ['fit', 14], ['finding', 11], ['reading', 11], ['job', 9], ['want', 5], ['hours', 5], ['stow', 5], ['remark', 4], ['order', 3], ['arrival', 3],
  ['bought', 2], ['recheck', 1], ['quote', 1], ['wait', 1]];
const RARE: Entry['kind'][] = ['out', 'weather', 'hands', 'rule', 'amend'];

export interface MadeUpNote { key: string; at: string; machine: string; text: string; entries: Entry[] }

/** What is open on a machine, oldest first: what a note of a finishing kind is about. */
interface Open { jobs: { part: string; do: string }[]; wants: string[]; orders: string[]; rechecks: string[]; temporary: string[]; faults: string[] }
const noneOpen = (): Open => ({ jobs: [], wants: [], orders: [], rechecks: [], temporary: [], faults: [] });

export function* madeUpShop(notes: number, seed = 1): Generator<MadeUpNote> {
  const random = xoroshiro128plus(seed);
  const below = (n: number): number => uniformInt(random, 0, n - 1);
  const pick = <T>(list: readonly T[]): T => list[below(list.length)]!;
  const open = new Map(MACHINES.map(m => [m, noneOpen()]));
  const start = Date.UTC(2016, 0, 4, 8);
  for (let i = 0; i < notes; i++) {
    const at = new Date(start + i * 45 * 60_000).toISOString().replace(/\.\d+Z$/, '+00:00');
    const part = `${pick(SIDES)} ${pick(NOUNS)}`;
    const machine = pick(MACHINES);
    const entries = Array.from({ length: below(3) === 0 ? 2 : 1 }, () => finishing(made(pick, below, part, at), open.get(machine)!));
    yield { key: `made-up:${seed}:${i}`, at, machine, text: `${part}: ${JSON.stringify(entries[0])}`.slice(0, 110), entries };
  }
}

/** Turns an entry of a finishing kind to what is open longest, and remembers what it opens. */
function finishing(entry: Entry, open: Open): Entry {
  const oldest = <T>(list: T[], most = OPEN): T | undefined => (list.length > most ? list.shift() : undefined);
  if (entry.kind === 'job') open.jobs.push(entry as { part: string; do: string });
  if (entry.kind === 'rule') open.jobs.push({ do: entry.first.split(' the ')[0]!, part: entry.first.split(' the ')[1]! });
  if (entry.kind === 'want') open.wants.push(entry.item);
  if (entry.kind === 'recheck') open.rechecks.push(entry.part!);
  if (entry.kind === 'finding' && (entry.verdict === 'repair' || entry.verdict === 'replace')) open.faults.push(entry.part);
  if (entry.kind === 'order') { const item = oldest(open.wants) ?? entry.item; open.orders.push(item); return { ...entry, item }; }
  if (entry.kind === 'arrival') return { ...entry, item: oldest(open.orders, 3) ?? entry.item };
  if (entry.kind === 'bought') return { ...entry, item: oldest(open.wants) ?? entry.item };
  if (entry.kind === 'fit') return fitOf(entry, open, oldest);
  if (entry.kind !== 'work') return entry;
  const looked = oldest(open.rechecks);
  if (looked) return { ...entry, part: looked, action: 'check' };
  const job = oldest(open.jobs);
  return job ? { ...entry, part: job.part, action: job.do } : entry;
}

function fitOf(entry: Extract<Entry, { kind: 'fit' }>, open: Open, oldest: (list: string[]) => string | undefined): Entry {
  const done = oldest(open.faults) ?? oldest(open.temporary);
  if (done) return { ...entry, part: done, state: 'on' };
  if (entry.state === 'temporary') open.temporary.push(entry.part);
  return entry;
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
    case 'finding': return { kind, part, condition: 'worn at one end', verdict: pick(VERDICTS) };
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

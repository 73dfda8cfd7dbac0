import type { EntryOf } from '../model/entry.ts';
import type { Ref } from '../model/stored.ts';

/**
 * The state of the shop: what is true now, folded from the log. It holds what answers need at once and stays small;
 * what was said word for word is asked of the store (see past.ts). `id` is always the number of the entry that said so.
 * Moments `at` are ISO with offset, days YYYY-MM-DD.
 */
export interface Said { id: number; at: string }

type FitState = EntryOf<'fit'>['state'];
interface FitNow extends Said { state: FitState; with?: string }
interface FindingNow extends Said { condition: string; verdict?: EntryOf<'finding'>['verdict'] }
export interface ReadingNow extends Said { what: string; value: number; unit?: string }
/** The latest work of one kind on a thing; `done` false: only begun. */
interface WorkNow extends Said { action: string; product?: string; done: boolean }
interface OpenJob extends Said { do: string; begun?: boolean }
interface Place extends Said { where: string }
export interface OutNow extends Said { where?: string; until?: string; do?: string }
/** `until`: a day, or an ISO moment for spans of hours. */
interface WaitNow extends Said { until?: string }
/** `looked`: the latest look at the thing since (a finding, a reading); it counts only if the recheck was due by then. `note`: who asked for it. */
export interface OpenRecheck extends Said { note: number; do: string; after?: number; unit?: EntryOf<'recheck'>['unit']; due?: string; looked?: Said }
export interface OpenWant extends Said { qty?: number; spec?: string; for?: Ref }
/** Money of one purchase, order or quote; amounts in whole cents. */
export interface Price { cents: number; shippingCents?: number; coreCents?: number; taxPercent?: number; miles?: number; qty?: number }
export interface OpenOrder extends Said { source?: string; price?: Price; expected?: string; qty?: number }
export interface HeardPrice extends Said { source?: string; price: Price }
/** A thing paid for: bought, or ordered and arrived. No price: not said. */
/** `ordered`: paid for as it came, at what the order said. */
export interface Paid extends Said { source?: string; price?: Price; for?: Ref; ordered?: boolean }
export interface HoursSaid extends Said { hours: number; total: boolean }

/**
 * A part or item of a machine under its name key; the machine itself has the empty key.
 * Parts and bought items are one kind of thing, for "wear plates" are wanted, ordered, arrive and are then fitted.
 */
export interface Thing {
  key: string;
  name: string;
  fit?: FitNow;
  /** The latest time it was on or tight, though it be off again since. */
  lastOn?: Said;
  finding?: FindingNow;
  /** The latest finding that calls for repair or replacement and that nothing since has answered. */
  fault?: FindingNow;
  /** By what was measured; as it was before it came apart, and as it was left. */
  asWas: Map<string, ReadingNow>;
  asLeft: Map<string, ReadingNow>;
  /** By action: the latest of each. */
  works: Map<string, WorkNow>;
  jobs: OpenJob[];
  place?: Place;
  out?: OutNow;
  /** The latest time it came back from outside. */
  back?: Said;
  wait?: WaitNow;
  rechecks: OpenRecheck[];
  wants: OpenWant[];
  orders: OpenOrder[];
  /** In hand: bought or arrived. */
  inHand?: Said;
  quotes: HeardPrice[];
  paid: Paid[];
  hours: HoursSaid[];
}

/** `firstSaid`, `thenSaid`: the phrases as said. */
export interface RuleSaid extends Said { first: Ref; then: Ref; firstSaid: string; thenSaid: string }
export interface HandsSaid extends Said { when: string; for?: Ref; forSaid?: string; machine: string; from?: string; to?: string; none?: boolean }
export interface WeatherSaid extends Said { sky: EntryOf<'weather'>['sky']; from?: string; to?: string }
export interface MeterPoint extends Said { value: number }

export interface Machine {
  /** Empty: notes that belong to no named machine. */
  key: string;
  name: string;
  things: Map<string, Thing>;
  rules: RuleSaid[];
  /** Running time in hours and distance in miles as read off, oldest entry first. */
  running: MeterPoint[];
  distance: MeterPoint[];
}

/** Help and weather are of the whole shop. Lists are in the order of the log. */
export interface Shop { machines: Map<string, Machine>; hands: HandsSaid[]; weather: WeatherSaid[] }

export const emptyShop = (): Shop => ({ machines: new Map(), hands: [], weather: [] });

export const emptyThing = (key: string, name: string): Thing => ({
  key, name, asWas: new Map(), asLeft: new Map(), works: new Map(), jobs: [], rechecks: [], wants: [], orders: [], quotes: [], paid: [], hours: [],
});

export const emptyMachine = (key: string, name: string): Machine => ({
  key, name, things: new Map(), rules: [], running: [], distance: [],
});

/** The names of the machines the shop knows, as first said. */
export const machineNames = (shop: Shop): string[] => [...shop.machines.values()].filter(m => m.key).map(m => m.name);

/** The names of the parts and items of a machine (of all machines when none is given), as first said. */
export function partNames(shop: Shop, machineKey?: string): string[] {
  const machines = machineKey === undefined ? [...shop.machines.values()] : [shop.machines.get(machineKey)].filter(m => m !== undefined);
  return machines.flatMap(m => [...m.things.values()].filter(t => t.key).map(t => t.name));
}

/** The places where things were put, as said; for the reader's context. */
export const placeNames = (shop: Shop): string[] =>
  [...new Set([...shop.machines.values()].flatMap(m => [...m.things.values()].flatMap(t => t.place ? [t.place.where] : [])))];

/** The sources heard of: who was ordered from, bought from, quoted. */
export function sourceNames(shop: Shop): string[] {
  const found = new Set<string>();
  for (const m of shop.machines.values())
    for (const t of m.things.values())
      for (const s of [...t.orders, ...t.quotes, ...t.paid]) if (s.source) found.add(s.source);
  return [...found];
}

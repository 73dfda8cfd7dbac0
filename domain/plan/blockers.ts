import type { Cause, CauseKind } from '../model/answer.ts';
import { findCircle } from './circle.ts';

/** Something that stands in the way while it is not cleared. What is cleared already is not in the network. */
export interface Thing {
  id: string;
  cause: CauseKind;
  /** Its name as the person says it. */
  what: string;
  /** What the person can do to clear it, base verb first; left out where only waiting helps. */
  act?: string;
  /** Hours and money the act takes, where known. */
  hours?: number;
  price?: number;
  /** The day (YYYY-MM-DD) on which it clears by itself: delivery, end of cure, help, back from outside work. */
  clears?: string;
  /** Ids of what must clear before it can. */
  needs: readonly string[];
}

/** An act at the end of a branch: nothing stands before it. */
interface Act { id: string; act: string; what: string; hours?: number; price?: number; clears?: string }

type BlockersResult =
  | { ok: true; causes: Cause[]; /** Cheapest first, each once. */ acts: Act[] }
  | { ok: false; why: 'circle'; path: string[] };

interface BlockersOptions {
  /** Today, YYYY-MM-DD: the earliest day for an act that nothing stands before. */
  today: string;
  /** The earliest day by the plan, for what has no day of its own. */
  earliest?: (id: string) => string | undefined;
}

/** An hour weighs as much as this much money when acts are put in order. A mere weighting; nobody is told. */
const HOUR_WEIGHS = 20;
/** Hours taken for an act that has none: a call, an order. */
const SMALL_ACT = 0.25;

/**
 * The tree of causes that hold up `target`, down to acts the person can take: cheapest act first, each with the earliest day
 * on which it can clear (left out when something under it has none). A thing that stands before several others is opened
 * once; where it comes again it stands bare. Ids that are not in the network count as cleared.
 */
export function blockers(network: ReadonlyMap<string, Thing>, target: string, options: BlockersOptions): BlockersResult {
  const path = findCircle(edgesUnder(network, target));
  if (path) return { ok: false, why: 'circle', path: path.map((id) => network.get(id)?.what ?? id) };
  const cost = new Map<string, number>();
  const clears = new Map<string, string | undefined>();
  const opened = new Set<string>();

  const open = (thing: Thing) => thing.needs.flatMap((id) => network.get(id) ?? []);
  function costOf(thing: Thing): number {
    const known = cost.get(thing.id);
    if (known !== undefined) return known;
    const under = open(thing).map(costOf);
    const own = thing.act ? (thing.hours ?? SMALL_ACT) * HOUR_WEIGHS + (thing.price ?? 0) : Infinity;
    cost.set(thing.id, under.length > 0 ? Math.min(...under) : own);
    return cost.get(thing.id)!;
  }
  function clearsOn(thing: Thing): string | undefined {
    if (clears.has(thing.id)) return clears.get(thing.id);
    const own = thing.clears ?? options.earliest?.(thing.id) ?? (thing.act ? options.today : undefined);
    const days = [own, ...open(thing).map(clearsOn)];
    clears.set(thing.id, days.includes(undefined) ? undefined : (days as string[]).sort().at(-1));
    return clears.get(thing.id);
  }
  const cheapestFirst = (a: Thing, b: Thing) => compare(costOf(a), costOf(b)) || a.what.localeCompare(b.what);
  function causeOf(thing: Thing): Cause {
    const again = opened.has(thing.id);
    opened.add(thing.id);
    const under = open(thing).sort(cheapestFirst);
    const day = clearsOn(thing);
    return {
      cause: thing.cause, what: thing.what,
      ...(thing.act && !(again && under.length > 0) ? { act: thing.act } : {}),
      ...(day ? { clears: day } : {}),
      causes: again ? [] : under.map(causeOf),
    };
  }

  const start = network.get(target);
  const causes = start ? open(start).sort(cheapestFirst).map(causeOf) : [];
  const acts = [...opened].map((id) => network.get(id)!)
    .filter((thing) => thing.act && open(thing).length === 0)
    .sort(cheapestFirst)
    .map((thing): Act => ({ id: thing.id, act: thing.act!, what: thing.what, hours: thing.hours, price: thing.price, clears: clearsOn(thing) }));
  return { ok: true, causes, acts };
}

const compare = (a: number, b: number) => (a === b ? 0 : a - b);

function* edgesUnder(network: ReadonlyMap<string, Thing>, target: string): Iterable<readonly [string, string]> {
  const seen = new Set([target]);
  for (const id of seen) {
    for (const need of network.get(id)?.needs ?? []) {
      if (!network.has(need)) continue;
      yield [need, id];
      seen.add(need);
    }
  }
}

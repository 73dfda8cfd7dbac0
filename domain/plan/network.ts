import { findCircle, type Edge } from './circle.ts';

/** One activity of a resource-constrained project, in whole units of time. */
export interface Activity {
  id: string;
  /** Whole number of time units, 0 or more. */
  duration: number;
  /** Units of each resource held while it runs; missing ones count as 0. */
  needs: readonly number[];
  /** Ids that must be finished before it starts. */
  after: readonly string[];
}

/**
 * The project as flat arrays: neighbours of activity `i` are `list[start[i]] … list[start[i + 1] - 1]`,
 * its needs `need[i * resources] …`. Nothing in the inner loop of the scheduler touches an object.
 */
export interface Network {
  readonly ids: readonly string[];
  readonly count: number;
  readonly resources: number;
  readonly capacity: Int32Array;
  readonly duration: Int32Array;
  readonly need: Int32Array;
  readonly predStart: Int32Array;
  readonly pred: Int32Array;
  readonly succStart: Int32Array;
  readonly succ: Int32Array;
  /** An order in which every activity comes after all that must precede it. */
  readonly topological: Int32Array;
}

export type NetworkResult =
  | { ok: true; network: Network }
  | { ok: false; why: 'circle'; path: string[] }
  | { ok: false; why: 'unknown'; id: string; after: string }
  | { ok: false; why: 'duplicate'; id: string }
  | { ok: false; why: 'notWhole'; id: string }
  | { ok: false; why: 'tooMuch'; id: string; resource: number };

/** Compiles activities and capacities; an impossible project is a value that says why. */
export function compileNetwork(activities: readonly Activity[], capacities: readonly number[]): NetworkResult {
  const index = new Map(activities.map((activity, i) => [activity.id, i]));
  const edges: Edge[] = [];
  for (const [i, activity] of activities.entries()) {
    const { id, duration, needs, after } = activity;
    if (index.get(id) !== i) return { ok: false, why: 'duplicate', id };
    if (!Number.isInteger(duration) || duration < 0) return { ok: false, why: 'notWhole', id };
    const resource = needs.findIndex((need, r) => need > (capacities[r] ?? 0));
    if (resource >= 0) return { ok: false, why: 'tooMuch', id, resource };
    for (const before of after) {
      if (!index.has(before)) return { ok: false, why: 'unknown', id, after: before };
      edges.push([before, id]);
    }
  }
  const path = findCircle(edges);
  if (path) return { ok: false, why: 'circle', path };
  return { ok: true, network: flatten(activities, capacities, index) };
}

function flatten(activities: readonly Activity[], capacities: readonly number[], index: Map<string, number>): Network {
  const before = activities.map((activity) => activity.after.map((id) => index.get(id)!));
  const following: number[][] = activities.map(() => []);
  for (const [i, list] of before.entries()) for (const p of list) following[p]!.push(i);
  const [predStart, pred] = packLists(before);
  const [succStart, succ] = packLists(following);
  const resources = capacities.length;
  return {
    ids: activities.map((activity) => activity.id),
    count: activities.length,
    resources,
    capacity: Int32Array.from(capacities),
    duration: Int32Array.from(activities, (activity) => activity.duration),
    need: Int32Array.from(activities.flatMap(({ needs }) => capacities.map((_, r) => needs[r] ?? 0))),
    predStart,
    pred,
    succStart,
    succ,
    topological: topologicalOrder(predStart, succStart, succ),
  };
}

function packLists(lists: readonly (readonly number[])[]): [Int32Array, Int32Array] {
  const start = new Int32Array(lists.length + 1);
  for (const [i, list] of lists.entries()) start[i + 1] = start[i]! + list.length;
  return [start, Int32Array.from(lists.flat())];
}

/** Kahn's algorithm; the caller has made sure that there is no circle. */
function topologicalOrder(predStart: Int32Array, succStart: Int32Array, succ: Int32Array): Int32Array {
  const count = predStart.length - 1;
  const waiting = Int32Array.from({ length: count }, (_, i) => predStart[i + 1]! - predStart[i]!);
  const order = new Int32Array(count);
  let filled = 0;
  for (let i = 0; i < count; i++) if (waiting[i] === 0) order[filled++] = i;
  for (let at = 0; at < filled; at++) {
    const i = order[at]!;
    for (let e = succStart[i]!; e < succStart[i + 1]!; e++) {
      const next = succ[e]!;
      waiting[next]!--;
      if (waiting[next] === 0) order[filled++] = next;
    }
  }
  return order;
}

/** The same project run from the end: successors become predecessors. A backward pass is a forward pass over this. */
export function mirrored(network: Network): Network {
  return {
    ...network,
    predStart: network.succStart,
    pred: network.succ,
    succStart: network.predStart,
    succ: network.pred,
    topological: network.topological.slice().reverse(),
  };
}

/** Length of the longest chain from each activity's start to the end of the project, its own duration included. */
export function tails(network: Network): Int32Array {
  const tail = new Int32Array(network.count);
  for (let at = network.count - 1; at >= 0; at--) {
    const i = network.topological[at]!;
    let longest = 0;
    for (let e = network.succStart[i]!; e < network.succStart[i + 1]!; e++) {
      longest = Math.max(longest, tail[network.succ[e]!]!);
    }
    tail[i] = longest + network.duration[i]!;
  }
  return tail;
}

/** No schedule is shorter: the longest chain, or the work of the busiest resource over its capacity, whichever is more. */
export function lowerBound(network: Network): number {
  let bound = tails(network).reduce((most, tail) => Math.max(most, tail), 0);
  for (let r = 0; r < network.resources; r++) {
    let work = 0;
    for (let i = 0; i < network.count; i++) work += network.duration[i]! * network.need[i * network.resources + r]!;
    if (work > 0) bound = Math.max(bound, Math.ceil(work / network.capacity[r]!));
  }
  return bound;
}

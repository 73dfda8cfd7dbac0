import { findCircle, type Edge } from './circle.ts';

/** An activity with no limit on resources: any duration of 0 or more, in any one unit. */
export interface Timed {
  id: string;
  duration: number;
  after: readonly string[];
}

interface Floats {
  earliestStart: number;
  earliestFinish: number;
  latestStart: number;
  latestFinish: number;
  /** How far it can slip without moving the end of the project. */
  total: number;
  /** How far it can slip without moving anything after it. */
  free: number;
}

type CriticalPathResult =
  | { ok: true; length: number; floats: ReadonlyMap<string, Floats>; critical: readonly string[] }
  | { ok: false; why: 'circle'; path: string[] }
  | { ok: false; why: 'unknown'; id: string; after: string };

/** Below this a float counts as none; durations are hours or days, sums of thirds and sixths. */
const NOTHING = 1e-9;

/** Critical path method: earliest and latest times, total and free float, and the activities without total float, in order. */
export function criticalPath(activities: readonly Timed[]): CriticalPathResult {
  const byId = new Map(activities.map((activity) => [activity.id, activity]));
  const edges: Edge[] = [];
  for (const { id, after } of activities) {
    for (const before of after) {
      if (!byId.has(before)) return { ok: false, why: 'unknown', id, after: before };
      edges.push([before, id]);
    }
  }
  const path = findCircle(edges);
  if (path) return { ok: false, why: 'circle', path };

  const order = inOrder(activities, byId);
  const finish = new Map<string, number>();
  const startOf = ({ after }: Timed) => after.reduce((latest, id) => Math.max(latest, finish.get(id)!), 0);
  for (const activity of order) finish.set(activity.id, startOf(activity) + activity.duration);
  const length = Math.max(0, ...finish.values());

  const mustEnd = new Map(activities.map(({ id }) => [id, length]));
  const mayEnd = new Map(activities.map(({ id }) => [id, length]));
  for (const activity of order.toReversed()) {
    const latestStart = mustEnd.get(activity.id)! - activity.duration;
    for (const before of activity.after) {
      mustEnd.set(before, Math.min(mustEnd.get(before)!, latestStart));
      mayEnd.set(before, Math.min(mayEnd.get(before)!, startOf(activity)));
    }
  }
  const floats = new Map(order.map(({ id, duration }) => {
    const earliestFinish = finish.get(id)!;
    const latestFinish = mustEnd.get(id)!;
    return [id, {
      earliestStart: earliestFinish - duration, earliestFinish, latestStart: latestFinish - duration, latestFinish,
      total: latestFinish - earliestFinish, free: mayEnd.get(id)! - earliestFinish,
    }];
  }));
  const critical = order.filter(({ id }) => floats.get(id)!.total < NOTHING).map(({ id }) => id);
  return { ok: true, length, floats, critical };
}

/** Every activity after all that precede it; there is no circle any more when this is called. */
function inOrder(activities: readonly Timed[], byId: ReadonlyMap<string, Timed>): Timed[] {
  const order: Timed[] = [];
  const seen = new Set<string>();
  const pending = activities.toReversed();
  while (pending.length > 0) {
    const activity = pending[pending.length - 1]!;
    const missing = seen.has(activity.id) ? [] : activity.after.filter((id) => !seen.has(id));
    if (missing.length > 0) {
      for (const id of missing) pending.push(byId.get(id)!);
      continue;
    }
    pending.pop();
    if (!seen.has(activity.id)) order.push(activity);
    seen.add(activity.id);
  }
  return order;
}

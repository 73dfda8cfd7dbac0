import type { Activity } from '../../../../domain/plan/network.ts';

/**
 * The shortest makespan by trying everything: at every instant at which something ends, each subset of what may start is
 * started in turn. Every left-shifted schedule is among them, so the best is too. Shares no code with the planner.
 * For up to about eight activities.
 */
export function shortestMakespan(activities: readonly Activity[], capacities: readonly number[]): number {
  let best = activities.reduce((sum, activity) => sum + activity.duration, 0);
  const end = new Map<string, number>();

  function step(now: number): void {
    const running = activities.filter(({ id }) => (end.get(id) ?? -1) > now);
    const waiting = activities.filter(({ id }) => !end.has(id));
    const latest = Math.max(0, ...end.values());
    if (waiting.length === 0) best = Math.min(best, latest);
    if (waiting.length === 0 || latest >= best) return;
    const ready = waiting.filter(({ after }) => after.every((id) => (end.get(id) ?? Infinity) <= now));
    startSome(now, ready, capacities.map((capacity, r) => capacity - running.reduce((sum, { needs }) => sum + (needs[r] ?? 0), 0)));
  }

  function startSome(now: number, ready: readonly Activity[], free: readonly number[]): void {
    const [first, ...others] = ready;
    if (!first) {
      const next = Math.min(...[...end.values()].filter((time) => time > now));
      if (Number.isFinite(next)) step(next);
      return;
    }
    const left = free.map((units, r) => units - (first.needs[r] ?? 0));
    if (left.every((units) => units >= 0)) {
      end.set(first.id, now + first.duration);
      startSome(now, others, left);
      end.delete(first.id);
    }
    startSome(now, others, free);
  }

  step(0);
  return best;
}

import type { Activity } from '../../../../domain/plan/network.ts';

/** Writes a project in the `.sm` text format (Kolisch & Sprecher 1996), with a first and a last job of no length. */
export function projectText(activities: readonly Activity[], capacities: readonly number[], note: string): string {
  const number = new Map(activities.map(({ id }, i) => [id, i + 2]));
  const last = activities.length + 2;
  const following = (id: string) => activities.filter(({ after }) => after.includes(id)).map((next) => number.get(next.id)!);
  const roots = activities.filter(({ after }) => after.length === 0).map(({ id }) => number.get(id)!);
  const row = (...values: number[]) => values.map((value) => String(value).padStart(5)).join('');
  const links = (job: number, next: number[]) => row(job, 1, next.length, ...next);
  const stars = '*'.repeat(72);
  const nothing = capacities.map(() => 0);
  return [
    stars, `file with basedata            : ${note}`, stars,
    `jobs (incl. supersource/sink ):  ${last}`, 'RESOURCES', `  - renewable                 :  ${capacities.length}   R`, stars,
    'PRECEDENCE RELATIONS:', 'jobnr.    #modes  #successors   successors',
    links(1, roots),
    ...activities.map(({ id }) => links(number.get(id)!, following(id).length > 0 ? following(id) : [last])),
    links(last, []), stars,
    'REQUESTS/DURATIONS:', 'jobnr. mode duration  R 1  R 2  R 3  R 4', '-'.repeat(72),
    row(1, 1, 0, ...nothing),
    ...activities.map(({ id, duration, needs }) => row(number.get(id)!, 1, duration, ...needs)),
    row(last, 1, 0, ...nothing), stars,
    'RESOURCEAVAILABILITIES:', capacities.map((_, r) => `  R ${r + 1}`).join(''), row(...capacities), stars, '',
  ].join('\n');
}

import { readFileSync } from 'node:fs';
import { compileNetwork, type Activity, type Network } from './network.ts';
import { search } from './search.ts';

/**
 * Reads a single-mode project in the `.sm` text format of the PSPLIB (Kolisch & Sprecher 1996, EJOR 96:205-216).
 * Throws with a clear sentence when the text is not such a project.
 */
export function parsePsplib(text: string): Network {
  const lines = text.split(/\r?\n/);
  const capacities = numbersAfter(lines, 'RESOURCEAVAILABILITIES', 2)[0];
  const successors = numbersAfter(lines, 'PRECEDENCE RELATIONS', 2);
  const requests = numbersAfter(lines, 'REQUESTS/DURATIONS', 3);
  if (!capacities || successors.length === 0 || requests.length !== successors.length) {
    throw new Error('not a single-mode project file: its tables of precedence, requests and availabilities do not match');
  }
  const after = new Map(successors.map(([job]) => [job!, [] as string[]]));
  for (const [job, , , ...following] of successors) for (const next of following) after.get(next)?.push(String(job));
  const activities: Activity[] = requests.map(([job, mode, duration, ...needs]) => {
    if (mode !== 1) throw new Error(`job ${job} has more than one mode; only single-mode projects are planned`);
    return { id: String(job), duration: duration!, needs, after: after.get(job!) ?? [] };
  });
  const compiled = compileNetwork(activities, capacities);
  if (!compiled.ok) throw new Error(`the project cannot be planned: ${JSON.stringify(compiled)}`);
  return compiled.network;
}

/** Rows of whole numbers under a heading, from `skip` lines below it up to the line of stars (or the end). */
function numbersAfter(lines: readonly string[], heading: string, skip: number): number[][] {
  const at = lines.findIndex((line) => line.startsWith(heading));
  if (at < 0) return [];
  const rows: number[][] = [];
  for (const line of lines.slice(at + skip)) {
    if (line.startsWith('*')) break;
    if (/^[\s\d]*\d[\s\d]*$/.test(line)) rows.push(line.trim().split(/\s+/).map(Number));
  }
  return rows;
}

/**
 * Plans each file with at most `schedules` schedules (each pass, forward or backward, counts as one) and a fixed seed.
 * Yields as it goes; throws when a file cannot be read or is not such a project.
 */
export function* planPsplib(files: readonly string[], schedules: number): Iterable<{ file: string; makespan: number }> {
  for (const file of files) {
    const { makespan } = search(parsePsplib(readFileSync(file, 'utf8')), schedules);
    yield { file, makespan };
  }
}

import { layOut, NEVER, type Bench } from '../bench.ts';
import { FIT, SAMPLED } from '../conditions.ts';
import { drawer } from '../draw.ts';
import { inOrderOfIds, type PlanInput } from '../input.ts';

/** When an act can begin and end, and when a thing can be here, at the earliest (ms UTC); left out: no date. */
interface Earliest { start?: number; end?: number }

/**
 * For every job and supply the earliest it can be: as if the hours were all its own and those of what comes before it, and days not
 * forecast yet were dry. Middling durations and arrivals. An empty map when the order has a circle.
 */
export function earliest(given: PlanInput): Map<string, Earliest> {
  const input = inOrderOfIds(given);
  const laid = layOut(input);
  const found = new Map<string, Earliest>();
  if (!laid.ok) return found;
  const { bench } = laid;
  const drawn = drawer(input, bench);
  drawn.middling(1);
  const { network, lag } = bench;
  const [start, end] = [new Float64Array(network.count), new Float64Array(network.count)];
  for (const i of network.topological) {
    let ready = drawn.draw.release[i]!;
    for (let e = network.predStart[i]!; e < network.predStart[i + 1]!; e++) ready = Math.max(ready, end[network.pred[e]!]! + lag[e]!);
    [start[i], end[i]] = placed(bench, i, ready, drawn.draw.minutes[i]!);
  }
  const moment = (minute: number) => (minute >= NEVER ? undefined : input.now + minute * 60_000);
  input.jobs.forEach(({ id }, i) => found.set(id, { start: moment(start[i]!), end: moment(end[i]!) }));
  input.supplies.forEach(({ id }, s) => found.set(id, { end: moment(drawn.arrival[s]!) }));
  return found;
}

/** The first fit half hours from `ready` on that hold the work, in one go where it asks for that. */
function placed({ slots, masks, row, hands, unbroken }: Bench, job: number, ready: number, minutes: number): [start: number, end: number] {
  if (ready >= NEVER) return [NEVER, NEVER];
  if (hands[job] === 0 || minutes === 0) return [ready, ready + minutes];
  const fit = masks.fit[row[job]!]!;
  const whole = unbroken[job] === 1 && minutes <= masks.longest[row[job]!]!;
  let [left, begun, last] = [minutes, NEVER, -1];
  for (let k = 0; k < slots.count; k++) {
    const from = Math.max(slots.start[k]!, ready);
    if (slots.end[k]! <= ready || (fit[k] !== FIT && fit[k] !== SAMPLED)) continue;
    if (whole && from !== last) [left, begun] = [minutes, NEVER];
    if (begun === NEVER) begun = from;
    if (left <= slots.end[k]! - from) return [begun, from + left];
    left -= slots.end[k]! - from;
    last = slots.end[k]!;
  }
  return [NEVER, NEVER];
}

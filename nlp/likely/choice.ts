/** Of the things that a word or figure may tell by itself (`Weighed.alone`), the likeliest of those with a prefix ("what torque"), without it; none where the net does not speak for it by `least` (log odds). */
export function choice(says: ReadonlyMap<string, number>, prefix: string, least: number): string | undefined {
  let best: string | undefined, most = least;
  for (const [spot, z] of says) if (z > most && spot.startsWith(prefix)) { best = spot.slice(prefix.length); most = z; }
  return best;
}

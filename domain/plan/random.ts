import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** The planner's only source of chance: the same seed gives the same plan. */
export interface Random {
  /** A number from 0 (included) to 1 (excluded), 32 bits fine. */
  unit(): number;
  /** A whole number from 0 to `below` - 1. */
  below(below: number): number;
  /** A standard normal deviate. */
  normal(): number;
}

export function seeded(seed: number): Random {
  const generator = xoroshiro128plus(seed);
  // Its first numbers show the seed: neighbouring seeds would begin alike.
  for (let k = 0; k < 8; k++) generator.next();
  const unit = () => (generator.next() >>> 0) / 0x1_0000_0000;
  return {
    unit,
    below: (below) => Math.floor(unit() * below),
    // Box-Muller, one of its pair: simple, and fast enough beside a schedule.
    normal: () => Math.sqrt(-2 * Math.log(1 - unit())) * Math.cos(2 * Math.PI * unit()),
  };
}

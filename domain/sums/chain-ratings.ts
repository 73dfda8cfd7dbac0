/**
 * Working load limits of welded chain, lb, by nominal size and grade. Source: NACM list as reprinted by a chain seller.
 * Only alloy (80, 100) is made for overhead lifting.
 */
export const CHAIN_WLL: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  30: { '1/4': 1300, '5/16': 1900, '3/8': 2650, '1/2': 4500 },
  43: { '1/4': 2600, '5/16': 3900, '3/8': 5400, '1/2': 9200 },
  70: { '1/4': 3150, '5/16': 4700, '3/8': 6600, '1/2': 11300 },
  80: { '9/32': 3500, '5/16': 4500, '3/8': 7100, '1/2': 12000, '5/8': 18100 },
  100: { '9/32': 4300, '3/8': 8800, '1/2': 15000 },
};

export const OVERHEAD_GRADES: readonly string[] = ['80', '100'];

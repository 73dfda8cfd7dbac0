import type { Token } from '../types.ts';
import { nounClasses } from '../words/nouns.ts';

/** Numbers by which one of several is told; no thing of which a shop has several is numbered further. */
const NUMBERED = /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[1-9]|1[0-2])$/;
/** After these the last number is of a measure. */
const MEASURED = /^(?:inch|inches|thou|mm|mil|mils|foot|feet|psi|point|hours?|by|eighths?|sixteenths?|quarters?|half|of|x)$/;

/** Where a list of numbers that begins at token `from` ends: "two and three", "one, two and five". More than one, the last joined by "and"; not the sizes and counts of anything. */
export function numberListEnd(tokens: readonly Token[], from: number, to = tokens.length): number | undefined {
  const low = (k: number): string => (k < to ? tokens[k]?.low ?? '' : '');
  let k = from;
  while (NUMBERED.test(low(k)) && (low(k + 1) === ',' && NUMBERED.test(low(k + 2)) || NUMBERED.test(low(k + 1)))) k += low(k + 1) === ',' ? 2 : 1;
  if (!NUMBERED.test(low(k)) || !/^(?:and|an|n|&)$/.test(low(k + 1)) || !NUMBERED.test(low(k + 2))) return undefined;
  return nounClasses(low(k + 3)).size || MEASURED.test(low(k + 3)) ? undefined : k + 3;
}

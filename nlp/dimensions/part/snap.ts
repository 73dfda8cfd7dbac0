import { nameKey } from '../../../domain/model/names.ts';
import type { ReadContext } from '../../../domain/model/reading.ts';
import { nounClasses } from '../../words/nouns.ts';
import { knownNames } from './known.ts';

const NONE: readonly string[] = [];

/**
 * The shop's own name for what was said: the same words, or the one known name that ends in the said head and holds every said word
 * ("rings" is "piston rings"). Several such names are choices to ask about; the name then stays as said.
 */
export function snap(said: string, ctx: ReadContext): { name: string; known?: boolean; choices?: string[] } {
  const key = nameKey(said);
  if (!key) return { name: said };
  const parts = knownNames(ctx.parts ?? NONE), machines = knownNames(ctx.machines ?? NONE);
  const exact = parts.exact(key) ?? machines.exact(key);
  if (exact) return { name: exact.toLowerCase(), known: true };
  const full = parts.spelt(key);
  if (full) return { name: full.toLowerCase(), known: true };
  const words = key.split(' ');
  const head = words.at(-1)!;
  const holding = [...parts.holding(words, head), ...machines.holding(words, head)];
  if (holding.length === 1) return { name: holding[0]!.toLowerCase(), known: true };
  if (holding.length > 1) return { name: said, choices: holding };
  const plain = FOND.test(words[0]!) ? machines.holding(words.slice(1), head) : []; // "the little tractor" is the two-wheel tractor
  if (plain.length === 1 && !parts.holding(words.slice(1), head).length) return { name: plain[0]!.toLowerCase(), known: true };
  return shortened(words, parts.exact, parts.words) ?? { name: said };
}

/** What one says of a machine one is fond of, or tired of; it tells it from no other. */
const FOND = /^(little|old|wee|poor|dear|big|whole|damn|bloody)$/;

/** "windmill gearbox" where the shop has "gearbox": the said name with its first words, which no known name has, left off. */
function shortened(words: readonly string[], exact: (key: string) => string | undefined, known: ReadonlyMap<string, readonly string[]>): { name: string; known: boolean } | undefined {
  for (let k = 1; k < words.length; k++) {
    if (known.has(words[k - 1]!)) return undefined;
    const hit = exact(words.slice(k).join(' '));
    if (hit && (MACHINE_WORD.test(words[k - 1]!) || nounClasses(words[k - 1]!).has('machine'))) return { name: hit.toLowerCase(), known: true };
  }
  return undefined;
}
const MACHINE_WORD = /^(tractor|crawler|truck|baler|mower|press|digger|rake|mill|lathe|windmill|winch|saw|sawmill|thresher|engine|spreader|drill|sheller|grinder|pump|trailer|heron)$/;

import type { Item } from './items.ts';
import { afterNouns, isAux } from './predicate.ts';

const PERCEIVES = /^(find|notice|see|discover|spot|observe)$/;

/** "I noticed the seal was weeping": who saw it is passed over, so that what was seen is read as if it stood alone. */
export function withoutIntroductions(items: readonly Item[]): readonly Item[] {
  for (let k = 0; k + 2 < items.length; k++) {
    const from = opening(items, k);
    if (from === undefined) continue;
    const that = /^(that|,)$/.test(items[k + 1]!.low) ? k + 2 : k + 1, thing = items[that];
    const after = thing?.np || thing?.low === 'there' ? (thing.np ? afterNouns(items, that, false) : that + 1) : -1;
    if (after < 0 || !isAux(items[after]) || thing!.np?.quant === 'no') continue;
    return withoutIntroductions([...items.slice(0, from), { ...thing!, from: items[from]!.from }, ...items.slice(that + 1)]);
  }
  return items;
}

/** Where an introduction begins that ends with item `k`; undefined when none does. */
function opening(items: readonly Item[], k: number): number | undefined {
  const it = items[k]!, heads = (n: number): boolean => n < 0 || /^(mark|cc|intj)$/.test(items[n]!.t);
  if (it.t !== 'verb' || !PERCEIVES.test(it.base ?? '')) return undefined;
  let n = k - 1;
  while (items[n] && (items[n]!.t === 'adv' || items[n]!.t === 'modal' && /^(can|could)$/.test(items[n]!.low))) n--;
  if (/^(i|we)$/.test(items[n]?.low ?? '') && heads(n - 1)) return n;
  return it.form === 'past' && n === k - 1 && heads(n) ? k : undefined;
}

import type { Thing } from './clause.ts';
import type { Memory } from './memory.ts';

/** What a pronoun stands for; undefined for persons, empty where nothing was spoken of. */
export function pronoun(low: string, memory: Memory): Thing[] | undefined {
  if (/^(i|we|you|he|me|us|him|himself|herself|myself|yourself|who|nobody|somebody|someone|everyone|whoever)$/.test(low)) return undefined;
  const carried = (ts: readonly Thing[]): Thing[] => ts.filter((t, i) => ts.findIndex(o => o.name === t.name) === i).map(t => ({ ...t, carried: true }));
  if (/^(they|them|those|these|both|all|everything|ones)$/.test(low)) return carried(memory.several());
  if (/^(nothing|something|anything)$/.test(low)) return [];
  const t = memory.topic();
  return t ? carried([t]) : [];
}

import type { Figure, Scope } from './scope.ts';

/** "8a", "3in": a unit written in one with its figure. */
export function inOne(scope: Scope, f: Figure): boolean {
  const { sheet: { tokens }, line: { tokenAt } } = scope.desk, last = tokens[tokenAt[f.end - 1] ?? -1];
  return last !== undefined && last.end === tokens[tokenAt[f.end + 1] ?? -1]?.start;
}

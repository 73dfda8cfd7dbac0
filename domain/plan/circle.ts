/** `[before, after]`: the first must be finished before the second may start. */
export type Edge = readonly [before: string, after: string];

/**
 * Looks for a circle in a set of "this before that" edges.
 * Answers its path with the first name repeated at the end (`['a', 'b', 'a']`), or `undefined` when there is none.
 * Depth-first with an explicit stack: a long chain of jobs must not run into the call stack's limit.
 */
export function findCircle(edges: Iterable<Edge>): string[] | undefined {
  const after = new Map<string, string[]>();
  for (const [before, next] of edges) {
    const list = after.get(before);
    if (list) list.push(next);
    else after.set(before, [next]);
  }
  const finished = new Set<string>();
  for (const root of after.keys()) {
    const found = finished.has(root) ? undefined : circleFrom(root, after, finished);
    if (found) return found;
  }
  return undefined;
}

function circleFrom(root: string, after: Map<string, string[]>, finished: Set<string>): string[] | undefined {
  const path: string[] = [root];
  const onPath = new Set(path);
  const cursor: number[] = [0];
  while (path.length > 0) {
    const here = path[path.length - 1]!;
    const next = after.get(here)?.[cursor[cursor.length - 1]!++];
    if (next === undefined) {
      path.pop();
      cursor.pop();
      onPath.delete(here);
      finished.add(here);
    } else if (onPath.has(next)) {
      return [...path.slice(path.indexOf(next)), next];
    } else if (!finished.has(next)) {
      path.push(next);
      cursor.push(0);
      onPath.add(next);
    }
  }
  return undefined;
}

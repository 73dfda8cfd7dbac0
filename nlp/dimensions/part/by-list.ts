/** Lists that are told apart: a shop's parts, its machines, and one or two more. */
const KEPT = 4;

/**
 * What is made of a list of names, kept with the list. A shop hands in a new list at every turn, mostly of the same names: it finds what the
 * last such list had, so that a thousand parts are not looked through again at every note.
 */
export function byList<T>(make: (names: readonly string[]) => T): (names: readonly string[]) => T {
  const made = new WeakMap<readonly string[], T>(), latest: { names: readonly string[]; of: T }[] = [];
  return names => {
    const have = made.get(names);
    if (have !== undefined) return have;
    const like = latest.find(l => l.names.length === names.length && l.names.every((n, i) => n === names[i]));
    const of = like?.of ?? make(names);
    if (!like) { latest.unshift({ names: [...names], of }); latest.length = Math.min(latest.length, KEPT); }
    made.set(names, of);
    return of;
  };
}

/**
 * A pure function that remembers what it gave, by a text: the same names come again and again at every turn. When it holds `most` of
 * them it forgets all, so that years of notes don't grow the program.
 */
export function rememberedBy<A, T>(keyOf: (asked: A) => string, of: (asked: A) => T, most = 20_000): (asked: A) => T {
  const given = new Map<string, T>();
  return asked => {
    const key = keyOf(asked);
    const held = given.get(key);
    if (held !== undefined) return held;
    if (given.size >= most) given.clear();
    const made = of(asked);
    given.set(key, made);
    return made;
  };
}

export const remembered = <T>(of: (text: string) => T): ((text: string) => T) => rememberedBy(text => text, of);

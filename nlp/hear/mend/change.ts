/** One repair: what stood there, what was put, and why, in a few words. */
export interface Change {
  from: string;
  to: string;
  why: string;
}

/** A text with the repairs that were made to it. */
export interface Mended {
  text: string;
  changes: Change[];
}

/** Replaces what a pattern finds; `put` gives the new words, or `undefined` where it is not plain. */
export function repair(mended: Mended, pattern: RegExp, why: string, put: (...groups: string[]) => string | undefined): Mended {
  const changes = [...mended.changes];
  const text = mended.text.replace(pattern, (...found: unknown[]) => {
    const groups = found.filter((part): part is string => typeof part === 'string').slice(0, -1);
    const from = groups[0]!;
    const to = put(...found.slice(0, found.findIndex((part) => typeof part === 'number')).map((part) => (part as string | undefined) ?? ''));
    if (to === undefined || to === from) return from;
    changes.push({ from, to, why });
    return to;
  });
  return { text, changes };
}

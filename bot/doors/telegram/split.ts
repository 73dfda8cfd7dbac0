/** The longest text of one message, in UTF-16 units: at or under the platform's 4096 however it counts. */
export const TEXT_LIMIT = 4096;

/** Cuts a text into pieces no longer than `limit`: at the end of a line where there is one, else at a space, never inside a sign. */
export function splitText(text: string, limit = TEXT_LIMIT): string[] {
  const pieces: string[] = [];
  let rest = text;
  while (rest.length > limit) {
    const cut = cutAt(rest, limit);
    pieces.push(rest.slice(0, cut).trimEnd());
    rest = rest.slice(cut).replace(/^\n+| +/y, '');
  }
  return [...pieces, rest].filter(p => p.trim() !== '');
}

function cutAt(text: string, limit: number): number {
  for (const end of ['\n', ' ']) {
    const at = text.lastIndexOf(end, limit);
    // A cut so near the front would make a crumb of a message.
    if (at > limit / 4) return at;
  }
  return /[\uD800-\uDBFF]/.test(text[limit - 1]!) ? limit - 1 : limit;
}

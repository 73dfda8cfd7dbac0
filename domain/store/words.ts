/**
 * Text goes into SQLite as UTF-8, which has no place for a lone surrogate; such a text is kept a second time as UTF-16, byte for byte.
 * NUL, control and direction marks are plain characters to both.
 */
export const exactOf = (text: string): Uint8Array | null => /\p{Surrogate}/u.test(text) ? Buffer.from(text, 'utf16le') : null;

export const textOf = (row: { text: string; exact: Uint8Array | null }): string =>
  row.exact ? Buffer.from(row.exact).toString('utf16le') : row.text;

/** Marks on paper shared by all drawings: chalk and ink on a plain sheet, readable in print and by those who see no colours. */
export const INK = '#1d2327';
export const PAPER = '#fbfaf6';
export const RULE = '#b9b4a6';
/** What the person can act on stands out by its border as much as by its tint. */
export const ACT = '#e7d9a8';
export const FONT = 'DejaVu Sans';

const escaped = (s: string): string => s.replace(/[&<>"']/g, c => `&#${c.charCodeAt(0)};`).replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udfff](?![\udc00-\udfff])/g, '');

export const text = (x: number, y: number, words: string, more = ''): string => `<text x="${x}" y="${y}" ${more}>${escaped(words)}</text>`;

/** Breaks words into lines of at most `width` letters. */
export function wrapped(words: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of words.split(/\s+/)) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < width) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word.slice(0, width));
  }
  return lines;
}

export const sheet = (width: number, height: number, title: string, body: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${Math.ceil(width)}" height="${Math.ceil(height)}" viewBox="0 0 ${Math.ceil(width)} ${Math.ceil(height)}" role="img" font-family="${FONT}" font-size="15" fill="${INK}"><title>${escaped(title)}</title><rect width="100%" height="100%" fill="${PAPER}"/>${body}</svg>`;

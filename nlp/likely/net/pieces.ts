/** A piece of a word as the net knows it, with the stretch of the text it stands for. */
export interface Piece { id: number; start: number; end: number }

/** A stretch of a text, and the words that are meant by it. */
export interface Meant { start: number; end: number; words: string }

/** A word longer than this is not cut to pieces: it is none of the language. */
const LONGEST = 100;

/**
 * A text in word pieces (WordPiece, Schuster & Nakajima 2012, as BERT's uncased vocabularies have it): runs of letters and digits, and every other mark by itself, in lower
 * case without accents, each cut into the longest pieces that the vocabulary has.  `vocabulary`: the pieces with their numbers, `##` before what goes on a word. `meant`:
 * stretches to be read as other words than are written there; their pieces stand for the whole stretch.
 */
export function piecesOf(text: string, vocabulary: ReadonlyMap<string, number>, meant: readonly Meant[] = []): Piece[] {
  const out: Piece[] = [], unknown = vocabulary.get('[UNK]') ?? 0;
  let last: Meant | undefined;
  for (const m of text.matchAll(/[\p{L}\p{N}\p{M}]+|[^\s\p{L}\p{N}\p{M}]/gu)) {
    const word = m[0], start = m.index, end = start + word.length, as = meant.find(x => x.start <= start && end <= x.end);
    if (as) {
      if (as !== last) out.push(...piecesOf(as.words, vocabulary).map(p => ({ id: p.id, start: as.start, end: as.end })));
      last = as;
      continue;
    }
    const cut = word.length > LONGEST ? undefined : pieces(plain(word), vocabulary);
    if (!cut) out.push({ id: unknown, start, end });
    else for (const id of cut) out.push({ id, start, end });
  }
  return out;
}

const plain = (word: string): string => word.toLowerCase().normalize('NFD').replace(/\p{Mn}/gu, '');

/** The numbers of a word's pieces; none where a stretch of it is in no piece. */
function pieces(word: string, vocabulary: ReadonlyMap<string, number>): number[] | undefined {
  const out: number[] = [];
  for (let from = 0; from < word.length;) {
    let to = word.length, id: number | undefined;
    for (; to > from && id === undefined; to--) id = vocabulary.get((from ? '##' : '') + word.slice(from, to));
    if (id === undefined) return undefined;
    out.push(id);
    from = to + 1;
  }
  return out;
}

/** One place in the tree of expected words: which word piece may come next. */
export interface WordNode {
  next: Map<number, WordNode>;
  /** True where an expected word or name is complete. */
  whole: boolean;
}

const newNode = (): WordNode => ({ next: new Map(), whole: false });

/** "water hopper" as it may stand in a sentence: the recogniser's pieces differ for small and capital letters. */
const spellings = (word: string) => [` ${word}`, ` ${word[0]!.toUpperCase()}${word.slice(1)}`];

/**
 * Expected words as a tree of word pieces. `encode` turns text into the model's piece numbers.
 * Hundreds of names cost nothing while decoding: only the pieces at the current place are looked at.
 */
export function buildWordTree(words: Iterable<string>, encode: (text: string) => number[]): WordNode {
  const root = newNode();
  for (const word of new Set(words)) {
    if (!word) continue;
    for (const spelling of spellings(word)) {
      let node = root;
      for (const piece of encode(spelling)) {
        if (!node.next.has(piece)) node.next.set(piece, newNode());
        node = node.next.get(piece)!;
      }
      node.whole = true;
    }
  }
  return root;
}

/** Where a reading stands in the tree, and the bonus it holds for a word that is not complete yet. */
export interface Expectation {
  node: WordNode;
  lent: number;
}

/**
 * Moves one piece on. Each piece along an expected word earns `bonus` (in log-probability) at once, so that the word
 * survives until it is complete; a word that breaks off pays back what it was lent.
 */
export function expect(at: Expectation, root: WordNode, piece: number, bonus: number): Expectation & { gain: number } {
  const further = at.node === root ? undefined : at.node.next.get(piece);
  if (further) return { node: further, lent: further.whole ? 0 : at.lent + bonus, gain: bonus };
  const start = root.next.get(piece);
  if (start) return { node: start, lent: start.whole ? 0 : bonus, gain: bonus - at.lent };
  return { node: root, lent: 0, gain: -at.lent };
}

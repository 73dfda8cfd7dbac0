import { neededBy } from './needed.ts';

/** One stretch of letters, and the patterns that need it, each with the bit of the group that it stands in. */
interface Telling { letters: string; asked: { pattern: number; group: number }[] }

/**
 * A list of patterns, of which only those are tried on a text that can match in it: one walk over the text finds all the stretches of letters that
 * any of them needs, so that hundreds of questions cost a statement next to nothing.
 */
class PatternIndex {
  private readonly tellings: Telling[] = [];
  /** Which tellings begin with two letters: the place in `beginning` by those two, 0 for none. */
  private readonly opening = new Uint16Array(SLOTS * SLOTS);
  private readonly beginning: number[][] = [[]];
  /** Tellings of one sign. */
  private readonly signs: number[] = [];
  /** For each pattern a bit for every group that it needs. */
  private readonly needs: readonly number[];

  constructor(patterns: readonly RegExp[]) {
    const byLetters = new Map<string, Telling>();
    this.needs = patterns.map((p, pattern) => {
      const groups = p.flags.includes('i') ? [] : neededBy(p.source);
      groups.forEach((group, g) => { for (const letters of new Set(group)) {
        const telling = byLetters.get(letters) ?? { letters, asked: [] };
        telling.asked.push({ pattern, group: 1 << g });
        byLetters.set(letters, telling);
      } });
      return (1 << groups.length) - 1;
    });
    for (const telling of byLetters.values()) {
      const k = this.tellings.push(telling) - 1;
      if (telling.letters.length === 1) this.signs.push(k);
      else {
        const slot = slotAt(telling.letters, 0);
        this.opening[slot] ||= this.beginning.push([]) - 1;
        this.beginning[this.opening[slot]!]!.push(k);
      }
    }
  }

  /** Which of the patterns can match in the text, in their order. */
  in(text: string): number[] {
    const met = new Uint8Array(this.needs.length), seen = new Uint8Array(this.tellings.length);
    for (const k of this.signs) if (text.includes(this.tellings[k]!.letters)) this.meet(k, met);
    for (let at = 0; at + 1 < text.length; at++) {
      const here = this.opening[slotAt(text, at)];
      if (here) for (const k of this.beginning[here]!) if (!seen[k] && text.startsWith(this.tellings[k]!.letters, at)) { seen[k] = 1; this.meet(k, met); }
    }
    const out: number[] = [];
    for (let i = 0; i < met.length; i++) if ((met[i]! & this.needs[i]!) === this.needs[i]!) out.push(i);
    return out;
  }

  private meet(telling: number, met: Uint8Array): void {
    for (const { pattern, group } of this.tellings[telling]!.asked) met[pattern]! |= group;
  }
}

const SLOTS = 128;
/** A number for the two letters at a place; letters outside the English ones share theirs with others. */
const slotAt = (text: string, at: number): number => (text.charCodeAt(at) % SLOTS) * SLOTS + text.charCodeAt(at + 1) % SLOTS;

const indexed = new WeakMap<readonly object[], PatternIndex>();

/** Those of a list whose pattern can match in the text, in their order. The index is made when first asked for, and kept with the list. */
export function mayMatch<T extends object>(list: readonly T[], patternOf: (of: T) => RegExp, text: string): T[] {
  let index = indexed.get(list);
  if (!index) indexed.set(list, index = new PatternIndex(list.map(patternOf)));
  return index.in(text).map(i => list[i]!);
}

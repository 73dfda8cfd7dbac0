/**
 * What a text must hold for a regular expression to match in it, read from the expression's own source: groups of stretches of letters, of each
 * of which one at least is in every match. "(?:what|which) (?:size|tap)?.*\bdrills?" gives [what, which] and [drill, drills].
 * Whatever is not understood gives no group, so nothing is ever asked for that a match could be without.
 */
export function neededBy(source: string): string[][] {
  const reader = new Reader(source);
  const { groups, all } = reader.either();
  return reader.at !== source.length ? [] : [...groups, ...(all ? [all] : [])].filter(useful).sort((a, b) => weight(b) - weight(a)).slice(0, MOST_GROUPS);
}

const MOST_GROUPS = 4, MOST_ALIKE = 60, MOST_JOINED = 24;
const shortest = (group: readonly string[]): number => Math.min(...group.map(s => s.length));
/** A group with a stretch of one letter is in every text; a sign ("#", "?") tells. */
const useful = (group: readonly string[]): boolean => group.length > 0 && group.length <= MOST_ALIKE && group.every(s => s.length > 1 && s.trim() !== '' || /^[^a-z\s]$/.test(s));
const weight = (group: readonly string[]): number => Math.min(6, shortest(group)) - group.length / 10;
/** The group of a piece that the fewest texts hold one of. */
const mostTelling = ({ groups, all }: Piece): string[] | undefined => {
  let best: string[] | undefined;
  for (const g of all ? [...groups, all] : groups) if (useful(g) && (!best || weight(g) > weight(best))) best = g;
  return best;
};

/** All that a piece can be, where that is a short list, and the groups that it needs. */
interface Piece { all?: string[]; groups: string[][] }
const EMPTY: Piece = { all: [''], groups: [] };
const ANY: Piece = { groups: [] };

class Reader {
  at = 0;
  constructor(readonly source: string) {}

  /** Branches up to a closing bracket or the end. */
  either(): Piece {
    const branches = [this.row()];
    while (this.source[this.at] === '|') { this.at++; branches.push(this.row()); }
    if (branches.length === 1) return branches[0]!;
    const all = branches.every(b => b.all) ? branches.flatMap(b => b.all!) : undefined;
    if (all && all.length <= MOST_ALIKE) return { all, groups: [] };
    const one: string[] = [];
    for (const b of branches) {
      const best = mostTelling(b);
      if (!best) return ANY;
      one.push(...best);
    }
    return { groups: [one] };
  }

  /** Pieces one after another: what is a short list each is put together, as far as it stays short and is one word. */
  row(): Piece {
    const groups: string[][] = [];
    let run = [''], whole = true;
    while (this.at < this.source.length && this.source[this.at] !== '|' && this.source[this.at] !== ')') {
      const piece = this.times(this.one());
      if (!piece.all || run.length * piece.all.length > MOST_JOINED) {
        groups.push(...piece.groups, run);
        run = piece.all ?? [''];
        whole = false;
      } else run = piece.all.length === 1 && run.length === 1 ? [run[0]! + piece.all[0]!] : run.flatMap(a => piece.all!.map(b => a + b));
    }
    return whole ? { all: run, groups } : { groups: [...groups, run] };
  }

  /** What stands after a piece: "?", "*", "+", "{2,3}". */
  times(piece: Piece): Piece {
    if (!'?*+{'.includes(this.source[this.at] ?? '.')) return piece;
    const m = /^(?:[?*+]|\{\d+(?:,\d*)?\})\??/.exec(this.source.slice(this.at, this.at + 8));
    if (!m) return piece;
    this.at += m[0].length;
    if (/^\{[1-9]/.test(m[0]) || m[0][0] === '+') return { groups: [...piece.groups, ...(piece.all ? [piece.all] : [])] };
    return m[0][0] === '?' && piece.all ? { all: [...piece.all, ''], groups: [] } : ANY;
  }

  one(): Piece {
    PLAIN.lastIndex = this.at;
    const plain = PLAIN.exec(this.source)?.[0];
    if (plain) { this.at += plain.length; return { all: [plain], groups: [] }; }
    const c = this.source[this.at++]!;
    if (c === '(') return this.bracket();
    if (c === '[') return this.oneOf();
    if (c === '^' || c === '$') return EMPTY;
    if (c === '.' || c === ' ') return ANY;
    if (c !== '\\') return { all: [c], groups: [] };
    const e = this.source[this.at++]!;
    if (/[bB]/.test(e)) return EMPTY;
    if (/[pPuxk]/.test(e)) { this.at = this.source.length + 1; return ANY; } // of several signs, and seldom
    return /[a-zA-Z0-9]/.test(e) ? ANY : { all: [e], groups: [] };
  }

  bracket(): Piece {
    const kind = this.source[this.at] === '?' ? /^\?(?:[:=!]|<[=!]|<\w+>)/.exec(this.source.slice(this.at, this.at + 24))?.[0] ?? '' : '';
    this.at += kind.length;
    const inside = this.either();
    this.at++;
    return /[=!]$/.test(kind) ? EMPTY : inside; // what lies ahead or behind may be outside the match
  }

  /** A class of signs: a list where they are few. */
  oneOf(): Piece {
    CLASS.lastIndex = this.at;
    const m = CLASS.exec(this.source);
    if (!m) { this.at = this.source.length + 1; return ANY; }
    this.at += m[0].length;
    return m[1] || /\\|.-./.test(m[2]!) || m[2]!.length > 4 ? ANY : { all: [...m[2]!], groups: [] };
  }
}
/** Letters of which none is said to come and go. */
const PLAIN = /[a-z]+(?![?*+{])/y;
const CLASS = /(\^?)((?:\\.|[^\]\\])*)\]/sy;

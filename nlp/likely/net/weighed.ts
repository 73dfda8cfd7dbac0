import type { Ask } from '../../../domain/model/ask.ts';
import type { Sort } from '../sort.ts';
import { hasNet, net } from './net.ts';
import { piecesOf, type Meant, type Piece } from './pieces.ts';

/** More pieces of a note than this, and of the note before it, are left off. */
const MOST = 160, MOST_BEFORE = 48;

/** What the net says of a note: how likely each stretch of it tells each sort, and which words of it, or of the note before, name what is told of. */
export class Weighed {
  private readonly width: number;
  /** The pieces of the note before and of the note, each with its place among the rows. */
  private readonly before: readonly (Piece & { row: number })[];
  private readonly own: readonly (Piece & { row: number })[];
  private readonly rows: Float32Array;

  constructor(text: string, prior: string | undefined, meant: readonly Meant[] = [], meantBefore: readonly Meant[] = []) {
    const { vocabulary, run } = net(), first = vocabulary.get('[CLS]')!, stop = vocabulary.get('[SEP]')!;
    const before = prior === undefined ? [] : piecesOf(prior, vocabulary, meantBefore).slice(-MOST_BEFORE), own = piecesOf(text, vocabulary, meant).slice(0, MOST);
    const lead = [first, ...(prior === undefined ? [] : [...before.map(p => p.id), stop])];
    const ids = [...lead, ...own.map(p => p.id), stop];
    this.rows = run(ids, ids.map((_, i) => Number(prior !== undefined && i < lead.length)));
    this.width = this.rows.length / ids.length;
    this.before = before.map((p, i) => ({ ...p, row: i + 1 }));
    this.own = own.map((p, i) => ({ ...p, row: lead.length + i }));
  }

  /** How strongly a stretch of the note speaks for each sort, and for each attribute of what is told (log odds): its pieces on the whole, and the one that says most. */
  told(start: number, end: number): Map<Sort, number> | undefined {
    const { sorts, attributes, bias } = net().heads, names = [...sorts, ...attributes], of = this.own.filter(p => p.start < end && p.end > start);
    if (!of.length) return undefined;
    return new Map(names.map((s, k) => {
      let sum = 0, most = -Infinity;
      for (const p of of) { sum += this.at(p.row, k); most = Math.max(most, this.at(p.row, names.length + k)); }
      return [s, bias[k]! + sum / of.length + most];
    }));
  }

  /** How strongly a stretch of the note speaks for each sort of fact (log odds); a remark is what is left. */
  sorts(start: number, end: number): Map<Sort, number> | undefined {
    const told = this.told(start, end);
    return told && new Map(net().heads.sorts.filter(sort => sort !== 'remark').map(sort => [sort, told.get(sort)!]));
  }

  /** The piece of a stretch that says most for a sort; none where it has no piece. */
  loudest(start: number, end: number, sort: Sort): Piece | undefined {
    const { sorts, attributes } = net().heads, k = sorts.length + attributes.length + sorts.indexOf(sort);
    return this.own.filter(p => p.start < end && p.end > start).reduce<(Piece & { row: number }) | undefined>((a, b) => (a && this.at(a.row, k) >= this.at(b.row, k) ? a : b), undefined);
  }

  /** How strongly the note speaks for each question (log odds), with the piece that says most. */
  asked(): { kind: Ask['kind']; z: number; at: Piece }[] {
    const { sorts, attributes, asks, bias } = net().heads, from = sorts.length + attributes.length;
    return this.own.length === 0 ? [] : asks.map((kind, k) => {
      const at = this.own.reduce((a, b) => (this.at(b.row, 2 * from + k) > this.at(a.row, 2 * from + k) ? b : a));
      return { kind, z: bias[from + k]! + this.at(at.row, 2 * from + k), at };
    });
  }

  /** How likely each piece of the note before and of the note belongs to the name of what a stretch tells as that sort, 0 to 1. */
  named(start: number, end: number, sort: Sort): { before: (Piece & { p: number })[]; own: (Piece & { p: number })[] } {
    const { sorts, seeks, found } = net().heads, k = sorts.indexOf(sort);
    const p = this.pointing(start, end, 0, seeks[k], found);
    return p ? { before: this.before.map(p), own: this.own.map(p) } : { before: [], own: [] };
  }

  /** How likely each piece of the note belongs to what a stretch says as that field of its kind ("fit with"), 0 to 1; nothing where the net knows no such field. */
  says(start: number, end: number, field: string): (Piece & { p: number })[] {
    const { fields, fieldSeeks, held } = net().heads, k = fields.indexOf(field);
    const p = k < 0 ? undefined : this.pointing(start, end, 1, fieldSeeks[k], held[k]!);
    return p ? this.own.map(p) : [];
  }

  /** How strongly the net takes a clause to begin at that place in the note's text (log odds), as if the note had no stops; neither way past what it reads of a long one. */
  begins(start: number): number {
    const piece = this.own.find(p => p.end > start);
    return piece ? this.at(piece.row, this.width - 1 - net().heads.spots.length) : 0;
  }

  /** How strongly a single word or figure speaks for what it may tell by itself (log odds): each of the net's spots. Nothing past what it reads of a long note. */
  alone(start: number, end: number): ReadonlyMap<string, number> {
    const { spots } = net().heads, of = this.own.filter(p => p.start < end && p.end > start);
    return new Map(of.length ? spots.map((spot, k) => [spot, of.reduce((sum, p) => sum + this.at(p.row, this.width - spots.length + k), 0) / of.length]) : []);
  }

  /** What a stretch asks of the pieces, of names (0) or of fields (1), and how likely each answers. */
  private pointing(start: number, end: number, which: 0 | 1, sought: readonly number[] | undefined, bias: number): ((piece: Piece & { row: number }) => Piece & { p: number }) | undefined {
    const { sorts, attributes, asks, seeks } = net().heads, of = this.own.filter(p => p.start < end && p.end > start), wide = seeks[0]!.length, seek = sought ? [...sought] : new Array<number>(wide).fill(0);
    if (!of.length) return undefined;
    const asking = 2 * (sorts.length + attributes.length) + asks.length + 2 * which * wide, answering = asking + wide;
    for (const p of of) for (let d = 0; d < wide; d++) seek[d]! += this.at(p.row, asking + d) / of.length;
    return piece => {
      let z = 0;
      for (let d = 0; d < wide; d++) z += seek[d]! * this.at(piece.row, answering + d);
      return { ...piece, p: 1 / (1 + Math.exp(-(z / Math.sqrt(wide) + bias))) };
    };
  }

  private at(row: number, column: number): number { return this.rows[row * this.width + column]!; }
}

const kept = new Map<string, Weighed>(), KEPT = 64;

/** What the net says of a note after the note before it; nothing where there is no net. `meant`, `meantBefore`: what either says otherwise than in plain words. The last few are kept, for each note is read again as the one before. */
export function weigh(text: string, prior?: string, meant: readonly Meant[] = [], meantBefore: readonly Meant[] = []): Weighed | undefined {
  if (!hasNet()) return undefined;
  const key = JSON.stringify([text, prior, meant, meantBefore]);
  let have = kept.get(key);
  if (!have) {
    if (kept.size >= KEPT) kept.delete(kept.keys().next().value!);
    kept.set(key, have = new Weighed(text, prior, meant, meantBefore));
  }
  return have;
}

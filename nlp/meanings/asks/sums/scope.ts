import type { FoundValue } from '../../../types.ts';
import { slateOf } from '../../../dimensions/rule.ts';
import { type Desk, foundIn, sentenceAt } from '../desk.ts';
import { corrected } from './corrected.ts';

export type Given = Record<string, unknown>;

/** A figure of the stretch with its place in the line. `unit` is absent for a bare number. */
export interface Figure { start: number; end: number; value: number; unit?: string; to?: number }

/** The stretch of the note that a sum takes its figures from, as characters [start, end) of the line. */
export class Scope {
  readonly desk: Desk;
  readonly start: number;
  readonly end: number;
  /** Where the question itself begins. */
  readonly at: number;
  /** The words of the stretch; offsets into it are offsets into the line less `start`. */
  readonly text: string;
  /** The same with every number written as # and ~. */
  readonly mask: string;
  readonly taken: [number, number][] = [];
  private readonly found: ReturnType<typeof foundIn>;
  private readonly numAt: Map<number, { value: number; end: number; frac?: [number, number]; pair?: [number, number] }>;

  constructor(desk: Desk, start: number, end: number, at = start) {
    this.at = at;
    this.desk = desk;
    this.start = start;
    this.end = end;
    this.text = desk.text.slice(start, end);
    const slate = slateOf(desk.line, desk.sheet.ctx.at);
    this.numAt = slate.numAt;
    const found = foundIn(desk, start, end), { gone, carried } = corrected(found, this.text, start);
    this.found = found.filter(f => !gone.some(([a, b]) => f.start < b && a < f.end)).map(f => {
      const unit = f.dim === 'number' ? carried.find(c => c.start === f.start)?.unit : undefined;
      return f.dim === 'number' && unit ? { ...f, dim: 'measure', value: { value: f.value.value, unit } } : f;
    });
    this.mask = gone.reduce((mask, [a, b]) => mask.slice(0, a - start) + ' '.repeat(b - a) + mask.slice(b - start), slate.mask.slice(start, end));
    for (const [a, b] of gone) this.taken.push([a, b]);
  }

  /** Measures in any of these units (all when none are named), in order. */
  measures(...units: string[]): Figure[] {
    return this.found.flatMap(f => f.dim === 'measure' && (!units.length || units.includes(f.value.unit)) && !this.inLarger(f)
      ? [{ start: f.start, end: f.end, value: f.value.value, unit: f.value.unit, ...(f.value.to === undefined ? {} : { to: f.value.to }) }] : []);
  }

  /** Values of another dimension. */
  values<D extends 'thread' | 'percent' | 'money' | 'span' | 'when'>(dim: D): { start: number; end: number; value: FoundValue[D] }[] {
    return this.found.flatMap(f => (f.dim === dim ? [{ start: f.start, end: f.end, value: f.value as FoundValue[D] }] : []));
  }

  /** Numbers that belong to nothing larger. */
  numbers(): Figure[] {
    return this.found.flatMap(f => f.dim === 'number' && f.rule !== 'a couple' && !this.found.some(o => o.dim !== 'number' && o.dim !== 'money' && o.start <= f.start && o.end >= f.end && !(o.dim === 'thread' && o.sure === 'implied'))
      ? [{ start: f.start, end: f.end, value: f.value.value }] : []);
  }

  /** The number written where the mask has its # at `at` of the stretch. */
  num(at: number): { value: number; pair?: [number, number] } | undefined { return this.numAt.get(this.start + at); }

  /** Lengths: measures in these units, and bare fractions, which a shop says for inches. */
  lengths(...units: string[]): Figure[] {
    const all = this.measures(...units);
    const frac = this.found.flatMap(f => f.dim === 'number' && f.value.value < 12 && (f.value.form === 'fraction' || f.value.form === 'mixed') && !this.found.some(o => o.dim !== 'number' && o.start <= f.start && o.end >= f.end) ? [{ start: f.start, end: f.end, value: f.value.value, unit: 'in' }] : []);
    return [...all, ...frac].sort((a, b) => a.start - b.start);
  }

  /** The first match of a pattern over the mask, with the values of its numbers in order. */
  seen(pattern: RegExp): { m: RegExpExecArray; nums: number[]; start: number; end: number } | undefined {
    const m = pattern.exec(this.mask);
    if (!m) return undefined;
    const nums: number[] = [];
    for (let i = m.index; i < m.index + m[0].length; i++) { const n = this.mask[i] === '#' ? this.num(i) : undefined; if (n) nums.push(n.value); }
    return { m, nums, start: this.start + m.index, end: this.start + m.index + m[0].length };
  }

  /** The words just before and just after a figure, within its clause. */
  before(f: { start: number }, length = 26): string { return this.desk.text.slice(Math.max(this.start, f.start - length), f.start); }
  after(f: { end: number }, length = 26): string { return this.desk.text.slice(f.end, Math.min(this.end, f.end + length)); }

  /** Of several, the one nearest to the question: in its own sentence, else the last before it, else the first after. */
  nearest<F extends { start: number; end: number }>(figures: readonly F[]): F | undefined {
    const s = sentenceAt(this.desk, this.at);
    return figures.find(f => f.start >= s.start && f.end <= s.end) ?? figures.filter(f => f.end <= this.at).at(-1) ?? figures[0];
  }

  /** Of several, those in the question's own sentence where it has any. */
  here<F extends { start: number; end: number }>(figures: readonly F[]): readonly F[] {
    const s = sentenceAt(this.desk, this.at), own = figures.filter(f => f.start >= s.start && f.end <= s.end);
    return own.length ? own : figures;
  }

  /** Marks a figure as one that the sum took. */
  take(...figures: ({ start: number; end: number } | undefined)[]): void { for (const f of figures) if (f) this.taken.push([f.start, f.end]); }

  private inLarger(f: { start: number; end: number }): boolean {
    return this.found.some(o => o.dim === 'thread' && o.start <= f.start && o.end >= f.end && o.end - o.start > f.end - f.start);
  }
}

/** Sets a value and its unit, when there is one. */
export function put(given: Given, name: string, f: { value: number; unit?: string } | undefined): void {
  if (!f) return;
  given[name] = f.value;
  if (f.unit) given[`${name}Unit`] = f.unit;
}

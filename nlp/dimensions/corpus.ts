import type { Dim, FoundValue } from '../types.ts';

/** A phrase that one rule reads from its first word to its last, and the value that it has; `part` where only these words of it are read. */
export interface DimPhrase<D extends Dim> { text: string; value: Partial<FoundValue[D]>; part?: string; at?: string }
/** A dimension's corpus: what it reads, and phrases in which it must find nothing. */
export interface DimCorpus<D extends Dim> { dim: D; reads: readonly DimPhrase<D>[]; never: readonly string[] }

/** "phrase" -> value, many at a time. */
export const read = <D extends Dim>(pairs: readonly (readonly [text: string, value: Partial<FoundValue[D]>])[]): DimPhrase<D>[] => pairs.map(([text, value]) => ({ text, value }));
/** Many phrases of one value. */
export const alike = <D extends Dim>(value: Partial<FoundValue[D]>, texts: readonly string[]): DimPhrase<D>[] => texts.map(text => ({ text, value }));

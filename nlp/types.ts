import type { ReadContext, TraceLine } from '../domain/model/reading.ts';

/** A word or mark of the note. `start`/`end` are offsets into the note as it was said, so that every reading can point at its words. */
export interface Token {
  /** As written. */
  text: string;
  /** Lower case, curly quotes made straight. */
  low: string;
  start: number;
  end: number;
  /** Set when mending changed `low`; `text` keeps what was said. */
  mended?: boolean;
  /** A filler ("um", "uh") stood before it: speech drew breath here. */
  pause?: boolean;
}

export type Sure = 'certain' | 'implied';

/** Values that the dimensions find. Units as the contract writes them. */
export interface NumberValue { value: number; /** "about", "some" stood before it. */ about?: boolean; form: 'digits' | 'words' | 'fraction' | 'mixed' | 'article' }
export interface MeasureValue { value: number; unit: string; about?: boolean; /** The upper end of a range ("ten to twelve thou"). */ to?: number }
export interface ThreadValue { /** "5/8-11", "M12x1.75", "M16", "1/4-20", "3/4" where only a diameter is known. */ size: string; series?: 'coarse' | 'fine' }
export interface MoneyValue { value: number; per?: 'each' | 'both' | 'pair' | 'foot' | 'set' | 'lot' | 'dozen' | 'hour'; role?: 'shipping' | 'tax' | 'core' ; certainCurrency?: boolean }
/** A day or span of days (`to` absent: open end), YYYY-MM-DD in the note's own zone; `time` HH:MM where said. */
interface WhenValue { from?: string; to?: string; time?: string; vague?: boolean }
/** A length of time: "two hours", "a fortnight", "half an hour", "three weeks". */
export interface SpanValue { amount: number; unit: 'minutes' | 'hours' | 'days' | 'weeks' | 'months' | 'years' | 'miles' }
interface PercentValue { value: number }

export type FoundValue = {
  number: NumberValue; measure: MeasureValue; thread: ThreadValue; money: MoneyValue; when: WhenValue; span: SpanValue; percent: PercentValue;
};
export type Dim = keyof FoundValue;

/** A stretch of tokens [from, to) that a dimension's rule understood. Stretches may overlap until the overlap refiner has run; the trace says what was dropped. */
export type Found = { [D in Dim]: { dim: D; from: number; to: number; value: FoundValue[D]; sure: Sure; rule: string } }[Dim];

/** What a word is in its sentence. One letter-saving name a class; `adj` holds states and sides, `prt` the particles that stay with a verb. */
export type Tag = 'noun' | 'verb' | 'adj' | 'adv' | 'det' | 'num' | 'pron' | 'poss' | 'be' | 'have' | 'do' | 'modal' | 'neg' | 'to'
  | 'prep' | 'prt' | 'cc' | 'sub' | 'wh' | 'mark' | 'intj';

/** The working state that every stage reads. */
export interface Sheet {
  /** The note as said. */
  text: string;
  /** Without what tidying dropped; the dropped words are in the trace. */
  tokens: Token[];
  /** One a token. */
  tags: Tag[];
  found: Found[];
  ctx: ReadContext;
  trace: TraceLine[];
  /** How strongly what was learned takes a clause to begin at a token (log odds); none where only rules have a say. */
  begins?: (token: number) => number;
}

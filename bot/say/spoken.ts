/**
 * What an answer sounds like: a headline in one or two short lines, and where there is a list, its lines, which the conversation gives out in pages.
 */
export interface Spoken {
  say: string;
  list?: string[];
  /** Said when more is asked for ("longer"). */
  longer?: string;
}

/** What a sentence needs to know beside the answer: the moment, to say "tomorrow". */
export interface Saying { at: string }

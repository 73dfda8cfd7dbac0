import { nameWords } from '../model/names.ts';
import { remembered } from '../model/remembered.ts';
import { alsoNoun, isFitting, isVerb, verbFamily } from '../log/verbs.ts';
import { canonicalWords } from './words.ts';

/** One act of work: a verb and a part, or a part alone for its fitting for good. `off`: its taking off. Words are compared, not text. */
export interface Act {
  /** Family of the verb (`spray` is `paint`); left out for fitting. */
  verb?: string;
  /** The part's words that count, in one spelling each; empty for a verb alone. */
  words: readonly string[];
  off?: boolean;
}

const partWords = remembered((part: string): readonly string[] => canonicalWords(nameWords(part)));

const ARTICLE = /^(the|a|an|my|his|her|its|our)$/;

/** Reads `paint the hood`, `bleed brakes`, `hood off`, `left front wheel`. A word that names parts too is a verb only before an article. */
export const actOf = remembered((phrase: string): Act => {
  const words = phrase.trim().toLowerCase().split(/\s+/).filter(Boolean);
  const off = words.length > 1 && words.at(-1) === 'off';
  const rest = off ? words.slice(0, -1) : words;
  const article = rest.length > 2 && ARTICLE.test(rest[1]!);
  const star = rest.length > 1 && rest[1] === '*';
  const verb = rest.length > 1 && (article || star || (isVerb(rest[0]!) && !alsoNoun(rest[0]!))) ? rest[0]! : undefined;
  const part = (verb ? rest.slice(1) : rest).join(' ');
  return act(verb, part, off);
});

/** The act of a job whose verb and part are known apart. */
export function act(verb: string | undefined, part: string, off = false): Act {
  const words = part === '*' ? ['*'] : partWords(part);
  return { ...(verb && !isFitting(verb) ? { verb: verbFamily(verb) } : {}), words, ...(off ? { off } : {}) };
}

/** One text for acts that are the same. */
export const actKey = ({ verb = '', words, off }: Act): string => `${verb}|${words.join(' ')}${off ? '|off' : ''}`;

import type { Entry } from '../../domain/model/entry.ts';
import { namedBy } from '../../domain/model/named-by.ts';
import { isNumberWord } from '../text/number-words.ts';
import { NEGATIVE } from '../words/grammar.ts';
import { singular } from '../words/nouns.ts';
import { bareWords, type HeardWord } from './doubt.ts';
import { isFrameWord } from './mend/plain-words.ts';

/** Log-probability under which a word heard over a machine is drowned. */
const DROWNED = -1.6;
/** The same in a note about a thing that the shop doesn't know: most false facts of noisy notes are about things that there are none of. */
const FAINT = -0.5;

/**
 * The words of a note that a machine may have drowned and that change what would be written down. In quiet one faint word in ten is wrong; over a
 * machine one in three, and two in three of those heard in two ways, the trade's as much as others (measured on made noise). All of the note counts, not
 * the words of an entry alone: a deed that is misheard leaves "check it" about something else. Words that hold a sentence together change
 * little, save figures and "not". What mending put in the place of a faint word is taken: it is wrong half as often.
 */
export function drownedIn(text: string, entries: readonly Entry[], heard: readonly HeardWord[], names: readonly string[]): string[] {
  const written = entries.filter(({ kind }) => kind !== 'remark');
  if (heard.length === 0 || written.length === 0) return [];
  const least = written.some((entry) => isNew(entry, names)) ? FAINT : DROWNED;
  const drowned = new Set(heard.filter(({ score }) => score < least).map(({ word }) => word.toLowerCase()));
  return bareWords(text.toLowerCase()).filter((word) => drowned.has(word) && (isFigure(word) || NEGATIVE.has(word) || !isFrameWord(word)));
}

const isFigure = (word: string) => /\d/.test(word) || isNumberWord(word);

/** About a thing by a name that neither holds one of the shop's names nor is a short form of one. */
function isNew(entry: Entry, names: readonly string[]): boolean {
  const name = wordsOf(namedBy(entry) ?? '');
  return name.length > 0 && !names.map(wordsOf).some((known) => holds(name, known) || holds(known, name));
}

const wordsOf = (name: string): string[] => (name.toLowerCase().match(/[a-z0-9]+/g) ?? []).map(singular);
const holds = (words: string[], some: string[]): boolean => some.length > 0 && some.every((word) => words.includes(word));

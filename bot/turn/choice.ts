import { nameKey, namesMeant } from '../../domain/model/names.ts';

const ANSWER_WORDS = /\b(the|that|this|one|ones|it's|its|is|was|i|mean|meant|no|um|uh|please)\b/g;

/** Choices that are figures themselves ("5 (three lines)") are not numbered: "5" must mean the figure. */
export const areNumbered = (choices: readonly string[]): boolean => !choices.some(c => /^\d/.test(c));

/** Which of the offered choices a short answer means: by its number, its name, or the words that only it has ("the right one"). */
export function choiceMeant(said: string, choices: readonly string[]): string | undefined {
  const text = said.toLowerCase().replace(/[.!?,]+/g, ' ').trim();
  const number = /^(\d+)$/.exec(text);
  if (number && areNumbered(choices)) return choices[Number(number[1]) - 1];
  const figure = number && choices.find(c => c.split(/[ ,(]/)[0] === number[1]);
  if (figure) return figure;
  const exact = choices.find(c => nameKey(c) === nameKey(text));
  if (exact) return exact;
  const bare = text.replace(ANSWER_WORDS, ' ').trim();
  // A long answer is a new note, not a choice.
  if (!bare || bare.split(/\s+/).length > 5) return undefined;
  const meant = namesMeant(bare, choices);
  return meant.length === 1 ? meant[0] : undefined;
}

import { nameKey } from '../model/names.ts';
import type { Ref } from '../model/stored.ts';
import { keyOn, resolve } from './naming.ts';
import type { Machine } from './shop.ts';
import { alsoNoun, isFitting, isRemoving, isVerb, verbFamily } from './verbs.ts';

/**
 * A short phrase of a rule, a `for` or a question: a verb and a part ("polish the shaft"), a part alone ("spindle": that it goes on),
 * or "hood off". Fitting is the part alone; taking off is `off`.
 */
const ARTICLES = new Set(['the', 'a', 'an', 'my', 'his', 'her', 'its', 'our', 'that', 'this', 'those', 'these', 'some', 'any', 'all']);
const PARTICLES = new Set(['on', 'in', 'up', 'down', 'back', 'again', 'together', 'over', 'at']);
const AWAY = new Set(['off', 'out', 'away', 'apart']);

export function readPhrase(machine: Machine, phrase: string): Ref {
  const words = phrase.trim().toLowerCase().split(/\s+/).filter(Boolean);
  const whole = keyOn(machine, phrase);
  if (machine.things.has(whole)) return { key: whole, name: phrase.trim() };
  const verbs = verbLength(machine, words);
  const particles = trailing(words.slice(verbs));
  const name = strip(words.slice(verbs)).join(' ');
  const said = verbs ? words.slice(0, verbs).filter(w => !PARTICLES.has(w) && !AWAY.has(w)).join(' ') : '';
  const away = particles.some(w => AWAY.has(w)) || words.slice(0, verbs).some(w => AWAY.has(w));
  const ref: Ref = { key: name ? resolve(machine, name) : '', name: name || phrase.trim() };
  if (said && isRemoving(said) || (away && (!said || isFitting(said)))) ref.off = true;
  else if (said && !isFitting(said)) ref.verb = said;
  return ref;
}

/**
 * How many words at the front are the verb: up to the article, or the one word that is a known work, with its particle. A word that
 * names parts too ("drain plug") is a verb before an article, a particle, or a known part of several words.
 */
function verbLength(machine: Machine, words: string[]): number {
  const article = words.findIndex(w => ARTICLES.has(w));
  if (article >= 1 && article <= 3 && isLikelyVerb(words[0]!)) return article;
  if (words.length === 0 || !isVerb(words[0]!)) return 0;
  if (words.length === 1) return 1;
  if (PARTICLES.has(words[1]!) || AWAY.has(words[1]!)) return words.length > 2 || !alsoNoun(words[0]!) ? 2 : 0;
  return alsoNoun(words[0]!) && !(words.length > 2 && machine.things.has(nameKey(strip(words.slice(1)).join(' ')))) ? 0 : 1;
}
/** Before an article stands a verb, unless it is a word of place ("behind the …"). */
const isLikelyVerb = (word: string): boolean => !PARTICLES.has(word) && !AWAY.has(word) && !/ing$|ed$/.test(word);

function trailing(words: string[]): string[] {
  const found: string[] = [];
  for (let i = words.length - 1; i > 0 && (PARTICLES.has(words[i]!) || AWAY.has(words[i]!)); i--) found.push(words[i]!);
  return found;
}
const strip = (words: string[]): string[] => {
  const kept = words.slice(0, words.length - trailing(words).length);
  return kept.filter((w, i) => !(i === 0 && ARTICLES.has(w)));
};

/** Whether two phrases mean the same act on the same thing. */
export const sameAct = (a: Ref, b: Ref): boolean =>
  a.key === b.key && !!a.off === !!b.off && (a.verb ? verbFamily(a.verb) : '') === (b.verb ? verbFamily(b.verb) : '');

/** A phrase again, for people: verb and name. */
export const phraseOf = (ref: Ref): string => ref.verb ? (nameKey(ref.name) && ref.name !== ref.verb ? `${ref.verb} ${ref.name}` : ref.verb) : ref.off ? `${ref.name} off` : ref.name;

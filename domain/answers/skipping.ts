import { readPhrase } from '../log/phrase.ts';
import { isVerb, sameWork } from '../log/verbs.ts';
import { nameWords } from '../model/names.ts';
import type { OpenAct } from '../plan/from-shop/act-of.ts';

/** Which open acts "the paint", "painting the shell", "the shell" means; undefined: none. */
export function skipping(phrase: string, acts: readonly OpenAct[]): ((a: OpenAct) => boolean) | undefined {
  const base = phrase.replace(/^(?:the |any |all (?:the |of the )?)?(\w+?)ing\b/, (all, stem: string) => [stem, `${stem}e`, stem.replace(/(.)\1$/, '$1')].find(isVerb) ?? all);
  const bare = base.replace(/^(?:the|my|any|all) /, '').replace(/ (?:job|work|on (?:it|that))$/, '');
  const ids = new Set<string>();
  for (const machine of new Set(acts.map(a => a.machine))) {
    const ref = readPhrase(machine, base);
    const known = machine.things.has(ref.key) && ref.key !== '';
    const verb = ref.verb ?? (!known && isVerb(bare) ? bare : undefined);
    for (const a of acts) {
      if (a.machine !== machine || (verb !== undefined && !(a.ref.verb && sameWork(a.ref.verb, verb)))) continue;
      if (known ? a.ref.key === ref.key : verb !== undefined && (ref.key === '' || ref.key === bare)) ids.add(a.id);
    }
  }
  // "The brakes" where there are shoes and drums of them.
  if (!ids.size) {
    const said = nameWords(bare).map(singular);
    for (const a of acts) if (said.length && said.every(w => nameWords(a.ref.key).map(singular).includes(w))) ids.add(a.id);
  }
  return ids.size ? a => ids.has(a.id) : undefined;
}

const singular = (word: string): string => word.replace(/s$/, '');

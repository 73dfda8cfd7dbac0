import { isClosed } from '../text/nominal.ts';
import type { Sheet } from '../types.ts';
import { COMMON } from '../words/common.ts';
import { CONDITION } from '../words/conditions.ts';
import { isTradeWord, nounClasses, partNames, singular } from '../words/nouns.ts';
import { verbForms } from '../words/verbs.ts';
import { apart, soundOf, type Sound } from './phones.ts';

/** The words that stand before each last word of the trade's compounds ("vane" and "valve" before "spring"), each with its sound. */
const BEFORE: ReadonlyMap<string, ReadonlyMap<string, Sound>> = (() => {
  const out = new Map<string, Map<string, Sound>>();
  for (const name of partNames()) {
    const words = name.split(' ');
    for (let i = 1; i < words.length; i++) {
      const last = singular(words[i]!), first = words[i - 1]!;
      if (!out.has(last)) out.set(last, new Map());
      out.get(last)!.set(first, soundOf([first]));
    }
  }
  return out;
})();

/** Sounds further apart than this are two words. */
const MOST = .12;

/**
 * "vein spring", "cap corner": a word ahead of a part's, where the trade has no such part and one that sounds the same. A word that may
 * stand there by itself (a side, a state, a verb, another part, a name of the shop's) stays.
 */
export function heardCompounds(sheet: Sheet, own: (word: string) => boolean): void {
  sheet.tokens.forEach((t, i) => {
    const next = sheet.tokens[i + 1];
    if (!next || t.mended || !/^[a-z]{3,}$/.test(t.low) || !/^[a-z]{3,}$/.test(next.low) || sheet.text.slice(t.end, next.start).trim() !== '') return;
    const low = t.low, last = singular(next.low), firsts = BEFORE.get(last);
    if (!firsts || firsts.has(low) || firsts.has(singular(low)) || own(low) || own(singular(low)) || isClosed(low) || isTradeWord(low) || CONDITION.has(low) || COMMON.has(low) || verbForms(low).length || nounClasses(`${low} ${next.low}`).size) return;
    const heard = soundOf([low]);
    if (heard.heavy < 1.8) return;
    const near = [...firsts].filter(([word, sound]) => singular(word) !== singular(low) && apart(heard, sound, MOST) <= MOST).map(([word]) => word);
    if (new Set(near.map(singular)).size !== 1) return;
    sheet.trace.push({ stage: 'mend', rule: 'a part of that name is known, and sounds the same', text: t.text, gave: near[0]! });
    t.low = near[0]!;
    t.mended = true;
  });
}

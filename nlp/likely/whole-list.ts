import type { Entry } from '../../domain/model/entry.ts';
import { namedBy } from '../../domain/model/named-by.ts';
import { nameWords } from '../../domain/model/names.ts';
import type { Told } from '../meanings/telling.ts';
import { isNumberWord } from '../text/number-words.ts';

/** A name that ends in several numbers: "sleeves two and three". */
const isList = (name: string): boolean => { const w = name.toLowerCase().split(/[\s,]+/); return w.length > 3 && /^(?:and|an|n|&)$/.test(w.at(-2)!) && [w.at(-1)!, w.at(-3)!].every(x => isNumberWord(x) || /^\d+$/.test(x)); };

/** An entry of one of several that the clause tells of in one breath is of them all: "three" of "sleeves two and three". */
export function wholeList(x: Told): Told {
  const name = namedBy(x.entry), whole = name === undefined ? undefined : x.clause.items.flatMap(i => (i.np && isList(i.np.name) ? [i.np.name] : []))[0];
  if (!whole || whole === name || !nameWords(name!).every(w => nameWords(whole).includes(w))) return x;
  return { ...x, entry: { ...x.entry, ['item' in x.entry ? 'item' : 'part']: whole } as Entry };
}

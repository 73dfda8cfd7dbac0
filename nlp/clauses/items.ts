import { phraseAt, type Phrase } from '../dimensions/part/phrase.ts';
import type { Found, Sheet, Tag } from '../types.ts';
import { CONDITION } from '../words/conditions.ts';
import { SIDES } from '../words/sides.ts';
import { PERSONS } from '../words/persons.ts';
import { nounClasses } from '../words/nouns.ts';
import { NAMED } from '../words/quantities.ts';
import { verbForms, type VerbForm } from '../words/verbs.ts';

/** A chunk of a sentence: a noun phrase, a value, or a single word with its class. Tokens [from, to). */
export interface Item {
  t: 'np' | 'dim' | Tag;
  from: number;
  to: number;
  /** The word, or the words of the chunk. */
  low: string;
  np?: Phrase;
  f?: Found;
  /** For a verb: its base and form; where a word is both past and base ("put"), `form` is the past. */
  base?: string;
  form?: VerbForm['form'];
  /** Speech drew breath before it. */
  pause?: boolean;
}

const RANK: Record<Found['dim'], number> = { when: 7, span: 6, money: 5, measure: 4, percent: 3, thread: 2, number: 1 };

/** The value that begins at a token: the longest, certain before implied. */
export function valueAt(sheet: Sheet, i: number, to: number): Found | undefined {
  return sheet.found.filter(f => f.from === i && f.to <= to)
    .sort((a, b) => Number(a.dim === 'number') - Number(b.dim === 'number') || Number(b.sure === 'certain') - Number(a.sure === 'certain') || (b.to - b.from) - (a.to - a.from) || RANK[b.dim] - RANK[a.dim])[0];
}

/** The chunks of the tokens [from, to), in order and without gaps. */
export function itemsOf(sheet: Sheet, from: number, to: number): Item[] {
  const out: Item[] = [];
  for (let i = from; i < to;) {
    const item = itemAt(sheet, i, to, out.at(-1));
    out.push(sheet.tokens[i]!.pause ? { ...item, pause: true } : item);
    i = item.to;
  }
  return bothSides(out);
}

/** "left and right track rods": the first side stands for a rod of its own. */
function bothSides(items: Item[]): Item[] {
  return items.map((it, k) => {
    const two = items[k + 2], words = two?.np?.said.split(' ') ?? [];
    if (!SIDES.has(it.low.replace(/^(the|both|a|an|one) /, '')) || it.np && !it.np.stands && it.np.said.includes(' ') || !/^(and|&|\+)$/.test(items[k + 1]?.low ?? '') || words.length < 2 || !SIDES.has(words[0]!)) return it;
    const name = [it.low.replace(/^(the|both|a|an|one) /, ''), ...words.slice(1)].join(' ');
    return { ...it, t: 'np' as const, np: { ...two!.np!, from: it.from, to: it.to, nameFrom: it.from, head: it.from, said: name, name } };
  });
}

function itemAt(sheet: Sheet, i: number, to: number, prev: Item | undefined): Item {
  const { tokens, tags } = sheet, tag = tags[i]!, low = tokens[i]!.low;
  if (prev?.f?.dim === 'measure' && prev.to === i && NAMED.test(low) && tags[i + 1] === 'noun' && !NAMED.test(`${low} ${tokens[i + 1]!.low}`) && !NAMED.test(tokens[i + 1]!.low)) return { t: 'np', from: i, to: i + 1, low, np: phraseAt(sheet, i, i + 1)! }; // "has nine thou slop bushing is shot"
  const np = ['det', 'noun', 'num', 'adj'].includes(tag) && !(tag === 'adj' && prev?.t === 'be' && CONDITION.has(low) && PERSONS.test(tokens[i + 1]?.low ?? '')) ? phraseAt(sheet, i, to) : undefined;
  if (np && tag === 'adj' && prev?.t === 'be' && CONDITION.has(low) && np.from === i && np.to > i + 1 && /^(be|have)$/.test(tags[np.to] ?? '')) return { t: 'adj', from: i, to: i + 1, low }; // "belt's frayed idler's noisy"
  const f = valueAt(sheet, i, to);
  if (f?.dim === 'number' && sheet.tokens[f.to - 1]?.low === 'of') {
    const p = phraseAt(sheet, f.to, to);
    if (p && !p.stands) return { t: 'np', from: i, to: p.to, low: words(sheet, i, p.to), np: { ...p, from: i, count: p.count ?? f.value.value } };
  }
  if (tag === 'det' && f?.dim === 'number' && f.value.value >= 12 && f.to > i + 1) { // "a hundred and twelve cups"
    const p = phraseAt(sheet, f.to - 1, to);
    if (p && !p.stands && p.to > f.to) return { t: 'np', from: i, to: p.to, low: words(sheet, i, p.to), np: { ...p, from: i, count: f.value.value } };
  }
  if (np?.spec && f?.dim === 'measure' && nounClasses(np.said).has('quantity') && np.count === undefined) return { t: 'dim', from: i, to: f.to, low: words(sheet, i, f.to), f };
  if (f && !(np && np.to > f.to && np.nameFrom > i && np.spec) && !(np && np.count !== undefined && (f.dim === 'number' || f.dim === 'money' && f.sure === 'implied' && np.to > f.to)) && !(np && f.dim === 'number' && np.to > f.to)) {
    if (!(f.dim === 'number' && !(tag === 'num' || low === 'a' && /^(hundred|thousand)$/.test(tokens[i + 1]?.low ?? ''))) && !(f.sure === 'implied' && np && np.to >= f.to && np.nameFrom <= f.from)) return { t: 'dim', from: i, to: f.to, low: words(sheet, i, f.to), f };
  }
  if (np) return { t: 'np', from: i, to: np.to, low: words(sheet, i, np.to), np };
  if (tag === 'verb') return { t: 'verb', from: i, to: i + 1, low, ...verbOf(low, prev) };
  return { t: tag, from: i, to: i + 1, low };
}

const words = (sheet: Sheet, from: number, to: number): string => sheet.tokens.slice(from, to).map(t => t.low).join(' ');

/** Base and form of a verb; after "be" and "have" a participle, after "to" and the modals a base. */
function verbOf(low: string, prev: Item | undefined): { base: string; form: VerbForm['form'] } {
  const forms = verbForms(low);
  const want = (f: VerbForm['form']): VerbForm | undefined => forms.find(v => v.form === f);
  const found = prev?.t === 'to' || prev?.t === 'modal' || prev?.t === 'do' ? want('base')
    : prev?.t === 'be' || prev?.t === 'have' ? want('part') ?? want('ing') ?? want('past')
      : want('past') ?? want('base') ?? want('part') ?? want('ing') ?? want('s');
  const any = found ?? want('past') ?? forms[0];
  if (any) return { base: any.base, form: any.form };
  if (/ed$/.test(low)) return { base: unlisted(low), form: 'past' };
  if (/ing$/.test(low)) return { base: stem(low.slice(0, -3)), form: 'ing' };
  return { base: low, form: 'base' };
}

/** The base of a verb that no list has, from its form in "-ed". */
export const unlisted = (low: string): string => stem(low.slice(0, -2));

/** The base that an unlisted "-ed" or "-ing" form came from, by the usual spelling. */
function stem(cut: string): string {
  if (/[^aeiou]i$/.test(cut)) return `${cut.slice(0, -1)}y`;
  if (/[aeiouy][^aeiouy]+[aeiou]ll$/.test(cut)) return cut.slice(0, -1); // "levelled"
  if (/(.)\1$/.test(cut) && !/(ll|ss|zz|ff)$/.test(cut)) return cut.slice(0, -1);
  return /([^aeiou][aeiou](?:c|g|s|v|z|[rklnd])|[bcdfgkpt]l|[dn]g|rc|nc|rs|ns|rv|lv|iz|ys|at|ut|ur)$/.test(cut) && !/(er|or|en|et|on|ain|ill|ang|ow|ew|el|eat|oat|out)$/.test(cut) ? `${cut}e` : cut;
}

import type { Entry } from '../../domain/model/entry.ts';
import { namedBy } from '../../domain/model/named-by.ts';
import type { Reading } from '../../domain/model/reading.ts';
import { nounClasses, isTradeWord, singular } from '../words/nouns.ts';
import { verbForms } from '../words/verbs.ts';
import { COMMON } from '../words/common.ts';
import type { HeardWord } from './doubt.ts';
import { drownedIn } from './drowned.ts';
import { isFrameWord, isPlainWord } from './mend/plain-words.ts';

/** What is known of the words beside their letters. */
interface HeardSense {
  /** Words that the recogniser scored low. */
  unsure: readonly string[];
  /** All words that were heard over a running machine, with their scores; none in quiet. */
  overNoise?: readonly HeardWord[];
  /** Machines, parts and places of the shop. */
  names: readonly string[];
}

/** Fields that hold a name or a figure: what is written down from them is a fact, and wrong when a word of it is. */
const FIELDS = ['part', 'item', 'do', 'action', 'condition', 'where', 'source', 'value', 'price', 'qty', 'hours', 'with', 'product', 'first', 'then'] as const;

/**
 * The words that what was read from a hearing leans on and that may well be wrong. Empty: log it. Remarks and questions cost nothing when
 * a word is wrong and are never asked about.
 */
export function leansOn(text: string, reading: Pick<Reading, 'entries'>, sense: HeardSense): string[] {
  const own = new Set(sense.names.flatMap((name) => wordsOf(name)).map(singular));
  const unsure = new Set(sense.unsure.flatMap(wordsOf));
  const told = reading.entries.filter((entry) => entry.kind !== 'remark' && entry.kind !== 'amend');
  const leans = told.flatMap((entry) => [...unsureOf(entry, unsure, own), ...strangeOf(entry, own), ...garbledOf(entry, text, unsure, own), ...bareOf(entry, text)]);
  return [...new Set([...leans, ...drownedIn(text, reading.entries, sense.overNoise ?? [], sense.names)])];
}

const wordsOf = (said: string): string[] => said.toLowerCase().match(/[a-z0-9]+(?:[./][a-z0-9]+)*/g) ?? [];
const isOfTrade = (word: string, own: ReadonlySet<string>): boolean => own.has(singular(word)) || isTradeWord(word) || nounClasses(word).size > 0;

function unsureOf(entry: Entry, unsure: ReadonlySet<string>, own: ReadonlySet<string>): string[] {
  const record = entry as Record<string, unknown>;
  const inFields = FIELDS.map((field) => record[field]).filter((v) => v !== undefined).flatMap((v) => wordsOf(String(v)))
    .filter((word) => unsure.has(word) && !isOfTrade(word, own) && (!isFrameWord(word) || /\d/.test(word)));
  // What was done is kept by its base verb: "knock" leans on a heard "knocked".
  const deed = wordsOf(String(record['action'] ?? record['do'] ?? ''));
  const verbs = [...unsure].filter((word) => verbForms(word).some(({ base }) => deed.includes(base)));
  const name = wordsOf(namedBy(entry) ?? '');
  // Two words that make a part of the trade's lists vouch for one another.
  const vouched = new Set(name.flatMap((word, i) => (i > 0 && nounClasses(`${name[i - 1]} ${word}`).size > 0 ? [name[i - 1]!, word] : [])));
  const inName = name.filter((word) => unsure.has(word) && !own.has(singular(word)) && !vouched.has(word) && !isFrameWord(word));
  return [...inFields, ...verbs, ...inName];
}

/** A name whose last word neither the trade nor the shop knows: most new parts are made of the trade's words, most mishearings are not. */
function strangeOf(entry: Entry, own: ReadonlySet<string>): string[] {
  const name = namedBy(entry);
  const last = name === undefined ? undefined : wordsOf(name).at(-1);
  return last !== undefined && !isOfTrade(last, own) ? [last] : [];
}

/** An unsure word of the stretch that is none of the language, the trade or the shop ("cutcher", "m44"): what is around it was heard as badly. */
function garbledOf(entry: Entry, text: string, unsure: ReadonlySet<string>, own: ReadonlySet<string>): string[] {
  const [from, to] = entry.span ?? [0, 0];
  const figures = ['value', 'price', 'qty', 'hours'].some((field) => field in entry);
  return wordsOf(text.slice(from, to)).filter((word) => unsure.has(word) && figures && /^[\d.,]+$/.test(word) || unsure.has(word) && /[a-z]{3}|\d[a-z]|[a-z]\d/.test(word) && !isPlainWord(word) && !COMMON.has(word) && !isOfTrade(word, own));
}

/** "Prime the hood": an order to oneself, or "primed" with its ending swallowed. */
function bareOf(entry: Entry, text: string): string[] {
  if (entry.kind !== 'job' || entry.part === undefined) return [];
  const verb = entry.do.split(' ')[0]!;
  return new RegExp(`(^|[.?!,] (?:and |then )?|\\band )${verb.replace(/[^a-z-]/gi, '')} (?:the|a|it|them|both|all|my|two|new|\\w+s\\b)`, 'i').test(text) && !/^(check|call|leave|keep)$/.test(verb) ? [verb] : [];
}

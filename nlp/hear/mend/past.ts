import { isTradeWord, nounClasses } from '../../words/nouns.ts';
import { inflect, isClass, verbForms, type VerbForm } from '../../words/verbs.ts';
import { repair, type Change, type Mended } from './change.ts';

/**
 * The ending of a past tense is hardly sounded before "the" ("ordered the" is "order the" to the ear), so a recogniser drops it. It is put
 * back where the rest of what was said tells that the thing was done; a bare verb with nothing of the kind stays an order to oneself.
 */
export function mendPast(mended: Mended): Mended {
  const { text, changes } = swallowed(mended);
  const made: Change[] = [...changes];
  const sentences = text.match(/[^.?!]+[.?!]*/g) ?? [];
  const out = sentences.map((sentence, i) => {
    const heads = bareHeads(sentence);
    if (!heads.length) return sentence;
    const after = sentences[i + 1] ?? '';
    return heads.reduceRight((said, head) => {
      if (isToCome(sentence, head) || !isTold(sentence, head, after)) return said;
      made.push({ from: head.word, to: pastOf(head.word), why: 'the ending of a past tense, dropped: the rest says it was done' });
      return said.slice(0, head.at) + pastOf(head.word) + said.slice(head.at + head.word.length);
    }, sentence);
  });
  return { text: out.join(''), changes: made };
}

/** "Pack to both hubs": the ending, heard as a word of its own. */
const swallowed = (mended: Mended): Mended =>
  repair(mended, /(^|[.?!] |\band )([a-z-]+) to (?=(?:both|the two|all|them|it|two|four|three) [a-z]+)/gi, 'the ending of a past tense, heard as "to"', (_, start, word) =>
    isBare(word!.replace(/^re-/i, '')) ? `${start}${word!.slice(0, word!.length - word!.replace(/^re-/i, '').length)}${pastOf(word!.replace(/^re-/i, ''))} ` : undefined);

interface Head { word: string; at: number }

/** A head of a clause: at the start, behind a word of starting, behind a comma or "and". */
const HEADS = /(?:^\s*(?:(?:okay|ok|right|righto|so|then|well|uh|um)[, ]+)?|,\s+(?:and\s+|then\s+|and then\s+|so i\s+|i\s+)?|\band\s+(?:then\s+)?)(?<word>[a-z]+)(?=\s+(?:the|a|an|it|them|'em|both|all|my|his|her|its|their|this|that|those|these|new|old|two|three|four|five|six|\d+|up|off|out|down|in|on|some|left|right|front|rear)\b)/gi;

const DAY_TO_COME = /\b(tomorrow|tonight|later on|next (?:week|time|month|weekend|\w+day))\b/i;
/** What is still to come: then a bare verb is meant. */
const LATER = /\b(later|when|if|once|before|until|till|need(?:s)? to|ha(?:ve|s) to|got to|gotta|must|should|will|'ll|going to|gonna|want to|ought|don't|remember|remind|please|let's|how|what|could|would|can)\b(?! be here| be back)/i;
/** Beside these a thing has been done: a time gone by. */
const GONE = /\b(this (?:morning|afternoon|arvo)|yesterday|last (?:night|week|weekend|month|\w+day)|earlier|the other (?:day|night)|(?:an? |two |three )?(?:hours?|days?|weeks?) ago)\b/i;
/** What follows an order that was placed. */
const COMING = /\b(should be here|(?:be|is|are) here (?:by|on|the)|says? (?:a |it'll|they'll|he'll|two|three|four|about)|on (?:its|their) way|(?:a piece|each) (?:and|plus)|plus .{0,12}(?:shipping|post|postage|carriage)|for '?em\b|comes? (?:on|by|next)|backordered|in stock)/i;
const PAID = /[$£€]\d|\b(?:\d+|ten|twenty|thirty|forty|fifty|sixty) ?(?:dollars|bucks|quid|pounds|each|apiece)\b|\bfor (?:\d+|a (?:fiver|tenner|song))\b/i;
/** What is said of a thing after it was worked on: how it is now, or that it is to be looked at again. */
const RESULT = /^\s*(?:(?:it|they|she|both|that)(?:'s|'re|’s| is| are)? (?:just |now |only )?(?:hung|held|sitting|on|off|fits?|fitted|works?|holds?|turns?|looks?|came|went|ran|runs?|spins?|moved|moves|free|good|tight|dry|clean)|(?:re)?-?check (?:it|them|the)\b|no(?:w| longer| leaks| more)|took (?:me|an?|two|three|the|about)|came (?:up|out|off)|looks? |runs? )/i;

const DEEDS = ['off', 'on', 'hang', 'tight', 'work', 'order', 'buy'] as const;
const forms = (word: string): readonly VerbForm[] => verbForms(word.toLowerCase());

/** Verbs of work whose past ends in -ed and is not the bare verb itself; those that people tell themselves ("check", "leave") are left out. */
function isBare(word: string): boolean {
  const low = word.toLowerCase();
  if (/^(check|recheck|leave|call|ring|make|keep|work|time|ease|back|set|start|try|need|want|look|watch|mind)$/.test(low)) return false;
  const all = forms(low);
  return all.some(({ form }) => form === 'base') && !all.some(({ form }) => form === 'past') && DEEDS.some((cls) => isClass(low, cls)) && /ed$/.test(pastOf(low));
}

const pastOf = (word: string): string => {
  const past = (inflect(word.toLowerCase()) as (VerbForm & { word: string })[]).find(({ form }) => form === 'past')!.word;
  return /^[A-Z]/.test(word) ? past[0]!.toUpperCase() + past.slice(1) : past;
};

function bareHeads(sentence: string): Head[] {
  return [...sentence.matchAll(HEADS)].flatMap((m) => {
    const word = m.groups!['word']!;
    return isBare(word) ? [{ word, at: m.index + m[0].length - word.length }] : [];
  });
}

/** A past tense at the head of another clause of the sentence ("reamed it", "and started painting"): clauses told together agree. */
function hasPastFellow(sentence: string): boolean {
  return [...sentence.matchAll(/(?:^\s*|,\s+(?:and\s+|then\s+)?|\band\s+(?:then\s+|only then\s+)?|\bi\s+)([a-z]+)\b/gi)].some(([, word]) => {
    const all = forms(word!);
    return all.some(({ form }) => form === 'past') && !all.some(({ form }) => form === 'base') && !nounClasses(word!.toLowerCase()).size;
  }) || /\b(?:what|it|that|they|he|she|which) (?:came|was|were|went|ran|fell|broke|took|looked|turned|held|had)\b/i.test(sentence);
}

/** A condition or a plan that covers the clause: anywhere before it, or in its own words; what is coming after another "and" is of another. */
function isToCome(sentence: string, { at }: Head): boolean {
  const before = sentence.slice(0, at);
  const clause = sentence.slice(at).split(/, |\band\b/)[0]!;
  return DAY_TO_COME.test(sentence) || LATER.test(clause) || LATER.test(before.split(/\band\b(?! then)|, so /).at(-1)!) || /^\s*(?:if|when|once|before|after)\b/i.test(before);
}

function isTold(sentence: string, head: Head, after: string): boolean {
  if (GONE.test(sentence) || hasPastFellow(sentence)) return true;
  if (isClass(head.word.toLowerCase(), 'order')) return COMING.test(sentence) || COMING.test(after);
  if (isClass(head.word.toLowerCase(), 'buy')) return PAID.test(sentence) || RESULT.test(after);
  return RESULT.test(after) || ASIDE.test(sentence);
}

/** How it was done, of a size that nobody plans: "hot over the vise", "in one go", "by hand". */
const ASIDE = /\b(in one go|by hand again|at last|finally|in the end|right in|with no (?:bother|trouble)|took (?:an?|two|three|the)|like (?:a dream|it was|butter))\b/i;

/** A noun that a participle follows without "was": "points clean with a little emery and gap to fifteen". */
const AFTER_NOUN = /\b(?<noun>[a-z]+),? (?<word>clean|gap|torque|grease|paint|prime|mask|polish|oil|seal|patch|press|ream|hone|lap|straighten|adjust|tighten|clamp|glue|solder|weld|braze)(?= (?:with|all round|all around|to \d|to (?:ten|twelve|fifteen|twenty|thirty|forty)))/gi;

/** "igniter points clean with emery and gap to 15 thou": participles that stand alone behind their noun. */
export function mendParticiples(mended: Mended): Mended {
  const changes = [...mended.changes];
  const put = (word: string, all: string) => { changes.push({ from: word, to: pastOf(word), why: 'the ending of a participle, dropped' }); return all.slice(0, all.length - word.length) + pastOf(word); };
  let text = mended.text.replace(AFTER_NOUN, (all, noun: string, word: string) =>
    isTradeWord(noun.toLowerCase()) && !forms(noun).some(({ form }) => form === 'past') && !/\b(to|will|must|should)\b/i.test(noun) ? put(word, all) : all);
  text = text.replace(/(?<=\b(?:\w+ed|hung|ground|put|on|in)\b[^.?!]{0,40}\band )(gap|torque|set|tighten|adjust|snug)(?= to (?:up )?(?:\d|ten|twelve|fifteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|a hundred))/gi, (word: string) => (word.toLowerCase() === 'set' ? word : put(word, word)));
  return { text, changes };
}

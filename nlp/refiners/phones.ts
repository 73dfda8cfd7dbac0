/**
 * How English words sound, as a row of coarse phones, and how far two rows are apart. Made for "could this have been heard for that": vowels weigh
 * little, pairs that differ in voice alone (p and b) less than half of a whole change, and an R or L that closes a syllable comes and goes.
 * Letter rules and weights are common practice, no source.
 */

/** Spellings to sounds, tried in order from the left at each place. `^`, `$` and looks to either side are of the single word. */
const SPELT: readonly (readonly [spelling: RegExp, phones: string])[] = ([
  ['^(?:kn|gn|pn)', 'n'], ['^wr', 'r'], ['^ps', 's'], ['^x', 'z'], ['^rh', 'r'], ['wh', 'w'],
  ['ough(?=$|t)', 'o'], ['augh(?=t)', 'o'], ['(?<=[ao]u)gh', 'f'], ['igh', 'i'], ['gh(?=$|t|[^aeiouy])', ''], ['gh', 'g'],
  ['tch', 'C'], ['(?<=^s|ar|or|ps?y|e)ch(?=$|s?$|[aeiou]n|l|r|m)', 'k'], ['ch(?=[rlm])', 'k'], ['sch', 'sk'], ['ch', 'C'], ['sh', 'S'], ['th', 'T'], ['ph', 'f'],
  ['(?:t|s|ss|c)i(?=on|an|ou|al)', 'S'], ['ture(?=s?$)', 'CeR'], ['tu(?=al)', 'Cu'], ['s(?=ure)', 'S'], ['ss', 's'],
  ['dge', 'J'], ['dg(?=[eiy])', 'J'], ['gg', 'g'], ['g(?=[ei]n|ine|e$|es$|ed$|in[gei]|y$)(?!et|iv)', 'J'], ['ng(?=$|s$)', 'n'], ['g', 'g'],
  ['cc(?=[ei])', 'ks'], ['sc(?=[eiy])', 's'], ['c(?=[eiy])', 's'], ['ck|cc|qu?e$', 'k'], ['(?<=[a-z])are(?=s?$|d$)', 'eR'], ['qu', 'kw'], ['c|q', 'k'], ['x', 'ks'],
  ['mb(?=$|s$|er|ed|ing)', 'm'], ['mn$', 'm'], ['(?<=[^aeiouy])le(?=$|s$|d$)', 'el'], ['(?<=[^aeiouy])re$', 'eR'],
  ['ed$', 'd'], ['(?<=[aeiouy]..?)e(?=s?$)(?<!ee)', ''], ['(?<=[aeiou].?[cgsxz])es$', 'ez'], ['s$', 'z'], ['j', 'J'],
  ['(?<=[aeiouyw])r(?=$|[^aeiouy])', 'R'], ['rr', 'r'],
  ['(?<=^[cw]|^sh)oul(?=d)', 'u'], ['ea(?=the|v[ey]|d$|ds$|dy|dl)', 'e'], ['eigh|ei(?=n)', 'e'], ['ee|ea|ie|ei', 'i'], ['oo|ue|ui|ew|eu', 'u'], ['ou|ow', 'a'], ['au|aw|oa|oi|oy', 'o'], ['ai|ay|ey(?!$)', 'e'], ['ey$', 'i'], ['y(?=[aeiou])', 'y'], ['y', 'i'],
  ['([bdfklmnptz])\\1', '$1'],
] as const).map(([s, p]) => [new RegExp(s, 'y'), p] as const);

const spoken = new Map<string, string>();

/** The phones of one word in lower case. */
function phonesOfWord(word: string): string {
  const have = spoken.get(word);
  if (have !== undefined) return have;
  const plain = word.replace(/['’]s?$/, '').replace(/[^a-z]/g, '');
  let out = '', at = 0;
  while (at < plain.length) {
    const hit = SPELT.find(([s]) => { s.lastIndex = at; return s.test(plain); });
    if (hit) { hit[0].lastIndex = at; const m = hit[0].exec(plain)!; out += hit[1].replace('$1', m[1] ?? ''); at += m[0].length; continue; }
    out += plain[at++];
  }
  out = out.replace(/(.)\1+/g, '$1');
  if (spoken.size > 20000) spoken.clear();
  spoken.set(word, out);
  return out;
}

/** The phones of some words said in one breath. */
const phonesOf = (words: readonly string[]): string => words.map(phonesOfWord).join('').replace(/(.)\1+/g, '$1').replace(/R(?=[aeiou])/g, 'r').replace(/Rr/g, 'r');

/** Words as a row of phones, laid out once for comparing with many others. */
export interface Sound {
  row: string;
  /** How much there is to hear in it. */
  heavy: number;
  /** Character codes of the phones, and what leaving each out costs. */
  codes: Uint8Array;
  costs: Float64Array;
}

/** How some words sound when said in one breath. */
export function soundOf(words: readonly string[]): Sound {
  const row = phonesOf(words), codes = Uint8Array.from(row, p => p.charCodeAt(0));
  return { row, codes, heavy: weightOf(row), costs: Float64Array.from(codes, (_, at) => weight(row[at]!, row, at)) };
}

const isVowel = (p: string): boolean => p !== '' && 'aeiou'.includes(p);
const NEAR: ReadonlyMap<string, number> = new Map(Object.entries({
  pb: .35, td: .35, kg: .35, fv: .35, sz: .15, CJ: .35, CS: .4, sS: .4, zS: .4, sC: .5, zJ: .5, tC: .5, dJ: .5, kC: .6, Tf: .35, Tt: .5, Td: .4, Ts: .4, Tv: .4, Tz: .5, mn: .4, lr: .6, rw: .4, lw: .5, fp: .5, vb: .5, vw: .5, kt: .7, gd: .7, pt: .8, pk: .8, bd: .8, rR: .2, lR: .6,
}).flatMap(([k, v]) => [[k, v], [k[1]! + k[0]!, v]] as [string, number][]));

const weight = (p: string, row: string, at: number): number =>
  isVowel(p) ? .3 : p === 'R' ? .2 : p === 'h' || p === 'y' ? .3 : p === 'w' ? .5
    : p === 'l' && isVowel(row[at - 1] ?? '') && !isVowel(row[at + 1] ?? '') ? .5
      : (p === 's' || p === 'z') && at === row.length - 1 ? .3 : (p === 't' || p === 'd') && !isVowel(row[at + 1] ?? '') ? .5 : p === 'n' || p === 'm' ? .7 : 1;

/** What it costs to hear one phone for another. */
export function change(a: string, b: string): number {
  if (a === b) return 0;
  const va = isVowel(a), vb = isVowel(b);
  if (va && vb) return .25;
  if (va !== vb) return (a === 'l' || b === 'l' || a === 'R' || b === 'R') ? .5 : 1.2;
  return NEAR.get(a + b) ?? 1;
}
/** `change` for every two phones, by their character codes. */
const CHANGE = Array.from({ length: 128 }, (_, a) => Float64Array.from({ length: 128 }, (__, b) => change(String.fromCharCode(a), String.fromCharCode(b))));

/** How much there is to hear in a row of phones. */
export function weightOf(row: string): number {
  let sum = 0;
  for (const p of row) sum += isVowel(p) ? .4 : p === 'R' || p === 'h' ? .3 : 1;
  return sum;
}

/** Room for the count, kept from one to the next. */
let rows: [Float64Array, Float64Array] = [new Float64Array(64), new Float64Array(64)];

/** The cost of turning one row into the other over the weight of the heavier: 0 sounds the same, 0.3 is another word. `most` stops the count early, at 1. */
export function apart(a: Sound, b: Sound, most = 1): number {
  const whole = Math.max(a.heavy, b.heavy, .1), limit = most * whole, wide = b.codes.length;
  if (rows[0].length <= wide) rows = [new Float64Array(2 * wide), new Float64Array(2 * wide)];
  let [above, row] = rows;
  above[0] = 0;
  for (let j = 1; j <= wide; j++) above[j] = above[j - 1]! + b.costs[j - 1]!;
  for (let i = 0; i < a.codes.length; i++) {
    const out = a.costs[i]!, changed = CHANGE[a.codes[i]!]!;
    let least = row[0] = above[0]! + out;
    for (let j = 1; j <= wide; j++) {
      const cost = row[j] = Math.min(above[j]! + out, row[j - 1]! + b.costs[j - 1]!, above[j - 1]! + changed[b.codes[j - 1]!]!);
      if (cost < least) least = cost;
    }
    if (least > limit) return 1;
    [above, row] = [row, above];
  }
  return above[wide]! / whole;
}

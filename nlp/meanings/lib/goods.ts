import type { Thing } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { thingsAt } from '../../clauses/things.ts';
import { textOf } from '../../dimensions/part/phrase.ts';
import type { Found } from '../../types.ts';
import { nounClasses } from '../../words/nouns.ts';
import { PERSONS } from '../../words/persons.ts';
import type { Telling } from '../telling.ts';

/** A thing to be got or that was got, with its count and the size, grade or length it is known by. */
export interface Goods { item: string; qty?: number; spec?: string; from: number; to: number; thing: Thing }

const CONTAINERS = /^(roll|length|piece|gallon|quart|pint|litre|liter|tin|can|tube|sheet|foot|feet|yard|metre|meter|coil|box|bag|bottle|jar|bar|tub|pound|kilo|set|pair|dozen|reel|spool|pack|packet|stick|bundle|drum|box)s?$/;

/** Goods named in a run of items: "two 3/8 bolts and a gland nut", "gasket paper, a sheet of it". Prices and sources end it. */
export function goodsIn(t: Telling, items: readonly Item[], k: number): Goods[] {
  const out: Goods[] = [];
  let i = k;
  while (i < items.length) {
    const it = items[i]!;
    if (it.np && !it.np.stands) {
      const { things, next } = thingsAt(t.sheet, items, i, t.memory);
      for (const thing of things) if (!isSeller(thing.name)) out.push(goods(t, thing));
      i = specAfter(t, items, next, out);
      continue;
    }
    if (it.np?.stands) {
      const topic = t.memory.topic();
      if (topic) out.push({ item: plainName(topic.name), from: it.from, to: it.to, thing: topic, ...(it.np.count !== undefined ? { qty: it.np.count } : countIn(it.low)) });
      i = specAfter(t, items, i + 1, out);
      continue;
    }
    if (it.f?.dim === 'measure' && items[i + 1]?.low === 'of' && items[i + 2]?.np) {
      const { things, next } = thingsAt(t.sheet, items, i + 2, t.memory);
      for (const thing of things) out.push({ ...goods(t, thing), spec: textOf(t.sheet, it.from, it.to) });
      i = next;
      continue;
    }
    if (it.f?.dim === 'measure' && items[i + 1]?.low === 'of' && items[i + 2]?.t === 'pron') { const topic = t.memory.topic(); if (topic) out.push({ item: plainName(topic.name), spec: textOf(t.sheet, it.from, it.to), from: it.from, to: it.to, thing: topic }); i += 3; continue; }
    if (it.f?.dim === 'number' && out.length === 0 && (!items[i + 1] || items[i + 1]!.t === 'mark' || /^(more|extra|spare|for|from|off|at)$/.test(items[i + 1]!.low)) && Number.isInteger(it.f.value.value) && t.memory.topic()) { const topic = t.memory.topic()!; out.push({ item: plainName(topic.name), qty: it.f.value.value, from: it.from, to: it.to, thing: topic }); i++; continue; }
    if (it.f?.dim === 'number' && items[i + 1]?.low === 'of' && out.length === 0 && items[i + 2]?.t === 'pron') { const topic = t.memory.topic(); if (topic && it.f.dim === 'number') out.push({ item: plainName(topic.name), qty: it.f.value.value, from: it.from, to: it.to, thing: topic }); i += 3; continue; }
    if (it.f?.dim === 'number' && out.length && /^(of|more)$/.test(items[i + 1]?.low ?? '') && it.f.dim === 'number') { out.at(-1)!.qty ??= it.f.value.value; i += 2; continue; }
    if (it.low === 'for' && out.length && (items[i + 1]?.np || items[i + 1]?.t === 'pron') && items[i + 2] && (items[i + 2]!.low === ',' || items[i + 2]!.t === 'cc')) { i = specAfter(t, items, i + 2, out); continue; }
    if (/^(for|from|at|off|by|so|before|because|until|to|when|with)$/.test(it.low) && out.length) break;
    i++;
  }
  return out;
}

/** A name that is a seller rather than a thing sold. */
export const isSeller = (name: string): boolean => { const head = name.split(' ').at(-1)!; const k = nounClasses(name).size ? nounClasses(name) : nounClasses(head); return k.has('source') && !k.has('part') && !k.has('fastener') && !k.has('consumable') && !k.has('tool') || PERSONS.test(name); };
const countIn = (low: string): { qty?: number } => { const m = /\b(two|three|four|five|six|seven|eight|nine|ten|twelve|\d+)\b/.exec(low); return m ? { qty: WORDS[m[1]!] ?? Number(m[1]) } : {}; };
const WORDS: Record<string, number> = { two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, twelve: 12 };

const plainName = (name: string): string => name.replace(/ (?:on|at|in) the \w+$/, '');

function goods(t: Telling, thing: Thing): Goods {
  const np = thing.np;
  const spec = [np?.spec, amountOf(t, thing)].filter(Boolean).join(' ');
  return { item: thing.name, from: thing.from, to: thing.to, thing, ...(thing.count !== undefined ? { qty: thing.count } : np?.quant === 'both' ? { qty: 2 } : {}), ...(spec ? { spec } : {}) };
}

/** "a foot of belt", "two gallons of primer": the bulk amount is what it is specified by. */
function amountOf(t: Telling, thing: Thing): string | undefined {
  const np = thing.np;
  if (!np) return undefined;
  const said = t.sheet.tokens.slice(np.from, np.to).map(x => x.low).join(' ');
  const head = np.said.split(' ').at(-1)!;
  if (!CONTAINERS.test(head) || /^(set|pair|dozen)s?$/.test(head) || thing.name === np.name) return undefined;
  return said.replace(/^(a|an|the|some|another) /, '');
}

/** Sizes and amounts after a comma or straight after the name: "quarter inch by three, eighteen long", "14 gauge", "about six foot". */
export function specAfter(t: Telling, items: readonly Item[], from: number, out: Goods[]): number {
  const last = out.at(-1);
  if (!last) return from;
  let k = from, begin = -1, end = -1;
  for (; k < items.length; k++) {
    const it = items[k]!;
    if (it.low === ',' || it.low === 'about' || it.low === '-' || it.low === ';' || it.low === '(' || it.low === ')') continue;
    if (it.low === 'by' || it.low === 'x' || it.low === '×' || it.low === 'long' || it.low === 'thick' || it.low === 'wide' || it.low === 'in' || it.low === 'and' || it.low === 'a' || it.low === 'of' || it.low === 'with') { if (begin >= 0 && it.low !== 'in' && it.low !== 'and' && it.low !== 'with' && it.low !== 'of') { if (it.low === 'long' || it.low === 'thick' || it.low === 'wide') end = k + 1; continue; } else if (it.low === 'in' && items[k + 1]?.np && /^(bronze|steel|brass|copper|stainless|size|oak|ash|leather|rubber)$/.test(items[k + 1]!.np!.said)) { if (begin < 0) begin = k + 1; end = k + 2; k++; continue; } else if (begin < 0 || it.low === 'with' || it.low === 'of') break; else continue; }
    const size = it.f && (it.f.dim === 'measure' || it.f.dim === 'thread' || it.f.dim === 'number' && (sizey(it.f) || items[k + 1]?.low === 'by' || items[k - 1]?.low === 'by' || /^(long|thick|wide|gauge|tooth|grit)$/.test(items[k + 1]?.low ?? '')));
    const grade = it.np && /^inch$/.test(it.np.said) && /^(thick|long|wide|deep|square|round)$/.test(items[k + 1]?.low ?? '') || it.t === 'verb' && /^(annealed|galvanised|galvanized|hardened|plated|waxed|braided|tinned|threaded|welded|coated)$/.test(it.low) || it.np && /^(grade|class|size|gauge|series|number|grit|section|sae|npt|bsp|unf|unc|bsw|bsf|ba|din|iso|treated|schedule)\b/.test(it.np.said) || it.np && /\b(npt|bsp|steel|brass|bronze|iron|oak|ash|rubber|thread|grit|ply|gauge|treated|leather)$/.test(it.np.said) || it.np && /^(copper|steel|brass|stainless|bronze|white oak|oak|annealed|plain|black|green|red|grey|gray|zinc|galvanised|galvanized|coarse|fine|heavy|light|medium|leather|rubber|cork|fibre|nylon|hardened|left hand|right hand|metric|imperial|\w+ threads?|(coarse|fine) thread|\w+ grit|ply)$/.test(it.np.said) || it.t === 'adj' && begin >= 0 || it.t === 'adj' && /^(fine|coarse|heavy|light|hard|soft|annealed|galvanised|plain|black|long|short)$/.test(it.low);
    const qty = it.f?.dim === 'number' && items[k + 1]?.low === 'of' && items[k + 2]?.t === 'pron';
    if (qty && it.f?.dim === 'number') { last.qty ??= it.f.value.value; k += 2; continue; }
    if (it.low === 'say' || it.low === 'maybe') continue;
    if (begin >= 0 && it.f?.dim === 'number' && Number.isInteger(it.f.value.value) && items[k - 1]!.low === ',' && (!items[k + 1] || items[k + 1]!.low === '.' ) && it.f.value.form === 'digits') { last.qty ??= it.f.value.value; continue; }
    if (it.f?.dim === 'number' && items[k - 1]?.np && /^(grade|class|size|number|gauge)$/.test(items[k - 1]!.np!.said)) { end = k + 1; continue; }
    if (size || grade) { if (begin < 0) begin = k; end = k + 1; continue; }
    break;
  }
  if (begin < 0) return from;
  last.spec = [last.spec, textOf(t.sheet, items[begin]!.from, items[end - 1]!.to)].filter(Boolean).join(' ');
  return Math.max(end, last.qty !== undefined && k <= items.length ? k : end);
}
const sizey = (f: Found): boolean => f.dim === 'number' && (f.value.form === 'fraction' || f.value.form === 'mixed');

import { partLike } from '../../clauses/name-kinds.ts';
import type { Item } from '../../clauses/items.ts';
import { nounClasses } from '../../words/nouns.ts';
import { textOf } from '../../dimensions/part/text-of.ts';
import type { Telling } from '../telling.ts';
import type { Goods } from './goods.ts';

const LOOSE = /^(,|-|–|;|:|\(|\)|about|around|roughly|say|maybe|approx|please|at|least|only|just|like|size|probably)$/;
/** Words that tell a size from a count when they stand beside a number. */
const SIZING = /^(by|x|×|\*|long|thick|wide|deep|high|tall|round|square|diameter|dia|od|id|bore|gauge|grit|ply|tooth|pitch|swg|awg|thread|threads|tpi|plus|oversize|undersize|over|under|sae|npt|bsp|unc|unf|grade|class|size|series|number|no|section|type|dot|mm|mil|inch|inches|foot|feet|ft|volt|volts|amp|amps|watt|watts|ton|pound|pounds|litre|liter|quart|gallon)$/;
const TAIL = /^(long|thick|wide|deep|high|tall|round|square|diameter|dia|od|id|bore|across|oversize|undersize|thread|threads|pitch|gauge|grit|ply|shank|stroke|centres|centers|overall|each|apiece|npt|bsp|unc|unf|coarse|fine|inside|outside|mm|pipe)$/;
const KIND = /^((dot|grade|class|size|gauge|series|number|grit|sae|npt|bsp|bspt|unc|unf|bsw|bsf|din|iso|schedule|whitworth|ba|cei|model|type|no|stainless|copper|steel|mild steel|spring steel|brass|bronze|phosphor bronze|white oak|oak|ash|hickory|pine|elm|beech|maple|chestnut|larch|teak|walnut|birch|spruce|fir|douglas fir|mahogany|cast iron|tool steel|silver steel|gunmetal|felt|canvas|hemp|neoprene|nitrile|silicone|ptfe|bakelite|tin|tinned|lead|poly|polyester|cotton|webbing|plain|black|green|red|grey|gray|blue|white|zinc|zinc plated|galvanised|galvanized|coarse|fine|heavy duty|leather|rubber|cork|fibre|fiber|nylon|plastic|hardened|high tensile|iron|medium|annealed|light|heavy|(?:left|right)[ -]hand(?: thread(?:ed)?)?|metric|imperial|waterproof|greasable|sealed|diameter|dia|od|id|bore|inch|inches|spec|treated|pressure treated|pipe|standard|oversize|undersize|genuine|pattern)|([a-z]|[a-z]{2}) (section|series|profile|type)|\w+ (thread|threads|grit|gauge|ply|volt|amp|tooth|npt|bsp|steel|brass|bronze|iron|oak|rubber|leather|treated|serration|serrations|pitch|weave|pattern|cut|finish|lip|shank|bore|duty|section|profile|grain|tensile|hand|temper|hardness|centres|centers|spline|splines|flange|tang)|(coarse|fine|unc|unf|bsp|npt) thread)$/;
const DONE = /^(annealed|galvanised|galvanized|hardened|plated|waxed|braided|tinned|threaded|welded|coated|treated|drilled|sealed|graded|ground|polished|greased|insulated|shielded|pre-?cut|turned)$/;
const STATE = /^(fine|coarse|heavy|light|hard|soft|annealed|galvanised|plain|black|long|short|thick|thin|wide|narrow|square|round|flat|green|red|stainless|deep|high|standard|metric)$/;

/** A maker's number: "A42", "6204-2RS". */
const CODE = /^[a-z]{1,3}-?\d{1,5}[a-z]{0,3}(-\w+)?$|^\d{3,5}-?[a-z]{1,3}\d?$/;
export const isCode = (said: string): boolean => CODE.test(said);
/** "SAE 660", "B section", "grade 8", "brass": words that say which sort of the thing before them, and name no thing of their own. */
export const isKind = (said: string): boolean => KIND.test(said);

/**
 * Whether the phrase at `k`, said after a comma behind a thing, tells which sort of it is meant and is no thing to be got beside it: "the malleable
 * sort", "number 60", "nipple both ends", "the big one with the O-rings", "tin based". What is counted or has an "a" is a thing of its own.
 */
export function tellsSort(t: Telling, items: readonly Item[], k: number): boolean {
  const it = items[k], np = it?.np, first = t.sheet.tokens[it?.from ?? 0]?.low ?? '';
  if (!np || np.known) return false;
  if (isKind(np.said) || isCode(np.said) || /^number \S+$/.test(np.said) || /^(?:each|both|either|one|the other) ends?$/.test(it.low)) return true;
  if (np.count !== undefined || np.quant !== undefined || /^(an?|another|some|my)$/.test(first)) return false;
  if (np.stands ? /^the$/.test(first) && /ones?$/.test(np.said) : /\b(?:sort|kind|type|style|stuff|variety|pattern|un|ones?)s?$/.test(np.said) && np.said.includes(' ')) return true;
  if (/^(?:each|both|either|one)$/.test(items[k + 1]?.low ?? '') && / ?ends?$/.test(items[k + 2]?.low ?? '') || /^(?:each|both|either) ends?$/.test(items[k + 1]?.low ?? '')) return true; // "nipple both ends"
  return !nounClasses(np.said).size && !nounClasses(np.said.split(' ').at(-1)!).size && !partLike(t.sheet, np.said) && !/s$/.test(np.said);
}

/**
 * What follows a thing to be got, up to the next thing: its size, grade, make and length, said after commas or straight on, and its count. Gives
 * the index of the first item that is none of these.
 */
export function specAfter(t: Telling, items: readonly Item[], from: number, last: Goods): number {
  const pieces: [number, number][] = [];
  let open = false, end = from;
  for (let k = from; k < items.length; k++) {
    const it = items[k]!;
    if (LOOSE.test(it.low) && !(it.low === 'at')) { open = false; continue; }
    if (/^(x|×)$/.test(it.low) && items[k - 1]?.np && items[k + 1]?.f?.dim === 'number' && !/^(x|×)$/.test(items[k + 2]?.low ?? '')) continue; // "hose clamps x 4"
    if (it.f?.dim === 'measure' && items[k + 1]?.low === 'of' && (items[k + 2]?.np || items[k + 2]?.f && items[k + 3]?.np) && k > from && items[k - 1]!.t === 'mark') break; // "…, a quart of gear oil" is the next thing
    if (it.np && items[k - 1]?.low === ',' && / (stuff|type|kind|sort|variety)$/.test(it.np.said) && it.np.count === undefined) { pieces.push([k, k + 1]); end = k + 1; open = false; continue; } // "gland packing, square graphite stuff"
    if (it.np && CODE.test(it.np.said) && it.np.count === undefined && /^(,|size|number|no)$/.test(items[k - 1]?.low ?? '')) { pieces.push([k, k + 1]); end = k + 1; open = false; continue; } // "drive belt, A42"
    const of = items[k + 1]?.low === 'of' && items[k + 2]?.t === 'pron';
    if (isCount(items, k, last, of)) { last.qty = (it.f as { value: { value: number } }).value.value; k += of ? 2 : 0; end = k + 1; open = false; continue; }
    const made = /^(with|in|of)$/.test(it.low) ? featureAt(items, k + 1) : 0;
    if (made) { pieces.push([k + 1, k + 1 + made]); k += made; end = k + 1; open = false; continue; }
    const joins = open && /^(by|x|×|\*|in|inch|and|a|of)$/.test(it.low) && k + 1 < items.length && sizes(t, items, k + 1) && !(it.low === 'and' && items[k + 1]!.np);
    const measured = sizes(t, items, k) || open && TAIL.test(it.low) || it.low === 'in' && isKind(items[k + 1]?.np?.said ?? '');
    const over = /^(plus|minus)$/.test(it.low) && items[k + 1]?.f?.dim === 'number' && !items[k + 2]?.np;
    if (!joins && !measured && !over) break;
    if (open) pieces.at(-1)![1] = k + 1;
    else pieces.push([it.low === 'in' ? k + 1 : k, k + 1]);
    open = true;
    end = k + 1;
    if (of && it.f) { k += 2; end = k + 1; }
  }
  const words = pieces.filter(([a, b]) => b > a).map(([a, b]) => textOf(t.sheet, items[a]!.from, items[b - 1]!.to).replace(/^(?:an?|the) /i, ''));
  if (words.length) last.spec = [last.spec, ...words].filter(Boolean).join(', ');
  return end;
}

/** "with a 1 7/16 bore", "with 3/8 holes", "in chestnut": what a thing has or is made of; gives how many items say so. */
function featureAt(items: readonly Item[], k: number): number {
  const it = items[k], sized = it?.f !== undefined && /^(measure|thread|number)$/.test(it.f.dim);
  if (items[k - 1]!.low === 'of') return /^(measure|thread)$/.test(it?.f?.dim ?? '') ? 1 : 0;
  if (items[k - 1]!.low === 'in' && /^(measure|thread)$/.test(it?.f?.dim ?? '')) { let n = 1; while (/^(by|x)$/.test(items[k + n]?.low ?? '') && items[k + n + 1]?.f) n += 2; return n; }
  if (items[k - 1]!.low === 'in') return it?.np && isKind(it.np.said) && it.np.count === undefined ? 1 : 0;
  if (it?.np && (it.np.spec !== undefined || isKind(it.np.said)) && (FEATURE.test(it.np.said) || isKind(it.np.said))) return 1;
  if ((sized || it?.t === 'num') && items[k + 1]?.np && FEATURE.test(items[k + 1]!.np!.said)) return 2;
  return it?.t === 'det' && featureAt([...items.slice(0, k), ...items.slice(k + 1)], k) ? 1 + featureAt([...items.slice(0, k), ...items.slice(k + 1)], k) : 0;
}
const FEATURE = /\b(holes?|bores?|shanks?|heads?|threads?|pitch|eyes?|lips?|faces?|keyways?|flanges?|splines?|teeth|tails?|tangs?|centres?|centers?|stems?|slots?|mesh|core|rim|grooves?|ends?|collars?)$/;

/** A whole number alone between marks, or with "of them" or "off": how many. */
function isCount(items: readonly Item[], k: number, last: Goods, of: boolean): boolean {
  const f = items[k]!.f, next = items[k + 1];
  if (f?.dim !== 'number' || last.qty !== undefined || !Number.isInteger(f.value.value) || f.value.value < 1 || f.value.value > 1000 || f.value.form === 'article') return false;
  if (/^(x|×)$/.test(items[k - 1]?.low ?? '') ? !items[k - 2]?.np : SIZING.test(items[k - 1]?.low ?? '') || isKind(items[k - 1]?.np?.said ?? '')) return false;
  return of || !next || next.t === 'mark' || /^(off|for|please|needed|wanted)$/.test(next.low) && !(items[k - 1]?.f);
}

function sizes(t: Telling, items: readonly Item[], k: number): boolean {
  const it = items[k];
  if (!it) return false;
  if (it.f?.dim === 'measure' || it.f?.dim === 'thread') return true;
  if (it.f?.dim === 'number' || it.t === 'num') {
    if (it.f?.dim === 'number' && (it.f.value.form === 'fraction' || it.f.value.form === 'mixed')) return true;
    return SIZING.test(items[k + 1]?.low ?? '') || SIZING.test(items[k - 1]?.low ?? '') || isKind(items[k - 1]?.np?.said ?? '');
  }
  if (it.np && items[k - 1]?.low === ',' && tellsSort(t, items, k)) return true;
  if (it.np) return isKind(it.np.said) && it.np.count === undefined || /^(long|thick|wide|square|round)$/.test(items[k + 1]?.low ?? '') && /^((long|wide|thick|deep|high) )?(inch|foot|yard)$/.test(it.np.said);
  return it.t === 'verb' && DONE.test(it.low) || it.t === 'adj' && STATE.test(it.low) || it.low === 'x' && sizes(t, items, k + 1) && k > 0 && sizes(t, items, k - 1);
}

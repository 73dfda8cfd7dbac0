import type { Thing } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { AMOUNT, thingsAt } from '../../clauses/things.ts';
import { textOf } from '../../dimensions/part/text-of.ts';
import { nameClasses } from '../../words/nouns.ts';
import { OPPOSITE } from '../../words/sides.ts';
import { PERSONS } from '../../words/persons.ts';
import type { Telling } from '../telling.ts';
import { specAfter, tellsSort } from './spec.ts';
import { table } from '../../words/table.ts';

/** A thing to be got or that was got, with its count and the size, grade or length it is known by. */
export interface Goods { item: string; qty?: number; spec?: string; from: number; to: number; thing: Thing }

const CONTAINERS = /^(roll|length|piece|gallon|quart|pint|litre|liter|tin|can|tube|sheet|foot|feet|yard|metre|meter|coil|box|bag|bottle|jar|bar|tub|pound|kilo|set|pair|dozen|handful|bunch|couple|reel|spool|pack|packet|stick|bundle|drum|box)s?$/;

/** Goods named in a run of items: "two 3/8 bolts and a gland nut", "gasket paper, a sheet of it". Prices and sources end it. */
export function goodsIn(t: Telling, items: readonly Item[], k: number): Goods[] {
  const out: Goods[] = [];
  let i = k;
  while (i < items.length) {
    const it = items[i]!;
    const whole = bulk(t, items, i);
    if (whole) { out.push(whole.goods); i = specAfter(t, items, whole.next, whole.goods); continue; }
    if (it.f?.dim === 'number' && items[i + 1]?.low === 'off' && items[i + 2]?.np && Number.isInteger(it.f.value.value)) { const [one] = goodsIn(t, items.slice(0, i + 3), i + 2); if (one) { out.push({ ...one, qty: it.f.value.value }); i = specAfter(t, items, i + 3, out.at(-1)!); continue; } } // "four off M12 nuts"
    if (it.np && !it.np.stands) {
      const { things, next } = thingsAt(t.sheet, items, i, t.memory);
      if (next <= i) { i++; continue; } // "the pair" with nothing before it that it could stand for
      const own: Goods[] = [];
      let at = next;
      for (const thing of things) {
        const here = items.findIndex(x => x.from === thing.from);
        if (own.length && items[here - 1]?.low === ',' && tellsSort(t, items, here)) { at = here - 1; break; } // "a V-belt, B section"
        if (!isSeller(thing.name)) own.push({ ...goods(t, thing, tailOf(items, thing)), ...(own.length ? {} : countBefore(items[i - 1], thing)) });
      }
      if (!own.length && things.length && isSeller(things[0]!.name)) while (/^(?:in|at|up|down|near|over|across|by|of|behind)$/.test(items[at]?.low ?? '') && items[at + 1]?.np) at += 2; // "the bearing place in Medford"
      out.push(...own);
      i = out.length ? Math.max(specAfter(t, items, at, out.at(-1)!), at) : at;
      if (items[i]?.low === ',' && items[i + 1]?.low === 'for' && items[i + 2]?.np && own.length) i++; // "…, for the chain, and two pins"
      if (items[i]?.low === 'for' && (items[i + 1]?.np || items[i + 1]?.t === 'pron') && own.length) i = afterFor(t, items, i, own.at(-1)!);
      continue;
    }
    if (it.np?.stands) {
      const topic = t.memory.topic();
      if (topic) out.push({ item: plainName(topic.name), from: it.from, to: it.to, thing: topic, ...(it.np.count !== undefined ? { qty: it.np.count } : countIn(it.low)) });
      i = out.length ? specAfter(t, items, i + 1, out.at(-1)!) : i + 1;
      continue;
    }
    const unnamed = sizedOne(t, items, i);
    if (unnamed) { out.push(unnamed.goods); i = specAfter(t, items, unnamed.next, unnamed.goods); continue; }
    if (it.f?.dim === 'number' && Number.isInteger(it.f.value.value) && items[i + 1]?.low === 'of' && items[i + 2]?.np && !items[i + 2]!.np!.stands) { const [one] = goodsIn(t, items.slice(0, i + 3), i + 2); if (one) { out.push({ ...one, qty: it.f.value.value }); i = specAfter(t, items, i + 3, out.at(-1)!); continue; } } // "twenty of those friction blocks"
    if (it.f?.dim === 'measure' && items[i + 1]?.low === 'of' && items[i + 2]?.t === 'pron') { const topic = t.memory.topic(); if (topic) out.push({ item: plainName(topic.name), spec: textOf(t.sheet, it.from, it.to), from: it.from, to: it.to, thing: topic }); i += 3; continue; }
    if (it.f?.dim === 'number' && out.length === 0 && (!items[i + 1] || items[i + 1]!.t === 'mark' || /^(more|extra|spare|for|from|off|at)$/.test(items[i + 1]!.low)) && Number.isInteger(it.f.value.value) && t.memory.topic()) { const topic = t.memory.topic()!; out.push({ item: plainName(topic.name), qty: it.f.value.value, from: it.from, to: it.to, thing: topic }); i++; continue; }
    if (it.f?.dim === 'number' && items[i + 1]?.low === 'of' && out.length === 0 && items[i + 2]?.t === 'pron') { const topic = t.memory.lastMention(); if (topic && it.f.dim === 'number') out.push({ item: plainName(topic.name), qty: it.f.value.value, from: it.from, to: it.to, thing: topic }); i = out.length ? specAfter(t, items, i + 3, out.at(-1)!) : i + 3; continue; }
    if (it.f?.dim === 'number' && out.length && /^(of|more)$/.test(items[i + 1]?.low ?? '') && it.f.dim === 'number') { out.at(-1)!.qty ??= it.f.value.value; i += 2; continue; }
    if (/^(for|from|at|off|by|so|before|because|until|to|when|with|halfway|through|along|under|behind)$/.test(it.low) && out.length) break;
    i++;
  }
  return out.map((g, n) => ({ ...g, item: n && sideOf(g.item, out[n - 1]!.item) || g.item }));
}

/** "an inner bearing and an outer": a bare side is the other one of what was named just before. */
function sideOf(side: string, before: string): string | undefined {
  const other = OPPOSITE[side];
  return other !== undefined && before.split(' ').includes(other) ? before.replace(new RegExp(String.raw`\b${other}\b`), side) : undefined;
}

/** "three feet of quarter inch brake line", "a length of three quarter bright bar": so much of a stuff. */
function bulk(t: Telling, items: readonly Item[], i: number): { goods: Goods; next: number } | undefined {
  const it = items[i]!;
  const held = it.np !== undefined && (CONTAINERS.test(it.np.said) || /^(couple)$/.test(it.np.said));
  if (it.f?.dim !== 'measure' && !held || items[i + 1]?.low !== 'of') return undefined;
  let k = i + 2;
  while (items[k] && !items[k]!.np && (items[k]!.f || items[k]!.t === 'adj' || items[k]!.t === 'num' || items[k]!.t === 'verb' && items[k]!.form !== 'base')) k++;
  if (!items[k]?.np || items[k]!.np!.stands || held && k === i + 2 && !items[k]!.np!.spec) return undefined;
  const { things } = thingsAt(t.sheet, items.slice(0, k + 1), k, t.memory);
  if (!things[0]) return undefined;
  const between = items.slice(i + 2, k).filter(x => x.f);
  const g = goods(t, things[0]);
  const named = items.slice(i + 2, k).filter(x => x.t === 'verb').map(x => x.low).join(' '); // "snapping roll bearings"
  if (named) g.item = `${named} ${g.item}`;
  const paired = it.np && /^(set|pair|dozen|couple|handful|bunch)s?$/.test(it.np.said);
  if (paired) return { goods: { ...g, ...(PAIRED[it.np!.said] ? { qty: PAIRED[it.np!.said] } : {}) }, next: k + 1 };
  const spec = [g.spec, ...between.map(x => textOf(t.sheet, x.from, x.to)), it.np ? (/^(length|sheet|gallon|quart|pint|litre|liter|yard|foot|feet|metre|meter|pound|kilo)s?$/.test(it.np.said) && (it.np.count !== undefined || it.np.said !== 'length') ? t.sheet.tokens.slice(it.from, it.to).map(x => x.low).join(' ').replace(/^(an?|the|some|another) /, '') : '') : textOf(t.sheet, it.from, it.to)].filter(Boolean).join(', ');
  return { goods: { ...g, spec }, next: k + 1 };
}

/** "a 1000 watt one", "three hundred foot of three eighths": a size without a name, of what was spoken of. */
function sizedOne(t: Telling, items: readonly Item[], i: number): { goods: Goods; next: number } | undefined {
  const it = items[i]!, topic = t.memory.topic();
  if (it.f?.dim !== 'measure' || !topic) return undefined;
  const [a, b] = [items[i + 1], items[i + 2]];
  const to = a?.t === 'pron' && /^ones?$/.test(a.low) ? it.to : a?.low === 'of' && /^(measure|thread|number)$/.test(b?.f?.dim ?? '') && !items[i + 3]?.np ? b!.to : undefined;
  return to === undefined ? undefined : { goods: { item: plainName(topic.name), spec: textOf(t.sheet, it.from, to), from: it.from, to: it.to, thing: topic }, next: to === it.to ? i + 2 : i + 3 };
}

/** "four bolts for the hub, 3/8 x 2": what they are for stands between a thing and its size. */
function afterFor(t: Telling, items: readonly Item[], i: number, last: Goods): number {
  let k = i + 2;
  while (items[k] && /^(of|on|in)$/.test(items[k]!.low) && items[k + 1]?.np) k += 2;
  const had = last.spec;
  const end = specAfter(t, items, k, last);
  if (last.spec !== had) return end;
  const more = items.findIndex((x, n) => n >= k && n <= k + 3 && (/^(and|,|plus|\+|&)$/.test(x.low)) && items[n + 1]?.np && (items[n + 1]!.np!.count !== undefined || /^(a|an|some|another|new)$/.test(t.sheet.tokens[items[n + 1]!.from]!.low)));
  return more >= 0 ? more + 1 : i;
}

/** "for two hose clamps", where "for two" was taken for a price: the number counts what follows it. */
const countBefore = (prev: Item | undefined, thing: Thing): { qty?: number } =>
  prev?.f?.dim === 'money' && prev.f.sure === 'implied' && prev.f.value.per === undefined && prev.to === thing.from && Number.isInteger(prev.f.value.value) && thing.plural && thing.count === undefined ? { qty: prev.f.value.value } : {};
const PAIRED: Readonly<Record<string, number>> = table({ couple: 2, pair: 2, dozen: 12 });

/** A name that is a seller rather than a thing sold. */
export const isSeller = (name: string): boolean => { const k = nameClasses(name); return k.has('source') && !k.has('part') && !k.has('fastener') && !k.has('consumable') && !k.has('tool') || PERSONS.test(name) && !k.has('consumable'); };
const countIn = (low: string): { qty?: number } => { const m = /\b(two|three|four|five|six|seven|eight|nine|ten|twelve|\d+)\b/.exec(low); return m ? { qty: WORDS[m[1]!] ?? Number(m[1]) } : {}; };
const WORDS: Record<string, number> = table({ two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, twelve: 12 });

const plainName = (name: string): string => name.replace(/ (?:on|at|in) the \w+$/, '');

/** "a length of three quarter bar": the size of what is in the container. */
const tailOf = (items: readonly Item[], thing: Thing): string | undefined => {
  const k = items.findIndex(x => x.from === thing.from);
  return thing.np && thing.name !== thing.np.name && items[k + 1]?.low === 'of' ? items[k + 2]?.np?.spec : undefined;
};

function goods(t: Telling, thing: Thing, inner?: string): Goods {
  const np = thing.np;
  const sort = / ([a-z] section|\d+ grit)$/.exec(thing.name)?.[1];
  const spec = [np?.spec?.replace(/^an? (?=\w+ inch)/i, ''), inner, amountOf(t, thing), sort].filter(Boolean).join(', ');
  return { item: thing.name.replace(/^x (?=.)/, '').replace(/^(?:replacement|fresh|decent|suitable|matching|cheap|cheaper|cheapest|dear|dearer) (?=.)/, '').replace(sort ? ` ${sort}` : /$^/, ''), from: thing.from, to: thing.to, thing, ...(thing.count !== undefined ? { qty: thing.count } : np?.quant === 'both' ? { qty: 2 } : np && np.name !== thing.name && PAIRED[np.said] ? { qty: PAIRED[np.said] } : {}), ...(spec ? { spec } : {}) };
}

/** "a foot of belt", "two gallons of primer": the bulk amount is what it is specified by. */
function amountOf(t: Telling, thing: Thing): string | undefined {
  const np = thing.np;
  if (!np) return undefined;
  const said = t.sheet.tokens.slice(np.from, np.to).map(x => x.low).join(' ');
  const head = np.said.split(' ').at(-1)!;
  if (/^(tube|tin|can|box|bag|bottle|jar|tub|roll|spool|reel|pack|packet|bar|stick|bundle|drum|bit|piece|handful|bunch|couple)s?$/.test(head) || !CONTAINERS.test(head) && !AMOUNT.test(np.said) || /^(set|pair|dozen)s?$/.test(head) || thing.name === np.name) return undefined;
  return said.replace(/^(a|an|the|some|another) /, '');
}

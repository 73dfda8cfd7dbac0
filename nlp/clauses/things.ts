import { type Phrase } from '../dimensions/part/phrase.ts';
import type { Sheet } from '../types.ts';
import { singular } from '../words/nouns.ts';
import type { Thing } from './clause.ts';
import type { Item } from './items.ts';
import type { Memory } from './memory.ts';
import { closing, ownerAt, standIn, withOwner } from './owner.ts';
import { finite, isAux } from './predicate.ts';
import { isMachine, isPlural, isSource, isStuff, partLike } from './name-kinds.ts';

const CONTAINER = /^(set|pair|roll|box|bag|tin|can|gallon|quart|pint|litre|liter|tube|length|piece|bit|bunch|lot|handful|fistful|pail|sheet|bottle|jar|pack|packet|coil|spool|bucket|load|couple|dozen|couple|few|foot|feet|yard|metre|meter|lump|drum|tub|reel|stick|bar|pail|sack|drop|dab|coat|coats|lick|half|rest|all|each|one|two|three|handful|fistful|pocketful|kind|sort|box|case|handful)s?$/;
/** A measured amount whose unit is written short: "4 m of hose". */
export const AMOUNT = /^[\d.]+ (m|cm|mm|ft|yd|l|ml|kg|g|lb|lbs|oz|gal|qt|pt)$/;
const OWNS = /^(of|on|in|from|for|at|off|inside|under|behind|to|around|between|over|above|below|against|through|underneath)$/;

/**
 * The thing named at item `k` with its "of", "on the", "in the" tail: an owning part goes in front of the name ("hub bearing on the left wheel" is
 * "left wheel hub bearing"), a machine is dropped, a place or a bare side stays where it was said. Gives the next item index.
 */
export function thingAt(sheet: Sheet, items: readonly Item[], k: number, memory: Memory, owned = true): { thing: Thing; next: number } | undefined {
  const it = items[k];
  if (it?.t !== 'np') return undefined;
  const lot = /^(pair|lot|lot of them|whole lot|set)$/.test(it.np!.said) && /^(the|that|this)$/.test(sheet.tokens[it.np!.from]?.low ?? '') && (items[k + 1]?.low !== 'of' || items[k + 2]?.t === 'pron');
  const sided = /^(rears|fronts|lefts|rights|uppers|lowers|backs)$/.test(it.np!.said) && !it.np!.known;
  const others = /^(rest|others)$/.test(it.np!.said) && items[k + 1]?.low !== 'of' && !it.np!.known;
  const np = others ? { ...it.np!, stands: true } : sided ? { ...it.np!, stands: true, said: `${it.np!.said.slice(0, -1)} ones` } : lot ? { ...it.np!, stands: true, said: 'all', name: 'all' } : it.np!;
  let name = np.stands ? standIn(np, memory, sheet) : np.name;
  if (name === undefined) return undefined;
  const numbered = !np.stands && !np.known && /^number \S+$/.test(np.said) ? memory.all().find(t => /\bnumber \S+/.test(t.name) && t.name !== np.said)?.name : undefined;
  if (numbered) name = numbered.replace(/\bnumber \S+/, np.said); // "tine bar number three… number five"
  const owner = np.stands || np.known ? undefined : /^(.+?)'s (?=\S)/.exec(name);
  if (owner && (isMachine(sheet, owner[1]!) || (sheet.ctx.machines ?? []).some(m => m.toLowerCase().split(' ').includes(owner[1]!)))) name = name.slice(owner[0].length); // "the mower's knife"
  const whole = !np.stands && !np.known && /^(top|bottom|upper|lower|left|right|front|rear|back|inner|outer|near|far) half$/.test(np.said) && items[k + 1]?.low !== 'of' ? memory.all().find(t => !/ half /.test(t.name))?.name : undefined;
  if (whole) name = `${np.said} ${singularName(whole)}`; // "big end brasses… the top half is perfect"
  // What was spoken of decides only when it is one of the choices alone; several of them ("the tie rod end" after left and right) are asked about.
  const heard = new Map((np.choices ? memory.all() : []).filter(t => np.choices!.some(x => x.toLowerCase() === t.name)).map(t => [t.name, t]));
  const spoken = heard.size === 1 && !isPlural(np.said) ? [...heard.values()][0] : undefined;
  if (spoken) name = spoken.name;
  let to = it.to, next = k + 1, choices = spoken || isPlural(np.said) ? undefined : np.choices, machine = isMachine(sheet, name) && !np.stands;
  let count = np.count;
  const dirty = owned && !np.stands && DIRT.test(np.said) ? cleanedOf(sheet, items, next) : undefined;
  if (dirty) { name = dirty.name; next = dirty.next; to = items[next - 1]!.to; machine = isMachine(sheet, name); choices = undefined; }
  const held = !dirty && heldTail(items, next);
  if (held) { name = withOwner(sheet, name, held.owner, 'of', memory) ?? name; next = held.next; to = items[next - 1]!.to; }
  for (;;) {
    const prep = items[next], tail = items[next + 1];
    if (prep?.low === 'of' && (np.stands || /^(pair|lot|set|half|whole lot|whole set|most)$/.test(np.said)) && tail?.t === 'pron' && /^(them|those|these)$/.test(tail.low)) { name = memory.several()[0]?.name ?? name; to = tail.to; next += 2; break; }
    if (!prep || !tail?.np || !OWNS.test(prep.low) || prep.t !== 'prep' && prep.t !== 'prt') break;
    const { owner, length } = ownerAt(items, next)!;
    if (prep.low === 'of' && (CONTAINER.test(np.said.split(' ').at(-1)!) || AMOUNT.test(np.said))) {
      name = owner.stands ? standIn(owner, memory, sheet) ?? name : owner.name; choices = owner.choices; machine = false;
    } else if (prep.low === 'of' || owned && (prep.low === 'on' || prep.low === 'in')) {
      const joined = withOwner(sheet, name, owner, prep.low, memory);
      if (joined === undefined) break;
      if (joined !== name) choices = undefined;
      name = joined;
    } else if (prep.low === 'for' && (isAux(items[next + 2]) || finite(items[next + 2])) && !/^(need|want|have)$/.test(items[next + 2]!.base ?? '')) {
      const joined = withOwner(sheet, name, owner, 'of', memory);
      if (joined === undefined) break;
      name = joined;
    } else break;
    next += length; to = items[next - 1]!.to;
  }
  if (owned && !np.stands && next === k + 1) name = closing(sheet, name, items, next, memory);
  return { thing: { name, from: it.from, to, np, plural: isPlural(name), machine, ...(count !== undefined ? { count } : {}), ...(np.stands ? { carried: true } : {}), ...(choices ? { choices } : {}) }, next };
}

/** What sits in or on a part and is no part: taken out or off, it is the part that was worked on ("drained the oil from the final drive"). */
const DIRT = /^(rust|dirt|muck|mud|crud|gunk|sludge|scale|carbon|soot|paint|old paint|grease|old grease|oil|old oil|water|diesel|fuel|petrol|gas|coolant|antifreeze|air|burr|burrs|chaff|straw|grass|twine|nest|mouse nest|wasp nest|dust|swarf|silt|sand|lime|limescale|varnish|gum|tar|corrosion|moisture|condensation)$/;
/** "…off the shaft", "…out of the block", "…from the final drive": the part that dirt came from. */
function cleanedOf(sheet: Sheet, items: readonly Item[], next: number): { name: string; next: number } | undefined {
  let k = next;
  while (items[k] && /^(off|out|of|from)$/.test(items[k]!.low)) k++;
  const owner = items[k]?.np;
  return k > next && owner && !owner.stands && !isSource(owner) && partLike(sheet, owner.name) && !isStuff(owner.name) && (items[k - 1]!.low !== 'of' || items[k - 2]?.low !== undefined && /^(out|off)$/.test(items[k - 2]!.low)) ? { name: owner.name, next: k + 1 } : undefined;
}

/** "bolts holding the seat", "bolts that hold the sump on": what holds a part is named after it. */
function heldTail(items: readonly Item[], next: number): { owner: Phrase; next: number } | undefined {
  const that = /^(that|which)$/.test(items[next]?.low ?? '') ? next + 1 : next;
  const verb = items[that], owner = items[that + 1]?.np;
  if (verb?.t !== 'verb' || verb.base !== 'hold' || !owner || owner.stands || that === next && verb.form !== 'ing') return undefined;
  const end = /^(on|down|in|together|up)$/.test(items[that + 2]?.low ?? '') ? that + 3 : that + 2;
  return items[end] && (isAux(items[end]) || finite(items[end])) ? { owner, next: end } : undefined;
}

const singularName = (name: string): string => name.replace(/\S+$/, w => singular(w));

/** "all off", "both are cracked": every one of a list just named. */
const wholeLot = (it: Item | undefined, memory: Memory): Thing[] | undefined => {
  if (!it?.np?.stands || !/^(all|both)$/.test(it.np.said)) return undefined;
  const list = (it.np.said === 'both' ? memory.pair() : undefined) ?? memory.several();
  return list.length > 1 ? list.map(t => ({ ...t, carried: true })) : undefined;
};

/** All things of a noun list from item `k`: "the hood and both fenders", "carb, manifold and air cleaner". */
export function thingsAt(sheet: Sheet, items: readonly Item[], k: number, memory: Memory, owned = true): { things: Thing[]; next: number } {
  const things: Thing[] = [];
  let next = k;
  for (;;) {
    const whole = next === k ? wholeLot(items[next], memory) : undefined;
    if (whole) return { things: whole, next: next + 1 };
    const one = thingAt(sheet, items, next, memory, owned);
    if (!one) break;
    things.push(one.thing);
    next = one.next;
    let j = next;
    while (items[j] && (items[j]!.low === ',' || items[j]!.t === 'cc' && /^(and|plus|or|&|\+)$/.test(items[j]!.low))) j++;
    if (j > next && items[j]?.low === 'then' && items[j + 1]?.t === 'np' && items[j + 2] === undefined) j++; // "adjusted the near brake and then the off brake"
    if (j === next || items[j]?.t !== 'np' || /^coats?$/.test(items[j]!.np!.said) || items[j]!.np!.quant === 'no' && items[next]!.low === ',') break;
    next = j;
  }
  return { things, next };
}

import { CONDITION } from '../words/conditions.ts';
import { PERSONS } from '../words/persons.ts';
import { NAMED } from '../words/quantities.ts';
import type { Item } from './items.ts';
import { afterNouns, finite, isAux, isSubjectPronoun, predicateAt, startsNoun, STATE_PARTICLE } from './predicate.ts';

/** A clause's items, with the word that joins it to what went before and the subordinator that opens it. */
export interface Cut { items: Item[]; join?: string; sub?: string; /** Opens with a question's own word order. */ asks?: boolean }

/**
 * Cuts a sentence into clauses, with or without its commas: at conjunctions that a verb or a new subject follows, at subordinators, and in run-on
 * speech where a clause that has its verb is followed by a new subject with a verb of its own, or by a new verb.
 */
export function splitClauses(items: readonly Item[]): Cut[] {
  const out: Cut[] = [];
  items = plainOrder(withoutRelatives(items));
  let cur: Cut = { items: [] };
  const close = (next: Cut): void => { if (cur.items.some(i => i.t !== 'mark' && i.t !== 'intj' && i.t !== 'cc')) out.push(cur); else if (cur.join && !next.join) next.join = cur.join; cur = next; };
  for (let k = 0; k < items.length; k++) {
    const it = items[k]!;
    const asks = opensQuestion(items, k, cur.items);
    const before = cur.items.findLast(x => x.t !== 'adv');
    if ((asks || it.t === 'do' && items[k + 1]?.np) && (it.t === 'do' || it.t === 'modal' || it.t === 'be') && before?.t === 'verb' && /^(see|check|find|wonder|ask|know)$/.test(before.base ?? '')) { close({ items: [], sub: 'if' }); cur.items.push(it); continue; } // "to see does it clear"
    if (asks) { close({ items: [], asks: true, ...(joinBefore(cur) ? { join: joinBefore(cur)! } : {}) }); cur.items.push(it); continue; }
    if (it.low === 'that' && it.t === 'sub' && /^(note|notice|find|see|discover|observe|confirm|establish|record|report)$/.test(last(cur.items)?.base ?? '') && !cur.items.some(x => x.t === 'modal' || x.t === 'neg' || x.t === 'do') && opensSub(items, k)) { close({ items: [] }); continue; } // what was found to be so is so
    if (it.t === 'sub' && opensSub(items, k)) { close({ items: [], sub: it.low }); continue; }
    if (it.low === 'when' && cur.items.some(x => x.np) && isSubjectPronoun(items[k + 1]) && finite(items[k + 2])) { close({ items: [], sub: it.low }); continue; }
    if (it.low === 'where' && items.slice(k + 1, k + 3).some(x => x.np && /\b(book|manual|spec)$/.test(x.np.said))) { close({ items: [], sub: it.low }); continue; }
    if (it.t === 'wh' && hasPredicate(cur.items) && !/^(how|what)$/.test(it.low)) { close({ items: [], sub: it.low }); continue; }
    if (it.t === 'cc') {
      if (it.low === 'so' && items[k + 1]?.low === 'much') { cur.items.push(it); continue; } // "nobody so much as breathes on it"
      if (it.low === 'so' || opensAfter(items, k + 1, cur.items)) { close({ items: [], join: it.low }); continue; }
    } else if (it.t === 'mark' && /^[,:;—–-]+$|^\.{2,}$|^…$|^\($|^\)$/.test(it.low)) {
      if (it.low === ':' || opensAfter(items, k + 1, cur.items)) { cur.items.push(it); close({ items: [], join: it.low }); continue; }
    } else if (opensHere(items, k, cur.items) || it.pause && opensAfterBreath(items, k, cur.items)) close({ items: [] });
    if (it.t === 'wh' && !cur.items.some(x => x.t !== 'mark' && x.t !== 'intj' && x.t !== 'cc') && !cur.asks) cur.sub ??= it.low;
    cur.items.push(it);
  }
  close({ items: [] });
  return out;
}

/** Where the thing of a cleft stands: after "it's", or "it's only". */
const cleftAt = (items: readonly Item[], n: number): number => (/^(only|just|actually|really)$/.test(items[n + 2]?.low ?? '') ? n + 3 : n + 2);

/** "that's the sump on", "thats it fitted", "that's the belts tensioned": what is pointed at is what the state is said of. */
function plainOrder(items: readonly Item[]): readonly Item[] {
  // "it's the left needle that's bent"
  const cleft = items.findIndex((x, n) => x.low === 'it' && items[n + 1]?.t === 'be' && !/n't$/.test(items[n + 1]!.low) && items[cleftAt(items, n)]?.t === 'np' && !items[cleftAt(items, n)]!.np!.quant && (/^(that|which)$/.test(items[cleftAt(items, n) + 1]?.low ?? '') && (isAux(items[cleftAt(items, n) + 2]) || finite(items[cleftAt(items, n) + 2])) || /^(only|just)$/.test(items[n + 2]?.low ?? '') && (isAux(items[cleftAt(items, n) + 1]) || finite(items[cleftAt(items, n) + 1]))));
  if (cleft >= 0) { const np = cleftAt(items, cleft), on = /^(that|which)$/.test(items[np + 1]!.low) ? np + 2 : np + 1; items = [...items.slice(0, cleft), { ...items[np]!, from: items[cleft]!.from }, ...items.slice(on)]; }
  // "there's a bolt broke off in the housing"
  const there = items.findIndex((x, n) => x.low === 'there' && items[n + 1]?.t === 'be' && !/n't$/.test(items[n + 1]!.low) && items[n + 2]?.t === 'np' && items[n + 2]!.np!.quant !== 'no' && items[n + 3]?.t === 'verb' && /^(past|part)$/.test(items[n + 3]!.form ?? '') && !items[n + 4]?.np);
  if (there >= 0) items = [...items.slice(0, there), { ...items[there + 2]!, from: items[there]!.from }, ...items.slice(there + 3)];
  const out = [...items];
  for (let k = 0; k + 3 < out.length; k++) {
    const that = out[k]!, be = out[k + 1]!, what = out[k + 2]!;
    if (that.low !== 'that' || !/^('s|is)$/.test(be.low) || !(what.np && !what.np.stands || /^(it|them|those|both|him|her)$/.test(what.low))) continue;
    let s = afterNouns(out, k + 2, false);
    if (s === k + 2) s++;
    const says = out.slice(s).find(x => x.t !== 'adv');
    const done = says?.t === 'verb' && /^(past|part)$/.test(says.form ?? '') || says?.t === 'adj' && CONDITION.has(says.low);
    const seats = says?.t === 'prt' && STATE_PARTICLE.test(says.low) && (!what.np || !startsNoun(out[out.indexOf(says) + 1]));
    if (done || seats) out.splice(k, s - k, { ...what, from: that.from }, ...out.slice(k + 3, s), { ...be, from: out[s - 1]!.to - 1, to: out[s - 1]!.to });
  }
  return out;
}

/** "the breather I'd ordered for the gearbox turned up": the words that only say which one are passed over. */
function withoutRelatives(items: readonly Item[]): readonly Item[] {
  for (let k = 0; k + 4 < items.length; k++) {
    if (items[k]!.t !== 'np' || items[k + 1]!.low !== ',' || !/^(who|which)$/.test(items[k + 2]!.low)) continue;
    const end = items.findIndex((x, n) => n > k + 3 && x.low === ',' && (isAux(items[n + 1]) || finite(items[n + 1])));
    if (end > 0) return [...items.slice(0, k + 1), ...items.slice(end + 1), ...(items[k + 2]!.low === 'which' ? [{ ...items[k + 1]!, low: ';', t: 'mark' as const }, items[k]!, ...items.slice(k + 3, end)] : [])];
  }
  // "the piston that lived in it has half its crown gone", "the bolt holding it snapped" apart
  for (let k = 0; k + 4 < items.length; k++) {
    if (items[k]!.t !== 'np' || !/^(that|which|who)$/.test(items[k + 1]!.low) || !(isAux(items[k + 2]) || finite(items[k + 2])) || items.slice(0, k).some(x => isAux(x) || x.t === 'verb')) continue;
    const end = items.findIndex((x, n) => n > k + 3 && (isAux(x) || finite(x) && x.form !== 'base') && /^(np|prt|adv|dim|pron|adj|verb)$/.test(items[n - 1]!.t) && !isAux(items[n - 1]) && items[n - 1]!.t !== 'verb');
    if (end > 0 && !items.slice(k + 3, end).some(x => x.t === 'mark' || x.t === 'cc' || x.t === 'sub' || isSubjectPronoun(x) && x.low !== 'it')) return withoutRelatives([...items.slice(0, k + 1), ...items.slice(end)]);
  }
  // "the gasket that I ordered is here"
  const that = items.findIndex((x, k) => x.low === 'that' && items[k - 1]?.t === 'np' && /^(i|we)$/.test(items[k + 1]?.low ?? '') && (finite(items[k + 2]) || isAux(items[k + 2]) && items[k + 2]!.t === 'have') && items.slice(k + 3).some(y => isAux(y) || finite(y)));
  if (that > 0) items = [...items.slice(0, that), ...items.slice(that + 1)];
  for (let k = 0; k + 3 < items.length; k++) {
    if (items[k]!.t !== 'np' || items[k + 1]!.t !== 'pron' || !/^(i|we)$/.test(items[k + 1]!.low)) continue;
    let i = k + 2;
    while (items[i] && (isAux(items[i]) || items[i]!.t === 'adv')) i++;
    if (items.slice(k + 2, i).some(x => x.t === 'modal' && x.low !== "'d" || x.t === 'do' || x.t === 'be')) continue;
    const held = i > k + 2 && items[i - 1]!.t === 'have' && !finite(items[i]) ? i - 1 : -1;
    if (held >= 0) i = held;
    if (held < 0 && (!finite(items[i]) || i === k + 2 && items[i]!.form !== 'past')) continue;
    i++;
    while (items[i] && (items[i]!.t === 'adv' || items[i]!.f?.dim === 'when' || items[i]!.t === 'prt' && !startsNoun(items[i + 1]))) i++;
    let owner = i;
    while ((items[owner]?.t === 'prep' || items[owner]?.t === 'prt') && items[owner + 1]?.t === 'np') owner += 2;
    const after = items[owner];
    const tail = k > 0 && items.slice(0, k).some(x => x.t === 'verb') && /^(have|buy|find|get|lose|order|pick|keep|mention|see|need|make|use|borrow)$/.test(items[i - 1]?.base ?? items.slice(k + 2, i).findLast(x => x.t === 'verb' || x.t === 'have')?.base ?? 'have') && (!after || after.t === 'mark' || after.t === 'cc') && items[k - 1]!.t !== 'cc';
    if (tail) return [...items.slice(0, k + 1), ...items.slice(owner)];
    if (after && (isAux(after) || finite(after)) && after.t !== 'modal' || after?.t === 'modal') return [...items.slice(0, k + 1), ...(items[i]?.low === 'for' ? items.slice(i, owner) : []), ...items.slice(owner)];
  }
  return items;
}

const joinBefore = (cur: Cut): string | undefined => (cur.items.at(-1)?.t === 'cc' ? cur.items.at(-1)!.low : undefined);
const last = (items: readonly Item[]): Item | undefined => items.findLast(i => (i.t !== 'adv' || /^(home|here|there|away|indoors|outside)$/.test(i.low)) && i.t !== 'intj');

export const hasPredicate = (items: readonly Item[]): boolean =>
  items.some((i, k) => isAux(i) || i.t === 'verb' || (i.t === 'prt' && !startsNoun(items[k + 1]) || i.t === 'adj') && k > 0 && items[k - 1]!.t === 'np');

/** "what did I", "where's the", "can I", "is it", "how many": word order that asks. */
function opensQuestion(items: readonly Item[], k: number, cur: readonly Item[]): boolean {
  const it = items[k]!, next = items[k + 1], prev = last(cur);
  const free = !prev || prev.t === 'mark' || prev.t === 'cc' || prev.t === 'intj' || hasPredicate(cur);
  if (it.t === 'wh' && free) {
    const say = cur.findLast(i => i.t === 'verb');
    if (say && prev === say && /^(see|know|tell|remember|wonder|say|forget|measure|show|check)$/.test(say.base ?? '')) return false;
    if (it.low === 'which' && isAux(next)) return cur.length === 0;
    if (/^(what|how|who)$/.test(it.low) && isAux(next)) return !(isSubjectPronoun(items[k + 2]) && !isAux(items[k + 1]));
    if (/^(where|when|why)$/.test(it.low) && isAux(next)) return true;
    if (it.low === 'how' && next && /^(much|many|long|far|hot|big|fast|thick|deep|tight|often|soon)/.test(next.low)) return isAux(items[k + 2]) || isAux(items[k + 3]) || isSubjectPronoun(items[k + 2]) || !hasPredicate(cur);
    if (it.low === 'how' && next?.t === 'np') return true;
    if (it.low === 'what' && (next?.t === 'np' || next?.low === 'if')) return prev?.t !== 'verb';
    if (it.low === 'which' && next?.t === 'np') return true;
  }
  if (items[k - 1]?.low === 'there') return false;
  if ((it.t === 'modal' || it.t === 'do' || it.t === 'be' || it.t === 'have') && !it.low.startsWith("'") && (isSubjectPronoun(next) || next?.t === 'np') && it.low !== 'been' && it.low !== 'being' && it.low !== 'be' && it.low !== "don't") {
    const bare = !prev || prev.t === 'mark' || prev.t === 'cc';
    if (it.t === 'have' && !bare) return false;
    if (it.t === 'have' && !isSubjectPronoun(next)) return false;
    if (it.t === 'do' && next?.t === 'np' && items[afterNouns(items, k + 1)]?.t !== 'verb') return false;
    if (bare) return true;
    return hasPredicate(cur) && prev.t !== 'np' && prev.t !== 'pron' && prev.t !== 'wh' && isSubjectPronoun(next);
  }
  return false;
}

/** "before", "after", "till" and the like open a clause when a verb follows; before a day or a bare noun they are prepositions. */
function opensSub(items: readonly Item[], k: number): boolean {
  const low = items[k]!.low;
  if (low === 'that' && /^(make|call)$/.test(items[k - 1]?.base ?? '')) return false;
  if (low === 'as' && items[k - 1]?.low === 'much') return false; // "so much as"
  if (low === 'as' || low === 'that' && items[k - 1]?.t === 'np') return predicateAt(items, afterNouns(items, k + 1)) || isSubjectPronoun(items[k + 1]);
  if (low === 'that') return isSubjectPronoun(items[k + 1]) || predicateAt(items, afterNouns(items, k + 1));
  if (!/^(before|after|until|till|'til)$/.test(low)) return true;
  if (isSubjectPronoun(items[k + 1]) && (isAux(items[k + 2]) || finite(items[k + 2]))) return true;
  if (items[k + 1]?.t === 'verb') return true;
  return items[k + 1]?.t === 'np' && predicateAt(items, afterNouns(items, k + 1));
}

/** After a conjunction or comma: does a clause of its own begin at `k`? */
function opensAfter(items: readonly Item[], k: number, cur: readonly Item[]): boolean {
  let i = k;
  while (items[i] && (items[i]!.t === 'adv' || items[i]!.t === 'intj' || items[i]!.t === 'cc' || items[i]!.t === 'det' && items[i + 1]?.f?.dim === 'money' || items[i]!.t === 'mark' && items[i]!.low === ',' || items[i]!.f?.dim === 'when')) i++;
  const it = items[i];
  if (!it) return false;
  if (it.t === 'neg' || isAux(it) && !isPartOfList(items, i)) return true;
  const alone = !items[i + 1] || items[i + 1]!.t === 'mark';
  if (it.t === 'verb' && alone && it.form !== 'base' && items[i - 1]?.low === ',' && cur.some(x => x.base === 'need' || x.base === 'want')) return false; // "need some, annealed"
  if (it.t === 'verb') return hasSubjectOrVerb(cur);
  if (isSubjectPronoun(it)) return isAux(items[i + 1]) || items[i + 1]?.t === 'verb' || items[i + 1]?.t === 'adv' || items[i + 1]?.t === 'modal' || predicateAt(items, i + 1);
  if (it.t === 'prt' && /^(out|off)$/.test(it.low) && items[i + 1]?.t === 'pron' && finite(items[i + 2])) return true;
  if (it.t === 'prt' && items[k - 1]?.t === 'cc' && hasPredicate(cur) && /^(off|on|out|in|back|away|up|down)$/.test(it.low) && (!items[i + 1] || /^(to|mark|adv|cc|prt|prep)$/.test(items[i + 1]!.t) || items[i + 1]!.np)) return true;
  if (it.t === 'wh' || it.t === 'sub') return false;
  if (it.f?.dim === 'number' && /^(under|behind|underneath|beneath)$/.test(items[i + 1]?.low ?? '') && items[i + 2]?.np) return true;
  if (it.low === 'with' && items[i + 1]?.np && hasPredicate(cur)) {
    const subj = items[i + 2]?.t === 'prt' ? i + 3 : i + 2;
    if (isSubjectPronoun(items[subj]) && (isAux(items[subj + 1]) || finite(items[subj + 1]))) return true;
  }
  if (measuresHere(items, i, cur)) return true;
  const after = it.t === 'np' ? afterNouns(items, i, !(hasPredicate(cur) && items[k - 1]?.t === 'cc')) : i;
  if (it.t === 'np' && items[after]?.t === 'pron' && /^(i|we)$/.test(items[after]!.low) && hasPredicate(cur)) return !(items[k - 1]?.t === 'cc' && last(cur)?.np && ownObject(items, after + 1));
  if (it.t === 'np' && (items[after]?.f?.dim === 'number' || items[after]?.f?.dim === 'measure') && endsAt(items, after + 1) && cur.some(x => x.np) && cur.some(x => x.f?.dim === items[after]!.f!.dim) && !cur.some(x => /^(need|want|get|order|buy|for|pay|say|plus)$/.test(x.base ?? x.low) || x.f?.dim === 'money')) return true;
  if (it.t === 'np' && it.np!.quant === 'no' && hasPredicate(cur) && endsAt(items, after)) return true;
  if (it.t === 'np' && items[k - 1]?.t === 'cc' && i > k && /^(now|then|so)$/.test(items[i - 1]!.low) && predicateAt(items, after)) return true; // "and now the roll is off"
  if (it.t === 'np') return predicateAt(items, after) && (hasPredicate(cur) || !cur.some(x => x.t === 'np') || cur.some(x => x.f?.dim === 'money' || x.f?.dim === 'measure'));
  if (it.f?.dim === 'money' && /\b(freight|shipping|post|postage|carriage|delivery)\b.* (was|is|were|'s)\b|^(freight|shipping|post|postage|carriage) /.test(it.low) && items[k - 1]?.t === 'cc' && hasPredicate(cur)) return true;
  if (it.f?.dim === 'number' && items[i + 1]?.t === 'verb' && /^(past|part)$/.test(items[i + 1]!.form ?? '') && endsAt(items, i + 2)) return true;
  if (it.f?.dim === 'number' && (items[i + 1]?.t === 'adj' || items[i + 1]?.low === 'of' && items[i + 3]?.t === 'adj') && predicateAt(items, i + 1 + (items[i + 1]?.low === 'of' ? 2 : 0)) && !cur.some(x => x.base === 'need' || x.base === 'want')) return true;
  if (it.f?.dim === 'span' && cur.some(x => x.f?.dim === 'span') && /^(on|in|into|at)$/.test(items[i + 1]?.low ?? '')) return true;
  if (countsOf(items, i)) return true;
  return false;
}

/** "i'll look at it": a verb with its own object, so that what stands before "i" is none. */
function ownObject(items: readonly Item[], k: number): boolean {
  let i = k;
  while (items[i] && (isAux(items[i]) || /^(adv|neg|verb|prt|prep)$/.test(items[i]!.t))) i++;
  return i > k && items[i]?.t === 'pron' && /^(it|them)$/.test(items[i]!.low);
}

/** "…primed, film 1.5 mils", "…back, 1.4801 inch diameter", "gap 0.90 mm, scrap": a figure with its quantity, or what it comes to, after a clause of another kind. */
function measuresHere(items: readonly Item[], i: number, cur: readonly Item[]): boolean {
  const it = items[i]!, next = items[i + 1], value = (x: Item | undefined): boolean => x?.f?.dim === 'measure' || x?.f?.dim === 'number';
  if (it.t === 'adj' && CONDITION.has(it.low) && endsAt(items, i + 1)) return cur.some(x => x.f?.dim === 'measure') && cur.some(x => x.np);
  if (!hasPredicate(cur) || cur.some(x => /^(need|want|get|order|buy|for|pay|make|cut|set|find)$/.test(x.base ?? x.low) || x.f?.dim === 'money' || value(x))) return false;
  const quantity = (x: Item | undefined): boolean => x?.np !== undefined && (NAMED.test(x.np.said) || NAMED.test(x.np.said.split(' ').at(-1)!) || /\b(dia|diam)$/.test(x.np.said));
  return value(it) && it.f!.dim === 'measure' && quantity(next) || quantity(it) && (value(next) || /^(prep|prt|to)$/.test(next?.t ?? '') && items[i + 2]?.np !== undefined && value(items[i + 3]));
}

const isPartOfList = (_items: readonly Item[], _i: number): boolean => false;
const hasSubjectOrVerb = (cur: readonly Item[]): boolean => cur.some(i => i.t === 'verb' || isAux(i) || i.t === 'np' || i.t === 'prt' || i.t === 'adj');

/** Run-on speech: a new clause begins here though nothing marks it. */
function opensHere(items: readonly Item[], k: number, cur: readonly Item[]): boolean {
  if (!hasPredicate(cur)) return fragmentEnds(items, k, cur);
  const it = items[k]!, prev = last(cur);
  if (prev?.t === 'be' && cur.at(-1)!.t === 'adv' && /^(home|here|there|away|upstairs|outside|inside|indoors|outdoors|done)$/.test(cur.at(-1)!.low) && (isSubjectPronoun(items[k]) && (isAux(items[k + 1]) || finite(items[k + 1])) || items[k]!.t === 'verb' && items[k]!.form === 'past' && items[k + 1]?.np)) return true;
  if (!prev || prev.t === 'prep' || prev.t === 'wh' || prev.t === 'to' || prev.t === 'cc' || prev.t === 'modal' || prev.t === 'be' || prev.t === 'do' || prev.t === 'neg' || prev.t === 'have') return false;
  if (prev.t === 'mark') return false;
  if (it.t === 'pron' && cur.slice(-3).some(x => x.low === 'as' && x.t === 'sub')) return false;
  const verb = cur.findLast(i => i.t === 'verb');
  if (it.pause && (it.t === 'np' && predicateAt(items, afterNouns(items, k, false)) || isSubjectPronoun(it) && (isAux(items[k + 1]) || finite(items[k + 1])))) return true;
  const next = items[k + 1];
  if (it.low === 'there' && isAux(next) && (prev.t === 'np' || prev.t === 'prt' || prev.f)) return true;
  if (countsOf(items, k)) return true;
  if (/^(those|these)$/.test(it.low) && next?.f?.dim === 'number' && (isAux(items[k + 2]) || finite(items[k + 2]))) return true;
  if (it.f?.dim === 'number' && /^(under|behind|underneath|beneath)$/.test(next?.low ?? '') && items[k + 2]?.np) return true;
  if (it.t === 'modal' && /^(should|ought|will|could|might)$/.test(it.low) && (it.pause || verb !== undefined) && prev.t !== 'pron' && prev.t !== 'np' && !cur.some(x => x.t === 'modal')) return true; // "…that's it ordered should be here friday"
  if (prev === verb && /^(test|trial|dry|mock)$/.test(prev.low)) return false;
  if (it.t === 'verb' && it.form === 'past' && prev.t === 'pron' && cur[cur.lastIndexOf(prev) - 1]?.t === 'verb' && /^(it|them|those|these|that)$/.test(prev.low) && !/^(call|find|get|have|see|leave|keep|want|need|make|watch)$/.test(verb?.base ?? '')) return true;
  if (it.t === 'verb' && it.form === 'past' && prev === verb && verb.form === 'past' && (next?.t === 'np' || next?.t === 'pron') && !/^(get|have|keep|start|begin|help|go|come)$/.test(verb.base ?? '')) return true;
  if (it.t === 'verb' && it.form === 'past' && prev === verb && verb.form === 'base' && !/^(help|let|make|have|get|be)$/.test(verb.base ?? '') && (next?.t === 'np' || next?.t === 'pron')) return true;
  if (/^(it|them)$/.test(it.low) && prev.t === 'prt' && /^(in|on|under)$/.test(prev.low) && !cur.some(i => isAux(i) || i.t === 'verb')) return false; // "the gasket in it is torn"
  if (isSubjectPronoun(it) && (isAux(next) || finite(next) || next?.t === 'adv' && (isAux(items[k + 2]) || finite(items[k + 2])))) {
    if (it.low === 'it' || /^(that|this|those|these|them|one|both|all)$/.test(it.low)) return (prev !== verb || finite(next) && /^(swear|think|reckon|hope|know|guess|claim|suppose|figure|bet|believe)$/.test(verb?.base ?? '')) && (isAux(next) || finite(next)) && prev.t !== 'prt' || prev.t === 'prt' && isAux(next);
    return true;
  }
  if (it.t === 'np') {
    if (prev === verb && cur.some(x => x.np) && !cur.some(x => x.t === 'pron') && isAux(next) && /^(past|part)$/.test(verb!.form ?? '') && !/^(find|get|have|see|need|want|think|say|know|leave)$/.test(verb!.base ?? '')) return true;
    const tookOff = prev.t === 'prt' && verb !== undefined && cur[cur.lastIndexOf(prev) - 1]?.t === 'np' && isAux(next) && /^(off|out|on|up|down)$/.test(prev.low) && /^(take|get|pull|lift|knock|drive|press|slide|drop|put|bolt|push|slip|tap|pop|screw)$/.test(verb.base ?? '');
    if (tookOff) return true;
    if (prev.t === 'prt' && /^(in|on|over|through)$/.test(prev.low) && cur.at(-1) === prev && cur.at(-2)?.t === 'prt' && /^(off|out|up|down)$/.test(cur.at(-2)!.low)) return false; // "broke off in the housing"
    if (prev === verb && cur.at(-1)!.t === 'adv' && cur.some(x => x.np || isSubjectPronoun(x)) && /^(overnight|again|now|today|yesterday|fine|well|nicely|lovely|away)$/.test(cur.at(-1)!.low) && predicateAt(items, afterNouns(items, k, false))) return true;
    if (prev === verb || prev.t === 'prt' && !stateEnds(cur)) return false;
    if (prev.t === 'prt' && /^(the|a|an|my|his|her|our)$/.test(it.low.split(' ')[0]!) && !isAux(next) && cur[cur.lastIndexOf(prev) - 1]?.t === 'be') return false;
    return predicateAt(items, prev.t === 'prt' ? k + 1 : afterNouns(items, k, false)) && !(causative(verb, items, k) && /^(help|let|make|have|see|hear|watch|want|need|think|say|know|guess|reckon)$/.test(verb?.base ?? ''));
  }
  if (it.t === 'verb' && it.base === 'get' && next?.t === 'to' && prev === verb && /^(past|part)$/.test(prev.form ?? '') && cur.some(x => x.t === 'be' || x.np)) return true;
  if (it.t === 'verb' && it.form !== 'ing' && prev !== verb) {
    if (it.base === 'get' && next?.t === 'to' || it.base === 'need' || it.base === 'go' && next?.t === 'to') return true;
    if (causative(verb, items, k) || prev.t === 'pron' && isSubjectPronoun(prev) && !/^(prep|prt|verb)$/.test(cur[cur.indexOf(prev) - 1]?.t ?? '')) return false;
    if (!verb && prev.t === 'np') return false;
    if (it.form === 'base' && /^(look|check|see)$/.test(it.base ?? '') && /^(at|to|if)$/.test(next?.low ?? '') && prev.t === 'np') return true;
    return next?.t === 'np' || next?.t === 'pron' || next?.t === 'prt' || next?.t === 'cc' || prev.t === 'adv' || prev.t === 'prt';
  }
  if (it.t === 'verb' && it.form === 'ing' && it.base === 'go' && next?.t === 'to' && (prev !== verb || /^(past|part)$/.test(prev.form ?? '')) && prev.t !== 'pron') return true;
  return it.t === 'adj' && it.low === 'good' && next?.t === 'to' && prev.t !== 'det';
}

/** "frost for tonight i drained the block": after a verbless headline that ends in a day or a figure, someone does something. */
function fragmentEnds(items: readonly Item[], k: number, cur: readonly Item[]): boolean {
  const it = items[k]!, dim = last(cur)?.f?.dim, next = items[k + 1];
  if (it.pause && topicOnly(cur) && (it.t === 'np' && predicateAt(items, afterNouns(items, k, false)) || it.t === 'verb' && it.form === 'past' && next?.np && !/^(come|go|have|get|take)$/.test(it.base ?? ''))) return true;
  if (dim && cur.some(x => x.np) && /^(it|they)$/.test(it.low) && isAux(next)) return true; // "on the chain this morning it's cleaned"
  if (!dim || !cur.some(x => x.np) || !/^(i|we|he|she|they)$/.test(items[k]!.low)) return false;
  let i = k + 1;
  while (items[i] && (isAux(items[i]) || items[i]!.t === 'adv' || items[i]!.t === 'neg')) i++;
  return finite(items[i]) && items.slice(i + 1, i + 4).some(x => x.np);
}

/** "…with a cold chisel um hour and a half on that": after a breath a new clause or a headline may begin where the one before can end. */
function opensAfterBreath(items: readonly Item[], k: number, cur: readonly Item[]): boolean {
  const it = items[k]!, prev = last(cur);
  if (!prev || !hasPredicate(cur) || !(prev.np || prev.f || /^(pron|prt|adj|adv)$/.test(prev.t) || prev.t === 'verb' && cur.some(x => x.np) && prev.form !== 'ing')) return false;
  if (isSubjectPronoun(it)) return predicateAt(items, k + 1);
  if (it.t === 'verb') return it.form === 'past' || it.form === 'base' && (items[k + 1]?.np !== undefined || items[k + 1]?.t === 'pron');
  if (!it.np && it.f?.dim !== 'span' && it.f?.dim !== 'number') return false;
  if (predicateAt(items, afterNouns(items, k))) return true;
  return prev.t !== 'prt' && prev.t !== 'verb' && !(prev.t === 'pron' && cur.at(-2)?.t === 'verb' && it.np?.stands);
}

/** A thing named and nothing said of it yet. */
const topicOnly = (cur: readonly Item[]): boolean => cur.some(x => x.np && !PERSONS.test(x.np.said)) && cur.every(x => x.np || /^(adv|intj|mark|cc)$/.test(x.t) || x.t === 'prep' || x.t === 'prt') && !/^(prep|prt|cc)$/.test(cur.at(-1)!.t);

const endsAt = (items: readonly Item[], k: number): boolean => items[k] === undefined || items[k]!.t === 'mark' || items[k]!.t === 'cc' || items[k]!.low === 'at';

/** "three of them are": a count of things named before, as a subject. */
const countsOf = (items: readonly Item[], k: number): boolean => {
  const of = /^(more|others?)$/.test(items[k + 1]?.low ?? '') ? k + 2 : k + 1;
  const bare = items[k]?.f?.dim === 'number' && !/^(other|others|the|those|these|all|my|his)$/.test(items[k - 1]?.low.split(' ').at(-1) ?? '') && items[k + 1]?.t === 'be' && (items[k + 2]?.t === 'adj' || items[k + 2]?.t === 'verb'); // "four are chipped"
  return bare || (items[k]?.f?.dim === 'number' || items[k]?.t === 'num' || /^(most|some|none|half|both|several)$/.test(items[k]?.low ?? '')) && items[of]?.low === 'of' && (items[of + 1]?.t === 'pron' || items[of + 1]?.t === 'np') && predicateAt(items, items[of + 1]!.t === 'np' ? afterNouns(items, of + 1, false) : of + 2);
};

/** A particle that closed its clause: "…is off", "took it out". */
const stateEnds = (cur: readonly Item[]): boolean => { const k = cur.length - 1; return k > 0 && (cur[k - 1]!.t === 'be' || cur[k - 1]!.t === 'pron' || cur[k - 1]!.t === 'adv' || cur[k - 1]!.t === 'prt'); };

/** "had the head skimmed", "found the seal split": the second verb is said of the first one's object. */
function causative(verb: Item | undefined, items: readonly Item[], k: number): boolean {
  if (!verb || !/^(have|find|get|see|want|need|leave|keep|make|let|help|hear|watch)$/.test(verb.base ?? '')) return false;
  const it = items[k]!;
  if (/^(help|let|make|have)$/.test(verb.base ?? '')) return true;
  return it.t !== 'verb' || items[k + 1]?.t !== 'np' && items[k + 1]?.t !== 'pron';
}

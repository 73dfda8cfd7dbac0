import { CONDITION } from '../words/conditions.ts';
import type { Item } from './items.ts';
import { afterNouns, finite, isAux, isSubjectPronoun, startsNoun, STATE_PARTICLE } from './predicate.ts';

/** Where the thing of a cleft stands: after "it's", or "it's only". */
const cleftAt = (items: readonly Item[], n: number): number => (/^(only|just|actually|really)$/.test(items[n + 2]?.low ?? '') ? n + 3 : n + 2);

/** "that's the sump on", "thats it fitted", "that's the belts tensioned": what is pointed at is what the state is said of. */
export function plainOrder(items: readonly Item[]): readonly Item[] {
  // "it's the left needle that's bent"
  const cleft = items.findIndex((x, n) => x.low === 'it' && items[n + 1]?.t === 'be' && !/n't$/.test(items[n + 1]!.low) && items[cleftAt(items, n)]?.t === 'np' && !items[cleftAt(items, n)]!.np!.quant && (/^(that|which)$/.test(items[cleftAt(items, n) + 1]?.low ?? '') && (isAux(items[cleftAt(items, n) + 2]) || finite(items[cleftAt(items, n) + 2])) || /^(only|just)$/.test(items[n + 2]?.low ?? '') && (isAux(items[cleftAt(items, n) + 1]) || finite(items[cleftAt(items, n) + 1]))));
  if (cleft >= 0) { const np = cleftAt(items, cleft), on = /^(that|which)$/.test(items[np + 1]!.low) ? np + 2 : np + 1; items = [...items.slice(0, cleft), { ...items[np]!, from: items[cleft]!.from }, ...items.slice(on)]; }
  // "there's a bolt broke off in the housing"
  const there = items.findIndex((x, n) => x.low === 'there' && items[n + 1]?.t === 'be' && !/n't$/.test(items[n + 1]!.low) && items[n + 2]?.t === 'np' && items[n + 2]!.np!.quant !== 'no' && items[n + 3]?.t === 'verb' && /^(past|part)$/.test(items[n + 3]!.form ?? '') && !items[n + 4]?.np);
  if (there >= 0) items = [...items.slice(0, there), { ...items[there + 2]!, from: items[there]!.from }, ...items.slice(there + 3)];
  items = timeLast(withoutLead(items));
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

/** "after the first 50 miles go round the nuts", "every ten hours grease the kingpins": an order with its time before it. */
function timeLast(items: readonly Item[]): readonly Item[] {
  const k = items.findIndex(x => x.f?.dim === 'span' || x.f?.dim === 'when');
  if (k < 0 || k > 3 || items[0]!.f?.dim === 'when' || !items.slice(0, k).every(x => /^(sub|prep|det|adj|adv|cc)$/.test(x.t) || x.np?.stands && /^first$/.test(x.np.said)) || !items.slice(0, k).some(x => /^(after|in|at|every|come|within|by|each|from|once)$/.test(x.low))) return items;
  let n = k + 1;
  while (items[n] && (items[n]!.np && /^(running|work|use|driving|time|run)$/.test(items[n]!.np!.said) || /^(of|'|,|s)$/.test(items[n]!.low))) n++;
  const verb = items[n];
  if (verb?.t !== 'verb' || verb.form !== 'base' || !items[n + 1]) return items;
  const end = items.findIndex((x, m) => m > n && (x.t === 'mark' && x.low !== ',' || x.t === 'cc' && finite(items[m + 1]))), to = end < 0 ? items.length : end;
  return [...items.slice(n, to), ...items.slice(0, n).filter(x => x.t !== 'mark'), ...items.slice(to)];
}

/** "what I found was forty thou of lift", "reckon there's an eighth of play": how the speaker comes to say it is passed over. */
function withoutLead(items: readonly Item[]): readonly Item[] {
  const k = items.findIndex(x => x.t !== 'cc' && x.t !== 'adv' && x.t !== 'mark' && x.t !== 'intj'), at = (n: number): Item | undefined => items[k + n];
  if (k < 0) return items;
  if (at(0)!.low === 'what' && /^(i|we)$/.test(at(1)?.low ?? '')) {
    const be = items.findIndex((x, n) => n > k + 2 && x.t === 'be');
    if (be > 0 && be <= k + 4 && /^(find|have|get|see|measure|notice|count)$/.test(items.slice(k + 2, be).findLast(x => x.t === 'verb' || x.t === 'have')?.base ?? 'have') && items[be + 1]) return [...items.slice(0, k), { ...items[be + 1]!, from: items[k]!.from }, ...items.slice(be + 2)];
  }
  const own = /^(i|we)$/.test(at(0)!.low) ? 1 : 0, said = own && /^('d|would)$/.test(at(1)?.low ?? '') ? 2 : own;
  if (/^(reckon|figure|guess|say|think)$/.test(at(said)?.low ?? '') && at(said)!.t === 'verb' && at(said + 1)?.low === 'there' && at(said + 2)?.t === 'be' && items.slice(k + said).some(x => x.f?.dim === 'measure')) return [...items.slice(0, k), { ...at(said + 1)!, from: items[k]!.from }, ...items.slice(k + said + 2)];
  return items;
}

/** "the breather I'd ordered for the gearbox turned up": the words that only say which one are passed over. */
export function withoutRelatives(items: readonly Item[]): readonly Item[] {
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
    if (items.slice(k + 2, i).some(x => x.t === 'modal' && x.low !== "'d" || x.t === 'do' || x.t === 'be' && x.low !== 'been')) continue;
    const waited = items[i - 1]?.low === 'been' && items[i]?.t === 'verb' && items[i]!.form === 'ing' && /^(wait|look|hunt|chase|hope|search)$/.test(items[i]!.base ?? ''); // "I'd been waiting on"
    const held = i > k + 2 && items[i - 1]!.t === 'have' && !finite(items[i]) ? i - 1 : -1;
    if (held >= 0) i = held;
    if (held < 0 && !waited && (!finite(items[i]) || i === k + 2 && items[i]!.form !== 'past')) continue;
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

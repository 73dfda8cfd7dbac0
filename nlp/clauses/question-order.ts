import type { Item } from './items.ts';
import { afterNouns, hasPredicate, isAux, isSubjectPronoun, last } from './predicate.ts';

/** "what did I", "where's the", "can I", "is it", "how many": word order that asks. */
export function opensQuestion(items: readonly Item[], k: number, cur: readonly Item[]): boolean {
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
    // "What needs a hoist", "who has the core"; but "what broke was the key" tells.
    if (/^(what|who)$/.test(it.low) && (next?.t === 'verb' || next?.t === 'have') && cur.every(i => i.t === 'mark' || i.t === 'cc' || i.t === 'intj') && !items.slice(k + 2).some(i => i.t === 'be')) return true;
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
    return hasPredicate(cur) && prev.t !== 'np' && prev.t !== 'pron' && prev.t !== 'wh' && prev.t !== 'modal' && prev.t !== 'to' && isSubjectPronoun(next);
  }
  return false;
}

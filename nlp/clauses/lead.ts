import { CONDITION } from '../words/conditions.ts';
import { PERSONS } from '../words/persons.ts';
import type { Item } from './items.ts';
import { afterNouns, finite, isAux, isSubjectPronoun, predicateAt } from './predicate.ts';

/** What a fault or a tale is called before it is told: "the trouble is the belt slips". */
const CALLED = /^(trouble|problem|thing|snag|catch|upshot|fact|truth|fault|reason|news|good news|bad news|only thing|main thing|funny thing|odd thing|worst thing|long and short|surprise|best part|worst part|worst)$/;
/** What was found or went on, between "what" and "was". */
const TOLD = /^(what|all) (?:(?:i|we) (?:'ve |had |have |did )?(?:just |only |then )?(?:find|found|found out|see|saw|noticed|discovered|got|came across|met|had)(?: out| there| inside| in (?:it|there))?|(?:had |'s |has )?(?:happened|happen|went wrong|gone wrong|gave way|let go|gone|did it)|(?:was|'s|is) wrong(?: with (?:it|her|that))?|it was)$/;

/** "what I found was the key sheared", "the trouble is the belt slips": the words that only lead on to what is told are passed over. */
export function withoutLead(items: readonly Item[]): readonly Item[] {
  items = pointed(items);
  let s = 0;
  while (items[s] && /^(cc|intj|adv|mark)$/.test(items[s]!.t)) s++;
  const first = items[s];
  if (!first) return items;
  if (/^(what|all)$/.test(first.low)) {
    for (let b = s + 2; b < Math.min(items.length, s + 8); b++) {
      if (!/^(is|was|'s)$/.test(items[b]!.low)) continue;
      const lead = items.slice(s, b).map(i => i.low).join(' ');
      if (TOLD.test(lead) && tells(items, b + 1)) return since(items, s, b + 1);
      if (/^what (i|we)\b/.test(lead) && TOLD.test(lead) && items[b + 1]?.np) return [...items.slice(0, s), { ...items[s + 1]!, from: first.from }, { t: 'verb', low: 'found', base: 'find', form: 'past', from: items[b]!.from, to: items[b]!.to }, ...items.slice(b + 1)]; // "what I found was a cracked cage"
    }
    return items;
  }
  const turn = first.low === 'it' ? s + 1 : s;
  if (items[turn]?.base === 'turn' && items[turn]!.form !== 'base' && items[turn + 1]?.low === 'out') { const on = items[turn + 2]?.low === 'that' ? turn + 3 : turn + 2; return tells(items, on) ? since(items, s, on) : items; }
  const be = first.np && CALLED.test(first.np.said) ? s + 1 : -1;
  if (be < 0 || items[be]?.t !== 'be' || !/^(is|was|'s)$/.test(items[be]!.low)) return items;
  const on = items[be + 1]?.low === 'that' ? be + 2 : be + 1;
  return tells(items, on) ? since(items, s, on) : items;
}

/** The items from `on`, the first of them standing for those from `s` as well. */
const since = (items: readonly Item[], s: number, on: number): readonly Item[] => [...items.slice(0, s), { ...items[on]!, from: items[s]!.from }, ...items.slice(on + 1)];

/** Whether a thing with something said of it stands at `k`. */
function tells(items: readonly Item[], k: number): boolean {
  let i = k;
  while (items[i]?.t === 'adv' || items[i]?.low === ',') i++;
  if (isSubjectPronoun(items[i])) return isAux(items[i + 1]) || finite(items[i + 1]);
  return items[i]?.t === 'np' && predicateAt(items, afterNouns(items, i, false));
}

/** "off with the head", "in with the seal and on with the cover": the particle before its thing is put after it. */
export function withoutWith(items: readonly Item[]): readonly Item[] {
  for (let p = 0; p + 2 < items.length; p++) {
    const thing = items[p + 2];
    if (items[p]!.t !== 'prt' || !/^(off|on|out|in|back|up)$/.test(items[p]!.low) || items[p + 1]!.low !== 'with' || !thing?.np || thing.np.stands && !/^ones?$/.test(thing.np.said) || PERSONS.test(thing.np.said)) continue;
    const s = items[p - 1]?.low === 'back' ? p - 1 : p, before = items[s - 1];
    if (before && !/^(cc|intj|adv|mark)$/.test(before.t) && before.f?.dim !== 'when') continue;
    const end = afterNouns(items, p + 2), last = items[end - 1]!;
    return [...items.slice(0, s), { ...thing, from: items[s]!.from }, ...items.slice(p + 3, end), ...items.slice(s, p + 1).map(i => ({ ...i, from: last.to - 1, to: last.to })), ...withoutWith(items.slice(end))];
  }
  return items;
}

/** "(wasn't the pump,) it was the screen, blocked solid": what "it was" points at, with its state after a comma. */
function pointed(items: readonly Item[]): readonly Item[] {
  for (let k = 0; k + 4 < items.length; k++) {
    const said = items[k + 2]!, state = items[k + 4]!;
    if (items[k]!.low !== 'it' || k > 0 && !/^(mark|cc|intj|adv)$/.test(items[k - 1]!.t) || !/^('s|is|was)$/.test(items[k + 1]!.low) || !said.np || said.np.stands || !/^(the|my|that)\b/.test(said.low) || items[k + 3]!.low !== ',') continue;
    if (state.t === 'adj' && CONDITION.has(state.low) || state.t === 'verb' && /^(past|part)$/.test(state.form ?? '') && !items[k + 5]?.np) return [...items.slice(0, k), { ...said, from: items[k]!.from }, ...items.slice(k + 4)];
  }
  return items;
}

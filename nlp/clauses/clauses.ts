import { sentences } from '../text/sentences.ts';
import type { Sheet } from '../types.ts';
import type { Clause } from './clause.ts';
import { frame } from './frame.ts';
import { itemsOf } from './items.ts';
import type { Memory } from './memory.ts';
import { splitClauses } from './split.ts';
import { isPlural, partLike } from './things.ts';

/** A clause with the things known when it was said. */
export type Placed = Clause & { memory: Memory; sentence: number };

/** All clauses of a note outside the stretches already taken (questions, the name of the machine), in order. */
export function clausesOf(sheet: Sheet, taken: readonly [number, number][], memory: Memory): Placed[] {
  const out: Placed[] = [];
  sentences(sheet.tokens, sheet.text).forEach((s, sentence) => {
    let before: Clause | undefined;
    for (const [from, to] of outside(s.from, s.to, taken)) {
      for (const cut of splitClauses(itemsOf(sheet, from, to))) {
        const c = frame(sheet, cut, memory, before);
        out.push({ ...c, memory: memory.copy(), sentence });
        suppose(out, sentence);
        memory.note([...c.subj.filter(x => !x.carried || !c.obj.length), ...c.obj].filter(x => partLike(sheet, x.name)));
        memory.mention(c.items.flatMap(i => (i.np && !i.np.stands && partLike(sheet, i.np.name) ? [{ name: i.np.name, from: i.from, to: i.to, np: i.np, plural: isPlural(i.np.name) }] : [])));
        before = c;
      }
      before = undefined;
    }
  });
  return out;
}

/** "If it's bent I'll need one", "I'll be up there if it's dry": what hangs on an "if" is no plan yet. */
function suppose(clauses: Placed[], sentence: number): void {
  const c = clauses.at(-1)!, before = clauses.at(-2);
  if (!before || before.sentence !== sentence) return;
  const iffy = (x: Clause): boolean => /^(if|unless)$/.test(x.sub ?? '');
  if ((iffy(before) || before.reality === 'cond') && !c.sub && c.join !== 'but' && /^(plan|maybe|must|deed|wish)$/.test(c.reality) && (c.reality !== 'deed' || c.verb?.form === 'base')) c.reality = 'cond';
  if (iffy(c) && /^(plan|maybe|must)$/.test(before.reality)) before.reality = 'cond';
}

/** The parts of [from, to) that none of the taken stretches covers. */
function outside(from: number, to: number, taken: readonly [number, number][]): [number, number][] {
  const out: [number, number][] = [];
  let at = from;
  for (const [a, b] of [...taken].sort((x, y) => x[0] - y[0])) {
    if (b <= at || a >= to) continue;
    if (a > at) out.push([at, a]);
    at = Math.max(at, b);
  }
  if (at < to) out.push([at, to]);
  return out;
}

import type { Entry } from '../../../domain/model/entry.ts';
import { singular } from '../../words/nouns.ts';
import { figureAgain } from '../amend/bare.ts';
import { changed } from '../amend/changed.ts';
import { lowText, type Telling } from '../telling.ts';

const WORDED = ['product', 'item', 'where', 'with', 'spec', 'part'] as const;

/** A correction that no wording gave away: the figure, the day or the place that the clause gives anew, else a name that shares its last word with one said before ("hemp rope" after "graphite rope"). */
export function amended(t: Telling): Entry[] {
  if (t.at > 2 || t.told.length || !t.sheet.ctx.prior?.length || /^(that makes|got|bought)\b/.test(lowText(t))) return []; // "that makes four" counts up, "got two" tells what is there now
  return changed(t, t.clause, lowText(t)) ?? figureAgain(t, true) ?? renamed(t) ?? [];
}

function renamed(t: Telling): Entry[] | undefined {
  const not = t.clause.items.findIndex(i => i.t === 'neg');
  for (const { np } of t.clause.items.slice(0, not > 0 ? not : undefined)) {
    if (!np || np.stands) continue;
    const said = np.said.split(' '), head = singular(said.at(-1)!);
    for (const e of [...t.prior].reverse()) for (const field of WORDED) {
      const value = (e as Record<string, unknown>)[field];
      if (typeof value !== 'string') continue;
      const words = value.toLowerCase().split(' '), at = words.findIndex(w => singular(w) === head), from = at - said.length + 1;
      const made = [...words.slice(0, Math.max(0, from)), ...said, ...words.slice(at + 1)].join(' ');
      if (at >= 0 && said.length > 1 && made !== words.join(' ')) return [{ kind: 'amend', field, value: made } as Entry];
    }
  }
  return undefined;
}

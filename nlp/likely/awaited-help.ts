import type { Entry } from '../../domain/model/entry.ts';
import { trim } from '../meanings/lib/fields.ts';
import { fellThrough } from '../meanings/likely/helped.ts';
import type { Telling, Told } from '../meanings/telling.ts';
import { saidIn, valueIn, wordsIn } from './said.ts';
import type { Weighed } from './net/weighed.ts';

/** How strongly the net must take the whole note to tell of help (log odds), and how sure it must be of the day and of what it is for. */
const HELP = 1.5, SURE = 0.7;

/** Help that is told over several clauses, none of which says it alone: "Two men are coming on Saturday. They will help me walk the engine to its bed." `left`: the clauses that nothing was read from. */
export function awaitedHelp(left: readonly Telling[], net: Weighed): Told | undefined {
  const sheet = left[0]?.sheet;
  if (!sheet || (net.told(0, sheet.text.length)?.get('hands') ?? -Infinity) <= HELP) return undefined;
  const all = { from: 0, to: sheet.tokens.length }, said = (field: string): ReturnType<typeof saidIn> => { const run = saidIn(sheet, net, all, `hands ${field}`); return run && run.p > SURE ? run : undefined; };
  const day = said('when'), when = day && valueIn(sheet, day, ['when']), what = said('for'), t = left.find(x => when && x.clause.from <= when.from && when.from < x.clause.to);
  if (!t || t.clause.asks || !when || when.value.vague || when.value.from === undefined || fellThrough(t)) return undefined;
  return { entry: trim({ kind: 'hands', when: when.value.from, for: what && wordsIn(sheet, what) }) as Entry, clause: t.clause, rule: 'likely' };
}

import type { Entry } from '../../domain/model/entry.ts';
import { stretchOf } from './stretch-of.ts';
import type { Clause } from '../clauses/clause.ts';
import type { Telling, Told } from '../meanings/telling.ts';
import { show } from '../trace.ts';
import { saidIn, valueIn } from './said.ts';
import type { Weighed } from './net/weighed.ts';

/** How sure the net must be of the words of a day that is promised in a clause of its own. */
const SURE = 0.6;
/** The field that holds the day on which something is to be here. */
const DAY: Partial<Record<Entry['kind'], string>> = { out: 'until', order: 'expected' };

/** The day that a later clause, of which nothing was read, promises for what is out or ordered: "The head is at the machine shop. They said a week from Friday." */
export function promised(told: Told[], left: Telling[], covered: Clause[], net: Weighed): void {
  for (const [i, x] of told.entries()) {
    const field = DAY[x.entry.kind], sheet = left[0]?.sheet;
    if (!field || !sheet || field in x.entry || !net.alone(...stretchOf(sheet, x.clause)).size) continue;
    const said = saidIn(sheet, net, x.clause, `${x.entry.kind} ${field}`), when = said && said.p > SURE ? valueIn(sheet, said, ['when']) : undefined;
    const t = when && left.find(y => y.clause.from > x.clause.from && y.clause.from <= when.from && when.to <= y.clause.to);
    if (!t || t.clause.asks || when.value.vague || when.value.from === undefined || when.value.from <= sheet.ctx.at.slice(0, 10)) continue;
    told[i] = { ...x, entry: { ...x.entry, [field]: when.value.from } as Entry };
    left.splice(left.indexOf(t), 1);
    covered.push(t.clause);
    sheet.trace.push({ stage: 'odds', rule: 'promised', text: sheet.text.slice(...stretchOf(sheet, t.clause)), gave: show(told[i]!.entry) });
  }
}

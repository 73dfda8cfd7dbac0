import type { Entry } from '../../domain/model/entry.ts';
import { VERDICTS } from '../../domain/model/fields.ts';
import type { Told } from '../meanings/telling.ts';
import type { Sheet } from '../types.ts';
import type { Weighed } from './net/weighed.ts';
import { stretchOf } from './stretch-of.ts';

/** So strongly the net must speak for what the rules did not read (log odds). */
const SURE = 1;

/** What an entry says beside its kind where the rules left it open and the net is sure, of the only one of its kind in a clause: the verdict of a finding, a figure as it was, work that was only begun, hours that are the sum so far. */
export function qualified(sheet: Sheet, x: Told, net: Weighed, told: readonly Told[]): Told {
  const { entry, clause } = x;
  if (told.some(y => y !== x && y.clause === clause && y.entry.kind === entry.kind) || !/^(finding|reading|work|hours)$/.test(entry.kind)) return x;
  const z = net.told(...stretchOf(sheet, clause));
  const says = (attribute: string): number => z?.get(attribute) ?? -Infinity;
  const more = entry.kind === 'finding' && entry.verdict === undefined ? verdict(says)
    : entry.kind === 'reading' && entry.asWas === undefined && !told.some(y => y.entry.kind === 'reading' && y.entry.asWas) && says('asWas') > SURE ? { asWas: true }
    : entry.kind === 'work' && entry.done === undefined && says('begun') > SURE ? { done: false }
    : entry.kind === 'hours' && entry.total === undefined && !told.some(y => y.entry.kind === 'hours' && y.entry.total) && says('total') > SURE ? { total: true } : undefined;
  if (!more) return x;
  sheet.trace.push({ stage: 'odds', rule: 'attribute', text: Object.keys(more).join(), gave: Object.values(more).join() });
  return { ...x, entry: { ...entry, ...more } as Entry };
}

function verdict(says: (attribute: string) => number): { verdict: typeof VERDICTS[number] } | undefined {
  const best = VERDICTS.reduce((a, b) => (says(b) > says(a) ? b : a));
  return says(best) > SURE ? { verdict: best } : undefined;
}

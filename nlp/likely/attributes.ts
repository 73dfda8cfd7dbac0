import type { Entry } from '../../domain/model/entry.ts';
import { VERDICTS } from '../../domain/model/fields.ts';
import type { Told } from '../meanings/telling.ts';
import type { Sheet } from '../types.ts';
import { choice } from './choice.ts';
import type { Weighed } from './net/weighed.ts';
import { spotOf } from './spot.ts';
import { stretchOf } from './stretch-of.ts';

/** So strongly the net must speak for what the rules did not read (log odds), of the clause or of the word or figure that tells it. */
const SURE = 1, ALONE = 1;

/**
 * What an entry says beside its kind where the rules left it open and the net is sure: the verdict of a finding, a figure as it was, work that was only begun, hours that are the sum so
 * far. The net says it of the word or figure that tells the entry, and of the clause where that tells no other of its kind.
 */
export function qualified(sheet: Sheet, x: Told, net: Weighed, told: readonly Told[]): Told {
  const { entry, clause } = x;
  if (!/^(finding|reading|work|hours)$/.test(entry.kind)) return x;
  const one = !told.some(y => y !== x && y.clause === clause && y.entry.kind === entry.kind), at = spotOf(sheet, x);
  const z = one ? net.told(...stretchOf(sheet, clause)) : undefined, spot = at ? net.alone(...stretchOf(sheet, at)) : new Map<string, number>();
  const says = (attribute: string): boolean => (z?.get(attribute) ?? -Infinity) > SURE || (spot.get(attribute) ?? -Infinity) > ALONE;
  const more = entry.kind === 'finding' && entry.verdict === undefined ? verdict(z, spot)
    : entry.kind === 'reading' && entry.asWas === undefined && ((spot.get('asWas') ?? -Infinity) > ALONE || says('asWas') && !told.some(y => y.entry.kind === 'reading' && y.entry.asWas)) ? { asWas: true }
    : entry.kind === 'work' && entry.done === undefined && says('begun') ? { done: false }
    : entry.kind === 'hours' && entry.total === undefined && !told.some(y => y.entry.kind === 'hours' && y.entry.total) && says('total') ? { total: true } : undefined;
  if (!more) return x;
  sheet.trace.push({ stage: 'odds', rule: 'attribute', text: Object.keys(more).join(), gave: Object.values(more).join() });
  return { ...x, entry: { ...entry, ...more } as Entry };
}

function verdict(z: ReadonlyMap<string, number> | undefined, spot: ReadonlyMap<string, number>): { verdict: typeof VERDICTS[number] } | undefined {
  const says = (v: string): number => z?.get(v) ?? -Infinity, best = VERDICTS.reduce((a, b) => (says(b) > says(a) ? b : a));
  const of = choice(spot, 'verdict ', ALONE) ?? (says(best) > SURE ? best : undefined);
  return of === undefined ? undefined : { verdict: of as typeof VERDICTS[number] };
}

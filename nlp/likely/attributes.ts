import type { Entry } from '../../domain/model/entry.ts';
import { FIT_STATES, VERDICTS } from '../../domain/model/fields.ts';
import type { Told } from '../meanings/telling.ts';
import type { Sheet } from '../types.ts';
import type { FitState } from '../meanings/lib/fit-state.ts';
import { trim } from '../meanings/lib/fields.ts';
import { choice } from './choice.ts';
import type { Weighed } from './net/weighed.ts';
import { spotOf } from './spot.ts';
import { stretchOf } from './stretch-of.ts';

/** So strongly the net must speak for what the rules did not read (log odds), of the clause or of the word or figure that tells it. */
const SURE = 1, ALONE = 1;
/** Under this it speaks against what the rules took from a word: a verdict, or that work was only begun (log odds). */
const AGAINST = 0;
/** By so much another state must be likelier for the only fit of a clause to be told as that (log odds). */
const OTHER = 2.5;

/**
 * What an entry says beside its kind where the rules left it open and the net is sure: the verdict of a finding, a figure as it was, work that was only begun, hours that are the sum so
 * far; and what the net plainly denies of what the rules took from a word, left off or put right. The net says it of the word or figure that tells the entry, and of the clause where that tells no other of its kind.
 */
export function qualified(sheet: Sheet, x: Told, net: Weighed, others: readonly Told[]): Told {
  const { entry, clause } = x;
  if (!/^(fit|finding|reading|work|hours)$/.test(entry.kind)) return x;
  const one = !others.some(y => y.clause === clause && y.entry.kind === entry.kind), at = spotOf(sheet, x);
  const z = one ? net.told(...stretchOf(sheet, clause)) : undefined, spot = at ? net.alone(...stretchOf(sheet, at)) : new Map<string, number>();
  const says = (attribute: string): boolean => (z?.get(attribute) ?? -Infinity) > SURE || (spot.get(attribute) ?? -Infinity) > ALONE;
  const denies = (attribute: string, alone = attribute): boolean => Math.max(z?.get(attribute) ?? -Infinity, spot.get(alone) ?? -Infinity) < AGAINST && (z !== undefined || spot.size > 0);
  const more = entry.kind === 'fit' ? (one && z ? sits(entry.state, z) : undefined)
    : entry.kind === 'finding' && entry.verdict !== undefined ? (denies(entry.verdict, `verdict ${entry.verdict}`) ? { verdict: undefined } : undefined)
    : entry.kind === 'finding' ? verdict(z, spot)
    : entry.kind === 'reading' && entry.asWas === undefined && !sheet.tokens.slice(clause.from, clause.to).some(t => t.low === 'now') && !others.some(y => y.entry.kind === 'reading' && y.entry.asWas && y.entry.part === entry.part && y.entry.what === entry.what) && ((spot.get('asWas') ?? -Infinity) > ALONE || says('asWas') && !others.some(y => y.entry.kind === 'reading' && y.entry.asWas)) ? { asWas: true }
    : entry.kind === 'work' && entry.done === undefined && says('begun') ? { done: false }
    : entry.kind === 'work' && entry.done === false && denies('begun') ? { done: undefined }
    : entry.kind === 'hours' && entry.total === undefined && !others.some(y => y.entry.kind === 'hours' && y.entry.total) && says('total') ? { total: true } : undefined;
  if (!more) return x;
  sheet.trace.push({ stage: 'odds', rule: 'attribute', text: Object.keys(more).join(), gave: Object.values(more).map(v => v ?? 'left off').join() });
  return { ...x, entry: trim({ ...entry, ...more }) as Entry };
}

/** The state that the net takes a part to be in, where it is plainly another than the rules read ("head bolts pulled to 100" are not off). */
function sits(state: FitState, z: ReadonlyMap<string, number>): { state: FitState } | undefined {
  const says = (s: FitState): number => z.get(`fit ${s}`) ?? -Infinity, best = FIT_STATES.reduce((a, b) => (says(b) > says(a) ? b : a));
  return best !== state && says(best) > SURE && says(best) > says(state) + OTHER ? { state: best } : undefined;
}

function verdict(z: ReadonlyMap<string, number> | undefined, spot: ReadonlyMap<string, number>): { verdict: typeof VERDICTS[number] } | undefined {
  const says = (v: string): number => z?.get(v) ?? -Infinity, best = VERDICTS.reduce((a, b) => (says(b) > says(a) ? b : a));
  const of = choice(spot, 'verdict ', ALONE) ?? (says(best) > SURE ? best : undefined);
  return of === undefined ? undefined : { verdict: of as typeof VERDICTS[number] };
}

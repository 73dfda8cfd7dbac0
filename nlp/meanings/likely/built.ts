import type { Entry } from '../../../domain/model/entry.ts';
import { SKIES } from '../../../domain/model/fields.ts';
import { stretchOf } from '../../likely/stretch-of.ts';
import { saidIn, valueIn, wordsIn, type Said } from '../../likely/said.ts';
import type { Stretch } from '../../likely/spot.ts';
import type { Weighed } from '../../likely/net/weighed.ts';
import type { Found } from '../../types.ts';
import { trim } from '../lib/fields.ts';
import { afterSpan } from '../recheck/after-span.ts';
import { foretells } from '../weather.ts';
import type { FitState } from '../lib/fit-state.ts';
import { verdictIn } from '../lib/verdict.ts';
import { lowText, type Telling } from '../telling.ts';
import { about } from './about.ts';
import { mayBear } from './bearer.ts';
import { fellThrough } from './helped.ts';
import { readOff } from './read-off.ts';

/** How sure the net must be of the words of a field that an entry can't do without, and of those that it only adds. */
const NEEDED = 0.7, ADDED = 0.7;

const GOODS = /^(want|order|bought|quote|arrival)$/;

/**
 * Entries in the words that the net takes for its fields, where no rule of its kind found them: nothing where a field that the kind can't do without is not said, or where
 * nothing names what is told of. `asking`: what they are asked from, the clause or the words of a name in it.
 */
export function built(t: Telling, net: Weighed, kind: Entry['kind'], sort: string, asking: Stretch = t.clause): Entry[] {
  const fields = fieldsOf(t, net, kind, sort, asking);
  if (!fields) return [];
  if (kind === 'hands' || kind === 'rule' || kind === 'weather') return [trim({ kind, ...fields }) as Entry];
  const names = about(t, true).filter(p => kind !== 'finding' || mayBear(t, p)).map(p => p.name);
  if (kind === 'hours') return [trim({ kind, ...fields, part: names[0] }) as Entry];
  return names.map(name => trim({ kind, [GOODS.test(kind) ? 'item' : 'part']: name, ...fields }) as Entry);
}

/** The sky that the net takes a clause to tell of; none where it is not sure of one. */
function skyOf(t: Telling, net: Weighed): typeof SKIES[number] | undefined {
  const z = net.told(...stretchOf(t.sheet, t.clause)), says = (sky: string): number => z?.get(sky) ?? -Infinity;
  const best = SKIES.reduce((a, b) => (says(b) > says(a) ? b : a));
  const below = /(?:^|\s)(?:- ?|minus |below )\d/.test(lowText(t)); // "-38 this morning"
  return says(best) > 0 && !(best === 'hot' && below) ? best : undefined;
}

type Fields = Partial<Record<string, string | number | boolean>>;

function fieldsOf(t: Telling, net: Weighed, kind: Entry['kind'], sort: string, asking: Stretch): Fields | undefined {
  const said = (field: string, least: number): Said | undefined => { const run = saidIn(t.sheet, net, asking, `${kind} ${field}`); return run && run.p > least ? run : undefined; };
  const text = (field: string, least = ADDED, place = false): string | undefined => { const run = said(field, least); return run && wordsIn(t.sheet, run, place) || undefined; };
  const figure = <D extends Found['dim']>(field: string, dims: readonly D[], least = ADDED): Extract<Found, { dim: D }> | undefined => { const run = said(field, least); return run && valueIn(t.sheet, run, dims); };
  const amount = (field: string, least = ADDED): number | undefined => figure(field, ['money', 'number'], least)?.value.value;
  const day = (field: string, least = ADDED): string | undefined => { const when = figure(field, ['when'], least)?.value; return when?.vague ? undefined : when?.from; };
  const lastOf = (field: string): string | undefined => { const when = figure(field, ['when'])?.value; return when?.vague ? undefined : when?.to ?? when?.from; };
  const deed = (field: string): string | undefined => { const run = said(field, NEEDED); return run && t.clauses.flatMap(c => c.items).find(i => i.t === 'verb' && i.from >= run.from && i.to <= run.to)?.base; };
  switch (kind) {
    case 'fit': return { state: sort.split(' ')[1] as FitState, with: sort === 'fit off' ? undefined : text('with') };
    case 'finding': { const condition = text('condition', NEEDED); return condition !== undefined ? { condition, verdict: verdictIn(condition) } : undefined; }
    case 'reading': { const value = said('value', NEEDED); return value && readOff(t, net, value); }
    case 'work': { const action = deed('action'); return action !== undefined && action !== 'do' ? { action, product: text('product') } : undefined; }
    case 'job': { const to = deed('do'); return to !== undefined && to !== 'do' ? { do: to } : undefined; }
    case 'want': return { spec: text('spec'), qty: amount('qty') };
    case 'quote': { const price = amount('price', NEEDED); return price !== undefined ? { source: text('source'), price, shipping: amount('shipping') } : undefined; }
    case 'bought': return { source: text('source'), price: amount('price') };
    case 'order': return { source: text('source'), price: amount('price'), shipping: amount('shipping'), expected: day('expected') };
    case 'stow': { const where = text('where', NEEDED, true); return where !== undefined ? { where } : undefined; }
    case 'out': { const where = text('where', NEEDED); return where !== undefined ? { where, until: day('until'), do: deed('do') } : undefined; }
    case 'hands': { if (fellThrough(t)) return undefined; const when = day('when', NEEDED); return when !== undefined ? { when, for: text('for') } : undefined; }
    case 'hours': { const span = figure('hours', ['span'], NEEDED)?.value; return span && /^(hours|minutes)$/.test(span.unit) ? { hours: span.unit === 'minutes' ? span.amount / 60 : span.amount } : undefined; }
    case 'rule': { const [first, then] = [text('first', NEEDED), text('then', NEEDED)]; return first !== undefined && then !== undefined ? { first, then } : undefined; }
    case 'wait': {
      const until = day('until', NEEDED), span = figure('after', ['span'], NEEDED)?.value;
      return until !== undefined ? { until } : span && /^(hours|days|weeks)$/.test(span.unit) ? { after: span.amount, unit: span.unit } : undefined;
    }
    case 'recheck': {
      const due = day('due', NEEDED), said = figure('after', ['span'], NEEDED)?.value, span = said && afterSpan(said);
      return span ? { do: deed('do') ?? 'check', ...span } : due !== undefined ? { do: deed('do') ?? 'check', due } : undefined;
    }
    case 'weather': { const sky = foretells(lowText(t)) ? skyOf(t, net) : undefined, from = day('from', NEEDED); return sky !== undefined && from !== undefined ? { sky, from, to: lastOf('to') } : undefined; }
    case 'arrival': return {};
    default: return undefined;
  }
}

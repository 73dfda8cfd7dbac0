import type { Ask } from '../../../domain/model/ask.ts';
import type { Desk, Hit } from './desk.ts';

type Whole = Extract<Ask, { kind: 'spent' | 'timeSpent' | 'finish' }>;
const whole = (a: Ask): a is Whole => a.kind === 'spent' || a.kind === 'timeSpent' || a.kind === 'finish';
/** What one calls the whole machine without naming it: "this wretched thing", "the lot". */
const UNNAMED = /^(?:(?:whole|wretched|blessed|damn|damned|bloody|old|entire) )?(?:thing|heap|contraption|lot|rig|project|beast|pile|money standing)$/;
/** What the words of such a question leave hanging on the name: "the tractor total", "the edger money". */
const HANGING = / (?:money|total|totals|lot|dollars|pounds|quid|altogether|so far|hours)$/;

/**
 * "how much is in the tractor, and how many hours since June", "what did I do on the binder in April and how long did it take": money, hours and the
 * finish are asked of what the question before was about. Where nothing was named and the shop has one machine, they are of that machine.
 */
export function inherit(desk: Desk, hits: readonly Hit[]): Hit[] {
  let last: string | undefined;
  const { machines } = desk.sheet.ctx, only = machines?.length === 1 ? machines[0] : undefined;
  return hits.map(h => {
    const asks = h.asks.map((a): Ask => {
      if (!whole(a)) return a;
      const { part: said, ...rest } = a, part = said && UNNAMED.test(said) ? undefined : said?.replace(HANGING, '');
      const of = part ?? last ?? (a.kind === 'timeSpent' && said === undefined ? undefined : only);
      return of ? { ...rest, part: of } as Ask : rest as Ask;
    });
    const own = asks.find(a => (whole(a) || a.kind === 'history') && a.part);
    if (own && 'part' in own) last = own.part;
    return { ...h, asks };
  });
}

import type { Entry } from '../../../domain/model/entry.ts';
import { phraseAt } from '../../dimensions/part/phrase.ts';
import type { Sheet } from '../../types.ts';
import type { Told } from '../telling.ts';

/** "held together with", "held on by": after these comes what holds a part for the time being. */
const HELD = /^(?:, )?(?:but )?(?:it 's |they 're )?(?:only |just )?held (?:(?:on|up|in|together|there|down) )?(?:with|by)$/;

/** "Track's back round her, held together with a drift": what is only held there is not on for good. Of 68 annotated parts put on of which that is said, two are. */
export function onlyHeld(sheet: Sheet, x: Told): Told {
  const e = x.entry;
  if (e.kind !== 'fit' || e.state !== 'on') return x;
  for (let to = x.clause.to + 2; to <= x.clause.to + 6; to++) {
    if (!HELD.test(sheet.tokens.slice(x.clause.to, to).map(t => t.low).join(' '))) continue;
    const holds = phraseAt(sheet, to);
    return { ...x, entry: { ...e, state: 'temporary', ...(holds ? { with: e.with ?? holds.name } : {}) } as Entry };
  }
  return x;
}

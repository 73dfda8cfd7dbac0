import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import { trim } from '../lib/fields.ts';

/** "Remind me Friday to ring the seal man", "remind me about the gasket tomorrow": asked for by name, so any work and any thing will do. `time`: when, where it is said. */
export function reminded(c: Clause, time: object | undefined): Entry[] | undefined {
  if (!time || c.neg || c.verb?.base !== 'remind' || c.verb.form !== 'base' || c.who && c.who !== 'you' || c.items[c.vi + 1]?.low !== 'me') return undefined;
  const act = c.items.findIndex((i, k) => k > c.vi && i.low === 'to' && c.items[k + 1]?.base !== undefined);
  if (act >= 0) {
    const verb = c.items[act + 1]!, part = thingAfter(c, act + 1);
    return part || !c.items[act + 2] ? [trim({ kind: 'recheck', part, do: verb.base!, ...time }) as Entry] : undefined;
  }
  const about = c.items.findIndex((i, k) => k > c.vi && /^(about|of)$/.test(i.low));
  const part = about < 0 ? undefined : thingAfter(c, about);
  return part ? [trim({ kind: 'recheck', part, do: 'see', ...time }) as Entry] : undefined;
}

const thingAfter = (c: Clause, k: number): string | undefined => c.items.find((i, n) => n > k && i.np && !i.np.stands)?.np!.name;

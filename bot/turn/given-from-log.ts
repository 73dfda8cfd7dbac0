import type { AskOf } from '../../domain/model/ask.ts';
import { nameKey, nameWords } from '../../domain/model/names.ts';
import type { Shop, Thing } from '../../domain/log/shop.ts';

/** What a measured thing gives to a sum: which words name the part, which name what was measured, and the inputs it fills in order. */
interface Source { part: RegExp; what: RegExp; fills: string[] }

const SOURCES: Record<string, Source[]> = {
  belt: [
    { part: /pulley|sheave/, what: /diameter|size/, fills: ['d1', 'd2'] },
    { part: /pulley|sheave|belt/, what: /cent(re|er)/, fills: ['centre'] },
  ],
  sheave: [
    { part: /pulley|sheave/, what: /diameter|size/, fills: ['d1', 'd2'] },
    { part: /motor|engine|crank|pulley/, what: /speed|rpm/, fills: ['rpm1'] },
  ],
  antifreeze: [{ part: /cooling|radiator|system|coolant/, what: /capacity|volume/, fills: ['capacity'] }],
};

/** The inputs of a sum that the note leaves out and the log has measured; what the note gives always wins. */
export function givenFromLog(ask: AskOf<'sum'>, shop: Shop, machine: string | undefined): Record<string, unknown> {
  const given: Record<string, unknown> = { ...ask.given };
  const things = [...(shop.machines.get(machine === undefined ? '' : nameKey(machine))?.things.values() ?? [])];
  for (const source of SOURCES[ask.of] ?? []) {
    // Half a set of inputs of one sort said in the note is not mixed with measurements of other things.
    if (source.fills.some(f => f in given)) continue;
    const readings = things.flatMap(t => measured(t, source)).slice(0, source.fills.length);
    if (readings.length < source.fills.length) continue;
    source.fills.forEach((field, i) => {
      given[field] = readings[i]!.value;
      if (readings[i]!.unit && readings[i]!.unit !== 'rpm') given[`${field}Unit`] = readings[i]!.unit;
    });
  }
  return given;
}

function measured(thing: Thing, { part, what }: Source): { value: number; unit?: string }[] {
  if (!nameWords(thing.name).some(w => part.test(w))) return [];
  return [...thing.asLeft.values(), ...thing.asWas.values()].filter(r => what.test(r.what)).slice(0, 1);
}

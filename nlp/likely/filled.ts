import type { Entry } from '../../domain/model/entry.ts';
import type { Told } from '../meanings/telling.ts';
import type { Found, Sheet } from '../types.ts';
import type { Weighed } from './net/weighed.ts';
import { verbForms } from '../words/verbs.ts';
import { saidIn, valueIn, wordsIn, type Said } from './said.ts';
import { nameWords } from '../../domain/model/names.ts';
import { HELD_IN } from './named.ts';
import { nameRun } from './name-run.ts';
import { spotOf } from './spot.ts';

/** How sure the net must be of the words of a field that the rules left out. */
const SURE = 0.8;

type Holds = 'words' | 'money' | 'day' | 'count' | 'deed';
/** The fields of a kind that may be left out, each with what it holds. */
const MAY: Partial<Record<Entry['kind'], Readonly<Record<string, Holds>>>> = {
  fit: { with: 'words' }, work: { product: 'words' }, want: { spec: 'words', for: 'words', qty: 'count' }, order: { source: 'words', price: 'money', shipping: 'money', expected: 'day' },
  bought: { source: 'words', price: 'money' }, quote: { source: 'words', shipping: 'money' }, hands: { for: 'words' }, out: { where: 'words', do: 'deed' },
};

/** An entry with what the net is sure it says beside, where the rules left a field open. Of several of its kind in a clause it is asked from the words of its name, of a deed always from its verb. */
export function filled(sheet: Sheet, x: Told, net: Weighed, others: readonly Told[]): Told {
  const may = MAY[x.entry.kind];
  const several = others.filter(y => y.clause === x.clause && y.entry.kind === x.entry.kind), run = several.length > 0 ? nameRun(sheet, x) : undefined;
  const at = x.entry.kind === 'work' ? spotOf(sheet, x) : run && several.every(y => nameRun(sheet, y)?.from !== run.from) ? run : undefined; // two prices of one thing share its name
  if (!may || !at && several.length > 0 || x.entry.kind === 'fit' && x.entry.state === 'off') return x;
  const more: Record<string, string | number> = {};
  for (const [field, holds] of Object.entries(may)) {
    if ((x.entry as Record<string, unknown>)[field] !== undefined) continue;
    const said = saidIn(sheet, net, at ?? x.clause, `${x.entry.kind} ${field}`);
    if (!said || said.p <= SURE || others.some(y => y.clause !== x.clause && y.entry.kind === x.entry.kind && said.from >= y.clause.from && said.from < Math.max(y.clause.to, y.to ?? 0))) continue; // it is said of another
    if (!/^(words|deed)$/.test(holds) && (said.from < x.clause.from || said.to > Math.max(x.clause.to, x.to ?? 0))) continue;
    if (field === 'shipping' && several.some(y => (nameRun(sheet, y)?.from ?? Infinity) < (run?.from ?? Infinity))) continue; // the carriage is paid once, with the first
    const value = holds === 'words' ? wordsIn(sheet, said) || undefined : holds === 'deed' ? deedIn(sheet, said) : held(sheet, said, holds);
    if (x.entry.kind === 'order' && holds === 'money' && value !== 0 && others.some(y => y.entry.kind === 'order' && (field === 'shipping' || y.clause === x.clause) && (y.entry as Record<string, unknown>)[field] === value)) continue; // one sum is paid once
    if (value !== undefined && !(field === 'spec' && nameWords(String(value)).every(w => HELD_IN.test(w)))) more[field] = value; // two tubes are two
  }
  if (!Object.keys(more).length) return x;
  sheet.trace.push({ stage: 'odds', rule: 'field', text: Object.keys(more).join(), gave: Object.values(more).join() });
  return { ...x, entry: { ...x.entry, ...more } as Entry };
}

const deedIn = (sheet: Sheet, said: Said): string | undefined => sheet.tokens.slice(said.from, said.to).flatMap(t => verbForms(t.low))[0]?.base;

function held(sheet: Sheet, said: { from: number; to: number; p: number }, holds: 'money' | 'day' | 'count'): string | number | undefined {
  const dims: Record<typeof holds, readonly Found['dim'][]> = { money: ['money', 'number'], day: ['when'], count: ['number'] };
  const found = valueIn(sheet, said, dims[holds]);
  if (found?.dim === 'when') return found.value.vague ? undefined : found.value.from;
  return found && 'value' in found.value ? found.value.value as number : undefined;
}

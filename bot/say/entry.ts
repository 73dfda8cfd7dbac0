import type { Entry } from '../../domain/model/entry.ts';
import type { Saying } from './spoken.ts';
import { day, dayOrWords, figure, measure, money, plural } from './words.ts';

/** How a part sits, and what was thought of it. */
export const STATE = { off: 'off', tried: 'tried on, comes off again', temporary: 'on for now', on: 'on for good', tight: 'tight' } as const;
const VERDICT = { good: 'good', reuse: 'will do', watch: 'to be watched', repair: 'to repair', replace: 'to replace' } as const;
const priced = (e: { price?: number; shipping?: number; source?: string }): string =>
  `${e.price !== undefined ? ` ${money(e.price)}` : ''}${e.shipping ? ` + ${money(e.shipping)} shipping` : ''}${e.source ? `, ${e.source}` : ''}`;
/** What was found, and what was thought of it. */
export const findingWords = ({ condition, verdict }: { condition: string; verdict?: keyof typeof VERDICT }): string =>
  `${condition}${verdict && verdict !== condition ? `, ${VERDICT[verdict]}` : ''}`;
const lasting = (n: number, unit = 'hours'): string => plural(n, unit.replace(/s$/, ''));
const many = (qty?: number): string => (qty && qty !== 1 ? `${figure(qty)} ` : '');

/** One entry read back in a few words: what was understood, with every figure and unit, so that a wrong one is seen at once. */
export function sayEntry(e: Entry, { at }: Saying): string {
  switch (e.kind) {
    case 'fit': return `${e.part} ${STATE[e.state]}${e.with ? `, ${e.with}` : ''}`;
    case 'finding': return `${e.part}: ${findingWords(e)}`;
    case 'reading': return `${e.part} ${e.what} ${measure(e.value, e.unit)}${e.asWas ? ' as it was' : ''}`;
    case 'work': return `${e.done === false ? 'begun: ' : ''}${e.action} ${e.part}${e.product ? `, ${e.product}` : ''}${e.done === false ? '' : ', done'}`;
    case 'job': return `to do: ${e.do}${e.part ? ` ${e.part}` : ''}`;
    case 'want': return `to get: ${many(e.qty)}${e.item}${e.spec ? `, ${e.spec}` : ''}${e.for ? ` for ${e.for}` : ''}`;
    case 'order': return `ordered: ${many(e.qty)}${e.item}${priced(e)}${e.expected ? `, due ${day(e.expected, at)}` : ''}`;
    case 'bought': return `bought: ${many(e.qty)}${e.item}${priced(e)}`;
    case 'quote': return `price: ${e.item}${priced(e)}`;
    case 'arrival': return `${e.item} is here`;
    case 'rule': return `${e.first} before ${e.then}`;
    case 'recheck': return `look again: ${[e.do, e.part].filter(Boolean).join(' ')}${e.due ? ` ${day(e.due, at)}` : e.after ? ` after ${lasting(e.after, e.unit)}${e.unit === 'hours' ? ' running' : ''}` : ''}`;
    case 'stow': return `${e.part}: ${e.where}`;
    case 'out': return `${e.part} out${e.where ? ` at ${e.where}` : ''}${e.do ? ` to ${e.do}` : ''}${e.until ? `, back ${day(e.until, at)}` : ''}`;
    case 'wait': return `leave ${e.part} alone${e.until ? ` until ${day(e.until, at)}` : e.after ? ` for ${lasting(e.after, e.unit)}` : ''}`;
    case 'hours': return `${figure(e.hours)} h${e.part ? ` on ${e.part}` : ''}${e.total ? ' in all' : ''}`;
    case 'hands': return e.none ? `no help ${day(e.when, at)}` : `help ${day(e.when, at)}${e.from && e.to ? ` ${e.from} to ${e.to}` : e.to ? ` until ${e.to}` : e.from ? ` from ${e.from}` : ''}${e.for ? `, ${e.for}` : ''}`;
    case 'weather': return `${e.sky}${e.from ? ` ${day(e.from, at)}` : ''}${e.to && e.to !== e.from ? ` to ${day(e.to, at)}` : ''}`;
    case 'amend': return e.undo ? 'struck' : `${e.field ?? 'that'} now ${typeof e.value === 'number' ? figure(e.value) : dayOrWords(String(e.value), at)}`;
    case 'remark': return `kept: "${e.text}"`;
  }
}

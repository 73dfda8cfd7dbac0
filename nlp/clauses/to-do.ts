import { verbForms } from '../words/verbs.ts';
import type { Item } from './items.ts';

/** "next job is dropping the sump", "on the list is greasing the zerks", "it's about time I shimmed it", "somebody's going to have to weld it": told straight, each is "I must". */
export function toDo(items: readonly Item[]): readonly Item[] {
  return overdue(items) ?? somebodys(items) ?? listed(items) ?? items;
}

const MUST = (at: Item): Item[] => [{ t: 'pron', low: 'i', from: at.from, to: at.from + 1 }, { t: 'modal', low: 'must', from: at.from, to: at.from + 1 }];
const lead = (items: readonly Item[]): number => items.findIndex(i => !/^(cc|adv|intj|mark)$/.test(i.t) || /^(next|first|last|then)$/.test(i.low));
const bid = (verb: Item, from: Item): Item => ({ ...verb, t: 'verb', low: verb.base ?? verb.low, base: verb.base ?? verb.low, form: 'base', from: from.from });

/** Items up to the copula that say that it is work to come. */
const AHEAD = /^(?:the |my |then |and )*(?:next|first|last|tomorrow|tonight|(?:next|first|last|main|big|only|other|remaining)? ?(?:job|thing|task|item|step|move|up|jobs)(?: up| left| (?:for|on|tomorrow|after|to do|on the list|still to do|in the morning|of all)\b.*)?|on (?:the|my) (?:list|agenda|cards|bench)(?: .*)?|(?:all|what)(?: that)?(?: 's| is)? left(?: to do| now)?|(?:still )?to do(?: .*)?)$/;

function listed(items: readonly Item[]): readonly Item[] | undefined {
  const s = lead(items), be = items.findIndex((i, n) => n > s && n < s + 8 && (i.t === 'be' && /^(is|'s|are)$/.test(i.low) || i.low === ':') && AHEAD.test(items.slice(s, n).map(x => x.low).join(' ')));
  if (s < 0 || be < 0) return undefined;
  let k = be + 1;
  while (items[k] && (items[k]!.t === 'to' || items[k]!.t === 'adv')) k++;
  const verb = items[k];
  if (verb?.t !== 'verb' || /^(get|have)$/.test(verb.base ?? '') && verb.form !== 'ing' ||verb.form !== 'ing' && !(verbForms(verb.low).some(f => f.form === 'base') && (items[be]!.low !== ':' || /\bto do\b/.test(items.slice(s, be).map(i => i.low).join(' ')))) || !items[k + 1]) return undefined;
  return [...MUST(items[s]!), bid(verb, items[be]!), ...items.slice(k + 1).map((i, n, all) => (i.t === 'verb' && i.form === 'ing' && /^(cc|mark)$/.test(all[n - 1]?.t ?? '') ? { ...i, form: 'base' as const, low: i.base ?? i.low } : i))];
}

function overdue(items: readonly Item[]): readonly Item[] | undefined {
  const time = items.findIndex((i, n) => i.low.split(' ').at(-1) === 'time' && /^(about|high|past|bout)$/.test(i.low.includes(' ') ? i.low.split(' ').at(-2)! : items[n - 1]?.low ?? '') && /^(i|we)$/.test(items[n + 1]?.low ?? ''));
  const verb = items[time + 2];
  if (time < 0 || verb?.t !== 'verb' || verb.form === 'ing' || /^(get|have|start|be|think|look)$/.test(verb.base ?? '') && !items[time + 3]?.np) return undefined;
  return [...MUST(items[time + 1]!), bid(verb, verb), ...items.slice(time + 3)];
}

function somebodys(items: readonly Item[]): readonly Item[] | undefined {
  const who = items.findIndex(i => /^(somebody|someone|some poor \w+)$/.test(i.low)), be = items[who + 1];
  const have = items.findIndex((i, n) => n > who && n < who + 6 && /^(have|need|got)$/.test(i.base ?? i.low) && items[n + 1]?.t === 'to');
  if (who < 0 || who > 1 || !be || have < 0 || items[have + 2]?.t !== 'verb') return undefined;
  return [...MUST(items[who]!), ...items.slice(have + 2)];
}

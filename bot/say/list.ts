import type { ListAnswer, ListItem, ListOf } from '../../domain/model/answer.ts';
import type { Saying, Spoken } from './spoken.ts';
import { capital, day } from './words.ts';

const HEAD: Record<ListOf, string> = { out: 'away for work', curing: 'to be left alone', rules: 'in an order of yours', hands: 'for two, or a hoist' };
const NONE: Record<ListOf, string> = { out: 'Nothing is away for work.', curing: 'Nothing has to be left alone now.', rules: 'You put nothing in order.', hands: 'Nothing that is open takes two.' };

/** A headline with the count, and a line for each. */
export function sayList({ of, items }: ListAnswer, saying: Saying): Spoken {
  if (!items.length) return { say: NONE[of] };
  const open = items.filter(i => !i.met);
  return { say: `${of === 'rules' ? open.length : items.length} ${HEAD[of]}:`, list: [...open, ...items.filter(i => i.met)].map(i => line(of, i, saying)) };
}

function line(of: ListOf, i: ListItem, { at }: Saying): string {
  const what = capital(i.what);
  if (of === 'out') return `${what}${i.where ? `: ${i.where}` : ''}${i.do ? `, to ${i.do}` : ''}${i.until ? `, back ${day(i.until, at)}` : ', no day said'}`;
  if (of === 'curing') return `${what}${i.do ? ` (${i.do})` : ''}: ${i.until ? `until ${day(i.until, at)}` : 'no time said'}${i.usual ? ', by its usual time' : ''}`;
  return i.met ? `${what} (done)` : what;
}

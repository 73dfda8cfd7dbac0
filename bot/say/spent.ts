import type { SpentAnswer, TimeSpentAnswer } from '../../domain/model/answer.ts';
import type { Saying, Spoken } from './spoken.ts';
import { day, figure, money, the } from './words.ts';

export function saySpent(a: SpentAnswer, { at }: Saying): Spoken {
  const on = a.part ? ` on ${the(a.part)}` : '';
  const order = a.onOrder ? ` ${money(a.onOrder)} more is on order.` : '';
  const unpriced = a.unpriced?.length ? ` No price was said for ${a.unpriced.length === 1 ? a.unpriced[0] : `${a.unpriced.length} things`}.` : '';
  if (!a.items.length) return { say: `Nothing spent${on} that I know of.${order}${unpriced}` };
  return {
    say: `${money(a.total)} spent${on} so far.${order}${unpriced}`,
    longer: a.items.map(i => `${i.item}: ${money(i.price)}${i.source ? `, ${i.source}` : ''}, ${day(i.at, at)}`).join('\n'),
  };
}

export function sayTimeSpent(a: TimeSpentAnswer, { at }: Saying): Spoken {
  const on = a.part ? ` on ${the(a.part)}` : '';
  const since = a.from ? (a.to ? ` from ${day(a.from, at)} to ${day(a.to, at)}` : ` since ${day(a.from, at)}`) : ' so far';
  return { say: a.hours ? `${figure(a.hours)} h${on}${since}.` : `No hours noted${on}${a.from ? since : ''}.` };
}

import type { BuyAnswer, BuyItem } from '../../domain/model/answer.ts';
import type { Saying, Spoken } from './spoken.ts';
import { day, figure, money, plural, the } from './words.ts';

function line(i: BuyItem, { at }: Saying): string {
  const head = `${i.qty && i.qty !== 1 ? `${figure(i.qty)} ` : ''}${i.item}${i.spec ? `, ${i.spec}` : ''}`;
  const use = i.for ? `, for ${the(i.for)}` : '';
  const when = i.expected ? ` ${i.status === 'late' ? 'was due' : 'due'} ${day(i.expected, at)}` : '';
  const from = i.source ? ` from ${i.source}` : '';
  if (i.status === 'needed') return `${head}${use}${i.price !== undefined ? ` (${money(i.price)} heard)` : ''}`;
  return `${head}: ${i.status === 'late' ? 'late,' : 'ordered'}${from}${when}${use}`;
}

const NONE = { needed: 'Nothing left to buy', ordered: 'Nothing on order', late: 'Nothing is late', all: 'Nothing to get' };
const SOME = { needed: 'to buy', ordered: 'on order', late: 'late', all: 'to get' };

export function sayBuy(a: BuyAnswer, saying: Saying): Spoken {
  const which = a.status ?? 'all';
  const of = a.part ? ` for ${the(a.part)}` : '';
  if (!a.items.length) return { say: `${NONE[which]}${of}.` };
  const noun = which === 'needed' || which === 'all' ? plural(a.items.length, 'thing') : String(a.items.length);
  return { say: `${noun} ${SOME[which]}${of}:`, list: a.items.map(i => line(i, saying)) };
}

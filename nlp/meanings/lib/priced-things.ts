import type { Item } from '../../clauses/items.ts';
import type { Telling } from '../telling.ts';
import { goodsIn } from './goods.ts';

/** Prices each with its own thing: "sixty for the lamps and a fiver for the lenses", "cork sheet 14 and gasket paper 9". */
export function pricedThings(t: Telling, items: readonly Item[]): { item: string; price: number; qty?: number; from: number }[] {
  const sum = (i: Item | undefined): number | undefined => (i?.f?.dim === 'money' && i.f.value.role === undefined || i?.f?.dim === 'number' && i.f.value.form !== 'fraction' ? i.f.value.value : undefined);
  const out: { item: string; price: number; qty?: number; from: number }[] = [];
  items.forEach((i, k) => {
    const price = sum(i);
    if (price === undefined) return;
    const forIt = /^(for|on)$/.test(items[k + 1]?.low ?? '') && items[k + 2]?.np && !items[k + 2]!.np!.stands ? items[k + 2] : undefined;
    const ahead = items[k - 1]?.np && !items[k - 1]!.np!.stands && !items.some(x => /^(for)$/.test(x.low)) ? items[k - 1] : undefined;
    const it = forIt ?? ahead;
    const name = it && goodsIn(t, items.slice(0, items.indexOf(it) + 1), items.indexOf(it))[0];
    if (name) out.push({ item: name.item, price, from: name.from, ...(name.qty !== undefined ? { qty: name.qty } : {}) });
  });
  return out;
}

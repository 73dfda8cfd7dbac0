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
    const beside = items[items[k - 1]?.low === ',' && /^([.,;:]|and|from|)$/.test(items[k + 1]?.low ?? '') ? k - 2 : k - 1]; // "rings, 38, and gasket paper, 6.50"
    const ahead = beside?.np && !beside.np.stands && !items.some(x => /^(for)$/.test(x.low)) ? beside : undefined;
    const it = forIt ?? ahead;
    const name = it && goodsIn(t, items.slice(0, items.indexOf(it) + 1), items.indexOf(it))[0];
    if (name) out.push({ item: name.item, price, from: name.from, ...(name.qty !== undefined ? { qty: name.qty } : {}) });
  });
  return out;
}

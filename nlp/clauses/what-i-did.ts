import { inflect, verbForms } from '../words/verbs.ts';
import type { Item } from './items.ts';

/** "what I did today was clean the jets", "all I got done was pull the head": told round, the deed is done, and so are those joined to it. */
export function whatIDid(items: readonly Item[]): readonly Item[] {
  const k = items.findIndex((x, n) => /^(what|all|thing)$/.test(x.low.split(' ').at(-1)!) && /^(i|we)$/.test(items[n + 1]?.low ?? ''));
  if (k < 0 || items.slice(0, k).some(i => i.np || i.t === 'verb' || i.t === 'be')) return items;
  const be = items.findIndex((x, n) => n > k + 2 && n < k + 9 && /^(was|is|'s)$/.test(x.low) && x.t === 'be');
  const middle = items.slice(k + 2, be);
  if (be < 0 || !middle.some(i => DOING.test(i.low)) || middle.some(i => i.t === 'mark' || i.t === 'cc' || i.t === 'neg' || i.np && !i.f)) return items;
  let to = be + 1;
  while (items[to] && (items[to]!.t === 'to' || items[to]!.t === 'adv')) to++;
  const said = items[to], base = said && said.t !== 'verb' && /^\S+$/.test(said.low) && (items[to + 1]?.np || items[to + 1]?.t === 'prt') ? verbForms(said.low).find(f => f.form === 'base')?.base : undefined; // "all I did was grease the pins"
  const verb: Item | undefined = base ? { t: 'verb', from: said!.from, to: said!.to, low: said!.low, base, form: 'base' } : said, rest = verb ? [verb, ...items.slice(to + 1)] : [];
  if (verb?.t === 'pron' || verb?.np) return verb.t === 'pron' ? rest : items;
  if (verb?.t !== 'verb' || verb.form === 'ing' || verb.form === 's') return items;
  const deed = (it: Item, n: number): Item => (n === 0 || it.t === 'verb' && it.form === 'base' && /^(cc|mark)$/.test(rest[n - 1]!.t) ? { ...it, form: 'past', low: pastOf(it) } : it);
  return [...items.slice(0, k), { ...items[k + 1]!, from: items[k]!.from }, ...rest.map(deed)];
}

const DOING = /^(did|done|do|managed|got|get|achieved|accomplished)$/;
const pastOf = (it: Item): string => (inflect(it.base ?? it.low) as { word?: string; form: string }[]).find(f => f.form === 'past')?.word ?? it.low;

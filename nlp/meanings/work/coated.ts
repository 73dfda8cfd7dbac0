import type { Entry } from '../../../domain/model/entry.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { COATS } from '../../words/coats.ts';
import { isConsumable } from '../lib/fields.ts';
import { lowText, type Telling } from '../telling.ts';

/** "put a coat of primer on the hood", "slapped some paint on it". */
export function coated(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (/^(get|have)$/.test(c.verb?.base ?? 'have') && c.subj.some(s => !s.carried && partLike(t.sheet, s.name))) {
    const k = c.items.findIndex((i, n) => /\b(coats?|dose|lick|layer)$/.test(i.np?.said ?? i.low) && c.items[n + 1]?.low === 'of' && (c.items[n + 2]?.np || c.items[n + 2]?.t === 'adj'));
    const what = k >= 0 ? c.items[k + 2]!.np?.said ?? c.items[k + 2]!.low : undefined; // a colour may stand alone: "its second coat of green"
    if (what) return c.subj.map(s => ({ kind: 'work', part: s.name, action: COATS[what.split(' ').at(-1)!] ?? 'paint', product: what }) as Entry);
  }
  if (!/^(put|get|slap|throw|lay|brush|spray|rub|have|wipe|apply|roll|hit|shoot|dust|coat)$/.test(c.verb?.base ?? '')) return undefined;
  if (/^(hit|shoot|dust|coat|spray)$/.test(c.verb!.base!) && c.obj.length && /\bwith\b/.test(lowText(t))) {
    const w = c.items.findIndex((i, n) => i.low === 'with' && c.items[n + 1]?.np), k = /^(coats?|layers?|lick|dose)$/.test(c.items[w + 1]?.np?.said ?? '') && c.items[w + 2]?.low === 'of' ? w + 2 : w; // "with two coats of enamel"
    if (w >= 0 && c.items[k + 1]?.np && COATS[c.items[k + 1]!.np!.said.split(' ').at(-1)!]) return c.obj.map(o => ({ kind: 'work', part: o.name, action: COATS[c.items[k + 1]!.np!.said.split(' ').at(-1)!]!, product: c.items[k + 1]!.np!.said }) as Entry);
  }
  const stuff = c.items.find(i => i.np && i.from > c.verb!.from && COATS[i.np.said.split(' ').at(-1)!] && isConsumable(i.np.said));
  if (!stuff || !/\b(coats?|layers?|some|bit|lick|smear|dab|blob|film|wipe|squirt|coating|splash|dose|plenty|spot|touch)\b/.test(lowText(t))) return undefined;
  const k = c.items.indexOf(stuff);
  const on = c.items.findIndex((i, n) => n > k && (i.low === 'on' || i.low === 'onto' || i.low === 'over'));
  const np = on >= 0 ? c.items[on + 1] : undefined;
  const part = np?.np && !np.np.stands ? np.np.name : np ? t.memory.topic()?.name : undefined;
  return part ? [{ kind: 'work', part, action: COATS[stuff.np!.said.split(' ').at(-1)!]!, product: stuff.np!.said } as Entry] : undefined;
}

import type { Clause } from '../../clauses/clause.ts';
import { isConsumable, isTool, nounsFrom, withPhrase } from '../lib/fields.ts';
import type { Telling } from '../telling.ts';

/** What was used: after "with" or "in" for baths, or a consumable named after a comma or "two coats of". */
export function productOf(t: Telling, c: Clause): string | undefined {
  const after = c.items.slice(c.vi + 1);
  const w = withPhrase(t.sheet, after);
  if (w) return w.replace(/^(?:\w+ )?(?:coats?|layers?|licks?) of (?:the )?/i, '');
  if (c.verb!.base === 'wheel') return 'wire wheel';
  const from = /^(turn|make|knock|bend|fold|forge|carve|whittle|fabricate|machine|run|build)$/.test(c.verb!.base!) ? after.findIndex((i, k) => (i.low === 'from' || i.low === 'of' && after[k - 1]?.low === 'out') && after[k + 1]?.np) : -1;
  if (from >= 0) return nounsFrom(t.sheet, after, from + 1); // "made from angle iron"
  const bath = after.findIndex((i, k) => (i.low === 'in' || i.low === 'into') && after[k + 1]?.np && isConsumable(after[k + 1]!.np!.said));
  if (bath >= 0) return nounsFrom(t.sheet, after, bath + 1);
  const of = after.findIndex((i, k) => i.low === 'of' && after[k + 1]?.np && /coats?|layers?/.test(after[k - 1]?.low ?? ''));
  if (of >= 0) return nounsFrom(t.sheet, after, of + 1);
  const comma = after.findIndex((i, k) => i.np && k > 0 && after.slice(0, k).findLast(x => x.t !== 'adv')?.low === ',' && (isConsumable(i.np.said) || isTool(i.np.said) && c.verb!.base === 'clean'));
  if (comma >= 0) return nounsFrom(t.sheet, after, comma);
  const used = t.clauses[t.at + 1];
  if (used?.verb?.base === 'use' && used.verb.form !== 'base' && used.obj.length && !used.neg && used.reality === 'deed') { (used as Clause & { spoken?: boolean }).spoken = true; return nounsFrom(t.sheet, used.items, used.vi + 1); }
  const colour = after.find(i => i.np && /\b(enamel|primer|paint|oxide|undercoat|topcoat|varnish|lacquer)$/.test(i.np.said) && after.indexOf(i) > 0 && !['prep', 'prt'].includes(after[after.indexOf(i) - 1]!.t));
  return colour && c.obj.length && colour.from >= c.obj.at(-1)!.to ? colour.np!.said : undefined;
}

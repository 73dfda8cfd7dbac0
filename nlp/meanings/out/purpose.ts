import type { Clause } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { nounClasses } from '../../words/nouns.ts';
import { isClass, verbForms } from '../../words/verbs.ts';
import { table } from '../../words/table.ts';

/** "to be rewound", "to have the ends turned", "for rebabbitting", "he's rebuilding it". */
export function purpose(c: Clause): string | undefined {
  for (const [k, i] of c.items.entries()) {
    if (i.t === 'to' && c.items[k + 1]?.low === 'be' && c.items[k + 2]?.base && c.items[k + 3]?.low === 'out') return `${c.items[k + 2]!.base} out`;
    if (i.t === 'to' && c.items[k + 1]?.low === 'be' && c.items[k + 2]?.np && c.items[k + 3]?.t === 'verb') return c.items[k + 3]!.base; // "to be pressure tested"
    if (i.t === 'to' && c.items[k + 1]?.low === 'be' && c.items[k + 2]) return c.items[k + 2]!.base ?? verbForms(c.items[k + 2]!.np?.said ?? '')[0]?.base;
    if (i.t === 'to' && /^(have|get)$/.test(c.items[k + 1]?.base ?? c.items[k + 1]?.low ?? '')) { const v = c.items.slice(k + 2).find(x => x.t === 'verb'); if (v && !/^(put|let|go|come|be)$/.test(v.base ?? '')) return v.base; }
    if (i.t === 'to' && k > 1 && c.items[k - 1]?.np && c.items[k - 2]?.t === 'to' && c.items[k + 1]?.t === 'verb' && isClass(c.items[k + 1]!.base!, 'work')) return c.items[k + 1]!.base; // "to the shop to skim"
    if ((i.low === 'for' || i.low === 'being' || i.low === 'getting') && ((c.items[k + 1]?.t === 'verb') || c.items[k + 1]?.np)) {
      const x = c.items[k + 1]!;
      if (x.t === 'verb' && (i.low !== 'for' || x.form === 'ing' || isClass(x.base!, 'work'))) return x.base;
      const w = x.np ? (i.low === 'for' ? undefined : verbForms(x.np.said).find(f => f.form === 'part' && isClass(f.base, 'work'))?.base) ?? stemAct(x) : undefined; // "getting ground"
      if (w) return w;
    }
  }
  const v = c.verb;
  return (v?.form === 'ing' || c.reality === 'plan' && v?.form === 'base') && /^(he|they|she|person)$/.test(c.who ?? '') && isClass(v.base!, 'work') ? v.base : undefined;
}
const ACTS: Record<string, string> = table({ rewind: 'rewind', regrind: 'regrind', rebore: 'rebore', rebuild: 'rebuild', balancing: 'balance', plating: 'plate', machining: 'machine', welding: 'weld', blasting: 'blast', coating: 'coat', lining: 'line', relining: 'reline', turning: 'turn', sharpening: 'sharpen', recore: 'recore', recoring: 'recore', boring: 'bore', grinding: 'grind', repair: 'repair', repairs: 'repair', testing: 'test', chroming: 'chrome', galvanising: 'galvanise', skim: 'skim', skimming: 'skim', 'new core': 'recore', rewinding: 'rewind', sleeving: 'sleeve', pressing: 'press', recutting: 'recut', upholstering: 'upholster', hardening: 'harden', overhaul: 'overhaul', cleaning: 'clean', balance: 'balance', remetalling: 'remetal' });
const stemAct = (x: Item): string | undefined => ACTS[x.np!.said] ?? ACTS[x.np!.said.split(' ')[0]!] ?? bareAct(x.np!.said.split(' ').at(-1)!);
/** "for a reline", "for rebushing": the deed named by its verb. */
const bareAct = (w: string): string | undefined => { const v = verbForms(w).find(f => f.form === 'base' || f.form === 'ing')?.base ?? (/^re[a-z]{3,}$/.test(w) ? verbForms(w.slice(2)).find(f => f.form === 'base') && w : undefined); return v && (isClass(v, 'work') || w.startsWith('re')) && !nounClasses(w).has('part') ? v : undefined; };


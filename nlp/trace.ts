import type { Entry } from '../domain/model/entry.ts';
import type { TraceLine } from '../domain/model/reading.ts';
import type { Placed } from './clauses/clauses.ts';
import type { Item } from './clauses/items.ts';
import type { Sheet } from './types.ts';

/** Adds to the trace how the note was cut: each clause with its chunks, what it is of, and how it stands to the truth. */
export function traceClauses(sheet: Sheet, clauses: readonly Placed[]): void {
  for (const c of clauses) {
    const about = [c.sub ? `after "${c.sub}"` : '', c.subj.length ? `of ${c.subj.map(s => s.name).join(', ')}${c.carriedSubj ? ' (carried)' : ''}` : '', c.who ? `by ${c.who}` : '', c.verb?.base ? `does ${c.verb.base}${c.passive ? ' (done to it)' : ''}` : c.pred,
      c.obj.length ? `to ${c.obj.map(s => s.name).join(', ')}` : '', c.neg ? 'not' : '', c.reality === 'deed' ? '' : c.reality].filter(Boolean).join('; ');
    sheet.trace.push({ stage: 'clause', rule: c.join ?? 'first', text: c.items.map(chunk).join(' '), gave: about });
  }
}

function chunk(i: Item): string {
  if (i.np) return `[${i.np.name}${i.np.count !== undefined ? ` ×${i.np.count}` : ''}${i.np.spec ? ` @${i.np.spec}` : ''}${i.np.stands ? ' *' : ''}]`;
  if (i.f) return `<${i.f.dim} ${i.low}>`;
  return i.t === 'verb' ? `${i.low}` : i.t === 'mark' ? i.low : `${i.low}·${i.t}`;
}

/** The trace as lines to read: stage, rule, words, and what came of them. */
export const traceText = (trace: readonly TraceLine[]): string =>
  trace.map(l => `${l.stage.padEnd(8)} ${l.rule.padEnd(26)} ${l.text}${l.gave === undefined ? '' : `\n${' '.repeat(36)}= ${l.gave}`}`).join('\n');

/** An entry as the trace shows it. */
export const show = (e: Entry): string => { const { kind, ...rest } = e; return `${kind}(${Object.entries(rest).map(([k, v]) => `${k}: ${String(v)}`).join(', ')})`; };

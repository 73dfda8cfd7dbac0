import type { Clause } from '../../clauses/clause.ts';
import { lowText, type Telling } from '../telling.ts';

/** A short phrase for one side: base verb and part; what only goes on or is waited for is the part alone; what comes off is "X off". */
export function phrase(t: Telling, c: Clause, side: 'first' | 'then'): string | undefined {
  const base = c.verb?.base;
  const moves = /^(go|come|be|arrive|get|sit|turn|do)$/.test(base ?? 'be') && c.subj.length > 0 && !/^(i|we)$/.test(c.who ?? '');
  const part = ((moves || c.passive && c.subj.length > 0 ? undefined : c.obj[0]) ?? c.subj.find(s => !s.machine) ?? c.subj[0] ?? c.obj[0])?.name;
  const at = reached(c);
  if (at) return at;
  if (!part && base === 'hold' && c.items.some(i => i.low === 'off')) return c.items.findLast(i => i.np)?.np?.name;
  if (!part && /^(i|we)$/.test(c.who ?? '')) return undefined;
  const text = lowText(t, c);
  if (!part) return base && c.verb!.form !== 's' ? base : undefined;
  if (/^(she|it|he)$/.test(c.who ?? '') && /^(run|start|fire|move|drive|work)$/.test(base ?? '') && !c.obj.length && c.subj.every(s => s.carried)) return base; // "before she runs"
  const prt = c.prt.concat(c.rest.filter(i => i.t === 'prt').map(i => i.low));
  if (/^(leave|keep|stay|remain|hold|wait)$/.test(base ?? '') && (prt.includes('off') || prt.includes('out') || prt.includes('apart') || base === 'wait')) return part; // "leave the mudguards off until…"
  if (base === 'get' && c.obj.length && /^(out|off)$/.test(prt[0] ?? '') && c.who === 'i' && side === 'then') return `get the ${part} ${prt[0]}`;
  if (prt.includes('off') && (!base || /^(be|come|take|get|go|have|pull|need|want)$/.test(base) || c.pred === 'be')) return `${part} off`;
  if (prt.includes('out') && (!base || /^(be|come|take|get|go|have|pull|need|want)$/.test(base) || c.pred === 'be')) return `${part} out`;
  const made = c.pred === 'be' && !c.passive ? c.rest.find(i => /^(level|true)$/.test(i.low))?.low : undefined;
  if (made) return `${made} the ${part}`; // "until the timbers are level"
  if (!base || c.pred === 'be' && !c.passive) return c.rest.some(i => i.t === 'adj') && !/\b(on|in|back|here)\b/.test(text) ? `${part} ${c.rest.find(i => i.t === 'adj')!.low}` : part;
  if (/^(go|come|be|arrive|get|have|turn|show|want|need|sit|forget|remember)$/.test(base) || base === 'do' && !c.obj.length && !c.passive) return part; // "before the lock does"
  if (/^(set|drop|slide|slip)$/.test(base) && prt.includes('in') || base === 'set' && prt.includes('on')) return part; // "setting the drum in"
  if (/^(fit|install|mount|put|refit|replace|reinstall)$/.test(base)) return side === 'then' || c.passive ? part : part;
  return `${c.passive || c.verb!.form !== 'base' ? base : base} the ${part}`;
}

/** "get at the clutch", "get to the mains": the thing stands after the verb's own preposition. */
function reached(c: Clause): string | undefined {
  const base = c.verb?.base, prep = c.rest[0] ?? c.items[c.vi + 1], np = c.items[c.items.indexOf(prep!) + 1]?.np;
  return base && /^(get|go|look|see)$/.test(base) && /^(at|to|into|inside)$/.test(prep?.low ?? '') && np && !np.stands && /^(i|we)$/.test(c.who ?? 'i') ? `${base} ${prep!.low} the ${np.name}` : undefined;
}

import { isClass } from '../words/verbs.ts';
import type { Clause } from './clause.ts';

/** "had the crank ground", "the gearbox has the seal driven in", "need the head skimmed": what is said is done to the thing had. */
export function causes(c: Clause, i: number): void {
  const by = c.pred === 'have' ? c.verb?.base ?? 'have' : c.verb?.base ?? '', done = c.items[i], after = c.items[i + 1], thing = c.obj[0];
  if (!/^(have|get|need|want)$/.test(by) || !thing || done?.t !== 'verb' || !(/^(past|part)$/.test(done.form ?? '') || HOLDS.test(done.low)) || after?.np || after?.t === 'pron' || !HOLDS.test(done.low) && !DONE_TO.some(k => isClass(done.base!, k)) || c.asks) return;
  const definite = thing.carried || thing.np?.known || /^(the|my|our|his|her|its|both|all|that|this|those|these|one|it|them)$/.test(c.items.find(x => x.np && x.from === thing.from)?.low.split(' ')[0] ?? '');
  if (!definite) return;
  const owner = c.subj[0];
  const owned = owner && !c.who && !owner.carried && !owner.machine && !thing.np?.known && !thing.carried;
  if (owned) c.obj = c.obj.map(o => ({ ...o, name: o.name.startsWith(owner.name) ? o.name : `${owner.name} ${o.name}` }));
  if (!c.who && owner && !owner.carried) { c.about = c.subj; c.subj = c.obj; c.obj = []; c.passive = true; }
  if (/^(need|want)$/.test(by)) c.reality = 'must';
  const head = c.items.slice(0, c.vi + 1).map(x => x.low).join(' ');
  const due = c.reality === 'must' || /\bto have\b|\bto get\b|'ll|\b(will|must|should|better|shall|gonna|going to|want|need)\b/.test(head);
  c.pred = 'verb'; c.verb = { ...done, form: due ? 'base' : 'past' }; c.vi = i; c.prt = [];
  let k = i + 1;
  while (c.items[k] && (c.items[k]!.t === 'adv' || c.items[k]!.t === 'prt' && PARTICLE.test(c.items[k]!.low) && !c.items[k + 1]?.np)) { if (c.items[k]!.t === 'prt') c.prt.push(c.items[k]!.low); k++; }
  c.rest = c.items.slice(k);
}

/** "got the exhaust hanging from a wire", "have it held with a nail". */
const HOLDS = /^(hanging|dangling|sitting|resting|perched|balanced|held|hung|suspended|supported|propped)$/;

export const DONE_TO = ['work', 'on', 'off', 'tight', 'hang', 'stow', 'order', 'send'] as const;

export const PARTICLE = /^(off|on|out|in|up|down|back|apart|away|over|together|loose|through|home|along)$/;

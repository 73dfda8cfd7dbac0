import type { Sheet } from '../types.ts';
import { CONDITION } from '../words/conditions.ts';
import { isClass, verbForms } from '../words/verbs.ts';
import type { Clause } from './clause.ts';
import type { Item } from './items.ts';
import type { Memory } from './memory.ts';
import { reality, supposed } from './reality.ts';
import type { Cut } from './split.ts';
import { subject } from './subject.ts';
import { afterVerb } from './after-verb.ts';

/** What only people do. */
const SPEAKS = /^(say|tell|reckon|promise|ask|think|phone|ring|email|text|forecast|quote|swear|claim|guess|figure|predict)$/;

/** Takes a clause apart. `before` is the clause before it in the same sentence, whose subject it may share. */
export function frame(sheet: Sheet, cut: Cut, memory: Memory, before: Clause | undefined): Clause {
  const items = cut.items.filter(i => i.t !== 'intj');
  const c: Clause = {
    from: Math.min(...cut.items.map(i => i.from)), to: Math.max(...cut.items.map(i => i.to)), items, subj: [], pred: 'none', vi: -1, passive: false, ing: false, neg: false, reality: 'deed', prt: [], obj: [], rest: [],
    ...(cut.join ? { join: cut.join } : {}), ...(cut.sub ? { sub: cut.sub } : {}), ...(cut.asks ? { asks: true } : {}),
  };
  const start = subject(sheet, c, memory);
  predicate(c, start);
  if (/^(they|she|he)$/.test(c.who ?? '') && c.subj.every(x => x.carried) && c.verb && !c.passive && SPEAKS.test(c.verb.base ?? '')) c.subj = []; // parts don't speak
  if (!c.subj.length && !c.who && !c.counted && before) carry(c, before);
  afterVerb(sheet, c, memory);
  if (before && before.passive && /^(must|plan)$/.test(before.reality) && c.join === 'and' && c.reality === 'deed' && c.verb && /^(past|part)$/.test(c.verb.form ?? '') && !c.who && c.subj.some(s => !s.carried) && !c.items.some(i => i.t === 'be' || i.t === 'have') && !c.obj.length) { c.reality = 'plan'; c.passive = true; } // "the oil's to be changed, and the breather cleaned"
  if (c.reality === 'deed') c.reality = supposed(sheet, c) ? 'cond' : reality(c);
  const when = c.items.find(i => i.f?.dim === 'when')?.f;
  if (c.reality === 'deed' && !c.who && c.verb && when?.dim === 'when' && (when.value.from ?? '') > sheet.ctx.at.slice(0, 10) && verbForms(c.verb.low).some(f => f.form === 'base') && c.verb.form === 'past' && !c.subj.some(s => s.from >= c.from)) { c.reality = 'plan'; c.verb = { ...c.verb, form: 'base' }; }
  if (c.reality === 'deed' && /^(i|we)$/.test(c.who ?? '') && c.verb?.form === 'base' && !c.sub && when?.dim === 'when' && ((when.value.from ?? '') > sheet.ctx.at.slice(0, 10) || (when.value.from ?? '') === sheet.ctx.at.slice(0, 10) && verbForms(c.verb.low).every(f => f.form === 'base'))) c.reality = 'plan'; // "tomorrow I grind the valve"
  if (c.reality === 'deed' && !c.neg && c.passive && when?.dim === 'when' && (when.value.from ?? '') > sheet.ctx.at.slice(0, 10) && (c.items.slice(0, c.vi).some(i => /^gets?$/.test(i.low)) || NOT_YET.some(k => isClass(c.verb!.base!, k)) && c.items.slice(0, c.vi).some(i => /^(is|are|'s|'re)$/.test(i.low)) && !['order', 'send', 'arrive', 'buy', 'say'].some(k => isClass(c.verb!.base!, k as 'order')))) c.reality = 'plan'; // "tomorrow the sieve gets cleaned"
  if (c.reality === 'deed' && !c.neg && c.passive && c.items.slice(0, c.vi).some((i, k) => /^(getting|being)$/.test(i.low) && c.items.slice(0, k).some(b => /^(is|are|'s|'re)$/.test(b.low)))) c.reality = 'plan'; // "it's getting replaced"
  if (c.reality === 'deed' && c.verb?.form === 'base' && /\b(managed to|had to|got to|went and|decided to|ended up|have to say)\b/.test(c.items.slice(0, c.vi + 1).map(i => i.low).join(' ')) && /\b(managed|had|went|decided) /.test(c.items.slice(0, c.vi + 1).map(i => i.low).join(' '))) c.verb = { ...c.verb, form: 'past' };
  return c;
}

/** Finds auxiliaries and the main verb. */
function predicate(c: Clause, start: number): void {
  let i = start;
  const step = (): Item | undefined => c.items[i];
  let be = false, have = -1;
  for (; step(); i++) {
    const it = step()!;
    if (it.t === 'neg' || it.t === 'adv' || it.t === 'mark' && it.low === ',' && !be) { if (it.t === 'neg') c.neg = true; continue; }
    if (it.t === 'be' && it.low === "'s" && c.who === 'person' && c.items[i + 1]?.low === 'got') { have = i; c.pred = 'have'; c.vi = i; continue; } // "the welder's got both brackets"
    if (it.t === 'be') { if (c.verb && c.items[i - 1]?.t === 'to') delete c.verb; be = true; c.neg ||= /n't$|ain't/.test(it.low); c.pred = 'be'; c.vi = i; continue; }
    if (it.t === 'have') { have = i; c.pred = 'have'; c.vi = i; c.neg ||= /n't$/.test(it.low); continue; }
    if (it.t === 'modal' || it.t === 'do') { c.neg ||= /n't$/.test(it.low); c.vi = i; if (it.t === 'do' && !c.items.slice(i + 1).some(x => x.t === 'verb')) { c.pred = 'verb'; c.verb = { ...it, t: 'verb', base: 'do', form: /^(did|done)$/.test(it.low) ? 'past' : 'base' }; } continue; }
    if (be && it.low === 'half' && c.items[i + 1]?.t === 'verb' && /^(past|part)$/.test(c.items[i + 1]!.form ?? '')) continue; // "are half bled"
    if (be && it.np?.stands && /^(all|both|each)$/.test(it.np.said) && c.items[i + 1]?.t === 'verb') continue; // "are all cleaned"
    if (it.t === 'to') continue;
    if (it.low === 'you' && c.neg && c.items[i - 1]?.t === 'do') continue; // "don't you let me"
    if (it.t === 'verb') {
      const next = c.items[i + 1];
      if (have === i - 1 && hasSpoilt(c, it, next)) { c.items[i] = { ...it, t: 'adj' }; break; } // "has chipped teeth"
      if (it.base === 'spend' || it.base === 'put' && next?.t === 'prt') {
        const ing = c.items.findIndex((x, n) => n > i && x.t === 'verb' && x.form === 'ing');
        if (ing > 0 && c.items.slice(i + 1, ing).some(x => x.f?.dim === 'span')) { c.pred = 'verb'; c.verb = c.items[ing]!; c.vi = ing; c.ing = true; return; }
      }
      if (/^(start|begin|get)$/.test(it.base ?? '') && /^(past|part)$/.test(it.form ?? '')) { const on = it.base === 'get' && next?.base === 'go' ? i + 2 : i + 1, deed = c.items[on + 1]; if (/^(on|at|in on|with)$/.test(c.items[on]?.low ?? '') && deed?.t === 'verb' && deed.form === 'ing') { c.pred = 'verb'; c.verb = deed; c.vi = on + 1; c.ing = true; return; } } // "started on scraping the ways"
      if (it.base === 'make' && next?.np?.said === 'start' && /^(on|at|with)$/.test(c.items[i + 2]?.low ?? '') && c.items[i + 3]?.t === 'verb' && c.items[i + 3]!.form === 'ing') { c.pred = 'verb'; c.verb = c.items[i + 3]!; c.vi = i + 3; c.ing = true; return; }
      if (it.base === 'find' && /^(past|part)$/.test(it.form ?? '') && next?.t === 'to' && c.items[i + 2]?.t === 'be' && !c.items.slice(0, i).some(x => x.np && x.from > (c.subj.at(-1)?.to ?? 0))) continue; // "found to be cracked"
      if (it.base === 'get' && next?.t === 'verb' && /^(past|part)$/.test(next.form ?? '') && c.subj.length && !/^(i|we)$/.test(c.who ?? '')) { be = true; continue; }
      if (it.base === 'let' && next?.t === 'pron' && /^(me|us)$/.test(next.low) && c.items[i + 2]?.t === 'verb') { i++; continue; }
      if (chains(it, next)) { c.pred = 'verb'; c.verb = it; c.vi = i; continue; }
      c.verb = it; c.vi = i; c.pred = 'verb';
      c.ing = it.form === 'ing';
      c.passive = (be || have >= 0 && c.items.slice(have).some(x => x.low === 'been')) && it.form !== 'ing' && it.form !== 'base' && it.form !== 's' && !hasDone(c, i);
      if (it.base === 'get' && (be || have >= 0) && next && (next.t === 'np' || next.t === 'det' || next.f || /^(adv|adj|verb)$/.test(next.t) && !/^(past|part)$/.test(next.form ?? '') && c.items[i + 2]?.np)) c.pred = 'have';
      return;
    }
    break;
  }
  c.rest = c.items.slice(i);
}

/** "somebody's welded the hinge", "he's fixed it": "has", for a person is not welded and fixes something. */
const hasDone = (c: Clause, i: number): boolean => /^(somebody|someone|he|she|person|nobody|who|whoever)$/.test(c.who ?? '') && c.items.slice(0, i).findLast(x => x.t !== 'adv')?.low === "'s" && (c.items[i + 1]?.np !== undefined && !c.items[i + 1]!.np!.stands || /^(it|them)$/.test(c.items[i + 1]?.low ?? ''));

/** "the gear has chipped teeth": a part with a state ahead of its piece, where only a person "has chipped the teeth". */
const hasSpoilt = (c: Clause, it: Item, next: Item | undefined): boolean => !c.who && c.subj.length > 0 && CONDITION.has(it.low) && next?.np !== undefined && !next.np.stands && next.np.nameFrom === next.from;

/** Verbs that only lead on to the main one: "need to paint", "going to weld", "started sanding", "got to". */
const chains = (it: Item, next: Item | undefined): boolean =>
  next?.t === 'to' && /^(need|want|go|get|have|try|manage|like|suppose|hope|plan|mean|start|begin|intend|decide|remember|forget|expect|love|use|ought|propose)$/.test(it.base ?? '')
  || next?.base === 'fit' && /^(test|trial|dry)$/.test(it.low)
  || next?.t === 'verb' && next.form === 'ing' && /^(start|begin|finish|stop|quit|keep|try|commence|need|want|get|go)$/.test(it.base ?? '');

/** A clause without a subject of its own shares the one before: "boiled out and sealed", "it came off and went on the bench". */
function carry(c: Clause, before: Clause): void {
  if (before.subj.length && !(before.who && /^(i|we)$/.test(before.who))) { c.subj = before.subj.map(t => ({ ...t, carried: true })); c.carriedSubj = true; }
  if (c.verb?.form === 's' && !c.subj.length && before.obj.length && /^(i|we)?$/.test(before.who ?? '')) { c.subj = before.obj.map(t => ({ ...t, carried: true })); c.carriedSubj = true; return; } // "tested the lamp, burns blue"
  const bidding = c.verb?.form === 'base' && c.items.find(i => i.t !== 'cc' && i.t !== 'adv' && i.t !== 'mark') === c.verb && !/^(put|set|cut|shut|fit|read|let|hit|split)$/.test(c.verb.low) && before.reality === 'deed' && !/^(say|tell|ask|beg|warn|remind)$/.test(before.verb?.base ?? '');
  if (before.who && /^(he|they|person|i|we|she)$/.test(before.who) && !(bidding && /^(he|they|person|she)$/.test(before.who))) c.who = before.who; // "my father never trusted cork, so look at those again"
  if (/^(must|plan|maybe)$/.test(before.reality) && c.passive && c.items.find(x => x.t !== 'cc' && x.t !== 'adv')?.low === 'be') { c.reality = before.reality; return; } // "has to come out and be knurled"
  if (before.passive && /^(must|plan)$/.test(before.reality) && c.verb && /^(past|part)$/.test(c.verb.form ?? '') && (c.join === 'and' || c.join === 'then')) { c.reality = before.reality; c.passive = true; return; }
  if (/^(must|plan|maybe|wish)$/.test(before.reality) && c.verb && (c.join === 'and' || c.join === ',' || c.join === 'then') && verbForms(c.verb.low).some(f => f.form === 'base')) { c.reality = before.reality; c.verb = { ...c.verb, form: 'base' }; }
  if (/^(must|plan)$/.test(before.reality) && !c.verb && c.items.find(x => x.t !== 'cc' && x.t !== 'adv')?.low === 'have') c.reality = before.reality; // "…and have a look at the chain"
  if ((before.passive || before.pred === 'none' || before.pred === 'be') && c.verb && /^(past|part)$/.test(c.verb.form ?? '') && before.subj.length) c.passive = !c.items.slice(c.vi + 1).some(x => x.t === 'np' && !c.items.slice(c.vi + 1, c.items.indexOf(x)).some(p => p.t === 'prep' || p.t === 'prt'));
}

/** Work that is said of a coming day as if it were done. */
const NOT_YET = ['work', 'on', 'off', 'tight'] as const;

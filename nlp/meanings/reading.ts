import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause } from '../clauses/clause.ts';
import type { Found } from '../types.ts';
import { trim } from './lib/fields.ts';
import { TAKES_BACK } from './lib/gauge-state.ts';
import { gauged, secondHand } from './lib/gauged.ts';
import { quantityOf } from './lib/quantity.ts';
import { asWas, wasBefore } from './reading/as-was.ts';
import { counts } from './reading/counts.ts';
import { meter } from './reading/meter.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

/** Something counted or measured on a part. */
export const reading: Meaning = t => {
  const c = t.clause;
  const slip = takenBack(t) ?? howRead(t) ?? formerly(t);
  if (slip) return slip;
  if (c.asks || !/^(deed)$/.test(c.reality) || c.sub && /^(if|unless|until|till|so|that)$/.test(c.sub)) return undefined;
  const run = meter(t);
  if (run) return [run];
  if (/\b(book|manual|should be|supposed|says)\b/.test(lowText(t).replace(/\b(where|when|against|and|but) (the )?(book|manual)\b.*$/, '').replace(/\b(dial|gauge|indicator|mike|mic|micrometer|meter|clock|caliper|calipers|verniers?|tester|ammeter|voltmeter) says\b/, '')) && !/\b(i|we) (got|get|measure|read)/.test(lowText(t))) return undefined;
  const counted = counts(t, c);
  const got = counted.some(e => e.kind === 'reading' && e.what === 'bars') ? counted : [...counted, ...measures(t, c)]; // "counted 28 bars" is no pressure
  if (got.length === 1 && got[0]!.kind === 'reading' && wasBefore(t, got[0]!, t.told.at(-1)?.entry)) return [{ ...got[0]!, asWas: true } as Entry];
  if (got.length === 1 && (restates(t, got[0]!) || concludes(t, got[0]!))) return [];
  return got.length ? got : undefined;
};

/** "fourteen newton metres, no, what am I saying, one point four": the figure after holds. */
function takenBack(t: Telling): Entry[] | undefined {
  const last = t.told.at(-1)?.entry, text = lowText(t);
  if (last?.kind !== 'reading' || !/\bwhat am i (saying|on about|talking about|thinking)\b|^(no |sorry |hang on |wait |no hang on |no wait )+/.test(text)) return undefined;
  const m = dims(t.clause.items, 'measure')[0], n = dims(t.clause.items, 'number')[0];
  const value = m && m.value.unit === last.unit ? m.value.value : !m && n && t.clause.items.filter(i => i.np || i.t === 'verb' && !/^(hang|wait|say|be)$/.test(i.base ?? '')).length === 0 ? n.value.value : undefined;
  if (value === undefined) return undefined;
  last.value = value;
  return [];
}

/** "38 pounds, hot": how the figure before was read is no state of its own. */
function howRead(t: Telling): Entry[] | undefined {
  const last = t.told.at(-1), word = t.clause.items.filter(i => i.t !== 'mark');
  if (last?.entry.kind !== 'reading' || last.clause !== t.clauses[t.at - 1] || word.length !== 1 || !/^(hot|cold|warm|cranking|idling|static)$/.test(word[0]!.low)) return undefined;
  if (!last.entry.what.includes(word[0]!.low)) last.entry.what += ` ${word[0]!.low}`;
  return [];
}

/** "sixty psi now, and it was forty before I had it apart": a bare figure of the same, as it had been. */
function formerly(t: Telling): Entry[] | undefined {
  const { clause: c, clauses, at } = t, last = t.told.findLast(x => x.entry.kind === 'reading'), text = lowText(t);
  const n = dims(c.items, 'number')[0]?.value.value ?? dims(c.items, 'money').find(m => !m.value.certainCurrency)?.value.value;
  if (last?.entry.kind !== 'reading' || c.asks || c.neg || n === undefined || dims(c.items, 'measure').length || !/\b(it|that|they|which)? ?(was|were|had been|used to be|'d been)\b/.test(text) || c.subj.some(s => !s.carried) && !/^(it|they|that)$/.test(c.who ?? '')) return undefined;
  const before = /\b(before|previously|originally|at first|to (begin|start) with)\b/.test(text) || clauses[at + 1]?.sub === 'before' || clauses[at + 1]?.sub === 'when', now = /\bnow\b/.test(lowText(t, last.clause));
  if (!before && !now || last.clause.from >= c.from || last.entry.asWas) return undefined;
  const value = last.entry.unit === 'in' && last.entry.value < 0.2 && Number.isInteger(n) ? n / 1000 : n;
  return [{ ...last.entry, value, asWas: true }];
}

/** "…34.9 millimetres, so it is an inch and three eighths": what a figure comes to is no second reading. */
const concludes = (t: Telling, now: Entry): boolean => {
  const last = t.told.at(-1)?.entry;
  return t.clause.join === 'so' && now.kind === 'reading' && last?.kind === 'reading' && last.part === now.part && last.what === now.what;
};

/** "…set to one and a half thou. No, dial says one thou": the later figure holds. */
function restates(t: Telling, now: Entry): boolean {
  const last = t.told.at(-1)?.entry;
  const gap = t.told.at(-1) ? t.sheet.tokens.slice(t.told.at(-1)!.clause.to, t.clause.from).map(x => x.low).join(' ') : '';
  const lead = TAKES_BACK.test(gap) && gap.trim() ? ', no' : t.sheet.tokens.slice(Math.max(0, t.clause.from - 2), t.clause.from + 2).map(x => x.low).join(' ');
  if (now.kind !== 'reading' || last?.kind !== 'reading' || last.unit !== now.unit || !/(^|[.,;] )(no|wait|sorry|correction|actually|scratch that|make that)\b/.test(lead)) return false;
  last.value = now.value;
  return true;
}

/** Pounds that are neither money nor a load to be lifted: a weight read off the scales, or a pressure. */
const HEAVY = /\b(weigh(s|ed|ing)?|on the scales?|pressure|compression|gauge|relief|(cracks?|blows?|lifts?|pops?)( off| open)? at|(blew|blown|pumped|aired|inflated) .*up to)\b/;

/** Measures in a clause, each with what it measures and on what. */
function measures(t: Telling, c: Clause): Entry[] {
  if (dims(c.items, 'measure').some(m => m.value.unit === 'lb') && !HEAVY.test(lowText(t)) && t.sheet.found.some(f => f.dim === 'money' && f.value.certainCurrency)) return [];
  if (secondHand(c) && !/^(i|we)$/.test(c.who ?? '')) return [];
  if (/^(need|want|order|buy|fit|use|cut|paint|pay|cost|ask|send|mix|add|fill|drill|tap|ream|walk|drive)$/.test(c.verb?.base ?? '') && c.pred === 'verb' || c.verb?.base === 'leave' && !/\bleft\b.* at\b|\bleaves (it|them|us|me)\b/.test(lowText(t)) || c.verb?.base === 'find' && c.verb.form === 'base' || c.verb?.base === 'make' && !/\b(i|we) (make|made) (it|that|them)\b|\bmakes\b/.test(lowText(t)) && c.obj.length > 0) return [];
  if (dims(c.items, 'money').some(m => m.value.certainCurrency)) return [];
  const own = gauged(t, c);
  if (own) return own.map(({ was, ...r }) => trim({ kind: 'reading', ...r, asWas: was || asWas(t, c) || undefined }) as Entry);
  if (dims(c.items, 'money').length) return [];
  const out: Entry[] = [];
  const all = c.items.flatMap((it, k) => ((it.f?.dim === 'measure' || it.f?.dim === 'percent' || it.f?.dim === 'number' || it.f?.dim === 'thread') && !(it.np) ? [{ f: it.f as Found, k }] : []));
  for (const { f, k } of all) {
    if (f.dim === 'number' && c.verb?.base !== 'measure' || c.verb?.base === 'put') continue;
    if (c.items[k + 1]?.low === 'too' || f.dim === 'number' && /^(times?|ways?|goes|places|spots|days?|people)$/.test(t.sheet.tokens[f.to]?.low ?? '')) continue; // "a foot too long" is how it was found
    if (c.items[k - 1]?.low === 'with' && !/\b(load|lights|on)\b/.test(lowText(t)) || c.items[k - 1]?.low === 'by' || c.items[k + 1]?.low === 'by' && c.items[k + 2]?.f) continue;
    const value = f.dim === 'measure' || f.dim === 'percent' || f.dim === 'number' ? f.value.value : f.dim === 'thread' ? fraction(f.value.size) : undefined;
    if (value === undefined) continue;
    const q = quantityOf(t, c, f, k);
    if (!q) continue;
    out.push(trim({ kind: 'reading', part: q.part, what: q.what, value, unit: q.unit, asWas: asWas(t, c) || undefined }) as Entry);
  }
  return out;
}

const fraction = (size: string): number | undefined => { const m = /^(\d+)\/(\d+)$/.exec(size); return m ? Number(m[1]) / Number(m[2]) : undefined; };

import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause } from '../clauses/clause.ts';
import type { Placed } from '../clauses/clauses.ts';
import type { Item } from '../clauses/items.ts';
import { isMachine } from '../clauses/things.ts';
import type { Found } from '../types.ts';
import { CONDITION } from '../words/conditions.ts';
import { nounClasses, singular } from '../words/nouns.ts';
import { COUNTED } from '../words/quantities.ts';
import { SIDES } from '../words/sides.ts';
import { trim } from './lib/fields.ts';
import { gauged, secondHand, sided } from './lib/gauged.ts';
import { quantityOf } from './lib/quantity.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

const NEAR = /\b(came apart|how it (was|came|sat|went)|write that down|as (found|removed|it was|they were|it came|received|bought)|when (i|it) (pulled|took|came|stripped)|before (i|we) (took|pulled|had|stripped|touched))\b/;
const AS_WAS = /\bas (removed|received|bought)\b|\bbefore (i |we )?(teardown|strip|stripping|strip-down|dismantl\w+|stripped|i stripped)\b|\b(when (it|i|they|that|she) (came|pulled|took|had|was)|before (i|it|we|they) (took|pulled|came|had|stripped)|came apart|as it came|as found|how it (was|came|sat|went)|originally|was (set|shimmed)|used to|as-was|before (strip|teardown|dismantling|disassembly|taking|pulling)\w*|on strip ?down|when .{0,20} apart|had .* (under|behind|in|on) (it|them)|write that down|(there )?(was|were) \w+ .{0,30}(under|behind|between)|as it was|as they were|off the old)\b/;

/** Something counted or measured on a part. */
export const reading: Meaning = t => {
  const c = t.clause;
  if (c.asks || !/^(deed)$/.test(c.reality) || c.sub && /^(if|unless|until|till|so|that)$/.test(c.sub)) return undefined;
  if (/\b(book|manual|should be|supposed|says)\b/.test(lowText(t).replace(/\b(where|when|against|and|but) (the )?(book|manual)\b.*$/, '').replace(/\b(dial|gauge|indicator|mike|mic|micrometer|meter|clock|caliper|calipers|verniers?|tester|ammeter|voltmeter) says\b/, '')) && !/\b(i|we) (got|get|measure|read)/.test(lowText(t))) return undefined;
  const run = meter(t);
  if (run) return [run];
  const got = [...counts(t, c), ...measures(t, c)];
  if (got.length === 1 && (restates(t, got[0]!) || concludes(t, got[0]!))) return [];
  return got.length ? got : undefined;
};

/** "…34.9 millimetres, so it is an inch and three eighths": what a figure comes to is no second reading. */
const concludes = (t: Telling, now: Entry): boolean => {
  const last = t.told.at(-1)?.entry;
  return t.clause.join === 'so' && now.kind === 'reading' && last?.kind === 'reading' && last.part === now.part && last.what === now.what;
};

const METER = /\b(hour ?-?meter|hourmeter|tacho?|tachometer|odometer|odo|speedo|speedometer)\b|\bon the (clock|meter|tach|hour meter)\b|\b(clock|meter|counter)(?= (?:reads?|says|shows|is at|stands at))/;
/** "hour meter reads 1423", "612 hours on the clock", "odometer says 48,210": how long or far the machine has run. */
export function meter(t: Telling): Entry | undefined {
  const c = t.clause, text = lowText(t), dial = METER.exec(text)?.[0];
  const ran = dial === undefined && /\b(has|'s|have) (done|run|got|seen)\b/.test(text) && (c.subj.some(s => s.machine) || /\bon (her|it|the engine)\b/.test(text));
  if (!dial && !ran || /\b(stuck|broken|dead|doesn't|won't|faulty|jammed)\b/.test(text) || /\b(on|in) (the|it) (job|work)|volt|psi|spent|took\b/.test(text)) return undefined;
  const span = dims(c.items, 'span').find(f => /^(hours|miles)$/.test(f.value.unit)), plain = dims(c.items, 'number').find(f => f.value.value >= 20);
  const distance = span ? span.value.unit === 'miles' : /odo|speedo/.test(dial ?? '');
  const value = span?.value.amount ?? (dial && !/rpm|revs/.test(text) && /\b(reads?|says|shows|is|at|on|now|was|:|of)\b/.test(text) ? plain?.value.value : undefined);
  if (value === undefined || ran && value < 50) return undefined;
  const part = c.subj.find(s => s.machine)?.name ?? (t.sheet.ctx.machines?.length === 1 ? t.sheet.ctx.machines[0]!.toLowerCase() : /\bengine\b/.test(text) || !dial ? 'engine' : dial.replace(/^on the /, ''));
  return { kind: 'reading', part, what: distance ? 'distance' : 'running time', value, unit: distance ? 'mi' : 'h' } as Entry;
}

/** "…set to one and a half thou. No, dial says one thou": the later figure holds. */
function restates(t: Telling, now: Entry): boolean {
  const last = t.told.at(-1)?.entry;
  const lead = t.sheet.tokens.slice(Math.max(0, t.clause.from - 2), t.clause.from + 2).map(x => x.low).join(' ');
  if (now.kind !== 'reading' || last?.kind !== 'reading' || last.unit !== now.unit || !/(^|[.,;] )(no|wait|sorry|correction|actually|scratch that|make that)\b/.test(lead)) return false;
  last.value = now.value;
  return true;
}

/** Whether a clause says how things were before they came apart: by its own words, by those that go on from it, or by a heading or a "that's how it came apart" beside it. */
function asWas(t: Telling, c: Clause): boolean {
  const text = opened(t, c), place = (c as Placed).sentence;
  if (/\bnow\b/.test(text)) return false;
  if (AS_WAS.test(text)) return true;
  const after = t.clauses[t.at + 1], beyond = t.clauses[t.at + 2];
  if ([after, beyond].some(x => x?.sub !== undefined && !x.asks && (x as Placed).sentence === place && AS_WAS.test(opened(t, x)))) return true;
  return t.clauses.some((x, k) => x !== c && !x.asks && Math.abs(k - t.at) <= 3 && Math.abs((x as Placed).sentence - place) <= 1 && ((x as Placed).sentence === place || remarkOnly(t, x)) && NEAR.test(opened(t, x)));
}
/** The words of a clause with the one that opens it ("when", "before", "as"), which its own stretch leaves out. */
const opened = (t: Telling, c: Clause): string => `${c.sub ? `${c.sub} ` : ''}${lowText(t, c)}`;
/** "shims as found.", "that's how it came apart": a sentence that only says when the figures beside it were so. */
const remarkOnly = (t: Telling, c: Clause): boolean => !/\d|\b(one|two|three|four|five|six|seven|eight|nine|ten)\b/.test(lowText(t, c));

/** "three shims under it", "34 links", "I counted 68 links a side", "bottom cap had two". */
function counts(t: Telling, c: Clause): Entry[] {
  if (/^(need|want|order|buy|get|put|add|fit|use|take|replace|make|cut|bring|send|find|leave|pull|have to)$/.test(c.verb?.base ?? '') && !(c.pred === 'have') || dims(c.items, 'money').length) return [];
  const out: Entry[] = [];
  c.items.forEach((it, k) => {
    const np = it.np;
    if (c.counted && k < 4) return;
    const counted = np && np.count !== undefined && !/^(rust|pin|worm|bullet|oil|dry|cracked|worn) /.test(np.said) && COUNTED.has(singular(np.said.split(' ').at(-1)!));
    if (counted && !c.items.some(x => x.t === 'adj' && CONDITION.has(x.low)) && !/\b(bent|broken|cracked|missing|worn|bad|rotten|gone|loose)\b/.test(lowText(t))) {
      const under = c.items.slice(k + 1).find((x, n) => x.np && /^(under|behind|between|in|on|at|of|beneath|each|per)$/.test(c.items[k + n]?.low ?? '') || x.t === 'pron' && /^(it|them|that)$/.test(x.low) && /^(under|behind|between|in|on)$/.test(c.items[k + n]?.low ?? ''));
      const owner = c.subj.find(s => s.np !== np && s.name !== np.name && !isMachine(t.sheet, s.name))?.name ?? (under?.np && !under.np.stands ? under.np.name : undefined) ?? t.memory.all().find(x => x.name !== np.name)?.name;
      const evident = c.pred === 'have' || /^(count|be|have|find|get|number)$/.test(c.verb?.base ?? '') || c.pred === 'be' || c.pred === 'none' || under !== undefined;
      if (owner && evident && owner !== np.name) out.push(trim({ kind: 'reading', part: owner, what: np.said, value: np.count!, unit: 'count', asWas: asWas(t, c) || undefined }) as Entry);
      return;
    }
    if (it.f?.dim === 'number' && Number.isInteger(it.f.value.value) && !c.items[k + 1]?.np) {
      const said = [...out].reverse().find(e => e.kind === 'reading' && e.unit === 'count') ?? [...t.told].reverse().find(x => x.entry.kind === 'reading' && x.entry.unit === 'count')?.entry ?? spokenOf(t);
      const fronted = c.items.slice(0, k).findLast(x => x.np && !x.np.stands)?.np?.name;
      const owner = (out.length ? undefined : c.subj.find(s => !s.carried)?.name) ?? under(t, c.items, k, said?.kind === 'reading' ? said.part : undefined) ?? (out.length ? undefined : fronted);
      if (said?.kind === 'reading' && owner && owner !== said.part && (c.pred === 'have' || c.pred === 'none' || c.pred === 'be' || /^(count|find|get|have)$/.test(c.verb?.base ?? '')) && !stateAfter(c.items, k)) out.push(trim({ kind: 'reading', part: owner, what: said.what, value: it.f.value.value, unit: 'count', asWas: said.asWas ?? (asWas(t, c) || undefined) }) as Entry);
    }
  });
  return out;
}
/** "shims when I pulled it apart, five under the left cap": what was counted, named on its own before. */
function spokenOf(t: Telling): { kind: 'reading'; part: string; what: string; asWas?: boolean } | undefined {
  for (let i = t.at; i >= 0 && i > t.at - 3; i--) {
    const np = t.clauses[i]!.items.find(x => x.np && x.np.count === undefined && COUNTED.has(singular(x.np.said)) && singular(x.np.said) !== x.np.said)?.np;
    if (np) return { kind: 'reading', part: '', what: np.said };
  }
  return undefined;
}
/** "22 sections, 4 chipped": a number of them in some state is no second count. */
const stateAfter = (items: readonly Item[], k: number): boolean => items[k + 1]?.t === 'adj' || items[k + 1]?.t === 'verb';
/** The part after "under", "on", "in"; "the right one" is the fellow of the part before. */
function under(t: Telling, items: readonly Item[], k: number, before: string | undefined): string | undefined {
  const np = /^(under|behind|on|in|at|between|for)$/.test(items[k + 1]?.low ?? '') ? items[k + 2]?.np : undefined;
  if (!np || !np.stands && !SIDES.has(np.said)) return np?.name;
  return before && /^(left|right|front|rear|back|top|bottom|inner|outer|upper|lower|other)( one)?$/.test(np.said) ? sided(t, before, np.said.replace(/ one$/, '')) : undefined;
}

/** Measures in a clause, each with what it measures and on what. */
function measures(t: Telling, c: Clause): Entry[] {
  if (dims(c.items, 'measure').some(m => m.value.unit === 'lb') && t.sheet.found.some(f => f.dim === 'money' && f.value.certainCurrency)) return [];
  if (secondHand(c) && !/^(i|we)$/.test(c.who ?? '')) return [];
  if (/^(need|want|order|buy|fit|use|cut|make|paint|pay|cost|ask|send|find|mix|add|fill|drill|tap|ream|leave|walk|drive)$/.test(c.verb?.base ?? '') && c.pred === 'verb') return [];
  if (dims(c.items, 'money').some(m => m.value.certainCurrency)) return [];
  const own = gauged(t, c);
  if (own) return own.map(r => trim({ kind: 'reading', ...r, asWas: asWas(t, c) || undefined }) as Entry);
  if (dims(c.items, 'money').length) return [];
  const out: Entry[] = [];
  const all = c.items.flatMap((it, k) => ((it.f?.dim === 'measure' || it.f?.dim === 'percent' || it.f?.dim === 'number' || it.f?.dim === 'thread') && !(it.np) ? [{ f: it.f as Found, k }] : []));
  for (const { f, k } of all) {
    if (f.dim === 'number' && c.verb?.base !== 'measure' || c.verb?.base === 'put') continue;
    if (c.items[k - 1]?.low === 'with' && !/\b(load|lights|on)\b/.test(lowText(t)) || c.items[k - 1]?.low === 'by' || c.items[k + 1]?.low === 'by') continue;
    const value = f.dim === 'measure' || f.dim === 'percent' || f.dim === 'number' ? f.value.value : f.dim === 'thread' ? fraction(f.value.size) : undefined;
    if (value === undefined) continue;
    const q = quantityOf(t, c, f, k);
    if (!q) continue;
    out.push(trim({ kind: 'reading', part: q.part, what: q.what, value, unit: q.unit, asWas: asWas(t, c) || undefined }) as Entry);
  }
  return out;
}

const fraction = (size: string): number | undefined => { const m = /^(\d+)\/(\d+)$/.exec(size); return m ? Number(m[1]) / Number(m[2]) : undefined; };
export const isSideOnly = (name: string): boolean => SIDES.has(name) || nounClasses(name).size === 0 && /^(top|bottom|end|side)$/.test(name);

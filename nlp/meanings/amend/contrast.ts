import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Placed } from '../../clauses/clauses.ts';
import type { Found } from '../../types.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { singular } from '../../words/nouns.ts';
import { PERSONS } from '../../words/persons.ts';
import { NAMED } from '../../words/quantities.ts';
import { OPPOSITE, SIDES } from '../../words/sides.ts';
import type { Telling } from '../telling.ts';
import { table } from '../../words/table.ts';

const OTHER: Readonly<Record<string, string>> = table({ ...OPPOSITE, inlet: 'exhaust', exhaust: 'inlet' });
const ERRED = /\b(wrong (side|one|end|way round|way)|other (one|side|way|end)|mixed (up|them)|i (said|put|wrote|told you)|meant|i mean|sorry|correction|back to front|backwards|other way (about|round|around)|wrong way (about|round|around)|mistake|muddled|switched|swapped them)\b/;
const FIELDS = ['value', 'qty', 'price', 'shipping', 'hours', 'after'] as const;

/** The first two sentences of the note, as far as nobody asks: where a correction is said, and its clauses. */
function opening(t: Telling): Clause[] {
  const first = (t.clauses[0] as Placed).sentence, out: Clause[] = [];
  for (const c of t.clauses) { if (c.asks || (c as Placed).sentence > first + 1 || out.length > 4) break; out.push(c); }
  return out;
}

/** Whether the clause speaks of another thing than the notes before it did: then its "not" is no correction of them. */
export function ofAnother(t: Telling, c: Clause): boolean {
  const known = t.prior.flatMap(e => [('part' in e && e.part) || '', ('item' in e && e.item) || '', ('where' in e && e.where) || '', ('source' in e && e.source) || '', ('with' in e && e.with) || '']).join(' ').toLowerCase().split(/[^a-z0-9]+/).map(singular);
  const neg = c.items.findIndex(i => i.t === 'neg');
  const told = c.items.slice(0, neg > 0 ? neg : undefined).filter(i => i.np && !i.np.stands && !PERSONS.test(i.np.said) && !NAMED.test(i.np.said) && partLike(t.sheet, i.np.name));
  return told.some(i => !/\b(freight|shipping|post|postage|carriage|delivery|price|cost|total|bill|slip|receipt|dial|gauge|reading|note|correction|number|figure|count|tape|rule|side|end|list|one|mistake|thou|vat|tax|top)s?$/.test(i.np!.said) && !i.np!.said.split(/[ -]/).some(w => known.includes(singular(w))));
}

/** Whether the words before token `at` say that what stands there was wrong: "not", "I said", "instead of". */
export function isOld(t: Telling, at: number): boolean {
  const before = t.sheet.tokens.slice(Math.max(0, at - 4), at).map(x => x.low).filter(w => w !== ',').join(' ').replace(/ (?='|n't)/g, '');
  return /\b(not|never|wasn't|isn't|weren't|aren't)( the| a| an| on the| in the)?$/.test(before) || /\b(instead of|rather than|i said|i put|i wrote|i told you|i had|i read|i called|i gave|i gave (?:it|them))( the| it| it as| it was| they were| as| it the| that| a)?$/.test(before);
}

const raw = (f: Found): number | undefined => (f.dim === 'number' || f.dim === 'money' || f.dim === 'measure' ? f.value.value : f.dim === 'span' ? f.value.amount : undefined);
const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;

/** Words that say that a figure given before was wrong, where that figure is said again beside another one. */
export const CORRECTS = /\b(wrong|should|ought to|said|says|told you|gave|meant|sorry|correction|isn't|wasn't|ain't|not|had it as|nearer|reads?|misread|twadn't|int)\b|\?/;
const lowsOf = (t: Telling, from: number, to: number): string => t.sheet.tokens.slice(from, to + 1).map(x => x.low).join(' ');

/** "eighteen thou, not eleven", "I said twelve, it was fourteen": the figure of an earlier entry that the note takes back, and the new one. */
export function contrasted(t: Telling): Entry[] | undefined {
  const clauses = opening(t), from = clauses[0]?.from ?? 0, to = clauses.at(-1)?.to ?? 0;
  const all = t.sheet.found.filter(f => f.from >= from && f.to <= to && raw(f) !== undefined).sort((a, b) => (b.to - b.from) - (a.to - a.from) || Number(b.dim === 'measure') - Number(a.dim === 'measure') || Number(b.dim === 'money') - Number(a.dim === 'money'));
  const values: Found[] = [];
  for (const f of all) if (!values.some(v => v.from < f.to && f.from < v.to)) values.push(f);
  values.sort((a, b) => a.from - b.from);
  for (const v of [...values]) if (v.to === v.from + 1 && t.sheet.tokens[v.from]!.low === 'one' && values.length > 2) values.splice(values.indexOf(v), 1); // "the hot one"
  const corrects = CORRECTS.test(lowsOf(t, from, to));
  if (values.length < 2 || !corrects && !values.some(v => isOld(t, v.from))) return undefined;
  for (const e of [...t.prior].reverse()) for (const field of FIELDS) {
    const was = (e as Record<string, unknown>)[field];
    if (typeof was !== 'number') continue;
    const same = (v: Found): boolean => near(raw(v)!, was) || near(raw(v)! / 1000, was);
    const old = values.find(v => isOld(t, v.from) && same(v)) ?? (corrects ? values.find(same) : undefined);
    const fresh = values.filter(v => v !== old && !isOld(t, v.from) && !same(v));
    if (!old || !fresh.length) continue;
    if (Math.min(old.from, ...fresh.map(f => f.from)) < t.clause.from) continue; // of a clause that was read before
    const now = [...fresh].sort((a, b) => Math.abs(a.from - old.from) - Math.abs(b.from - old.from))[0]!, first = Math.min(old.from, now.from), thou = was < 0.3 && now.dim !== 'measure' && raw(now)! >= 1;
    if (first >= t.clause.to || ofAnother(t, t.clause)) return undefined; // a later clause says it
    for (const c of clauses) if (c.from >= t.clause.from && c.from <= Math.max(old.from, now.from)) (c as Clause & { spoken?: boolean }).spoken = true;
    return [{ kind: 'amend', field, value: thou ? raw(now)! / 1000 : raw(now)! } as Entry];
  }
  return undefined;
}

/** "I said right, it was the left", "wrong side, it's the front one", "not the drive side, the far side": the part that was meant. */
export function otherSide(t: Telling): Entry[] | undefined {
  const clauses = opening(t), from = clauses[0]?.from ?? 0, to = clauses.at(-1)?.to ?? 0;
  const low = t.sheet.tokens.slice(from, to).map(x => x.low), text = low.join(' ');
  const said = low.flatMap((w, i) => (SIDES.has(w) || OTHER[w] || low[i + 1] === 'side' && !/^(the|this|that|wrong|other|same|one|each|either)$/.test(w) ? [{ side: w, at: from + i, old: isOld(t, from + i) }] : []));
  const latest = [...t.prior].reverse().find(e => 'part' in e && e.part !== undefined) as { part: string } | undefined;
  if (!latest) return undefined;
  const words = latest.part.split(' '), mine = words.find(w => OTHER[w] !== undefined);
  const now = said.find(s => !s.old && !words.includes(s.side)), old = said.find(s => s.old);
  const taken = (part: string): Entry[] => { for (const c of clauses) if (!c.obj.length || c.items.every(i => !i.f)) (c as Clause & { spoken?: boolean }).spoken = true; return [{ kind: 'amend', field: 'part', value: part } as Entry]; };
  if (old && now && words.includes(old.side)) return taken(latest.part.replace(old.side, now.side));
  if (old && now && low[old.at - from + 1] === 'side' && low[now.at - from + 1] === 'side') return taken(`${now.side} side ${latest.part.replace(new RegExp(`\\b${old.side} side `), '')}`);
  if (!mine || !ERRED.test(text) || /\b(too|as well|also)\b/.test(text)) return undefined;
  if (now && axis(now.side) === axis(mine)) return taken(latest.part.replace(mine, now.side));
  return !said.length && /^(no |sorry |oops |,)*(the )?(wrong (side|one|end)|other (one|side|end|way round))\b/.test(text) ? taken(latest.part.replace(mine, OTHER[mine]!)) : undefined;
}
const axis = (side: string): string => [side, OTHER[side] ?? side].map(s => (s === 'back' ? 'rear' : s)).sort().join();

import type { Entry } from '../../../domain/model/entry.ts';
import type { Weighed } from '../../likely/net/weighed.ts';
import type { Odds } from '../../likely/odds.ts';
import { kindOf } from '../../likely/sort.ts';
import { deedOf } from '../lib/deed-of.ts';
import type { FitState } from '../lib/fit-state.ts';
import { isClass } from '../../words/verbs.ts';
import type { Telling } from '../telling.ts';
import { amended } from './amended.ts';
import { built } from './built.ts';
import { again, left, toDo, worked } from './deeds.ts';
import { helped } from './helped.ts';
import { measured, spent } from './figures.ts';
import { came, traded, wanted } from './goods.ts';
import { gone, put } from './places.ts';
import { found, sits } from './states.ts';
import { surely } from './surely.ts';

/** How likely a kind must be: where no rule knew the clause, and beside what a rule read from it. */
const LIKELY = 0.65, BESIDE = 0.75;
/** Kinds with a bound of their own where no rule knew the clause: what some hold is seldom taken from words that tell something else, of others wishes and jokes speak much the same. */
const OWN: Readonly<Record<string, number>> = { work: 0.3, reading: 0.5, finding: 0.5, hands: 0.8, weather: 0.8, recheck: 0.8 };
/**
 * Reads a clause by what it most likely is, taking from it what such an entry holds: where no rule knew it, or where it is most likely something beside what
 * a rule read (`have`). Gives nothing where no kind is likely, or where what names the entry is not said.
 */
export function likely(t: Telling, odds: Odds, have: readonly Entry[], net: Weighed): Entry[] {
  const c = t.clause, out: Entry[] = [];
  for (const [sort, p] of odds.sorts()) {
    const told = [...have, ...out], kind = kindOf(sort);
    if (p < (told.length ? Math.max(BESIDE, OWN[kind] ?? 0) : OWN[kind] ?? LIKELY)) continue;
    if (kind === 'out' && (c.reality === 'plan' || c.neg && c.items.some(i => i.t === 'modal'))) continue; // it is here yet ("can't do the frame till the 20th")
    if (told.some(e => e.kind === kind) || kind === 'work' && isClass(c.verb?.base ?? '', 'check') && (told.some(e => e.kind === 'finding') || t.told.some(x => x.entry.kind === 'finding' && x.clause.from > c.from))) continue; // "tested leaky", "inspected. The left is sound" say how it was found
    const tale = { ...t, pointed: surely(t, net, sort) }, made = formed(tale, kind, sort, net);
    out.push(...(made.length ? made : built(tale, net, kind, sort)).filter(e => !told.some(x => deedOf(x) !== undefined && x.kind !== e.kind && deedOf(x) === deedOf(e) || x.kind === 'want' && e.kind === 'bought' && x.item === e.item))); // what is to be done is not done, what is wanted not bought
  }
  return have.length || out.some(e => e.kind !== 'amend') ? out.filter(e => e.kind !== 'amend') : out; // what is told anew corrects nothing
}

function formed(t: Telling, kind: Entry['kind'], sort: string, net: Weighed): Entry[] {
  switch (kind) {
    case 'fit': return sits(t, sort.split(' ')[1] as FitState);
    case 'work': return worked(t);
    case 'job': return toDo(t);
    case 'finding': return found(t);
    case 'stow': return put(t);
    case 'out': return gone(t);
    case 'wait': return left(t);
    case 'recheck': return again(t, net);
    case 'reading': return measured(t);
    case 'hours': return spent(t);
    case 'want': return wanted(t);
    case 'order': case 'bought': case 'quote': return traded(t, kind);
    case 'arrival': return came(t);
    case 'amend': return amended(t);
    case 'hands': return helped(t);
    default: return [];
  }
}

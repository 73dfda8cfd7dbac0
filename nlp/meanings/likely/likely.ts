import type { Entry } from '../../../domain/model/entry.ts';
import type { Weighed } from '../../likely/net/weighed.ts';
import { pointed } from '../../likely/pointed.ts';
import type { Odds } from '../../likely/odds.ts';
import { kindOf, type Sort } from '../../likely/sort.ts';
import type { Thing } from '../../clauses/clause.ts';
import type { FitState } from '../lib/fit-state.ts';
import type { Telling } from '../telling.ts';
import { amended } from './amended.ts';
import { again, left, toDo, worked } from './deeds.ts';
import { helped } from './helped.ts';
import { measured, spent } from './figures.ts';
import { came, traded, wanted } from './goods.ts';
import { gone, put } from './places.ts';
import { found, sits } from './states.ts';

/** How likely a kind must be: where no rule knew the clause, and beside what a rule read from it. */
const LIKELY = 0.5, BESIDE = 0.8;
/** How likely the words must be on the whole that the net points to, for them to name what is told before the rules are asked; more where they stand in the note before. */
const POINTED = 0.8, BEFORE = 0.9;

/**
 * Reads a clause by what it most likely is, taking from it what such an entry holds: where no rule knew it, or where it is most likely something beside what
 * a rule read (`have`). Gives nothing where no kind is likely, where the clause is a question or held to a condition, or where what names the entry is not said.
 */
export function likely(t: Telling, odds: Odds, have: readonly Entry[], net?: Weighed): Entry[] {
  const c = t.clause, out: Entry[] = [];
  if (c.asks || /^(if|unless|whether)$/.test(c.sub ?? '')) return out;
  for (const [sort, p] of odds.sorts()) {
    const told = [...have, ...out], kind = kindOf(sort);
    if (p < (told.length ? BESIDE : LIKELY)) break;
    if (told.some(e => e.kind === kind)) continue;
    out.push(...formed({ ...t, pointed: net && surely(t, net, sort) }, kind, sort));
  }
  return out;
}

/** The thing that the net surely points to. */
function surely(t: Telling, net: Weighed, sort: Sort): Thing | undefined {
  const own = pointed(t.sheet, net, t.clause, sort);
  if (!own || own.p <= (own.at === undefined ? BEFORE : POINTED)) return undefined;
  const from = own.at ?? t.clause.from;
  return { name: own.name, from, to: from + 1, plural: /s$/.test(own.name), carried: own.at === undefined || from < t.clause.from };
}

function formed(t: Telling, kind: Entry['kind'], sort: string): Entry[] {
  switch (kind) {
    case 'fit': return sits(t, sort.split(' ')[1] as FitState);
    case 'work': return worked(t);
    case 'job': return toDo(t);
    case 'finding': return found(t);
    case 'stow': return put(t);
    case 'out': return gone(t);
    case 'wait': return left(t);
    case 'recheck': return again(t);
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

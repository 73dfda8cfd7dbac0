import { isKnownPart } from '../../dimensions/part/known.ts';
import { dims, type Clause } from '../../clauses/clause.ts';
import { isPlaceNoun } from '../../clauses/name-kinds.ts';
import { nounClasses } from '../../words/nouns.ts';
import { isClass, verbForms } from '../../words/verbs.ts';
import { isFastener } from './fields.ts';
import { HOLDERS } from './fit-phrases.ts';
import { lowText, type Telling } from '../telling.ts';
import type { FitState } from './fit-state.ts';

/** States without a verb of their own: "carb off", "rings are on the piston", "belt's tight", "reel is up". */
export function byState(t: Telling, c: Clause): FitState | undefined {
  const rest = c.rest.filter(i => i.t !== 'adv' && i.t !== 'neg' && i.low !== ',');
  const first = rest[0], second = rest[1];
  if (!first || !c.subj.length && first.t !== 'prt') return undefined;
  const words = c.rest.map(i => i.low).join(' ');
  if (/^(still |only |just |all )*(finger|hand) ?-?tight/.test(words)) return 'temporary';
  if (/^(now |all |nice and |good and |nicely |up |done up |down )*tight\b/.test(words)) return c.items.some(i => /^(was|were)$/.test(i.low)) || /^tight (to|in|on|at|against|fit|as)\b/.test(words) ? undefined : 'tight';
  if (first.t === 'adj' && /^(onto|into)$/.test(second?.low ?? '') && rest[2]?.np && verbForms(first.low).some(f => /^(past|part)$/.test(f.form) && isClass(f.base, 'on'))) return isPlaceNoun(rest[2].np) && !isKnownPart(t.sheet.ctx.parts, rest[2].np.name) ? undefined : 'on'; // "shrunk onto the shaft"
  if (first.t === 'adj' && /^(off|out)$/.test(second?.low ?? '') && verbForms(first.low).some(f => f.form === 'past' && !isClass(f.base, 'fail'))) return 'off'; // "the manifold lifted off"
  if (first.t !== 'prt') return undefined;
  const n = t.clauses[t.at + 1], p = t.clauses[t.at - 1];
  if (first.low === 'in' && !second && n?.items[0]?.low === 'there' && !n.join) return undefined; // "the carbon in there's as thick as…"
  if (lowText(t) === 'all in' && p && (dims(p.items, 'measure').length > 0 || dims(p.items, 'money').length > 0)) return undefined; // "ninety square feet all in"
  if (first.low === 'on' || first.low === 'in') return seated(t, c, rest, words);
  if (first.low === 'off') return second?.low === 'to' || second?.low === 'at' ? undefined : 'off';
  if (first.low === 'out' && second?.low === 'of' && rest[2]?.np && isPlaceNoun(rest[2].np) && !isKnownPart(t.sheet.ctx.parts, rest[2].np.name)) return undefined; // "out of the shed"
  if (first.low === 'out') return second?.f || second?.low === 'at' || second?.low === 'for' || second?.low === 'to' || second?.low === 'of' && /^(true|round|square|stock|line|shape|date|production|balance|track|adjustment|alignment|tune|order|sync|phase|reach|sight)/.test(rest[2]?.low ?? '') ? undefined : 'off';
  if (first.low === 'apart') return 'off';
  if (first.low === 'back' && second?.t === 'prt' && /^(off|out|apart)$/.test(second.low) && !rest[2]?.np) return 'off'; // "so it's back off again"
  if (first.low === 'back' && /^(under|underneath|beneath|round|around|over|behind)$/.test(second?.low ?? '') && (rest[2]?.t === 'pron' || rest[2]?.np && !isPlaceNoun(rest[2].np))) return 'on'; // "the axle's back under her"
  if (first.low === 'back') return second?.t === 'prt' && /^(on|in|together|up)$/.test(second.low) && !(rest[2]?.np && isPlaceNoun(rest[2].np) && !isKnownPart(t.sheet.ctx.parts, rest[2].np.name)) ? 'on' : undefined;
  if (first.low === 'together') return 'on';
  if (first.low === 'down' && c.subj.some(s => /\b(caps?|heads?|covers?|lids?|shells?|clamps?)$/.test(s.name)) && (!second || second.t === 'mark' || second.low === 'on' && rest[2]?.np && !isPlaceNoun(rest[2].np))) return 'on'; // "caps down on the drum"
  if (first.low === 'down') return /^(off|from|out)$/.test(second?.low ?? '') ? 'off' : undefined;
  return first.low === 'up' ? raised(c, rest) : undefined;
}

/** "on", "in", "on the engine", "in its housing": in its place on the machine, not on a shelf, on order or in a bad way. */
function seated(t: Telling, c: Clause, rest: Clause['rest'], words: string): FitState | undefined {
  const first = rest[0]!, second = rest[1];
  if (first.low === 'in' && /^in (there|here)\b/.test(words)) return c.rest.some((i, k) => /^(on|by|with)$/.test(i.low) && c.rest[k + 1]?.np && (isFastener(c.rest[k + 1]!.np!.said) || HOLDERS.test(c.rest[k + 1]!.np!.said))) ? 'on' : undefined;
  if (second?.np && first.low === 'in' && /^(its|their) /.test(second.low) && !isPlaceNoun(second.np)) return /\b(box|bag|wrapper|packet|packaging|crate)s?$/.test(second.np.said) ? undefined : 'on'; // "in its housing"
  if (second?.np) {
    if (first.low === 'in' && (isPlaceNoun(second.np) || /\b(bits|pieces?|half|two|tatters|ribbons|shape|order|nick|condition|fettle|state|trouble|water|oil)$/.test(second.np.said))) return undefined;
    if (first.low === 'in' && !second.np.known && !nounClasses(second.np.said.split(' ').at(-1)!).has('part')) return undefined; // in a chest, in a length of pipe: kept there
    if ((second.np.count ?? 0) > 1 && !isFastener(second.np.said) && !second.np.known && first.low === 'on') return undefined; // "on four drums"
    if (isPlaceNoun(second.np) && !isKnownPart(t.sheet.ctx.parts, second.np.name)) return undefined;
    if (/^(order|way|list|bench|back order|charge|stands?|jacks?|hand|stock|mail|post|hold|backorder|loan|blocks|place)$/.test(second.np.said)) return undefined;
    if (/^(on|in) the ([a-z-]+ )?(side|end|edge|face|top|bottom|front|back|middle) of\b/.test(words)) return undefined; // where on a part it was, not that it is fitted
  }
  return second?.f?.dim === 'when' ? undefined : 'on';
}

/** "reel is up", "chimney's up on its hinge": stood in its place, where nothing says that it stands on blocks or that a figure rose. */
function raised(c: Clause, rest: Clause['rest']): FitState | undefined {
  if (c.subj.some(s => s.machine || /\b(pressure|temp|temperature|price|compression|voltage|level|speed|revs|jack|current|window|time|rpm)s?$/.test(s.name))) return undefined;
  const tail = rest.slice(1).filter(i => i.t !== 'mark');
  if (/^on (the |its |her |their |axle |jack |four |three |two )*(blocks|stands|axle stands|jacks|ramps|lift|hoist|cribbing|trestles|sleepers|horses|sawhorses)\b/.test(tail.map(i => i.low).join(' ')) && c.who !== undefined) return undefined; // "and she's up on blocks"
  return tail.every((i, k) => i.f?.dim === 'when' || i.t === 'cc' || /^(with|by|for|so)$/.test(i.low) || i.np && /^(with|by|for|on|of)$/.test(tail[k - 1]?.low ?? '') && !isPlaceNoun(i.np) || i.low === 'on' && tail[k + 1]?.np && (/^(its|their|the)\b/.test(tail[k + 1]!.low) || isFastener(tail[k + 1]!.np!.said) || HOLDERS.test(tail[k + 1]!.np!.said)) || i.low === 'of') ? 'on' : undefined;
}

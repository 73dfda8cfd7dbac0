import type { Machine } from '../../log/shop.ts';
import { verbFamily } from '../../log/verbs.ts';
import { lagBetween } from '../../lore/cures.ts';
import { proposals, type Proposal } from '../../lore/match.ts';
import { COMMON_PRACTICE } from '../../lore/order/rule.ts';
import { accepted } from '../../lore/propose.ts';
import type { Edge } from '../circle.ts';
import type { Link } from '../input.ts';
import { actId, loreAct, type OpenAct } from './act-of.ts';
import type { OpenActs } from './acts.ts';

/** What comes before what among the open acts of a machine: as the person said, and as is usual where nobody said otherwise. */
interface Order { own: Edge[]; usual: Proposal[] }

/** Works that are done on a part once it sits. Common practice, no source. */
const ON_THE_MACHINE = new Set(['tighten', 'adjust', 'bleed', 'fill', 'start', 'wire', 'connect', 'drive', 'line', 'shim', 'balance']);

const plain = (id: string, why: string) => ({ id, first: '', then: '', why, source: COMMON_PRACTICE });
const BEFORE_FITTING = plain('work > fit', 'work on a part is done before it goes on for good');
const AFTER_FITTING = plain('fit > work', 'it is done with the part in its place');
const TAKEN_OFF = plain('off > work', 'it has to come off first');
const PART_OF = plain('part > whole', 'it sits on that part');

/** `refused`: ids of usual orders that the person turned down. */
export function orderOf(machine: Machine, acts: OpenActs, refused: ReadonlySet<string>): Order {
  const own: Edge[] = acts.rules.map(r => [actId(machine, r.first), actId(machine, r.then)]);
  const list = [...acts.byId.values()];
  const lore = proposals(list.filter(a => a.origin !== 'get').map(a => ({ id: a.id, act: loreAct(a.ref) })));
  return { own, usual: accepted(own, [...lore, ...onOnePart(list), ...onPartsOf(list, machine)], refused) };
}

/** Off, then worked on, then fitted, then adjusted. */
function onOnePart(acts: readonly OpenAct[]): Proposal[] {
  const byKey = new Map<string, OpenAct[]>();
  for (const a of acts) if (a.ref.key !== '' && a.origin !== 'get') byKey.set(a.ref.key, [...(byKey.get(a.ref.key) ?? []), a]);
  return [...byKey.values()].flatMap(same => {
    const fit = same.find(a => !a.ref.verb && !a.ref.off);
    const off = same.find(a => a.ref.off);
    const works = same.filter(a => a.ref.verb);
    return [
      ...(off && fit ? [pair(TAKEN_OFF, off, fit)] : []),
      ...(off ? works.filter(w => !isDoneInPlace(w)).map(w => pair(TAKEN_OFF, off, w)) : []),
      ...(fit ? works.map(w => (isDoneInPlace(w) ? pair(AFTER_FITTING, fit, w) : pair(BEFORE_FITTING, w, fit))) : []),
    ];
  });
}

/**
 * "Top tank on the radiator", "plate under the seat": worked on before what they sit on goes on. So is a part that is away and has the
 * whole in front of its name ("radiator core"); here in the shop such a name tells no order ("radiator hose").
 */
function onPartsOf(acts: readonly OpenAct[], machine: Machine): Proposal[] {
  const fits = new Map(acts.filter(a => a.ref.key && !a.ref.verb && !a.ref.off).map(a => [a.ref.key, a]));
  return acts.flatMap(a => {
    const whole = / (?:on|in|of|under|behind) (.+)$/.exec(a.ref.key)?.[1]
      ?? (machine.things.get(a.ref.key)?.out ? [...fits.keys()].filter(key => a.ref.key.startsWith(`${key} `)).sort((x, y) => y.length - x.length)[0] : undefined);
    const fit = whole === undefined ? undefined : fits.get(whole);
    return fit && !(a.ref.verb && isDoneInPlace(a)) ? [pair(PART_OF, a, fit)] : [];
  });
}

const isDoneInPlace = (a: OpenAct): boolean => ON_THE_MACHINE.has(verbFamily(a.ref.verb!));
const pair = (rule: Proposal['rule'], first: OpenAct, then: OpenAct): Proposal => ({ rule, first: first.id, then: then.id });

/** The links of each act, with what has to cure or dry in between. */
export function linksOf(acts: OpenActs, { own, usual }: Order): Map<string, Link[]> {
  const links = new Map<string, Link[]>([...acts.byId.keys()].map(id => [id, []]));
  for (const [first, then] of [...own, ...usual.map((p): Edge => [p.first, p.then])]) {
    const [a, b] = [acts.byId.get(first), acts.byId.get(then)];
    if (!a || !b || first === then || links.get(then)!.some(l => l.job === first)) continue;
    const lag = a.ref.verb ? lagBetween(loreAct(a.ref), loreAct(b.ref)) : undefined;
    links.get(then)!.push(lag ? { job: first, lagHours: lag.hours, lag: lag.lag } : { job: first });
  }
  return links;
}

import type { Now } from '../../answers/given.ts';
import { phraseOf } from '../../log/phrase.ts';
import type { Machine, OpenWant, Thing } from '../../log/shop.ts';
import { isGetting } from '../../log/verbs.ts';
import type { Ref } from '../../model/stored.ts';
import type { Supply } from '../input.ts';
import type { ThreePoint } from '../three-point.ts';
import { actId } from './act-of.ts';
import { isPart, type OpenActs } from './acts.ts';
import { LATE, LEFT_ALONE, ON_ORDER, OUT, ROUND_BACK, ROUND_DAY, TO_GET } from './lead-times.ts';
import { momentOf, DAY } from './moments.ts';

/** What must come before work can go on: bought, ordered, back from outside, or left alone for an unsaid time; and the acts that wait for it. */
export interface Awaited { supply: Supply; thing: Thing; kind: 'want' | 'order' | 'late' | 'out' | 'wait'; acts: string[] }

export function awaited(machine: Machine, acts: OpenActs, now: Now): Awaited[] {
  return [...machine.things.values()].flatMap(t => [...toCome(machine, t, acts, now), ...away(machine, t, acts, now)]);
}

function toCome(machine: Machine, t: Thing, acts: OpenActs, now: Now): Awaited[] {
  const at = Date.parse(now.at);
  const lastOrder = Math.max(0, ...t.orders.map(o => o.id));
  const wanted = t.wants.filter(w => w.id > lastOrder);
  const needed = wanted.length > 0 || (t.orders.length === 0 && (t.jobs.some(j => isGetting(j.do)) || toReplace(t)));
  if (!needed && t.orders.length === 0) return [];
  const apart = t.orders.length === 0 ? purposes(wanted) : [];
  if (apart.length > 1) return apart.map((wants): Awaited => ({
    kind: 'want', thing: t, acts: consumers(machine, t, wants, acts),
    supply: { id: `${machine.key}|want|${t.key}|${actId(machine, wants[0]!.for!)}`, what: `${t.name} for the ${phraseOf(wants[0]!.for!)}`, leadDays: TO_GET },
  }));
  const waiting = consumers(machine, t, t.wants, acts);
  const found: Awaited[] = t.orders.map((o, i) => {
    const expected = o.expected === undefined ? undefined : momentOf(o.expected, now.zone);
    const late = expected !== undefined && expected + DAY <= at;
    const arrives = late ? around(at, LATE) : expected === undefined ? around(Date.parse(o.at), ON_ORDER, at) : around(expected, ROUND_DAY, at);
    return { kind: late ? 'late' : 'order', thing: t, acts: waiting, supply: { id: `${machine.key}|order ${i + 1}|${t.key}`, what: t.name, arrives } };
  });
  if (needed) found.push({ kind: 'want', thing: t, acts: waiting, supply: { id: `${machine.key}|want|${t.key}`, what: t.name, leadDays: TO_GET } });
  return found;
}

/** A part found to be past use, that nobody has got another of yet. */
const toReplace = (t: Thing): boolean => t.fault?.verdict === 'replace' && !t.out;

/** A gasket for the pump and one for the lid are two things to get; where one is for nothing in particular they are got together. */
function purposes(wants: readonly OpenWant[]): OpenWant[][] {
  if (wants.some(w => !w.for)) return [];
  const found = new Map<string, OpenWant[]>();
  for (const w of wants) { const to = phraseOf(w.for!); found.set(to, [...(found.get(to) ?? []), w]); }
  return [...found.values()];
}

/** Acts that wait for a thing: what it was wanted for, and the work on the thing itself. A thing for no part in particular has only to be got. */
function consumers(machine: Machine, t: Thing, wants: readonly OpenWant[], acts: OpenActs): string[] {
  const found = wants.flatMap(w => (w.for ? [purposeOf(machine, t, w.for, acts, w.id)] : []));
  const own = [...acts.byId.values()].filter(a => a.ref.key === t.key && t.key !== '').map(a => a.id);
  if (found.length === 0 && own.length === 0)
    found.push(isPart(t) ? acts.open({ key: t.key, name: t.name }, 'want', idOf(t)).id : acts.open({ key: t.key, name: t.name, verb: 'get' }, 'get', idOf(t)).id);
  return [...new Set([...found, ...own])];
}

const idOf = (t: Thing): number => t.wants.at(-1)?.id ?? t.orders.at(-1)?.id ?? t.fault?.id ?? 0;

/** The work a thing was wanted for; where that part is on for good already, the thing's own fitting. */
function purposeOf(machine: Machine, t: Thing, purpose: Ref, acts: OpenActs, since: number): string {
  const state = machine.things.get(purpose.key)?.fit?.state;
  const isOn = !purpose.verb && !purpose.off && (state === 'on' || state === 'tight' || purpose.key === '');
  return acts.open(isOn ? { key: t.key, name: t.name } : purpose, 'want', since).id;
}

function away(machine: Machine, t: Thing, acts: OpenActs, now: Now): Awaited[] {
  const own = [...acts.byId.values()].filter(a => a.ref.key === t.key && t.key !== '').map(a => a.id);
  const at = Date.parse(now.at);
  if (t.out) {
    const until = t.out.until === undefined ? undefined : momentOf(t.out.until, now.zone);
    const arrives = until === undefined ? around(Date.parse(t.out.at), OUT, at) : until + DAY <= at ? around(at, LATE) : around(until, ROUND_BACK, at);
    return [{ kind: 'out', thing: t, acts: own, supply: { id: `${machine.key}|out|${t.key}`, what: t.name, arrives } }];
  }
  if (t.wait && t.wait.until === undefined && Date.parse(t.wait.at) + LEFT_ALONE.high * DAY > at)
    return [{ kind: 'wait', thing: t, acts: own, supply: { id: `${machine.key}|wait|${t.key}`, what: t.name, arrives: around(Date.parse(t.wait.at), LEFT_ALONE, at) } }];
  return [];
}

/** Days around a moment, none of them past. */
function around(from: number, days: ThreePoint, now = 0): ThreePoint {
  const point = (d: number): number => Math.max(now, from + d * DAY);
  return { low: point(days.low), likely: point(days.likely), high: point(days.high) };
}

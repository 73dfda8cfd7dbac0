import type { BuyItem, Cause } from '../model/answer.ts';
import type { Ref } from '../model/stored.ts';
import { dayOf, reached } from '../log/days.ts';
import { sameAct } from '../log/phrase.ts';
import type { Machine, RuleSaid, Shop, Thing } from '../log/shop.ts';
import { isFitting, isGetting, sameWork } from '../log/verbs.ts';
import { usualConditions } from '../lore/conditions.ts';
import { loreAct } from '../plan/from-shop/act-of.ts';
import { promised } from '../plan/from-shop/help.ts';
import type { Now } from './given.ts';
import { owned } from './find.ts';
import { dueOf, openRechecks } from './rechecks.ts';
import { ruleMet, ruleSpent } from './rules.ts';
import { supplies } from './supply.ts';
import { fitFrom, isCoating, saidOf, skyFits } from './weather.ts';

/** `seen`: the acts on the way down to here, so that a circle in the rules ends. */
export interface Asking { shop: Shop; machine: Machine; now: Now; seen: ReadonlySet<string>; /** False: the person said that there is none. */ hoist?: boolean }

/**
 * What holds up a part (that it go on for good) or a work on one, as a tree down to what the person can act on. A cause carries an
 * `act` when nothing below it has to be done first and more than waiting helps.
 */
export function causesOf(target: Ref, asking: Asking): Cause[] {
  const step = `${target.verb ?? ''}|${target.off ? 'off' : ''}|${target.key}`;
  const thing = asking.machine.things.get(target.key);
  if (!thing || asking.seen.has(step)) return [];
  const below: Asking = { ...asking, seen: new Set([...asking.seen, step]) };
  const ordered = ruleCauses(target, below);
  if (target.off) return ordered;
  const here = [...ofThing(thing, below), ...ordered, ...wantCauses(target, below), ...helpCauses(target, below)];
  const more = target.verb ? weatherCauses(target.verb, thing, below) : partCauses(thing, below);
  return distinct([...here, ...more]);
}

/** What holds up a whole machine: all that is open on any of its things. */
export function machineCauses(asking: Asking): Cause[] {
  const things = [...asking.machine.things.values()];
  return distinct(things.flatMap(t => [...ofThing(t, asking), ...ownCauses(t, asking)]));
}

/** What keeps the thing itself from being here and ready. */
function ofThing(thing: Thing, { now }: Asking): Cause[] {
  const today = dayOf(now.at);
  const causes = supplies(thing, today).map(supplyCause);
  if (thing.out) causes.push(outCause(thing, today));
  if (thing.wait && (thing.wait.until === undefined || !reached(thing.wait.until, now.at)))
    causes.push({ cause: 'wait', what: thing.name, clears: thing.wait.until && dayOf(thing.wait.until), causes: [] });
  return causes;
}

function supplyCause(s: BuyItem): Cause {
  if (s.status === 'needed') return { cause: 'not bought', what: s.item, act: `buy ${s.item}`, causes: [] };
  if (s.status === 'late') return { cause: 'late', what: s.item, act: `chase ${s.item}`, causes: [] };
  return { cause: 'on order', what: s.item, clears: s.expected, causes: [] };
}

function outCause(thing: Thing, today: string): Cause {
  const until = thing.out?.until;
  const waiting = until !== undefined && until > today;
  return { cause: 'out', what: thing.name, ...(waiting ? {} : { act: `ask after ${thing.name}` }), clears: until, causes: [] };
}

/** What keeps a part from being on for good, beyond the way it is supplied. */
function partCauses(thing: Thing, asking: Asking): Cause[] {
  const parts = owned(asking.machine, thing.key);
  return [...ownCauses(thing, asking), ...parts.flatMap(t => [...ofThing(t, asking), ...ownCauses(t, asking)])];
}

function ownCauses(thing: Thing, asking: Asking): Cause[] {
  const causes: Cause[] = [];
  if (thing.fit?.state === 'temporary') causes.push({ cause: 'temporary', what: thing.name, act: `put ${thing.name} on for good`, causes: [] });
  for (const job of thing.jobs) if (!isFitting(job.do) && !isGetting(job.do)) causes.push(notDone(job.do, thing, asking));
  causes.push(...faultCauses(thing));
  for (const r of openRechecks(asking.machine, thing))
    if (dueOf(asking.machine, r, asking.now.at).due) causes.push({ cause: 'recheck', what: thing.name, act: act(r.do, thing), causes: [] });
  return causes;
}

const act = (verb: string, thing: Thing): string => thing.key ? `${verb} ${thing.name}` : verb;

function notDone(verb: string, thing: Thing, asking: Asking): Cause {
  const causes = causesOf({ key: thing.key, name: thing.name, verb }, asking);
  return { cause: 'not done', what: act(verb, thing), ...(causes.length ? {} : { act: act(verb, thing) }), causes };
}

/** A fault that no job, order or shop outside has in hand yet. */
function faultCauses(thing: Thing): Cause[] {
  if (!thing.fault || thing.out || thing.jobs.some(j => !isFitting(j.do)) || thing.wants.length || thing.orders.length) return [];
  return thing.fault.verdict === 'replace'
    ? [{ cause: 'not bought', what: thing.name, act: `replace ${thing.name}`, causes: [] }]
    : [{ cause: 'not done', what: `repair ${thing.name}`, act: `repair ${thing.name}`, causes: [] }];
}

/** A rule of the person's own holds up an act on its part; one about another work on that part does when the part as such is asked about. */
export const holdsUp = (rule: RuleSaid, target: Ref): boolean =>
  rule.then.key === target.key && (target.verb || target.off ? sameAct(rule.then, target) : !rule.then.off);

function ruleCauses(target: Ref, asking: Asking): Cause[] {
  const { machine } = asking;
  return machine.rules.filter(r => holdsUp(r, target) && !ruleSpent(machine, r) && !ruleMet(machine, r)).map(rule => {
    const causes = causesOf(rule.first, asking);
    return { cause: 'rule', what: rule.firstSaid, ...(causes.length ? {} : { act: firstAct(rule) }), causes };
  });
}
const firstAct = ({ first, firstSaid }: RuleSaid): string => first.verb ? firstSaid : first.off ? `take ${firstSaid}` : `fit ${firstSaid}`;

/** Things wanted for the part or for the work on it. */
function wantCauses(target: Ref, { machine, now }: Asking): Cause[] {
  const wantedFor = (r: Ref): boolean => r.key === target.key && (!target.verb || !r.verb || sameWork(r.verb, target.verb));
  const lastOn = target.verb ? 0 : onSince(machine.things.get(target.key));
  return [...machine.things.values()].filter(t => t.key !== target.key && t.wants.some(w => w.for && wantedFor(w.for) && w.id > lastOn))
    .flatMap(t => supplies(t, dayOf(now.at)).map(supplyCause));
}
const onSince = (thing: Thing | undefined): number => thing?.fit && (thing.fit.state === 'on' || thing.fit.state === 'tight') ? thing.fit.id : 0;

/** Help that is to come for it, or that has to be found where two people or a hoist are needed and there is no hoist. */
function helpCauses(target: Ref, { shop, machine, now, hoist }: Asking): Cause[] {
  const done = onSince(machine.things.get(target.key));
  const help = promised(shop);
  const coming = help.filter(h => h.machine === machine.key && h.for?.key === target.key && h.when > dayOf(now.at) && h.id > done
      && (!target.verb || !h.for.verb || sameWork(h.for.verb, target.verb)))
    .map((h): Cause => ({ cause: 'help', what: h.forSaid ?? target.name, clears: h.when, causes: [] }));
  if (coming.length || hoist !== false || help.some(h => h.when === dayOf(now.at)) || !isToBeLifted(target, machine)) return coming;
  const what = target.verb ? `${target.verb} ${target.name}` : `fit ${target.name}`;
  return [{ cause: 'help', what, act: `get help or a hoist for ${target.name}`, causes: [] }];
}

/** Work yet to be done that takes two people or a hoist. */
const isToBeLifted = (target: Ref, machine: Machine): boolean =>
  usualConditions(loreAct(target)).orHoist && (target.verb !== undefined || target.off === true || machine.things.get(target.key)?.fit?.state === 'off');

function weatherCauses(verb: string, thing: Thing, { shop, now }: Asking): Cause[] {
  const said = isCoating(verb) ? saidOf(shop, dayOf(now.at)) : undefined;
  if (!said || skyFits(said.sky, verb)) return [];
  return [{ cause: 'weather', what: act(verb, thing), clears: fitFrom(shop, dayOf(now.at), verb), causes: [] }];
}

/** The same cause said twice on one level is one; the one that says more is kept. */
function distinct(causes: Cause[]): Cause[] {
  const kept = new Map<string, Cause>();
  for (const c of causes) {
    const at = `${c.cause}|${c.what.toLowerCase()}`;
    const before = kept.get(at);
    if (!before || c.causes.length > before.causes.length) kept.set(at, c);
  }
  return [...kept.values()];
}

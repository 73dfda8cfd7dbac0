import { dueOf, openRechecks } from '../../answers/rechecks.ts';
import { lastDone, ruleMet, ruleSpent } from '../../answers/rules.ts';
import type { Now } from '../../answers/given.ts';
import { dayOf } from '../../log/days.ts';
import type { Machine, RuleSaid, Shop, Thing } from '../../log/shop.ts';
import { isFitting, isGetting, isReplacing } from '../../log/verbs.ts';
import { rulesFor } from '../../lore/match.ts';
import type { Ref } from '../../model/stored.ts';
import { actId, asAct, type OpenAct, type Origin } from './act-of.ts';

/** The open acts of one machine, and the rules in force between them. */
export interface OpenActs {
  byId: Map<string, OpenAct>;
  rules: RuleSaid[];
  /** The act of a phrase, opened if nobody spoke of it yet. */
  open(ref: Ref, origin: Origin, since: number): OpenAct;
}

/** Reads off a machine all that is still to be done. */
export function openActs(machine: Machine, shop: Shop, now: Now): OpenActs {
  const byId = new Map<string, OpenAct>();
  const open = (ref: Ref, origin: Origin, since: number, verb = usualVerb(ref)): OpenAct => {
    const id = actId(machine, ref);
    const known = byId.get(id);
    if (known) return known;
    const made: OpenAct = { id, machine, ref, do: verb, origin, since };
    byId.set(id, made);
    return made;
  };
  const rules = machine.rules.filter(r => !ruleSpent(machine, r) && !ruleMet(machine, r));
  for (const thing of machine.things.values()) ofThing(machine, thing, now, open);
  for (const rule of rules) {
    open(rule.first, 'rule', rule.id);
    open(rule.then, 'rule', rule.id);
  }
  for (const h of shop.hands) {
    if (h.machine !== machine.key || !h.for || h.when < dayOf(now.at)) continue;
    const done = lastDone(machine, h.for);
    if (!done || done.id < h.id) open(h.for, 'help', h.id);
  }
  return { byId, rules, open };
}

const usualVerb = ({ verb, off }: Ref): string => verb ?? (off ? 'take off' : 'fit');

type Open = (ref: Ref, origin: Origin, since: number, verb?: string) => OpenAct;

function ofThing(machine: Machine, t: Thing, now: Now, open: Open): void {
  for (const job of t.jobs) {
    if (isGetting(job.do)) continue;
    const act = open(asAct(t.key, t.name, job.do), 'job', job.id, job.do);
    if (job.begun) act.begun = true;
  }
  for (const r of openRechecks(machine, t)) if (dueOf(machine, r, now.at).due) open({ key: t.key, name: t.name, verb: r.do }, 'recheck', r.id, r.do);
  if (!t.key) return;
  if (t.fault && !handled(t)) {
    const replace = t.fault.verdict === 'replace';
    open(replace ? { key: t.key, name: t.name } : { key: t.key, name: t.name, verb: 'repair' }, 'fault', t.fault.id, replace ? 'replace' : 'repair');
  }
  const fit = toBeFitted(machine, t);
  if (fit) open({ key: t.key, name: t.name }, ...fit);
}

/** A fault that a job or a shop outside has in hand. */
const handled = (t: Thing): boolean => t.out !== undefined || t.jobs.some(j => !isFitting(j.do) && (t.fault?.verdict !== 'replace' || isReplacing(j.do)));

/** Whether a part has yet to go on for good, and what says so. */
function toBeFitted(machine: Machine, t: Thing): [origin: Origin, since: number, verb: string] | undefined {
  const state = t.fit?.state;
  if (state === 'temporary') return ['temporary', t.fit!.id, 'put on for good'];
  if (t.inHand && t.inHand.id > (t.fit?.id ?? 0) && (t.finding?.verdict === 'replace' || state === 'off' || (!t.fit && isPart(t))) && !wentOnWith(machine, t, t.inHand.id))
    return ['came', t.inHand.id, 'fit'];
  if (state === 'off' || state === 'tried') return ['off', t.fit!.id, state === 'tried' ? 'put on for good' : 'fit'];
  if (t.out) return ['off', t.out.id, 'fit'];
  return t.back && t.back.id > (t.fit?.id ?? 0) && isPart(t) ? ['came', t.back.id, 'fit'] : undefined;
}

/** "Head gasket", "pump seal": what is named after another part is taken to be in once that part went on for good after it came. */
function wentOnWith(machine: Machine, t: Thing, since: number): boolean {
  const named = t.key.split(' ').slice(0, -1).join(' ');
  if (!named) return false;
  return [...machine.things.values()].some(o => (o.key === named || o.key.endsWith(` ${named}`)) && (o.fit?.state === 'on' || o.fit?.state === 'tight') && o.fit.id > since);
}

/** Whether a thing is a part that gets fitted, rather than paint, wire or rod: it was on or off before, or the usual order of assembly names it. */
export const isPart = (t: Thing): boolean =>
  t.fit !== undefined || t.finding !== undefined || rulesFor({ part: t.name }).some(({ rule, side }) => !rule[side].includes('*'));

import type { NextAnswer, NextJob } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import { dayOf } from '../log/days.ts';
import { sameAct } from '../log/phrase.ts';
import type { Shop } from '../log/shop.ts';
import type { OpenAct } from '../plan/from-shop/act-of.ts';
import { planOf, type ShopPlan } from '../plan/from-shop/plan-of.ts';
import { rankReady, type NextNotes, type NextReason, type ReadyJob } from '../plan/rank.ts';
import { nextReasonWords } from './why.ts';
import type { More, Now } from './given.ts';
import { causesOf, type Asking } from './causes.ts';
import { hereOf, named } from './find.ts';
import { some } from './supply.ts';

/** At most so many, for they are read at the bench. */
const MOST = 3;

/**
 * What can be done now, for this hour, place, weather and hands: rechecks that are due, then by what it opens, what the weather or the help
 * allows only now, what is only on for now, and what has come for it; last what is merely off and could go on again. On the chat's machine
 * if it is at one.
 */
export function next(shop: Shop, ask: AskOf<'next'>, now: Now, more: More): NextAnswer {
  const machines = more.machine === undefined ? [...shop.machines.values()] : [hereOf(shop, more.machine)].filter(m => m !== undefined);
  const plan = planOf({ machines, shop, now, settings: more.planning });
  const ready = rankReady(plan.input, { minutes: ask.minutes, place: ask.place }, notesOf(plan)).filter(r => fitsIn(plan, r, ask.minutes) && isFree(plan, r, { shop, now, seen: new Set(), hoist: more.planning?.hoist }));
  ready.sort((a, b) => turnOf(plan, a) - turnOf(plan, b) || b.score - a.score || actOf(plan, a).since - actOf(plan, b).since);
  return { kind: 'next', jobs: ready.slice(0, MOST).map(r => jobOf(plan, r, now)), ...some({ minutes: ask.minutes, place: ask.place }) };
}

const actOf = (plan: ShopPlan, { id }: { id: string }): OpenAct => plan.acts.get(id)!;

/** What is due comes first; what is merely off fills what room there is. */
const turnOf = (plan: ShopPlan, r: ReadyJob): number => ({ recheck: 0, off: 2 } as Record<string, number>)[actOf(plan, r).origin] ?? 1;

/** With so many minutes nothing is begun that even at best takes longer, unless it is begun already. */
const fitsIn = (plan: ShopPlan, r: ReadyJob, minutes: number | undefined): boolean =>
  minutes === undefined || actOf(plan, r).begun === true || plan.input.jobs.find(j => j.id === r.id)!.hours.low * 60 <= minutes;

/** What "what holds it up" finds nothing against, but for what the act itself puts right. */
function isFree(plan: ShopPlan, r: ReadyJob, asking: Omit<Asking, 'machine'>): boolean {
  const { machine, ref, origin } = actOf(plan, r);
  const after = new Set(plan.input.jobs.filter(j => j.after.some(l => l.job === r.id)).map(j => j.id));
  return causesOf(ref, { ...asking, machine }).every(c => {
    if (c.cause === 'temporary') return !ref.verb && c.what === machine.things.get(ref.key)?.name;
    if (c.cause === 'recheck' && origin === 'recheck') return true;
    // What is done once the part is in its place does not keep it from going there.
    return c.cause === 'not done' && [...after].some(id => { const a = plan.acts.get(id)!; return a.ref.key === ref.key && c.what === `${a.ref.verb} ${machine.things.get(a.ref.key)?.name}`; });
  });
}

function notesOf(plan: ShopPlan): NextNotes {
  const acts = [...plan.acts.values()];
  const temporary = acts.filter(a => a.origin === 'temporary').map(a => [a.id, { part: a.ref.name, since: dayOf(a.machine.things.get(a.ref.key)!.fit!.at) }] as const);
  return { temporary: new Map(temporary), inHand: new Map(acts.flatMap(a => { const item = cameFor(a); return item ? [[a.id, item] as const] : []; })) };
}

/** What was got for a work, so that it can go ahead: the part itself, or a thing that was wanted for it. */
function cameFor({ machine, ref, origin }: OpenAct): string | undefined {
  if (origin === 'came') return machine.things.get(ref.key)?.name;
  return [...machine.things.values()].find(t => t.inHand && t.paid.at(-1)?.for && sameAct(t.paid.at(-1)!.for!, ref))?.name;
}

function jobOf(plan: ShopPlan, r: ReadyJob, now: Now): NextJob {
  const act = actOf(plan, r);
  const naming = { zone: now.zone, now: Date.parse(now.at), nameOf: plan.nameOf };
  const words = r.reasons.flatMap((reason): string[] => (SAID_OTHERWISE.has(reason.why) ? [] : [nextReasonWords(reason, naming)]));
  const why = [
    ...(act.origin === 'recheck' ? ['recheck is due'] : []), ...words, ...(act.origin === 'temporary' ? ['only temporary'] : []), ...(act.begun ? ['begun'] : []),
  ].slice(0, MOST);
  return { do: act.do, ...partOf(act), why: why.length ? why : [act.origin === 'off' ? (/[^s]s$/.test(partOf(act).part ?? '') ? 'they are off, and nothing holds them up' : 'it is off, and nothing holds it up') : 'nothing in the way'], ...named(act.machine) };
}
const SAID_OTHERWISE = new Set<NextReason['why']>(['ready', 'temporary']);

const partOf = ({ machine, ref }: OpenAct): { part?: string } => (ref.key ? { part: machine.things.get(ref.key)?.name ?? ref.name } : ref.verb ? {} : { part: ref.name });

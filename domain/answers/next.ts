import type { NextAnswer, NextJob } from '../model/answer.ts';
import type { AskOf } from '../model/ask.ts';
import type { Ref } from '../model/stored.ts';
import { act } from '../lore/act.ts';
import { usualConditions } from '../lore/conditions.ts';
import { usualHours } from '../lore/hours.ts';
import { dayOf } from '../log/days.ts';
import { sameAct } from '../log/phrase.ts';
import type { Machine, Shop, Thing } from '../log/shop.ts';
import { isFitting } from '../log/verbs.ts';
import type { More, Now } from './answer.ts';
import { causesOf } from './causes.ts';
import { hereOf, named } from './find.ts';
import { dueOf, openRechecks } from './rechecks.ts';
import { ruleMet, ruleSpent } from './rules.ts';
import { some } from './supply.ts';
import { saidOf, skyFits } from './weather.ts';

/** At most so many, for they are read at the bench. */
const MOST = 3;

interface Ready { job: NextJob; act: Ref; machine: Machine; rank: number; since: number }

/**
 * What can be done now, in a simple order: rechecks that are due, then what unlocks most, then what is only temporary, then the
 * longest open. On the chat's machine if it is at one. Left out is what usually takes longer than the minutes there are, belongs in the
 * other place, or, outdoors, what today's sky is not fit for.
 */
export function next(shop: Shop, ask: AskOf<'next'>, now: Now, more: More): NextAnswer {
  const machines = more.machine === undefined ? [...shop.machines.values()] : [hereOf(shop, more.machine)].filter(m => m !== undefined);
  const sky = ask.place === 'outdoors' ? saidOf(shop, dayOf(now.at))?.sky : undefined;
  const ready = machines.flatMap(m => readyOn(m, shop, now)).filter(r => (!sky || skyFits(sky, r.act.verb)) && suits(r.act, ask));
  ready.sort((a, b) => a.rank - b.rank || a.since - b.since);
  return { kind: 'next', jobs: ready.slice(0, MOST).map(r => r.job), ...some({ minutes: ask.minutes, place: ask.place }) };
}

/** Whether the usual place of a work is the one asked for (or either), and its usual shortest time fits the minutes. */
function suits(work: Ref, { place, minutes }: AskOf<'next'>): boolean {
  const usual = act(work.verb, work.name, work.off);
  const where = usualConditions(usual).conditions.place;
  return (place === undefined || where === undefined || where === 'either' || where === place) && (minutes === undefined || usualHours(usual).low * 60 <= minutes);
}

function readyOn(machine: Machine, shop: Shop, now: Now): Ready[] {
  const things = [...machine.things.values()];
  const found = [
    ...things.flatMap(t => dueNow(machine, t, now)),
    ...things.flatMap(t => jobsOf(machine, t)),
    ...firstsOf(machine),
    ...things.flatMap(t => temporaryOf(machine, t)),
  ];
  return found.filter((r, i) => found.findIndex(other => sameAct(other.act, r.act)) === i && isReady(r, shop, now));
}

/** Nothing in the way but the work itself. */
function isReady({ act: work, machine }: Ready, shop: Shop, now: Now): boolean {
  const causes = causesOf(work, { shop, machine, now, seen: new Set() });
  return causes.every(c => c.cause === 'temporary' && !work.verb && c.what === machine.things.get(work.key)?.name);
}

const unlocks = (machine: Machine, work: Ref): number => machine.rules.filter(r => sameAct(r.first, work) && !ruleSpent(machine, r) && !ruleMet(machine, r)).length;

/** Lower comes first: 0 due, then by what it unlocks, then temporary fits, then the rest. */
const RANK = { due: 0, unlocks: 1, temporary: 5, open: 6 };
const rankOf = (opened: number, otherwise: number): number => opened ? RANK.unlocks + 1 / opened : otherwise;
const opensWhy = (opened: number): string[] => opened ? [`unlocks ${opened} ${opened === 1 ? 'other' : 'others'}`] : [];

function dueNow(machine: Machine, t: Thing, now: Now): Ready[] {
  return openRechecks(machine, t).filter(r => dueOf(machine, r, now.at).due).map(r => ({
    job: { do: r.do, ...partOf(t), why: ['recheck is due'], ...named(machine) }, act: { key: t.key, name: t.name, verb: r.do }, machine, rank: RANK.due, since: r.id,
  }));
}

function jobsOf(machine: Machine, t: Thing): Ready[] {
  return t.jobs.map(job => {
    const work: Ref = isFitting(job.do) ? { key: t.key, name: t.name } : { key: t.key, name: t.name, verb: job.do };
    const opened = unlocks(machine, work);
    const why = [...opensWhy(opened), ...(job.begun ? ['begun'] : []), ...cameFor(machine, work).map(item => `${item} is in`)];
    return { job: { do: job.do, ...partOf(t), why: why.length ? why : ['nothing in the way'], ...named(machine) }, act: work, machine, rank: rankOf(opened, RANK.open), since: job.id };
  });
}

/** What was got for a work, so that it can go ahead. */
const cameFor = (machine: Machine, work: Ref): string[] =>
  [...machine.things.values()].filter(t => t.inHand && t.paid.at(-1)?.for && sameAct(t.paid.at(-1)!.for!, work)).map(t => t.name);

/** What a rule wants first and that is no job yet. */
function firstsOf(machine: Machine): Ready[] {
  return machine.rules.filter(r => !ruleSpent(machine, r) && !ruleMet(machine, r)).map(r => {
    const opened = unlocks(machine, r.first);
    const part = r.first.key ? { part: machine.things.get(r.first.key)?.name ?? r.first.name } : {};
    return { job: { do: r.first.verb ?? (r.first.off ? 'take off' : 'fit'), ...part, why: opensWhy(opened), ...named(machine) }, act: r.first, machine, rank: rankOf(opened, RANK.open), since: r.id };
  });
}

function temporaryOf(machine: Machine, t: Thing): Ready[] {
  if (t.fit?.state !== 'temporary') return [];
  const work = { key: t.key, name: t.name };
  const opened = unlocks(machine, work);
  return [{ job: { do: 'put on for good', part: t.name, why: [...opensWhy(opened), 'only temporary'], ...named(machine) }, act: work, machine, rank: rankOf(opened, RANK.temporary), since: t.fit.id }];
}

const partOf = (t: Thing): { part?: string } => t.key ? { part: t.name } : {};

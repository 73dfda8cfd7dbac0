import type { Entry, EntryOf } from '../model/entry.ts';
import type { Ref } from '../model/stored.ts';
import { dayOf } from '../log/days.ts';
import { machineNamed } from '../log/naming.ts';
import { sameAct } from '../log/phrase.ts';
import { refsOf } from '../log/refs.ts';
import { emptyMachine, type Machine, type Shop } from '../log/shop.ts';
import { nameKey } from '../model/names.ts';
import type { Now } from './given.ts';
import { holdsUp } from './causes.ts';
import { circleOf, type Before } from './circle.ts';
import { owned } from './find.ts';
import { ruleMet, ruleSpent } from './rules.ts';
import { some, supplies } from './supply.ts';
import { againstUsual } from './usual-order.ts';

/**
 * What speaks against something just said; the note is kept all the same.
 * `rule`: the person's own rule is not met. `wanted`: a thing for it is still to be got. `order`: the usual order of assembly, `rule` its id.
 * `circle`: a rule would close a circle; `path` goes round it, first and last the same.
 */
export type Warning =
  | { kind: 'rule'; part: string; first: string; then: string }
  | { kind: 'wanted'; part: string; item: string; status: 'needed' | 'ordered' | 'late'; expected?: string }
  | { kind: 'order'; part: string; first: string; why: string; source: string; rule: string }
  | { kind: 'circle'; rule: EntryOf<'rule'>; path: string[] };

/** `refused`: indexes into `entries` that are not to be recorded (rules that close a circle). `machine`: the chat's current one. */
export interface Warned { warnings: Warning[]; refused: number[] }

/** An entry with the machine and the things that it is going to be recorded under. */
interface Meant { entry: Entry; machine: Machine; refs: Ref[] }

/** Call before record(), with the entries it is going to be given. `declined`: ids of usual orders that the person has turned down. */
export function warnings(shop: Shop, entries: readonly Entry[], now: Now, machine?: string, declined: ReadonlySet<string> = new Set()): Warned {
  const meant = entries.map(entry => meantBy(shop, entry, entry.machine ?? machine));
  const out: Warned = { warnings: [], refused: [] };
  const newRules: { machine: Machine; rule: Before }[] = [];
  meant.forEach((m, i) => {
    const circle = m.entry.kind === 'rule' ? refusedRule(m, newRules) : undefined;
    if (circle) { out.warnings.push(circle); out.refused.push(i); }
  });
  for (const m of meant) out.warnings.push(...againstDone(m, meant, now, declined));
  return out;
}

function meantBy(shop: Shop, entry: Entry, machineName: string | undefined): Meant {
  const known = machineName === undefined ? shop.machines.get('') : machineNamed(shop, machineName);
  const machine = known ?? emptyMachine(nameKey(machineName ?? ''), machineName ?? '');
  return { entry, machine, refs: refsOf(machine, entry) };
}

/** The warning for a rule that would close a circle with those in force and those before it in the note; else it joins these. */
function refusedRule({ entry, machine, refs }: Meant, newRules: { machine: Machine; rule: Before }[]): Warning | undefined {
  if (entry.kind !== 'rule') return undefined;
  const rule: Before = { first: refs[0]!, then: refs[1]!, firstSaid: entry.first, thenSaid: entry.then };
  const inForce = [...machine.rules.filter(r => !ruleSpent(machine, r)), ...newRules.filter(n => n.machine.key === machine.key).map(n => n.rule)];
  const path = circleOf(rule, inForce);
  if (path) return { kind: 'circle', rule: entry, path };
  newRules.push({ machine, rule });
  return undefined;
}

/** What is done by an entry: a part on for good, or a work finished. */
function actOf({ entry, refs }: Meant): Ref | undefined {
  const [main] = refs;
  if (!main) return undefined;
  if (entry.kind === 'fit' && (entry.state === 'on' || entry.state === 'tight')) return main;
  return entry.kind === 'work' && entry.done !== false ? { ...main, verb: entry.action } : undefined;
}

function againstDone(m: Meant, all: readonly Meant[], now: Now, declined: ReadonlySet<string>): Warning[] {
  const done = actOf(m);
  if (!done) return [];
  const { machine } = m;
  const part = machine.things.get(done.key)?.name ?? done.name;
  const alsoDone = (act: Ref): boolean => all.some(o => o.machine.key === machine.key && brings(o, act));
  const rules = machine.rules.filter(r => holds(r, done) && !ruleSpent(machine, r) && !ruleMet(machine, r) && !alsoDone(r.first))
    .map((r): Warning => ({ kind: 'rule', part, first: r.firstSaid, then: r.thenSaid }));
  if (done.verb || isOn(machine, done)) return rules;
  const usual = againstUsual(machine, machine.things.get(done.key) ?? done, declined).filter(u => !alsoDone(u.act))
    .map((u): Warning => ({ kind: 'order', part, first: u.first, why: u.rule.why, source: u.rule.source, rule: u.rule.id }));
  return [...rules, ...stillWanted(m, done, part, alsoDone, now), ...usual];
}

/** What is tightened was on already, and was warned of then. */
const isOn = (machine: Machine, part: Ref): boolean => ['on', 'tight'].includes(machine.things.get(part.key)?.fit?.state ?? '');

/** A part that goes on is held up by rules about its going on, not by those about other works on it. */
const holds = (rule: Before & { id: number; at: string }, done: Ref): boolean => holdsUp(rule, done) && sameAct(rule.then, done);

/** Whether an entry of the same note does what is wanted first, or brings the thing. */
function brings(other: Meant, act: Ref): boolean {
  const done = actOf(other);
  if (done) return sameAct(done, act);
  const [main] = other.refs;
  return main?.key === act.key && ((other.entry.kind === 'fit' && other.entry.state === 'off' && act.off === true)
    || (!act.verb && (other.entry.kind === 'bought' || other.entry.kind === 'arrival')));
}

/** Things wanted for a part that now goes on for good without them. */
function stillWanted({ machine }: Meant, done: Ref, part: string, alsoDone: (act: Ref) => boolean, now: Now): Warning[] {
  const own = new Set(owned(machine, done.key));
  return [...machine.things.values()].filter(t => t.key !== done.key && t.wants.some(w => w.for ? w.for.key === done.key && !w.for.verb : own.has(t)) && !alsoDone({ key: t.key, name: t.name }))
    .flatMap(t => supplies(t, dayOf(now.at)).map((s): Warning => ({ kind: 'wanted', part, item: s.item, status: s.status, ...some({ expected: s.expected }) })));
}

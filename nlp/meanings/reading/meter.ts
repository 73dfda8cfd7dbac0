import type { Entry } from '../../../domain/model/entry.ts';
import { dims } from '../../clauses/clause.ts';
import { isMachine } from '../../clauses/name-kinds.ts';
import { lowText, type Telling } from '../telling.ts';

const DIAL = /\bhours? (?:.{1,20} )?on (?:the|its|her) (?:[\w'-]+ ){0,3}?(?:'s )?(?:meter|counter)\b|\b(hours? ?-?(?:meter|counter)|hours? clock|hourmeter|tacho?|tachometer|odometer|odo|speedo|speedometer)\b|\bon the (clock|meter|tach|hour meter)\b|\b(clock|meter|counter)(?= (?:on .{1,25} )?(?:just |now )*(?:reads?|says|shows|showing|reading|is at|stands at|rolled over|turned over|went over|clicked over))|\bon the \S+( \S+)? ?'s (meter|clock|hour meter)\b/;
const OTHER = /\b(volt|amp|ohm|multi|flow|light|feeler|rev)-?\s?meter|\b(volts?|psi|ohms?|amps?)\b/;

/** "hour meter reads 1423", "612 hours on the clock", "the crawler's meter says 6": how long or far the machine has run. */
export function meter(t: Telling): Entry | undefined {
  const c = t.clause, text = lowText(t), dial = OTHER.test(text) ? undefined : DIAL.exec(text)?.[0];
  const ran = dial === undefined && /\b(has|'s|have) (done|run|got|seen)\b/.test(text) && (c.subj.some(s => s.machine) || /\bon (her|it|the engine)\b/.test(text));
  if (!dial && !ran || /\b(stuck|broken|dead|doesn't|won't|faulty|jammed)\b/.test(text) || /\b(on|in) (the|it) (job|work)|spent|took\b/.test(text)) return undefined;
  const span = dims(c.items, 'span').find(f => /^(hours|miles)$/.test(f.value.unit)), sure = /hour|clock|meter|odo/.test(dial ?? '');
  const plain = dims(c.items, 'number').find(f => f.value.value >= (sure ? 1 : 20));
  const money = sure ? dims(c.items, 'money').find(f => !f.value.certainCurrency) : undefined; // "says 12.5"
  const distance = span ? span.value.unit === 'miles' : /odo|speedo/.test(dial ?? '');
  const value = span?.value.amount ?? (dial && !/rpm|revs/.test(text) && /\b(reads?|says|shows|showing|reading|is|at|on|now|was|over|of)\b|:/.test(text) ? plain?.value.value ?? money?.value.value : undefined);
  if (value === undefined || ran && value < 50) return undefined;
  return { kind: 'reading', part: machineOf(t, text), what: distance ? 'distance' : 'running time', value, unit: distance ? 'mi' : 'h' } as Entry;
}

/** The machine that the dial is on: named before its "'s", after "on", as the subject, or the only one of the shop. */
function machineOf(t: Telling, text: string): string {
  const c = t.clause, machines = (t.sheet.ctx.machines ?? []).map(m => m.toLowerCase());
  const full = (name: string): string => machines.find(m => m === name) ?? machines.find(m => m.split(' ').includes(name) || m.endsWith(name)) ?? name;
  const owned = /\b((?:\w+ )?\w+) ?'s (?:hour ?-?meter|hourmeter|meter|clock|odometer|tach\w*|speedo\w*)\b/.exec(text)?.[1]?.replace(/^(on|the|her|his|my|of|and) /, '');
  if (owned) return full(owned.replace(/^the /, ''));
  const on = c.items.findIndex((i, k) => /^(on|in|of|for)$/.test(i.low) && c.items[k + 1]?.np && !/\b(clock|meter|hour meter|tach|tacho|odometer|dial)$/.test(c.items[k + 1]!.np!.said));
  const np = on >= 0 ? c.items[on + 1]!.np! : undefined;
  if (np && !np.stands && (isMachine(t.sheet, np.name) || np.said === 'engine' || machines.some(m => m.includes(np.said)))) return full(np.name);
  return c.subj.find(s => s.machine)?.name ?? (machines.length === 1 ? machines[0]! : 'engine');
}

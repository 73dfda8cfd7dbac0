import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause } from '../clauses/clause.ts';
import { partLike } from '../clauses/name-kinds.ts';
import { trim } from './lib/fields.ts';
import { whenIn } from './lib/day.ts';
import { afterSpan } from './recheck/after-span.ts';
import { reminded } from './recheck/reminded.ts';
import { tends } from './recheck/tends.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';
import type { Placed } from '../clauses/clauses.ts';
import { afterRun, lookAhead, recheckOf, REMINDS } from './recheck/ahead.ts';

const LOOKS = /^(repack|refill|rebleed|check|recheck|re-check|retorque|re-torque|retighten|look|inspect|test|grease|regrease|adjust|readjust|tighten|measure|regap|retension|change|drain|oil|clean|replace|nip|torque|examine|top|see|go|watch|bleed|verify|pull|snug|tweak|set|reset|lubricate|charge|try|do|revisit|flush|swap)$/;

/** Whether a verb is one of looking after: of those, or one of them, or of the bench's work, done again ("re-tension", "relevel"). */
const looksAfter = (base: string): boolean => LOOKS.test(base) || isAgain(base);
const isAgain = (base: string): boolean => /^re/.test(base) && tends(base);

/** Look at it again later: after so many hours, days, miles, or on a day. */
export const recheck: Meaning = t => {
  const c = t.clause;
  const asked = reminded(c, later(t, c));
  if (asked) return asked;
  if (c.neg && !REMINDS.test(lowText(t)) || c.asks || c.passive && c.reality === 'deed' || c.sub && /^(if|unless|that)$/.test(c.sub)) return undefined;
  const ahead = lookAhead(t, c, LOOKS), when = ahead && (later(t, c) ?? onceRun(t) ?? timeBefore(t));
  if (ahead && when) return recheckOf(ahead.parts, ahead.do, when);
  const verb = c.verb;
  const text = lowText(t);
  const again = /\b(due|wants? doing|needs? doing) again\b|\bdue (a )?(re-?check|another look)\b/.test(text) ? later(t, c) : undefined;
  const last = t.told.findLast(x => x.entry.kind === 'work' || x.entry.kind === 'fit')?.entry;
  const about = c.subj.find(s => s.name)?.name ?? (last && 'part' in last ? last.part : undefined);
  if (again && about) return [trim({ kind: 'recheck', part: about, do: last?.kind === 'work' ? last.action : 'check', ...again }) as Entry];
  if (!verb && c.pred === 'none' && !c.carriedSubj && c.subj.length && c.subj.every(s => partLike(t.sheet, s.name)) && /\bagain (after|in|at)\b/.test(text)) { const time = later(t, c); return time ? c.subj.map(s => trim({ kind: 'recheck', part: s.name, do: 'check', ...time }) as Entry) : undefined; } // "wheel nuts again after 30 miles"
  if (!verb || !looksAfter(verb.base!) || verb.form === 'past' && !/^(put|set)$/.test(verb.low) && !(c.passive && c.reality === 'must')) return undefined;
  const looking = /^(check|recheck|re-check|retorque|re-torque|retighten|look|inspect|examine|verify|readjust|regap|retension|regrease|repack|refill|rebleed|feel|see)$/.test(verb.base!) || isAgain(verb.base!) || afterRun(t, later) !== undefined || /\bagain\b|\bevery\b|\bafter the first\b|\bafter \w+ (hours|miles)\b/.test(text);
  if (!looking || !(c.reality !== 'deed' || verb.form === 'base' || verb.form === 'ing' || c.items.some(i => i.low === 'needs' || i.low === 'wants'))) return undefined;
  if (/^(they|he|she|person)$/.test(c.who ?? '') || /^(feel|see|go|try|do|look)$/.test(verb.base!) && c.subj.some(s => s.np && s.from >= c.from) && !/\b(looking at|looked at|looking over|going over|gone over|seeing to|seen to)\b/.test(text)) return undefined;
  const two = eachItsTime(t, c);
  if (two) return two.map(x => trim({ kind: 'recheck', part: x.part, do: verb.base === 'recheck' ? 'check' : verb.base!, ...x.time }) as Entry);
  const time = later(t, c) ?? onceRun(t) ?? timeBefore(t) ?? inTheSameUnit(t, c);
  if (!time) return undefined;
  const things = c.obj.length ? c.obj : partAfterAt(t, c) ?? (c.subj.length ? c.subj : t.memory.lastGroup().slice(0, 1));
  const act = verb.base === 'go' && /\bgo(es|ing|ne)? (over|round|around)\b/.test(text) ? 'go' : verb.base === 'recheck' || verb.base === 're-check' || verb.base === 'see' || verb.base === 'go' || verb.base === 'feel' ? 'check' : verb.base === 're-torque' ? 'retorque' : verb.base === 'do' ? 'check' : verb.base!;
  if (!things.length) return [trim({ kind: 'recheck', do: act, ...time }) as Entry];
  return things.map(s => trim({ kind: 'recheck', part: s.name, do: act, ...time }) as Entry);
};

/** "…again once she's got three hours on her", "once it has run an hour": the running time stands in the clause after. */
function onceRun(t: Telling): { after: number; unit: string } | { due: string } | undefined {
  const n = t.clauses[t.at + 1];
  if (!n || !/^(once|when|after)$/.test(n.sub ?? '') || n.asks || !/\b(run|ran|running|hours?|miles|on (it|her|them)|work)\b/.test(lowText(t, n))) return undefined;
  const time = later(t, n);
  if (time && 'after' in time) (n as Clause & { spoken?: boolean }).spoken = true;
  return time && 'after' in time ? time : undefined;
}

/** "Valves after 25 hours. Retorque the housing bolts after 10": a bare figure is in the unit of the look before it. */
function inTheSameUnit(t: Telling, c: Clause): { after: number; unit: string } | undefined {
  const last = t.told.at(-1)?.entry, k = c.items.findIndex((i, n) => /^(after|at|in)$/.test(i.low) && c.items[n + 1]?.f?.dim === 'number'), n = c.items[k + 1]?.f;
  return last?.kind === 'recheck' && last.unit !== undefined && n?.dim === 'number' && (c.items[k + 2]?.t ?? 'mark') === 'mark' ? { after: n.value.value, unit: last.unit } : undefined;
}

/** "same time next month, I want them nipped again", "run it ten hours then change the oil": the time stands on its own before. */
function timeBefore(t: Telling): { after: number; unit: string } | { due: string } | undefined {
  const before = t.clauses[t.at - 1];
  if (!before || before.asks || (before as Placed).sentence !== (t.clause as Placed).sentence) return undefined;
  const only = before.pred === 'none' && before.items.every(i => i.f?.dim === 'when' || i.f?.dim === 'span' || i.np && /^(time|first|work|use|running|season|day|week|month|hour)$/.test(i.np.said) || /^(mark|adv|prep|prt|sub|cc|det|adj)$/.test(i.t));
  return only ? later(t, before) : afterRun(t, later);
}

/** "check the oil next month and the belt after five hours": each thing has the time that follows it. */
function eachItsTime(t: Telling, c: Clause): { part: string; time: object }[] | undefined {
  const nps = c.items.flatMap((i, k) => (k > c.vi && i.np && !i.np.stands && partLike(t.sheet, i.np.name) && !/\b(hours?|miles|weeks?|months?|days?)$/.test(i.np.said) ? [k] : []));
  if (nps.length < 2) return undefined;
  const out = nps.map((k, n) => { const items = c.items.slice(k, nps[n + 1] ?? c.items.length); return { part: c.items[k]!.np!.name, time: later(t, { ...c, items, from: items[0]!.from, to: items.at(-1)!.to }) }; });
  return out.every((x): x is { part: string; time: NonNullable<typeof x.time> } => x.time !== undefined) ? out : undefined;
}

/** "look at it again", "look over the seal". */
function partAfterAt(t: Telling, c: Clause): { name: string }[] | undefined {
  const k = c.items.findIndex((i, n) => n > c.vi && /^(at|over|on)$/.test(i.low) && (c.items[n + 1]?.np || c.items[n + 1]?.t === 'pron'));
  if (k < 0) return undefined;
  const np = c.items[k + 1]!.np;
  if (!np) return t.memory.topic() ? [t.memory.topic()!] : undefined;
  return np.stands ? (t.memory.sided(np.said, t.sheet) ? [{ name: t.memory.sided(np.said, t.sheet)! }] : undefined) : [{ name: np.name }];
}

/** When: running hours, miles, days on; a named day; "next month" is one month. */
export function later(t: Telling, c: Clause): { after: number; unit: string } | { due: string } | undefined {
  const text = lowText(t, c);
  const span = dims(c.items, 'span')[0] ?? anySpan(t, c);
  const day = t.sheet.found.find(f => f.dim === 'when' && f.from >= c.from && f.to <= c.to && f.value.from !== undefined && /\bweek (on )?(mon|tues|wednes|thurs|fri|satur|sun)day$/.test(t.sheet.tokens.slice(f.from, f.to).map(x => x.low).join(' '))); // "a week Friday"
  if (day?.dim === 'when') return { due: day.value.from! };
  const dist = t.sheet.found.find(f => f.dim === 'measure' && f.value.unit === 'mi' && f.from >= c.from && f.to <= c.to);
  if (dist?.dim === 'measure') return { after: dist.value.value, unit: 'miles' };
  const run = t.sheet.found.find(f => f.dim === 'measure' && f.value.unit === 'h' && f.from >= c.from && f.to <= c.to);
  const meter = c.items.find(i => i.np?.count !== undefined && /\b(hours|miles)$/.test(i.np.said) && i.np.said.split(' ').length <= 3); // "25 operating hours"
  if (meter) return { after: meter.np!.count!, unit: meter.np!.said.split(' ').at(-1)! };
  if (run?.dim === 'measure') return { after: run.value.value, unit: 'hours' };
  if (span) return afterSpan(span.value);
  if (/\bafter (the|its|her|his) first (hour|run hour)\b/.test(text)) return { after: 1, unit: 'hours' };
  const first = /\bafter (?:the |its |her |his )?first (?:day|week|month)\b/.exec(text);
  if (first) return { after: 1, unit: `${first[0].split(' ').at(-1)}s` };
  if (/\bnext month\b|\bin a month\b/.test(text)) return { after: 1, unit: 'months' };
  if (/\b(next|in a|a) week\b/.test(text) && !/\bweek (from|after)\b/.test(text)) return { after: 1, unit: 'weeks' };
  if (/\bfortnight\b/.test(text)) return { after: 2, unit: 'weeks' };
  const on = whenIn(t, c);
  return on ? { due: on } : undefined;
}

/** Where the day-finder took "in two weeks" as a day, the length of time that lies inside it. */
const anySpan = (t: Telling, c: Clause): Extract<Telling['sheet']['found'][number], { dim: 'span' }> | undefined =>
  t.sheet.found.find((f): f is Extract<typeof f, { dim: 'span' }> => f.dim === 'span' && f.from >= c.from && f.to <= c.to);

import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause, Thing } from '../../clauses/clause.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { verbForms } from '../../words/verbs.ts';
import { trim } from '../lib/fields.ts';
import { lowText, type Telling } from '../telling.ts';
import { table } from '../../words/table.ts';

/** Asking to be told in time, whatever the words. */
export const REMINDS = /\b(remind (me|us|him|her)|don't (let me |you )?forget|not (to )?forget|mustn't forget|don't let me forget|mind (and|to|you|me)|remember to|note to self|(put|pop|stick|write|get) (it|that|this|me)? ?(down )?in (the|my) (book|diary|calendar|log)|give (me|us) a (shout|nudge|prod|poke|kick|bell|reminder)|(set|make|put) (me )?(a|an) (reminder|alarm|note)|nudge me|prod me|shout me|jog my memory|flag (it|that|this) up)\b/;
/** Another look by its name: "due a retorque", "give it a second going over". */
const A_LOOK = /^(?:(?:another|second|third|further|good|quick|proper|final|fresh) )*(look|check|re-?check|re-?torque|nip|nip up|tweak|going over|go over|once[- ]over|inspection|inspect|grease|greasing|re-?grease|oil|drain|re-?tension|squint|peek|tighten|pull|clean|adjustment|adjust|service|eyeball|look-?see|look over|change|top up)$/;
/** "oil change", "belt check": the deed with what it is done to in front. */
const OF_WHAT = /^(.+) (change|check|retorque|grease|adjustment|inspection|service|top-up)$/;
const DEED: Record<string, string> = table({ 'going over': 'check', 'go over': 'check', 'once-over': 'check', 'once over': 'check', inspection: 'inspect', greasing: 'grease', squint: 'look', peek: 'look', eyeball: 'look', 'look over': 'look', 'nip up': 'nip', adjustment: 'adjust', service: 'service', 'top up': 'top' });
/** Verbs with a preposition that mean to look at it once more. */
const RETURNS = /^(come|go|get|circle|run|walk|work|look|see)$/;

/** What is to be done and to what, where no plain "check the nuts" says it; `LOOKS` are the verbs of looking. */
export function lookAhead(t: Telling, c: Clause, looks: RegExp): { do: string; parts: string[] } | undefined {
  const text = lowText(t), reminded = REMINDS.test(text);
  const back = returning(t, c);
  if (back) return back;
  const noun = c.items.findIndex(i => i.np && (A_LOOK.test(i.np.said) || OF_WHAT.test(i.np.said)));
  const wanted = noun >= 0 && (/\b(due|wants?|needs?|deserves?|needing|wanting|for|give|giving|have|take|another|second|get|gets|third)\b/.test(text));
  if (wanted && c.reality !== 'past plan' && !(c.verb?.form === 'past' && !c.passive && !reminded)) {
    const of = OF_WHAT.exec(c.items[noun]!.np!.said);
    if (of) return { do: of[2]!, parts: [of[1]!] };
    const said = A_LOOK.exec(c.items[noun]!.np!.said)![1]!;
    const tail = c.items.findIndex((i, k) => k > noun && /^(at|on|for|of|to|over|in)$/.test(i.low) && c.items[k + 1]?.np && named(t, c.items[k + 1]!.np!.name));
    const parts = tail > 0 ? [c.items[tail + 1]!.np!.name] : own(t, c.items.slice(0, noun).flatMap(i => (i.np && !i.np.stands ? [i.np.name] : []))) ?? own(t, c.subj.map(s => s.name)) ?? (/\b(it|them|that|those|her)\b/.test(text) || !c.items.slice(0, noun).some(i => i.np) && c.subj.every(s => s.carried) ? topic(t) : undefined);
    if (parts) return { do: plainDeed(DEED[said] ?? said), parts };
  }
  if (!reminded) return undefined;
  const k = c.items.findIndex(i => i.t === 'verb' && looks.test(i.base ?? '') && i !== c.items[0] && !/^(remind|forget|let|put|give|set|mind|go)$/.test(i.base ?? ''));
  const after = k >= 0 ? c.items.slice(k + 1).filter(i => i.np && named(t, i.np.name)).map(i => i.np!.name) : c.items.flatMap((i, n) => (i.low === 'about' && c.items[n + 1]?.np && named(t, c.items[n + 1]!.np!.name) ? [c.items[n + 1]!.np!.name] : []));
  if (k < 0 && !after.length) return undefined;
  const parts = after.length ? after.slice(0, 1) : topic(t);
  return parts ? { do: k >= 0 ? plainDeed(c.items[k]!.base!) : 'check', parts } : undefined;
}

/** "come back to those studs", "go round all the nuts again", "revisit the bolts". */
function returning(t: Telling, c: Clause): { do: string; parts: string[] } | undefined {
  const v = c.verb, text = lowText(t);
  if (!v || c.neg || v.form === 'past' && !c.passive && !/^(i|we)? ?(will|'ll)/.test(text) || v.form === 's') return undefined;
  const over = c.items.findIndex((i, k) => k > c.vi && /^(to|round|around|over|through|at)$/.test(i.low) && (c.items[k + 1]?.np !== undefined || c.items[k + 1]?.t === 'pron'));
  const led = RETURNS.test(v.base ?? '') && (/\b(come|get|go|circle|coming|going|getting) back to\b/.test(text) || /\b(round|around|over|through|looked at|seen to)\b/.test(text) && /\bagain\b|\bafter\b|\bat\b|\bonce\b|\bwhen\b/.test(text) && !/^(come|get)$/.test(v.base!));
  if (!led && v.base !== 'revisit' && v.base !== 'sight') return undefined;
  const k = over >= 0 ? c.items.findIndex((i, n) => n > over && (i.np !== undefined && !/^(first|second)$/.test(i.np.said) || i.t === 'pron' && !c.items[n + 1]?.np)) : -1;
  const np = k >= 0 ? c.items[k]!.np : undefined;
  const parts = np && named(t, np.name) ? [np.name] : own(t, [...c.obj, ...(c.passive ? c.subj : [])].map(o => o.name)) ?? (k >= 0 && !np ? topic(t) : undefined);
  const round = /^(go|run)$/.test(v.base ?? '') && /^(round|around|over)$/.test(c.items[over]?.low ?? '') ? `${v.base} ${c.items[over]!.low}` : 'check';
  return parts ? { do: v.base === 'look' ? 'look' : round, parts } : undefined;
}

const named = (t: Telling, name: string): boolean => (partLike(t.sheet, name) || / (level|pressure|gap|clearance|tension|play)s?$/.test(name)) && !A_LOOK.test(name) && !/\b(book|diary|calendar|log|reminder|shout|nudge|hours?|miles|time|days?|weeks?|months?|work|use|running)$/.test(name);
const own = (t: Telling, names: readonly string[]): string[] | undefined => { const kept = names.filter(n => named(t, n)); return kept.length ? kept : undefined; };
const topic = (t: Telling): string[] | undefined => { const x: Thing | undefined = t.memory.topic(); return x && named(t, x.name) ? [x.name] : undefined; };

/** "run it ten hours then change the oil": the time stands in the clause before. */
export function afterRun(t: Telling, later: (t: Telling, c: Clause) => { after: number; unit: string } | { due: string } | undefined): { after: number; unit: string } | { due: string } | undefined {
  const before = t.clauses[t.at - 1];
  if (!before || before.asks || t.clause.join !== 'then' && !/^then\b/.test(lowText(t)) || !/^(run|idle|drive|work|use|mow|bale|give)$/.test(before.verb?.base ?? '') || !verbForms(before.verb!.low).some(f => f.form === 'base')) return undefined;
  const time = later(t, before);
  return time && 'after' in time && /^(hours|miles)$/.test(time.unit) ? time : undefined;
}

export const recheckOf = (parts: readonly string[], act: string, time: object): Entry[] => parts.map(part => trim({ kind: 'recheck', part, do: act, ...time }) as Entry);

const plainDeed = (deed: string): string => deed.replace(/^re-?check$/, 'check').replace(/^re-/, 're').replace(/^see$/, 'check');

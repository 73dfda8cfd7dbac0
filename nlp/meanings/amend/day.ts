import { DateTime } from 'luxon';
import type { Entry } from '../../../domain/model/entry.ts';
import { dims, type Clause } from '../../clauses/clause.ts';
import { isClass } from '../../words/verbs.ts';
import { lowText, type Telling } from '../telling.ts';
import { isOld, ofAnother } from './contrast.ts';

/** The field in which an entry keeps its day. */
const DAY = { order: 'expected', out: 'until', wait: 'until', recheck: 'due', hands: 'when', weather: 'from' } as const;
const dayField = (e: Entry): (typeof DAY)[keyof typeof DAY] | undefined => DAY[e.kind as keyof typeof DAY];
const WEEKDAY = /^(?:the |on |by |this )*(?:mon|tues|wednes|thurs|fri|satur|sun)day$/;
/** What is no longer so: "won't be Monday", "can't do Sunday". */
const NO_MORE = /(?:\b(?:won't|can't|isn't|aren't|wasn't)|n't|wont|cant|cannot)(?: be| do| come| make| make it)?(?: the| on| this)?$/;
/** Words by which somebody gives a new day for what is awaited. */
const GIVES_DAY = /\b(says?|said|saying|promis\w+|reckons?|gave|moved|shunted|shifted|pushed|putten|put|now|till|until|instead|it'll be|it 'll be|will be|going to be|gonna be|call it|figure|should be|phoned|rang|rung|called|telephoned|make it|comes?)\b/;

/** The day that a clause gives instead of the one an earlier entry has, latest entry first: a day that is taken back is not it, and a weekday set against another, or of help that was promised, is the one nearest to the old day. */
export function newDay(t: Telling, c: Clause): { field: string; value: string; was?: string } | undefined {
  const e = [...t.prior].reverse().find(x => dayField(x));
  if (!e) return undefined;
  const field = dayField(e)!, was = (e as unknown as Record<string, string | undefined>)[field], today = t.sheet.ctx.at.slice(0, 10);
  const later = was !== undefined && /\b(later|more|another|behind)\b/.test(lowText(t, c)) ? dims(c.items, 'span').find(s => /^(days|weeks|months)$/.test(s.value.unit))?.value : undefined;
  if (later && !dims(c.items, 'when').length) return { field, value: DateTime.fromISO(was!).plus({ [later.unit]: later.amount }).toISODate()!, was: was! };
  const back = anyTakenBack(t, c);
  const days = t.sheet.found.flatMap(f => {
    if (f.dim !== 'when' || f.value.vague || f.from < c.from || f.to > c.to || takenBack(t, f.from)) return [];
    const day = f.value.to ?? f.value.from, said = t.sheet.tokens.slice(f.from, f.to).map(x => x.low).join(' ');
    return day ? [was && WEEKDAY.test(said) && (field === 'when' || back) ? nearest(day, was, today) : day] : [];
  });
  const value = days.findLast(d => d > today && d !== was);
  return value ? { field, value, ...(was ? { was } : {}) } : undefined;
}

function takenBack(t: Telling, at: number): boolean {
  return isOld(t, at) || NO_MORE.test(t.sheet.tokens.slice(Math.max(0, at - 4), at).map(x => x.low).join(' ').replace(/ (?='|n't)/g, ''));
}

const anyTakenBack = (t: Telling, c: Clause): boolean => t.sheet.found.some(f => f.dim === 'when' && f.from >= c.from && f.to <= c.to && takenBack(t, f.from));

/** Of the weekday's dates after today the one that lies nearest to the day given before. */
function nearest(day: string, was: string, today: string): string {
  const at = DateTime.fromISO(day), weeks = Math.round(DateTime.fromISO(was).diff(at, 'weeks').weeks);
  const value = at.plus({ weeks }).toISODate()!;
  return value > today ? value : day;
}

/** "the foundry said the nineteenth, not the ninth", "ram's not back, grinder says Thursday": another day for what is awaited or was arranged. */
export function movedDay(t: Telling): Entry[] | undefined {
  const c = t.clause, text = lowText(t), e = [...t.prior].reverse().find(x => dayField(x));
  if (!e || t.at > 4 || c.asks || /^(i|we)$/.test(c.who ?? '') && !/^(call|ring|phone)$/.test(c.verb?.base ?? '') || t.told.some(x => /^(arrival|order|out|amend)$/.test(x.entry.kind)) || ofAnother(t, c)) return undefined;
  if (/^(if|when|once|before|after|while)$/.test(c.sub ?? '') || c.verb && (isClass(c.verb.base ?? '', 'work') || isClass(c.verb.base ?? '', 'on') || isClass(c.verb.base ?? '', 'off')) && !/^(put|move|shift|push|make|hold|set|call|drop|bring)$/.test(c.verb.base ?? '')) return undefined;
  const contrast = anyTakenBack(t, c);
  const awaited = (e.kind === 'order' || e.kind === 'out') && GIVES_DAY.test(text);
  if (!contrast && !awaited) return undefined;
  const got = newDay(t, c);
  return got ? [{ kind: 'amend', field: got.field, value: got.value } as Entry] : undefined;
}

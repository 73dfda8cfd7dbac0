import type { WhatIfAnswer } from '../../domain/model/answer.ts';
import type { Saying, Spoken } from './spoken.ts';
import { day, listed } from './words.ts';

/** What a supposition would change, and that it is not kept. */
export function sayWhatIf(a: WhatIfAnswer, { at }: Saying): Spoken {
  const then = `If ${a.supposed}`;
  const frees = a.sooner.length ? ` Sooner then: ${listed(a.sooner.slice(0, 3))}.` : '';
  const holds = a.later.length ? ` Later then: ${listed(a.later.slice(0, 3))}.` : '';
  if (!a.after.p50 || !a.after.p80) return { say: `${then}: ${a.before.p50 ? 'then I can name no day.' : 'I can\'t say what that changes.'} ${a.why ?? ''}`.trim() };
  const driver = a.after.driver ? ` What decides it: ${a.after.driver}.` : '';
  if (a.before.p50 === a.after.p50 && a.before.p80 === a.after.p80)
    return { say: `${then}: it makes no difference to the end, as likely as not by ${day(a.after.p50, at)}, four in five by ${day(a.after.p80, at)}.${frees}${holds}${driver}` };
  const was = a.before.p50 && a.before.p80 ? ` instead of ${day(a.before.p50, at)} and ${day(a.before.p80, at)}` : ', where there was no day before';
  return { say: `${then}: as likely as not by ${day(a.after.p50, at)}, four in five by ${day(a.after.p80, at)}${was}.${frees}${holds}${driver} Nothing of that is logged.` };
}

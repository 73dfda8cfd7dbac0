import type { FinishAnswer } from '../../domain/model/answer.ts';
import type { Saying, Spoken } from './spoken.ts';
import { capital, day, the } from './words.ts';

/** Two dates, what decides them, and the chance of the day that was named; what was only assumed is said at once, the rest when more is asked for. */
export function sayFinish(a: FinishAnswer, { at }: Saying): Spoken {
  if (!a.p50 || !a.p80) return { say: `I can't tell when ${a.part ? the(a.part) : 'it'} will be done. ${a.why ?? ''}`.trim() };
  const chance = a.chance === null || !a.by ? '' : `${percent(a.chance)} by ${day(a.by, at)}. `;
  const dates = a.p50 === a.p80 ? `${day(a.p50, at)} as likely as not, and four in five too` : `as likely as not by ${day(a.p50, at)}, four in five by ${day(a.p80, at)}`;
  const driver = a.driver ? ` What decides it: ${a.driver}.` : '';
  const hours = /hours: ([^;]+?), assumed/.exec(a.why ?? '')?.[1];
  const assumed = hours ? ` Counting on ${hours}, as you never said your hours.` : '';
  return { say: `${chance}${a.part ? capital(a.part) : 'All of it'}: ${dates}.${driver}${assumed}`, longer: a.why };
}

/** A simulation of a thousand runs knows no certainty. */
const percent = (chance: number): string => (chance <= 0.005 ? 'Next to no chance' : chance >= 0.995 ? 'As good as certain' : `${Math.round(chance * 100)} % chance`);

import type { StateAnswer, ThingState } from '../../domain/model/answer.ts';
import { STATE, findingWords } from './entry.ts';
import type { Saying, Spoken } from './spoken.ts';
import { outWords } from './where.ts';
import { capital, day, listed, the } from './words.ts';

/** A line a thing; one alone is said outright. */
export function sayState({ part, things }: StateAnswer, saying: Saying): Spoken {
  if (!things.length) return { say: `You have said nothing about ${the(part)}.` };
  const lines = things.map(t => line(t, saying));
  return lines.length === 1 ? { say: `${lines[0]}.` } : { say: `${capital(part)}:`, list: lines };
}

function line(t: ThingState, saying: Saying): string {
  const { at } = saying;
  const { fit, finding, out } = t;
  const words = [
    fit && `${STATE[fit.state]}${fit.with ? `, ${fit.with}` : ''} since ${day(fit.since, at)}`,
    finding && `${findingWords(finding)} (${day(finding.since, at)})`,
    out ? outWords(out, saying) : t.where,
    t.begun.length ? `begun: ${listed(t.begun)}` : undefined,
    t.jobs.length ? `to do: ${listed(t.jobs)}` : undefined,
    ...t.supply.map(s => (s.status === 'needed' ? 'to get' : s.status === 'late' ? `late, due ${day(s.expected!, at)}` : `ordered${s.expected ? `, due ${day(s.expected, at)}` : ''}`)),
    t.rechecks.length ? `look again: ${listed(t.rechecks)}` : undefined,
  ];
  return `${capital(t.part)}: ${words.filter(w => w !== undefined).join('; ')}`;
}

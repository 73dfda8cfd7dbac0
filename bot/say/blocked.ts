import type { BlockedAnswer, Cause } from '../../domain/model/answer.ts';
import type { Saying, Spoken } from './spoken.ts';
import { capital, day, listed, stop, the } from './words.ts';

/** What one cause is, in the words of the shop. */
export function causeLine(c: Cause, { at }: Saying): string {
  const on = c.clears && `${c.guessed ? 'perhaps ' : ''}${day(c.clears, at)}`;
  const by = on ? `, ${on}` : '';
  switch (c.cause) {
    case 'not bought': return `${c.what} not bought yet`;
    case 'on order': return `${c.what} on order${by}`;
    case 'late': return `${c.what} is late`;
    case 'out': return `${c.what} is out for work${on ? `, back ${on}` : ''}`;
    case 'temporary': return `${c.what} is only on for now`;
    case 'rule': return `${c.what} comes first`;
    case 'wait': return `${c.what} is left alone until ${on ?? 'it is ready'}`;
    case 'recheck': return `${c.what} is due to be looked at again`;
    case 'help': return `needs help: ${c.what}${by}`;
    case 'weather': return `weather: ${c.what}${by}`;
    case 'not done': return `${c.what} not done`;
  }
}

/** The acts at the ends of the tree, each once, in the order they come. */
function acts(causes: readonly Cause[]): string[] {
  const ends = causes.flatMap(c => (c.causes.length ? acts(c.causes) : c.act ? [c.act] : []));
  return [...new Set(ends)];
}

/** With the earliest day of each, where its words don't name one already. */
function tree(causes: readonly Cause[], saying: Saying, depth = 0): string[] {
  return causes.flatMap(c => {
    const line = `${capital(causeLine(c, saying))}${c.act && !c.causes.length ? `: ${c.act}` : ''}`;
    const clears = c.clears && !line.includes(day(c.clears, saying.at)) ? ` (${day(c.clears, saying.at)} at the earliest)` : '';
    return [`${'  '.repeat(depth)}${line}${clears}`, ...tree(c.causes, saying, depth + 1)];
  });
}

/** The day on which all of it can be clear, where every cause has one. */
function clearBy(causes: readonly Cause[], { at }: Saying): string {
  const days = causes.map(c => c.clears);
  const last = days.includes(undefined) ? undefined : days.sort().at(-1);
  return last && last > at.slice(0, 10) ? ` Clear ${day(last, at)} at the earliest.` : '';
}

export function sayBlocked(a: BlockedAnswer, saying: Saying): Spoken {
  if (a.clear === null) return { say: a.part ? `I have nothing about ${the(a.part)} yet.` : 'Nothing is said to be in the way.' };
  const curing = a.curing?.map(c => `the ${c.coat} on it usually has to ${c.lag} until ${day(c.until, saying.at)}: ${c.hours} hours at about 20 °C (common practice, no source; its sheet decides)`) ?? [];
  const usual = [...curing, ...(a.usual?.map(u => `usually ${u.first} first: ${u.why} (${u.source})`) ?? [])];
  if (a.clear) return usual.length ? { say: `Nothing you said holds up ${the(a.part)}, but ${stop(usual[0]!)}`, longer: usual.map(capital).join('\n') } : { say: `Nothing holds up ${the(a.part)}.` };
  const first = listed(a.causes.slice(0, 3).map(c => causeLine(c, saying)));
  // The part itself goes on for good only when the rest is cleared.
  const todo = acts(a.causes.length > 1 ? a.causes.filter(c => c.cause !== 'temporary' || c.what !== a.part) : a.causes);
  const more = a.causes.length > 3 ? `, and ${a.causes.length - 3} more` : '';
  return {
    say: `${capital(a.part)} waits: ${stop(first + more)}${todo.length ? ` You can ${stop(listed(todo.slice(0, 2), 'or'))}` : ''}${clearBy(a.causes, saying)}`,
    longer: [...tree(a.causes, saying), ...usual.map(capital)].join('\n'),
  };
}

import type { More } from '../../domain/answers/given.ts';
import { ASSUMED_HOURS, type PlanSettings } from '../../domain/plan/from-shop/settings.ts';
import { whatIf } from '../../domain/answers/what-if.ts';
import { sayAnswer } from '../say/answer.ts';
import { compose } from '../say/reply.ts';
import { readContext } from '../turn/context.ts';
import { readSafely } from '../turn/read-safely.ts';
import type { Turn, TurnOut } from '../turn/types.ts';
import { factsFor } from './facts.ts';
import { supposedBy } from './supposed.ts';

/** Words that may begin a supposition; anything else is read as a note at once. */
const MAY_SUPPOSE = /\b(?:what (?:\w+ )?(?:\w+ )?if|suppos(?:e|ing)|say|imagine|assum(?:e|ing)|if)\b/i;

/**
 * "What if the coupling comes Friday": answered, and nothing of it kept but the words. A sum's "what if I go to ten gauge" stays a sum.
 * Undefined: no supposition about the shop.
 */
export function supposed(turn: Turn): TurnOut | undefined {
  const { incoming: { at, text }, deps, note, machine } = turn;
  if (!MAY_SUPPOSE.test(text) || text.length > 300) return undefined;
  const ctx = readContext(deps.log, turn.incoming, machine, note.id);
  // A sum with nothing given is no sum: "the paint" alone asks for no litres.
  if (readSafely(text, ctx, deps).asks.some(a => a.kind === 'sum' && Object.keys(a.given).length > 0)) return undefined;
  const facts = factsFor(deps, at, machine);
  const found = supposedBy(text, ctx, words => readSafely(words, { ...ctx, prior: [] }, deps), hoursNow(facts));
  if (!found) return undefined;
  if (deps.handsOut?.({ kind: 'finish' }))
    return { reply: { ...compose({ note: note.id, at, lines: ['Working it out…'] }), later: [{ kind: 'whatIf', words: found.words, supposed: found.supposed, machine }] } };
  const answer = whatIf(deps.log.shop, found.supposed, found.words, { at, zone: deps.zone }, facts);
  return { reply: { ...compose({ note: note.id, at, lines: [sayAnswer(answer, { at }).say] }), answers: [answer] } };
}

const hoursNow = ({ planning }: More): { weekly: { weekday: number; from: string; to: string }[]; exceptions: { date: string; stretches: { from: string; to: string }[] }[] } => {
  const hours: NonNullable<PlanSettings['hours']> = planning?.hours ?? { weekly: ASSUMED_HOURS, exceptions: [] };
  return { weekly: [...hours.weekly], exceptions: hours.exceptions.map(e => ({ date: e.date, stretches: [...e.stretches] })) };
};

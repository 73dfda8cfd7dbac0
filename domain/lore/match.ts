import { rememberedBy } from '../model/remembered.ts';
import { act, actKey, actOf, type Act } from './act.ts';
import { orderRules } from './order/all.ts';
import type { OrderRule } from './order/rule.ts';
import { isKindOf, isSide, sidesAgree } from './words.ts';

/** A rule that says something about an act, and on which side of it the act stands. */
interface Match { rule: OrderRule; side: 'first' | 'then' }

const read = orderRules.map((rule) => ({ rule, first: actOf(rule.first), then: actOf(rule.then) }));

/** Whether an act that was said is what a rule's phrase means. */
export function isMeant(said: Act, rule: Act): boolean {
  if (said.verb !== rule.verb || Boolean(said.off) !== Boolean(rule.off)) return false;
  if (rule.words[0] === '*') return said.words.length > 0;
  // A rule about front wheels says nothing of a wheel of which the side is not known.
  return isKindOf(said.words, rule.words) || isKindOf(withoutSides(said, rule), rule.words);
}

/** `front left wheel` is a front wheel too: sides that the rule does not name are left out. */
function withoutSides(said: Act, rule: Act): string[] {
  return said.words.filter((word) => !isSide(word) || rule.words.includes(word));
}

/** The rules that apply to an act, given as a phrase (`bleed the brakes`, `left front wheel`) or as verb and part. */
export function rulesFor(said: string | { do?: string; part: string; off?: boolean }): Match[] {
  const one = typeof said === 'string' ? actOf(said) : act(said.do, said.part, said.off);
  return read.flatMap(({ rule, first, then }) => {
    const sides: Match[] = [];
    if (isMeant(one, first)) sides.push({ rule, side: 'first' });
    if (isMeant(one, then)) sides.push({ rule, side: 'then' });
    return sides;
  });
}

/** An act of the shop, under its id. */
interface ShopAct { id: string; act: Act }

/** Two acts of the shop that a rule puts in order. */
export interface Proposal { rule: OrderRule; first: string; then: string }

/** Which rules an act stands in, by their place in the list, on either side; the same acts come at every turn. */
const places = rememberedBy(actKey, (one: Act) => ({
  first: read.flatMap(({ first }, i) => (isMeant(one, first) ? [i] : [])),
  then: read.flatMap(({ then }, i) => (isMeant(one, then) ? [i] : [])),
}));

/** What the usual order says of the acts there are: every pair that a rule names, on sides that go together. */
export function proposals(acts: readonly ShopAct[]): Proposal[] {
  const firsts: ShopAct[][] = read.map(() => []);
  const thens: ShopAct[][] = read.map(() => []);
  for (const one of acts) {
    const { first, then } = places(one.act);
    for (const i of first) firsts[i]!.push(one);
    for (const i of then) thens[i]!.push(one);
  }
  return read.flatMap(({ rule, first }, i) =>
    firsts[i]!.flatMap((a) => thens[i]!.filter((b) => a.id !== b.id && goTogether(a.act, b.act, first)).map((b) => ({ rule, first: a.id, then: b.id }))));
}

function goTogether(a: Act, b: Act, first: Act): boolean {
  if (first.words[0] === '*') return a.words.join(' ') === b.words.join(' ');
  return sidesAgree(a.words, b.words);
}

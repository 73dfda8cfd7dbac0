import { act, actOf, type Act } from '../lore/act.ts';
import { isMeant, rulesFor } from '../lore/match.ts';
import type { OrderRule } from '../lore/order/rule.ts';
import { sidesAgree } from '../lore/words.ts';
import type { Machine, Thing } from '../log/shop.ts';
import { sameWork } from '../log/verbs.ts';
import type { Ref } from '../model/stored.ts';

/** A usual order that a part going on now goes against: the act of this shop that comes first, in words, and the rule. */
interface AgainstUsual { first: string; act: Ref; rule: OrderRule }

/**
 * What the usual order of assembly has before a part that goes on, and that this shop is known not to have done: a part that is off,
 * tried or temporary, a work that is still a job. Of what nobody spoke, nothing is said; and the person's own opposite rule wins.
 */
export function againstUsual(machine: Machine, part: Thing | Ref, refused: ReadonlySet<string>): AgainstUsual[] {
  const going = act(undefined, part.name);
  const rules = rulesFor({ part: part.name }).filter(m => m.side === 'then' && !refused.has(m.rule.id)).map(m => m.rule);
  return rules.flatMap(rule => {
    const first = actOf(rule.first);
    return [...machine.things.values()].filter(t => t.key && t.key !== part.key && agree(first, t, going) && isOpen(t, first) && !saidOpposite(machine, part.key, t.key))
      .map(t => ({ first: inWords(first, t), act: actRef(first, t), rule }));
  });
}

/** Whether a thing is what a rule has first, on a side that goes with the part. A rule about any part is about the same one. */
function agree(first: Act, thing: Thing, going: Act): boolean {
  const own = act(first.verb, thing.name, first.off);
  return isMeant(own, first) && (first.words[0] === '*' ? own.words.join(' ') === going.words.join(' ') : sidesAgree(own.words, going.words));
}

function isOpen(thing: Thing, first: Act): boolean {
  const { state } = thing.fit ?? {};
  if (first.off) return state === 'on' || state === 'tight';
  if (first.verb) return thing.jobs.some(j => sameWork(j.do, first.verb!));
  return state === 'off' || state === 'tried' || state === 'temporary';
}

const saidOpposite = (machine: Machine, part: string, other: string): boolean => machine.rules.some(r => r.first.key === part && r.then.key === other);
const inWords = (first: Act, t: Thing): string => first.verb ? `${first.verb} the ${t.name}` : first.off ? `${t.name} off` : t.name;
const actRef = (first: Act, t: Thing): Ref => ({ key: t.key, name: t.name, ...(first.verb ? { verb: first.verb } : {}), ...(first.off ? { off: true } : {}) });

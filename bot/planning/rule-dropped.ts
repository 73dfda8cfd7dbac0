import { hereOf } from '../../domain/answers/find.ts';
import { phraseOf, readPhrase } from '../../domain/log/phrase.ts';
import type { Machine, RuleSaid } from '../../domain/log/shop.ts';
import type { Ref } from '../../domain/model/stored.ts';
import { planOf } from '../../domain/plan/from-shop/plan-of.ts';
import { compose } from '../say/reply.ts';
import type { Recorded, Turn, TurnOut } from '../turn/types.ts';
import { planSettings, refusedOrders, refuseOrders } from './settings.ts';

/** "It doesn't go on before the fan" puts the fan first; only what has not to be so drops an order. */
const NEEDNT = String.raw`(?:(?:does|do)(?:n't| not) (?:actually |really )?(?:have to|need(?: to)?)|needn't|need not|no longer (?:has|have|needs?) to)`;
const GOES = String.raw`(?:(?:to|have|has|need|needs|go|be|come|get|on|in|off|done|fitted|back|first|actually|really) )*`;
/** Groups: what need not come first, and what it need not come before. */
const NO_ORDER = [
  new RegExp(String.raw`^(?:the |my )?(.+?) ${NEEDNT} ${GOES}(?:before|ahead of) (.+)$`, 'i'),
  new RegExp(String.raw`^(?:there(?:'s| is) )?no need (?:to|for)(?: (?:wait for|have|do|fit|put|get))? (.+?) ${GOES}(?:before|ahead of) (.+)$`, 'i'),
  new RegExp(String.raw`^(?:i|we|you) ${NEEDNT} (?:(?:have|fit|do|put|get|wait for) )?(.+?) ${GOES}(?:before|ahead of) (.+)$`, 'i'),
];
const FORGET = /^(?:forget|drop|strike|scratch|cancel|remove|ignore|delete|take (?:out|back)) (?:the|that|my) (?:rule|order(?=.* before ))(?: (?:about|that says|that|of|with|on|for|putting))? (.+)$/i;

/** An order that is said not to hold: of two works, or any with one of them in it. Undefined: nothing of the kind. */
export function readDropped(text: string): { first: string; then: string } | { about: string } | undefined {
  const said = text.trim().replace(/[’‘]/g, "'").replace(/[.!\s]+$/, '').replace(/,? (?:after all|any ?more|now|then)$/i, '').replace(/^(?:no,|(?:actually|ok(?:ay)?|well|right|so),?) /i, '');
  if (/\?$/.test(said) || said.split(/\s+/).length > 20) return undefined;
  const about = FORGET.exec(said)?.[1];
  const pair = (about ?? '').split(/ before /i);
  if (about !== undefined) return pair.length === 2 ? { first: bare(pair[0]!), then: bare(pair[1]!) } : { about: bare(about) };
  const m = NO_ORDER.map(re => re.exec(said)).find(found => found !== null);
  return m ? { first: bare(m[1]!), then: bare(m[2]!) } : undefined;
}
const bare = (phrase: string): string => phrase.replace(/^(?:the|my|a|an) /i, '').replace(/ (?:goes|is|comes|gets|can go) (?:on|in|back|fitted|done)$/i, '').replace(/ (?:on|in|back)$/i, '').trim();

/**
 * "The pump doesn't have to go on before the radiator": the person's own order is struck, one of the trade's stays turned down.
 * Undefined: not these words, or nothing known is spoken of.
 */
export function ruleDropped(turn: Turn, recorded: Recorded): TurnOut | undefined {
  const dropped = readDropped(turn.incoming.text);
  const { deps, note, incoming: { at }, machine: current } = turn;
  const machine = dropped && hereOf(deps.log.shop, current);
  if (!machine) return undefined;
  const own = machine.rules.filter(rule => isMeant(dropped, rule, machine));
  if (own.length) {
    const out = recorded(turn, own.map(rule => ({ kind: 'amend' as const, undo: true, of: rule.id })), note, {});
    return { ...out, reply: { ...out.reply, say: `Struck: ${own.map(r => `${r.firstSaid} before ${r.thenSaid}`).join('; ')}.` } };
  }
  const plan = planOf({ machines: [machine], shop: deps.log.shop, now: { at, zone: deps.zone }, settings: planSettings(deps, at) });
  const refused = refusedOrders(deps.log);
  const usual = plan.usual.filter(u => !refused.has(u.rule.id)).flatMap(u => {
    const [first, then] = [plan.acts.get(u.first)?.ref, plan.acts.get(u.then)?.ref];
    return first && then && isMeant(dropped, { first, then }, machine) ? [{ id: u.rule.id, words: `${phraseOf(first)} before ${phraseOf(then)}` }] : [];
  });
  if (!usual.length) return 'then' in dropped && machine.things.has(readPhrase(machine, dropped.then).key) ? { reply: compose({ note: note.id, at, lines: [`I hold no order that puts the ${dropped.first} before the ${dropped.then}.`] }) } : undefined;
  refuseOrders(deps.log, usual.map(u => u.id));
  return { reply: compose({ note: note.id, at, lines: [`Right, ${usual.map(u => u.words).join('; ')} doesn't count here; I won't bring it up again.`] }) };
}

function isMeant(dropped: NonNullable<ReturnType<typeof readDropped>>, { first, then }: Pick<RuleSaid, 'first' | 'then'>, machine: Machine): boolean {
  const is = (ref: Ref, said: string): boolean => { const meant = readPhrase(machine, said); return meant.key === ref.key && (meant.verb === undefined || meant.verb === ref.verb); };
  return 'about' in dropped ? is(first, dropped.about) || is(then, dropped.about) : is(first, dropped.first) && is(then, dropped.then);
}

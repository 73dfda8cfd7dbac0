import type { Ask } from '../../domain/model/ask.ts';
import type { ListOf } from '../../domain/model/answer.ts';
import { list } from '../../domain/answers/list.ts';
import { state } from '../../domain/answers/state.ts';
import { week } from '../../domain/answers/basis.ts';
import { ASSUMED_HOURS } from '../../domain/plan/from-shop/settings.ts';
import { sayAnswer } from '../say/answer.ts';
import { compose } from '../say/reply.ts';
import { paged } from '../turn/pages.ts';
import type { Recorded, Turn, TurnOut } from '../turn/types.ts';
import { factsFor } from './facts.ts';
import { planSettings } from './settings.ts';

const LEAD = String.raw`^(?:(?:and|so|ok(?:ay)?|but|right|well|hey|please|tell me|show me|remind me|list|read me)[, ]+)*`;
const WHAT = String.raw`(?:what(?:'s| is| are)?|which (?:parts?|bits?|things?)(?: are| is)?|anything|is anything|have i (?:got )?anything|what (?:have|do) i (?:have|got)|everything|all(?: that's| that is)?)`;
const ASKS: readonly (readonly [RegExp, ListOf])[] = [
  [new RegExp(String.raw`${LEAD}${WHAT}(?: still| currently)? (?:out|away|gone|sent (?:out|away|off))(?: (?:for work|of the shop|at (?:the )?\w+(?: shop)?s?|being (?:done|worked on)|now|still|at the moment))*$`, 'i'), 'out'],
  [new RegExp(String.raw`${LEAD}(?:what(?:'s| is)|which parts are|anything) (?:due back|coming back|(?:still )?at the (?:machinist|machine shop|foundry|chromer|plater|blaster|welder|radiator shop|magneto man)(?:'s)?)$`, 'i'), 'out'],
  [new RegExp(String.raw`${LEAD}(?:what(?:'s| is)|which parts are|anything|is anything) (?:still )?(?:curing|drying|setting|wet|tacky|cooling)(?: now| still)?$`, 'i'), 'curing'],
  [new RegExp(String.raw`${LEAD}what (?:do i (?:have|need) to|must i|should i|can't i|mustn't i) (?:leave alone|leave be|not touch|touch|keep (?:off|my hands off))(?: yet)?$`, 'i'), 'curing'],
  [new RegExp(String.raw`${LEAD}(?:how (?:long|soon)|when)(?: (?:till|until|before|can|do|will|must|should|to|have|i|we|it|is|the|wait|a|be|ready|for|next|safe|ok|put|lay|give))* (?:re-?coat(?:ed|ing)?|over-?coat(?:ed)?|second coat|(?:next|another) coat|coat|top ?coat|(?:fully )?(?:cured|dry|set)|be touched|be handled)(?: (?:it|the|that|this|on|over|for|primer|paint|undercoat|filler|sealer|enamel|of|first coat))*$`, 'i'), 'curing'],
  [new RegExp(String.raw`${LEAD}(?:what (?:rules?|orders? of (?:work|assembly))(?: (?:do i have|have i(?: got)?|did i (?:say|set|make|give)|are there|hold))|(?:the |my |all (?:the |my )?|what are (?:the |my ))rules?)$`, 'i'), 'rules'],
  [new RegExp(String.raw`${LEAD}(?:what|which jobs?|anything|is there anything)(?: (?:that|do i|will i|is there))* (?:needs?|takes?|wants?|for)(?: a)? (?:two(?: people| of us| men| pairs of hands)?|second (?:pair of hands|person|man)|help(?:er)?|hoist|crane|lift)(?: for)?$`, 'i'), 'hands'],
];
const HOURS = new RegExp(String.raw`${LEAD}(?:when do (?:i|you think i) work|what(?:'s| are| is) my (?:shop )?(?:hours|week|shop time)|(?:what|which|how many) hours (?:do you (?:think|have|count on|plan (?:with|on)|know)|do i (?:work|have|put in))(?: (?:i (?:work|have)|me down for|a week|for me|for))*)$`, 'i');
const DRIVER = new RegExp(String.raw`${LEAD}(?:what(?:'s| is)? (?:driving|decides?|deciding|setting|sets|drives|holding back|holds back) (?:the )?(?:finish|end|end date|date|finish date|job|whole (?:thing|job))|what(?:'s| is) (?:on )?the critical path|the critical path|what(?:'s| is) the (?:long pole|bottleneck))$`, 'i');
const OF = String.raw`(?:of|with|on|about)`;
const STANDS = [
  new RegExp(String.raw`${LEAD}(?:how(?:'s| is| are) (?:the|my)|(?:what(?:'s| is) )?(?:the )?(?:state|status|condition|story|latest|news) ${OF} (?:the|my)|where are we ${OF} (?:the|my)|where do (?:we|things) stand ${OF} (?:the|my)|how do(?:es)? the|about the) (.+?)(?: (?:stand|standing|doing|looking|coming (?:on|along)|getting on|now|at the moment|these days))*$`, 'i'),
  new RegExp(String.raw`${LEAD}(?:what(?:'s| is)?|anything)(?: (?:still|left|there))* (?:needs? doing|to do|needs? done|to be done|left to do|wants doing|wrong) (?:on|to|with|about) (?:the|my) (.+)$`, 'i'),
];
const HOLDER = new RegExp(String.raw`${LEAD}who(?:'s| has| have)?(?: got)? (?:the|my) (.+)$`, 'i');

/** What of the shop a question wants listed, or the plain question that it stands for. Undefined: something else is asked. */
export function readList(text: string): ListOf | 'hours' | Ask | { state: string } | undefined {
  const said = text.trim().replace(/[’‘]/g, "'").replace(/[?.!\s]+$/, '');
  if (said.split(/\s+/).length > 12) return undefined;
  const found = ASKS.find(([re]) => re.test(said))?.[1];
  if (found) return found;
  if (HOURS.test(said)) return 'hours';
  if (DRIVER.test(said)) return { kind: 'finish' };
  const stands = STANDS.map(re => re.exec(said)?.[1]).find(part => part !== undefined);
  if (stands && !/\b(?:weather|forecast|money|plan|was|were|held|fixed|set|job|work|list)\b/.test(stands)) return { state: stands.toLowerCase() };
  const held = HOLDER.exec(said)?.[1];
  return held && /^(?:\w+)(?: \w+){0,3}$/.test(held) && !/\b(?:at|for|cheapest|best|price|to)\b/.test(held) ? { kind: 'where', part: held.toLowerCase() } : undefined;
}

/** Answers it. Undefined: not asked. */
export function listAsked(turn: Turn, recorded: Recorded): TurnOut | undefined {
  const { incoming: { at, text }, deps, note, machine } = turn;
  const asked = readList(text);
  if (!asked) return undefined;
  if (typeof asked === 'object' && 'kind' in asked) return recorded(turn, [], note, { asks: [asked] });
  if (asked === 'hours') {
    const { hours, hoursFrom } = planSettings(deps, at);
    const from = hoursFrom === 'said' ? 'as you said' : hoursFrom === 'learned' ? 'as your notes show' : 'assumed, as you never said';
    return { reply: compose({ note: note.id, at, lines: [`I plan with ${week(hours?.weekly ?? ASSUMED_HOURS)}, ${from}. Say your hours to change them.`] }) };
  }
  const now = { at, zone: deps.zone }, facts = factsFor(deps, at, machine);
  const answer = typeof asked === 'object' ? state(deps.log.shop, asked.state, now, facts) : list(deps.log.shop, asked, now, facts);
  const { say, page, buttons } = paged(sayAnswer(answer, { at }));
  return { reply: { ...compose({ note: note.id, at, lines: [say] }), answers: [answer], buttons }, page };
}

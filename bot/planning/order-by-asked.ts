import { orderBy } from '../../domain/answers/order-by.ts';
import { sayAnswer } from '../say/answer.ts';
import { compose } from '../say/reply.ts';
import type { Turn, TurnOut } from '../turn/types.ts';
import { factsFor } from './facts.ts';

const ORDER = String.raw`(?:order(?:ed|ing)?|buy(?:ing)?|get(?:ting)? (?=.*\bby when\b)|send (?:off |away )?for)`;
const LEAD = String.raw`^(?:(?:and|so|ok(?:ay)?|but|right|well|hey|tell me|do you know)[, ]+)*`;
const MUST = String.raw`(?:do|does|should|must|shall|can|would|have|has|need|ought|latest|is|will|the|last|day|date|time|soon|i|we|it|to|be|that|at|still|best)`;
const ASKS = [
  new RegExp(String.raw`${LEAD}(?:(?:by|until|till) )?(?:when|what (?:day|date))(?:'s|'ll)?(?: ${MUST})*? ${ORDER}(?: (.+?))?(?: by)?$`, 'i'),
  new RegExp(String.raw`${LEAD}(?:what|which(?: things| parts| of them)?|how soon)(?: ${MUST})* ${ORDER}(?: (?!and by )(.+?))?,?(?: and)? by when$`, 'i'),
  new RegExp(String.raw`${LEAD}(?:what's |what is )?(?:the )?(?:latest|last day)(?: ${MUST})* ${ORDER}(?: (.+?))?$`, 'i'),
  new RegExp(String.raw`${LEAD}how (?:long|soon|late|much longer) (?:can|could|must|should|do) (?:i|we) (?:have to )?(?:(?:leave|wait|put off|hold off)(?: with| on| to)? )?${ORDER}(?: (.+?))?$`, 'i'),
  new RegExp(String.raw`${LEAD}(?:what are )?(?:the |my )?order[- ]by (?:dates?|days?)(?: (?:of|for) (.+?))?$`, 'i'),
];
const ALL = /^(?:what|it|them|things|stuff|everything|parts|the (?:parts|rest|stuff|things)|what i need|all (?:of )?(?:it|that|them))$/i;

/** "When do I have to order the belt", "what do I have to order by when". Null: all that is wanted; undefined: something else is asked. */
export function readOrderBy(text: string): { item: string | null } | undefined {
  const said = text.trim().replace(/[’‘]/g, "'").replace(/[?.!\s]+$/, '');
  if (said.split(/\s+/).length > 16 || /\b(?:did|was|were)\b/i.test(said)) return undefined;
  const m = ASKS.map(re => re.exec(said)).find(found => found !== null);
  // "When I order the belt I will…" tells.
  if (!m || /\b(?:i|we|you|will|is|are|have|then)\b/i.test(m[1] ?? '') || /^when (?:i|we) \w+/i.test(said)) return undefined;
  const item = m[1]?.replace(/^(?:the|my|a|an|some|those|these|that|new|another) /i, '').replace(/ (?:at the latest|by)$/i, '').trim();
  return { item: !item || ALL.test(m[1]!) ? null : item };
}

/** By when what is wanted has to be ordered, so that the end stays where it is; handed out where simulations are. Undefined: not asked. */
export function orderByAsked(turn: Turn): TurnOut | undefined {
  const { incoming: { at, text }, deps, note, machine } = turn;
  const asked = readOrderBy(text);
  if (!asked) return undefined;
  const item = asked.item ?? undefined;
  if (deps.handsOut?.({ kind: 'finish' })) return { reply: { ...compose({ note: note.id, at, lines: ['Working it out…'] }), later: [{ kind: 'orderBy', ...(item ? { item } : {}), machine }] } };
  const answer = orderBy(deps.log.shop, item, { at, zone: deps.zone }, factsFor(deps, at, machine));
  return { reply: { ...compose({ note: note.id, at, lines: [sayAnswer(answer, { at }).say] }), answers: [answer] } };
}

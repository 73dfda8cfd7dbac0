import type { Ask } from '../../domain/model/ask.ts';

const PLEASE = String.raw`^(?:(?:please|can you|could you|now|and|ok(?:ay)?)[, ]+)*`;
const SHEET = String.raw`(?:picture|drawing|sketch|chart|graph|diagram|plot)`;
/** "Show me" alone asks for words, but for what is only ever a sheet. */
const DRAW = new RegExp(String.raw`${PLEASE}(?:(?:(?:show|give|make|let me see)(?: me| us)? )?(?:a |the )?${SHEET}(?: of| for| showing)|(?:draw|sketch|chart|graph|plot)(?: me| us| out)?|show me(?= .+ as a ${SHEET}))(?: (?:a|the) ${SHEET} (?:of|for))? (.+?)(?: as a ${SHEET})?(?: please)?$`, 'i');
const SHOWN = new RegExp(String.raw`${PLEASE}show (?:me |us )?((?:the |my )?(?:weeks|months|days) (?:ahead|to come|that are left)|(?:the )?(?:calendar|timeline|time line))(?: please)?$`, 'i');

const HOLDS = /^(?:what(?:'s| is| has| keeps)?|whatever is|the things|everything(?: that is| that's)?|all that(?: is|'s)?) ?(?:holding (?:up|back)|holds (?:up|back)|hold (?:up|back)|blocking|blocks|in the way of|stopping|keeping|between me and|before|in front of) (?:the |my )?(.+)$/i;
const WAITS = /^(?:what|why) (?:the |my )?(.+?) (?:waits?|is waiting|hangs|is held up)(?: for| on)?(?: what)?$/i;
const WEEKS = /^(?:the |my |our )?(?:weeks?|months?|days?|plan|schedule|calendar|time ?line|work|programme)(?: (?:ahead|to come|that are left|left|of work|plan))*$/i;
const MONEY = /^(?:the |my )?(?:money|spending|spend|costs?|outlay|bills?|what (?:i've|i have) (?:spent|paid)|what (?:it|she) (?:has )?cost)(?: (?:so far|over time|on it|spent|to date|and (?:the )?hours))*$/i;
const HOURS = /^(?:the |my )?(?:hours?|time)(?: (?:so far|over time|spent|worked|put in|i've put in|i have put in|on it|to date|and (?:the )?money))*$/i;

/** What a request for a drawing names: what holds up a part (`holdsUp`, as said), the weeks ahead, money or hours. Undefined: no such request. */
export function askToDraw(text: string): Ask | { holdsUp: string } | undefined {
  const said = text.trim().replace(/[’‘]/g, "'").replace(/[?.!\s]+$/, '');
  const what = (SHOWN.exec(said) ?? DRAW.exec(said))?.[1];
  if (what === undefined) return undefined;
  const held = (HOLDS.exec(what) ?? WAITS.exec(what))?.[1];
  if (held) return { holdsUp: held };
  if (WEEKS.test(what)) return { kind: 'finish' };
  if (MONEY.test(what)) return { kind: 'spent' };
  return HOURS.test(what) ? { kind: 'timeSpent' } : undefined;
}

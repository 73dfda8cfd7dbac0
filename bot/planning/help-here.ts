import { DateTime } from 'luxon';
import type { Entry } from '../../domain/model/entry.ts';
import { dayOf } from '../../domain/log/days.ts';
import type { Shop } from '../../domain/log/shop.ts';
import { promised } from '../../domain/plan/from-shop/help.ts';
import { CLOCK, clockTime } from '../../nlp/settings/clock-time.ts';
import { PERSONS } from '../../nlp/words/persons.ts';
import type { ReadAndRecord, Recorded, Turn, TurnOut } from '../turn/types.ts';

const WHO = String.raw`(?:my |the |our |an? )?(?<who>[a-z'-]+(?: [a-z'-]+){0,3}?)`;
const SPAN = String.raw`(?<n>an|a|one|two|three|four|five|six|\d{1,2}|half an|a couple of)(?<half> and a half)? (?<unit>hours?|minutes?|mins?)`;
const TAIL = String.raw`(?<tail>(?:[, ]+(?:here|over|now|right now|today|already|again|this (?:morning|afternoon|evening)|too|with (?:me|us)|in the (?:shop|shed|barn|garage)|(?:till|until|til|up to) (?<until>${CLOCK}|dark|tonight|this evening|lunch(?:time)?|supper|dinner|tea(?:time)?)(?: tonight| today| this (?:morning|afternoon|evening))?|for (?:about |maybe |only |just |around )?(?:${SPAN}|a bit|a while|the (?:day|morning|afternoon|evening)|now)|(?:to|and can|who can) (?:help|lend (?:me )?a hand|give (?:me )?a hand|muck in)(?: me| us| out)*|helping(?: me| us| out)*|(?:with|for|on) the (?<with>[a-z][a-z -]*?)(?=$|[, ]+(?:till|until|til|for|now|today)\b)))*)`;
const start = String.raw`^(?:(?:and|so|ok(?:ay)?|right|now|well|hey|oh|today) ?,? )*`;

const HERE = [
  new RegExp(`${start}${WHO}(?:'s| is| are| has|'ve| have)(?: just| now| finally| already)*(?: come| came| turned up| shown up| dropped (?:by|in)| popped (?:in|over|round)| got| arrived)?(?: here| over| round| in the (?:shop|shed|barn|garage)| with me| helping(?: me| out| today)*)${TAIL}$`, 'i'),
  new RegExp(`${start}${WHO} (?:just )?(?:came|turned up|showed up|dropped (?:by|in)|popped (?:in|over|round)|arrived)(?: here| over| round)?${TAIL}$`, 'i'),
  new RegExp(`${start}(?:i've got|i got|i have|we've got|we have|got) ${WHO}(?: here| with me| over| around| to help(?: me| out)*| helping(?: me| out)*| today| now)${TAIL}$`, 'i'),
  new RegExp(`${start}(?:got|i've got|i have|have got) (?<who>a (?:second |spare |extra )?(?:hand|pair of hands)|help|company)${TAIL}$`, 'i'),
  new RegExp(`${start}(?:there's |there are |there is |we're )?(?<who>two|three|a couple) of us(?: here)?${TAIL}$`, 'i'),
];
const GONE = [
  new RegExp(`${start}${WHO}(?:'s| is| are| has|'ve| have) (?:just )?(?:gone(?: home| off| again)?|left(?: again)?|had to (?:go|leave)|off home|not (?:here|coming)(?: any ?more| today| after all)?)(?: now| again| today)*$`, 'i'),
  new RegExp(`${start}${WHO} (?:just )?(?:left|went home|had to (?:go|leave)|can't make it|isn't coming|didn't (?:come|show(?: up)?))(?: now| today| again| after all)*$`, 'i'),
  new RegExp(`${start}(?:i'm|i am) (?:on my own|all alone|alone|by myself|working alone|single[- ]handed)(?: here| now| again| today| this (?:morning|afternoon|evening))*$`, 'i'),
  new RegExp(`${start}(?:there's |i've got |got |i have )?(?:no (?:help(?:er)?|hands)|nobody to help(?: me)?|no one to help(?: me)?|nobody here(?: to help)?)(?: here| now| again| today)*$`, 'i'),
];
/** Spoken of before; that they help, or that help was here to go, must be known. */
const SPOKEN_OF = /^(?:he|she|they)$/i;
/** Whoever is spoken of without a name; anybody else must be somebody that helps by what is said of them. */
const SOMEBODY = /^(?:somebody|someone|help|the help|two|three|a couple|company|a (?:second |spare |extra )?(?:hand|pair of hands))$/i;
/** These bring or sell, and are gone again. */
const NO_HELPER = /^(?:(?:the |my |our )?(?:dealer|supplier|mailman|carrier|postman|postie|postlady|courier|driver|doctor|vicar|radio|forecast|paper|book|manual|counter|man|woman|foundry|owner|printer|politician))$/i;
const MEAL: Record<string, string> = { lunch: '12:00', lunchtime: '12:00', supper: '19:00', dinner: '19:00', tea: '17:00', teatime: '17:00', tonight: '20:00', dark: '20:00', 'this evening': '18:00' };

/** Help that is there now, or that is there no more, said in one clause of a note; undefined: something else. `at`: ISO; `isHelped`: help was said for today. */
export function readHelpHere(clause: string, at: string, isHelped = false): Extract<Entry, { kind: 'hands' }> | undefined {
  const said = clause.trim().replace(/[’‘]/g, "'").replace(/[.!\s]+$/, '');
  if (/^(?:if|when|once|is|are|has|was|unless)\b|\?$/i.test(said) || said.split(/\s+/).length > 14) return undefined;
  const when = dayOf(at);
  for (const re of GONE) { const m = re.exec(said); const who = m?.groups?.['who']; if (m && (who === undefined || (SPOKEN_OF.test(who) ? isHelped : helps(who)))) return { kind: 'hands', when, none: true }; }
  for (const re of HERE) {
    const g = re.exec(said)?.groups;
    if (!g?.['who'] || !helps(g['who'], g['tail'])) continue;
    const to = endOf(g, at);
    return { kind: 'hands', when, ...(to ? { to } : {}), ...(g['with'] ? { for: g['with'].trim() } : {}) };
  }
  return undefined;
}

function helps(who: string, tail = ''): boolean {
  const bare = who.replace(/^(?:my|the|our|an?) /i, '');
  if (SOMEBODY.test(who) || SOMEBODY.test(bare)) return true;
  if (SPOKEN_OF.test(who)) return /\bhelp|\bhand\b/i.test(tail);
  if (PERSONS.test(bare)) return !NO_HELPER.test(bare) || /\bhelp|\bhand\b/i.test(tail);
  // A name: only where it is said that they help.
  return /^\p{Lu}[\p{L}'-]+$/u.test(bare) && /\bhelp|lend|give|till|until|for (?:an|a|one|two|three|\d)/i.test(tail);
}

/** When the help ends: by a time of day after now, or so long from now; undefined: not said. */
function endOf(g: Record<string, string | undefined>, at: string): string | undefined {
  const now = DateTime.fromISO(at, { setZone: true });
  if (g['until']) {
    const low = g['until'].toLowerCase();
    const [am, pm] = [MEAL[low] ?? clockTime(low, 'am'), MEAL[low] ?? clockTime(low, 'pm')];
    return [am, pm].find(t => t !== undefined && t > now.toFormat('HH:mm'));
  }
  if (!g['unit']) return undefined;
  const words: Record<string, number> = { an: 1, a: 1, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, 'half an': 0.5, 'a couple of': 2 };
  const n = (words[g['n']!.toLowerCase()] ?? Number(g['n'])) + (g['half'] ? 0.5 : 0);
  const end = now.plus({ minutes: n * (/^m/i.test(g['unit']) ? 1 : 60) });
  return end.day === now.day ? end.toFormat('HH:mm') : undefined;
}

/** The clauses of a note; what asks comes after what is said. */
const CLAUSES = /(?:\s*[,.;!]\s+|\s+(?=so what\b|what(?:'s| can| should| do)\b)|\s+(?:so|and|but)\s+(?=what|I\b|we\b|my\b))/i;

/** The help that a note says is there, or is there no more, and the rest of its words. Undefined: nothing of the kind. */
export function helpHereIn(text: string, at: string, shop: Shop): { found: Entry[]; rest: string } | undefined {
  if (text.length > 300) return undefined;
  const isHelped = promised(shop).some(h => h.when === dayOf(at));
  const clauses = text.split(CLAUSES).filter(c => c.trim()).map(clause => ({ clause, entry: readHelpHere(clause, at, isHelped) }));
  const found = clauses.flatMap(c => c.entry ?? []);
  return found.length ? { found, rest: clauses.filter(c => !c.entry).map(c => c.clause).join(', ').trim() } : undefined;
}

/** "My neighbour's here now, what's next": the help is logged for today, the rest of the note is read as ever. Undefined: nothing of the kind. */
export function helpHere(turn: Turn, ways: { readAndRecord: ReadAndRecord; recorded: Recorded }): TurnOut | undefined {
  const { incoming: { at, text }, note, deps } = turn;
  const here = helpHereIn(text, at, deps.log.shop);
  if (!here) return undefined;
  const said = ways.recorded(turn, here.found, note, {});
  if (!here.rest) return said;
  const out = ways.readAndRecord({ ...turn, incoming: { ...turn.incoming, text: here.rest } }, here.rest, note);
  return { ...out, reply: { ...out.reply, entries: [...said.reply.entries, ...out.reply.entries], say: [said.reply.say, out.reply.say].join('\n') } };
}

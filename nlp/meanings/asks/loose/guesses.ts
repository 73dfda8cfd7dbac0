import type { Ask } from '../../../../domain/model/ask.ts';
import { isClass, verbForms } from '../../../words/verbs.ts';
import { daysOf, type Desk, foundIn } from '../desk.ts';
import { fore } from '../forecast.ts';
import { spell } from '../spell.ts';
import { machineOf, spokenOf } from '../spoken-of.ts';
import { thingAt } from '../thing-at.ts';
import { about, type Stretch } from './stretch.ts';
import { AGAIN, BEFORE, CHEAP, CHECK, COME, DONE, GET, HELD, KEPT, LABOUR, LATE, LOG, MAY, MONEY, ORDERED, OUGHT, PAST, PHOTO, PRICE, PROVISO, PUT_IN, SITS, SKY, STASH, TODO, UNTIL } from './words.ts';

type Guess = (desk: Desk, c: Stretch) => Ask[] | undefined;

const opt = (k: string, v: string | undefined): object => (v ? { [k]: v } : {});
const withPart = (kind: 'blocked' | 'wasHow' | 'where' | 'picture' | 'history', part: string | undefined, more: object = {}): Ask[] | undefined => part ? [{ kind, part, ...more } as Ask] : undefined;
const item = (name: string | undefined): Ask[] | undefined => (name ? [{ kind: 'cheapest', item: name }] : undefined);
const FOR = /\b(?:for|on) /g, INTO = /\b(?:on|in|into|at|with|to|for) /g;
const YES_NO = /^(?:is|isnt|are|arent|was|were|do|does|did|didnt|has|have|hasnt|havent|if|whether|am|can|could|will|would|should)\b/;

/** By the families of its words, the most telling first. */
export const GUESSES: readonly (readonly [name: string, guess: Guess])[] = [
  ['history', (d, c) => dayAlone(d, c)],
  ['due', (_d, c) => AGAIN.test(c.text) && !/\b(?:before i can|how (?:was|were))\b/.test(c.text) || CHECK.test(c.text) && OUGHT.test(c.text) && /^(?:what|which|anything|any|are there|the|is there|is it time|whats|have i|do i|did i|list|show|show me|time|when)\b/.test(c.text) && !/\b(?:before (?:i|it|the)|so i can)\b/.test(c.text) ? [{ kind: 'due' }] : undefined],
  ['provisional', (d, c) => PROVISO.test(c.text) && !/\b(?:holding|stopping|waiting|torque for|can i|could i)\b/.test(c.text) ? [{ kind: 'provisional', ...opt('part', (YES_NO.test(c.text) || /^(?:the|my) /.test(c.text)) && !/\b(?:anything|any|something)\b|^(?:is|are) there\b/.test(c.text) ? about(d, c) : about(d, c, /\b(?:on|of) (?=the|my|this|that|[a-z]+ ?\?)/g)) }] : undefined],
  ['picture', (d, c) => PHOTO.test(c.text) && !/\b(?:who|when|to (?:take|get)|can i take|should i take)\b/.test(c.text) ? withPart('picture', about(d, c)) : undefined],
  ['late', (_d, c) => LATE.test(c.text) && !(/\b(?:ordered|sent (?:away|off)|on order|waiting)\b/.test(c.text) && !/\b(?:late|overdue|by now|already|should|ought|supposed|meant|due|behind|missing|astray)\b/.test(c.text)) ? [{ kind: 'buy', status: 'late' }] : undefined],
  ['cheapest', (d, c) => CHEAP.test(c.text) || PRICE.test(c.text) && /\b(?:who|what|whats|which|compare|list)\b/.test(c.text) ? item(about(d, c, /\b(?:on|for|of|get|buy|sells?|has|have|does|do) /g)) : undefined],
  ['ordered', (d, c) => ORDERED.test(c.text) || COME.test(c.text) && YES_NO.test(c.text) && !/\b(?:apart|off|out|loose|undone)\b/.test(c.text) ? [{ kind: 'buy', status: 'ordered', ...opt('part', about(d, c, YES_NO.test(c.text) && !/\b(?:anything|any|something)\b/.test(c.text) ? undefined : FOR)) }] : undefined],
  ['timeSpent', (d, c) => !given(d, c) && LABOUR.test(c.text) && PUT_IN.test(c.text) && !/\b(?:left|longer|(?:any|much|many) more|until|till|before|will|to go|remaining|estimate[ds]?|does it take|should it take)\b/.test(c.text) && !/\brun(?:ning)?\b|\blast time\b|\b(?:can|could|should|might) (?:i|we)\b/.test(c.text) ? [{ kind: 'timeSpent', ...opt('part', about(d, c, INTO)), ...daysOf(d, c.start, c.end, 'past') }] : undefined],
  ['finish', (d, c) => ((UNTIL.test(c.text) || dated(c)) && DONE.test(c.text) || /\bwhen(?:ll| will| might| would|s| is)?(?: at this (?:pace|rate))?(?: is| will)? (?:she|it|he|the [a-z]+) (?:ever |actually |finally )?(?:be )?(?!coming|arriving|going|raining|snowing|calling|visiting)[a-z]+ing\b/.test(c.text)) && !/\b(?:when did|when was|last)\b/.test(c.text) ? [{ kind: 'finish', ...opt('part', /\b(?:this|that|the) (?:whole |damn(?:ed)? |old )?thing\b/.test(c.text) ? undefined : finished(d, c)) }] : undefined],
  ['spent', (d, c) => MONEY.test(c.text) && !foundIn(d, c.start, c.end).some(f => f.dim === 'money') && !/\b(?:would|will|should|going to) (?:it |that |a |the [a-z]+ )?cost\b|\b(?:in|on|for) her ear\b/.test(c.text) ? [{ kind: 'spent', ...opt('part', about(d, c)) }] : undefined],
  ['forecast', (d, c) => SKY.test(c.text) ? fore({ desk: d, start: c.from, end: c.from, stop: c.end }) : undefined],
  ['wasHow', (d, c) => BEFORE.test(c.text) && (PAST.test(c.text) || SITS.test(c.text)) && !/\bhow (?:much|long|fast|hot|do i|should i)\b(?!.*\b(?:was|were|had|did)\b)/.test(c.text) ? before(d, c) : undefined],
  ['wasHow', (d, c) => SITS.test(c.text) && (PAST.test(c.text) || /\?/.test(c.text) && !/\b(?:is|are|do|does|can|should|will)\b/.test(c.text) || /\bdo(?:es)? [^.?!]*\b(?:go|face|sit|point)\b/.test(c.text)) && !/\b(?:to go|left|miles|need)\b/.test(c.text) ? before(d, c) : undefined],
  ['wasHow', (d, c) => /^how (?:was|were|did) (?:the|that|my|those|left|right|front|rear|top|bottom|number) /.test(c.text) && !/\b(?:go|work out|turn out|do|find|like)\b/.test(c.text) || /^(?:did|was|were) (?:the|that|my|those) [^?]* or (?!not\b)[a-z]/.test(c.text) && !/\b(?:order|ordered|buy|bought|paid|pay|come|arrive|call|ring|cost)\b/.test(c.text) ? before(d, c) : undefined],
  ['where', (d, c) => /^where(?:s|abouts)? ?[?.]?$/.test(c.text.trim()) ? withPart('where', spokenOf(d, c.start + 1) ?? spokenOf(d, c.from)) : undefined],
  ['where', (d, c) => (STASH.test(c.text) || YES_NO.test(c.text) && KEPT.test(c.text) && / or /.test(c.text)) && !/\bwhere(?:s)? (?:to|can i|should i|do i (?:buy|get)|does it (?:leak|rub)|(?:its|it is|the [a-z ]+ is) (?:leaking|rubbing|binding))\b|\b(?:came|comes?) from\b/.test(c.text) && !/\b(?:buy|price|order)\b/.test(c.text) ? withPart('where', about(d, c, /\b(?:the|my|that|those|this|of|for|with|seen|any|some|put|left|got) ?/g)) : undefined],
  ['where', (d, c) => /^[a-z ]{3,40}? (?:went|is|are|was|were|goes|go|lives?|got to|kept|put) where\b/.test(c.text) || /^(?:and |so )?where[, ]+(?:the|my) /.test(c.text) ? withPart('where', firstOf(d, c) ?? about(d, c)) : undefined],
  ['where', (d, c) => stashed(d, c)],
  ['needed', (d, c) => GET.test(c.text) && !/\b(?:before (?:i|we)|out of the way)\b/.test(c.text) && /\b(?:what|whats|whatever|bits|anything|owt|any|list|parts|which|left|things|something|am i|everything|do i)\b/.test(c.text) && !/\bget(?:ting)? (?:on|at|to|the|into|through|done|it|back|going|started|stuck)\b/.test(c.text) ? [{ kind: 'buy', status: 'needed', ...opt('part', needy(d, c) ?? about(d, c, FOR)) }] : undefined],
  ['blocked', (d, c) => /^why(?:s| is| are| isnt| arent| hasnt| havent| hast)\b[^?]*\b(?:still|not|yet|sitting|lying|on the (?:floor|bench)|in (?:bits|pieces)|in a heap|apart|waiting|isnt|arent|hasnt)\b/.test(c.text) || MAY.test(c.text) && doable(c) || HELD.test(c.text) && !/\bcan i (?:do|have|see|ask|use)\b/.test(c.text) ? withPart('blocked', about(d, c)) : undefined],
  ['history', (d, c) => !/\b(?:can|could|might|should|shall|ought) (?:i|we|be|get)\b/.test(c.text) && (LOG.test(c.text) || /\b(?:ever|did i|have i|did we|have we|^has|have [a-z ]+ been)\b/.test(c.text)) && (deed(c) || LOG.test(c.text)) ? history(d, c) : undefined],
  ['next', (d, c) => TODO.test(c.text) && /\b(?:what|anything|something|which|whats|where|any|job|jobs|suggest|give me|find me)\b/.test(c.text) && !/\b(?:wrong|with (?:it|the)|about|before (?:the|i|it|[a-z]+ing)|left to do on)\b/.test(c.text) ? next(d, c) : undefined],
];

/** "total hours for the seeder: 41": a figure is told there, and nothing asks. */
const given = (d: Desk, c: Stretch): boolean => !/\?|\b(?:what|how|which|where)\b/.test(c.text) && foundIn(d, c.from, c.end).some(f => f.dim === 'number' || f.dim === 'span' && /^(?:hours|minutes)$/.test(f.value.unit));

/** "which lock-up did I shove the follower in", "is it the green cupboard the sieves are in": a place is asked for, whatever it is called. */
function stashed(d: Desk, c: Stretch): Ask[] | undefined {
  const m = /\b(?:which|what) (?:[a-z]+ ){1,3}?(?:did|have|has) (?:i|we) (?:go and |last )?([a-z]+) (?:away )?(?=(?:the|my|those|that|them|it)\b)/.exec(c.text) ?? /\bis it (?:the|that|my) (?:[a-z]+ ){1,3}?(?=(?:the|my|those) (?:[a-z]+ ){1,3}(?:is|are|went|were|live|lives|go|goes) (?:in|on|under|behind))/.exec(c.text);
  const t = m && (m[1] === undefined || verbForms(m[1]).some(f => isClass(f.base, 'stow'))) ? thingAt(d, c.from + m.index + m[0].length, c.end) : undefined;
  return t && /^ (?:(?:is|are|went|were|live|lives|go|goes|up|away|down) )*(?:in|on|under|behind|into|inside|at|onto|beside)\b/.test(d.text.slice(t.end, c.end)) ? [{ kind: 'where', part: t.name }] : undefined;
}

/** "walk me back through Saturday", "remind me about last week": nothing but the day is said. */
function dayAlone(d: Desk, c: Stretch): Ask[] | undefined {
  const days = c.from > c.start && /^(?:(?:the|last|this|on|in|from|about|through|for|since|of|and|to|week|weekend|month|year|day|before|yesterday|morning|afternoon|evening|night|(?:mon|tues|wednes|thurs|fri|satur|sun)day|january|february|march|april|may|june|july|august|september|october|november|december|\d+(?:st|nd|rd|th)?|first|second|third|[a-z]+th|again)[ ,.?!]*)+$/.test(c.text) ? daysOf(d, c.from, c.end, 'past') : {};
  return days.from ? [{ kind: 'history', ...days }] : undefined;
}
/** "what the elevator still wants": the part that needs it. */
function needy(d: Desk, c: Stretch): string | undefined {
  const m = /\b(?:what|whatever|all|everything) (?=(?:the|my|this|that)\b)/.exec(c.text), t = m && thingAt(d, c.from + m.index + m[0].length, c.end);
  return t && /^ (?:still |yet |also )*(?:wants?|needs?|lacks?|is (?:short|missing|lacking)|requires?)\b/.test(d.text.slice(t.end, c.end)) ? t.name : undefined;
}
/** "it" that is to be finished is a machine, or what was asked about: nothing else that is only told of. */
function finished(d: Desk, c: Stretch): string | undefined {
  const name = about(d, c, /\b(?:of|for|with|on|about|till|until|before|the|my|this|that) ?/g);
  if (!name || c.text.includes(name.split(' ').at(-1)!) || !/\b(?:it|its|she|shes|that|this)\b/.test(c.text)) return name;
  return machineOf(d, c.from) ?? d.spoken.filter(s => s.end <= c.from).at(-1)?.name;
}
const verbsOf = (c: Stretch): string[] => c.text.split(/[^a-z]+/).filter(w => verbForms(w).length > 0);
const deed = (c: Stretch): boolean => verbsOf(c).some(w => !/^(?:did|do|have|was|is|had|ever|get|got|see|say|know|think|last|time|has|been)$/.test(w));
/** "is June realistic for the combine". */
const dated = (c: Stretch): boolean => /^(?:is|would|could|am|are|will)\b[^?]*\b(?:january|february|march|april|may|june|july|august|september|october|november|december|spring|summer|autumn|fall|winter|easter|christmas|harvest|(?:the )?(?:end of|middle of) (?:the )?(?:month|week|year)|next (?:month|week|year))\b/.test(c.text);
/** "can I drop the engine in": a deed on a thing, where "can I use", "can I see" ask other things. */
const doable = (c: Stretch): boolean => !/\b(?:can|could|should|may) (?:i|we) (?:do|get away|have|see|ask|use|buy|trust|expect|afford|reuse|weld|save|know|find|run|swap|make|reach|borrow|be (?:sure|certain))\b/.test(c.text) && (deed(c) || /\b(?:on|in|back|together)\b/.test(c.text));

const WHAT = /^(?:[a-z]+ )?(?:gap|shims?|play|end ?float|float|backlash|lash|clearance|torque|tension|timing|setting|position|pressure|washers?|spacers?|height|depth|pitch|toe in|preload|voltage|bolts|pins?|order|side|way|end|hole|turns|chamfer|bevel|lip|groove|flat|keyway|slot|arrow|mark|stamp|number|letters?|split|gaps?|sequence|angle|stroke|travel|length|slack|sag|camber|run ?out)$/;
/** "which one was", "what did": no noun that is asked for. */
const NO_QUALITY = /^(?:one|ones|is|are|was|were|did|do|does|had|has|have|of|i|we|it|they|the|my|else|on|in|size|torque|time|day|part|parts|bits?|thing|things|if|about)$/;
/** "the point gap on the magneto", "which hole was the spring in": what, and of which part. */
export function before(d: Desk, c: Stretch): Ask[] | undefined {
  const of = /\b(?:the |my )?([a-z]+(?: [a-z]+)?) (?:on|of|in|at|behind|under|between|for) (?=the |my )/.exec(c.text);
  const owner = of && thingAt(d, c.from + of.index + of[0].length, c.end);
  const what = of?.[1]!.replace(/^(?:the|my|what|was|were|how|note|write down|many) /, '');
  if (owner && what && WHAT.test(what) && !/\b(?:side|way|end|hole) of\b/.test(of[0])) return [{ kind: 'wasHow', part: owner.name, what }];
  const asked = /\b(?:which|what) ([a-z]+)\b|\bhow many ([a-z]+)\b|\b(?:top|bottom|upper|lower|inner|outer|front|back|left|right|first|second|long|short) ([a-z]+) or /.exec(c.text), noun = asked?.[1] ?? asked?.[2] ?? asked?.[3];
  const kind = noun && (WHAT.test(noun) || asked?.[2] || asked?.[1] && !NO_QUALITY.test(noun)) ? (noun === 'way' || noun === 'side' ? `which ${noun}` : noun) : undefined;
  const subject = kind === undefined ? undefined : /\b(?:did|was|were|had|does|do) (?=(?:the|my|that|those)\b)/.exec(c.text), own = subject && thingAt(d, c.from + subject.index + subject[0].length, c.end);
  return withPart('wasHow', own?.name ?? about(d, c) ?? firstOf(d, c) ?? afterHow(d, c), opt('what', kind));
}
/** "How was number 1 cylinder": the thing said without an article. */
function afterHow(d: Desk, c: Stretch): string | undefined {
  const m = /^how (?:was|were|did) /.exec(c.text);
  return m ? thingAt(d, c.from + m[0].length, c.end)?.name : undefined;
}
const firstOf = (d: Desk, c: Stretch): string | undefined => thingAt(d, c.from, c.end)?.name;
export const history = (d: Desk, c: Stretch): Ask[] => [{ kind: 'history', ...opt('part', about(d, c)), ...daysOf(d, c.start, c.end, 'past') } as Ask];
export function next(d: Desk, c: Stretch): Ask[] {
  const f = spell(d, Math.max(0, c.start - 90), Math.min(d.text.length, c.start + 110));
  const place = /\b(?:indoors?|inside|under cover|under (?:the |a )?roof|in the (?:shed|shop|barn|dry|warm|workshop|garage)|out of the (?:rain|wet|cold|wind|sun)|cant leave the shed|(?:on|at) the bench)\b/.test(c.text) ? { place: 'indoors' as const } : /\b(?:outdoors?|outside|in the yard|in the sun|in the fresh air|out of doors|out the back)\b/.test(c.text) ? { place: 'outdoors' as const } : {};
  return [{ kind: 'next', ...(f ? { minutes: Math.round(f.minutes) } : {}), ...place }];
}

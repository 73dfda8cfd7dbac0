import type { Ask } from '../../../domain/model/ask.ts';
import { verbForms } from '../../words/verbs.ts';
import { fore } from './forecast.ts';
import { daysOf, type Desk, foundIn, type Hit } from './desk.ts';
import { spokenOf } from './spoken-of.ts';
import { thingAt } from './thing-at.ts';

/** A sentence or clause that asks, though no rule knows its wording. */
interface Clause { start: number; end: number; text: string }

const OPENS = /^(?:(?:so|and|but|right|well|okay|ok|now|hey|then|also|oh|please|just|say|mate|lad|here|look)[, ]+)*(?:what|whats|whatll|where|wheres|whered|when|whens|who|whos|why|how|hows|which|is|are|was|were|do|does|did|can|could|will|would|shall|should|have|has|am|any|anything|show|give|list|tell|remind|tot|add up|work out|find|let me see|run me|read me|check)\b/;
const TOLD = /^(?:how|what|who|when|where|which)\b(?! (?:is|are|was|were|do|does|did|can|could|will|would|should|have|has|am|s|many|much|long|about|if)\b)[^?]*$/;

const SKY = /\b(?:weather|forecast|rain|snow|frost|freeze|windy?|dry spell|storm|stay dry|turn wet|be dry|sun)\b/;
const LOOSE = /\b(?:temporary|temporarily|provisional|finger tight|mocked up|tacked|hung|only (?:held|nipped|tried|sitting|hanging)|nipped up|not (?:on )?for good|slave bolts|for now|trial)\b/;

/** The first thing named after one of these words, else the first named in the clause. */
function about(desk: Desk, c: Clause, words = /\b(?:on|of|for|with|to|in|into|about|the|my|that|this|his|those|these)\b ?/g): string | undefined {
  for (const m of c.text.matchAll(words)) {
    const det = /^(?:the|my|that|this|his|those|these)/.test(m[0]);
    const t = thingAt(desk, c.start + m.index + (det ? 0 : m[0].length), c.end);
    if (t && t.name.length > 2 && !/(?:^| )time$/.test(t.name) && !/^(?:hours?|weather|rain|money|cost|price|quote|quotes?|list|story|time|job|jobs|work|bits?|things?|stuff|parts?|rest|lot|one|shop|slave bolts|bolts? counter|recheck|rechecks|photo|last|most|day|week|rate|good|way|left|supper|moment|now)$/.test(t.name)) return t.name;
  }
  return /\b(?:it|them)\b/.test(c.text) ? spokenOf(desk, c.start) : undefined;
}

type Guess = (desk: Desk, c: Clause) => Ask[] | undefined;
const withPart = (kind: 'blocked' | 'wasHow' | 'where' | 'picture' | 'history', part: string | undefined, more: object = {}): Ask[] | undefined => part ? [{ kind, part, ...more } as Ask] : undefined;

/** By its telling words alone, the surest first. */
const GUESSES: readonly Guess[] = [
  (d, c) => /\b(?:photos?|pictures?|pics?|snaps?|looked? like)\b/.test(c.text) && !/\btook|taken\b/.test(c.text) ? withPart('picture', about(d, c)) : undefined,
  (_d, c) => /\b(?:re ?checks?|look(?:ed)? at again|go(?:ing)? over again|check(?:ed)? again|second look|re ?torque)\b/.test(c.text) ? [{ kind: 'due' }] : undefined,
  (d, c) => LOOSE.test(c.text) ? [{ kind: 'provisional', ...opt('part', /^(?:is|are) (?:the|my)\b/.test(c.text) ? about(d, c) : about(d, c, /\b(?:on|of) /g)) }] : undefined,
  (_d, c) => /\b(?:late|overdue)\b|\bordered\b[^.?!]*\b(?:by now|already|yet|should have|ought to)\b/.test(c.text) ? [{ kind: 'buy', status: 'late' }] : undefined,
  (d, c) => /\b(?:on order|coming in the post|in the mail|deliver(?:y|ies))\b/.test(c.text) ? [{ kind: 'buy', status: 'ordered', ...opt('part', about(d, c, /\bfor /g)) }] : undefined,
  (d, c) => /\b(?:cheap(?:est|er)?|best (?:price|quote|deal|offer)|lowest|least money|dearest)\b/.test(c.text) ? item(about(d, c, /\b(?:on|for|of) /g)) : undefined,
  (d, c) => /\b(?:when|how long|how soon|how (?:far|close)|any idea when|how much longer|what day|by)\b/.test(c.text) && /\b(?:done|finish(?:ed)?|complete|going|running|roadworthy|together|in one piece|back in (?:service|action|work))\b/.test(c.text) ? [{ kind: 'finish', ...opt('part', about(d, c)) }] : undefined,
  (d, c) => /\b(?:hours|how long|how much time)\b/.test(c.text) && /\b(?:i|ive|spent|put|worked|far)\b/.test(c.text) ? [{ kind: 'timeSpent', ...opt('part', about(d, c, /\b(?:on|in|into|at|with) /g)), ...daysOf(d, c.start, c.end, 'past') }] : undefined,
  (d, c) => /\b(?:cost|spent|money|dollars|bucks|quid|outlay|laid out)\b/.test(c.text) && !foundIn(d, c.start, c.end).some(f => f.dim === 'money') ? [{ kind: 'spent', ...opt('part', about(d, c)) }] : undefined,
  (d, c) => SKY.test(c.text) ? fore({ desk: d, start: c.start, end: c.start, stop: c.end }) : undefined,
  (d, c) => /\b(?:before|originally|came apart|took (?:it|them) (?:apart|off|down)|pulled (?:it|them)|as found|how (?:was|were|did|does|do|the|it))\b/.test(c.text) && !/\bbefore (?:i|we) (?:can|could|start|begin|go|get|do|put|fit|paint|order|buy|close|take|leave)\b|\bhow (?:many|much|long|fast|hot|do i|should i|does it (?:look|sound))\b(?!.*\b(?:was|were|had|did)\b)/.test(c.text) ? before(d, c) : undefined,
  (d, c) => /\bwhere\b/.test(c.text) && !/\bwhere (?:to|can i|should i|do i (?:buy|get))\b/.test(c.text) ? withPart('where', about(d, c)) : undefined,
  (d, c) => /\b(?:buy|pick up|to get|order|still (?:wanted|needed|to come)|short of|wanted for|needed for|missing)\b/.test(c.text) && /\b(?:what|bits|anything|list|parts|which|left|remind|things)\b/.test(c.text) ? [{ kind: 'buy', status: 'needed', ...opt('part', about(d, c, /\b(?:for|on) /g)) }] : undefined,
  (d, c) => /\b(?:hold(?:ing)?|stopp?(?:ing)?|stuck|waiting|blocked|ready|yet|can i|can it|why cant|what(?:s)? left before|in the way|clear to|keep(?:ing)?)\b/.test(c.text) && !/\bcan i (?:do|get|have|see|ask|use)\b/.test(c.text) || /\bcan i (?:get|have) [^.?!]*\b(?:on|in|back|up|together|painted|fitted)\b/.test(c.text) ? withPart('blocked', about(d, c)) : undefined,
  (d, c) => /\b(?:last time|did i|have i|ever|when did|when was)\b/.test(c.text) && deed(c) ? history(d, c) : undefined,
  (d, c) => /\b(?:to do|start|tackle|next|worth|work on|be at|get on with|fit in|squeeze)\b/.test(c.text) && /\b(?:what|anything|something|which|whats)\b/.test(c.text) && !/\b(?:wrong|with it|about)\b/.test(c.text) ? next(d, c) : undefined,
];

const opt = (k: string, v: string | undefined): object => (v ? { [k]: v } : {});
const item = (name: string | undefined): Ask[] | undefined => (name ? [{ kind: 'cheapest', item: name }] : undefined);
const deed = (c: Clause): boolean => c.text.split(/[^a-z]+/).some(w => verbForms(w).length > 0 && !/^(?:did|do|have|was|is|had|ever|get|got|see|say|know|think|last|time)$/.test(w));

/** "the point gap on the magneto": what, and of which part. */
function before(d: Desk, c: Clause): Ask[] | undefined {
  const of = /\b(?:the |my )?([a-z]+(?: [a-z]+)?) (?:on|of|in|at|behind|under) (?=the |my )/.exec(c.text);
  const owner = of && thingAt(d, c.start + of.index + of[0].length, c.end);
  const what = of?.[1]!.replace(/^(?:the|my|what|was|were|how|note|write down|many) /, '');
  if (owner && what && /^(?:[a-z]+ )?(?:gap|shims?|play|float|backlash|lash|clearance|torque|tension|timing|setting|position|pressure|washers?|spacers?|height|depth|pitch|toe in|preload|voltage|bolts|pins?)$/.test(what)) return [{ kind: 'wasHow', part: owner.name, what }];
  return withPart('wasHow', about(d, c));
}
function history(d: Desk, c: Clause): Ask[] {
  return [{ kind: 'history', ...opt('part', about(d, c)), ...daysOf(d, c.start, c.end, 'past') } as Ask];
}
function next(d: Desk, c: Clause): Ask[] {
  const f = foundIn(d, 0, d.text.length).find(x => x.dim === 'span' && (x.value.unit === 'minutes' || x.value.unit === 'hours') && Math.abs(x.start - c.start) < 90);
  const place = /\b(?:indoors?|inside|under cover)\b/.test(c.text) ? { place: 'indoors' as const } : /\b(?:outdoors?|outside)\b/.test(c.text) ? { place: 'outdoors' as const } : {};
  return [{ kind: 'next', ...(f?.dim === 'span' ? { minutes: Math.round(f.value.amount * (f.value.unit === 'hours' ? 60 : 1)) } : {}), ...place }];
}

const UNKNOWN = /\b(?:couldn ?t|could not|i dont|nobody|who) (?:say|know|tell|knows)\b|\bwould have thought\b/;
/** A sentence, cut where "and" leads into another question or request. */
function clausesOf(desk: Desk, s: { start: number; end: number; asked: boolean }): { start: number; end: number; asked: boolean }[] {
  const text = desk.text.slice(s.start, s.end), cuts = [...text.matchAll(/,? (?:and|or|but) (?=(?:what|where|when|how|who|why|show|give|list|tell|remind|is|are|can|any|do|did|have)[a-z]*\b)/g)].map(m => s.start + m.index + m[0].length);
  return [s.start, ...cuts].map((start, i) => ({ start, end: cuts[i] ?? s.end, asked: s.asked }));
}

/** A guess at each asking sentence that no rule read: only where it is marked or opened as a question, and says what it is about. */
export function looseHits(desk: Desk, taken: readonly Hit[]): Hit[] {
  const out: Hit[] = [];
  for (const s of desk.sentences.flatMap(x => clausesOf(desk, x))) {
    if (taken.some(h => h.start < s.end && s.start < h.end)) continue;
    const text = desk.text.slice(s.start, s.end);
    if (UNKNOWN.test(text) || !s.asked && (!OPENS.test(text) || TOLD.test(text.trim()))) continue;
    const c = { start: s.start, end: s.end, text };
    for (const guess of GUESSES) {
      const asks = guess(desk, c);
      if (asks) { out.push({ start: s.start, end: s.end, asks, rule: 'loose', weight: -5 }); break; }
    }
  }
  return out;
}

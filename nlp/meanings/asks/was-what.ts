import type { Ask } from '../../../domain/model/ask.ts';
import { type Desk, type Hit, sentenceAt } from './desk.ts';
import { thingAt } from './thing-at.ts';
import { table } from '../../words/table.ts';

type WasHow = Extract<Ask, { kind: 'wasHow' }>;

/** Where another question begins. */
const NEXT = /(?:,? (?:and|uh|also|then)|[,;]) (?:(?:uh|then|also) )?(?:where|when|whens|whats|what (?:is|did|do|have)|show|have|do|is|can|did|pictures?|photos?|who|tell)[a-z]*\b/;
/** What is measured or counted and is no part by itself. */
const QUALITY = /^(?:sag|toe in|tracking|gap|lead|tension|clearance|backlash|end play|end float|lash|play|float|preload|timing|pitch|run ?out|spacing|setting|length|travel|height|depth|stroke|camber|washers?|shims?|spacers?|packing|hemp|gaskets?|thick washer|thin washer)$/;
/** What is asked about a part by how it was done. */
const DONE: Readonly<Record<string, string>> = table({ shimmed: 'shims', timed: 'timing', gapped: 'gap', spaced: 'spacing', routed: 'routing', wired: 'wiring', tensioned: 'tension', bolted: 'bolts' });

/**
 * "how did the chain run, over or under the idler", "how was the gib, which end up": what was asked about it is said after its name, as two ways, a noun
 * or how it was done. And "what was the sag before I split the track" is of the track.
 */
export function wasWhat(desk: Desk, hit: Hit): Hit {
  return { ...hit, asks: hit.asks.map(a => (a.kind === 'wasHow' ? told(desk, hit, a) : a)) };
}

function told(desk: Desk, hit: Hit, a: WasHow): Ask {
  if (!a.part) return a;
  const stop = sentenceAt(desk, Math.max(hit.start, hit.end - 1)).end, said = desk.text.slice(hit.start, stop), last = a.part.split(' ').at(-1)!;
  const named = said.indexOf(last), after = named < 0 ? '' : said.slice(named + last.length), cut = NEXT.exec(after), rest = (cut ? after.slice(0, cut.index) : after).replace(/ ?[?.!,]+ *$/, '');
  if (QUALITY.test(a.part)) {
    const of = /^ (?:on|of|in|at|behind|under|between) (?=(?:the|my|that|those)\b)/.exec(rest) ?? /\b(?:before|when|till|until) (?:i|we)(?: [a-z]+)? [a-z]+ (?=(?:the|my|that|those)\b)/.exec(rest), at = of && hit.start + named + last.length + of.index + of[0].length;
    const owner = at ? thingAt(desk, at, stop) : undefined;
    if (owner) return { ...a, part: owner.name, what: a.what && a.what !== a.part && !/^(?:side|set)$/.test(a.what) ? `${a.what} of the ${a.part}` : a.part };
  }
  const loose = !a.what || LOOSE.test(a.what), ways = loose ? waysOf(rest.replace(UNDONE, '')) : undefined;
  if (ways) return { ...a, what: ways };
  if (a.what && a.what !== 'routing') return a;
  const what = wayOf(rest);
  return what ? { ...a, what } : a;
}

/** What was asked is not told by these as closely as by two ways told apart. */
const LOOSE = /^(?:routing|which way(?: (?:up|round))?|set(?: up)?|way|side)$/;
/** "before I drew it": when it was dates the question and is no part of what is asked. */
const UNDONE = /,? (?:before|when|till|until) (?:i|we|he|it|they|you)(?: [a-z]+)+?(?=,|$)/g;

/** "ears in or ears out": the two ways that are told apart. */
function waysOf(rest: string): string | undefined {
  const ways = /(?:, ?(?:like |was it |were they |is it )?| (?:was it|were they) )((?:[a-z]+ ){1,6}or(?: [a-z]+){1,5})$/.exec(rest) ?? /^ (?:joined |hooked |facing |fitted |greased |placed |set |(?:set )?up )?(?:before |originally )?(?:on |in |at )?(?:the )?((?:[a-z]+ ){1,3}or(?: [a-z]+){1,4})(?:,| before\b| when\b|$)/.exec(rest);
  return ways?.[1]!.replace(/ (?:when|before|originally|of the) .*$/, '').replace(/\b(?:the|a) /g, '');
}

function wayOf(rest: string): string | undefined {
  const which = /\b(?:which|what) (?:way (?:round|up|on)|side|end|face) (?:was|were|did|is|are) (?:the |my )?([a-z]+(?: [a-z]+)?)(?: (?:go|face|sit|point))?$/.exec(rest)?.[1] ?? /(?:, |like )(?:which|what) ((?:way|end|side|face) (?:up|round|out|on)|hole|end|side|way|sprocket|notch|slot|stud|groove|face)\b/.exec(rest)?.[1] ?? /\bhow many ([a-z]+)/.exec(rest)?.[1] ?? /, ([a-z]+) i mean$/.exec(rest)?.[1];
  if (which) return which;
  const done = /^ (?:all |been )?([a-z]+(?:ed|t up))\b(?! (?:at|to)\b)/.exec(rest)?.[1];
  return done && !/^(?:used|supposed|looked|faced|pointed|seated|mounted|need|fixed|fitted)/.test(done) ? DONE[done] ?? done : undefined;
}

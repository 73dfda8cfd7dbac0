import type { Ask } from '../../../domain/model/ask.ts';
import { spokenOf } from './spoken-of.ts';
import { ONWARD } from './onward.ts';
import { thingAt } from './thing-at.ts';
import type { AskRule, Seen } from './rule.ts';

const was = (part: string | undefined, what: string | undefined): Ask[] | undefined =>
  part ? [{ kind: 'wasHow', ...split(part, what) }] : undefined;
const QUALITIES = /^(.+) (clearance|gap|backlash|end play|lash|preload|run ?out|tension|spacing|level|shims|washers|spacers)$/;
/** "the concave clearance": the part, and what of it. */
function split(part: string, what: string | undefined): { part: string; what?: string } {
  const m = what || /\b(?:thrust|lock|spring|plain|wave|copper|fib(?:re|er)|flat|star|belleville) washers$/.test(part) ? undefined : QUALITIES.exec(part);
  return m ? { part: m[1]!, what: m[2]! } : { part, ...(what ? { what: counted(what) } : {}) };
}
/** "the shim count" is the shims. */
const counted = (what: string): string => what.replace(/^(?:number of |count of )/, '').replace(/^([a-z]+[^s\s]) (?:count|total|number|pack)$/, '$1s').replace(/ count$/, '');
const ON = String.raw`(?:behind|under|underneath|beneath|below|in front of|ahead of|in|on|onto|between|at|for|off|off of|from|over|above|around|round|inside|across|of|to|with|beside|against|through|along|left in|up against)`;
const PAST = String.raw`(?:before|when|originally|as found|to (?:begin|start) with|from new|at first|first time|the first time|as it was|as it came|prior to|till i|until i)`;
const BEFORE = new RegExp(String.raw`^[ ,]*(?:${PAST}\b[^.?!]*?(?=$|[.?!]|${ONWARD}))?`);
const WHAT = String.raw`(?!(?:was|were|is|are|did|pounds?|foot|feet|inches|threads|amps|volts|watts|quarts|gallons|lit(?:re|er)s|square|miles|revs|turns|flats|newton|psi|bar|degrees|mils|coats|percent|ounces|dollars|kilos?|mm|tons?|cubic|met(?:re|er)s)\b)([a-z]+(?: [a-z]+){0,2}?)`;
/** The thing after the words, or the one spoken of. */
const thing = (s: Seen): string | undefined => s.names[0] ?? spokenOf(s.desk, s.start);
const MONEYISH = /^(?:price|hours?|time|money|bucks|dollars|quid|pounds|cash|euros?|cost|total|damage|date|weather|story|plan|point|matter|trouble|idea|dew point|deal|time|name|number|torque on|speed|best|cheapest|last|day|answer|problem|holdup|hold up|next|quote|job)$/;

/** How it was before it came apart. */
export const WAS_HOW: readonly AskRule[] = [
  { name: 'what was under X for W', open: new RegExp(String.raw`\bwhat (?:was|were)(?: there)? (?:${ON}) `), things: 'one', tail: /^ (?:for|by way of|in the way of) ([a-z]+)\b/, tailNeeded: true, weight: 5, make: s => was(s.names[0], s.tail![1]) },
  { name: 'number of W on X', open: new RegExp(String.raw`\b(?:number|count) of ${WHAT} (?:there (?:were|was) |were |was )?(?:${ON}) `), things: 'one', tail: BEFORE, weak: true, weight: 3, make: s => was(s.names[0], s.m[1]) },
  { name: 'did I note W on X', open: new RegExp(String.raw`\bdid i (?:ever |even |actually )?(?:note|write down|measure|record|mark|take down|count|get)(?: down)? (?:the |what the |how many |a )?${WHAT} (?:${ON}) `), things: 'one', tail: BEFORE, weight: 5, make: s => s.tail?.[0].trim() || /note|write|measure|record|count/.test(s.m[0]) ? was(s.names[0], s.m[1]) : undefined },
  { name: 'what was the X W before', open: /\bwhat (?:was|were) (?=(?:the|my) )/, things: 'one', tail: new RegExp(String.raw`^(?: (?:set|at|like))* ?(?:before|originally|when|as found|to (?:start|begin) with)\b[^.?!]*?(?=$|[.?!]|${ONWARD})`), tailNeeded: true, weight: 5, make: s => { const m = /^(.+) (backlash|end play|endplay|gap|clearance|lash|torque|pressure|preload|timing|pitch|run ?out|float|play|sag|tension|voltage|height|depth|thickness|spacing|position|setting|length|travel|shims)$/.exec(s.names[0]!); return m ? was(m[1], m[2]) : undefined; } },
  { name: 'how many W were behind X', open: new RegExp(String.raw`\bhow many ${WHAT} (?:were|was|are|is|did (?:i|we) (?:have|take(?: out)?|pull(?: out)?|get|find|count)|had i|sat|went|came|came out|did it have|did they have|have|there were|there was|i had|i took|got|used to be|would have been)(?: (?:there|it|out|from|used|stacked|originally|sitting|fitted))*(?: in)? ?(?:${ON}) `), things: 'maybe', tail: BEFORE, weight: 5, make: s => /h?ours?\b|minutes|bolts do|left|miles|\b(?:i|we|you|have|did)\b/.test(s.m[1]!) ? undefined : was(thing(s), s.m[1]) },
  { name: 'how many W behind X', open: new RegExp(String.raw`\bhow many ${WHAT} ${ON} `), things: 'one', tail: BEFORE, weight: 3, make: s => /h?ours?\b|minutes|dollars|days|quid|weeks|miles|\b(?:i|we|you)\b/.test(s.m[1]!) || / (?:do|did|have|can|will|need)\b/.test(s.m[1]!) ? undefined : was(s.names[0], s.m[1]) },
  { name: 'how many W did X have', open: new RegExp(String.raw`\bhow many ${WHAT} (?:did|had|does|has) `), things: 'one', tail: new RegExp(String.raw`^ (?:have|had|got|take|come with|came with|use|used|run|carry|(?:sit|stand|rest|ride|hang|go|mount|bolt|turn|run) (?:on|in|under|up on|over|with))\b[^.?!]*?(?=$|[.?!,]|${ONWARD})`), tailNeeded: true, weight: 5, make: s => MONEYISH.test(s.m[1]!) ? undefined : was(s.names[0], s.m[1]) },
  { name: 'what W was on X', open: new RegExp(String.raw`\bwhat ${WHAT}(?: of ([a-z]+))? (?:was|were)(?: there)? (?:${ON}) `), things: 'one', tail: BEFORE, weight: 6, make: s => MONEYISH.test(s.m[1]!) || /^(?:i|it|that|work|job)\b/.test(s.m[1]!) ? undefined : was(s.names[0], s.m[2] ? `${s.m[1]!} of ${s.m[2]}` : s.m[1]) },
  { name: 'how thick they were', open: /\bhow (?:tight|loose|far (?:in|out|up|down|back|apart)|deep|high|low|wide|stiff|proud|slack|close|long|thick) (?=(?:the|my|that|those|it|they)\b)/, things: 'one', tail: new RegExp(String.raw`^ (?:was|were|sat|had been)\b[^.?!]*?\b${PAST}\b[^.?!]*?(?=$|[.?!]|${ONWARD})`), tailNeeded: true, weak: true, weight: 4, make: s => [{ kind: 'wasHow', part: s.names[0]! }] },
  { name: 'what was the Q of X alone', open: /\bwhat (?:was|were) (?=(?:the|my) )/, things: 'one', tail: /^(?= ?(?:\?|$))/, tailNeeded: true, weight: 2, make: s => { const m = /^(.+) (backlash|end play|endplay|gap|clearance|lash|preload|timing|run ?out|tension|spacing|setting)$/.exec(s.names[0]!); return m ? was(m[1], m[2]) : undefined; } },
  { name: 'how tight was X', open: /\bhow (?:tight|loose|far (?:in|out|up|down|back|apart|off)?|deep|high|low|wide|stiff|proud|slack|close|long|thick) ?(?:was|were|did|had) /, things: 'one', tail: new RegExp(String.raw`^[^.?!]*?\b${PAST}\b[^.?!]*?(?=$|[.?!]|${ONWARD})`), tailNeeded: true, weight: 4, make: s => was(s.names[0], undefined) },
  { name: 'was X this way or that', open: /\b(?:was|were) (?=(?:the|my|that|those)\b)/, things: 'one', tail: /^ (?:(?:on|in|at|with|to) )?(?:the )?[a-z]+(?: [a-z]+){0,3} or (?:(?:on|in|at|with|to) )?(?:the )?[a-z]+/, tailNeeded: true, weak: true, weight: 2, make: s => /\b(?:done|ordered|bought|paid|today|yesterday|monday|tuesday|wednesday|thursday|friday|saturday|sunday)\b/.test(s.tail![0]) || s.desk.text[s.stop - 1] !== '?' && !/\b(?:before|when|originally)\b/.test(s.desk.text.slice(s.end, s.stop)) ? undefined : was(s.names[0], undefined) },
  { name: 'what W did X have before', open: new RegExp(String.raw`\bwhat ${WHAT} (?:did|had) `), things: 'one', tail: new RegExp(String.raw`^ (?:have|had|run|show|take|carry)\b(?=[^.?!]*\b${PAST}\b)[^.?!]*?(?=$|[.?!]|${ONWARD})`), tailNeeded: true, weight: 8, make: s => was(s.names[0], s.m[1]) },
  { name: 'what did I measure W at on X', open: new RegExp(String.raw`\bwhat (?:did i|had i|have i) (?:measured?|got|get|read|note|write down|find|clock|mark)(?: (?:down|for|as|the|my))* ${WHAT}(?: (?:at|as|to be))?(?: at)? (?:on|of|in|at) `), things: 'one', tail: BEFORE, weight: 3, make: s => MONEYISH.test(s.m[1]!) || /\b(?:done|into|down|to|on|at|far)\b/.test(s.m[1]!) || !/measure|read|clock|mark|note|before|when|original/.test(s.m[0] + (s.tail?.[0] ?? '')) ? undefined : was(s.names[0], s.m[1]) },
  { name: 'what was the W on X', open: new RegExp(String.raw`\bwhat(?:s| is| was| were|d)?(?: the| my)? (?:original |old |as found )?${WHAT} (?:(?:was|were|had i|did i have|did i (?:get|find|measure|read|write down|note)) )?(?:${ON}) `), things: 'one', tail: BEFORE, weight: 2, make: s => wasOnly(s) },
  { name: 'what W did X have', open: new RegExp(String.raw`\bwhat ${WHAT} (?:did|had|was|were) `), things: 'one', tail: new RegExp(String.raw`^ (?:have|had|got|show|run|in|on|at|set (?:to|at)|read|measure|come (?:off|out) at|sit in|hooked in|hooked|sat in|at before|before|originally)\b[^.?!]*?(?=$|[.?!,]|${ONWARD})`), tailNeeded: true, weight: 4, make: s => was(s.names[0] === s.m[1] ? spokenOf(s.desk, s.start) : s.names[0], s.m[1]) },
  { name: 'what was X gapped at', open: /\bwhat (?:was|were|did|had|is) /, things: 'one', tail: new RegExp(String.raw`^ (?:been )?(?:(gapped|shimmed|torqued|set|lashed|measured|timed|adjusted|tightened|running|measure|read|shim|come out|come off|sitting|spaced|wired|charging)\b(?: (?:at|to|with|out|up|off))*|(?:before|originally|when)\b|(?:look|looked) like(?= before| when| orig))(?:[^.?!]*?(?=$|[.?!,]|${ONWARD}))`), tailNeeded: true, weight: 4, make: s => was(s.names[0], QUALITY[s.tail?.[1] ?? '']) },
  { name: 'what did I have X at', open: /\bwhat did i have /, things: 'one', tail: /^ (?:set |gapped |torqued |shimmed )?(?:at|to|with|on)\b(?: (?:before|originally|when)[^.?!]*)?/, tailNeeded: true, weight: 4, make: s => was(s.names[0], undefined) },
  { name: 'how I had X routed', open: /\bhow (?:i|we) (?:had|have|d|ve|got) (?=(?:the|my|that|those|it|them)\b)/, things: 'one', tail: new RegExp(String.raw`^ (?:all )?(routed|set|hooked|fitted|wired|arranged|connected|mounted|run|plumbed|stacked|shimmed|rigged|laid out|adjusted|timed|on|in|strung|threaded|positioned)\b[^.?!]*?(?=$|[.?!]|${ONWARD})`), tailNeeded: true, weak: true, weight: 4, make: s => was(s.names[0], manner(s)) },
  { name: 'where did X go before', open: /\bwhere (?:did|does|was|were|would) /, things: 'one', tail: new RegExp(String.raw`^ (?:go|fit|sit|hook|attach|mount|run|bolt|connect|connected|hooked|attached|fitted|mounted|come from|live|belong)\b[^.?!]*?\b(?:before|originally|from (?:new|the factory)|when it (?:was|came)|to start with|to begin with)\b[^.?!]*?(?=$|[.?!]|${ONWARD})`), tailNeeded: true, weight: 6, make: s => was(s.names[0], undefined) },
  { name: 'what was the W before', open: /\b(?:what|whatd|whats) (?:was|were|had|did)? ?(?:i have |i find |be )?(?:the |its |their )(backlash|end play|endplay|gaps?|clearances?|lash|torque|pressure|preload|timing|pitch|run ?out|float|play|sag|tension|voltage|height|depth|thickness|spacing|position|settings?|length|travel|shims|reading|measurements?)(?: ?(?:before\b|originally|as found|to (?:start|begin) with\b|when\b|(?<=(?:was|were) (?:the|its|their) [a-z ]+)(?= ?(?:\?|$))))/, tail: new RegExp(String.raw`^[^.?!]*?(?=$|[.?!]|${ONWARD})`), weight: 8, make: s => was(spokenOf(s.desk, s.start), s.m[1]) },
  { name: 'how was X hooked', open: /\bhow(?: (?:was|were|is|are|did|had)|d|s) (?:i have |we have |i |we )?/, things: 'one', tail: new RegExp(String.raw`^ (?:been )?(hooked|set|mounted|routed|fitted|wired|arranged|stacked|shimmed|held|fixed|facing|run|strung|threaded|assembled|oriented|orientated|positioned|attached|connected|laid out|rigged|installed|located|lined up|go|went|sit|sat|fit|together|look|come apart|come off|before|originally|when|fastened|adjusted|hung|timed|plumbed|put together|go on|go together|go in|go back|wound|clocked|bolted|seated|spaced|laced|face|point|lie|stand|stack|slot|seat|ride|lean|engage|key|mate|register|mesh|hook|attach|mount|run|turn)\b[^.?!]*?(?=$|[.?!]|${ONWARD})`), tailNeeded: true, weight: 3, make: s => was(s.names[0], manner(s)) },
  { name: 'how X was', open: /\bhow (?=(?:the|my|that|those)\b)/, things: 'one', tail: new RegExp(String.raw`^ (?:(?:was|were|had been) (routed|run|wired|plumbed|gapped|shimmed|timed|hooked|set|fitted|mounted)\b|was|were|went|came|sat|used to|had been|goes|go|fitted|fits|looked)\b[^.?!]*?(?=$|[.?!]|${ONWARD})`), tailNeeded: true, weak: true, weight: 1, make: s => was(s.names[0], s.tail?.[1] ? manner(s) : undefined) },
  { name: 'how many W was X', open: new RegExp(String.raw`\bhow many ([a-z]+)(?: (out|in|up|down|off|round|back|open))? (?:was|were) (?=(?:the|my|that|those)\b)`), things: 'one', tail: new RegExp(String.raw`^[^.?!]*?\b${PAST}\b[^.?!]*?(?=$|[.?!]|${ONWARD})`), tailNeeded: true, weight: 6, make: s => MONEYISH.test(s.m[1]!) ? undefined : was(s.names[0], s.m[2] ? `${s.m[1]!} ${s.m[2]}` : s.m[1]) },
  { name: 'how many W before', open: new RegExp(String.raw`\bhow many ${WHAT}(?: (?:were|was|did|had|are|went|came|on|it))*(?: (?:there|it|they|have|in|had))*(?: (?:before|originally|when|as found|to start with|to begin with)\b[^.?!]*)`), weight: 2, make: s => /hours?/.test(s.m[1]!) ? undefined : was(spokenOf(s.desk, s.start), s.m[1]) },
  { name: 'which way round did X go', open: /\b(?:which|what) (way(?: (?:round|around|up|out|about|on))?|side|end|direction|order|hole|position|notch|slot|angle|face|groove)(?: (?:was|were|did|does|do|is|had|would|out|up|round|around|of))* /, things: 'one', tail: /^(?: (?:goes|go|went|was|were|face|faced|facing|sit|sat|in|on|up|out|round|around|hooked|point|pointed|pointing|fit|fitted|mount|mounted|come|came|turn|bolted|before|originally|have|run|lean|hang|hung|lie|set))*(?: (?:before|when|originally)\b[^.?!]*)?/, weight: 4, make: s => /\b(?:to see|see|saw|find out|found out|check(?:ed)?|looked?|know|knew|noted|marked) $/.test(s.desk.text.slice(0, s.start)) && s.desk.text[s.stop - 1] !== '?' ? undefined : was(sitter(s) ?? s.names[0], (s.m[1] === 'order' ? undefined : apart(s)) ?? (/^way/.test(s.m[1]!) ? (/round|around/.test(s.m[0] + (s.tail?.[0] ?? '')) ? 'which way round' : /\bup\b/.test(s.m[0] + (s.tail?.[0] ?? '')) ? 'which way up' : 'which way') : s.m[1])) },
  { name: 'was there a W under X', open: new RegExp(String.raw`\b(?:was|were) there (?:an? |any |some |supposed to be an? |ever an? )${WHAT} (?:${ON}) `), things: 'one', tail: BEFORE, weak: true, weight: 6, make: s => /\b(?:crack|leak|problem|note|quote|price|order)s?$/.test(s.m[1]!) ? undefined : was(s.names[0], s.m[1]) },
  { name: 'X before it came apart', open: new RegExp(String.raw`\b(?:remind me|tell me|show me|give me|whats|what was|what were) (?:how many|of |about |again )?(?:the )?${WHAT} (?:${ON}) `), things: 'one', tail: BEFORE, weight: 1, make: s => s.tail?.[0].trim() ? wasOnly(s) : undefined },
  { name: 'as found W of X', open: new RegExp(String.raw`\bas (?:found|was|it was) ${WHAT} (?:${ON}) `), things: 'one', weak: true, weight: 2, make: s => was(s.names[0], s.m[1]) },
];

const QUALITY: Record<string, string> = { gapped: 'gap', shimmed: 'shims', torqued: 'torque', tightened: 'torque', lashed: 'lash', timed: 'timing', charging: 'voltage', shim: 'shims' };

/** "which way were they in, ears up or ears down": the two ways. */
const apart = (s: Seen): string | undefined => /^, ?([a-z]+(?: [a-z]+){0,3} or [a-z]+(?: [a-z]+){0,3})(?= ?(?:\?|$|\.))/.exec(s.desk.text.slice(s.end, s.stop))?.[1];

/** "which side of the arm did the spacer sit on": the part is what sat there. */
function sitter(s: Seen): string | undefined {
  const m = / of $/.test(s.m[0]) ? /^(?: [a-z]+){0,3}? (?:did|was|were|does|do|had|has) (?=(?:the|my|that|those)\b)/.exec(s.desk.text.slice(s.end, s.stop)) : undefined;
  return m ? thingAt(s.desk, s.end + m[0].length, s.stop)?.name : undefined;
}

/** "hooked second hole or third hole": the noun that is told apart; else what the verb is about. */
function manner(s: Seen): string | undefined {
  const after = s.tail?.[0] ?? '';
  const apart = /\b(?:first|second|third|fourth|top|bottom|inner|outer|left|right|upper|lower|front|back|middle|inside|outside|near|far|long|short) ([a-z]+)(?: or| and)\b/.exec(after);
  if (apart) return apart[1];
  const verb = s.tail?.[1] ?? '';
  return QUALITY[verb] ?? ({ routed: 'routing', run: 'routing', wired: 'wiring', plumbed: 'plumbing' } as Record<string, string>)[verb];
}

/** "what was the backlash on X": a past verb, or words that say before; a present figure is another question. */
function wasOnly(s: Seen): Ask[] | undefined {
  const what = s.m[1]!.replace(/^(?:the|my) /, '');
  const past = /\bwhat(?:s| is)? [^.?!]*\b(?:was|were|did|had)\b|\bwhat (?:was|were)\b|\bwhatd\b|original|as found/.test(s.m[0]) || /before|when|originally|as (?:found|it was|it came)|to (?:start|begin)/.test(s.tail?.[0] ?? '');
  if (!past || MONEYISH.test(what) || /\b(?:i|you|it|did|do|is|that|best|cheapest|price|done|left|late|due)\b/.test(what)) return undefined;
  return was(s.names[0], what);
}

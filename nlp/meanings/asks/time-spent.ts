import type { Ask } from '../../../domain/model/ask.ts';
import { daysOf, foundIn, frontedDays } from './desk.ts';
import { spokenOf } from './spoken-of.ts';
import { thingsAt } from './things-at.ts';
import { thingAt } from './thing-at.ts';
import type { AskRule, Seen } from './rule.ts';
import { beside, stated } from './stated.ts';

/** Hours so far, on a part or between days. */
export const TIME_SPENT: readonly AskRule[] = [
  { name: 'dollars and hours on X', open: /\b(?:(?:dollars|money|cost|spend) and (?:the )?(?:hours|time)|(?:hours|time) and (?:the )?(?:dollars|money|cost))(?: (?:spent|so far|put|in|total))* (?:on|in|into|for) /, things: 'one', weight: 5, make: s => [{ kind: 'spent', part: s.names[0] }, { kind: 'timeSpent', part: s.names[0] }] },
  { name: 'how much time has X had', open: /\bhow (?:much|many) (?:(?:shop |bench |work(?:ing)? )?(?:time|hours)) (?:has|have|did) /, things: 'one', tail: /^ (?:had|taken|eaten|swallowed|take|got|used(?: up)?|soaked up)\b/, tailNeeded: true, weight: 5, make: s => [{ kind: 'timeSpent', part: s.names[0], ...daysOf(s.desk, s.start, s.stop, 'past') }] },
  { name: 'how long did X take me', open: /\bhow long(?:s| did| has| have| is| was) /, things: 'one', tail: /^ (?:take|taken|took|cost|set me back|been taking)(?: me| us)?(?= ?(?:$|[?.,]|so far|altogether|all told|in all))/, tailNeeded: true, weight: 5, make: s => [{ kind: 'timeSpent', part: s.names[0] }] },
  { name: 'how many hours', open: /\bhow (?:many (?:h?ours?|hrs|minutes|days|evenings)|much time|much of my time|many man ?hours)(?: (?:of work|all told|total|so far|in total|altogether))?(?= ?(?:have|has|had|did|do|ive|i |we|am|is|are|was|were|on|in|into|$|[?.,]|went|gone|for|spent|since|this|so|total|all|put))(?: (?:have|has|had|did|ive|i|we|weve|is|are|do|am|was|went|gone|been|got|ve|put|spent?|spend|sunk|logged|worked|clocked|done|at|it|there|that|work|working|booked|total|so far|in|into|on|for|towards|already|all told|up))*/, weight: 4, make: s => /^[^?]*\b(?:could not|couldnt|i dont|nobody) (?:say|know)/.test(s.desk.text.slice(s.end)) || /\b(?:running|run|meter|on the (?:meter|clock|engine))\b/.test(s.desk.text.slice(s.end, s.end + 24)) && !/spent|put|got/.test(s.m[0]) ? undefined : /\b(?:till|until|before|left|to go|does|will|take)\b/.test(s.desk.text.slice(s.end, s.end + 18)) && !/since|spent/.test(s.desk.text.slice(s.start, s.stop)) ? undefined : hours(s) },
  { name: 'how long have I spent', open: /\bhow long(?: (?:in all|all told|altogether|in total|so far))? (?:have i|ive|am i(?= (?:at|on|into)\b)|did i|have we|has it|did we|did it|i|was i|did that|has that|did)(?: (?:actually|all|now|really|been|got))* ?(?:spent|spend|put in(?:to)?|been|work(?:ed|ing)?|had|gone|take me|taken(?: me)?|took me|took|working|at|i work|i spend|take)\b(?: (?:working|so far|in|me|at it|at|putting|spending|messing|fiddling|work|been))*/, weight: 4, make: s => /\b(?:till|until|since it|waiting|been (?:on order|out|off|gone|sitting|due))\b/.test(s.desk.text.slice(s.start, s.end + 12)) ? undefined : hours(s) },
  { name: 'total hours', open: /\b(?:total|all the|my|the|sum of|overall|whole|running|tally|tot up the|add up the|list the|show me the|give me the)(?: (?:total|running|shop|labou?r|my|of|the))* (?:hours?|time|labou?r)(?: (?:total|so far|spent|to date|put|logged|in|worked))*(?= ?(?:$|[?.,]|on|in|into|for|this|since|from|between|last|and))/, weak: true, weight: 2, make: s => /^(?:the|my|all the|whole) (?:time|hour|whole time)$/.test(s.m[0]) ? undefined : hours(s) },
  { name: 'hours on X', open: /(?:^|[.?!;,] |\b(?:and|and the|plus|plus the|show me|give me|tell me|me) )(?:hours|hrs|time|man ?hours|labou?r)(?: (?:so far|to date|total|spent|put|in|logged|booked|charged|worked))* (?:on|in|into|for|to|against) (?=(?:the|my|both|[a-z]))/, weak: true, weight: 2, make: s => hours(s) },
  { name: 'X hours so far', open: /(?:^|[.?!;,] |\band )(?:the |my )?(?=((?:[a-z]+ )?[a-z]+) hours (?:so far|to date|this|since|in total|all told)\b[^.?!]*\?)/, weak: true, weight: 3, make: s => titled(s) },
  { name: 'hours total', open: /(?:^|[.?!;,] |\band )(?:hours|time) (?:in total|total|altogether|all told|in all)(?= ?(?:$|[?.,]))/, weak: true, weight: 1, make: s => hours(s) },
  { name: 'my total there', open: /\b(?:whats|what is) (?:my|the) total (?:there|now|on (?:it|that|them))(?= ?(?:$|[?.,]|and\b))/, weight: 5, make: s => { const part = spokenOf(s.desk, s.start), told = foundIn(s.desk, Math.max(0, s.start - 120), s.start).some(f => f.dim === 'span' && /^(?:hours|minutes)$/.test(f.value.unit)); return told ? [{ kind: 'timeSpent', ...(part ? { part } : {}) }] : undefined; } },
  { name: 'hours too', open: /(?:^|[.?!;,] |\band )(?:(?:the|my) )?(?:hours|time)(?:,? (?:too|as well|also|likewise|the same|whil(?:e|st) (?:(?:youre|were|im|you are|we are|i am) (?:at|on) it|(?:youre|were|im) (?:here|there))))+(?= ?(?:$|[?.,]))/, weak: true, weight: 2, make: s => { const part = spokenOf(s.desk, s.start); return [{ kind: 'timeSpent', ...(part ? { part } : {}), ...daysOf(s.desk, s.start, s.stop, 'past') }]; } },
  { name: 'and the hours', open: /(?:,? and|,? plus| \+)(?: uh)? (?:the |my |total |all the |its )?(?:hours|time)(?: (?:both|too|as well|in total|altogether|beside them|whil(?:e|st) (?:(?:youre|were|im|you are|we are|i am) (?:at|on) it|(?:youre|were|im) (?:here|there))|on (?:it|that|them)|so far|to date))*(?:,? (?:whats|what is|what are|what does|what do|how much is|how many is) (?:that|it|they|those|the total)(?: (?:come to|at|now|so far|stand(?:ing)? at|make|altogether|amount to))*)?(?= ?(?:$|[?.]))/, weight: 2, make: s => /\b(?:spent|money|dollars|cost|quid|pounds|cash|laid out|chucked|bill|total|did|done)\b/.test(s.desk.text.slice(Math.max(0, s.start - 90), s.start)) && beside(s) ? [{ kind: 'timeSpent', ...(/\b(?:altogether|all told|in total)\b/.test(s.m[0]) ? {} : daysOf(s.desk, Math.max(0, s.start - 60), s.stop, 'past')) }] : undefined },
  { name: 'hours this month', open: /(?:^|[.?!;,] |\band )(?:hours|hrs|time)(?: (?:worked|in|spent|put in|logged|so far|total))*(?= (?:this|last|since|yesterday|today)\b)(?=[^.?!]*(?:\?|$))/, weak: true, weight: 2, make: s => s.desk.text.slice(s.end, s.stop).split(' ').length <= 6 ? hours(s) : undefined },
  { name: 'my time on X', open: /\b(?:whats|what is|hows|give me|show me|tell me|total)(?: up)? (?:my|our|the) (?:time|hours|labou?r)(?: (?:so far|been|spent|put in|gone|come to))* (?:on|in|into|at|with|for) /, weight: 3, make: s => hours({ ...s, end: s.end - 4 }) },
  { name: 'how much of my life', open: /\bhow (?:much|many) (?:of my (?:life|time|week|weekends?|evenings?|days)|(?:man ?)?(?:hours|evenings|days|nights|weekends|afternoons|mornings|time))(?: (?:has|have|had|is|are|did|do|i|we|the|gone|been|went|got|given|give|devoted|wasted|burned|burnt|taken|sunk|put|poured|spent|lost|to))* (?:in|into|on|to|with|at|over|given|give) /, weight: 5, make: s => /\b(?:minutes|miles)\b|\b(?:left|till|until|will|does)\b/.test(s.m[0]) ? undefined : hours({ ...s, end: s.end - 6 }) },
  { name: 'what does that make on X', open: /\b(?:how (?:long|many hours|much time)|what)(?:s| does| is| do| will)? (?:that|it|this|all that) (?:make|come to|bring it to|add up to|total)(?: (?:altogether|so far|now|me|us|it|to|the total))* (?:on|for|in|with) /, things: 'one', weight: 7, make: s => /^what/.test(s.m[0]) ? undefined : [{ kind: 'timeSpent', part: s.names[0] }] },
  { name: 'time spent', open: /\b(?:what|whats|hows|how is|what are|what is)(?: the| my| our)? (?:hours?|time)(?: (?:have i|did i|ive|is|are|am|my|i|we|total|count|tally|looking|do i have|got|put|spent|spend|logged|so far|at))*(?= ?(?:$|[?.,]|on|in|into|for|at))/, weight: 1, make: s => /\bwhat(?:s)?(?: the)? time(?: is)?$/.test(s.m[0]) ? undefined : /hours|spen[dt]|put|logged/.test(s.m[0]) ? hours(s) : undefined },
];

function hours(s: Seen): Ask[] | undefined {
  const { desk } = s;
  if (stated(s)) return undefined;
  if (/^[^?]*\b(?:could not|couldnt|couldn t|i dont|nobody) (?:say|know)/.test(desk.text.slice(s.end, s.stop))) return undefined;
  const cut = /(?:,? and|,) (?:uh )?(?:whats?|where|wheres|how|when|whens|who|is|can|do|any)\b/.exec(desk.text.slice(s.end, s.stop));
  const stop = cut ? s.end + cut.index : s.stop;
  const own = daysOf(desk, s.start, stop, 'past'), days = own.from ? own : frontedDays(desk, s.start);
  if (/\b(?:both|the two|each|all) of them\b|\bthe pair of them\b|\b(?:on|in|into|for|at) both(?= ?(?:$|[?.,]))/.test(desk.text.slice(s.start, stop)) && desk.spoken.length > 1) return [...new Set(desk.spoken.filter(x => x.end <= s.start).map(x => x.name))].map(part => ({ kind: 'timeSpent', part, ...days }));
  const names = partsIn(s, stop);
  return names.length ? names.map(part => ({ kind: 'timeSpent' as const, part, ...days })) : [{ kind: 'timeSpent', ...days }];
}

function partsIn(s: Seen, stop: number): string[] {
  const from = Math.max(s.start, s.end - 6);
  for (const m of s.desk.text.slice(from, stop).matchAll(/\b(?:on|in|into|at|with|for|to|doing|over|against|given|give) (?=(?:the|my|this|that|it|them|both|[a-z]+)\b)/g)) {
    const at = from + m.index + m[0].length;
    if (/^this(?= (?:since|so|in|for|and|all|now|this|altogether)\b| ?(?:$|[?.,]))/.test(s.desk.text.slice(at)) && !s.desk.spoken.some(x => x.end <= s.start)) continue; // "been at this": all of it
    const t = thingAt(s.desk, at, stop);
    if (t && /^ ?and (?:the|my)\b/.test(s.desk.text.slice(t.end, stop))) { const all = thingsAt(s.desk, at, stop); if (all && all.names.length > 1 && /^ ?(?:$|[?.,])/.test(s.desk.text.slice(all.end, stop))) return all.names; }
    if (t && !/^(?:total|all|far|year|month|week|weekend|date|.*day|january|february|march|april|june|july|august|september|october|november|december|shop|new years?|hours?)$/.test(t.name)) return [t.name];
  }
  const direct = thingAt(s.desk, s.end, stop);
  return direct && !/day$|week|month/.test(direct.name) ? [direct.name] : [];
}

/** "mill hours so far?": the thing is said in front, as it stands in a heading. */
function titled(s: Seen): Ask[] | undefined {
  const said = s.m[1]!, part = (thingAt(s.desk, s.end, s.stop)?.name ?? said).replace(/ hours$/, '');
  return /\b(?:total|many|my|shop|man|work|labou?r|how|what|which|any)\b/.test(said) || foundIn(s.desk, s.start, s.stop).some(f => f.dim === 'span' && /^(?:hours|minutes)$/.test(f.value.unit)) ? undefined : [{ kind: 'timeSpent', part, ...daysOf(s.desk, s.start, s.stop, 'past') }];
}

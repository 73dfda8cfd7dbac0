import type { Ask } from '../../../domain/model/ask.ts';
import { foundIn, sentenceAt } from './desk.ts';
import { spokenOf } from './spoken-of.ts';
import { thingAt } from './thing-at.ts';
import type { AskRule, Seen } from './rule.ts';
import { stated } from './stated.ts';

const IN = /^(?: (?:so far|already|altogether|all told|all up|all in|now|total|in total|to date|up to now|today|this year|since|back|out|down))*,? (?:on|into|in|for|against|towards|over) (?=(?:the|my|this|that|it|them|both|[a-z]+)\b)/;
const MONEY = String.raw`(?:moneys?|cash|dollars|bucks|quid|pounds|euros?|dough|dosh|a fortune)`;
const GAVE = String.raw`(?:spent|spend|spending|put|sunk|sink|blown|blow|laid out|dropped|invested|poured|thrown|paid(?: out)?|parted with|handed over|stumped up|lashed out|ploughed|plowed|shelled out|forked out|got tied up|tied up|gone|got|coughed up|splashed out)`;

/** "money and time both": the hours are asked for in the same breath. */
const BOTH = /\b(?:pounds|quid|bucks|dollars|money) and hours\b|\b(?:money and (?:time|hours)|time and money|hours and (?:money|dollars|cash)|(?:dollars|cash|cost|euros?|quid) and (?:hours|time))\b/;
function money(s: Seen): Ask[] | undefined {
  if (stated(s)) return undefined;
  const asks = spent(s);
  return asks && BOTH.test(s.desk.text.slice(s.start, s.stop)) ? [...asks, ...asks.map((a): Ask => ({ ...a, kind: 'timeSpent' } as Ask))] : asks;
}
function spent(s: Seen): Ask[] | undefined {
  const m = IN.exec(s.desk.text.slice(s.end, s.stop));
  const t = m ? thingAt(s.desk, s.end + m[0].length, s.stop) : undefined;
  const part = s.names[0] ?? t?.name;
  return [{ kind: 'spent', ...(part && !/^(?:total|all|far|year|month|week|date|parts)$/.test(part) ? { part } : {}) }];
}
/** "how much paint", "how many hours" are other questions. */
const time = (s: Seen): boolean => /\b(?:hours?|time|minutes|days)\b/.test(s.desk.text.slice(s.start, s.start + 44).split(/ and (?:what|how|where)| dollars/)[0]!);

/** Money so far. */
export const SPENT: readonly AskRule[] = [
  { name: 'dollars too', open: /(?:^|[.?!;,] |\band )(?:(?:the|my) )?(?:dollars|money|cost|spend|cash)(?: (?:too|as well|also|likewise|the same|while youre at it))+(?= ?(?:$|[?.,]))/, weak: true, weight: 2, make: s => { const part = spokenOf(s.desk, s.start); return [{ kind: 'spent', ...(part ? { part } : {}) }]; } },
  { name: 'how much is X into me', open: /\bhow (?:much|deep) (?:is|has|have|does|did) /, things: 'one', tail: /^ (?:(?:already |now |so far |been )*)(?:into me(?: for)?|in for|set me back|set us back|swallowed|eaten(?: up)?|owe me|stand at|cost(?: me)?|run(?: me| to)?|soaked up|gobbled|taken out of me|taken off me|come to|stung me(?: for)?|rooked me|knocked me back|milked me(?: for)?|had out of me|got out of me|bled me(?: for)?)(?: so far)?/, tailNeeded: true, weight: 3, make: s => money(s) },
  { name: 'how much money has X swallowed', open: new RegExp(String.raw`\bhow (?:much|many) ${MONEY} (?:has|have|did|is|does|do) `), things: 'maybe', tail: /^ ?(?:i|we)?(?: got)? ?(?:in|into|on|swallowed|eaten(?: up)?|cost(?: me)?|taken|used(?: up)?|soaked up|gone (?:in|into|on)|put in|sunk in|tied up in)\b/, tailNeeded: true, weight: 4, make: s => s.names[0] && s.names[0] !== 'altogether' ? money(s) : inside(s) },
  { name: "what's X stand at", open: /\b(?:whats|what is|what does|wheres|where does|where is|how does) /, things: 'one', tail: /^ (?:stand me(?: in| at)?(?= ?(?:$|[?.,]|so far|now))|(?:stand(?:ing)?(?: me)?(?: at| in)?|sit(?:ting)? at|up to|running (?:me )?at)\b[^.?!]{0,30}?\b(?:dollars|money|cash|quid|pounds|spend|cost|so far|bucks)\b)/, tailNeeded: true, weight: 3, make: s => money(s) },
  { name: "what's the X stand at", open: /\b(?:whats|what does|wheres) /, things: 'one', tail: /^ at so far\b[^.?!]{0,20}/, tailNeeded: true, weight: 3, make: s => (/ stand$/.test(s.names[0]!) ? [{ kind: 'spent', part: s.names[0]!.replace(/ stand$/, '') }] : undefined) },
  { name: 'what X has cost me', open: /\b(?:what|how much) (?=(?:the|that|this|my|it)\b)/, things: 'one', tail: /^ (?:has |have |is |s )?(?:cost(?:ing)?|run|set|stood|owes?)(?: me)?(?: back| in)?(?: so far| altogether| to date| all told| up to now)?/, tailNeeded: true, weight: 2, make: s => /\b(?:put a (?:number|figure) on|tell me|remind me|work out|know|show me|add up|tot up|figure out|total up|give me|see) $/.test(s.desk.text.slice(0, s.start)) || s.desk.text[s.stop - 1] === '?' || /\b(?:so far|to date|all told|up to now)\b/.test(s.desk.text.slice(s.start, s.end + 24)) ? money(s) : undefined },
  { name: 'how much have I spent', open: new RegExp(String.raw`\bhow much(?: ${MONEY})?(?: (?:have|has|had|did|ve|do)? ?(?:i|we)| ive| weve| has| have)?(?: (?:actually|really|got|all|now|have|been|already|so far))* ?${GAVE}\b`), weight: 3, make: s => /\b(?:dont|do not|never) (?:ask|tell|want to know)(?: me)? $/.test(s.desk.text.slice(0, s.start)) || time(s) || /^ (?:a |per )?(?:hole|bolt|paint|oil|shim)/.test(s.desk.text.slice(s.end)) ? undefined : / got$/.test(s.m[0]) && !/money|cash|dollars|^.*\bin(?:to)?\b/.test(s.m[0] + s.desk.text.slice(s.end, s.end + 8)) ? undefined : money(s) },
  { name: 'how much into X', open: /\b(?:and |or )?how much(?: money| cash)? (?:in|into|on|for) /, things: 'one', weak: true, weight: 1, make: s => time(s) || /^ ?(?:end play|torque|paint|heat|oil)/.test(s.desk.text.slice(s.end)) || !/\b(?:spent|sunk|put|money|cost|dollars|into)\b/.test(s.desk.text) ? undefined : money(s) },
  { name: 'what have I spent', open: new RegExp(String.raw`\bwhat(?:ve| have| has| did| do| am|s| is)?(?: all)?(?: i| we| ive)?(?: (?:have|actually|all|got|been))* (?:spent|spend|sunk|laid out|paid out|put in(?:to)?|got into|in for|blown|shelled out|out of pocket|forked out|dropped on|parted with|handed over|stumped up|lashed out)\b`), weight: 2, make: s => /put in/.test(s.m[0]) && /\bhours|time\b/.test(s.desk.text.slice(s.start, s.stop)) ? undefined : /(?:put in(?:to)?|got into)$/.test(s.m[0]) ? into(s) : money(s) },
  { name: 'what has X cost', open: /\b(?:whats|what has|what is|how much has|how much did|what did|how much is|whatve|how much does|what have|how much have|hows|what will|whatd) (?=(?:the|this|that|my|it|all|[a-z]+ )\b)/, things: 'maybe', tail: /^ ?(?:(?:after )?cost(?:ing|ed)?(?: me| us)?|run me|set me back|stand(?:ing)? me(?: in)?|costed me|come to|stood me|owe me|owing me)\b(?: (?:so far|to date|all told|altogether|up to now|in all|in total))*/, tailNeeded: true, weight: 2, make: s => s.names[0] && !/\d/.test(s.desk.text.slice(s.start, s.stop)) ? money(s) : undefined },
  { name: 'total money on X', open: new RegExp(String.raw`\b(?:total|all the|running|whole|grand total of|total of the)? ?(?:money|cost|spend|spending|outlay|expenditure|bill|expenses?|costs|damage|dollars|tab|tally|parts bill|sum spent|amount spent|spent)(?: (?:total|so far|to date|spent|up to now|put|sunk|gone|altogether))* (?:on|upon|in|into|for) `), things: 'one', weak: true, weight: 1, make: s => /^(?:dollars|cost|bill|damage|cash)/.test(s.m[0].trim()) && /landed/.test(s.desk.text) || /\d/.test(s.desk.text.slice(Math.max(0, s.start - 8), s.start)) ? undefined : money(s) },
  { name: 'total spent', open: new RegExp(String.raw`\b(?:whats|what is|give me|show me|hows|how is|tell me|and|^|[.?!;,] ?)(?: ?(?:my|the|our|a|that))* ?(?:total(?: (?:spent|spend|cost|money|outlay|bill|so far|damage))+|running total|grand total|spend(?:ing)?(?: so far| to date| total)|money (?:spent|total)(?: so far)?|budget(?: so far| looking)|damage so far|tab(?: so far)?|bill so far)\b(?! hours)`), weight: 1, make: s => /\bhours?\b/.test(s.m[0]) ? undefined : money(s) },
  { name: 'what does that bring X to', open: /\b(?:whats|what does|what is|how much is|how much does|what do)(?: (?:that|it|this|all|the lot|everything|they))* (?:come to|make|bring (?:it|me|us) (?:up )?to|run to|add up to|amount to|stand at|total)(?: (?:so far|now|altogether|all told))* (?:on|for|in|with) (?=(?:the|my|this)\b)/, things: 'one', weight: 7, make: s => /\bhours?|time\b/.test(s.desk.text.slice(s.start, s.stop)) || /\b(?:landed|tax|shipping|freight|core)\b/.test(s.desk.text.slice(s.start, s.stop)) ? undefined : money(s) },
  { name: 'how much is in X so far', open: /\bhow much(?: (?:is|s|have i|have we|do i have|am i|money is))?(?: (?:got|tied up|gone|now))* (?:in|into) (?=(?:the|my|this|that|it)\b)/, things: 'one', weak: true, weight: 3, make: s => /\b(?:so far|to date|altogether|all told|money|dollars|spent|sunk)\b/.test(s.desk.text.slice(sentenceAt(s.desk, s.start).start, s.stop)) && !time(s) ? money(s) : undefined },
  { name: 'how deep in the hole am I', open: /\bhow (?:deep|far)(?: (?:in|into|down|the|a|hole|red|pocket))+ (?:am i|are we)(?: (?:on|with|over|for|in|into))? ?/, things: 'maybe', weight: 2, make: s => money(s) },
  { name: 'how much money is in X', open: new RegExp(String.raw`\bhow (?:much|many) ${MONEY}(?: (?:is|are|was|were|s|has gone|have gone|went|gone|do i have|have i))?(?: (?:there|gone|tied up|got|sunk))* (?:in|into) `), things: 'maybe', weight: 5, make: s => money(s) },
  { name: 'how deep am I in', open: /\bhow (?:deep|far) (?:am i|are we) in(?:to)?(?: for)?(?: on)? ?/, things: 'maybe', weight: 1, make: s => money(s) },
  { name: 'how much am I into X for', open: /\b(?:how much|what) am i (?:in|into|out) /, things: 'one', tail: /^ for\b/, weight: 3, make: s => money(s) },
  { name: 'how much am I in for', open: /\b(?:how much|what) am i (?:in|out|down|into)(?: (?:it|this|that))?(?: for| of pocket)?(?: (?:on|with|in|into) )?/, things: 'maybe', weight: 2, make: s => money(s) },
  { name: 'expenditure incurred on X', open: /\b(?:what|how much)(?: (?:total|the|is|was|has been))* (?:expenditure|expense|expenses|outlay|cost|costs|spending|money|sum|amount)(?: (?:have|has|had|i|is|was|been|so far|now|already|in total))* (?:incurred|laid out|run up|expended|committed|disbursed|paid out|spent|sunk|lavished)(?: (?:so far|to date|thus far|already))*/, weight: 4, make: s => money(s) },
  { name: 'how dear has X been', open: /\bhow (?:dear|expensive|costly|pricey|much of a (?:money|cash) pit)(?: (?:a|an|has|have|is|was|did|are))* /, things: 'one', tail: /^ (?:been|turned out|proved|got|gotten|become|worked out|come out|to me|so far)\b(?: (?:so far|to be|for me|to date))*/, tailNeeded: true, weight: 4, make: s => money(s) },
  { name: 'cost of X to date', open: /(?:^|[.?!;,] |\b(?:the|total|give me|show me|and) )(?:total |whole |all up |full )?(?:costs?|spend|outlay|bill) (?:of|for|on) /, things: 'one', tail: /^ (?:so far|to date|up to now|thus far|till now|altogether|all told|all in)\b/, tailNeeded: true, weight: 4, make: s => /^ ?(?:is|was|comes|came|stands|:|,) ?/.test(s.desk.text.slice(s.end, s.stop)) ? undefined : money(s) },
  { name: 'X cost to date', open: /(?:^|[.?!;,] |\band )(?=(?:the )?[a-z]+(?: [a-z]+){0,2}? (?:costs?|spend|spending|outlay|expenditure) (?:so far|to date)\b)/, things: 'one', tail: /^ ?(?:costs?|spend|spending|outlay|expenditure)? ?(?:so far|to date)\b/, tailNeeded: true, weight: 4, make: s => money({ ...s, names: s.names.map(n => n.replace(/ (?:costs?|spend|spending|outlay|expenditure)$/, '')) }) },
  { name: 'what does that make (money)', open: /\bwhat(?:s| does| is| do)? (?:that|it|this) (?:make|come to|bring (?:it|us|me) to|add up to|total)(?: (?:it|me|us|altogether|now|so far|in all|all told))*(?= ?(?:$|[?.,]))/, weight: 1, make: s => { const now = foundIn(s.desk, Math.max(0, s.start - 120), s.start).filter(f => f.dim === 'span').at(-1); const part = spokenOf(s.desk, s.start); const about = part ? { part } : {}; return now?.dim === 'span' && /^hours?|^minutes?/.test(now.value.unit) ? [{ kind: 'timeSpent', ...about }] : undefined; } },
  { name: 'dollars so far', open: /\b(?:whats|what) (?:it|the [a-z]+(?: [a-z]+)?|this [a-z]+(?: [a-z]+)?) (?:has )?cost(?:s)? (?:me )?so far/, weak: true, weight: 1, make: s => { const m = /(?:whats|what) /.exec(s.m[0])!; const t = thingAt(s.desk, s.start + m[0].length, s.stop); return [{ kind: 'spent', ...(t ? { part: t.name } : {}) }]; } },
];

/** "how many quid have I in the Heron". */
function inside(s: Seen): Ask[] {
  const t = thingAt(s.desk, s.end, s.stop);
  return [{ kind: 'spent', ...(t && t.name !== 'altogether' ? { part: t.name } : {}) }];
}

/** "what have I put into this crawler": the money, unless hours are said. */
function into(s: Seen): Ask[] | undefined {
  const t = thingAt(s.desk, s.end, s.stop);
  return /into$/.test(s.m[0]) ? money({ ...s, names: t ? [t.name] : [] }) : undefined;
}

import type { Ask } from '../../../domain/model/ask.ts';
import { verbForms } from '../../words/verbs.ts';
import { daysOf, frontedDays, sentenceAt } from './desk.ts';
import { spokenOf } from './spoken-of.ts';
import { thingAt } from './thing-at.ts';
import type { AskRule, Seen } from './rule.ts';

const LEAD = String.raw`(?: (?:all|exactly|else|work|jobs|stuff|things))?`;

/** "what I did today was…": told, not asked. */
const TELLS_ON = /^ (?:(?:today|yesterday|tonight|last night|this (?:morning|afternoon|evening|week)|then|first|next|instead|in the end|after|since|there|monday|tuesday|wednesday|thursday|friday|saturday|sunday) )*(?:was|is|s) /;

/** What was done to a part, or on a day. */
export const HISTORY: readonly AskRule[] = [
  { name: 'what did I do', open: new RegExp(String.raw`\bwhat(?:d|s)?${LEAD} (?:was it |is it |did |have |had |has been |has |was |were |got |work has been |work did )?(?:that )?(?:i|we|you|been|all|got)?(?: (?:get|got|been|have|ve|actually|ever|last|all|even|already|that|managed? to|was|did))* ?(?:do|did|done|doing|up to|accomplish|accomplished|get through|got through|worked on|work on|been at|work at|done so far|achieve)\b(?! (?:i|about|next|with|you|now|before|first)\b)(?: (?:so far|already|last|lately|yet|recently|get|done))*`), weight: 1, make: s => /^what (?:else |all )?(?:gets?|got to) /.test(s.m[0]) && !/\bgot done/.test(s.m[0]) || /\b(?:do i|should|can|could|will|to do|would|does|do you|did (?:it|that|he|she|they)|doing)\b/.test(s.m[0]) || !/\b(?:did|done|have|been|was|got|whatd|had)\b/.test(s.m[0]) || !/\b(?:i|we|been|got)\b/.test(s.m[0]) || /^what (?:i|ive|we|weve) /.test(s.m[0]) || /\bknow $/.test(s.desk.text.slice(0, s.start)) && /\byou know $/.test(s.desk.text.slice(0, s.start)) ? undefined : when(s) },
  { name: 'the last thing I did on X', open: /\b(?:whats|what is|what was|what were|remind me of|tell me) (?:the )?(?:last|latest|most recent)(?: [a-z]+)? (?:things?|jobs?|work|bits?|thing that)(?: that)? (?:i|we|was|got)(?: (?:have|had|got|was))? ?(?:did|done|carried out|worked)\b/, weight: 6, make: s => when(s) },
  { name: 'and the last thing I did to X', open: /(?:^|[.?!;,] |\band |\bplus )the (?:last|latest|most recent) (?:thing|job|work|bit)(?: that)? (?:i|we) did (?:to|on|with) /, things: 'one', tail: /^(?= ?(?:$|[?.,!]|and\b|please\b))/, tailNeeded: true, weight: 4, make: s => when(s, s.names[0]) },
  { name: 'what I do yesterday', open: /\bwhat (?:i|we) do (?=(?:yest(?:erday)?|last (?:week|weekend|night)|(?:on )?(?:mon|tues|wednes|thurs|fri|satur|sun)day)\b)/, weak: true, weight: 2, make: s => when(s) },
  { name: 'what I accomplished', open: /\bwhat (?:i|we)(?: (?:have|had|managed to|actually))? (?:accomplish(?:ed)?|achieved?|got through|get through|completed?|finished|worked at|attended to|carried out)\b/, weak: true, weight: 2, make: s => when(s) },
  { name: 'what I did', open: new RegExp(String.raw`\bwhat${LEAD} (?:i|we|ive|weve)(?: (?:have|actually|ever|last|all|got))* (?:did|done|got done|got up to|worked on|was doing|was at)\b`), weak: true, weight: 1, make: s => /\byou know $/.test(s.desk.text.slice(0, s.start)) || /^ ?\?/.test(s.desk.text.slice(s.end)) || TELLS_ON.test(s.desk.text.slice(s.end)) || /\b(?:you know what i did|thats what i did|and what i did was)\b/.test(s.desk.text.slice(Math.max(0, s.start - 9), s.end + 6)) ? undefined : when(s) },
  { name: 'when did I VERB X', open: /\bwhen (?:did|was|were|have|had|d) (?:i |we |it )?(?:last |first |ever |that i )*/, weight: 2, make: s => deed(s) },
  { name: 'when was X last VERBed', open: /\bwhen (?:was|were|did|had) /, things: 'one', tail: /^ (?:last |first |ever )?([a-z]+(?: (?:off|out|apart|down))?)\b/, tailNeeded: true, weight: 3, make: s => /^(?:come|go|get) (?:off|out|apart|down)$/.test(s.tail![1]!) || verbForms(s.tail![1]!.split(' ')[0]!).length && !/^(?:due|be|going|supposed|arrive|come|coming|expected|ready)\b/.test(s.tail![1]!) ? [{ kind: 'history', part: s.names[0] }] : undefined },
  { name: 'history of X', open: /\b(?:history|log|record|story|notes?|work|rundown|run down)(?: (?:of|on|for|done on|to))(?: (?:the )?(?:work|jobs|everything)(?: (?:on|done to|done on))?)? /, things: 'one', weak: true, weight: 2, make: s => /^(?:work|notes?|note|record)/.test(s.m[0]) && !/\b(?:show|list|read|give|what|whats|any|tell|see|pull up|all the|the) (?:me )?(?:back )?(?:the |my |all |all the )?$/.test(s.desk.text.slice(0, s.start)) ? undefined : when(s, s.names[0]) },
  { name: 'X history', open: /(?:^|[.?!;,] |\b(?:show me|the|give me|see|and|whats the|read me) )(?=(?:the )?(?:[a-z]+ ){1,4}history\b)/, things: 'one', tail: /^ ?history/, weak: true, weight: 2, make: s => s.tail || / history$/.test(s.names[0]!) ? when(s, s.names[0]!.replace(/ history$/, '')) : undefined },
  { name: 'what happened to X', open: /\b(?:what (?:happened|went on|got done|has happened|was done|all was done|has been done|was i (?:doing|at|working on|up to)|have i been (?:doing|at|up to|working on)|all got done|did we get done|work was done|work got done)|what did i (?:say|note|write(?: down)?|record|log|put down|tell you|have down))(?: (?:so far|all|then|about|to|on|with|for))?\b/, weight: 2, make: s => /^ (?:was|is) /.test(s.desk.text.slice(s.end)) ? undefined : /\bwhat did i (?:say|note)\b/.test(s.m[0]) && !/about|on/.test(s.m[0]) ? undefined : when(s) },
  { name: 'have I VERBed X', open: /\b(?:have|did|had) i (?:already |ever |actually |yet )?([a-z]+) (?:out |up |off |down )*(?:yet )?/, things: 'one', weak: true, weight: 1, make: s => /\b(?:which|what|where|how|why|who)\b[^.?!,]{0,24}$/.test(s.desk.text.slice(sentenceAt(s.desk, s.start).start, s.start)) ? undefined : done(s) },
  { name: 'has X been VERBed', open: /\b(?:has|have|had|did|was|were) (?=(?:the|my|that|those|this)\b)/, things: 'one', tail: /^ (?:ever |already |yet |actually |all )?(?:been|get|gotten|got) (?:ever |already |actually )?([a-z]+)\b(?: (?:yet|already|at all|before))?/, tailNeeded: true, weak: true, weight: 3, make: s => verbForms(s.tail![1]!).some(f => f.form === 'part') && !/^(?:order|deliver|ship|send|post|buy|find|put|hold|be|set|do)$/.test(verbForms(s.tail![1]!)[0]!.base) ? [{ kind: 'history', part: s.names[0] }] : undefined },
  { name: 'everything on X', open: /(?:\b(?:list|show me|give me|read me|tell me|read back|go over|take me through) (?:back )?|(?:^|[.?!] )(?=everything (?:ive|i have|i) (?:done|did)))(?:all|everything|all the work|the work|all the jobs|all ive|the things)(?: (?:that |which )?(?:ive |i |weve |we |was |has been |have |got )*(?:did|done|have done|been done))?(?: (?:to|on|about|for))? /, things: 'maybe', weight: 2, make: s => /\b(?:need|want|still|buy|get|order|late|due|temporary|loose)\b/.test(s.desk.text.slice(s.start, s.stop)) ? undefined : when(s, s.names[0]) },
  { name: 'what work went into X', open: /\bwhat (?:work|jobs?|all) (?:went|has gone|have gone|gone) (?:into|in|on) /, things: 'one', weight: 2, make: s => when(s, s.names[0]) },
  { name: 'what has X had done', open: /\bwhat(?:s| has| have| did| all has)? /, things: 'one', tail: /^ (?:had|have|got|get|gotten|been given) (?:done|doing)(?: to (?:it|them))?(?! before)\b/, tailNeeded: true, weight: 4, make: s => when(s, s.names[0]) },
  { name: 'what work on X', open: /\bwhat(?:s)? (?:works?|jobs?)?(?: ?(?:has|have|had|was|been|did|ive|i|got|gets))* (?:been )?(?:done|made|carried out|performed) (?:to|on|with|about) /, things: 'one', weight: 2, make: s => when(s, s.names[0]) },
];

/** The part after "to", "on", "with" and the days, in either order. */
function when(s: Seen, part?: string): Ask[] {
  const cut = /(?:,? and|,) (?:whats?|where|wheres|how|when|whens|who|is|can|do|any)\b/.exec(s.desk.text.slice(s.end, s.stop));
  const stop = cut ? s.end + cut.index : s.stop;
  const own = daysOf(s.desk, s.start, stop, 'past'), days = own.from ? own : frontedDays(s.desk, s.start);
  let name = part;
  if (!name) {
    for (const m of s.desk.text.slice(s.end - 4, stop).matchAll(/\b(?:to|on|with|about|for|at|in) (?=(?:the|my|that|this|it|them|both|[a-z]+)\b)/g)) {
      const t = thingAt(s.desk, s.end - 4 + m.index + m[0].length, stop);
      if (t && !dayWord(t.name) && !/^(?:(?:twenty|thirty) )?(?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|[a-z]+teenth|tenth|eleventh|twelfth|twentieth|thirtieth)$/.test(t.name)) { name = t.name; break; }
    }
  }
  return [{ kind: 'history', ...(name ? { part: name } : {}), ...days }];
}
const dayWord = (n: string): boolean => /^(?:(?:mon|tues|wednes|thurs|fri|satur|sun)days?|week|month|weekend|year|yesterday|january|february|march|april|may|june|july|august|september|october|november|december|first|second|.*th|day|date|own)$/.test(n) || /\d/.test(n);

function deed(s: Seen): Ask[] | undefined {
  const m = /^([a-z]+)(?: (?:up|down|in|on|off|out|back|together))*/.exec(s.desk.text.slice(s.end, s.stop));
  if (!m || !verbForms(m[1]!).length || /^(?:order|expect|need|start|finish|be|is|come|arrive)$/.test(m[1]!) && !/did i/.test(s.m[0])) return undefined;
  const t = thingAt(s.desk, s.end + m[0].length, s.stop) ?? undefined;
  const name = t?.name ?? (/\b(?:it|them|that)\b/.test(s.desk.text.slice(s.end, s.stop)) ? spokenOf(s.desk, s.start) : undefined);
  return name ? [{ kind: 'history', part: name }] : undefined;
}

function done(s: Seen): Ask[] | undefined {
  const verb = s.m[1]!;
  const form = verbForms(verb).find(f => /^(?:did)/.test(s.m[0]) ? f.form === 'base' : f.form === 'part' || f.form === 'past');
  if (!form || /^(?:have|do|be|spend|get|put|order|buy|need|say|tell|see|sink|blow|write|note|record|measure|jot|mention|log)$/.test(form.base)) return undefined;
  return [{ kind: 'history', part: s.names[0] }];
}

import type { Ask } from '../../../domain/model/ask.ts';
import { verbForms } from '../../words/verbs.ts';
import { daysOf } from './desk.ts';
import { spokenOf } from './spoken-of.ts';
import { thingAt } from './thing-at.ts';
import { deedBefore, OUTDOOR, outing, type Place } from './weather-work.ts';
import { type AskRule, asking, type Seen } from './rule.ts';
import { table } from '../../words/table.ts';

const SKY = String.raw`(?:rain(?:ing|y)?|wet|dry|snow(?:ing|y)?|freez(?:e|ing)|frost(?:y)?|windy?|blow(?:ing|y)?|hot|cold|warm|humid|fine|clear|sunny|storm(?:y|ing)?|damp|cool|pour(?:ing)?|thunder|mild|muggy|bitter|nice|decent|fit|good|okay|ok|too (?:cold|wet|windy|hot|damp|humid)|(?:dry|warm|calm|still|cool|mild|fine|good|nice|hot|clear) enough|a (?:good|fit|dry|decent) day|above freezing|below freezing|over freezing|shower(?:y|s)?)`;

const DAY = String.raw`(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day|tomorrow|today|the weekend|this weekend|next week|this afternoon|the afternoon)`;
const dated = (s: Place): boolean => daysOf(s.desk, s.start, s.stop, 'forward').from !== undefined;

/** Is the weather fit for a piece of work; what is coming. */
export const FORECAST: readonly AskRule[] = [
  { name: 'will Thursday do', open: /\b(?:is|will|would|hows|how is|whats|can|could) (?:it |this )?(?:the )?(?:the week(?: ahead)?|the next (?:few|couple of) days|(?:this |next |coming )?(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)(?: week| or (?:monday|tuesday|wednesday|thursday|friday|saturday|sunday))?|tomorrow|today|the weekend|this weekend|next week|the (?:day after|morning))(?: morning| afternoon| night| evening)? (?:be |going to |gonna |be |stay |keep |hold |turn |turn out |remain |come |looking |look |shaping up |giving |any |too |a )*(?:like|fit|suitable|possible|hold|off|rain(?:y)?|good|ok|okay|any good|do|dry|wet|better|best|safer|the better|the one|all right|alright|suit|work|warm|too cold|windy|decent|a good day|for)\b/, weight: 4, make: s => asking(s.desk, s.start) || /\b(?:gonna|going to)\b/.test(s.m[0]) && doing(s, s.end - 4) ? fore(s) : undefined },
  { name: 'what is the wind doing', open: /\b(?:what|whats|how|hows|howll|whatll)(?: (?:is|will|does|do|are|would))?(?: (?:the|my|this))? (?:wind|rain|frost|sky|snow|storms?|temperatures?|humidity|breeze|conditions)(?: (?:s|is|are|gonna|going to|meant to|supposed to|likely to|looking|due to|it))* (?:do(?:ing)?|be(?: like| doing| at)?|like|blow(?:ing)?|hold(?:ing)?|look(?:ing)?(?: like)?)\b/, weight: 5, make: s => fore(s) },
  { name: 'what is it doing out', open: /\b(?:whats|what is|what will|whatll|hows|how will) it (?:(?:going|gonna|meant|supposed|set|like|to|be|look|looking) )*(?:doing|do|like|be|be like|look like|give|giving|throw at (?:us|me))(?: (?:out|outside|out there|outdoors|weather wise|for weather))?\b/, weak: true, weight: 2, make: s => daysOf(s.desk, s.start, s.stop, 'forward').from || /\b(?:out|outside|out there|outdoors|weather)\b/.test(s.m[0]) ? fore(s) : undefined },
  { name: 'what are they giving', open: /\b(?:what|whats)(?: (?:sort|kind|manner) of)?(?: (?:a|an))?(?: [a-z]+)?(?: (?:do|are|is|have|will|did))? (?:they|he|the (?:radio|news|met office|weather ?man|forecasters?|wireless|telly)) (?:giving|give|calling for|call for|forecast(?:ing)?|promising|promise|predicting|predict|saying|say|got down|threatening|reckoning)\b/, weight: 3, make: s => /\b(?:about|for|on) (?:the|my) (?:price|part|order)/.test(s.desk.text.slice(s.end, s.stop)) ? undefined : /saying|say$/.test(s.m[0]) && !/\b(?:weather|rain|weekend|forecast|met office|weatherman)\b/.test(s.desk.text.slice(s.start, s.stop)) ? undefined : fore(s) },
  { name: 'will the rain hold off', open: /\b(?:will|is|does|do|would|could|think|reckon)(?: (?:the|this|that|it|you|think|reckon))* ?(?:rain|frost|wind|snow|storm|cold|heat|damp|sun|it|weather)(?: (?:is|s|going to|gonna|be|to|due to|likely to))* (?:hold(?:ing)?(?: off)?|keep(?:ing)? (?:off|away|dry|fine)|stay(?:ing)? (?:off|away|dry|fine|clear|put)|let up|ease(?: off)?|clear(?: up| off)?|stop|be gone|be over|blow (?:itself )?out|pass|lift|come|last|miss us|behave)\b(?: raining)?/, weak: true, weight: 4, make: s => /\bit\b/.test(s.m[0]) && /(?:come|stop|last|hold|hold off|lift|pass|be gone|be over|stay put|clear)$/.test(s.m[0]) && !/\b(?:rain|day|weekend|tomorrow|tonight|weather|dry)/.test(s.desk.text.slice(s.end - 8, s.stop)) ? undefined : fore(s) },
  { name: 'safe to paint on a day', open: /\b(?:am i|are we|is it|would i be|will i be|would it be|will it be) (?:(?:going to|gonna|be|still|likely to be) )*(?:safe|ok|okay|all right|alright|right|good|fit|clear|wise|mad|daft|able|sensible) (?:to|for|if i) (?=[a-z])/, weight: 4, make: s => /\byet\b/.test(s.desk.text.slice(s.end, s.stop)) || !daysOf(s.desk, s.start, s.stop, 'forward').from || !doing(s, s.end - 4) ? undefined : fore(s) },
  { name: 'chance of painting on a day', open: /\b(?:any|whats the|is there any|is there a|what are the) (?:chance|chances|hope|odds|use|sense|point)(?: (?:of|in|at|for))?(?: (?:me|us|getting|being able to|a))* (?=[a-z]+)/, weight: 4, make: s => (daysOf(s.desk, s.start, s.stop, 'forward').from || /\b(?:weather|outside|outdoors|rain)\b/.test(s.desk.text.slice(s.start, s.stop))) && /^(?:paint|spray|prim|coat|varnish|weld|strip|blast|mow|burn|pour|dry|rain|frost|snow|fine|weather|top ?coat|lift|rais|try|trying|run|tow|driv|wash|work)/.test(s.desk.text.slice(s.end)) ? fore(s) : undefined },
  { name: 'can I get X painted on a day', open: /\b(?:can|could|will|should|might) (?:i|we) (?:get|have) (?=(?:the|my|that|those|it|them)\b)/, weight: 4, make: s => /\b(?:painted|sprayed|primed|coated|varnished|top ?coated|blasted|welded)\b/.test(s.desk.text.slice(s.end, s.stop)) && /\b(?:rain|weather|frost|dry|outside|outdoors)\b/.test(s.desk.text.slice(s.start, s.stop)) ? fore(s) : undefined },
  { name: 'will it be any good for', open: /\b(?:will|is) it (?:(?:going to|gonna|be) )*(?:any good|any use|all right|alright|good enough|fit|suitable|ok|okay|good|right)(?: (?:day|weather|enough))? (?:for|to) (?=[a-z])/, weight: 4, make: s => doing(s, s.end - 4) && daysOf(s.desk, s.start, s.stop, 'forward').from ? fore(s) : undefined },
  { name: 'will tomorrow be drier for', open: new RegExp(String.raw`\b(?:will|would|is|are|might|could|reckon) (?:it|she|er|that|we|the weather|${DAY})(?: next)?(?: (?:be|going|gonna|to|get|any|a|bit|more|stay|bide|keep|hold|still|looking|look|turn out))* (?:fit|dry|drier|calm|calmer|warm|warmer|decent|good|better|still|fine|settled|nice)(?: (?:enough|out|outside|day|weather|${DAY}|or|use))* (?:for|to) (?=[a-z])`), weight: 4, make: s => dated(s) && doing(s, s.end - 4) ? fore(s) : undefined },
  { name: 'Saturday any good for', open: new RegExp(String.raw`(?:^|[.?!;,] |\b(?:is|will|does|uh|and|so) )${DAY}(?: next)?(?: (?:be|look|looking|is))? (?:any good|a (?:good|fit|dry) day|fit|any use|good enough) (?:for|to) (?=[a-z])`), weight: 4, weak: true, make: s => fore(s) },
  { name: 'is it fit to paint', open: /\b(?:is it|will it be|is that|will (?:that|it|those|they) (?:do|suit|be enough|be long enough)|will that be|any chance (?:of it|it) being|looking|hows it look(?:ing)?|is it going to be) (?:(?:fit|dry enough|warm enough|enough|good) )?(?:weather )?(?:to|for) (?=[a-z])/, weight: 4, make: s => { const what = doing(s, s.end - 4); return what && (dated(s) || daysOf(s.desk, Math.max(0, s.start - 90), s.start, 'forward').from) && OUTDOOR.test(what) ? fore(s) : undefined; } },
  { name: 'will I get X sprayed', open: /\b(?:will|can|could|might) (?:i|we) (?:get|have) (?=(?:the|my|that|those|it|them|a bit)\b)/, weight: 4, make: s => { const what = doing(s, s.start, s.stop); return what && OUTDOOR.test(what) && dated(s) ? fore(s) : undefined; } },
  { name: 'rain that day', open: /(?:^|[.?!;,:] )(?:(?:rain|frost|snow|wind|storms?|weather)(?: (?:that|on the|by|then|on|this|at all|or not))*|(?:dry|wet|hot|cold)(?: (?:that|on the|by|then|on|this|at all|or not))+) ?(?:day|then|time|night|weekend)?(?= ?\?)/, weight: 2, make: s => { const d = fore(s)[0]!; const all = daysOf(s.desk, 0, s.start, 'forward'); return [{ ...d, ...('from' in d && d.from ? {} : all) } as Ask]; } },
  { name: 'will the weather be fit', open: new RegExp(String.raw`\b(?!(?:is|are|was) forecast\b)(?:will|is|are|hows|how is|how will|howll|would|does|could|can|was|what about|hows about) (?:the )?(?:weather|forecast|sky|wind)\b`), weight: 4, make: s => fore(s) },
  { name: "what's the weather doing", open: new RegExp(String.raw`\b(?:whats|what is|what does|whatll|what will|what|hows|any|check|show me|give me|tell me|see|look at|get) (?:(?:the|me|look|like|kind of|sort of|is) )*(?:weather|forecast|outlook)\b(?! ?(?:station|strip|seal))`), weight: 3, make: s => /\b(?:any) weather/.test(s.m[0]) && !/[?]/.test(s.desk.text.slice(s.start, s.stop)) ? undefined : fore(s) },
  { name: 'is it going to rain', open: new RegExp(String.raw`\b(?:is it|will it|is there|are we|is today|is tomorrow|will there|will we (?:have|get) it|will we|does it look like|could it|is it likely|might it|will|going|are they) ?(?:(?:going|gonna|likely|supposed|due|meant|set|expected|to|be|get|getting|any|stay|turn|still|too|that|a|enough|have|calling for|for|giving|some|much|chance of|ever|looking|look like|look) )*${SKY}\b`), weight: 3, weak: true, make: s => sky(s) ? fore(s) : undefined },
  { name: 'is it to be dry', open: new RegExp(String.raw`\bis it to (?:be|stay|keep|turn|hold) ${SKY}\b`), weight: 5, make: s => { const d = fore(s)[0]!; const all = daysOf(s.desk, 0, s.start, 'forward'); return [{ ...d, ...('from' in d && d.from ? {} : all) } as Ask]; } },
  { name: 'weather for X', open: new RegExp(String.raw`(?:^|[.?!;,] |\band )(?:the )?(?:weather|forecast)\b(?= (?:between|for|on|over|this|next|tomorrow|today|tonight|at|fit|good|ok|okay|check|all right|from|mon|tue|wed|thu|fri|sat|sun|looking|report|\?)| ?\?)`), weight: 2, weak: true, make: s => fore(s) },
  { name: 'good day to paint', open: /\b(?:which|what|any|whats the best|is there a|whens (?:a|the next|there a|the best)|when is (?:a|the next|there a)|is|will|when will there be a|got a|which is the best|whens|when is) ?(?:(?:next|first|a|any|the|best|good|it|saturday|sunday|monday|tuesday|wednesday|thursday|friday|tomorrow|today|be|this|next|week|weekend|coming|of the week|day|is|would be|will be|looks|looking|going to be|dry|decent|chance of|best|fit|ok|okay) )*(?:day|days|window|spell|stretch|weather window|gap|time|break in the weather|dry spell|weekend|chance|afternoon|morning|dry day|dry days|good|fit|best|ok|okay)\b(?: (?:this|next|coming|in the|of|the|week|weather|dry|good|enough|weekend|for it|forecast))* ?(?:to|for|that|coming|when|dry|fit|long enough)\b/, weight: 2, weak: true, make: s => { const d = doing(s, s.end - 4); return /\bagain\b/.test(s.desk.text.slice(s.end, s.stop)) ? undefined : d || /dry|weather|window|rain/.test(s.m[0]) ? fore(s) : undefined; } },
  { name: 'can I paint outside', open: /\b(?:can|could|should|dare|may|might|would|will|shall) (?:i|we|one) (?:reasonably |possibly |safely |sensibly |usefully |be able to |be ok to |be safe to |chance |get away with |risk |safely |get away with |be |leave |do )*(?=(?:(?:re)?(?:paint|spray|prime|coat)|tar|gloss|enamel|antifoul|flood|undercoat|lime|whitewash|creosote|shoot|lacquer|topcoat|coat|varnish|work|put|strip|blast|sand|mow|burn|pour|glue|weld)(?:ing)?\b)/, weight: 3, make: s => (/\b(?:outside|outdoors|weather|rain|out (?:in|of) the|in this (?:cold|wet|damp|humidity)|forecast)\b/.test(s.desk.text.slice(s.start, s.stop)) || onADay(s)) && !/\byet\b/.test(s.desk.text.slice(s.start, s.stop)) ? fore(s) : undefined },
  { name: 'if it is dry, can I paint X', open: new RegExp(String.raw`\bif (?:it|the weather|${DAY}) (?:is|s|stays|keeps|be|holds|turns out)[^.?!]{1,30}?,? (?:can|could|may|should|will|might) (?:i|we) (?:get |have )?(?=[a-z])`), weight: 5, make: s => { const what = doing(s, s.end - 3); return what && OUTDOOR.test(what) && dated(s) ? fore({ ...s, end: s.start }) : undefined; } },
  { name: 'painting tomorrow fit?', open: new RegExp(String.raw`(?:^|[.?!;,] )(?:painting|spraying|priming|coating|varnishing|undercoating|tarring|oiling|mowing|pouring|lifting) (?:the [a-z]+(?: [a-z]+)? )?(?:on )?${DAY}(?: (?:be|is|looking))? (?:fit|ok|okay|possible|any good|on|all right|alright)(?= ?\?)`), weight: 5, make: s => { const [ask] = fore(s), base = verbForms(/[a-z]+ing/.exec(s.m[0])![0]).find(f => f.form === 'ing')?.base; return [{ ...ask, ...(base && !('for' in ask! && ask.for) ? { for: base } : {}) } as Ask]; } },
  { name: 'too cold to paint', open: /\b(?:is|will|are|was|be|isnt) (?:it |the shop |that |this )?(?:be |going to be |gonna be )?(?:too (?:cold|wet|windy|hot|damp|humid)|(?:dry|warm|calm|still|cool) enough) (?:to|for) /, weight: 4, make: s => fore(s) },
  { name: 'when will it be dry', open: /\bwhen (?:will|is|does|s) it (?:going to |gonna |next |be )*(?:dry|fit|warm|stop raining|clear up|rain|warm up|dry up|dry out|be dry|be fit|be warm|let up|fine)\b/, weight: 2, make: s => fore(s) },
  { name: 'rain coming?', open: /(?:^|[.?!;,] |\band )(?:any |much |is )?(?:rain|frost|snow|wind|storms?|showers|dry days|dry weather)(?: (?:coming|forecast|due|expected|on the way|about|likely|this|next|tomorrow|tonight|today|over|on|for|at|before|in))+[^.?!]*\?/, weight: 1, make: s => fore(s) },
];

/** "can I paint the hood today": work that waits on the weather, and a day for it; "can I put the head on tomorrow" asks what holds it up. */
const onADay = (s: Seen): boolean => /^(?:re)?(?:paint|spray|shoot|lacquer|prim(?:e|ing)|top ?coat|coat|varnish|strip|blast|mow|burn|pour|tar|gloss|enamel|antifoul|flood|undercoat|lime|whitewash|creosote)/.test(s.desk.text.slice(s.end, s.stop))
  && /\b(?:today|tomorrow|tonight|this (?:morning|afternoon|evening|arvo|week)|weekend|(?:mon|tues|wednes|thurs|fri|satur|sun)day|next week)\b/.test(s.desk.text.slice(s.start, s.stop));

/** "will it be good" and the like speak of weather only with a day, work out of doors, or a plain weather word. */
function sky(s: Seen): boolean {
  const m = s.m[0], all = s.desk.text.slice(s.start, s.stop);
  if (/^going\b/.test(m) && !s.desk.sentences.find(x => s.start >= x.start && s.start < x.end)?.asked) return false; // "going to freeze hard tonight"
  if (/\b(?:good|okay|ok|fit|nice|decent|fine|clear|hot|cold|warm|dry|cool|wet|blowing|damp)$/.test(m)) {
    if (!/\b(?:it|there|today|tomorrow|we)\b/.test(m) || /\bis it (?:good|ok|okay|fine|clear|hot|dry|fit|cold|warm|wet|damp)$/.test(m)) return /\b(?:outside|weather|today|tomorrow|weekend|tonight|(?:mon|tues|wednes|thurs|fri|satur|sun)day|next week|this week)\b/.test(all) && !/\byet\b/.test(all) && /\bit|weather\b/.test(m);
    return /\b(?:outside|weather|today|tomorrow|weekend|tonight|day|week|morning|afternoon)\b/.test(all) || /\b(?:paint|spray|prim|coat|weld|pour|glu)/.test(all);
  }
  return true;
}

/** The weather for what the words from here to the end of the sentence speak of. */
export function fore(s: Place): Ask[] {
  const { text } = s.desk;
  const cut = /(?:,? and|,|\?) (?:uh )?(?:whats?|where|wheres|how|when|whens|who|can|do|any|if)\b/.exec(text.slice(s.end, s.stop));
  const stop = cut ? s.end + cut.index : s.stop;
  let days = eitherDay(s, stop) ?? daysOf(s.desk, Math.max(0, s.start - 1), stop, 'forward');
  if (!days.from) days = daysOf(s.desk, sentenceStart(s), stop, 'forward');
  if (days.from && days.from === days.to && /\b(?:hold|stay|last|keep|dry|fine|off|out)\b[^.?!]{0,16}\b(?:till|until|til|through to|up to) (?:[a-z]+ )?$/.test(s.desk.text.slice(s.start, s.start + s.desk.text.slice(s.start, stop).search(/\b(?:mon|tues|wednes|thurs|fri|satur|sun)day|\btomorrow|\bweekend|\bend of/)))) days = { to: days.to! };
  if (days.from && days.from === days.to && UP_TO.test(text.slice(s.start, stop).replace(/\b(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day)\b.*$/, ''))) days = { ...days, from: s.desk.sheet.ctx.at.slice(0, 10) };
  const what = rather(s) ?? coating(s, stop) ?? doing(s, s.start, stop) ?? outing(s, stop) ?? deedBefore(s, stop) ?? wish(s, stop);
  if (!days.from && !days.to && what) days = daysOf(s.desk, Math.max(0, sentenceStart(s) - 90), sentenceStart(s), 'forward'); // "I've a mind to spray Sunday. Will it be dry?"
  return [{ kind: 'forecast', ...(what ? { for: what } : {}), ...days }];
}
/** "between now and Sunday", "through Friday": from today. */
const UP_TO = /\b(?:between now and|from now (?:to|till|until)|now (?:to|till|until)|through)(?: (?:till|until|to))? $/;
/** "Thursday or Friday", "Wednesday through to Friday": both are meant. */
function eitherDay(s: Place, stop: number): { from?: string; to?: string } | undefined {
  const m = /\b(?:mon|tues|wednes|thurs|fri|satur|sun)day(?: (?:any good|fit|good|ok|okay|dry))?(?:,? or|,? (?:right )?(?:through|thru|till|until)(?: to| till)?| to) (?=(?:mon|tues|wednes|thurs|fri|satur|sun)day)/.exec(s.desk.text.slice(s.start, stop));
  if (!m) return undefined;
  const cut = s.start + m.index + m[0].length, a = daysOf(s.desk, s.start, cut, 'forward'), b = daysOf(s.desk, cut, stop, 'forward');
  return a.from && b.to && b.to > a.from ? { from: a.from, to: b.to } : undefined;
}
const sentenceStart = (s: Place): number => s.desk.sentences.find(x => s.start >= x.start && s.start < x.end)?.start ?? 0;

/** "dry enough to sow? No, to paint the deck, I mean": said over. */
function rather(s: Place): string | undefined {
  const next = s.desk.sentences.find(x => x.start >= s.stop - 1), m = next && /^ ?no,? (?:wait,? |sorry,? )?(?:to|for) /.exec(s.desk.text.slice(next.start, next.end));
  return m ? doing(s, next!.start + m[0].length - 4, next!.end) : undefined;
}

/** What is put on, and the deed that it stands for. */
const COATS: Readonly<Record<string, string>> = table({ primer: 'prime', undercoat: 'undercoat', 'top coat': 'top coat', topcoat: 'top coat', gloss: 'gloss', enamel: 'enamel', varnish: 'varnish', lacquer: 'lacquer', tar: 'tar' });
const COLOUR = String.raw`(?:green|red|blue|black|yellow|grey|gray|white|orange|silver|colou?r)`;
const COATING = new RegExp(String.raw`\b(?:(?:(?:(?:a|the|my|some|another|next|first|second|third|final|last|bit|of) )+|(?:get|getting|put|putting|lay|laying|spray|brush|for|slap) )(coat of paint|coat|top ?coat|undercoat|gloss|enamel|primer|paint|varnish|lacquer|tar)|(?:put|putting|get|getting|lay|laying|slap|slapping) (?:some |the )?${COLOUR}) (?:on|onto|over) (?=(?:the|my|that|those|it|them)\b)`);
/** "a second coat on the elevator", "to get gloss on the frames", "putting green on the hood". */
function coating(s: Place, stop: number): string | undefined {
  const m = COATING.exec(s.desk.text.slice(s.start, stop)), t = m && thingAt(s.desk, s.start + m.index + m[0].length, stop);
  return t && !/^(?:.*day|weekend|week|morning|afternoon|evening)$/.test(t.name) ? `${COATS[m![1] ?? ''] ?? (m![1] === 'coat' ? 'coat' : 'paint')} ${t.name}` : undefined;
}

/** "to spray the hopper", "for spraying the hood", "paint it": base verb and part. */
function doing(s: Place, from: number, stop = s.stop): string | undefined {
  const { text } = s.desk;
  const made = /\b(?:get|have) (?=(?:the|my|that|those|it|them)\b)/.exec(text.slice(from, stop)), t = made && thingAt(s.desk, from + made.index + made[0].length, stop);
  const part = t && /^ ([a-z]+)\b/.exec(text.slice(t.end, stop)), past = part && verbForms(part[1]!).find(f => f.form === 'part' || f.form === 'past');
  if (past) return `${past.base} ${t!.name}`;
  if (part && /^(?:out|in|up|down|off)$/.test(part[1]!)) return `${made![0].trim()} ${t!.name} ${part[1]!}`; // "to have the mower out"
  for (const m of overlapping(text.slice(from, stop), /\b(?:to|for|i|and|get|the|get on with|do|doing|let me|me|of|a|some|would|could|should|can|will|person|you|one) (?:reasonably |possibly |sensibly |be |go |start |get |do some |do a bit of |put |a |the |some |bit of |on with |finish |risk |more )*(top ?coat(?:ing)?|red (?:oxide|lead)|[a-z]+)\b/g)) {
    const verb = m[1]!;
    const form = /^top ?coat/.test(verb) ? { base: 'top coat', form: 'base' } : verbForms(verb).find(f => f.form === 'ing' || f.form === 'base') ?? (/\b(?:fit|enough|dry|good|able|ok|okay|saturday|sunday|weekend|tomorrow) to (?:[a-z]+|red [a-z]+)$/.test(text.slice(from, from + m.index + m[0].length)) && / to /.test(` ${m[0]}`) && /^ (?:the|my|that|those)\b/.test(text.slice(from + m.index + m[0].length)) ? { base: verb, form: 'base' } : undefined); // "fit to resin the trough": a deed by its place
    if (!form || /^(?:be|rain|snow|do|go|get|have|freeze|hold|come|last|look|stay|say|dry|wind|weather|stop|mean|use|frost|turn|clear|check|fit|know|see|work|plan|think|expect|let|want|need|wait|start|finish|keep|hold|give|worry|cover|bring|bother|mind|better|watch|paint job|leave|bide)$/.test(form.base) || form.base === 'blow' && !/^ (?:the|my|it|that|out) /.test(text.slice(from + m.index + m[0].length)) || form.base === 'try' && /^ to\b/.test(text.slice(from + m.index + m[0].length))) continue;
    const at = from + m.index + m[0].length;
    const particle = /^ (?:out|up|off|down|in|on|back)\b(?= )/.exec(text.slice(at, stop));
    const t = thingAt(s.desk, at + (particle?.[0].length ?? 0), stop);
    const noun = /\b(?:the|a|some) [a-z ]*$/.test(m[0].slice(0, m[0].length - verb.length)) && form.form === 'base' && !t;
    if (noun) continue;
    const trailing = t && !particle ? /^ (?:off|out|down|up)(?= ?(?:$|[?.,]|outside|outdoors|in the))/.exec(text.slice(t.end, stop))?.[0] ?? '' : '';
    return `${form.base}${particle?.[0] ?? ''}${t ? ` ${t.name}` : ''}${trailing}`;
  }
  return undefined;
}

function* overlapping(text: string, re: RegExp): Generator<RegExpExecArray> {
  for (let m = re.exec(text); m; m = re.exec(text)) { yield m; re.lastIndex = m.index + 1; }
}

/** "…, I want to paint the pole": the wish beside the question. */
function wish(s: Place, stop: number): string | undefined {
  const { text } = s.desk;
  const around = text.slice(0, text.length);
  for (const m of around.matchAll(/\b(?:i want to|i wanted to|i was hoping to|im hoping to|i hope to|id like to|i need to|ive got to|i have to|im going to|i was going to|want to|hoping to|planning to|thinking of|thinking about|i plan to|wanting to|im after|going to|gotta|got to|i was thinking of|i got to|need to|a mind to|meaning to|figured on|figure on|fixing to|looking to|aiming to|thought id|thinking id|thought i would) (?=([a-z]+))/g)) {
    if (Math.abs(m.index - s.start) > 120) continue;
    const got = doing({ ...s, desk: s.desk }, m.index + m[0].length - 3, Math.max(stop, sentenceEnd(s, m.index)));
    if (got) return got;
  }
  const done = /\b(?:want|need|like|got|ive|have) (?=(?:the|my|that|those) )/.exec(text), thing = done && thingAt(s.desk, done.index + done[0].length, sentenceEnd(s, done.index)), how = thing && /^ (?:to )?([a-z]+)( up| in| on| out)?\b/.exec(text.slice(thing.end)), past = how && verbForms(how[1]!).find(f => / to /.test(how[0]) || /^ to/.test(how[0]) ? f.form === 'base' : f.form === 'part');
  if (how && /^(?:off|out|on|in|up|down)$/.test(how[1]!) && /^(?:want|need|like)/.test(done![0])) return `${thing!.name} ${how[1]!}`; // "I want the tank off outside"
  if (past) return `${past.base}${how[2] ?? ''} ${thing!.name}`; // "I want the frame painted", "I've the hood to paint"
  const plan = /\b(?:want|like|need|mean|hoping|going|got|we|i) (?:to |can )?([a-z]{3,}) (?=(?:the|my|that|those)\b)/.exec(text.slice(s.start)), planned = plan && thingAt(s.desk, s.start + plan.index + plan[0].length, s.desk.text.length);
  if (planned && plan && OUTDOOR.test(plan[1]!)) return `${plan[1]!} ${planned.name}`;
  const coat = /\b(?:put|get|lay|for) (?:on )?(?:the|a|my) ((?:next|first|second|third|final|last|top|finish|finishing) coat)(?= ?(?:on )?(?:$|[?.,!]|this|next|today|tomorrow|outside|(?:mon|tues|wednes|thurs|fri|satur|sun)day))/.exec(text.slice(s.start, stop))?.[1];
  if (coat) return coat;
  const stuff = /\bfor (?:the |a |some )?(paint|enamel|gloss|primer|undercoat|varnish|top ?coat|lacquer)(?= ?(?:$|[?.,]|outside|outdoors|on (?!the|my|that|it))| job\b)/.exec(text.slice(s.start, stop))?.[1];
  if (stuff) return COATS[stuff] ?? stuff;
  const kind = /\b([a-z]+ing) (?:weather|conditions|day)\b/.exec(text.slice(s.start, stop)), base = kind && verbForms(kind[1]!).find(f => f.form === 'ing')?.base;
  if (base && base !== 'do') return base;
  const it = /\b(?:paint|spray|prime|coat) (?:it|them)\b/.exec(text.slice(s.start, stop));
  const name = it && spokenOf(s.desk, s.start);
  return it && name ? `${it[0].split(' ')[0]} ${name}` : undefined;
}
const sentenceEnd = (s: Place, at: number): number => s.desk.sentences.find(x => at >= x.start && at < x.end)?.end ?? s.desk.text.length;

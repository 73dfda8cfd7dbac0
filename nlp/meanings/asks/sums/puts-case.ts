import { slateOf } from '../../../dimensions/rule.ts';
import type { Desk } from '../desk.ts';

/** "hmm", "no,", "too fast,": said of the answer before another case is put. */
const SAID = /^(?:(?:hmm|no|right|well|ah|oh|too [a-z]+|thats too [a-z]+),? )+(?=(?:and |but |so )?(?:what (?:if|about)|how about|if|only|call it|make it|say|try|with|at|for)\b)/;
const CASE_PUT = /^(?:(?:no,? )?(?:sorry|sry|scra(?:p|tch) that|i meant?|meant|correction|my mistake)(?!,? (?:that|it) was\b)|and|or|would|will|is|does|could|should|what|how|same|for|at|with|if|then|ok|okay|now|but|in|make it|call it|take it|only|so|try|say|suppose|supposing|\d)\b/;
/** "three flats then", "fourteen?": nothing but a figure. */
const FIGURE = /^#~*(?!~)(?: [a-z%]+)?(?: then| instead|,? please)? ?[?.]? ?$/;
/** "eight gauge then same thing", "twas 240 not 225, same again": a figure put right or added, and the sum wanted once more. */
const ONCE_MORE = /\b(?:same (?:again|thing|question|sum)|(?:do|run|work|figure) (?:it|that)(?: out)? (?:again|over)|make (?:it|that)|call it)\b|^(?:[a-z]+ ){0,2}(?:no|not|wait|twas)\b/;
/** A note that puts another case of what the note before asked. */
export function putsCase(desk: Desk, at: number): boolean {
  const text = desk.text.slice(at);
  return CASE_PUT.test(text.replace(SAID, '')) || FIGURE.test(slateOf(desk.line, desk.sheet.ctx.at).mask.slice(at)) || text.length < 90 && ONCE_MORE.test(text);
}

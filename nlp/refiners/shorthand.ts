import { isOfName } from '../dimensions/part/known.ts';
import { isNumberWord } from '../text/number-words.ts';
import type { Sheet, Token } from '../types.ts';
import { CONDITION } from '../words/conditions.ts';
import { FIGURED, REGIONAL, SHORTHAND, SIDED } from '../words/shorthand.ts';
import { nounClasses } from '../words/nouns.ts';
import { verbForms } from '../words/verbs.ts';
import { change } from './change.ts';
import { isWord } from './vocabulary.ts';

/** "b4", "w/", "2day", "2 the", "4 the": shorthand written out. */
export function expand(sheet: Sheet, tokens: readonly Token[]): Token[] {
  const out: Token[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const t = { ...tokens[i]! }, next = tokens[i + 1], prev = tokens[i - 1];
    const joined = next && next.start === t.end ? FIGURED[t.low + next.low] : undefined;
    if (joined) { out.push({ ...t, text: t.text + next!.text, low: joined, end: next!.end, mended: true }); sheet.trace.push({ stage: 'mend', rule: 'shorthand', text: t.text + next!.text, gave: joined }); i++; continue; }
    if (t.low === 'w' && next?.low === '/' && next.start === t.end) { out.push({ ...t, text: 'w/', low: 'with', end: next.end, mended: true }); sheet.trace.push({ stage: 'mend', rule: 'shorthand', text: 'w/', gave: 'with' }); i++; continue; }
    const number = numbered(tokens, i);
    if (number) { out.push(number); sheet.trace.push({ stage: 'mend', rule: 'shorthand', text: number.text, gave: number.low }); if (number.text.endsWith('.')) i++; continue; }
    const sided = SIDED[t.low];
    if (sided && (t.text === t.text.toUpperCase() || t.low !== 'rr') && !isOfName(sheet.ctx.parts, t.low) && !(t.low === 'rh' && isHumidity(tokens, i))) {
      sheet.trace.push({ stage: 'mend', rule: 'shorthand', text: t.text, gave: sided.join(' ') });
      for (const low of standsAlone(next, tokens[i + 2]) ? [...sided, 'one'] : sided) out.push({ ...t, low, mended: true });
      continue;
    }
    if (/^[LR]$/.test(t.text) && !isNumberWord(prev?.low ?? '') && !/\d\.\d/.test(prev?.text ?? '') && /^\p{L}{2,}/u.test(next?.low ?? '')) change(sheet, t, t.text === 'L' ? 'left' : 'right', 'shorthand');
    if (/^(am|pm)$/.test(t.low) && prev?.low === 'this') change(sheet, t, t.low === 'am' ? 'morning' : 'afternoon', 'shorthand');
    if (/^[a-z]{3,}in$/.test(t.low) && next && /^['’]$/.test(next.text) && next.start === t.end) { change(sheet, t, `${t.low}g`, 'regional'); out.push({ ...t, text: `${t.text}${next.text}`, end: next.end }); i++; continue; }
    if (/^[a-z]{3,}in$/.test(t.low) && !isWord(t.low) && !isOfName(sheet.ctx.parts, t.low) && (verbForms(`${t.low}g`).some(f => f.form === 'ing') || /^(any|some|no|every)thin$/.test(t.low))) change(sheet, t, `${t.low}g`, 'regional'); // "stoppin"
    const past = /^[a-z]{3,}d$/.test(t.low) && !isWord(t.low) && !isOfName(sheet.ctx.parts, t.low) ? PAST.map(([end, full]) => t.low.replace(end, full)).find(w => w !== t.low && verbForms(w).some(f => f.form === 'past')) : undefined; // "cleand", "straightnd"
    if (past) change(sheet, t, past, 'shorthand');
    const regional = REGIONAL[t.low];
    if (regional && !isOfName(sheet.ctx.parts, t.low) && !(/^th?$/.test(t.low) && (t.text !== t.low || !/^\p{L}{2,}/u.test(next?.low ?? '') || next!.start === t.end || /^(\d.*|don|can|won|isn|doesn|didn|wasn|ain|couldn|wouldn|shouldn|haven|hasn|aren|weren)$/.test(prev?.low ?? '')))) { change(sheet, t, regional, 'regional'); out.push(t); continue; }
    const worded = SHORTHAND[t.low];
    if (worded && !(t.low === 'w' && !next) && !(t.low === 'u' && /^(joints?|bolts?|clamps?|bends?|section|channel|trap)$/.test(next?.low ?? '')) && !isOfName(sheet.ctx.parts, t.low) && !/^\d/.test(prev && prev.end === t.start ? prev.text : '') || worded && /^(wks?|hrs?|mins|yrs?)$/.test(t.low)) change(sheet, t, worded, 'shorthand');
    else if (t.low === '2' && next && /^(the|a|my|go|get|do|be|see|it|him|them)$/.test(next.low) || t.low === '2' && next && /^(\d|-)/.test(next.low) && prev && /^(torqued|set|good|gapped|down|up|tightened|adjusted)$/.test(prev.low)) change(sheet, t, 'to', 'shorthand');
    else if (t.low === '4' && next && /^(the|a|my|it|now|good|supper|dinner|tea|lunch|paint|this|that)$/.test(next.low) && prev && !/^(the|of|all|need|got|has|had|only|have)$/.test(prev.low)) change(sheet, t, 'for', 'shorthand');
    else if (t.low === 'r' && t.text === 'r' && prev && next && /^\p{L}{2,}/u.test(prev.low) && /^\p{L}{2,}/u.test(next.low)) change(sheet, t, 'are', 'shorthand');
    else if (t.low === 'n' && prev && next && /^\p{L}/u.test(next.low)) change(sheet, t, 'and', 'shorthand');
    out.push(t);
  }
  return out;
}

/** How the end of a past form is cut short, and whole. */
const PAST: readonly (readonly [RegExp, string])[] = [[/d$/, 'ed'], [/([nrlt])d$/, 'e$1ed']];

/** "55 % RH", "RH is 60": the humidity of the air. */
const isHumidity = (tokens: readonly Token[], i: number): boolean => /^(\d.*|%|percent|pct)$/.test(tokens[i - 1]?.low ?? '') || /^(\d.*|is|at|of)$/.test(tokens[i + 1]?.low ?? '') && tokens.some(t => /^(dew|dewpoint|humid|humidity)$/.test(t.low)) || isNumberWord(tokens[i - 1]?.low ?? '');

/** Whether what comes after a side names no part: "LF and LR torqued", "RR reads open". */
const standsAlone = (next: Token | undefined, then: Token | undefined): boolean => (next !== undefined && CONDITION.has(next.low) && !/^\p{L}/u.test(then?.low ?? '')) || (!next || !/^\p{L}/u.test(next.low) || /^(and|or|is|was|are|were|at|to|on|in|has|had|one|ones)$/.test(next.low) ? !/^ones?$/.test(next?.low ?? '') : verbForms(next.low).length > 0 && nounClasses(next.low).size === 0);

/** "no. 2 exhaust", "no 2 cyl": a number of something; "no, 2", "four no 5 bolts" are corrections. */
function numbered(tokens: readonly Token[], i: number): Token | undefined {
  const t = tokens[i]!, prev = tokens[i - 1]?.low ?? '', dot = tokens[i + 1]?.low === '.' && tokens[i + 1]!.start === t.end ? tokens[i + 1] : undefined;
  const of = tokens[i + (dot ? 2 : 1)], after = tokens[i + (dot ? 3 : 2)]?.low ?? '';
  if (t.low !== 'no' || !of || !/^\d{1,2}$/.test(of.low) || !dot && !(t.text === 'No' && (/^[,:;]$/.test(prev) && /^\p{L}/u.test(after) && !/[^s]s$/.test(after) || /^\.?$/.test(prev) && nounClasses(after).has('part') && !/[^s]s$/.test(after))) && (isNumberWord(prev) || !/^\p{L}/u.test(prev) || !/^(\p{L}.*|[.,;:!?]|)$/u.test(after))) return undefined;
  return { ...t, text: dot ? 'no.' : t.text, low: 'number', end: dot?.end ?? t.end, mended: true };
}

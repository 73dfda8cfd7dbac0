import type { Sheet, Token } from '../types.ts';
import { isNumberWord } from '../text/number-words.ts';
import { nounClasses } from '../words/nouns.ts';
import { SIDES } from '../words/sides.ts';

const MARKER = /^(no|wait|sorry|rather|scratch|correction|actually|nope)$/;
const BETWEEN = /^(no|wait|sorry|rather|scratch|correction|actually|nope|that|i|mean|make|it|hang|on|hold|,|\.|\.\.|\.\.\.|…|-|–|—|say|read|wrong|misread|looking|right|at|now|'m|call|better|lied|tell|a|lie|was|looked|again|the|got)$/;

/**
 * Someone who corrects himself in one breath means the last: "four no five bolts", "twelve, no, I read it wrong, twenty-one thou",
 * "the left no the right one". The tokens taken back are dropped, and traced. Needs the values found; gives whether any token went.
 */
export function restart(sheet: Sheet): boolean {
  if (recounted(sheet) || lengthAgain(sheet) || measuredAgain(sheet)) return true;
  const cut = takenBack(sheet);
  if (!cut) return false;
  const [from, to] = cut;
  sheet.trace.push({ stage: 'refine', rule: 'said again', text: sheet.tokens.slice(from, to).map(t => t.text).join(' ') });
  sheet.tokens = sheet.tokens.filter((_, k) => k < from || k >= to);
  return true;
}

/** "three bolts no four": the count put right behind what it counts. */
function recounted(sheet: Sheet): boolean {
  const { tokens } = sheet;
  for (let m = 2; m < tokens.length - 1; m++) {
    if (!/^(no|sorry|wait)$/.test(tokens[m]!.low) || !/[^s]s$/.test(tokens[m - 1]!.low) || !isNumberWord(tokens[m - 2]!.low) && !/^\d+$/.test(tokens[m - 2]!.low)) continue;
    let to = m + 1;
    while (/^(no|wait|sorry|make|that|it|call|,)$/.test(tokens[to]?.low ?? '')) to++;
    const again = tokens[to], after = tokens[to + 1]?.low ?? '';
    if (!again || !isNumberWord(again.low) && !/^\d+$/.test(again.low) || isNumberWord(after) || /s$/.test(after) && nounClasses(after).size > 0 || /^(of|inch|inches|thou|foot|mil|mm|hundred|point)$/.test(after)) continue;
    sheet.trace.push({ stage: 'refine', rule: 'said again', text: tokens.slice(m - 2, to + 1).map(t => t.text).join(' ') });
    sheet.tokens = [...tokens.slice(0, m - 2), { ...tokens[m - 2]!, low: again.low, mended: true }, tokens[m - 1]!, ...tokens.slice(to + 1)];
    return true;
  }
  return false;
}

/** "four hours on the clutch no make that three and a half", "three hours today i tell a lie four": a length of time put right, without its unit, after what it was spent on. */
function lengthAgain(sheet: Sheet): boolean {
  const { tokens, found } = sheet;
  for (const first of found) {
    if (first.dim !== 'span' || first.to - first.from < 2) continue;
    const again = found.filter(f => f.dim === 'number' && f.from > first.to && f.from - first.to <= 14 && PUT_RIGHT.test(wordsOf(tokens, first.to, f.from))).sort((a, b) => a.from - b.from || b.to - a.to)[0];
    if (!again || found.some(f => f.from === again.from && f.dim !== 'number' && f.to > again.to) || !STANDS_ALONE.test(tokens[again.to]?.low ?? '.')) continue;
    const said = wordsOf(tokens, first.to, again.from), between = tokens.slice(first.to, first.to + said.slice(0, PUT_RIGHT.exec(said)!.index).split(' ').filter(Boolean).length);
    if (found.some(f => f !== first && f.dim === 'span' && f.from >= first.to && f.to <= again.from) || tokens[again.to]?.low === 'on' && between.some(t => t.low === 'on')) continue; // an hour on the one, and two on the other
    sheet.trace.push({ stage: 'refine', rule: 'said again', text: tokens.slice(first.from, again.to).map(t => t.text).join(' ') });
    const { start, end } = tokens[first.from]!; // the new figure stands where the old one stood
    sheet.tokens = [...tokens.slice(0, first.from), ...tokens.slice(again.from, again.to).map(t => ({ ...t, start, end, mended: true })), ...tokens.slice(unitFrom(sheet, first), first.to), ...between, ...tokens.slice(again.to)];
    return true;
  }
  return false;
}
const wordsOf = (tokens: readonly Token[], from: number, to: number): string => tokens.slice(from, to).map(t => t.low).join(' ');
/** What ends in words that put the figure before right. */
const PUT_RIGHT = /(?:^|\s)(?:no|nay|nope|sorry|wait|rather|actually|correction|i lie|i lied|(?<!\bi )(?:call|make) (?:it|that))(?: (?:,|\.|\.\.\.?|…|-|–|—|no|nay|i|tell|told|a|lie|lied|it|was|'s|that|call|make|more|like|nearer|hang|hold|on|say|rather))*$/;
/** What may follow a figure that stands for itself. */
const STANDS_ALONE = /^([^a-z0-9]+|today|yesterday|tonight|and|on|in|so|but|all|altogether|i|um|uh|then|with|for|really|now|by|at)$/;

/** "four millimetres no hang on five", "sixty mil of play in it no hang on fifty": a figure put right without its unit. */
function measuredAgain(sheet: Sheet): boolean {
  const { tokens, found } = sheet;
  for (let m = 2; m < tokens.length - 1; m++) {
    if (!MARKER.test(tokens[m]!.low)) continue;
    const { first, second } = around(sheet, m), old = found.find(f => f.dim === 'measure' && f.to - f.from >= 2 && (f.to === first || f.to < first && first - f.to <= 4 && tokens[f.to]!.low === 'of')), again = found.filter(f => f.from === second && f.dim === 'number').sort((a, b) => b.to - a.to)[0];
    if (!old || !again || found.some(f => f.from === second && /^(measure|span|thread|percent|when)$/.test(f.dim)) || nounClasses(tokens[again.to]?.low ?? '').size > 0 || /^(of|for|to|off|in|bolts?|holes?|flats?|leaves)$/.test(tokens[again.to]?.low ?? '')) continue;
    sheet.trace.push({ stage: 'refine', rule: 'said again', text: tokens.slice(old.from, again.to).map(t => t.text).join(' ') });
    const { start, end } = tokens[old.from]!; // the new figure stands where the old one stood
    sheet.tokens = [...tokens.slice(0, old.from), ...tokens.slice(again.from, again.to).map(t => ({ ...t, start, end, mended: true })), ...tokens.slice(unitFrom(sheet, old), old.to), ...tokens.slice(old.to, first), ...tokens.slice(again.to)];
    return true;
  }
  return false;
}

/** Where the words of a measure's unit begin. */
function unitFrom({ tokens }: Sheet, m: { from: number; to: number }): number {
  let k = m.from;
  while (k < m.to - 1 && (/^[\d.,/½¼¾-]+$|^(and|an?|point|of)$/.test(tokens[k]!.low) || isNumberWord(tokens[k]!.low))) k++;
  return k;
}

/** From a marker of correction back to where what is taken back ends, and on to where what holds begins. */
function around(sheet: Sheet, m: number): { first: number; second: number } {
  const { tokens } = sheet;
  let first = m, second = m + 1;
  while (first > 0 && BETWEEN.test(tokens[first - 1]!.low)) first--;
  while (second < tokens.length && BETWEEN.test(tokens[second]!.low) && !valueFrom(sheet, second)) second++;
  return { first, second };
}

/** The stretch from the first value to just before the second, where a marker of correction and little else stands between. */
function takenBack(sheet: Sheet): [number, number] | undefined {
  const { tokens } = sheet;
  for (let m = 1; m < tokens.length - 1; m++) {
    if (!MARKER.test(tokens[m]!.low) && !(tokens[m]!.low === 'make' && /^(that|it)$/.test(tokens[m + 1]!.low))) continue;
    if (tokens[m]!.low === 'no' && /^(rain|shipping|frost|wind|spark|luck|more|less|need|good|idea|problem|post|postage)/.test(tokens[m + 1]!.low)) continue;
    const beside = tokens[m + 1]!.low === 'the' ? m + 2 : m + 1;
    if (SIDES.has(tokens[m - 1]!.low) && SIDES.has(tokens[beside]?.low ?? '') && tokens[m - 1]!.low !== tokens[beside]!.low && !/^(a|the)$/.test(tokens[m]!.low)) return [m - 1, tokens[m - 2]?.low === 'the' && tokens[m + 1]!.low === 'the' ? beside : m + 1 + (beside - m - 1)];
    const { first, second } = around(sheet, m), before = valueTo(sheet, first) ?? ofThat(sheet, first, second), after = valueFrom(sheet, second);
    if (before !== undefined && after !== undefined && alike(sheet, before, after) && !/^\.$/.test(tokens[first]?.low ?? '')) return [before.from, second];
    if (SIDES.has(tokens[first - 1]?.low ?? '') && second < tokens.length && SIDES.has(tokens[second]!.low) && second - first <= 3) return [first - 1, second];
  }
  return undefined;
}

/** "three eighths of slack no hang on five eighths of slack": what it is of said twice. */
function ofThat(sheet: Sheet, first: number, second: number): Value | undefined {
  const { tokens } = sheet, again = tokens[first - 2]?.low === 'of' ? valueFrom(sheet, second) : undefined;
  return again && tokens[again.to]?.low === 'of' && tokens[again.to + 1]?.low === tokens[first - 1]!.low ? valueTo(sheet, first - 2) : undefined;
}

type Value = { from: number; to: number; dim: string };
const valueTo = (sheet: Sheet, to: number): Value | undefined => sheet.found.filter(f => f.to === to && f.dim !== 'when').sort((a, b) => (b.to - b.from) - (a.to - a.from))[0];
const valueFrom = (sheet: Sheet, from: number): Value | undefined => sheet.found.filter(f => f.from === from && f.dim !== 'when').sort((a, b) => (b.to - b.from) - (a.to - a.from))[0];

/** Two values of a kind, or a bare number that gets its unit with the second try. */
function alike(sheet: Sheet, a: Value, b: Value): boolean {
  const bare = sheet.found.some(f => f.from === a.from && f.to === a.to && f.dim === 'number');
  return a.dim === b.dim || bare || sheet.found.some(f => f.from === b.from && f.dim === a.dim);
}

import { remembered } from '../../domain/model/remembered.ts';
import { isOfName, knownNames, type KnownNames } from '../dimensions/part/known.ts';
import type { Sheet, Token } from '../types.ts';
import { HEARD_APART, MISHEARD } from '../words/misheard.ts';
import { isTradeWord, nounClasses, singular } from '../words/nouns.ts';
import { CONDITION } from '../words/conditions.ts';
import { change } from './change.ts';
import { heardCompounds } from './heard-compounds.ts';
import { heardNames } from './heard-names.ts';
import { expand } from './shorthand.ts';
import { BY_LENGTH, isWord } from './vocabulary.ts';
import { oneSlip, slips } from './slip.ts';

const NONE: readonly string[] = [];

/**
 * Puts right what was typed in haste or heard wrong: shorthand, the shop's own names by sound and spelling, everyday words heard for the
 * trade's where a neighbour makes it plain, and slips in words that are none. Only `low` changes; `text` keeps what was said, and all is traced.
 */
export function mend(sheet: Sheet): void {
  const parts = knownNames(sheet.ctx.parts ?? NONE), machines = knownNames(sheet.ctx.machines ?? NONE);
  sheet.tokens = expand(sheet, sheet.tokens);
  heardBeside(sheet);
  sheet.tokens = joinApart(sheet, sheet.tokens);
  heardNames(sheet);
  heardCompounds(sheet, w => parts.words.has(w) || machines.words.has(w));
  for (const [i, t] of sheet.tokens.entries()) {
    if (!/^[a-z]{4,}$/.test(t.low) || t.mended || isWord(t.low) || parts.words.has(singular(t.low)) || parts.words.has(t.low) || machines.words.has(t.low)) continue;
    const meant = nearest(t.low, parts, machines);
    if (meant && !(namedHere(sheet.tokens, i) && !isTradeWord(meant) && !CONDITION.has(meant))) change(sheet, t, meant, 'a slip in a word');
  }
}

/** "the doffer", "doffer's out", "doffer is": where a thing stands, a word that nobody knows is the name of one, and no slip in a verb. */
function namedHere(tokens: readonly Token[], i: number): boolean {
  const before = tokens[i - 1]?.low ?? '', after = tokens[i + 1]?.low ?? '';
  return /^(the|a|an|my|his|her|our|its|that|this|those|these|both|new|old)$/.test(before) && !(after !== '' && nounClasses(after).size) || /^('s|is|are|was|were)$/.test(after) || (before === '' || /^[.,;:!?]$/.test(before)) && /^(off|out)$/.test(after);
}


/** The words of the trade that a word is heard for. */
const heardAs = remembered((low: string) => MISHEARD.filter(m => m.heard.test(low)));

/** "break lines", "king bold": an everyday word that sounds like the trade's, with a neighbour that only the trade's would have. */
function heardBeside(sheet: Sheet): void {
  sheet.tokens.forEach((t, i) => {
    for (const m of heardAs(t.low)) {
      if (t.low === m.meant || isOfName(sheet.ctx.parts, singular(t.low))) continue; // a plough's share bolts
      const own = m.own && isOfName(sheet.ctx.parts, singular(m.meant));
      if (!own && (m.before && !m.before.test(sheet.tokens[i + 1]?.low ?? '') || m.after && !m.after.test(sheet.tokens[i - 1]?.low ?? ''))) continue;
      change(sheet, t, /s$/.test(t.low) && !/s$/.test(m.meant) && /^(breaks|bearings|brings|letters|peddles|petals|valves|bolds|pens|vals|collars|pushings)$/.test(t.low) ? `${m.meant}s` : m.meant, 'heard for a word of the trade');
      break;
    }
  });
}

/** "dip stick": two words whose letters are one part's name of the trade, which has no such name in two. What the second word names by itself ("main shaft") stays as it is written, unless the shop has it in one. */
const oneWord = (sheet: Sheet, a: string, b: string): boolean => a.length >= 3 && b.length >= 3 && a.length + b.length >= 8 && /^[a-z]+$/.test(a + b) && nounClasses(a + b).has('part') && !nounClasses(`${a} ${b}`).size && (!nounClasses(b).has('part') || isOfName(sheet.ctx.parts, a + b));

/** "a coat of prime her": two words that were one. */
function joinApart(sheet: Sheet, tokens: readonly Token[]): Token[] {
  const out: Token[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const t = tokens[i]!, n = tokens[i + 1];
    const listed = n && HEARD_APART.find(([a, b, , after]) => t.low === a && n.low === b && after.test(tokens[i - 1]?.low ?? '.'));
    const hit = listed ?? (n && oneWord(sheet, t.low, n.low) && /^[\s-]$/.test(sheet.text.slice(t.end, n.start)) ? [t.low, n.low, t.low + n.low] as const : undefined);
    if (!hit) { out.push(t); continue; }
    sheet.trace.push({ stage: 'mend', rule: 'one word heard as two', text: `${t.text} ${n!.text}`, gave: hit[2] });
    out.push({ ...t, text: sheet.text.slice(t.start, n!.end), low: hit[2], end: n!.end, mended: true });
    i++;
  }
  return out;
}

const byLength = new WeakMap<KnownNames, Map<number, string[]>>();
function candidates(said: string, index: KnownNames): string[] {
  let table = byLength.get(index);
  if (!table) {
    table = new Map();
    for (const w of index.words.keys()) {
      if (!/^[a-z]+$/.test(w)) continue;
      const list = table.get(w.length);
      if (list) list.push(w); else table.set(w.length, [w]);
    }
    byLength.set(index, table);
  }
  const out: string[] = [];
  for (let n = said.length - 2; n <= said.length + 2; n++) out.push(...(table.get(n) ?? []));
  return out;
}

/** The word that a slip was meant to be: the shop's own first, then the trade's; none where two are as near. */
function nearest(low: string, parts: KnownNames, machines: KnownNames): string | undefined {
  const pick = (list: Iterable<string>, most: number): string | undefined => {
    let best: string | undefined, at = most + 1, tie = false;
    for (const w of list) {
      const d = slips(low, w);
      if (d < at) { best = w; at = d; tie = false; } else if (d === at && w !== best && singular(w) !== singular(best ?? '')) tie = true;
    }
    return tie ? undefined : best;
  };
  const own = [...candidates(low, parts), ...candidates(low, machines)];
  const plural = /s$/.test(low) ? own.map(w => `${w}s`) : [];
  const hit = pick([...own, ...plural], low.length >= 6 ? 2 : 1);
  if (hit && (hit[0] === low[0] || slips(low, hit) === 1)) return hit;
  if (low.length < 5) return undefined;
  const near: string[] = [];
  for (let n = low.length - 1; n <= low.length + 1; n++) for (const w of BY_LENGTH.get(n) ?? []) if (oneSlip(low, w) && byThumb(low, w)) near.push(w);
  const trade = pick(near, 1);
  return trade && trade[0] === low[0] ? trade : undefined;
}

const ROWS = ['qwertyuiop', 'asdfghjkl', 'zxcvbnm'];
/** Whether two letters lie side by side on a keyboard, or are both vowels. */
function beside(a: string, b: string): boolean {
  if (/[aeiou]/.test(a) && /[aeiou]/.test(b)) return true;
  const at = (c: string): [number, number] => { const row = ROWS.findIndex(r => r.includes(c)); return [row, ROWS[row]?.indexOf(c) ?? 9]; };
  const [ra, ca] = at(a), [rb, cb] = at(b);
  return ra === rb ? Math.abs(ca - cb) === 1 : Math.abs(ra - rb) === 1 && (ra < rb ? cb - ca : ca - cb) <= 0 && Math.abs(ca - cb) <= 1;
}

/** Whether a slip of a thumb makes `low` of `meant`: a letter left out, doubled, swapped, or the one beside it; not an ending ("buckle" is no "buckled"). */
function byThumb(low: string, meant: string): boolean {
  if (/s$/.test(low) && /d$/.test(meant) && low.slice(0, -1) === meant.slice(0, -1)) return false; // "flutes" are not "fluted"
  if (meant.length === low.length + 1) return !(meant.startsWith(low) && /[drsyoen]$/.test(meant));
  const at = [...low].findIndex((c, i) => c !== meant[i]);
  if (meant.length === low.length) return low[at] === meant[at + 1] && low[at + 1] === meant[at] || beside(low[at]!, meant[at]!);
  const extra = at < 0 ? low.at(-1)! : low[at]!;
  return [low[at - 1], low[at + 1]].some(c => c !== undefined && (c === extra || beside(c, extra)));
}

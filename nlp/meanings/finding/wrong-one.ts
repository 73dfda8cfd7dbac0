import { partLike } from '../../clauses/name-kinds.ts';
import { namesPart } from '../lib/named.ts';
import { lowText, type Meaning } from '../telling.ts';
import { make } from './part.ts';

/** "the wrong bearing was in there", "somebody's fitted the wrong seal", "wrong gasket fitted": the part that sits there is not the one that should. */
export const wrongOne: Meaning = t => {
  const c = t.clause, text = lowText(t);
  const m = /\bwrong ((?:[\w-]+ )*?[\w-]+)$|\bwrong ((?:[\w-]+ )+?)(?:was|were|is|are|'s|in|on|had|has|been|fitted|under|at|for|altogether|entirely)\b/.exec(text);
  if (c.pred === 'none' && /^(no |sorry |oops |ah )*wrong \w+$/.test(text) && t.prior.length) return undefined; // of the note before, not of a part
  if (c.asks || c.sub || c.neg || !m || /^(i|we|you)$/.test(c.who ?? '') && c.verb?.base !== 'find' || /\b(look|looking|looked|holding|thinking|talking|meant)\b/.test(text) || /\bwrong (way|side|end|place|hole|size|thing|one|ones|order|day|man|address|number|part number|colour|color|direction|tool|spanner|socket)\b/.test(text)) return undefined;
  if (/\b(sent|send|ordered|order|bought|buy|brought|got me|came|delivered|picked up|gave|quoted|asked)\b/.test(text) || !/\b(was|were|is|'s|are|in|fitted|fit|put|has|had|got|find|found|on|under)\b/.test(text)) return undefined;
  const np = c.items.find(i => i.np && /\bwrong\b/.test(i.low))?.np ?? c.items.find((i, k) => i.np && c.items[k - 1]?.low === 'wrong')?.np;
  const name = np?.name.replace(/^wrong /, '');
  return name && partLike(t.sheet, name) && namesPart(t.sheet, name) ? [make(name, 'wrong one fitted')] : undefined;
};

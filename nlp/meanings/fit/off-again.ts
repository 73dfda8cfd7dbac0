import type { Clause } from '../../clauses/clause.ts';
import { lowText, type Telling, type Told } from '../telling.ts';

/** "lifted it back out", "off again she came", "it's down again": what says that a thing put up for a look is away again. */
const AWAY = new RegExp(String.raw`\b(?:came|took|taken|lifted|pulled|knocked|had|slid|drew|slipped|went|got|hoisted|swung|popped|(?:she|it) come)(?: (?:it|them|her|that|both|all|straight|right|back|then))* (?:off|out|down|apart)\b`
  + String.raw`|(?:^|\b(?:so|and|then|but|is|it's|it is|she's|they're|are|all|straight|right|back|,) )(?:off|out|down|apart) (?:again|agn|(?:it|she|they) (?:came|come|went))\b`);
/** What is only going to be so. */
const AHEAD = /\b(must|has|have|need|needs|gotta|got to|will|shall|'ll|can|comes|coming|going|gonna|tomorrow|tonight|morning|later|before|till|until|when|if|still)\b/;

/**
 * The parts tried in their places earlier in the note that this clause says are away again. Nothing where it says so of what is to come, or where
 * the clause tells already what came off.
 */
export function offAgain(t: Telling, told: readonly Told[]): string[] {
  const c = t.clause, tried = told.filter(x => x.entry.kind === 'fit' && x.entry.state === 'tried' && x.clause.from <= c.from), last = tried.at(-1);
  const off = (of: Clause): boolean => told.some(x => x.entry.kind === 'fit' && x.entry.state === 'off' && x.clause === of);
  if (!last || c.asks || off(c) || !AWAY.test(lowText(t)) || AHEAD.test(lowText(t)) || t.sheet.found.some(f => f.dim === 'when' && f.from >= c.from && f.to <= c.to)) return [];
  const names = tried.filter(x => x.clause === last.clause).map(x => (x.entry as { part: string }).part);
  return names.filter(name => !told.some(x => x.entry.kind === 'fit' && x.entry.state === 'off' && x.entry.part === name));
}

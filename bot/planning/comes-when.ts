import type { ReadContext } from '../../domain/model/reading.ts';
import { openSheet } from '../../nlp/sheet.ts';

/** "The belt comes Friday": who or what comes, and behind it when. */
export const COMES = /^(?:the|my|that|those|these|his|our)?\s*(.+?)\s+(?:(?:do|does|did|should|were to|was to|would|could|might|'ll|will|only|finally|really|all)\s+)*(?:(?:isn't|aren't|doesn't|don't|won't)\s+(?:\w+\s+){0,2}?(?:till|until|before)|comes? back|gets? back|comes? in|comes?|came|coming|arrives?|arrived|gets? here|got here|turns? up|turned up|shows? up|showed up|(?:is|are|was|were) (?:here|in|back|delivered|coming)|lands?)\b(.*)$/i;

/** The day that some words name; its first where they name several. */
export const dayIn = (text: string, ctx: ReadContext): string | undefined => {
  const when = openSheet(text, { at: ctx.at }).found.find(f => f.dim === 'when');
  return when?.dim === 'when' && !when.value.vague ? when.value.from ?? when.value.to : undefined;
};

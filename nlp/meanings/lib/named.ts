import { isKnownPart } from '../../dimensions/part/known.ts';
import { snap } from '../../dimensions/part/snap.ts';
import type { Sheet } from '../../types.ts';
import { COMMON } from '../../words/common.ts';
import { isTradeWord, nameClasses, nounClasses } from '../../words/nouns.ts';

/** Whether the shop or the trade knows the name as a part's: what is said of "mail", "fog" or "pajamas" is chatter, however like a state it sounds. */
export function namesPart(sheet: Sheet, name: string): boolean {
  if (name === '') return false;
  if (isKnownPart(sheet.ctx.parts, name) || snap(name, sheet.ctx).known) return true;
  const head = name.split(' ').at(-1)!;
  const classes = nameClasses(name);
  if (['part', 'fastener', 'consumable', 'machine', 'tool'].some(k => classes.has(k as 'part'))) return true;
  if (name.includes(' ') && namesPart(sheet, name.slice(name.indexOf(' ') + 1))) return true; // "sixth rasp bar"
  if (name.split(' ').slice(0, -1).some(w => nounClasses(w).has('part'))) return true; // "cab corner"
  return /^(mains?|big ends?|small ends?)$/.test(head) || classes.size === 0 && isTradeWord(head) && !COMMON.has(head) || /^\d|^(one|two|three|four|five|six|seven|eight|nine|ten|first|second|third|fourth|fifth|sixth|last|left|right|upper|lower|inner|outer|top|bottom|front|rear|back|inlet|exhaust|other)$/.test(head);
}

import type { Warning } from '../../domain/answers/warn.ts';
import type { Saying } from './spoken.ts';
import { capital, day, the } from './words.ts';

/** What speaks against something just said, in one line. The note is kept all the same; only a rule that closes a circle isn't. */
export function sayWarning(w: Warning, { at }: Saying): string {
  switch (w.kind) {
    case 'rule': return `Mind: you said ${w.first} comes before ${w.then}, and it isn't done.`;
    case 'wanted': {
      const state = w.status === 'needed' ? 'still to be bought' : w.status === 'late' ? 'late' : `on order${w.expected ? `, due ${day(w.expected, at)}` : ''}`;
      return `Mind: ${w.item} for ${the(w.part)} is ${state}.`;
    }
    case 'order': return `Mind: ${w.first} usually comes before ${the(w.part)}. ${capital(w.why)} (${w.source}).`;
    case 'circle': return `That rule can't hold with the others, so I left it out: ${w.path.join(' → ')}.`;
  }
}

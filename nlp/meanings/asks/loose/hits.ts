import type { Desk, Hit } from '../desk.ts';
import { GUESSES } from './guesses.ts';
import { asking } from './stretch.ts';

/** A guess at each asking stretch that no rule read: only where it is marked, led in to or opened as a question, and says what it is about. */
export function looseHits(desk: Desk, taken: readonly Hit[]): Hit[] {
  const out: Hit[] = [];
  for (const c of asking(desk)) {
    if (taken.some(h => h.start < c.end && c.start < h.end)) continue;
    for (const [name, guess] of GUESSES) {
      const asks = guess(desk, c);
      if (asks) { out.push({ start: c.start, end: c.end, asks, rule: c.sure ? `asked ${name}` : 'loose', weight: -5 }); break; }
    }
  }
  return out;
}

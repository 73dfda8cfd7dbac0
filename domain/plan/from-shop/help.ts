import type { HandsSaid, Shop } from '../../log/shop.ts';
import type { HelpDay } from '../calendar.ts';

/** The help that still stands, oldest word first: what was called off since for its day is left out. */
export const promised = (shop: Shop): HandsSaid[] =>
  shop.hands.filter((h, k) => !h.none && !shop.hands.slice(k + 1).some(later => later.none && later.when === h.when));

/** Help of a day (YYYY-MM-DD) or later: in its hours, or all day where none were said. */
export function helpDays(shop: Shop, today: string): HelpDay[] {
  const days = new Map<string, HelpDay>();
  for (const { when, from, to } of promised(shop)) {
    if (when < today) continue;
    const day: HelpDay = { date: when, ...(from ? { from } : {}), ...(to ? { to } : {}) };
    days.set(JSON.stringify(day), day);
  }
  return [...days.values()].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : (a.from ?? '') < (b.from ?? '') ? -1 : 1));
}

/** Days from `today` (YYYY-MM-DD) on which nobody comes, by the person's word. */
export function daysAlone(shop: Shop, today: string): string[] {
  const helped = new Set(promised(shop).map(h => h.when));
  return [...new Set(shop.hands.filter(h => h.none && h.when >= today && !helped.has(h.when)).map(h => h.when))].sort();
}

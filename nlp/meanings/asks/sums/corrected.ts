import type { foundIn } from '../desk.ts';

type Figures = ReturnType<typeof foundIn>;

/** What stands between a figure and the one that puts it right: "two flats no one flat", "a six inch, sorry, a seven", "call it 800 pounds". */
const RIGHTED = /^(?: ?[a-z]+){0,3}?,? (?:no|nope|no wait|wait no|wait|sorry|i mean|make that|make it|or rather|rather|scratch that|actually|oops|correction|thats wrong|call it|near enough)(?:,? (?:no|wait|sorry|i mean|make that|make it|actually|its|thats|it was|call it|say|rather|well))*,? ?(?:an? |the |about )?$/;
const WEIGHTS = new Set(['lb', 'kg', 'ton', 't', 'cwt']);

/** The stretches of figures that the speaker took back in the same breath; the figure after each is what is meant. */
export function corrected(found: Figures, text: string, offset: number): [number, number][] {
  const figures = found.filter(f => f.dim === 'number' || f.dim === 'measure' || f.dim === 'percent' || f.dim === 'money').sort((a, b) => a.start - b.start);
  return figures.flatMap((f): [number, number][] => {
    const g = figures.find(x => x.start > f.end && x.dim === f.dim);
    if (!g) return [];
    const between = text.slice(f.end - offset, g.start - offset);
    const weighed = f.dim === 'measure' && g.dim === 'measure' && WEIGHTS.has(f.value.unit) && WEIGHTS.has(g.value.unit);
    if (!RIGHTED.test(between) && !(weighed && /^(?: [a-z]+)?,? say (?:an? |about )?$/.test(between))) return []; // "six hundredweight, say 700 pounds"
    if (f.dim === 'measure' && g.dim === 'measure' && f.value.unit !== g.value.unit && !(WEIGHTS.has(f.value.unit) && WEIGHTS.has(g.value.unit))) return [];
    const noun = (at: number): string => (/^ ?([a-z]+)/.exec(text.slice(at - offset))?.[1] ?? '').replace(/s$/, '');
    if (f.dim === 'number' && noun(f.end) !== noun(g.end) && !/^,? ?(?:no|sorry|i mean|make that|wait|or rather)\b/.test(between)) return [];
    return [[f.start, f.end]];
  });
}

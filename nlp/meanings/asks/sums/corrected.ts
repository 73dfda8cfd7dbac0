import type { foundIn } from '../desk.ts';

type Figures = ReturnType<typeof foundIn>;
type Figure = Figures[number];

/** What stands between a figure and the one that puts it right: "two flats no one flat", "a six inch, sorry, a seven", "call it 800 pounds". */
const RIGHTED = /^(?: ?[a-z]+){0,4}?[?.]*,? (?:no|nope|no wait|wait no|wait|sorry|i mean|make that|make it|or rather|rather|scratch that|actually|oops|correction|thats wrong|call it|near enough)(?:,? (?:no|wait|sorry|i mean|make that|make it|actually|its|thats|it was|call it|say|rather|well))*,? ?(?:an? |the |about )?$/;
/** Of those, the words that only take back: "call it" and "near enough" may lead to a figure of another kind. */
const TAKEN_BACK = /\b(?:no|nope|wait|sorry|i mean|make that|or rather|scratch that|actually|oops|correction)\b/;
/** A bare figure that stands for itself, so that the unit before the slip is its own too. */
const BARE = /^ ?(?:$|[,.?;]|(?:and|on|at|for|with|to|in|of|apart|between|what|how|whats|hows|pulley|sheave|bore|diameter)\b)/;
/** Units in which one thing is said now in one and now in the other. */
const LIKE: readonly ReadonlySet<string>[] = [new Set(['lb', 'kg', 'ton', 't', 'cwt']), new Set(['mm²', 'AWG'])];
/** "four at 3 amps so 12 all up", "610 pounds apiece so that's 1220", "3.40 each is 20.40": what several come to. */
const RECKONED = /^[^.?!]{0,60}?\b(?:so|thats|is|makes|comes to|come to)(?: (?:thats|its|call it|about|say|a))* $/;
const APIECE = /^ ?(?:each|apiece|a ?piece|per)\b|\b(?:each|apiece|a piece)$/;
/** "Fan's on six hundred? No.": asked and denied in the same breath. */
const DENIED = /^[^.?!#]{0,20}\?+ (?:no|nope)[.,]/;

/** The stretches of figures that the speaker took back or reckoned up in the same breath, and the bare figures meant instead that carry on their unit. */
export function corrected(found: Figures, text: string, offset: number): { gone: [number, number][]; carried: { start: number; unit: string }[] } {
  const figures = found.filter(f => f.dim === 'number' || f.dim === 'measure' || f.dim === 'percent' || f.dim === 'money').sort((a, b) => a.start - b.start);
  const gone: [number, number][] = [], carried: { start: number; unit: string }[] = [];
  const after = (f: Figure): string => text.slice(f.end - offset), before = (f: Figure): string => text.slice(0, f.start - offset);
  for (const f of figures) {
    if (f.dim === 'number' && DENIED.test(after(f))) gone.push([f.start, f.end]);
    const g = figures.find(x => x.start > f.end && x.dim === f.dim);
    if (g && righted(f, g, text.slice(f.end - offset, g.start - offset), after)) { gone.push([f.start, f.end]); continue; }
    if (f.dim === 'number') continue;
    const next = figures.find(x => x.start > f.end), between = (n: Figure): string => text.slice(f.end - offset, n.start - offset);
    const slip = f.dim === 'measure' && next?.dim === 'number' && RIGHTED.test(between(next)) && TAKEN_BACK.test(between(next)) && BARE.test(after(next)) ? next : undefined;
    const several = APIECE.test(text.slice(f.start - offset, f.end - offset)) || APIECE.test(after(f)) || /\b(?:[a-z]+|\d+) at $/.test(before(f));
    const meant = slip ?? (several ? figures.find(x => x.dim === 'number' && x.start > f.end && RECKONED.test(between(x)) && times(f, x.value.value)) : undefined);
    if (!meant) continue;
    gone.push([f.start, f.end]);
    if (f.dim === 'measure') carried.push({ start: meant.start, unit: f.value.unit });
  }
  return { gone, carried };
}

/** Whether a figure is some few times another. */
function times(f: Figure, total: number): boolean {
  const one = f.dim === 'measure' || f.dim === 'money' || f.dim === 'number' ? f.value.value : 0, n = one > 0 ? total / one : 0;
  return n > 1.5 && n < 60 && Math.abs(n - Math.round(n)) < 0.005;
}

function righted(f: Figure, g: Figure, between: string, after: (f: Figure) => string): boolean {
  const like = f.dim === 'measure' && g.dim === 'measure' && LIKE.some(set => set.has(f.value.unit) && set.has(g.value.unit));
  const weighed = like && f.dim === 'measure' && f.value.unit !== 'AWG' && f.value.unit !== 'mm²' && /^(?: [a-z]+)?,? say (?:an? |about )?$/.test(between); // "six hundredweight, say 700 pounds"
  if (!RIGHTED.test(between) && !weighed) return false;
  if (f.dim === 'measure' && g.dim === 'measure' && f.value.unit !== g.value.unit && !like) return false;
  const noun = (x: Figure): string => (/^ ?([a-z]+)/.exec(after(x))?.[1] ?? '').replace(/s$/, '');
  return f.dim !== 'number' || noun(f) === noun(g) || /^,? ?(?:no|sorry|i mean|make that|wait|or rather)\b/.test(between);
}

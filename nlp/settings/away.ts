import { openSheet } from '../sheet.ts';

/** Days on which the person will not be in the shop, both ends included (YYYY-MM-DD). */
interface AwayRead { from: string; to: string }

const AWAY = /^(?:(?:and|so|ok|okay|oh|right|note)[, ]+)*(?:(?:i'm|i am|i'll be|i will be|we're|we are|we'll be|i'm going|i'm going to be|i gotta be)\s+(?:going\s+)?(?:away|gone|out of town|out of the country|on (?:holiday|vacation|leave)|abroad|travell?ing|not (?:here|around|home|in the shop))|away|(?:there(?:'s| is)\s+)?no (?:shop|bench|garage|workshop) time|(?:i|we) (?:can't|cannot|won't|will not)(?: be able to)? (?:be in|be at|get (?:to|into|out to|in)|make it (?:to|out to)|come to) the (?:shop|bench|garage|barn|workshop|shed))\b(.*)$/i;
const FILL = /^(?:from|until|till|til|to|through|for|on|all|the|of|this|next|coming|a|and|with|work|family|at|sister's|visiting|,|\.|!|-|–|in|that|whole)$/i;

/** "I'm away next week", "no shop time this weekend", "I can't get to the shop till Monday". `at`: ISO; undefined: about anything else, or no days named. */
export function readAway(text: string, at: string): AwayRead | undefined {
  const said = AWAY.exec(text.trim().replace(/[’‘]/g, "'"));
  if (!said) return undefined;
  const sheet = openSheet(said[1]!.trim(), { at });
  const when = sheet.found.filter(f => f.dim === 'when');
  if (!when.length) return undefined;
  const covered = new Set(when.flatMap(f => Array.from({ length: f.to - f.from }, (_, k) => f.from + k)));
  if (sheet.tokens.some((t, i) => !covered.has(i) && !FILL.test(t.low))) return undefined;
  const values = when.map(f => (f.dim === 'when' ? f.value : {})).filter(v => !v.vague);
  const until = /\b(?:until|till|til)\b/i.test(said[1]!);
  const from = until && values.length === 1 ? at.slice(0, 10) : values[0]?.from ?? values[0]?.to;
  const last = values.at(-1)?.to ?? values.at(-1)?.from;
  if (from === undefined || last === undefined) return undefined;
  // "Until Monday": Monday is a day in the shop again, unless a first day is named too ("from the 3rd till the 10th").
  const to = until && values.length === 1 ? dayBefore(last) : last;
  return to >= from && to >= at.slice(0, 10) ? { from, to } : undefined;
}

const dayBefore = (day: string): string => new Date(Date.parse(`${day}T00:00:00Z`) - 86_400_000).toISOString().slice(0, 10);

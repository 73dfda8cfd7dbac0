import { verbForms } from '../../words/verbs.ts';
import type { Seen } from './rule.ts';
import { thingAt } from './thing-at.ts';

/** Where in the note the weather is asked for. */
export type Place = Pick<Seen, 'desk' | 'start' | 'end' | 'stop'>;

/** Work that waits on the weather. */
export const OUTDOOR = /^(?:paint|spray|prime|coat|top ?coat|undercoat|gloss|enamel|varnish|lacquer|tar|lime|limewash|whitewash|creosote|antifoul|shoot|blast|mow|burn|pour|thresh|flood|concrete)\b/;

/** "for pruning", "for drying stakes outside": a deed that no list of verbs has, or that is a word of the weather too, by its place. */
export function outing(s: Place, stop: number): string | undefined {
  const { text } = s.desk;
  const m = /\bfor ([a-z]+ing)\b(?! (?:weather|conditions|day)\b)/.exec(text.slice(s.start, stop)), verb = m?.[1];
  if (!verb || /^(?:coming|getting|doing|going|being|having|morning|evening|spring|anything|something|everything|nothing|looking|raining|snowing|freezing)$/.test(verb)) return undefined;
  const t = thingAt(s.desk, s.start + m!.index + m![0].length, stop);
  const thing = t && !/day$|^(?:weekend|week|morning|afternoon|evening)$/.test(t.name) ? t.name : undefined;
  const base = verbForms(verb).find(f => f.form === 'ing')?.base;
  if (thing) return `${base ?? verb.slice(0, -3)} ${thing}`;
  return /^(?: (?:on|this|at|over|in|by|next|and)\b| ?(?:$|[?.,!]| (?:mon|tues|wednes|thurs|fri|satur|sun)day|tomorrow))/.test(text.slice(s.start + m!.index + m![0].length)) ? base && base !== 'dry' ? base : verb : undefined;
}

/** "Can I gloss the hood yet, and is it dry enough for it Thursday": "it" is the deed before. */
export function deedBefore(s: Place, stop: number): string | undefined {
  if (!/\b(?:for|do|suit|allow) (?:it|that)\b/.test(s.desk.text.slice(s.start, stop)) && !/\bdo for (?:it|that)\b/.test(s.desk.text.slice(s.start, s.stop))) return undefined;
  const { text } = s.desk;
  let found: string | undefined;
  for (const m of text.slice(0, s.start).matchAll(/\b([a-z]+) (?=(?:the|my|that|those)\b)/g)) {
    const base = verbForms(m[1]!).find(f => f.form === 'ing' || f.form === 'base')?.base ?? m[1]!, t = OUTDOOR.test(base) ? thingAt(s.desk, m.index + m[0].length, s.start) : undefined;
    if (t) found = `${base} ${t.name}`;
  }
  return found;
}

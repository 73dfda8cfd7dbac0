import type { Clause } from '../../clauses/clause.ts';
import type { Found } from '../../types.ts';
import { isTool } from '../lib/fields.ts';
import { namesPart } from '../lib/named.ts';
import type { Telling } from '../telling.ts';

/** Words of a sum so far. */
export const TOTAL = /\b(all told|in all|so far|altogether|all in all|total|in total|to date|up to now|all up|by now|makes it|that makes|that('s| is) .* now$|all in|start to finish|brings? .{1,40} (up )?to)\b/;

/** Whether a length of time in a clause was spent on the work, and is not when, how long it ran, or what is left. */
export function spent(t: Telling, c: Clause, f: Found, text: string): boolean {
  const after = t.sheet.tokens.slice(f.to, f.to + 2).map(x => x.low).join(' ');
  const quit = t.clauses[t.at + 1]?.sub === 'before' && t.clauses[t.at + 1]!.verb !== undefined; // "…before my wrist quit"
  if (/^(to|from|before|fore|'fore|'|until|till) /.test(after) && !quit && !/\b(spent|took|put)\b/.test(text) && !/^to (date|the)/.test(after) || (c.pred === 'have' || c.verb?.base === 'hold' || c.verb?.base === 'last') && c.subj.some(s => !s.carried) && !/^(i|we)$/.test(c.who ?? '')) return false;
  if (/^(later|ago|early|late|away|old|behind|past)\b/.test(after) || /\blooking for\b/.test(text) && !/\bon (the|that|this)\b|all told/.test(text)) return false;
  if (/^(read|watch|search|drive|talk|phone|walk|wait|sleep|argue|shop|nap|listen|ride|queue|hunt|stare)$/.test(c.verb?.base ?? '') && !/\b(spent|on the|on that)\b/.test(text)) return false;
  if (/^(need|want|require|expect|allow|say|recommend)$/.test(c.verb?.base ?? '') || /^(run|idle|drive)$/.test(c.verb?.base ?? '')) return false;
  if (/\bafter (the |its |her |his )?(first|another|next)\b|\bdue\b/.test(t.sheet.tokens.slice(Math.max(0, f.from - 4), f.from).map(x => x.low).join(' '))) return false;
  if (/\b(in|after|within|every|until|till|for another|next)$/.test(t.sheet.tokens.slice(Math.max(0, f.from - 1), f.from).map(x => x.low).join(' ')) && !/\b(took|spent|put|call it)\b/.test(text)) return false;
  if (/\b(running|of running|ran|run time|on the clock|on the meter|hour meter|hourmeter|cure|dry|drying|curing|overnight|soak\w*|drive|drove|away|idl\w+|ran (it|her)|under load|warm|cool\w*|simmer\w*|boil\w*|charg\w+|bak\w+|cook\w*|in the oven|in the tank|bath)\b/.test(text) && !/\b(spent|took me|put in|hours? on)\b/.test(text)) return false;
  if (/\b(free|left|to spare|to kill|spare|before (the|my|i|choir|dinner|tea|supper|lunch|work))\b/.test(text) && !/\bspent\b/.test(text)) return false;
  if (c.ing && !c.who && f.to <= (c.items[c.vi]?.from ?? 0)) return true; // "two hours scraping the table"
  if (/\bspent\b/.test(text) || TOTAL.test(text) && /^(bring|make|come|take)$/.test(c.verb?.base ?? '')) return true;
  if (/^(i|we)$/.test(c.who ?? '') && (c.pred === 'have' || c.verb?.base === 'have') && !/\b(in|into|on) (it|that|this|the|them)\b/.test(text)) return false;
  if (/^(spend|take|put|log|waste|do|use|sink|burn|work|have|get|lose|be|call|make|clock|give)$/.test(c.verb?.base ?? '') || c.pred === 'none' || c.pred === 'be' || c.pred === 'have') {
    if (c.pred === 'be' && !/\b(that's|that is|that was|it's|was|been)\b/.test(text)) return false;
    if (c.subj.some(s => !s.carried) && c.pred === 'be' && !/hours? (on|in|at)/.test(text)) return c.verb !== undefined || /\bwas\b/.test(text) && c.subj.every(s => namesPart(t.sheet, s.name)) && t.told.some(x => x.entry.kind === 'hours');
    return true;
  }
  return c.items.some((i, k) => i.f === f && (c.items[k - 1]?.low === ',' || k === c.items.length - 1 || c.items[k + 1]?.t === 'mark' || c.items[k - 1]?.low === 'for') ) && c.verb !== undefined && (/^(i|we)?$/.test(c.who ?? '') || trails(t, c, f));
}

/** "…and it snaps every time now hour and a half": the note ends in the time that it took. */
const trails = (t: Telling, c: Clause, f: Found): boolean => t.at === t.clauses.length - 1 && c.items.findLast(i => i.t !== 'mark')?.f === f && t.sheet.tags[f.from - 1] !== 'prep' && !/^(hold|last|run|take|sit|leave|stay|keep|go|say|need|work)$/.test(c.verb?.base ?? '') && t.told.some(x => /^(work|fit)$/.test(x.entry.kind));

/** What it was spent on: after "on", "into", the object of the work, or what was last named. */
export function on(t: Telling, c: Clause, f: Found): string | undefined {
  const k = c.items.findIndex((i, n) => /^(on|into|in|at|with)$/.test(i.low) && (c.items[n + 1]?.np || c.items[n + 1]?.t === 'pron') && i.from >= f.from - 9 && !(/^(with|in|at)$/.test(i.low) && c.items[n + 1]?.np && (isTool(c.items[n + 1]!.np!.name) || !namesPart(t.sheet, c.items[n + 1]!.np!.name))));
  if (k >= 0) {
    const np = c.items[k + 1]!.np;
    if (np && !np.stands && !/^(back|knees|feet|brush|evening|morning|afternoon|night|total|all|shop|rain|cold|tea|dinner|lunch|radio|dog|wife|neighbour|neighbor)s?$/.test(np.said) && !/shop|shed|barn/.test(np.said)) return np.name;
    if (c.items[k + 1]!.t === 'pron' && /^(it|that|them|this|those)$/.test(c.items[k + 1]!.low)) return t.memory.topic()?.name;
  }
  const own = [...c.obj, ...c.subj].find(s => s.name && (namesPart(t.sheet, s.name) || s.machine));
  const after = c.items.find(i => i.np && !i.np.stands && i.from >= f.to);
  if (own && !own.carried) return own.name;
  if (c.verb?.form === 'ing' || c.items.some(i => i.t === 'verb' && i.form === 'ing')) return after?.np?.name ?? own?.name;
  const bareAfter = after && c.pred === 'none' && after.from === f.to && !/\b(morning|afternoon|evening|night|today|work|job|labour|labor|shop|total)$/.test(after.np!.said) ? after.np!.name : undefined;
  // Hours told alone are of the whole evening, not of what an earlier note spoke of: of what it began with.
  const began = c.pred === 'none' && !own ? t.told.map(x => x.entry).find(e => (e.kind === 'work' || e.kind === 'fit' || e.kind === 'job') && e.part !== undefined) : undefined;
  return bareAfter ?? own?.name ?? (after && c.pred !== 'none' && c.items[c.items.indexOf(after) - 1]?.low !== 'with' ? after.np!.name : undefined) ?? (began as { part?: string } | undefined)?.part ?? (t.at > 0 ? t.memory.topic()?.name : undefined);
}

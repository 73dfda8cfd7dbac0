import { nameWords } from '../../../domain/model/names.ts';
import { snap } from '../../dimensions/part/snap.ts';
import { OPPOSITE, SIDES } from '../../words/sides.ts';
import { lowText, type Telling } from '../telling.ts';

/** A part beside another: its side, or its own name. */
export interface Fellow { side?: string; name?: string }

/** What a clause speaks of beside the part that was told of last: a side ("left"), another part named, or "the other". */
export function fellow(t: Telling, was: string): Fellow | undefined {
  const np = t.clause.items.find(i => i.np && !/^(same|ditto|likewise|thing|same thing|story|treatment|deal|job|repeat)$/.test(i.np.said))?.np;
  if (!np) return /\bother\b/.test(lowText(t)) ? { side: 'other' } : undefined;
  const words = np.said.split(' ').filter(w => w !== 'one' && w !== 'ones' && w !== 'side' && w !== 'hand' && w !== 'same');
  const side = words.filter(w => SIDES.has(w) || /^other|second|first|third$/.test(w));
  if (side.length && side.length === words.length) return { side: side.join(' ') };
  if (np.stands && words.length) {
    const known = snap(`${words.join(' ')} ${was.split(' ').at(-1)!}`, t.sheet.ctx);
    return { name: known.known ? known.name : `${words.join(' ')} ${was.split(' ').at(-1)!}` };
  }
  return np.name === was ? undefined : { name: np.name };
}

/** The name with its side changed ("left kingpin" to "right kingpin"); a part named outright replaces the first one. */
export function swap(t: Telling, part: string | undefined, target: Fellow, first: string): string | undefined {
  if (part === undefined) return undefined;
  if (target.name) return part === first || !part.includes(first) ? target.name : part.replace(first, target.name);
  const words = part.split(' ');
  const sides = words.filter(w => SIDES.has(w));
  const to = target.side === 'other' ? OPPOSITE[sides[0] ?? ''] ?? 'other' : target.side!;
  const kind = sides.find(w => OPPOSITE[w] === to.split(' ')[0] || w === to);
  const name = kind ? words.map(w => (w === kind ? to : w)).join(' ') : `${to} ${part}`;
  const known = snap(name, t.sheet.ctx);
  return known.known && nameWords(known.name).length === nameWords(name).length ? known.name : name;
}

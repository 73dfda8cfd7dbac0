import { nameWords } from '../../domain/model/names.ts';
import type { Entry } from '../../domain/model/entry.ts';
import { snap } from '../dimensions/part/snap.ts';
import { SIDES } from '../words/sides.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

const SAME = /^(and |so |then |now )?((the |did the |done the |doing the )?same (again|thing|story|deal|treatment|goes|job|for|on|with|to|as)?\b|ditto\b|likewise\b|same\b|repeated\b|repeat\b|and again (on|for)\b)|\b(is |'s |are |were |was |got |gets |ones |one )?(exactly |just |about )?(the same|the same again|ditto|likewise)( (again|too|as well|treatment|thing|story))*$|\bdid the same\b/;
const COPIED = new Set(['fit', 'finding', 'reading', 'work', 'job', 'recheck', 'wait']);

/** "same on the left", "ditto the other one", "the right one's the same": what was just said of one part holds for its fellow. */
export const same: Meaning = t => {
  const text = lowText(t);
  const so = t.clause.join === 'so' && t.clause.items[0]?.t === 'be' && t.clause.items.slice(1).every(i => i.np || i.t === 'mark' || i.t === 'cc');
  if (t.clause.asks || t.clause.neg || t.clause.reality !== 'deed' || !so && !SAME.test(text) || /\bat the same time|same (day|time|place|reason|man|shop|size|price)\b/.test(text)) return undefined;
  const source = latest(t);
  if (!source.length) return undefined;
  const target = fellow(t, (source.at(-1) as { part: string }).part);
  if (!target) return undefined;
  const first = (source[0] as { part: string }).part;
  return source.map(e => ({ ...strip(e), part: swap(t, (e as { part: string }).part, target, first) }) as Entry).filter(e => 'part' in e && e.part !== undefined);
};

const strip = (e: Entry): Entry => { const { span: _s, sure: _u, ...rest } = e as Entry & { span?: unknown; sure?: unknown }; return rest as Entry; };

/** The entries of the last part spoken of: in this note, else all of the note before it that were of one side. */
function latest(t: Telling): Entry[] {
  const own = t.told.map(x => x.entry).filter(e => COPIED.has(e.kind));
  if (own.length) {
    const part = (own.at(-1) as { part: string }).part;
    const from = own.findIndex((_, i) => own.slice(i).every(o => (o as { part: string }).part === part));
    return own.slice(from);
  }
  return t.prior.filter(e => COPIED.has(e.kind) && 'part' in e && e.part !== undefined);
}

/** What it is the same for: a side ("left"), another part named, or "the other". */
function fellow(t: Telling, was: string): { side?: string; name?: string } | undefined {
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
function swap(t: Telling, part: string | undefined, target: { side?: string; name?: string }, first: string): string | undefined {
  if (part === undefined) return undefined;
  if (target.name) return part === first || !part.includes(first) ? target.name : part.replace(first, target.name);
  const words = part.split(' ');
  const sides = words.filter(w => SIDES.has(w));
  const opposite: Record<string, string> = { left: 'right', right: 'left', front: 'rear', rear: 'front', back: 'front', top: 'bottom', bottom: 'top', upper: 'lower', lower: 'upper', inner: 'outer', outer: 'inner' };
  const to = target.side === 'other' ? opposite[sides[0] ?? ''] ?? 'other' : target.side!;
  const kind = sides.find(w => opposite[w] === to.split(' ')[0] || w === to);
  const name = kind ? words.map(w => (w === kind ? to : w)).join(' ') : `${to} ${words.filter(w => !SIDES.has(w) || sides.length > 1).join(' ')}`;
  const known = snap(name, t.sheet.ctx);
  return known.known && nameWords(known.name).length === nameWords(name).length ? known.name : name;
}

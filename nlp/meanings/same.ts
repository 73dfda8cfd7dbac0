import type { Entry } from '../../domain/model/entry.ts';
import { fellow, swap } from './lib/fellow.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

const SAME = /^(and |so |then |now )?((the |did the |done the |doing the )?same (again|thing|story|deal|treatment|goes|job|for|on|with|to|as)?\b|ditto\b|likewise\b|same\b|repeated\b|repeat\b|and again (on|for)\b)|\b(is |'s |are |were |was |got |gets |ones |one )?(exactly |just |about )?(the same|the same again|ditto|likewise)( (again|too|as well|treatment|thing|story))*$|\bdid the same\b/;
const COPIED = new Set(['fit', 'finding', 'reading', 'work', 'job', 'recheck', 'wait']);

/** "same on the left", "ditto the other one", "the right one's the same": what was just said of one part holds for its fellow. */
export const same: Meaning = t => {
  const text = lowText(t);
  const so = t.clause.join === 'so' && t.clause.items[0]?.t === 'be' && t.clause.items.slice(1).every(i => i.np || i.t === 'mark' || i.t === 'cc');
  if (t.clause.asks && !so || t.clause.neg || t.clause.reality !== 'deed' || !so && !SAME.test(text) || /\bat the same time|same (day|time|place|reason|man|shop|size|price)\b/.test(text)) return undefined;
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

import type { Entry } from '../../../domain/model/entry.ts';
import { sheetBefore } from '../../sheet.ts';
import type { Found, Sheet } from '../../types.ts';
import { lowText, type Telling } from '../telling.ts';
import { CORRECTS, isOld, ofAnother } from './contrast.ts';
import { asBefore } from './thousandths.ts';

/** What opens a correction of the note before. */
const OPENS = /^(?:no|nah|naw|nope|wait|sorry|oops|hang on|correction|actually|wrong|make (?:that|it|them|those)|better (?:say|make|get)|call it|(?:it|that|them|they|those) ?(?:'s|is|was|were|int|isn't|wasn't|weren't))\b/;
const WANTED = /\b(need|needs|want|wants|wanted|order|ordered|buy|get|short of|out of|on the list|put down)\b/;

/**
 * "No, it was 164", "better say six": a figure in answer to a note whose own figure of that sort was not read into an entry. What it was said of tells the
 * field: money is a price, a count or a size of what is wanted its `qty` or `spec`, time spent its `hours`, anything else a value.
 */
export function figureAgain(t: Telling, surely = false): Entry[] | undefined {
  const c = t.clause, before = sheetBefore(t.sheet.ctx);
  if (t.at > 0 || !before || c.asks || /^(if|when|once|before|after)$/.test(c.sub ?? '') || ofAnother(t, c)) return undefined;
  const from = Math.max(0, c.from - 3), text = `${t.sheet.tokens.slice(from, c.from).map(x => x.low).join(' ')} ${lowText(t)}`.replace(/[,.] ?/g, '').trim();
  const now = figures(t.sheet).filter(f => f.from >= c.from && f.to <= c.to && !isOld(t, f.from)), was = figures(before);
  if (now.length !== 1 || !was.length || !surely && !OPENS.test(text) && !CORRECTS.test(text)) return undefined;
  const f = now[0]!, like = was.filter(w => w.dim === f.dim || w.dim === 'number' || f.dim === 'number' || /^(money|number)$/.test(w.dim) && f.dim === 'money');
  if (like.length !== 1 || amount(f) === undefined || amount(f) === amount(like[0]!)) return undefined;
  const dim = f.dim === 'number' ? like[0]!.dim : f.dim, said = before.text.toLowerCase();
  const field = dim === 'money' ? 'price' : dim === 'span' ? 'hours' : WANTED.test(said) ? (dim === 'number' ? 'qty' : undefined) : 'value';
  return field && (field !== 'hours' || /^(hours)$/.test((f.dim === 'span' ? f : like[0] as Found & { dim: 'span' }).value.unit)) ? [{ kind: 'amend', field, value: f.dim === 'number' && like[0]!.dim === 'measure' ? asBefore(f.value.value, like[0]!.value) : amount(f)! } as Entry] : undefined;
}

/** Figures of a note, the widest where several were found in the same words. */
export function figures(sheet: Sheet): Found[] {
  const all = sheet.found.filter(f => amount(f) !== undefined).sort((a, b) => (b.to - b.from) - (a.to - a.from) || Number(b.dim !== 'number') - Number(a.dim !== 'number'));
  return all.filter((f, i) => !all.slice(0, i).some(o => o.from < f.to && f.from < o.to)).sort((a, b) => a.from - b.from);
}

export const amount = (f: Found): number | undefined => (f.dim === 'number' || f.dim === 'money' || f.dim === 'measure' ? f.value.value : f.dim === 'span' ? f.value.amount : undefined);

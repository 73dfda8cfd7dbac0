import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import { textOf } from '../../dimensions/part/text-of.ts';
import { SIDES } from '../../words/sides.ts';
import { isFastener, placeFrom, sourceIn } from '../lib/fields.ts';
import { sumsIn } from '../lib/money.ts';
import { lowText, type Telling } from '../telling.ts';
import { isOld } from './contrast.ts';
import { newDay } from './day.ts';
import { respec } from './respec.ts';
import { asBefore } from './thousandths.ts';

/** Words that say outright that something said before was wrong. */
export const MARK = /\b(sorry|correction|actually|i meant|i mean|make (that|it|the \w+)|should (be|have|'ve)|not \S+$|misread|wrong|mistake|i said|change (that|it|the)|turns out|no wait|wait no|wait|oops|scrap that|read it wrong|correct that|meant to say|better (?:make|say)|(counted|measured|looked|checked|miked|weighed) (it |them |that )?again|added that|on second thoughts?)\b|^no\b|isn't .* it's|wasn't .* it was/;

/** The field of an earlier entry that the clause gives a new value for, latest entry first. */
export function changed(t: Telling, c: Clause, text: string): Entry[] | undefined {
  const latest = [...t.prior].reverse();
  const one = (field: string, value: string | number, part?: string): Entry[] => [{ kind: 'amend', field, value, ...(part ? { part } : {}) } as Entry];
  const has = <K extends Entry['kind']>(...kinds: K[]): Extract<Entry, { kind: K }> | undefined => latest.find((e): e is Extract<Entry, { kind: K }> => (kinds as string[]).includes(e.kind));
  const sums = sumsIn(t, c.from, c.to, true);
  const certain = t.sheet.found.some(f => f.dim === 'money' && f.sure === 'certain' && f.from >= c.from && f.to <= c.to);
  const day = newDay(t, c);
  if (day) return one(day.field, day.value);
  const whole = /\b(with|including|incl|inc|all in|counting|plus) (the )?(freight|shipping|post|postage|carriage|delivery)\b/.test(text) && /\b(came|come|comes|ended|worked|total|altogether|all told)\b/.test(text); // "that came to 41.50 with the postage"
  if (whole && has('order', 'quote', 'bought')) { const v = sums.price || numberIn(t, c); if (v) return one('price', v); }
  if (/\b(freight|shipping|post|postage|carriage|delivery)\b/.test(text) && has('order', 'quote', 'bought')) { const v = sums.shipping ?? sums.price ?? numberIn(t, c); if (v !== undefined) return one('shipping', v); }
  const spec = has('want'), size = spec?.spec === undefined ? undefined : sizeAgain(t.sheet.tokens.map(x => x.low).join(' '), spec.spec);
  if (size !== undefined) return one('spec', size);
  const measured = t.sheet.found.filter(f => (f.dim === 'measure' || f.dim === 'thread' || f.dim === 'number' && f.value.form !== 'digits' && f.value.form !== 'words') && f.from >= c.from && f.to <= c.to && !isOld(t, f.from)).sort((a, b) => (b.to - b.from) - (a.to - a.from));
  if (spec?.spec && measured.length && !has('reading')) return one('spec', respec(t, c, spec.spec, measured[0]!));
  if ((certain || sums.price !== undefined && latest[0] && /^(bought|order|quote)$/.test(latest[0].kind)) && has('bought', 'order', 'quote')) {
    if (/\b(freight|shipping|post|postage|carriage|delivery)\b/.test(text)) { const v = sums.shipping ?? sums.price ?? numberIn(t, c); if (v !== undefined) return one('shipping', v); }
    if (sums.price !== undefined && !/\b(of them|count|pieces)\b/.test(text)) return one('price', sums.price);
  }
  const reading = has('reading');
  const m = t.sheet.found.filter(f => f.dim === 'measure' && f.from >= c.from && f.to <= c.to && !/^(not|than)$/.test(t.sheet.tokens[f.from - 1]?.low ?? '')).at(0);
  if (m?.dim === 'measure' && reading) return one('value', m.value.value);
  const timed = t.sheet.found.find(f => f.dim === 'span' && f.from >= c.from && f.to <= c.to && !/^(not)$/.test(t.sheet.tokens[f.from - 1]?.low ?? ''));
  if (timed?.dim === 'span') {
    if (has('hours') && /^(hours|minutes)$/.test(timed.value.unit)) return one('hours', timed.value.unit === 'minutes' ? Math.round(timed.value.amount / 0.6) / 100 : timed.value.amount);
    if (has('recheck', 'wait')) return one('after', timed.value.amount);
  }
  const held = has('fit');
  const fastened = c.items.find(i => i.np && i.np.count !== undefined && isFastener(i.np.said));
  if (held?.with && fastened) return one('with', textOf(t.sheet, fastened.from, fastened.to).replace(/^(the|a|an) /i, ''));
  const n = numberIn(t, c);
  if (n !== undefined) {
    const e = nearest(latest, n);
    const f = spec?.spec && spec.qty === undefined && e === spec ? t.sheet.found.find(x => x.dim === 'number' && x.from >= c.from && x.to <= c.to && x.value.value === n) : undefined;
    if (f && /\b(gauge|ply|mesh|grit|grade|tooth|point)\b/.test(spec!.spec!)) return one('spec', respec(t, c, spec!.spec!, f)); // "fourteen gauge… it's twelve"
    if (e?.kind === 'want' || e?.kind === 'order') return one('qty', n);
    if (e?.kind === 'reading') return one('value', asBefore(n, e));
    if (e?.kind === 'hours') return one('hours', n);
    if (e?.kind === 'recheck' || e?.kind === 'wait') return one('after', n);
  }
  const stow = has('stow');
  const place = placeFrom(t.sheet, c.items, 0);
  if (stow && place && !/^(on order)/.test(place.where)) return one('where', place.where.replace(/^(up|down|back|out|over) (?=in|on|under|at|by)/, ''));
  const source = sourceIn(t.sheet, c.items);
  if (source && has('bought', 'order', 'quote') && MARK.test(text)) return one('source', source.source);
  const side = c.items.find(i => i.np && [...SIDES].some(s => i.np!.said.split(' ').includes(s)) && !/^not/.test(t.sheet.tokens[i.from - 1]?.low ?? ''));
  const sided = latest.find(e => 'part' in e && e.part !== undefined);
  if (side?.np && sided && 'part' in sided && sided.part && /\b(sorry|meant|mean|correction|actually|not|wrong)\b/.test(text)) return one('part', side.np.stands ? (t.memory.sided(side.np.said.split(' ')[0]!, t.sheet) ?? side.np.name) : side.np.name);
  const fit = has('fit');
  const state = /\b(finger[- ]tight|temporar\w+|loose|only (hung|on))\b/.test(text) ? 'temporary' : /\bfor good\b/.test(text) ? 'on' : /\b(off|out)\b/.test(text) && /\b(still|not on|isn't on)\b/.test(text) ? 'off' : /\b(mock(ed)? up|trial)\b/.test(text) ? 'tried' : undefined;
  if (fit && state && /\b(sorry|correction|actually|should)\b/.test(text)) return one('state', state);
  const goods = has('want', 'order', 'bought');
  const np = c.items.find(i => i.np && !i.np.stands && !/^not$/.test(t.sheet.tokens[i.from - 1]?.low ?? '') && !/^(correction|mistake|note|thing|scrap|paper)$/.test(i.np.said));
  if (goods && np && /\b(sorry|correction|i meant|i mean)\b/.test(text)) return one('item', np.np!.name);
  const any = latest.find(e => 'part' in e && e.part !== undefined);
  if (any && np && /\b(sorry|correction|i meant|meant)\b/.test(text)) return one('part', np.np!.name);
  return undefined;
}

/** "I wrote 8 by 16; it's 8 by 18", "I said by ten and it should be by eight": what was wanted by its sizes, with the last that is said in the place of the old one. */
function sizeAgain(text: string, was: string): string | undefined {
  const said = [...text.matchAll(/(?:(\d[\d./]*) )?(?:by|x) (\d[\d./]*|[a-z]+)\b/g)], last = said.at(-1), old = said.at(-2)?.[2];
  if (!last || !/\b(?:by|x)\b/i.test(was)) return undefined;
  if (last[1] !== undefined) return /^\d/.test(last[2]!) ? last[0] : undefined;
  const by = old === undefined || old === last[2] ? undefined : new RegExp(String.raw`\bby ${old.replaceAll('.', '\\.')}\b`, 'i');
  return by?.test(was) ? was.replace(by, `by ${last[2]!}`) : undefined;
}

/**
 * The entry whose figure a bare new one puts right: of the latest note's figures the one that lies nearest in proportion, for a slip is
 * seldom far off ("68" puts the 65 of a torque right, not the two hours after it); else the latest that has any.
 */
function nearest(latest: readonly Entry[], n: number): Entry | undefined {
  const figured = latest.filter(x => /^(reading|want|hours|order|recheck|wait)$/.test(x.kind));
  const figure = (e: Entry): number | undefined => (e.kind === 'reading' ? e.value : e.kind === 'want' || e.kind === 'order' ? e.qty : e.kind === 'hours' ? e.hours : e.kind === 'recheck' || e.kind === 'wait' ? e.after : undefined);
  const off = (e: Entry): number => { const f = figure(e); return f && n ? Math.abs(Math.log((e.kind === 'reading' ? asBefore(n, e) : n) / f)) : Infinity; };
  // Nearer by a fair margin, else what was said last.
  return figured.reduce<Entry | undefined>((best, e) => (best === undefined || off(e) + 0.7 < off(best) ? e : best), undefined);
}

export function numberIn(t: Telling, c: Clause): number | undefined {
  const f = t.sheet.found.find(x => x.dim === 'number' && x.from >= c.from && x.to <= c.to && !/^(not|than)$/.test(t.sheet.tokens[x.from - 1]?.low ?? ''));
  if (f?.dim === 'number') return f.value.value;
  return c.items.find(i => i.np?.count !== undefined)?.np?.count;
}

/** "95 for the belt" after it was bought for ninety: the price put right. */
export function paidInstead(t: Telling): Entry[] | undefined {
  const c = t.clause, m = /^(?:it was |paid |make it |that was )?\S*? ?(?:\d+(?:\.\d\d)?|[a-z]+(?: [a-z]+)?) (?:dollars |bucks |quid |euros? |pounds )?for the ([a-z]+(?: [a-z]+)?)$/.exec(lowText(t));
  const was = m && [...t.prior].reverse().find(e => e.kind === 'bought' || e.kind === 'order');
  if (!m || !was || !('price' in was) || was.price === undefined || !was.item.endsWith(m[1]!)) return undefined;
  const price = sumsIn(t, c.from, c.to, true).price;
  return price !== undefined && price !== was.price ? [{ kind: 'amend', field: 'price', value: price } as Entry] : undefined;
}

import type { Entry } from '../../domain/model/entry.ts';
import type { Placed } from '../clauses/clauses.ts';
import { type Clause } from '../clauses/clause.ts';
import { isFastener, placeFrom, sourceIn } from './lib/fields.ts';
import { dayIn } from './lib/day.ts';
import { sumsIn } from './lib/money.ts';
import { SIDES } from '../words/sides.ts';
import { textOf } from '../dimensions/part/phrase.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

const STRIKE = /^(?:please |kindly |can you |could you |just )*(take that back|scrap (that|the) (last|note)|scrap that$|scrap that \W|forget (what|that)|delete (that|the)|never mind (that|what))\b|^(no |okay |oh |sorry |actually |wait |hang on |hold on |um |well |please |kindly |can you |could you )*(scratch|strike|forget|ignore|undo|delete|cancel|disregard|take back|wipe|drop|scrub|bin|remove|cross out|rub out) (that|it|the last|what i|my last|the previous|all that|the bit|everything i|this|the note|(that|the|this|my) (last )?(note|entry|line|item|bit)|last (note|one|entry|bit)|about|the (one|entry|remark|thing) about|that last|what)\b|^(no |sorry |actually )*(i was wrong about|i take (it|that) back|that('s| was| is) (wrong|not right|a mistake|rubbish)|never mind (that|what i said|about)|that never happened|didn't happen|that wasn't (right|me|it)|i got that wrong|ignore me)\b/;
const CROSSED = /\b(cross|take|strike|scratch|knock) (the |those |that |them |it |off )?.{0,30}\boff\b( the list)?/;
const MARK = /\b(sorry|correction|actually|i meant|i mean|make (that|it|the \w+)|should (be|have|'ve)|not \S+$|misread|wrong|mistake|i said|change (that|it|the)|turns out|no wait|wait no|wait|oops|scrap that|read it wrong|correct that|meant to say|better make|(counted|measured|looked|checked|miked|weighed) (it |them |that )?again|added that|on second thoughts?)\b|^no\b|isn't .* it's|wasn't .* it was/;
/** "it was seventy-two for the tailgate": what "it" is comes straight after. */
const restated = (c: Clause): boolean => c.pred === 'be' && /^(it|that|they)$/.test(c.who ?? '') && c.rest.find(i => i.t !== 'adv')?.f !== undefined;

/** A correction of an earlier note: strike it, or put one field right. */
export const amend: Meaning = t => {
  const c = t.clause, text = lowText(t).replace(/^(no )?[,.;: ]+/, '$1').replace(/^((och|ah|ach|nah|oh|hey|well|so|and|but|right)\b ?,? ?)+(?=\w)/, '');
  const side = otherSide(t);
  if (side) return side;
  if (STRIKE.test(text) || /^(forget|ignore|scratch|strike|cancel|disregard)\b/.test(text) && !c.neg && t.prior.some(e => ('part' in e && e.part || 'item' in e && e.item || '') .toString().split(' ').some(w => w.length > 3 && text.includes(w))) || t.at === 0 && t.prior.some(e => e.kind === 'want') && /^(cross|strike|scratch)\b/.test(text) && CROSSED.test(text)) {
    for (const x of t.clauses) if ((x as Placed).sentence === (c as Placed).sentence) (x as Clause & { spoken?: boolean }).spoken = true;
    return [{ kind: 'amend', undo: true } as Entry];
  }
  if (/^(they|he|she|the [a-z]+) (rang|called|phoned|emailed|texted|wrote|messaged)( back)?( to say)?$/.test(text) && t.prior.some(e => e.kind === 'order' || e.kind === 'out')) return [];
  if (t.prior.length && t.at <= 3 && !c.asks && /\b(now|instead)\b/.test(text) && movedDate(t, text) && /^(it|that|they)$/.test(c.who ?? '') && c.pred === 'be' && dayIn(t, c)) return changed(t, c, text); // "van's broken down, so it's the 3rd now"
  const repriced = t.at === 0 ? paidInstead(t) : undefined;
  if (repriced) return repriced;
  if (!t.prior.length || t.at > 2 || c.asks || t.told.some(x => x.entry.kind !== 'amend' && x.entry.kind !== 'remark') && t.clauses[t.at + 1]?.items[0]?.t !== 'neg') return undefined;
  if (c.neg && /^(pay|buy|want|need|order)$/.test(c.verb?.base ?? '')) return undefined;
  const comma = c.items[0]?.t === 'neg' ? c.items.findIndex(i => i.low === ',') : -1;
  if (comma > 0 && c.items.slice(1, comma).some(i => i.f) && c.items.slice(comma).some(i => i.f)) return changed(t, { ...c, from: c.items[comma]!.to, items: c.items.slice(comma + 1) }, text); // "not twelve, fourteen thou"
  if (c.items[0]?.t === 'neg' && t.told.some(x => x.entry.kind === 'amend')) return [];
  if (t.told.some(x => x.entry.kind === 'amend') && !MARK.test(text)) return undefined; // "it's three to a hole" says why
  const own = `${t.sheet.tokens.slice(Math.max(0, c.from - 3), c.from).map(x => x.low).filter(w => w !== ',').join(' ')} ${text}`.trim();
  const n = t.clauses[t.at + 1];
  const negated = n !== undefined && n.items[0]?.t === 'neg' || /\bnot \S+( \S+)?$/.test(text);
  if (c.neg && n && !n.neg && restated(n)) { return []; }
  if (!MARK.test(own) && !negated && !restated(c) && !movedDate(t, text) && !bareFigure(t, c)) return undefined;
  if (/^(i |we )?(actually |really |just )?(need|want)\b/.test(text.replace(/^(actually|no|sorry) ,? ?/, '')) && /^(actually|sorry|no)\b/.test(own) && t.prior.some(e => e.kind === 'want') && !c.items.some(i => i.np && !i.np.stands) && numberIn(t, c) !== undefined) return changed(t, c, text);
  if (c.verb && /^(need|order|buy|clean|paint|prime|fit|pull|check)$/.test(c.verb.base!) && !/\b(sorry|correction|make that|meant)\b/.test(own)) return undefined;
  return changed(t, c, text);
};

const PAIRS: readonly (readonly [string, string])[] = [['left', 'right'], ['front', 'rear'], ['front', 'back'], ['top', 'bottom'], ['upper', 'lower'], ['inner', 'outer'], ['inside', 'outside'], ['near', 'off'], ['inlet', 'exhaust']];

/** "I said the right arm, it was the left", "other one, it's the LEFT needle": the side of what the note before named. */
function otherSide(t: Telling): Entry[] | undefined {
  const c = t.clause, all = t.sheet.tokens.map(x => x.low).join(' ');
  if (t.at > 1 || c.asks || t.told.length || !/\b(i (said|wrote|put|told you)|other one|wrong (side|one|way round)|sorry|meant|mixed (up|them)|not the|correction)\b/.test(all)) return undefined;
  const was = [...t.prior].reverse().find(e => 'part' in e && e.part !== undefined && PAIRS.some(p => p.some(w => e.part!.split(' ').includes(w))));
  if (!was || !('part' in was) || !was.part) return undefined;
  for (const [a, b] of PAIRS.flatMap(([x, y]) => [[x, y], [y, x]] as const)) {
    if (!was.part.split(' ').includes(a)) continue;
    const said = t.clauses.findIndex((x, n) => n >= t.at && n <= t.at + 2 && new RegExp(`\\b(it|that|they)( 's| is| was| were|'s)?( really| actually)? (the )?${b}\\b|\\bmeant (the )?${b}\\b`).test(lowText(t, x)));
    if (said < 0 || /\b(too|as well|also)\b/.test(lowText(t, t.clauses[said]!))) continue;
    const last = t.clauses.findLastIndex((x, n) => n >= said && n <= said + 1 && new RegExp(`\\b(it|that) (was|is) (the )?${b}\\b|^that ?'s |^(that )?(is|was|are) `).test(lowText(t, x)));
    for (const x of t.clauses.slice(t.at, Math.max(said, last) + 1)) (x as Clause & { spoken?: boolean }).spoken = true;
    return [{ kind: 'amend', field: 'part', value: was.part.split(' ').map(w => (w === a ? b : w)).join(' ') } as Entry];
  }
  return undefined;
}

/** "95 for the belt" after it was bought for ninety: the price put right. */
function paidInstead(t: Telling): Entry[] | undefined {
  const c = t.clause, m = /^(?:it was |paid |make it |that was )?\S*? ?(?:\d+(?:\.\d\d)?|[a-z]+(?: [a-z]+)?) (?:dollars |bucks |quid |euros? |pounds )?for the ([a-z]+(?: [a-z]+)?)$/.exec(lowText(t));
  const was = m && [...t.prior].reverse().find(e => e.kind === 'bought' || e.kind === 'order');
  if (!m || !was || !('price' in was) || was.price === undefined || !was.item.endsWith(m[1]!)) return undefined;
  const price = sumsIn(t, c.from, c.to, true).price;
  return price !== undefined && price !== was.price ? [{ kind: 'amend', field: 'price', value: price } as Entry] : undefined;
}

/** The field of an earlier entry that the clause gives a new value for, latest entry first. */
function changed(t: Telling, c: Clause, text: string): Entry[] | undefined {
  const latest = [...t.prior].reverse();
  const one = (field: string, value: string | number, part?: string): Entry[] => [{ kind: 'amend', field, value, ...(part ? { part } : {}) } as Entry];
  const has = <K extends Entry['kind']>(...kinds: K[]): Extract<Entry, { kind: K }> | undefined => latest.find((e): e is Extract<Entry, { kind: K }> => (kinds as string[]).includes(e.kind));
  const sums = sumsIn(t, c.from, c.to, true);
  const certain = t.sheet.found.some(f => f.dim === 'money' && f.sure === 'certain' && f.from >= c.from && f.to <= c.to);
  const day = dayIn(t, c);
  if (day) {
    const e = has('order', 'out', 'wait', 'recheck', 'hands', 'weather');
    const field = e?.kind === 'order' ? 'expected' : e?.kind === 'out' || e?.kind === 'wait' ? 'until' : e?.kind === 'recheck' ? 'due' : e?.kind === 'hands' ? 'when' : e?.kind === 'weather' ? 'from' : undefined;
    if (field) return one(field, day);
  }
  if (/\b(freight|shipping|post|postage|carriage|delivery)\b/.test(text) && has('order', 'quote', 'bought')) { const v = sums.shipping ?? sums.price ?? numberIn(t, c); if (v !== undefined) return one('shipping', v); }
  const spec = has('want');
  const measured = t.sheet.found.filter(f => (f.dim === 'measure' || f.dim === 'thread' || f.dim === 'number' && f.value.form !== 'digits' && f.value.form !== 'words') && f.from >= c.from && f.to <= c.to && !/^(not|than)$/.test(t.sheet.tokens[f.from - 1]?.low ?? '')).sort((a, b) => (b.to - b.from) - (a.to - a.from));
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
    if (e?.kind === 'want' || e?.kind === 'order') return one('qty', n);
    if (e?.kind === 'reading') return one('value', n);
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

/**
 * The entry whose figure a bare new one puts right: of the latest note's figures the one that lies nearest in proportion, for a slip is
 * seldom far off ("68" puts the 65 of a torque right, not the two hours after it); else the latest that has any.
 */
function nearest(latest: readonly Entry[], n: number): Entry | undefined {
  const figured = latest.filter(x => /^(reading|want|hours|order|recheck|wait)$/.test(x.kind));
  const figure = (e: Entry): number | undefined => (e.kind === 'reading' ? e.value : e.kind === 'want' || e.kind === 'order' ? e.qty : e.kind === 'hours' ? e.hours : e.kind === 'recheck' || e.kind === 'wait' ? e.after : undefined);
  const off = (e: Entry): number => { const f = figure(e); return f && n ? Math.abs(Math.log(n / f)) : Infinity; };
  // Nearer by a fair margin, else what was said last.
  return figured.reduce<Entry | undefined>((best, e) => (best === undefined || off(e) + 0.7 < off(best) ? e : best), undefined);
}

/** The new size put in the place of the old one that the note names ("quarter inch, not three eighths"), else the new words. */
function respec(t: Telling, c: Clause, was: string, f: { from: number; to: number }): string {
  const now = textOf(t.sheet, f.from, f.to);
  const n = t.clauses[t.at + 1];
  const both = n && n.items[0]?.t === 'neg' ? [...c.items, ...n.items] : c.items;
  if (n && both !== c.items) (n as Clause & { spoken?: boolean }).spoken = true;
  const not = both.findIndex(i => i.t === 'neg');
  const old = not >= 0 ? both.slice(not + 1).find(i => i.f) : undefined;
  const words = old ? textOf(t.sheet, old.from, old.to).toLowerCase() : undefined;
  return words && was.toLowerCase().includes(words) ? was.toLowerCase().replace(words, now.toLowerCase()) : now;
}

function numberIn(t: Telling, c: Clause): number | undefined {
  const f = t.sheet.found.find(x => x.dim === 'number' && x.from >= c.from && x.to <= c.to && !/^(not|than)$/.test(t.sheet.tokens[x.from - 1]?.low ?? ''));
  if (f?.dim === 'number') return f.value.value;
  return c.items.find(i => i.np?.count !== undefined)?.np?.count;
}

/** "they phoned and now it's the thirtieth" */
const movedDate = (t: Telling, text: string): boolean => /\b(now|pushed|put back|moved|delayed|late|phoned|rang|won't be|isn't till|not till|not until|instead)\b/.test(text) && t.prior.some(e => e.kind === 'order' || e.kind === 'out');
/** "no, six of them": a figure alone in answer to a note with one. */
const bareFigure = (_t: Telling, c: Clause): boolean => c.pred === 'none' && c.items[0]?.low === 'no';

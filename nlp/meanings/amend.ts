import type { Entry } from '../../domain/model/entry.ts';
import { type Clause } from '../clauses/clause.ts';
import { placeFrom } from './lib/fields.ts';
import { sumsIn } from './lib/money.ts';
import { SIDES } from '../words/sides.ts';
import { changed, MARK, numberIn, paidInstead } from './amend/changed.ts';
import { contrasted, ofAnother, otherSide } from './amend/contrast.ts';
import { amount, figureAgain, figures } from './amend/bare.ts';
import { movedDay, newDay } from './amend/day.ts';
import { restatedAnew } from './amend/restated.ts';
import { reworded } from './amend/reworded.ts';
import { figureStruck, quiet, struck } from './amend/strike.ts';
import { sheetBefore } from '../sheet.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

/** "it was seventy-two for the tailgate": what "it" is comes straight after. */
const restated = (c: Clause): boolean => cameTo(c) || c.pred === 'be' && /^(it|that|they)$/.test(c.who ?? '') && c.rest.find(i => i.t !== 'adv')?.f !== undefined;

/** "that came to 41.50 with the postage", "it ended up 55": what it was in the end. */
const cameTo = (c: Clause): boolean => /^(i|we)$/.test(c.who ?? '') && /^(get|have)$/.test(c.verb?.base ?? 'have') && c.items.some((i, k) => i.low === 'for' && (c.items[k + 1]?.f?.dim === 'money' || c.items[k + 1]?.f?.dim === 'number')) && c.obj.every(o => o.carried) && /\bin the end$/.test(c.items.map(i => i.low).join(' ').replace(/ ?[.,!]$/, '')) || /^(it|that|they)$/.test(c.who ?? '') && /^(came|ended|worked|turned)$/.test(c.verb?.low ?? '') && c.items.slice(c.vi + 1, c.vi + 4).some(i => i.f?.dim === 'money' || i.f?.dim === 'number' || i.f?.dim === 'measure') && c.items.slice(c.vi + 1).every(i => i.f || /^(to|up|out|at|being|with|the|all|in|more like)$/.test(i.low) || i.np !== undefined || i.t === 'mark' || i.t === 'adv');

/** A correction of an earlier note: strike it, or put one field right. */
export const amend: Meaning = t => {
  const c = t.clause, text = lowText(t).replace(/^(no )?[,.;: ]+/, '$1').replace(/^((och|ah|aw|aye|ach|nah|nope|oh|hey|well|so|and|but|right)\b ?,? ?)+(?=\w)/, '');
  const figure = figureStruck(t);
  if (figure !== undefined) { const before = sheetBefore(t.sheet.ctx), last = before !== undefined && figures(before).some(f => amount(f) === figure); quiet(t); return [{ kind: 'amend', undo: true, ...(last ? {} : { value: figure }) } as Entry]; } // of an older note, told by its figure
  if (struck(t, text)) { const anew = t.prior.length && t.told.length === 0 ? restatedAnew(t) : undefined; if (anew) return anew; quiet(t); return [{ kind: 'amend', undo: true } as Entry]; }
  if (t.at < 4 && t.prior.length && !c.asks) { const right = contrasted(t) ?? (t.at === 0 ? otherSide(t) : undefined) ?? reworded(t); if (right) return right; }
  if (/^(they|he|she|the [a-z]+) (rang|called|phoned|emailed|texted|wrote|messaged)( back)?( to say)?$/.test(text) && t.prior.some(e => e.kind === 'order' || e.kind === 'out')) return [];
  const later = movedDay(t) ?? latelyMoved(t, text);
  if (later) return later;
  const repriced = t.at === 0 ? paidInstead(t) : undefined;
  if (repriced) return repriced;
  if (ADMITS.test(text) && t.prior.length && t.at < 3 && !c.items.some(i => i.f) && t.clauses[t.at + 1]?.items.some(i => i.f || i.np?.count !== undefined)) return []; // "I counted wrong, …"
  if (!t.prior.length && t.at === 0 && !c.asks) return figureAgain(t);
  if (!t.prior.length || t.at > 2 || c.asks || t.told.some(x => x.entry.kind !== 'amend' && x.entry.kind !== 'remark') && t.clauses[t.at + 1]?.items[0]?.t !== 'neg') return undefined;
  if (c.neg && /^(pay|buy|want|need|order)$/.test(c.verb?.base ?? '')) return undefined;
  const again = t.at === 0 && /^(need|want|get|buy|order|take)$/.test(c.verb?.base ?? '') && !c.neg && /^(must|plan|maybe|deed)$/.test(c.reality) && c.verb!.form !== 'past' && c.items.every(i => !i.np || i.np.stands || /^(dozen|pair|lot|one|ones)$/.test(i.np.said)) ? numberIn(t, c) : undefined, wanted = again === undefined ? undefined : t.prior.findLast(e => e.kind === 'want');
  if (wanted?.kind === 'want' && wanted.qty !== undefined && wanted.qty !== again) return [{ kind: 'amend', field: 'qty', value: again } as Entry]; // "I'll need six of them"
  if (c.items[0]?.t === 'neg' && !c.subj.some(s => !s.carried) && c.items.slice(1).every(i => i.f?.dim === 'when' || i.t === 'mark') && t.clauses[t.at + 1]?.items.some(i => i.f?.dim === 'when')) { const n = t.clauses[t.at + 1]!, moved = changed(t, n, lowText(t, n)); if (moved) { (n as Clause & { spoken?: boolean }).spoken = true; return moved; } } // "not Tuesday. Tuesday week."
  const comma = c.items[0]?.t === 'neg' ? c.items.findIndex(i => i.low === ',') : -1;
  if (comma > 0 && c.items.slice(1, comma).some(i => i.f) && c.items.slice(comma).some(i => i.f)) return changed(t, { ...c, from: c.items[comma]!.to, items: c.items.slice(comma + 1) }, text); // "not twelve, fourteen thou"
  if (c.items[0]?.t === 'neg' && t.told.some(x => x.entry.kind === 'amend')) return [];
  if (t.told.some(x => x.entry.kind === 'amend') && !MARK.test(text)) return undefined; // "it's three to a hole" says why
  const admitted = ADMITS.test(lowText(t, t.clauses[t.at - 1] ?? c)) || ADMITS.test(text) || ADMITS.test(t.clauses[t.at + 1] ? lowText(t, t.clauses[t.at + 1]!) : '');
  if (admitted && (numberIn(t, c) !== undefined || sumsIn(t, c.from, c.to, true).price !== undefined || t.sheet.found.some(f => f.dim === 'measure' && f.from >= c.from && f.to <= c.to) || t.prior.some(e => e.kind === 'stow') && placeFrom(t.sheet, c.items, 0))) { const got = changed(t, c, text); if (got) { const n = t.clauses[t.at + 1]; if (n && ADMITS.test(lowText(t, n))) (n as Clause & { spoken?: boolean }).spoken = true; return got; } }
  const own = `${t.sheet.tokens.slice(Math.max(0, c.from - 3), c.from).map(x => x.low).filter(w => w !== ',').join(' ')} ${text}`.trim();
  const n = t.clauses[t.at + 1];
  const negated = (n !== undefined && n.items[0]?.t === 'neg' && n.items.some(i => i.f || i.np && (i.np.stands || i.np.said.split(' ').some(w => SIDES.has(w)))) || /\bnot \S+( \S+)?$/.test(text)) && !ofAnother(t, c);
  if (c.neg && n && !n.neg && restated(n)) { return []; }
  if (!MARK.test(own) && !negated && !restated(c) && !movedDate(t, text) && !bareFigure(t, c)) return t.told.length ? undefined : figureAgain(t);
  if (/^(i |we )?(actually |really |just )?(need|want)\b/.test(text.replace(/^(actually|no|sorry) ,? ?/, '')) && /^(actually|sorry|no)\b/.test(own) && t.prior.some(e => e.kind === 'want') && !c.items.some(i => i.np && !i.np.stands) && numberIn(t, c) !== undefined) return changed(t, c, text);
  if (c.verb && /^(need|order|buy|clean|paint|prime|fit|pull|check)$/.test(c.verb.base!) && !/\b(sorry|correction|make that|meant)\b/.test(own)) return undefined;
  return changed(t, c, text) ?? figureAgain(t);
};

/** How people own up to a slip of the eye, the tongue or the thumb. */
const ADMITS = /\b(my mistake|my (bad|fault)|misread|miscounted|(i )?(can't|couldn't|cannot|never could) (count|add( up)?|read)|misheard|mistyped|typo|typed it wrong|counted (it |them )?wrong|read (it|the \w+|that|them) wrong|measured (it )?wrong|slip of the (tongue|thumb|pen)|i tell a lie|tell a lie|i (got|had) (that|it|them) (wrong|backwards|back to front|the wrong way round|upside down)|(had|hadn't got|without) my (readers|glasses|specs|spectacles)( on| off)?|fat (finger|thumb)s?|i forgot the|forgot to add|left out the|added it (up )?wrong|wrong way round|i was (out|off) by|i lied|read(ing)? the wrong|should read)\b/;

/** "he rang, the van's broken down, so it's the third now": the day of what is awaited has moved, whatever else is told beside it. */
function latelyMoved(t: Telling, text: string): Entry[] | undefined {
  const c = t.clause, e = [...t.prior].reverse().find(x => x.kind === 'order' || x.kind === 'out'), day = e && t.at < 5 && newDay(t, c)?.value;
  if (!day || !/\b(now|pushed|(put|set|moved|shoved|knocked) (it |them )?back|moved|delayed|instead|won't be|isn't till|not till|not until|slipped)\b/.test(text) || c.asks || !/^(it|they|that|he|she)?$/.test(c.who ?? '') || c.subj.some(s => !s.carried)) return undefined;
  return [{ kind: 'amend', field: e.kind === 'order' ? 'expected' : 'until', value: day } as Entry];
}

/** "they phoned and now it's the thirtieth" */
const movedDate = (t: Telling, text: string): boolean => /\b(now|pushed|put back|moved|delayed|late|phoned|rang|won't be|isn't till|not till|not until|instead)\b/.test(text) && t.prior.some(e => e.kind === 'order' || e.kind === 'out');
/** "no, six of them": a figure alone in answer to a note with one. */
const bareFigure = (_t: Telling, c: Clause): boolean => c.pred === 'none' && c.items[0]?.low === 'no';

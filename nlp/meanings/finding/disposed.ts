import type { Entry } from '../../../domain/model/entry.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { namesPart } from '../lib/named.ts';
import { clauseText, lowText, type Meaning, type Telling } from '../telling.ts';
import { make } from './part.ts';

const THROWN = /^(bin|scrap|chuck|junk|ditch|dump|condemn|bung|sling|lob|toss|throw|write|skip|heave|pitch|hoy|biff|turf)$/;
const AWAY = /\b(away|out|off|in the (bin|skip|scrap|bucket|tip|dump|trash)|on the (scrap|heap|tip|pile|skip|dump)|to the (tip|dump|scrap\w*)|for scrap|over the (hedge|fence))\b/;
const KEPT = /^(save|keep|reuse|re-use)$/;

/** "bin the gasket", "chuck that one", "save the left liner": what is to become of a part is the verdict on it. */
export const disposed: Meaning = t => {
  const c = t.clause, base = c.verb?.base ?? '', text = lowText(t);
  const mine = !c.who || /^(i|we)$/.test(c.who), bid = c.verb?.form === 'base' && /^(deed|plan|must)$/.test(c.reality) || c.reality === 'deed';
  if (c.asks || c.neg || c.sub || !mine || !bid || c.subj.some(s => !s.carried) && !c.passive) return undefined;
  const thrown = THROWN.test(base) && (/^(bin|scrap|chuck|junk|ditch|condemn|skip|turf)$/.test(base) || AWAY.test(text));
  const kept = KEPT.test(base) && c.verb!.form === 'base' && c.reality === 'deed' && !/\b(clear|off|away|on|in|at|up|from|for|till|until|dry|warm|cool|back|it for)\b/.test(text.replace(/^.*?\b(save|keep|reuse) /, ''));
  if (!thrown && !kept) return undefined;
  const things = (c.obj.length ? c.obj : c.passive ? c.subj : []).filter(o => partLike(t.sheet, o.name) && (o.carried || namesPart(t.sheet, o.name)));
  const found = judged(t, things.map(o => o.name), thrown ? 'replace' : 'reuse', things.every(o => o.carried));
  if (found) return [];
  return things.length && c.verb!.form === 'base' ? things.map(o => make(o.name, clauseText(t).replace(/^(and|but|so|then)\s+/i, ''), thrown ? 'replace' : 'reuse')) : undefined;
};

/** The finding that was just told of one of these parts gets the verdict; false where there is none. */
function judged(t: Telling, names: readonly string[], verdict: 'replace' | 'reuse', carried: boolean): boolean {
  const was = t.told.findLast(x => x.entry.kind === 'finding' && (names.includes(x.entry.part) || carried && t.told.at(-1) === x))?.entry as Extract<Entry, { kind: 'finding' }> | undefined;
  if (was) was.verdict ??= verdict;
  return was !== undefined;
}

/** "I'd not trust that hook", "not to be trusted": no verdict that anything is to be done, but no clean bill either. */
export const distrusted: Meaning = t => {
  const c = t.clause, text = lowText(t);
  if (c.asks || c.sub || !/(\bnot|n't|\bnever|\bno longer) (ever |really |even )?(to )?(be )?(trust(ed|ing)?|rel(y|ied) on)\b/.test(text)) return undefined;
  const about = [...c.obj, ...c.subj].find(s => partLike(t.sheet, s.name) && (s.carried || namesPart(t.sheet, s.name)));
  if (!about || c.who && !/^(i|we|it|that|they)$/.test(c.who)) return undefined;
  if (t.told.at(-1)?.entry.kind === 'finding' && (about.carried || (t.told.at(-1)!.entry as { part: string }).part === about.name)) return [];
  return about.carried ? undefined : [make(about.name, clauseText(t).replace(/^(and|but|so|then)\s+/i, ''))];
};

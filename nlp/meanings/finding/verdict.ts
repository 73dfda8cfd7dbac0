import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause, Thing } from '../../clauses/clause.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { namesPart } from '../lib/named.ts';
import { verdictIn } from '../lib/verdict.ts';
import { clauseText, lowText, type Telling } from '../telling.ts';
import { condition, counted, make, partsOf } from './part.ts';

/** "the seal's had it", "belt is past it", "the tyres have seen better days". */
export function doneFor(t: Telling): Entry[] | undefined {
  const c = t.clause, parts = partsOf(t, c.subj);
  const m = /\b(?:had (?:it|its day|their day|its chips|their chips)|past (?:it|its best|their best|saving|redemption)|seen (?:better days|its day|their day)|on (?:its|their) last legs|given up the ghost|bit(?:ten)? the dust|within (?:limits|spec|tolerance|the limits?))\b/.exec(lowText(t));
  if (!m || c.neg || !parts.length || !/^(be|have|none)$/.test(c.pred) && !/^(have|be|give|bite|see)$/.test(c.verb?.base ?? '') || /^(i|we)$/.test(c.who ?? '')) return undefined;
  return parts.map(p => make(p.name, m[0], /had|past/.test(m[0]) ? 'replace' : undefined));
}

/** "left bush can be reused": a part of its own with a verdict that "can" gives. */
export function usable(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (c.neg || c.verb?.base === 'go' && /\b(back|on|in|together)\b/.test(c.prt.join(' ')) || /\bcould do with\b/.test(lowText(t)) || !/\b(can|could|will|'ll) (be |still be )?(re-?used|reground|rebored|rewound|rebushed|resleeved|sleeved|bushed|skimmed|machined|built up|recut|relined|refaced|soldered|patched|mended|saved|reground|rebored|sleeved|rebushed|skimmed|machined|turned down|rebuilt|welded|repaired|fixed|brazed|straightened|do|go again|go back|run again|last|serve|clean up|polish up|live on|see another)\b/.test(lowText(t))) return undefined;
  const parts = partsOf(t, c.subj).filter(s => !s.carried && namesPart(t.sheet, s.name));
  const modal = c.items.find(i => i.t === 'modal');
  if (!parts.length || !modal) return undefined;
  const text = condition(t, c, modal.from);
  return parts.map(p => make(p.name, text, verdictIn(lowText(t)) ?? (/re-?used|\b(do|go(?! (back|on|in|together)\b)|run|last|serve|clean|polish|live|see)\b/.test(lowText(t)) ? 'reuse' : 'repair')));
}

/** "keep an eye on that one": what is watched. */
function aboutAfterOn(t: Telling, c: Clause): Thing[] {
  const k = c.items.findIndex((i, n) => /^(on|for|at)$/.test(i.low) && (c.items[n + 1]?.np && !c.items[n + 1]!.np!.stands));
  const np = k >= 0 ? c.items[k + 1]!.np! : undefined;
  return np && partLike(t.sheet, np.name) ? [{ name: np.name, from: np.from, to: np.to, plural: false }] : [...c.obj, ...c.subj].filter(s => s.carried && s.np?.stands && /\b(left|right|front|rear|back|other)\b/.test(s.np.said));
}

/** "it'll go again", "keep an eye on it", "they'll do": a verdict on what was just found, or a finding of its own. */
export function verdictOnly(t: Telling): Entry[] | undefined {
  const c = t.clause, text = lowText(t);
  const v = verdictIn(text);
  if (c.reality === 'hearsay' || /^(while|when)$/.test(c.sub ?? '') || /\b(probably|might|perhaps|would|wish)\b|^maybe\b/.test(text)) return undefined;
  if (c.subj.some(s => s.from >= c.from && s.np?.stands && (/^(rest|others?)$/.test(s.np.said) || (s.np.count ?? 1) > 1))) return undefined; // of the others, not of what was said before
  if (/^(?:and |but |, ?)*(?:rest|others?) (?:of \w+ )?(?:is|are|was|were)\b/.test(text)) return undefined; // "rest are fine"
  const some = counted(t, c);
  if (some && c.pred === 'be') return undefined; // "the other two are scrap" is said of two
  if (!v || c.neg || c.pred === 'none' && c.items.some(i => i.f?.dim === 'number')) return undefined;
  if (c.pred === 'be' && c.subj.some(s => s.np?.stands && s.from >= c.from) && v !== 'watch' && v !== 'reuse' && !t.told.some(x => x.entry.kind === 'finding' && c.subj.some(s => s.name === (x.entry as { part: string }).part))) return undefined;
  if (c.pred === 'be' && c.subj.some(s => !s.carried)) return undefined;
  const plain = v === 'watch' || v === 'reuse' && (c.who !== undefined || !c.subj.some(s => !s.carried)) || v === 'repair' && /can|has to be|have to be/.test(text) || v === 'replace' && c.reality === 'must' || (v === 'replace' || v === 'good') && (/^(that|it|they|that one|those|this|she|he)$/.test(c.who ?? '') || c.subj.length > 0) && c.subj.every(s => s.carried);
  if (!plain) return undefined;
  const welded = /\b(on|onto|to|in|into) (it|them|that|those|the end)\b/.test(text) && v === 'repair' && t.memory.topic() ? [t.memory.topic()!] : undefined; // "I can weld a tip on them": what is mended is what gets it
  const about = welded ?? (v === 'watch' && !c.obj.some(o => partLike(t.sheet, o.name)) ? aboutAfterOn(t, c) : c.obj.length ? c.obj : c.subj).filter(s => partLike(t.sheet, s.name));
  const just = t.told.at(-1);
  if (just?.entry.kind === 'finding' && !just.entry.verdict && !welded && !some && about.every(a => a.carried && !a.np?.stands) && t.clauses.indexOf(just.clause) >= t.at - 3) { just.entry.verdict = v; return []; } // said of what was just found
  if (!about.length) about.push(...t.memory.lastGroup().slice(0, 1));
  const names = about.map(a => a.name);
  const same = t.told.findLast(x => x.entry.kind === 'finding' && names.includes(x.entry.part));
  const since = same ? t.told.slice(t.told.indexOf(same) + 1).some(x => /^(work|fit)$/.test(x.entry.kind)) : false;
  if (same && same.entry.kind === 'finding' && !some && !(since && (v === 'good' || v === 'replace'))) {
    if (!same.entry.verdict) { same.entry.verdict = v; return []; }
    if (v === 'watch' || v === 'replace') same.entry.verdict = v;
    return [];
  }
  if (!names.length) return undefined;
  const own = c.subj.find(s => !s.carried && s.from >= c.from && s.to < c.to);
  if (some) return names.map(n => make(n, `${some}${condition(t, c, (c.items.find(i => i.t === 'modal') ?? c.rest[0] ?? c.items.at(-1)!).from)}`, v));
  return names.map(n => make(n, own ? condition(t, c, own.to) : c.pred === 'be' && c.rest.length ? condition(t, c, c.rest[0]!.from) : clauseText(t).replace(/^(and|but|so|then)\s+/i, ''), v));
}

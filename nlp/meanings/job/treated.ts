import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import { isMachine, partLike } from '../../clauses/name-kinds.ts';
import { COATS } from '../../words/coats.ts';
import { isClass } from '../../words/verbs.ts';
import { lowText, type Telling } from '../telling.ts';
import { entry, plainAct, withParticle } from './act.ts';
import { table } from '../../words/table.ts';

const NOUN_ACT: Record<string, string> = table({ clean: 'clean', cleaning: 'clean', coat: 'paint', paint: 'paint', wash: 'wash', rebuild: 'rebuild', grease: 'grease', greasing: 'grease', sand: 'sand', skim: 'skim', regrind: 'regrind', weld: 'weld', polish: 'polish', service: 'service', adjustment: 'adjust', scrub: 'scrub', oil: 'oil', soak: 'soak', rewind: 'rewind', patch: 'patch', undercoat: 'undercoat', primer: 'prime', rewire: 'rewire', overhaul: 'overhaul', flush: 'flush', bleed: 'bleed', straightening: 'straighten', welding: 'weld', painting: 'paint', polishing: 'polish', hone: 'hone', rebore: 'rebore' });

/** As much of oil or paint as one gives a part at a time: "a drop of oil". */
const DAB = /^(drop|dab|spot|squirt|splash|smear|touch|shot|dose|drip|blob|pump|lick|smidge|smidgen)$/;

/** "needs a clean", "wants painting", "needs to be welded", "has to be poured again": the part is the subject. Undefined where the clause says no such thing. */
export function treated(t: Telling, c: Clause): Entry[] | undefined {
  const opens = c.items.find(i => !/^(adv|cc|mark|intj)$/.test(i.t)), bare = !c.subj.length && !c.who && opens?.t === 'verb' && /^(want|need)$/.test(opens.base ?? '') && opens.form === 's' ? t.memory.topic() : undefined; // "Just wants bolting on."
  const parts = (bare ? [bare] : c.subj).filter(p => !isMachine(t.sheet, p.name) || !p.carried);
  if (!parts.length || /^(i|we|you|he)$/.test(c.who ?? '') && !c.obj.length === false) return undefined;
  const nouned = /\b(?:needs?|wants?|could do with|due)(?: to have)? (?:a |some |another )?(?:good |proper |thorough |right |full |quick |serious |bit of )*(clean|cleaning|scrub|wash|polish|sand|sanding|paint|painting|coat|grease|oil|weld|skim|service|rebuild|soak|blast|rub down|greasing|regrind|hone|rewind)\b/.exec(lowText(t));
  if (nouned && !/coat of|coats of/.test(lowText(t))) return parts.map(p => entry(NOUN_ACT[nouned[1]!] ?? nouned[1]!.replace(/ing$| down$/, ''), p.name));
  const doWith = c.items.findIndex((i, n) => i.low === 'with' && c.items[n - 1]?.base === 'do' && c.items[n - 2]?.low === 'could');
  const k = doWith >= 0 ? doWith : c.items.findIndex(i => i.t === 'verb' && /^(need|want|require|could)$/.test(i.base ?? '') || i.low === 'requires');
  if (k >= 0) {
    const next = c.items.slice(k + 1).find(i => i.t !== 'adv' && i.t !== 'det');
    if (next?.t === 'verb' && next.form === 'ing' && !/^(replace|renew|watch)$/.test(next.base!)) return parts.map(p => entry(isClass(next.base!, 'work') && !/^(bolt|press|knock|drill|cut|grind)$/.test(next.base!) ? next.base! : [next.base!, c.items[c.items.indexOf(next) + 1]].map(x => (typeof x === 'string' ? x : x?.t === 'prt' ? x.low : '')).join(' ').trim(), p.name));
    if (next?.t === 'verb' && /^(past|part)$/.test(next.form ?? '') && isClass(next.base!, 'work') && c.items[k + 1] === next) return parts.map(p => entry(next.base!, p.name)); // "needs soldered"
    if (next?.np) {
      const words = next.np.said.split(' ');
      const of = c.items[c.items.indexOf(next) + 1]?.low === 'of' ? c.items[c.items.indexOf(next) + 2]?.np?.said : undefined;
      const act = of && DAB.test(words.at(-1)!) ? NOUN_ACT[of.split(' ').at(-1)!] : NOUN_ACT[words.at(-1)!] ?? NOUN_ACT[words[0]!];
      if (act && !/\bnew\b/.test(next.low)) return parts.map(p => entry(of && /primer|oxide/.test(of) ? 'prime' : act, p.name));
      const ing = words.find(w => /ing$/.test(w) && isClass(w.replace(/ing$/, ''), 'work'));
      if (ing) return parts.map(p => entry(ing.replace(/ing$/, ''), p.name));
    }
  }
  const coat = /^(get|have|want|need)$/.test(c.verb?.base ?? (c.pred === 'have' ? 'have' : '')) && /^(must|plan)$/.test(c.reality) ? COATS[[...c.obj].reverse().find(o => COATS[o.name.split(' ').at(-1)!])?.name.split(' ').at(-1) ?? ''] : undefined;
  if (coat && !/\b(buy|order|from)\b/.test(lowText(t))) return parts.filter(p => partLike(t.sheet, p.name)).map(p => entry(coat, p.name)); // "it'll get enamel on Saturday"
  if ((c.reality === 'must' || c.reality === 'plan') && c.verb && (c.items.some(i => i.low === 'be' || i.low === 'being') || c.passive && c.reality === 'plan' || c.passive && c.carriedSubj) && c.verb.form !== 'ing' && !/^(replace|renew|be)$/.test(c.verb.base!) && (/\b(to be|be|gets|get|getting|being)\b/.test(lowText(t)) || c.passive && c.reality === 'plan' || c.passive && c.carriedSubj) && !/^(i|we)$/.test(c.who ?? '')) {
    return parts.map(p => entry(withParticle(plainAct(c.verb!, c), c.verb!.base!, c), p.name));
  }
  return undefined;
}

import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause } from '../clauses/clause.ts';
import type { Item } from '../clauses/items.ts';
import { isMachine, partLike } from '../clauses/things.ts';
import { COATS } from '../words/coats.ts';
import { NAMED } from '../words/quantities.ts';
import { isClass, verbForms } from '../words/verbs.ts';
import { trim } from './lib/fields.ts';
import { stillToDo } from './lib/still-to.ts';
import { verdictIn } from './lib/verdict.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

const NOUN_ACT: Record<string, string> = { clean: 'clean', cleaning: 'clean', coat: 'paint', paint: 'paint', wash: 'wash', rebuild: 'rebuild', grease: 'grease', greasing: 'grease', sand: 'sand', skim: 'skim', regrind: 'regrind', weld: 'weld', polish: 'polish', service: 'service', adjustment: 'adjust', scrub: 'scrub', oil: 'oil', soak: 'soak', rewind: 'rewind', patch: 'patch', undercoat: 'undercoat', primer: 'prime', rewire: 'rewire', overhaul: 'overhaul', flush: 'flush', bleed: 'bleed', straightening: 'straighten', welding: 'weld', painting: 'paint', polishing: 'polish', hone: 'hone', rebore: 'rebore' };

/** Work still to do: "need to", "I'll", "going to", "must", an order to oneself, "X wants a clean", "X needs welding". */
export const job: Meaning = t => {
  const c = t.clause;
  const reminded = /\bdon't (let me )?forget to\b/.test(lowText(t));
  if (c.neg && !reminded || c.asks || c.sub && !(c.sub === 'when' && c.reality === 'plan') && /^(if|unless|until|till|before|when|after|because|so|that|which|while|since|as)$/.test(c.sub)) return undefined;
  if (/^(maybe|perhaps|possibly|might)\b/.test(lowText(t))) return undefined;
  if (c.reality === 'cond' || c.join === 'or' || t.clauses[t.at + 1]?.join === 'or' || /\b(don't know|not sure|no idea)\b/.test(lowText(t))) return undefined;
  const anew = t.told.at(-1)?.entry;
  if (anew?.kind === 'finding' && /\b(have|get|need|want)s? (to have |to get )?(a new|another) one (cut|made|cast|turned|machined|rolled|bent|forged|welded|ground|poured|wound)\b/.test(lowText(t))) { anew.verdict ??= 'replace'; return []; }
  const left = stillToDo(t), got = treated(t, c) ?? (left?.parts.length ? left.parts.map(p => entry(left.act, p.name)) : undefined) ?? ordered(t, c);
  if (got) mends(t, got);
  return got;
};

const MENDS = /^(grind|file|skim|machine|dress|weld|braze|solder|patch|pour|re-pour|repour|glue|straighten|rebuild|rewind|reline|rebush|sleeve|regrind|repair|fix|mend|file|recut|rivet|epoxy|re-line|resleeve|rebabbitt|fill|plug|build|stitch|sew|splice|re-cover|recover|helicoil|pin|reface|true|bush)$/;
/** A repair that he says he will do is the verdict on what was found: "rotted through… I've got to patch it". */
function mends(t: Telling, jobs: readonly Entry[]): void {
  const anew = /\b(make|turn|cut|carve|fabricate|knock up|build|saw|forge|cast|get|weave|sew|machine) (up )?(me |us )?(another|a new|new)( one| ones)?\b/.test(lowText(t)) ? t.told.at(-1)?.entry : undefined; // "…worn, I'll turn another one"
  if (anew?.kind === 'finding') anew.verdict ??= 'replace';
  for (const j of jobs) {
    if (j.kind !== 'job' || !MENDS.test(j.do)) continue;
    const names = [j.part, ...t.clause.subj.map(s => s.name), ...t.memory.lastGroup().map(s => s.name)];
    const f = t.told.findLast(x => x.entry.kind === 'finding' && (x.entry.part === j.part || names.includes(x.entry.part) && (t.clause.items.some(i => i.low === 'it' || i.low === 'for') || j.part === undefined)));
    if (f?.entry.kind === 'finding') f.entry.verdict ??= 'repair';
  }
}

/** As much of oil or paint as one gives a part at a time: "a drop of oil". */
const DAB = /^(drop|dab|spot|squirt|splash|smear|touch|shot|dose|drip|blob|pump|lick|smidge|smidgen)$/;

const entry = (act: string, part?: string): Entry => trim({ kind: 'job', do: act, part }) as Entry;

/** "needs a clean", "wants painting", "needs to be welded", "has to be poured again": the part is the subject. */
function treated(t: Telling, c: Clause): Entry[] | undefined {
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

const plainAct = (v: Item, c: Clause): string => {
  const away = v.base === 'send' ? [...c.prt, ...c.rest.map(i => i.low)].find(p => /^(off|out|away|back)$/.test(p)) : undefined;
  if (v.base === 'send') return away ? `send ${away}` : 'send';
  return v.base === 're-pour' || v.base === 'repour' ? 'pour' : v.base!;
};

/** "I've got to patch the left one", "tomorrow I'm going to grind the key", "prime it tomorrow". */
function ordered(t: Telling, c: Clause): Entry[] | undefined {
  const having = c.pred === 'have' && !c.verb && /^(plan|must)$/.test(c.reality) && c.obj.length > 0 && [...c.prt, ...c.rest.map(i => i.low)].find(p => /^(off|out|apart|back|on|in)$/.test(p));
  if (having && /^(off|out|apart)$/.test(having) && /^(i|we)$/.test(c.who ?? 'i') && !(c.rest.some(i => i.low === having) && c.rest[c.rest.findIndex(i => i.low === having) + 1]?.np && /^(in|on)$/.test(having))) return c.obj.filter(p => partLike(t.sheet, p.name)).map(p => entry(having === 'apart' ? 'take apart' : `take ${having}`, p.name)); // "I'll have the cover off"
  const seen = c.verb?.base === 'see' && /^(plan|must)$/.test(c.reality) ? c.rest.findIndex((i, n) => /^(to|about)$/.test(i.low) && c.rest[n + 1]?.np !== undefined) : -1;
  if (seen >= 0 && partLike(t.sheet, c.rest[seen + 1]!.np!.name)) return [entry(`see ${c.rest[seen]!.low}`, c.rest[seen + 1]!.np!.name)];
  const looked = c.pred === 'have' && /^(plan|must)$/.test(c.reality) && c.obj.at(-1)?.name === 'look' ? c.rest.findIndex((i, n) => /^(at|over)$/.test(i.low) && c.rest[n + 1]?.np) : -1;
  if (looked >= 0 && partLike(t.sheet, c.rest[looked + 1]!.np!.name)) return [entry('look', c.rest[looked + 1]!.np!.name)]; // "have a look at the chain"
  const goesOn = furtherOrder(t, c), verb = goesOn ? { ...c.verb!, form: 'base' as const } : c.verb;
  if (!verb || c.passive || /^(they|he|she|person|you|it)$/.test(c.who ?? '') && c.who !== 'it') return undefined;
  if (c.subj.some(s => !s.carried) && !/^(i|we)$/.test(c.who ?? '') && c.items[c.vi - 1]?.t !== 'to' && c.reality !== 'must') return undefined;
  const today = t.sheet.ctx.at.slice(0, 10);
  const soon = c.ing && !c.subj.some(s => !s.carried) && c.vi === c.items.findIndex(i => i.t === 'verb') && dims(c.items, 'when').some(f => (f.value.from ?? '') > today);
  if (soon && (isClass(verb.base!, 'work') || isClass(verb.base!, 'on') || isClass(verb.base!, 'off')) && c.obj.length + t.memory.lastGroup().length > 0) return (c.obj.length ? c.obj : t.memory.lastGroup().slice(0, 1)).map(p => entry(verb.base!, p.name));
  const bid = goesOn || commanded(c) || /\bdon't (let me )?forget to\b/.test(lowText(t));
  const bound = (c.reality === 'must' || c.reality === 'plan') && (/^(i|we)$/.test(c.who ?? '') || !c.who && !c.subj.some(s => !s.carried));
  if (!bid && !bound) return undefined;
  if (verb.form !== 'base' && !(verb.form === 'ing' && c.reality === 'plan' && /^(send|post|ship|mail)$/.test(verb.base!))) return undefined;
  const base = verb.base!;
  if (/^(be|have|need|want|see|know|think|say|do|get|buy|wait|leave|let|keep|try|like|go|come|call|ring|stay|live|stop|quit|start|tell|ask|guess|hope|reckon|remember|forget|worry|bother|find|figure|look|hold|mind|make|watch|call|sleep|eat|regret|call|give|take|use|put|feel|swear|believe|mean|seem|talk|learn|pay|phone|order|show|convert|scratch|strike|happen|cost|ruin|miss|work|spend|run|obtain|procure|source|purchase)$/.test(base) && !special(base, c)) return undefined;
  if (verdictIn(lowText(t)) === 'watch') return undefined;
  if (base === 'replace' && c.obj.length && t.told.some(x => x.entry.kind === 'finding' && c.obj.some(o => o.name === (x.entry as { part: string }).part))) { for (const x of t.told) if (x.entry.kind === 'finding' && c.obj.some(o => o.name === (x.entry as { part: string }).part)) x.entry.verdict ??= 'replace'; return []; }
  const act = plainAct(verb, c);
  const into = pieced(t, c);
  if (into) return [entry(act, into)];
  const things = c.obj.length ? c.obj : [];
  if (!things.length && !isClass(base, 'work') && !isClass(base, 'tight') && !isClass(base, 'on')) return undefined;
  if (!things.length) return bid && !t.memory.topic() ? undefined : sharedObject(t, act);
  const mended = things.some(p => FLAW.test(p.name)) ? flawed(t, c) : undefined;
  if (mended) return [entry(withParticle(act, base, c), mended)];
  return things.filter(p => partLike(t.sheet, p.name) || NAMED.test(p.name.replace(/s$/, '')) && p.name.includes(' ')).map(p => entry(withParticle(act, base, c), p.name));
}

/** "scarf new ash into it", "weld a patch onto the tank": work with a piece of stuff is work on what takes it. */
function pieced(t: Telling, c: Clause): string | undefined {
  if (!c.obj.length || !c.obj.every(o => /(^| )(pieces?|patch(es)?|section|strip|length|bit|plate|ash|oak|pine|timber|wood|steel|metal|cloth|canvas|leather|tin)$/.test(o.name) && !o.np?.known)) return undefined;
  const k = c.rest.findIndex(i => /^(into|onto|over|on|in)$/.test(i.low)), at = c.rest[k + 1];
  if (k !== 0 || !at) return undefined;
  const name = at.np ? at.np.stands ? undefined : at.np.name : at.t === 'pron' && /^(it|that)$/.test(at.low) ? t.memory.topic()?.name : undefined;
  return name && partLike(t.sheet, name) ? name : undefined;
}

/** "knock the dent out of the tank", "solder the pinhole": work on a flaw is work on what has it. */
const FLAW = /^(?:\w+ )?(dents?|cracks?|pinholes?|splits?|tears?|creases?|kinks?|burrs?|gouges?|leaks?|ridge|dings?)$/;
function flawed(t: Telling, c: Clause): string | undefined {
  const k = c.items.findIndex((i, n) => n > c.vi && /^(in|on|of|from|off)$/.test(i.low) && c.items[n + 1]?.np), np = c.items[k + 1]?.np;
  const name = np && !np.stands ? np.name : (t.told.findLast(x => x.entry.kind === 'job' || x.entry.kind === 'finding')?.entry as { part?: string } | undefined)?.part ?? t.memory.topic()?.name;
  return name && partLike(t.sheet, name) ? name : undefined;
}

/** Verbs that are jobs only with their particle or object: "take off the head", "make a bracket", "put the guard back on". */
const special = (base: string, c: Clause): boolean => (/^(take|get|put)$/.test(base) && c.obj.length > 0 && c.prt.some(p => /^(off|out|on|in|back|apart)$/.test(p)))
  || base === 'take' && c.obj.length > 0 && c.rest.some(i => i.t === 'to' || i.low === 'in') || base === 'make' && c.obj.length > 0 && !c.obj[0]!.np?.stands || base === 'find' && false || (base === 'look' && c.rest.some(i => i.low === 'at')) || base === 'order' && false;

const withParticle = (act: string, base: string, c: Clause): string => {
  if (/^(drill|knock|press|drive|cut|break|dig|saw|chip|punch|strip|burn|grind|chisel|tap|pull|clean|line|lay|mark)$/.test(base)) { const p = c.prt.find(x => /^(off|out|apart)$/.test(x)); return p ? `${act} ${p}` : act; }
  if (/^(take|get|put|whip|nip)$/.test(base)) { const p = c.prt.find(x => /^(off|out|on|in|apart|back)$/.test(x)); return /^(take|get|whip|nip)$/.test(base) && /^(off|out)$/.test(p ?? '') ? `take ${p}` : p ? `${base} ${p}` : act; }
  return act;
};

/** "prime it tomorrow", "remember to grease the pins": a bare verb at the front, no subject. */
function commanded(c: Clause): boolean {
  if (c.who || c.subj.some(s => !s.carried)) return false;
  const first = c.items.find(i => !['adv', 'cc', 'mark', 'intj'].includes(i.t) && i.f?.dim !== 'when');
  if (first?.t === 'verb' && /^(remember|forget)$/.test(first.base ?? '') ) return !c.neg || first.base === 'forget';
  return first?.t === 'verb' && first.form === 'base' && first === c.verb;
}

/** "Must grease the strap. And set the clearances.": a verb that may be either goes on with the orders. */
const furtherOrder = (t: Telling, c: Clause): boolean => {
  const [cc, ...rest] = c.items, last = t.told.at(-1);
  return /^(and|then|plus|also)$/.test(cc?.low ?? '') && rest.find(i => i.t !== 'adv') === c.verb && c.verb?.form === 'past' && verbForms(c.verb.low).some(f => f.form === 'base') && !c.who && !c.subj.some(s => !s.carried) && last?.entry.kind === 'job' && last.clause === t.clauses[t.at - 1];
};

/** "clean and prime the hood": the object stands with the second verb. */
function sharedObject(t: Telling, act: string): Entry[] | undefined {
  const after = t.clauses[t.at + 1];
  if (after?.obj.length && after.join === 'and') return after.obj.map(p => entry(act, p.name));
  const topic = t.memory.topic();
  return topic && t.clause.carriedSubj ? [entry(act, topic.name)] : undefined;
}

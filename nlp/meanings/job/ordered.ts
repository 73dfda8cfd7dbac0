import type { Entry } from '../../../domain/model/entry.ts';
import { dims, type Clause } from '../../clauses/clause.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { NAMED } from '../../words/quantities.ts';
import { isClass, verbForms } from '../../words/verbs.ts';
import { verdictIn } from '../lib/verdict.ts';
import { lowText, type Telling } from '../telling.ts';
import { entry, plainAct, withParticle } from './act.ts';

/** "I have to solder the near one", "on Friday I shall true the rim", "prime it tomorrow": what the person means to do. Undefined where it is no job; empty where it only settles a finding ("replace the belt"). */
export function ordered(t: Telling, c: Clause): Entry[] | undefined {
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
  || base === 'take' && c.obj.length > 0 && c.rest.some(i => i.t === 'to' || i.low === 'in') || base === 'make' && c.obj.length > 0 && !c.obj[0]!.np?.stands || base === 'look' && c.rest.some(i => i.low === 'at');

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

import type { Entry } from '../../../domain/model/entry.ts';
import { dims, type Clause, type Thing } from '../../clauses/clause.ts';
import { isMachine, isStuff, partLike } from '../../clauses/name-kinds.ts';
import { CONDITION } from '../../words/conditions.ts';
import { FAULT } from '../../words/faults.ts';
import { isClass, verbForms } from '../../words/verbs.ts';
import { verdictIn } from '../lib/verdict.ts';
import { clauseText, lowText, type Telling } from '../telling.ts';
import { condition, counted, make, partsOf } from './part.ts';
import { showing } from './proved.ts';

/** "X leaks", "X snapped", "X holds now", "X reads empty": what a part does or what happened to it. */
export function acted(t: Telling): Entry[] | undefined {
  const c = t.clause, verb = c.verb!;
  const base = verb.base!;
  if (c.neg && c.items.find(i => i.t !== 'cc' && i.t !== 'mark')?.t === 'do' && !unnamed(t).length || base === 'read' && c.rest[0]?.f || base === 'go' && (/^(with|along)$/.test(c.rest[0]?.low ?? c.prt[0] ?? '') || c.ing && c.rest[0]?.low === 'to')) return undefined;
  if (dims(c.items, 'money').length || /^(that|this)$/.test(c.who ?? '') && /^(go|make|mean|come|leave|do|get|take|put|call|need|want)$/.test(base) || base === 'hang' && /^(in|on|from|by)$/.test(c.rest[0]?.low ?? c.prt[0] ?? '')) return undefined;
  const broken = showing(t) ?? lostOwn(t) ?? wreckedBy(t);
  if (broken) return broken;
  const parts = partsOf(t, c.subj.length ? lined(t, c.subj) : unnamed(t));
  const she = c.who === 'she' && c.subj.some(s => s.carried) && (isClass(base, 'state') || isClass(base, 'fail')) && (c.rest.some(i => i.t !== 'mark') || /^(hold|leak|weep|drip|pass|fail|seal|work|break|crack|snap)$/.test(base));
  if (!parts.length || c.who && /^(i|we|he|she|person|you)$/.test(c.who) && !she) return undefined;
  if (dims(c.items, 'measure').length && !/^(break|crack|snap|leak)$/.test(base)) return undefined;
  if (/^(stay|sit)$/.test(base) && /\b(where|put|right|there)\b/.test(lowText(t)) || c.reality === 'maybe' && c.neg && !wont(t)) return undefined;
  if (c.ing && c.pred === 'verb' && !c.subj.some(s => !s.carried) && c.join === ',') return undefined; // "…, smelling like a saddle"
  const text = condition(t, c, c.neg ? c.items.find(i => /n't$|^not$|^never$|^no$/.test(i.low))?.from ?? verb.from : verb.from);
  if (base === 'break' && /\b(loose|free)\b/.test(lowText(t))) return undefined;
  if (/^(come|work)$/.test(base) && /\b(loose|free)\b/.test(c.prt.join(' ') + lowText(t))) return c.counted !== undefined || c.subj.some(s => !s.carried) && !c.neg ? parts.map(p => make(p.name, counted(t, c) + text, verdictIn(text))) : undefined;
  if (base === 'look' && /^(at|over|into|for|after)$/.test(c.rest[0]?.low ?? c.prt[0] ?? '') || base === 'measure' && !c.rest.length) return undefined; // looked at, measured: no state
  if (base === 'go' && /^(back )?(in|on|together)$/.test(c.prt.join(' ')) && !c.rest.some(i => i.np || i.t === 'adj')) return undefined; // how it went in is no state
  if (base === 'look' && /^like (it|that|this|he|she|they|i|we)\b/.test(c.rest.map(i => i.low).join(' '))) return undefined; // "it looks like it's me"
  if (/^(look|feel|seem|sound)$/.test(base)) return c.rest.length ? parts.map(p => make(p.name, text, verdictIn(text))) : undefined;
  if (parts.every(p => isStuff(p.name)) && !(/^(smell|stink|taste|turn|go|set|thicken|congeal|curdle|separate|reek)$/.test(base) && c.rest.length > 0 && !/^(in|into|on|through|down|to)$/.test(c.rest[0]!.low === 'to' && base === 'turn' ? '' : c.rest[0]!.low))) return undefined;
  if (/^(smell|stink|taste|reek)$/.test(base) && c.rest.length || base === 'turn' && /^(to|into)$/.test(c.rest[0]?.low ?? '') && c.rest[1]?.np && !c.obj.length || base === 'come' && /^(un\w+ed|undone|unstuck|loose|adrift|apart|open)$/.test(c.rest[0]?.low ?? c.prt[0] ?? '')) return parts.map(p => make(p.name, counted(t, c) + text, verdictIn(text)));
  if (/^(need|want)$/.test(base) && /\b(new|another|replacement)\b/.test(lowText(t)) && c.obj.length) return undefined; // a want
  const fails = isClass(base, 'fail'), acts = wont(t) || isClass(base, 'state') || nowDoes(c) || /^(need|want)$/.test(base) && verdictIn(text) !== undefined;
  if (c.passive && isClass(base, 'fail') && (!isClass(base, 'work') || CONDITION.has(verb.low))) return parts.map(p => make(p.name, counted(t, c) + text, verdictIn(text)));
  if (c.passive && (soiled(t) || verb.low === 'stuck' || /^(pinch|trap|squash|knock|push|pull|draw|wear|rub|hammer|peen|squeeze|crush)$/.test(base) && c.rest[0]?.t === 'adj' && /^(flat|thin|oval|out|hollow|crooked|square|flatter|shut|loose|open|bent)$/.test(c.rest[0].low))) return parts.map(p => make(p.name, counted(t, c) + text, verdictIn(text)));
  if (c.passive) return unlisted(t) ? parts.map(p => make(p.name, counted(t, c) + text, verdictIn(text))) : undefined;
  if (!(fails || acts)) return /^(get|go|come|let|test|check)$/.test(base) && c.rest.some(i => i.t === 'adj') || base === 'let' && (c.prt.includes('go') || /\blet go\b/.test(lowText(t))) ? parts.map(p => make(p.name, text, verdictIn(text))) : undefined;
  if (c.ing && c.pred === 'verb' && c.items.some(i => i.t === 'to')) return undefined;
  if (/^(go|fit|start|come|sit|stay|move|want|lift|draw|read|float|track|turn)$/.test(base) && !c.rest.length && !c.neg && !/^(start|turn|fit)$/.test(base)) return undefined;
  if (trialRun(c) || verb.low === 'stuck' && c.subj.every(s => s.carried)) return undefined;
  return parts.map(p => make(p.name, counted(t, c) + text, verdictIn(text)));
}

/** "sanded the lining and it grabs again": "it" is what the lining is of, the part found faulty before. */
function lined(t: Telling, subj: readonly Thing[]): readonly Thing[] {
  const f = subj.length === 1 && subj[0]!.carried && FAULT.test(subj[0]!.name) ? t.told.findLast(x => x.entry.kind === 'finding')?.entry : undefined;
  return f?.kind === 'finding' ? [{ ...subj[0]!, name: f.part }] : subj;
}

/** "it cuts clean now", "it sprays a proper cone now": what a part does is how it is where the words say that it does so now, again, or how well. */
const nowDoes = (c: Clause): boolean => c.verb!.form === 's' && !/^(be|say|think|need|want|go|come|take|get|cost|mean|seem|have|call|make|belong|live|arrive|tell|know|like|ask|require|owe|use|fit|say|reckon|claim|sit|stay|open)$/.test(c.verb!.base!)
  && (/^(give|make|throw|show|draw|pull|produce|hold|carry|let|put)$/.test(c.verb!.base!) && c.subj.some(s => !s.carried) && c.obj.some(o => FAULT.test(o.name.split(' ').at(-1)!) || /\b(spark|flame|charge|vacuum|pressure|smoke|current)\b/.test(o.name)) || c.items.some(i => /^(now|again|fine|well|freely|clean|true|straight|sweet|sweetly|properly|nicely|perfect|perfectly|smooth|smoothly|easy|easily|lovely|like|over|every|proper)$/.test(i.low.split(' ')[0]!) || /\bproper\b/.test(i.low)));

/** "the rope is birdcaged": a participle that no list holds, of a part that nobody is said to have done it to. */
const unlisted = (t: Telling): boolean => {
  const verb = t.clause.verb!;
  return /ed$/.test(verb.low) && verbForms(verb.low).length === 0 && !/\b(by|to)\b/.test(lowText(t))
    && !/^(requir|design|own|us|suppos|intend|attempt|propos|decid|procur|oblig|invest|satisf|lik|concern|relat|involv|includ|allow|permit|expect|request|instruct|advis|suggest|recommend|complet|includ|assum|need|lock|park|tow)/.test(verb.low);
};

/** "burns blue", "doesn't leak any more" after what was tested or done: a verb in the present, or "held", without a subject, is of what the clause before was about. */
function unnamed(t: Telling): Thing[] {
  const c = t.clause, verb = c.verb, opens = c.items.find(i => i.t !== 'cc' && i.t !== 'mark' && i.t !== 'adv');
  if (!verb || c.who || c.subj.length || !isClass(verb.base!, 'state') || c.obj.some(o => !o.carried && partLike(t.sheet, o.name))) return [];
  if (!(verb.form === 's' || opens?.t === 'do' && /^do/.test(opens.low) || /^(held|passed|leaked|failed|worked|died)$/.test(verb.low))) return [];
  const last = t.told.at(-1), topic = t.memory.topic();
  const near = last && [t.clauses[t.at - 1], t.clauses[t.at - 2]].includes(last.clause) && 'part' in last.entry;
  return near && topic && !topic.machine ? [{ ...topic, name: (last.entry as { part?: string }).part ?? topic.name, carried: true }] : [];
}

/** "clutch disc is soaked with oil", "caked in mud": what is on or in it was not put there. */
const soiled = (t: Telling): boolean => t.clause.items.some(i => i.t === 'be') && SOILED.test(lowText(t));
/** Said of a part by what has got into or onto it. */
export const SOILED = /\b(welded|bonded|stuck|cemented|fused|glued|locked)( \w+)? (with|by) (rust|age|corrosion|dirt|paint|varnish|carbon|muck)\b|\b(soaked|saturated|swimming|dripping|fouled|flooded)( \w+)? (with|in) (\w+ )?(oil|water|grease|petrol|fuel|coolant|diesel)\b|\b(soaked|caked|covered|coated|packed|filled|plastered|smothered|crusted|clogged|blocked|choked|bunged|plugged|stuffed|lined|swimming|dripping|saturated|fouled|gummed|varnished|furred)( \w+)? (with|in|by|full of) (\w+ )?(mud|muck|rust|dirt|chaff|soot|carbon|scale|sludge|dust|straw|crud|gunk|clay|cobwebs?|nests?|wasps?|mice|leaves|ash|coke|tar|gum|sand|silt|grit|swarf|cement|weed|hay|seed)\b|\bsoaked through\b/;

/** "it ran", "she fired": a trial run of the machine is no state of a part. */
const trialRun = (c: Clause): boolean => /^(run|fire|start|pop|cough|catch|turn|kick)$/.test(c.verb!.base!) && /^(past|part)$/.test(c.verb!.form ?? '') && !c.neg && (c.subj.some(s => s.machine || /^(engine|motor|tractor)$/.test(s.name)) || c.subj.every(s => s.carried));

/** "wind broke the tail hinge clean in two", "mice chewed the wiring", "I snapped the stud": what was wrecked, whoever did it. */
function wreckedBy(t: Telling): Entry[] | undefined {
  const c = t.clause, base = c.verb!.base!;
  if (c.passive || c.neg || !isClass(base, 'fail') || !/^(past|part)$/.test(c.verb!.form ?? '') || !c.obj.length || c.obj.some(o => o.carried)) return undefined;
  const mine = /^(i|we)$/.test(c.who ?? '');
  if (mine ? !/^(break|snap|shear|crack)$/.test(base) : isClass(base, 'work') && !/^(chew|crack|bend|split)$/.test(base) || /^(lose|let|leak|strip|free)$/.test(base) || !c.subj.length || c.subj.some(s => s.carried && partLike(t.sheet, s.name))) return undefined;
  const parts = c.obj.filter(o => partLike(t.sheet, o.name) && !isMachine(t.sheet, o.name));
  if (!parts.length) return undefined;
  const after = c.obj.at(-1)!.to, rest = after < c.to ? condition(t, c, after) : '';
  const by = mine || /^(break|snap|crack|shear|split|bend)$/.test(base) ? '' : `by ${c.subj[0]!.np?.said ?? c.subj[0]!.name}`;
  return parts.map(p => make(p.name, [c.verb!.low, rest, by].filter(Boolean).join(' '), verdictIn(rest)));
}

/** "the ram blew its packing", "the arm has lost its roller", "the bearing ate its cage": what a part did to what was its own is how it was found. */
function lostOwn(t: Telling): Entry[] | undefined {
  const c = t.clause, parts = partsOf(t, c.subj.filter(s => !s.carried));
  if (c.passive || c.neg || !parts.length || !c.obj.length || c.who || !/^(past|part)$/.test(c.verb!.form ?? '') || !/^(blow|lose|throw|shed|spit|drop|eat|chew|break|shear|strip|burst|pop|split|crack|tear|snap|spill|dump)$/.test(c.verb!.base!)) return undefined;
  if (!new RegExp(`\\b${c.verb!.low} (off |out |up |through )?(its|their|her) `).test(lowText(t))) return undefined;
  const text = condition(t, c, c.verb!.from);
  return parts.map(p => make(p.name, text, verdictIn(text)));
}

/** "battery won't hold a charge": what a part refuses to do now is how it is. */
export const wont = (t: Telling): boolean => /\b(won't|will not|refuses to|can't) (hold|turn|start|fire|run|idle|charge|engage|disengage|seal|seat|light|open|close|shut|lift|lower|pump|spin|latch|lock|release|return|stay|work|draw|prime|rev|crank|catch|budge|shift|move|grip|track|feed|tie|cut|pick up|dump|tip|trip|reset|come (off|out|free|loose|apart)|go (in|on|home|back)|bite|grab|screw in|thread)\b/.test(lowText(t)) && t.clause.subj.some(s => !s.carried);

/** "Drained it. The oil came out like chocolate milk": how what was in it looked is how it was found. */
export function drained(t: Telling): Entry[] | undefined {
  const c = t.clause, last = t.told.at(-1)?.entry;
  const alone = c.subj.length === 1 && !c.subj[0]!.carried && c.verb?.base === 'come' && c.prt.includes('out') && /^(?:[\w-]+ )*(oil|coolant|fuel|grease|antifreeze|fluid)$/.test(c.subj[0]!.name) && c.rest.some(i => i.low === 'like' || i.t === 'adj');
  if (alone && !c.neg && !(last?.kind === 'work' && /^(drain|flush|bleed|change)$/.test(last.action))) return [make(c.subj[0]!.name, condition(t, c, c.verb!.from))]; // "diff oil came out like chocolate milk"
  if (c.neg || last?.kind !== 'work' || !/^(drain|flush|bleed|fill|change)$/.test(last.action) || !c.subj.length || !c.subj.every(s => /^(oil|water|coolant|fuel|fluid|grease|antifreeze|petrol|diesel|gas|old oil|gear oil)$/.test(s.name)) || !/^(come|run|look|be|smell|pour)$/.test(c.verb?.base ?? (c.pred === 'be' ? 'be' : ''))) return undefined;
  return [make(last.part, clauseText(t).replace(/^(the|and|but|so)\s+/i, '').toLowerCase())];
}

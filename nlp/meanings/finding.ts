import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause, type Thing } from '../clauses/clause.ts';
import { isMachine, isStuff, partLike, said } from '../clauses/things.ts';
import { CONDITION } from '../words/conditions.ts';
import { PERSONS } from '../words/persons.ts';
import { nounClasses } from '../words/nouns.ts';
import { isClass } from '../words/verbs.ts';
import { verdictIn, type Verdict } from './lib/verdict.ts';
import { trim } from './lib/fields.ts';
import { clauseText, lowText, type Meaning, type Telling } from './telling.ts';

const FAULT = /^(crack|cracks|hairline|hole|holes|leak|leaks|chip|chips|dent|dents|groove|grooves|score|scores|scoring|pit|pits|pitting|rust|play|slop|burr|ridge|lip|kink|tear|split|bend|twist|wear|chunk|corrosion|rot|damage|gouge|gouges|flat|step|nick|nicks|scale|sludge|water|oil|mud|grease|varnish|crud|wobble|knock|noise|rattle|squeak|squeal|fracture|break|bulge|scratch|scratches|soot|carbon|gunk|muck|dirt|nest|sediment|debris|metal|filings|worm|woodworm|pinhole|pinholes|seep|drip|weep|tooth|teeth|mouse|mice|wasps|wasp|swarf|grit|ash|coke|tar|gum|spark|life|lining|bushes|flaw|fault|short|hot spot|dull spot|lump|mark|marks|crease|creases|bump|bumps|bubble|bubbles|scratches|chips|pitmarks|droop|sag|fray|leakage|misfire|blowby|blow-by|copper|whisker)$/;

/** The condition a part was found in, in the words of the note, with a verdict only where it is plain. */
export const finding: Meaning = t => {
  const c = t.clause;
  if (c.asks || c.sub && /^(if|unless|until|till|before|that|which|who|whether|so|how|what|where|why|when|than|as)$/.test(c.sub)) return undefined;
  if (c.who === 'it' && /\b(too|got|getting|was|is) (too )?(cold|dark|late|wet|hot|windy|damp) (to|out|for|in here)\b/.test(lowText(t))) return undefined;
  if (/^(cond|hearsay)$/.test(c.reality) || c.join === 'so' && c.neg && c.pred === 'verb' && t.at === 0) return undefined;
  const later = verdictOnly(t);
  if (later) return later;
  const gone = doneFor(t);
  if (gone) return gone;
  const can = usable(t);
  if (can) return can;
  if (!/^(deed|maybe)$/.test(c.reality) || c.reality === 'maybe' && !wont(t) && !/can \w*|d call (that|it) /.test(lowText(t))) return undefined;
  return drained(t) ?? flaws(t) ?? fragment(t) ?? goesOn(t) ?? found(t) ?? fault(t) ?? (c.pred === 'be' || c.pred === 'none' ? stated(t) : c.pred === 'have' ? possessed(t) : acted(t));
};

const make = (part: string, condition: string, verdict?: Verdict): Entry => trim({ kind: 'finding', part, condition, verdict }) as Entry;
const partsOf = (t: Telling, things: readonly Thing[]): Thing[] => things.filter(p => p.name && !(p.machine && !p.carried) && !isMachine(t.sheet, p.name) && partLike(t.sheet, p.name) && !(p.carried && FAULT.test(p.name)) && !PERSONS.test(/^(.+?)'s /.exec(p.name)?.[1] ?? '-') && !/^(tin|can|bottle|jar|bucket|jug|kettle|paint tin)$/.test(p.name));

/** The words after "is", without days and the closing mark; a number of them stays in: "three cracked". */
function condition(t: Telling, c: Clause, from: number): string {
  let end = c.to;
  const when = dims(c.items, 'when').find(f => f.to >= c.to - 1 && f.from > from);
  if (when) end = when.from;
  return said(t.sheet, from, end).replace(/^(?:still|just|only|now|all|really|actually|definitely)\s+(?=\w+$)/i, m => (/still|just/i.test(m) ? m : '')).replace(/\s+for (?:now|the moment|the time being|tonight)$/i, '').replace(/\s+(?:though|now|anyway|too|as well|either|today|on|at|in|of|mind you|mind|unfortunately|sadly|I think|i think|by the way)$/i, '').replace(/^(?:'s|is|are|was|were)\s+/, '').trim();
}

/** "X is cracked", "X pitted", "X is junk": a state after "is" or straight after the name. */
function stated(t: Telling): Entry[] | undefined {
  const c = t.clause, parts = partsOf(t, c.subj);
  const rest = c.rest.filter(i => i.t !== 'adv' && i.low !== ',' && !(i.np?.stands && /^(all|both|each)$/.test(i.np.said)) && !(i.t === 'det' && /^(all|both)$/.test(i.low)));
  const first = rest[0];
  if (first && /^(ready|done|finished|due|next|here|nearly|careful|sure|afraid|glad|happy|sorry|possible|worth|able)$/.test(first.low) && !/past it|junk/.test(first.low)) return undefined;
  if (/^(it|that|this)$/.test(c.who ?? '') && (first?.f?.dim === 'number' || first?.np?.count !== undefined)) return undefined;
  if (!parts.length || !first) return undefined;
  if (first.low === 'like' && parts.every(p => isStuff(p.name) && !/oil|coolant|water|petrol|fuel|grease|paraffin|diesel/.test(p.name))) return undefined;
  if (first.t === 'prt' && rest[1]?.f) return undefined;
  if (first.t === 'prt' && !/^(out)$/.test(first.low) && !(/^(down|through|up)$/.test(first.low) && /^(to|on)$/.test(rest[1]?.low ?? '') && rest[2]?.np && !isMachine(t.sheet, rest[2].np.name) && first.low === 'down')) return undefined;
  if (first.t === 'dim' && (first.f!.dim !== 'number' || !rest.some(i => i.t === 'adj' && CONDITION.has(i.low) || i.t === 'verb')) || first.t === 'sub' || first.t === 'wh') return undefined;
  if (/^\w+ to (get|reach|see|shift|find|fit|work|do|start|turn|come)\b/.test(rest.map(i => i.low).join(' ')) || first.t === 'adj' && /^(pitch|thread|threads|grit)$/.test(rest[1]?.np?.said ?? '')) return undefined;
  if (first.t === 'np') {
    const words = first.np!.said.split(' ');
    if (parts.some(p => p.name.split(' ').at(-1) === words.at(-1))) return undefined; // "the hole is a clearance hole"
    const statish = CONDITION.has(words.at(-1)!) || first.np!.states.length > 0 || FAULT.test(words.at(-1)!) || verdictIn(first.low) !== undefined;
    if (!statish && (c.pred === 'none' || !/\b(like|more|mess|state|bit|lot|size|shape|piece|pieces|colour|color|wreck|lace|toast|history|case|write-off|throughout|all over|fit|lost cause|mass|lump|disaster|dog|pain|pig)\b/.test(first.low))) return undefined;
  }
  if (first.t === 'prep' && !/^(like|past|beyond|without|in|out|of|at|full)$/.test(first.low)) return undefined;
  if ((first.low === 'in' || first.low === 'at') && !/\b(shape|order|nick|condition|state|bits|pieces|half|two|tatters|ribbons|fettle|trim|limits|tolerance|spec)\b/.test(lowText(t))) return undefined;
  if (c.pred === 'none' && first.t !== 'adj' && first.t !== 'np' && first.t !== 'prep' && !(first.low === 'down' && rest[1]?.t === 'to')) return undefined;
  if (first.t === 'num' || first.t === 'pron' || first.t === 'to' || first.t === 'cc' || first.t === 'mark' || first.t === 'verb' && first.form === 'ing') return undefined;
  const text = counted(t, c) + (c.neg ? 'not ' : '') + condition(t, c, c.rest.find(i => i.low !== ',')!.from);
  return parts.map(p => make(p.name, text, c.neg ? negated(text) : verdictIn(text)));
}
const negated = (text: string): Verdict | undefined => (/not (bent|cracked|worn|warped|bad|damaged|rusted|leaking|seized|pitted|split|broken|scored)/.test(text) ? 'good' : undefined);

/** "three of them", "six tines": the count goes into the condition. */
function counted(t: Telling, c: Clause): string {
  const thing = c.subj[0];
  const np = thing?.np;
  if (c.counted) return `${c.counted} `;
  if (/^(rest|others)$/.test(c.subj[0]?.np?.said ?? '')) return `${c.subj[0]!.np!.said} `;
  const text = lowText(t);
  const of = /^(?:\w+ )?(\w+) of (?:them|the|those|these|my)\b/.exec(text);
  if (of && !/^(all|most|some|none|bottom|top|end|inside|side|each|set|pair|edge|lot|back|front|both|rest)$/.test(of[1]!) && c.items.some(i => i.f?.dim === 'number' || i.np?.count !== undefined || i.t === 'num')) return `${of[1]} `;
  if (np?.count !== undefined && np.count > 1 && !thing!.carried) return `${t.sheet.tokens.slice(np.from, np.nameFrom).map(x => x.low).filter(w => !/^(the|other|my)$/.test(w)).join(' ')} `;
  return '';
}

/** "has a crack in it", "'s got no spark": a fault had. */
function possessed(t: Telling): Entry[] | undefined {
  const c = t.clause, parts = partsOf(t, c.subj);
  if (!parts.length || c.who && /^(i|we|they|he|she|person)$/.test(c.who)) return undefined;
  const after = c.items.slice(c.vi + 1);
  const first = after.find(i => i.t !== 'adv' && i.t !== 'neg');
  if (!first || c.verb && c.pred === 'verb') return undefined;
  if (dims(c.items, 'measure').length || dims(c.items, 'money').length) return undefined;
  const np = c.items.slice(c.vi + 1).find(i => i.np);
  const adj = after.find(i => i.t === 'adj' && CONDITION.has(i.low));
  if (!np && !adj) return undefined;
  if (np && np.np!.count !== undefined && !FAULT.test(np.np!.said.split(' ').at(-1)!)) return undefined;
  if (np && !FAULT.test(np.np!.said.split(' ').at(-1)!) && !np.np!.states.length && !adj && !/\b(no|worst|bad|nice|too|plenty|more|good)\b/.test(lowText(t))) { if (nounClasses(np.np!.said).size) return undefined; }
  const text = condition(t, c, first.from) + throughIt(t);
  return parts.map(p => make(p.name, text, verdictIn(text)));
}

/** "a hole I could put my thumb in": the clause that says how big goes with it. */
function throughIt(t: Telling): string {
  const n = t.clauses[t.at + 1];
  if (!n || n.join || n.sub || !/^(i|you|we)$/.test(n.who ?? '') || n.reality !== 'maybe' || t.clause.items.at(-1)?.t === 'mark') return '';
  (n as Clause & { spoken?: boolean }).spoken = true;
  return ` ${clauseText(t, n)}`;
}

/** "X leaks", "X snapped", "X holds now", "X reads empty": what a part does or what happened to it. */
function acted(t: Telling): Entry[] | undefined {
  const c = t.clause, verb = c.verb!;
  const base = verb.base!;
  if (c.neg && c.items.find(i => i.t !== 'cc' && i.t !== 'mark')?.t === 'do' || base === 'read' && c.rest[0]?.f) return undefined;
  const parts = partsOf(t, c.subj.length ? c.subj : []);
  if (!parts.length || c.who && /^(i|we|he|she|person|you)$/.test(c.who)) return undefined;
  if (dims(c.items, 'measure').length && !/^(break|crack|snap|leak)$/.test(base)) return undefined;
  if (dims(c.items, 'money').length) return undefined;
  if (/^(break|come|work)$/.test(base) && /\b(loose|free)\b/.test(c.prt.join(' ') + lowText(t)) || /^(stay|sit)$/.test(base) && /\b(where|put|right)\b/.test(lowText(t)) || c.reality === 'maybe' && c.neg && !wont(t)) return undefined;
  const text = condition(t, c, c.neg ? c.items.find(i => /n't$|^not$|^never$|^no$/.test(i.low))?.from ?? verb.from : verb.from);
  if (/^(look|feel|seem|sound)$/.test(base)) return c.rest.length ? parts.map(p => make(p.name, text, verdictIn(text))) : undefined;
  if (parts.every(p => isStuff(p.name))) return undefined;
  const fails = isClass(base, 'fail'), acts = isClass(base, 'state') || /^(need|want)$/.test(base) && verdictIn(text) !== undefined;
  if (c.passive && isClass(base, 'fail') && !isClass(base, 'work')) return parts.map(p => make(p.name, (counted(t, c) + text), verdictIn(text)));
  if (c.passive && (!/ed$/.test(verb.low) || ['work', 'on', 'off', 'tight', 'hang', 'stow', 'send', 'order', 'buy', 'move', 'check', 'arrive', 'find', 'measure', 'say', 'think', 'help', 'begin', 'stop', 'own', 'wait', 'spend'].some(k => isClass(base, k as 'work')))) return undefined;
  if (c.passive) return parts.map(p => make(p.name, counted(t, c) + text, verdictIn(text)));
  if (!(fails || acts)) return /^(get|go|come|let|test|check)$/.test(base) && c.rest.some(i => i.t === 'adj') || base === 'let' ? parts.map(p => make(p.name, text, verdictIn(text))) : undefined;
  if (c.ing && c.pred === 'verb' && c.items.some(i => i.t === 'to')) return undefined;
  if (/^(go|fit|start|come|sit|stay|move|want|lift|draw|read|float|track|turn)$/.test(base) && !c.rest.length && !c.neg && !/^(start|turn|fit)$/.test(base)) return undefined;
  return parts.map(p => make(p.name, counted(t, c) + text, verdictIn(text)));
}

/** "battery won't hold a charge": what a part refuses to do now is how it is. */
const wont = (t: Telling): boolean => /\b(won't|will not|refuses to|can't) (hold|turn|start|fire|run|idle|charge|engage|disengage|seal|seat|light|open|close|shut|lift|lower|pump|spin|latch|lock|release|return|stay|work|draw|prime|rev|crank|catch)\b/.test(lowText(t)) && t.clause.subj.some(s => !s.carried);

/** "found the seal split", "found a crack in the block", "there's a crack in the head". */
function found(t: Telling): Entry[] | undefined {
  const c = t.clause, base = c.verb?.base;
  if (base === 'call' && c.obj.some(o => o.carried) && c.rest[0] && CONDITION.has(c.rest[0].low)) return c.obj.map(o => make(o.name, condition(t, c, c.rest[0]!.from), verdictIn(c.rest[0]!.low)));
  if (!/^(find|notice|see|spot|discover|have|get)$/.test(base ?? '') || c.neg || c.passive) return undefined;
  const obj = c.obj[0];
  if (!obj) return undefined;
  const head = obj.np?.said.split(' ').at(-1) ?? '';
  if (FAULT.test(head) && base !== 'have' && base !== 'get') {
    const inPart = c.items.findIndex((i, k) => i.from >= obj.from && /^(in|on|at|inside|under|through|around|along|across)$/.test(i.low) && c.items[k + 1]?.np);
    const owner = inPart >= 0 ? c.items[inPart + 1]!.np! : undefined;
    const part = owner ? owner.stands ? t.memory.topic()?.name : owner.name : t.memory.topic()?.name;
    return part ? [make(part, said(t.sheet, obj.np!.from, owner ? c.items[inPart]!.from : c.to), undefined)] : undefined;
  }
  if (base === 'find' || base === 'see' || base === 'notice') {
    const first = c.rest.find(i => i.t !== 'adv');
    if (first && (first.t === 'adj' || first.t === 'verb' && first.form !== 'base' || first.t === 'prep' && /^(full|like|in)$/.test(first.low))) {
      const text = condition(t, c, first.from);
      return [make(obj.name, text, verdictIn(text))];
    }
    if (obj.np?.states.length) return [make(obj.name, obj.np.states.join(' '), verdictIn(obj.np.states.join(' ')))];
  }
  return undefined;
}

/** "there's a crack in the head", "crack in the manifold", "no spark on number two". */
function fault(t: Telling): Entry[] | undefined {
  const c = t.clause;
  const there = /^(and |but |so )?there('s| is| are| was| were|'re)\b/.test(lowText(t));
  const k = c.items.findIndex(i => i.np && FAULT.test(i.np.said.split(' ').at(-1)!));
  if (k < 0 || !(there || c.pred === 'none' && c.items.slice(0, k).every(i => i.t !== 'np')) || dims(c.items, 'measure').length) return undefined;
  const prep = c.items.findIndex((i, n) => n > k && (i.t === 'prep' || i.t === 'prt') && c.items[n + 1]?.np);
  const of = prep >= 0 ? c.items[prep + 1]!.np! : undefined;
  if (!of && !there) return undefined;
  const part = of ? of.stands ? t.memory.topic()?.name : of.name : t.memory.topic()?.name;
  if (!part || isMachine(t.sheet, part)) return undefined;
  const text = said(t.sheet, c.items[k]!.from, prep >= 0 ? c.items[prep]!.from : c.to);
  return [make(part, text, verdictIn(lowText(t)))];
}

/** "the seal's had it", "belt is past it", "the tyres have seen better days". */
function doneFor(t: Telling): Entry[] | undefined {
  const c = t.clause, parts = partsOf(t, c.subj);
  const m = /\b(?:had (?:it|its day|their day|its chips|their chips)|past (?:it|its best|their best|saving|redemption)|seen (?:better days|its day|their day)|on (?:its|their) last legs|given up the ghost|bit(?:ten)? the dust|within (?:limits|spec|tolerance|the limits?))\b/.exec(lowText(t));
  if (!m || c.neg || !parts.length || !/^(be|have|none)$/.test(c.pred) && !/^(have|be|give|bite|see)$/.test(c.verb?.base ?? '') || /^(i|we)$/.test(c.who ?? '')) return undefined;
  return parts.map(p => make(p.name, m[0], /had|past/.test(m[0]) ? 'replace' : undefined));
}

/** "Drained it. The oil came out like chocolate milk": how what was in it looked is how it was found. */
function drained(t: Telling): Entry[] | undefined {
  const c = t.clause, last = t.told.at(-1)?.entry;
  if (c.neg || last?.kind !== 'work' || !/^(drain|flush|bleed|fill|change)$/.test(last.action) || !c.subj.length || !c.subj.every(s => /^(oil|water|coolant|fuel|fluid|grease|antifreeze|petrol|diesel|gas|old oil|gear oil)$/.test(s.name)) || !/^(come|run|look|be|smell|pour)$/.test(c.verb?.base ?? (c.pred === 'be' ? 'be' : ''))) return undefined;
  return [make(last.part, clauseText(t).replace(/^(the|and|but|so)\s+/i, '').toLowerCase())];
}

/** "left bush can be reused": a part of its own with a verdict that "can" gives. */
function usable(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (c.neg || !/\b(can|could|will|'ll) (be |still be )?(re-?used|reground|rebored|rewound|rebushed|resleeved|sleeved|bushed|skimmed|machined|built up|recut|relined|refaced|soldered|patched|mended|saved|reground|rebored|sleeved|rebushed|skimmed|machined|turned down|rebuilt|welded|repaired|fixed|brazed|straightened|do|go again|go back|run again|last|serve|clean up|polish up|live on|see another)\b/.test(lowText(t))) return undefined;
  const parts = partsOf(t, c.subj).filter(s => !s.carried);
  const modal = c.items.find(i => i.t === 'modal');
  if (!parts.length || !modal) return undefined;
  const text = condition(t, c, modal.from);
  return parts.map(p => make(p.name, text, verdictIn(lowText(t)) ?? (/re-?used|\b(do|go|run|last|serve|clean|polish|live|see)\b/.test(lowText(t)) ? 'reuse' : 'repair')));
}

/** Fragments with a count, shown before figures are: "22 sections, 4 chipped" counts nothing on the machine. */
export const tally: Meaning = t => (t.clause.items.some(i => i.f?.dim === 'number') && !t.clause.asks && !t.clause.sub ? fragment(t) : undefined);

/** "needles: 3 bent, 1 ok", "22 sections, 4 chipped", "flat now": a state without a name is said of what was just named. */
function fragment(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (c.pred !== 'none' || c.subj.some(s => !s.carried) && !c.counted || c.who) return undefined;
  const items = c.items.filter(i => i.t !== 'cc' && i.t !== 'mark' && i.t !== 'adv');
  const k = items.findIndex(i => i.t === 'adj' && CONDITION.has(i.low) || i.t === 'verb' && isClass(i.base ?? '', 'fail'));
  const topic = t.memory.topic();
  const none = items.findIndex(i => i.np?.quant === 'no' && FAULT.test(i.np.said.split(' ').at(-1)!));
  if (k < 0 && none === 0 && topic && !topic.machine) return [make(topic.name, said(t.sheet, items[0]!.from, items[0]!.to))];
  if (k < 0 || !topic || topic.machine) return undefined;
  const lead = items.slice(0, k);
  const counts = lead.some(i => i.f?.dim === 'number') || c.counted !== undefined;
  if (!counts && lead.length > 0 || lead.some(i => i.np && i.np.name !== topic.name && !i.np.stands)) return undefined;
  if (!counts && t.told.at(-1)?.clause !== t.clauses[t.at - 1]) return undefined;
  const from = lead[0]?.from ?? items[k]!.from;
  const text = condition(t, c, from);
  return text ? [make(topic.name, text, verdictIn(text.replace(/^(\w+ of (the|them|\w+) )?\w+ (?=\w)/, m => (counts ? '' : m))))] : undefined;
}

/** "water, no metal", "good, no ridge": flaws named alone are of what was just spoken of; behind a finding they go on with it. */
function flaws(t: Telling): Entry[] | undefined {
  const c = t.clause, nps = c.items.flatMap(i => (i.np ? [i.np] : [])), last = t.told.at(-1);
  const comma = c.items.findIndex(i => i.low === ','), leading = comma > 0 && c.items[0]!.np?.quant === 'no' && FAULT.test(c.items[0]!.np.said.split(' ').at(-1)!) && comma === 1;
  const flaw = (said: string): boolean => FAULT.test(said.split(' ').at(-1)!);
  if (c.pred !== 'none' || !nps.length || !leading && nps.some(n => !flaw(n.said)) || c.items.some(i => !i.np && !/^(cc|mark|adv|adj|intj)$/.test(i.t)) && !leading || !nps.some(n => n.quant === 'no' || /\b(some|bit|plenty)\b/.test(n.said))) return undefined;
  const text = said(t.sheet, nps[0]!.from, leading ? c.items[0]!.to : c.to);
  if (last?.entry.kind === 'finding' && last.clause === t.clauses[t.at - 1] && c.join !== undefined) {
    last.entry.condition += `${c.join === ',' ? ',' : ` ${c.join}`} ${text}`;
    return [];
  }
  const topic = t.memory.topic();
  return topic && !topic.machine && partLike(t.sheet, topic.name) && !flaw(topic.name) ? [make(topic.name, text)] : undefined;
}

/** "cracked and let go of the shell": a second thing said of the same part in one breath goes on with the condition. */
function goesOn(t: Telling): Entry[] | undefined {
  const c = t.clause, last = t.told.at(-1);
  if (!c.carriedSubj || !(c.join === 'and' || c.join === undefined || c.join === ',') || last?.entry.kind !== 'finding' || last.clause !== t.clauses[t.at - 1] || dims(c.items, 'measure').length) return undefined;
  if (c.pred === 'verb' && !isClass(c.verb!.base!, 'fail') && !isClass(c.verb!.base!, 'state') && c.verb!.base !== 'let') return undefined;
  if (c.pred === 'verb' && (isClass(c.verb!.base!, 'work') && !isClass(c.verb!.base!, 'fail') && !isClass(c.verb!.base!, 'state') || c.obj.some(o => !o.carried && partLike(t.sheet, o.name)) && c.verb!.base !== 'let') || c.items.length < 1) return undefined;
  if (!c.subj.some(s => s.name === (last.entry as { part: string }).part) || c.who && /^(i|we)$/.test(c.who)) return undefined;
  last.entry.condition = `${last.entry.condition}${c.join === ',' ? ',' : c.join ? ' and' : ''} ${condition(t, c, c.items.find(i => i.t !== 'cc' && i.t !== 'mark')!.from)}`;
  last.entry.verdict ??= verdictIn(lowText(t));
  return [];
}

/** "keep an eye on that one": what is watched. */
function aboutAfterOn(t: Telling, c: Clause): Thing[] {
  const k = c.items.findIndex((i, n) => /^(on|for|at)$/.test(i.low) && (c.items[n + 1]?.np && !c.items[n + 1]!.np!.stands));
  const np = k >= 0 ? c.items[k + 1]!.np! : undefined;
  return np && partLike(t.sheet, np.name) ? [{ name: np.name, from: np.from, to: np.to, plural: false }] : [...c.obj, ...c.subj].filter(s => s.carried && s.np?.stands && /\b(left|right|front|rear|back|other)\b/.test(s.np.said));
}

/** "it'll go again", "keep an eye on it", "they'll do": a verdict on what was just found, or a finding of its own. */
function verdictOnly(t: Telling): Entry[] | undefined {
  const c = t.clause, text = lowText(t);
  const v = verdictIn(text);
  if (c.reality === 'hearsay' || /\b(probably|might|perhaps|would|wish)\b|^maybe\b/.test(text)) return undefined;
  if (!v || c.neg || c.pred === 'none' && c.items.some(i => i.f?.dim === 'number')) return undefined;
  if (c.pred === 'be' && c.subj.some(s => s.np?.stands && s.from >= c.from) && v !== 'watch' && v !== 'reuse' && !t.told.some(x => x.entry.kind === 'finding' && c.subj.some(s => s.name === (x.entry as { part: string }).part))) return undefined;
  if (c.pred === 'be' && c.subj.some(s => !s.carried)) return undefined;
  const plain = v === 'watch' || v === 'reuse' && (c.who !== undefined || !c.subj.some(s => !s.carried)) || v === 'repair' && /can|has to be|have to be/.test(text) || v === 'replace' && c.reality === 'must' || (v === 'replace' || v === 'good') && (/^(that|it|they|that one|those|this|she|he)$/.test(c.who ?? '') || c.subj.length > 0) && c.subj.every(s => s.carried);
  if (!plain) return undefined;
  const about = (v === 'watch' && !c.obj.some(o => partLike(t.sheet, o.name)) ? aboutAfterOn(t, c) : c.obj.length ? c.obj : c.subj).filter(s => partLike(t.sheet, s.name));
  if (!about.length) about.push(...t.memory.lastGroup().slice(0, 1));
  const names = about.map(a => a.name);
  const same = t.told.findLast(x => x.entry.kind === 'finding' && names.includes(x.entry.part));
  if (same && same.entry.kind === 'finding') {
    if (!same.entry.verdict) { same.entry.verdict = v; return []; }
    if (v === 'watch' || v === 'replace') same.entry.verdict = v;
    return [];
  }
  if (!names.length) return undefined;
  const own = c.subj.find(s => !s.carried && s.from >= c.from && s.to < c.to);
  return names.map(n => make(n, own ? condition(t, c, own.to) : c.pred === 'be' && c.rest.length ? condition(t, c, c.rest[0]!.from) : clauseText(t).replace(/^(and|but|so|then)\s+/i, ''), v));
}

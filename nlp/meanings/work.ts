import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause, type Thing } from '../clauses/clause.ts';
import { isMachine, isStuff, partLike } from '../clauses/name-kinds.ts';
import { COATS } from '../words/coats.ts';
import { COMMON } from '../words/common.ts';
import { BODGER } from '../clauses/reality.ts';
import { singular } from '../words/nouns.ts';
import { isClass } from '../words/verbs.ts';
import { CONDITION } from '../words/conditions.ts';
import { meter } from './reading/meter.ts';
import { SOILED } from './finding/does.ts';
import { trim } from './lib/fields.ts';
import { namesPart } from './lib/named.ts';
import { lowText, patients, type Meaning, type Telling } from './telling.ts';
import { heated, shaved, tooled, tried } from './work/by-tool.ts';
import { coatIn } from './work/coat.ts';
import { coated } from './work/coated.ts';
import { doneOn, gave, gotOne } from './work/given.ts';
import { productOf } from './work/product.ts';

/** Work done on a part that is not fitting it: cleaned, primed, welded, soaked; begun but not finished where that is said. */
export const work: Meaning = t => {
  const c = t.clause;
  if (meter(t)) return undefined;
  const finished = !c.neg && !c.asks && c.reality === 'deed' ? doneOn(t) : undefined;
  if (finished) return finished;
  if (c.pred === 'have' && !c.neg && !c.asks && c.reality === 'deed') return coated(t) ?? gotOne(t);
  if (c.neg || c.asks || c.reality !== 'deed' || c.pred !== 'verb' || c.sub && /^(before|if|unless|until|till|when|that|which|as|like|how|what|where)$/.test(c.sub)) return undefined;
  if (/^(wire|tie|tape|clip|strap|bundle|band|zip-tie)$/.test(c.verb!.base!) && /\btogether\b/.test(lowText(t))) return undefined;
  if (/\b(hardly|barely|scarcely)\b/.test(lowText(t))) return undefined;
  if (c.passive && (/\b(welded|bonded|stuck|cemented|fused|glued|locked)( \w+)? (with|by) (rust|age|corrosion|dirt|paint|varnish|carbon|muck)\b/.test(lowText(t)) || BODGER.test(/\bby (.*)$/.exec(lowText(t))?.[1] ?? ''))) return undefined; // not by him
  if (c.passive && c.items.some(i => i.t === 'be') && SOILED.test(lowText(t)) && !/^(drain|clean)/.test(c.verb!.base!)) return undefined; // soaked with oil, not by him
  if (c.verb!.base === 'tack' && c.prt.includes('off')) return undefined; // wiped with a tack cloth
  if (/^(varnish|gum|sludge|silt)$/.test(c.verb!.base!) && c.prt.includes('up')) return undefined; // gummed, not coated
  if (c.items.slice(0, c.vi).some((i, k) => i.t === 'to' && /^(get|have)$/.test(c.items[k + 1]?.base ?? c.items[k + 1]?.low ?? ''))) return undefined; // "to get it tested": why, not what
  const given = doneOn(t) ?? gotOne(t) ?? shaved(t) ?? tooled(t) ?? gave(t) ?? coated(t) ?? tried(t) ?? heated(t);
  if (given) return given;
  const got = c.verb!.base === 'get' && c.verb!.form !== 'base' && c.obj.length > 0 && c.rest[0]?.t === 'verb' && /^(past|part)$/.test(c.rest[0].form ?? '') && isClass(c.rest[0].base!, 'work') ? c.rest[0] : undefined;
  if (got) return c.obj.filter(o => partLike(t.sheet, o.name)).map(o => trim({ kind: 'work', part: o.name, action: got.base!, product: productOf(t, c) }) as Entry);
  const likewise = sameDone(t, c);
  if (likewise) return likewise;
  const verb = c.verb!;
  const base = verb.base!;
  if (!isWork(t, c)) return undefined;
  const parts = patients(c).filter(p => p.name && partLike(t.sheet, p.name) && !/^(sides?|coats?|ends?|bottom|top|hole|holes|both sides|(the )?rust|dirt|paint)$/.test(p.name) && !/^(cracks?|rust|dirt)$/.test(p.name.split(' ').at(-1)!) && !(isMachine(t.sheet, p.name) && !c.obj.length && !c.passive));
  if (!parts.length && c.obj.length && c.obj.every(o => /^(both |all )?(sides?|ends?|faces?|edges?)$/.test(o.np?.said ?? '')) && c.subj.length && (c.passive || c.carriedSubj)) parts.push(...c.subj.filter(p => partLike(t.sheet, p.name) && !isMachine(t.sheet, p.name))); // "the deck's blasted and primed both sides"
  const topic = t.memory.topic();
  if (!parts.length && !c.subj.length && !c.obj.length && !c.who && topic && !topic.machine && isClass(base, 'work') && verb.form !== 'ing' && /^(with|in|up|out|off|down)?$/.test(c.rest.find(i => i.t !== 'adv')?.low.replace(/[.,;]/, '') ?? '')) parts.push({ ...topic, carried: true });
  const liquid = productOf(t, c);
  if (parts.some(p => p.name !== liquid)) parts.splice(0, parts.length, ...parts.filter(p => p.name !== liquid)); // "filled the radiator, half and half antifreeze"
  const bath = base === 'soak' && parts.length > 0 && parts.every(p => isStuff(p.name) && p.name === liquid) && topic && !topic.machine ? [topic] : undefined; // "…and soaking in white spirit"
  if (bath) parts.splice(0, parts.length, ...bath);
  const lastDid = t.told.at(-1);
  if (!parts.length && !c.obj.length && c.join === 'and' && lastDid?.entry.kind === 'work' && lastDid.clause === t.clauses[t.at - 1] && isClass(base, 'work') && !c.subj.length && topic && (c.rest.length === 0 || /^(with|in|and|\.|,)$/.test(c.rest[0]!.low)) && c.who !== 'he') parts.push({ ...topic, name: lastDid.entry.part, carried: true });
  if (!parts.length) { const inIt = flawIn(t, c); if (inIt) parts.push(inIt); }
  if (!parts.length) return undefined;
  const sat = t.told.at(-1);
  if (FASTENING.test(base) && sat?.entry.kind === 'fit' && sat.entry.state !== 'off' && sat.clause === t.clauses[t.at - 1] && parts.every(p => p.name === (sat.entry as { part: string }).part)) return []; // "slid it back on and pinned it" says only how it is held
  const then = t.clauses[t.at + 1];
  if (FASTENING.test(base) && c.passive && then?.join === 'and' && then.carriedSubj && then.passive && isClass(then.verb?.base ?? '', 'on') && then.prt.length) return []; // "is keyed and driven up tight"
  const begun = isBegun(t, c);
  const coats = parts.flatMap(p => thenCoated(t, p.name, base)), product = coats.length ? undefined : liquid;
  return [...parts.map(p => trim({ kind: 'work', part: p.name, action: action(base, c), done: begun ? false : undefined, product }) as Entry), ...(begun ? [] : broughtTo(c, parts[0]!.name)), ...coats];
};

/** "reamed it to 1.2505 inches", "turned down to 30 mm": the size that the work brought it to. */
function broughtTo(c: Clause, part: string): Entry[] {
  const m = dims(c.items, 'measure').find(f => /^(in|mm)$/.test(f.value.unit) && !f.value.to), k = c.items.findIndex(i => i.f === m), base = c.verb!.base!;
  const what = /^(bore|rebore|ream|hone|open|sleeve|line-bore)$/.test(base) ? 'bore' : /^(turn|grind|regrind|machine|part)$/.test(base) ? 'diameter' : undefined;
  return m && what && (/^(to|at)$/.test(c.items[k - 1]?.low ?? '') || k === c.vi + 1) && !/\b(under|over|off|undersize|oversize)\b/.test(c.items.slice(k + 1).map(i => i.low).join(' ')) ? [{ kind: 'reading', part, what, value: m.value.value, unit: m.value.unit } as Entry] : [];
}

/** "sanded and two coats of green": the coat that went on after it is work of its own. */
function thenCoated(t: Telling, part: string, base: string): Entry[] {
  const { items, vi } = t.clause, k = items.findIndex((i, n) => n > vi && (i.t === 'cc' || i.low === ',') && /\b(coats?|lick|layers?)$/.test(items[n + 1]?.np?.said ?? '') && items[n + 2]?.low === 'of');
  const coat = k < 0 ? undefined : coatIn(t);
  return coat && coat.action !== base && !isClass(base, 'tight') && COATINGS.every(x => x !== base) ? [trim({ kind: 'work', part, ...coat }) as Entry] : [];
}
const COATINGS = [...new Set(Object.values(COATS)), 'coat', 'spray', 'brush'];

/** "rewiring the loom. Headlamps done": done as the work that was just told of; what is about half done is begun. */
function sameDone(t: Telling, c: Clause): Entry[] | undefined {
  const last = t.told.findLast(x => x.entry.kind === 'work')?.entry, parts = c.subj.filter(s => !s.carried && partLike(t.sheet, s.name));
  if (c.verb?.base !== 'do' || !/^(done)$/.test(c.verb.low) || c.obj.length || c.prt.length || c.who || !parts.length || last?.kind !== 'work' || t.told.at(-1)!.entry !== last) return undefined;
  return parts.map(p => trim({ kind: 'work', part: p.name, action: last.action, done: isBegun(t, c) ? false : undefined }) as Entry);
}

const FASTENING = /^(pin|key|cotter|clip|peg|lockwire|lock-wire|circlip|wire|stake|lock)$/;

/** "welded the crack in it": work on a flaw is work on what has it. */
function flawIn(t: Telling, c: Clause): Thing | undefined {
  if (![...c.obj, ...(c.passive ? c.subj : [])].some(o => /^(cracks?|splits?|tears?|dents?|gashe?s?|rust|dirt|holes?|sides?|ends?|paint)$/.test(o.name.split(' ').at(-1)!))) return undefined;
  const k = c.items.findIndex((i, n) => (n > c.vi || c.passive) && /^(in|on|of|off)$/.test(i.low) && (c.items[n + 1]?.np || c.items[n + 1]?.t === 'pron'));
  const np = k >= 0 ? c.items[k + 1]!.np : undefined;
  if (np && !np.stands && partLike(t.sheet, np.name)) return { name: np.name, from: np.from, to: np.to, plural: false };
  return k >= 0 ? t.memory.topic() : undefined;
}

const isWork = (t: Telling, c: Clause): boolean => {
  const { base, form } = c.verb!;
  const begun = startsWork(c) || atIt(t, c);
  if (form === 's' || form === 'base' && !(begun && c.items.some(i => i.t === 'verb' && /^(start|begin|commence)$/.test(i.base ?? '') && i.form === 'past'))) return false;
  if (form === 'ing' && !begun && !(c.who && /^(i|we)$/.test(c.who)) && !/\b(spent|been|still|half|hours?)\b/.test(lowText(t))) return false;
  if (begun && /^(take|get|put|have|come|go|bring)$/.test(base!)) return false; // "began taking the tyre off": no deed yet
  if (begun && (form === 'ing' || form === 'base') && (isClass(base!, 'off') || isClass(base!, 'on') || isClass(base!, 'work') || isClass(base!, 'tight'))) return c.obj.length > 0 || c.subj.length > 0;
  if (!isClass(base!, 'work') && !/ed$/.test(c.verb!.low)) return false;
  if (isClass(base!, 'fail') && CONDITION.has(c.verb!.low) && (c.carriedSubj && !c.who && c.subj.some(s => !partLike(t.sheet, s.name)) || !c.obj.length && !c.passive && !/^(i|we|he|they|she)$/.test(c.who ?? ''))) return false; // "wind caught the door and bent the hinge", "turns out bent"
  if (isClass(base!, 'fail') && !c.passive && !c.who && c.subj.some(s => !s.carried && partLike(t.sheet, s.name)) && new RegExp(`\\b${c.verb!.low} (off |out |up |through )?(its|their|her) `).test(lowText(t))) return false; // "the ram blew its packing"
  if (/^(blow|pump|air)$/.test(base!) && c.prt.includes('up') && c.items.some(i => i.f?.dim === 'measure' || i.f?.dim === 'number')) return false; // blown up to so many pounds
  if (base === 'blow' && form === 'past' && c.who === 'she') return false;
  if (base === 'rub' && /\b(through|thin|away)\b/.test(lowText(t))) return false;
  if (isClass(base!, 'fail') && !c.obj.length && !c.passive && c.subj.length && !c.carriedSubj && !c.who) return false;
  if (isClass(base!, 'fail') && !c.obj.length && c.carriedSubj && /^[,:]$/.test(c.join ?? '') && !c.who && (c.join === ',' || CONDITION.has(c.verb!.low))) return false; // "turned up, bent in half by the post"
  if (!isClass(base!, 'work')) return c.obj.length > 0 && !c.carriedSubj && isClass(base!.replace(/^(re|de|un|bead|sand|wire|pressure|spot|shot|hand|line|machine|part|over)-?/, ''), 'work'); // an unlisted verb only where it is a known one done anew
  if (/^(cut|set|turn|draw|form|press|blow|break|clear|drill|change|work|strip|run|fill|make|punch|loosen|free|top|tap|pack|cool|spot|balance|time|square|level|spin|knock|steam|face|touch|bed|hang|warm|freeze)$/.test(base!)) return (c.obj.length > 0 || c.passive || (c.carriedSubj ?? false)) && (c.obj.length === 0 || c.obj.some(o => namesPart(t.sheet, o.name) || !COMMON.has(singular(o.name.split(' ').at(-1)!)) && !o.np?.count)) && !(base === 'make' && c.obj.every(o => /^(bales?|rows?|rounds?|passes|trips?|batch|bags?|sacks?|loaves|hay|dust|noise|mess|headway|progress)$/.test(o.name)));
  return true;
};

function action(base: string, c: Clause): string {
  if (/^(knock|run|whip|cobble|turn|make|bend|fold|rustle|machine)$/.test(base) && c.prt.includes('up') && base !== 'turn') return base === 'bend' || base === 'machine' ? base : 'make'; // "knocked up a new key"
  if (base === 'wheel') return 'clean'; // with a wire wheel
  if (base === 'face' && c.items[c.vi - 1]?.low === 'hard') return 'hardface';
  if (base === 'top' && c.prt.includes('up')) return 'fill';
  if (base === 'miked' || base === 'mike') return 'measure';
  return base;
}

const startsWork = (c: Clause): boolean => c.items.slice(0, c.vi).some(i => i.t === 'verb' && /^(start|begin|try|commence)$/.test(i.base ?? '') || i.np?.said === 'start' && c.items.some(x => x.base === 'make'));

/** "Scraping the gib again.": a deed that the note opens with in its "-ing", no more said of when: in hand, not done. */
const atIt = (t: Telling, c: Clause): boolean => c.verb!.form === 'ing' && t.at === 0 && !c.who && !c.subj.some(s => s.from >= c.from) && c.items.findIndex(i => !/^(adv|mark|intj|cc)$/.test(i.t)) === c.vi && isClass(c.verb!.base!, 'work') && c.obj.some(o => namesPart(t.sheet, o.name)) && !dims(c.items, 'when').some(f => (f.value.from ?? '') > t.sheet.ctx.at.slice(0, 10)) && !dims(c.items, 'span').length;

function isBegun(t: Telling, c: Clause): boolean {
  if (atIt(t, c) || c.verb!.form === 'ing' && /^(i|we)$/.test(c.who ?? '') && c.items.slice(0, c.vi).some(i => /^('m|am|'re|are)$/.test(i.low))) return true; // "I'm just skimming the journals"
  const inside = (k: number): boolean => t.sheet.found.some(f => f.dim !== 'number' && f.from <= k && k < f.to);
  const text = t.sheet.tokens.slice(c.from, c.to).map(x => x.low).filter((_, k) => !inside(c.from + k)).join(' '), after = t.clauses.slice(t.at + 1, t.at + 3).filter(n => !n.asks).map(n => lowText(t, n)).join(' , ');
  if (startsWork(c)) return true;
  if (/\b(half|partly|part way|partway|most of|halfway|about half|so far|made a start|in the (middle|midst) of|busy|the first (side|half))\b/.test(text) && !/half and half|half an? /.test(text)) return true;
  if (/\b(soaking|soak overnight|still soaking|left .* to soak|sitting in)\b/.test(text)) return true;
  return /^(not finished|not done|didn't finish|but (i )?(didn't|haven't|not)( get)? (finish|done)|haven't finished|still (more|some|a bit|half|plenty)|not even close|only got|only did|half of it|got (halfway|half way)|about half)/.test(after);
}

import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause, type Thing } from '../clauses/clause.ts';
import { isMachine, isStuff, partLike } from '../clauses/things.ts';
import { COMMON } from '../words/common.ts';
import { BODGER } from '../clauses/reality.ts';
import { COATS } from '../words/coats.ts';
import { singular } from '../words/nouns.ts';
import { isClass, verbForms } from '../words/verbs.ts';
import { CONDITION } from '../words/conditions.ts';
import { meter } from './reading/meter.ts';
import { SOILED } from './finding/does.ts';
import { isConsumable, isTool, nounsFrom, SHAVING, trim, withPhrase } from './lib/fields.ts';
import { namesPart } from './lib/named.ts';
import { lowText, patients, type Meaning, type Telling } from './telling.ts';

const NOUNED: Record<string, string> = { clean: 'clean', cleaning: 'clean', wash: 'wash', scrub: 'scrub', polish: 'polish', sand: 'sand', flush: 'flush', wipe: 'wipe', soak: 'soak', rub: 'rub', brush: 'brush', grease: 'grease', blast: 'blast', 'going over': 'clean', 'once over': 'clean', dip: 'dip', dunk: 'dip', rinse: 'rinse', hone: 'hone', scrape: 'scrape', buff: 'buff', hosing: 'hose', soaking: 'soak', greasing: 'grease', painting: 'paint', polishing: 'polish', sanding: 'sand', scrubbing: 'scrub', oiling: 'oil', brushing: 'brush', degrease: 'degrease', blow: 'blow', lick: 'paint', bath: 'soak', 'wire brushing': 'clean', service: 'service', overhaul: 'overhaul', dressing: 'dress', skim: 'skim', regrind: 'regrind' };

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
  const product = productOf(t, c);
  return [...parts.map(p => trim({ kind: 'work', part: p.name, action: action(base, c), done: begun ? false : undefined, product }) as Entry), ...(begun ? [] : broughtTo(c, parts[0]!.name))];
};

/** "reamed it to 1.2505 inches", "turned down to 30 mm": the size that the work brought it to. */
function broughtTo(c: Clause, part: string): Entry[] {
  const m = dims(c.items, 'measure').find(f => /^(in|mm)$/.test(f.value.unit) && !f.value.to), k = c.items.findIndex(i => i.f === m), base = c.verb!.base!;
  const what = /^(bore|rebore|ream|hone|open|sleeve|line-bore)$/.test(base) ? 'bore' : /^(turn|grind|regrind|machine|part)$/.test(base) ? 'diameter' : undefined;
  return m && what && (/^(to|at)$/.test(c.items[k - 1]?.low ?? '') || k === c.vi + 1) && !/\b(under|over|off|undersize|oversize)\b/.test(c.items.slice(k + 1).map(i => i.low).join(' ')) ? [{ kind: 'reading', part, what, value: m.value.value, unit: m.value.unit } as Entry] : [];
}

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
  if (/^(cut|set|turn|draw|form|press|blow|break|clear|drill|change|work|strip|run|fill|make|punch|loosen|free|top|tap|pack|cool|spot|balance|time|square|level|spin|knock|steam|face|touch|bed|hang)$/.test(base!)) return (c.obj.length > 0 || c.passive || (c.carriedSubj ?? false)) && (c.obj.length === 0 || c.obj.some(o => namesPart(t.sheet, o.name) || !COMMON.has(singular(o.name.split(' ').at(-1)!)) && !o.np?.count)) && !(base === 'make' && c.obj.every(o => /^(bales?|rows?|rounds?|passes|trips?|batch|bags?|sacks?|loaves|hay|dust|noise|mess|headway|progress)$/.test(o.name)));
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

/** What was used: after "with" or "in" for baths, or a consumable named after a comma or "two coats of". */
function productOf(t: Telling, c: Clause): string | undefined {
  const after = c.items.slice(c.vi + 1);
  const w = withPhrase(t.sheet, after);
  if (w) return w;
  if (c.verb!.base === 'wheel') return 'wire wheel';
  const from = /^(turn|make|knock|bend|fold|forge|carve|whittle|fabricate|machine|run|build)$/.test(c.verb!.base!) ? after.findIndex((i, k) => (i.low === 'from' || i.low === 'of' && after[k - 1]?.low === 'out') && after[k + 1]?.np) : -1;
  if (from >= 0) return nounsFrom(t.sheet, after, from + 1); // "made from angle iron"
  const bath = after.findIndex((i, k) => (i.low === 'in' || i.low === 'into') && after[k + 1]?.np && isConsumable(after[k + 1]!.np!.said));
  if (bath >= 0) return nounsFrom(t.sheet, after, bath + 1);
  const of = after.findIndex((i, k) => i.low === 'of' && after[k + 1]?.np && /coats?|layers?/.test(after[k - 1]?.low ?? ''));
  if (of >= 0) return nounsFrom(t.sheet, after, of + 1);
  const comma = after.findIndex((i, k) => i.np && k > 0 && after.slice(0, k).findLast(x => x.t !== 'adv')?.low === ',' && (isConsumable(i.np.said) || isTool(i.np.said) && c.verb!.base === 'clean'));
  if (comma >= 0) return nounsFrom(t.sheet, after, comma);
  const used = t.clauses[t.at + 1];
  if (used?.verb?.base === 'use' && used.verb.form !== 'base' && used.obj.length && !used.neg && used.reality === 'deed') { (used as Clause & { spoken?: boolean }).spoken = true; return nounsFrom(t.sheet, used.items, used.vi + 1); }
  const colour = after.find(i => i.np && /\b(enamel|primer|paint|oxide|undercoat|topcoat|varnish|lacquer)$/.test(i.np.said) && after.indexOf(i) > 0 && !['prep', 'prt'].includes(after[after.indexOf(i) - 1]!.t));
  return colour && c.obj.length && colour.from >= c.obj.at(-1)!.to ? colour.np!.said : undefined;
}

/** "gave the hood a good clean", "gave it two coats of red oxide". */
function gave(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (c.verb?.base !== 'give') return undefined;
  const items = c.items.slice(c.vi + 1);
  const nps = items.filter(i => i.np);
  const thing = c.obj[0];
  if (!thing) return undefined;
  const given = nps.find(i => (i.from >= thing.to || items[0]?.t === 'pron') && i.np!.said.split(' ').some(w => NOUNED[w])) ?? nps.findLast(i => i.from >= thing.to || items[0]?.t === 'pron');
  const nouned = new RegExp(`\\bg[ai]ve .+? (?:a|another|some|its|the)(?: \\w+){0,2} (${Object.keys(NOUNED).join('|')})\\b`).exec(lowText(t));
  if (nouned && !items.some(i => i.low === 'of')) return [trim({ kind: 'work', part: thing.name, action: NOUNED[nouned[1]!]!, product: givenIn(t, items) }) as Entry];
  if (!given) return undefined;
  const words = given.np!.said.split(' ');
  const coat = items.findIndex(i => i.low === 'of');
  const stuff = coat >= 0 ? items[coat + 1]?.np?.said : undefined;
  if (stuff) { const act = COATS[stuff.split(' ').at(-1)!]; if (act) return [trim({ kind: 'work', part: thing.name, action: act, product: stuff }) as Entry]; }
  const act = words.map(w => NOUNED[w]).find(Boolean);
  return act ? [trim({ kind: 'work', part: thing.name, action: act, product: givenIn(t, items) }) as Entry] : undefined;
}

/** "ran a file over the guides", "took the hone to the bore": the tool is the work. */
function tooled(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (!/^(run|take|put|pass|draw|stick|chase)$/.test(c.verb?.base ?? '') || c.verb!.form === 'base' && c.verb!.low !== 'run' || !c.obj.length) return undefined;
  const tool = c.obj[0]!.np?.said.split(' ').at(-1) ?? '';
  const acts: Record<string, string> = { file: 'file', tap: 'tap', hone: 'hone', reamer: 'ream', brush: 'brush', rag: 'wipe', emery: 'sand', stone: 'stone', die: 'thread', scraper: 'scrape', cloth: 'wipe', sandpaper: 'sand', plane: 'plane', grinder: 'grind' };
  const k = c.items.findIndex((i, n) => n > c.vi && /^(over|through|across|down|to|along|up|around|round)$/.test(i.low) && (c.items[n + 1]?.np || c.items[n + 1]?.t === 'pron'));
  if (!acts[tool] || k < 0) return undefined;
  const np = c.items[k + 1]!.np;
  const part = np && !np.stands ? np.name : (np?.stands ? undefined : t.memory.topic()?.name) ?? t.memory.topic()?.name;
  return part ? [{ kind: 'work', part, action: acts[tool]! } as Entry] : undefined;
}

/** "welding's done on the bunk frame", "the painting is finished on both doors". */
function doneOn(t: Telling): Entry[] | undefined {
  const m = /^(?:and |so |but |well |the |all the |now )*(\w+ing)(?:'s| is| was| has been|'s been) (?:all |now |finally )*(done|finished|complete|completed)(?: up| off)? on \b/.exec(lowText(t));
  const base = m && verbForms(m[1]!).find(f => f.form === 'ing' && isClass(f.base, 'work'))?.base, k = t.clause.items.findIndex((i, n) => i.low === 'on' && t.clause.items[n + 1]?.np), np = t.clause.items[k + 1]?.np;
  return base && k >= 0 && np && !np.stands && partLike(t.sheet, np.name) ? [{ kind: 'work', part: np.name, action: base } as Entry] : undefined;
}

/** "the steps got a wire brushing", "frame's had a rub down and a wash": given by whoever it was. */
function gotOne(t: Telling): Entry[] | undefined {
  const c = t.clause, parts = c.subj.filter(s => !s.carried && partLike(t.sheet, s.name));
  if (!/^(get|have)$/.test(c.verb?.base ?? (c.pred === 'have' ? 'have' : '')) || c.verb && c.verb.form === 'base' || !parts.length || /^(i|we|he|she|they|person|you)$/.test(c.who ?? '')) return undefined;
  const nouned = new RegExp(`\\b(?:got|had|getting|gotten) (?:a|an|another|its|their|some)(?: \\w+){0,2}? (wire brushing|${Object.keys(NOUNED).join('|')})\\b`).exec(lowText(t))?.[1];
  return nouned ? parts.map(p => trim({ kind: 'work', part: p.name, action: NOUNED[nouned]!, product: nouned === 'wire brushing' ? 'wire brush' : givenIn(t, c.items.slice(c.vi + 1)) }) as Entry) : undefined;
}

/** "a soak in diesel", "a rub with emery". */
function givenIn(t: Telling, items: Clause['items']): string | undefined {
  const bath = items.findIndex((i, k) => i.low === 'in' && items[k + 1]?.np && isConsumable(items[k + 1]!.np!.said));
  return withPhrase(t.sheet, items) ?? (bath >= 0 ? nounsFrom(t.sheet, items, bath + 1) : undefined);
}

/** "took a skim off the flywheel", "ran a light cut across the face": the piece taken off is the work. */
function shaved(t: Telling): Entry[] | undefined {
  const c = t.clause, cut = SHAVING.exec(c.obj[0]?.name ?? '')?.[1];
  if (!cut || !/^(take|run|put|make|give|turn|have)$/.test(c.verb?.base ?? '') || c.verb!.form === 'base' && c.verb!.low !== 'run') return undefined;
  const k = c.items.findIndex((i, n) => n > c.vi && /^(off|across|over|along|from|down|through|on)$/.test(i.low) && (c.items[n + 1]?.np || c.items[n + 1]?.t === 'pron')), np = c.items[k + 1]?.np;
  const name = np && !np.stands ? np.name : k >= 0 ? t.memory.topic()?.name : undefined;
  return name && partLike(t.sheet, name) ? [{ kind: 'work', part: name, action: cut === 'skim' ? 'skim' : 'machine' } as Entry] : undefined;
}

/** "got the hub hot with the torch": heated. */
function heated(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (c.verb?.base !== 'get' || c.verb.form === 'base' || !c.obj.length || !/\b(hot|red|warm|cherry)\b/.test(lowText(t))) return undefined;
  return [trim({ kind: 'work', part: c.obj[0]!.name, action: 'heat', product: withPhrase(t.sheet, c.items) }) as Entry];
}

/** "tried it at 40 psi", "ran it up to 60 pounds": tested, and the figure is a reading beside it. */
function tried(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (!/^(try|test|run|pressurise|pressurize|pressure-test|pump|leak-test)$/.test(c.verb?.base ?? '') || c.verb!.form === 'base' || c.verb!.form === 's') return undefined;
  const m = dims(c.items, 'measure').find(f => /^(psi|bar|V|A|rpm|N·m|lb-ft|Ω)$/.test(f.value.unit));
  const plain = (n: string | undefined): string | undefined => (/^(pressure|leak|load|bench|water|air|hydro)$/.test(n ?? '') ? (t.told.at(-1)?.entry as { part?: string } | undefined)?.part : n); // "flushed and pressure tested"
  const part = plain((c.obj[0] ?? (c.passive || !c.who ? c.subj[0] : undefined) ?? (!c.who && !c.subj.length ? t.memory.topic() : undefined))?.name);
  if (!m || !part) return undefined;
  const what: Record<string, string> = { psi: 'pressure', bar: 'pressure', V: 'voltage', A: 'current', rpm: 'speed', 'Ω': 'resistance' };
  return [{ kind: 'work', part, action: 'test' } as Entry, { kind: 'reading', part, what: what[m.value.unit] ?? 'torque', value: m.value.value, unit: m.value.unit } as Entry];
}

/** "put a coat of primer on the hood", "slapped some paint on it". */
function coated(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (/^(get|have)$/.test(c.verb?.base ?? 'have') && c.subj.some(s => !s.carried && partLike(t.sheet, s.name))) {
    const k = c.items.findIndex((i, n) => /\b(coats?|dose|lick|layer)$/.test(i.np?.said ?? i.low) && c.items[n + 1]?.low === 'of' && (c.items[n + 2]?.np || c.items[n + 2]?.t === 'adj'));
    const what = k >= 0 ? c.items[k + 2]!.np?.said ?? c.items[k + 2]!.low : undefined; // a colour may stand alone: "its second coat of green"
    if (what) return c.subj.map(s => ({ kind: 'work', part: s.name, action: COATS[what.split(' ').at(-1)!] ?? 'paint', product: what }) as Entry);
  }
  if (!/^(put|get|slap|throw|lay|brush|spray|rub|have|wipe|apply|roll|hit|shoot|dust|coat)$/.test(c.verb?.base ?? '')) return undefined;
  if (/^(hit|shoot|dust|coat|spray)$/.test(c.verb!.base!) && c.obj.length && /\bwith\b/.test(lowText(t))) {
    const w = c.items.findIndex((i, n) => i.low === 'with' && c.items[n + 1]?.np), k = /^(coats?|layers?|lick|dose)$/.test(c.items[w + 1]?.np?.said ?? '') && c.items[w + 2]?.low === 'of' ? w + 2 : w; // "with two coats of enamel"
    if (w >= 0 && c.items[k + 1]?.np && COATS[c.items[k + 1]!.np!.said.split(' ').at(-1)!]) return c.obj.map(o => ({ kind: 'work', part: o.name, action: COATS[c.items[k + 1]!.np!.said.split(' ').at(-1)!]!, product: c.items[k + 1]!.np!.said }) as Entry);
  }
  const stuff = c.items.find(i => i.np && i.from > c.verb!.from && COATS[i.np.said.split(' ').at(-1)!] && isConsumable(i.np.said));
  if (!stuff || !/\b(coats?|layers?|some|bit|lick|smear|dab|blob|film|wipe|squirt|coating|splash|dose|plenty|spot|touch)\b/.test(lowText(t))) return undefined;
  const k = c.items.indexOf(stuff);
  const on = c.items.findIndex((i, n) => n > k && (i.low === 'on' || i.low === 'onto' || i.low === 'over'));
  const np = on >= 0 ? c.items[on + 1] : undefined;
  const part = np?.np && !np.np.stands ? np.np.name : np ? t.memory.topic()?.name : undefined;
  return part ? [{ kind: 'work', part, action: COATS[stuff.np!.said.split(' ').at(-1)!]!, product: stuff.np!.said } as Entry] : undefined;
}

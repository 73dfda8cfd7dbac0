import { isKnownPart } from '../dimensions/part/known.ts';
import type { Entry } from '../../domain/model/entry.ts';
import type { Clause, Thing } from '../clauses/clause.ts';
import { isMachine, isPlaceNoun, isSource, isStuff } from '../clauses/name-kinds.ts';
import type { Item } from '../clauses/items.ts';
import { placeFrom } from './lib/fields.ts';
import { isSeller } from './lib/goods.ts';
import { textOf } from '../dimensions/part/text-of.ts';
import { CONDITION } from '../words/conditions.ts';
import { placeFirst } from './stow/place-first.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

const PUTS = /^(put|stand|stow|store|stash|stack|leave|stick|tuck|lay|keep|box|bag|hang|shove|set|throw|toss|chuck|park|drop|pop|pack|move|place|hide|shelve|slide|sling|dump|lean|file|roll|wrap|prop|bung|go|wire|tie|jar|label|tape|coil|sit|pile|lock|hook|thread|drape|count|sort|collect|carry|bundle|zip)$/;

/** Where a thing was put. */
export const stow: Meaning = t => {
  const c = t.clause;
  if (c.pred === 'be' && !c.verb && CONDITION.has(c.rest.find(i => i.t !== 'adv')?.low ?? '') && c.rest.find(i => i.t !== 'adv')!.t === 'adj') return undefined;
  if (c.pred === 'none' && c.rest[0]?.t === 'adj' && CONDITION.has(c.rest[0].low) || /^whatever$/.test(c.subj[0]?.name ?? '')) return undefined; // "shaft pitted under the seal"
  const told = c.asks || /^(if|unless|until|till|before|when)$/.test(c.sub ?? '') ? undefined : placeFirst(t);
  if (told) return told;
  if (c.passive && c.rest[0]?.t === 'adj' && CONDITION.has(c.rest[0].low)) return undefined; // "pinched flat under the tray"
  if (/^(count|measure|mike|gauge|weigh)$/.test(c.verb?.base ?? '') || /\b(smears?|dabs?|blobs?|films?|coats?|lick|squirt|drops?|splash|bead) of\b/.test(lowText(t)) && !c.passive && c.pred === 'verb') return undefined;
  if (/^(set|clamp|chuck|mount|grip)$/.test(c.verb?.base ?? '') && /\b(in|on|between|under) (the |my )?(lathe|mill|vice|vise|chuck|centres|centers|jig|shaper|planer|drill press|pillar drill|press|four jaw|three jaw|faceplate|surface grinder|grinder)\b/.test(lowText(t))) return undefined; // set up for work, not kept
  if (c.neg || c.asks || c.reality !== 'deed' || c.sub && /^(if|unless|until|till|before|that|when|so)$/.test(c.sub)) return undefined;
  if (c.subj[0]?.np?.quant === 'no' || /\bon (the|my) (\S+ )?list\b/.test(lowText(t))) return undefined; // "no washers left in the drawer", "put it on the list"
  const base = c.verb?.base ?? '';
  const lying = c.pred === 'be' && !c.verb || c.pred === 'none' || /^(sit|hang|lie|live|be|go|lean|rest|wait|soak)$/.test(base) && !c.obj.length && !c.who || (c.passive || !c.who && !c.obj.length && c.subj.some(s => !s.carried) && /^(past|part)$/.test(c.verb?.form ?? '') && KEPT.test(base)) && PUTS.test(base);
  const put = PUTS.test(base) && c.pred === 'verb' && !c.passive && (c.obj.length > 0 || c.subj.some(s => !s.machine)) && (c.verb!.form !== 'base' && c.verb!.form !== 's');
  if (!lying && !put || c.pred === 'none' && c.items.find(i => i.t !== 'cc' && i.t !== 'mark')?.f?.dim === 'number') return undefined;
  if (/\b(somewhere|someplace|some place|anywhere|the wrong (side|way|end|place|hole))\b/.test(lowText(t)) || base === 'drop' && /\bfloor\b/.test(lowText(t)) || /^(throw|toss|chuck|sling|dump|go|bung|shove)$/.test(base) && THROWN_AWAY.test(lowText(t)) || /\bin the (post|mail)\b/.test(lowText(t))) return undefined;
  if (c.pred === 'be' && !c.verb && /^(money|number)$/.test(c.items[c.vi + 1]?.f?.dim ?? '') && !c.items[c.vi + 2]?.np) return undefined; // "the cheapest was 27.50 at the bearing house"
  const under = t.clauses[t.at - 1];
  if (c.join === ':' && c.pred === 'none' && !c.verb && under && !under.verb && under.pred === 'none' && under.subj.length && c.subj.length === 1 && c.subj[0]!.np?.count === undefined && !c.items.some(i => i.t === 'adj' || i.t === 'verb') && isPlaceNoun(c.subj[0]!.np ?? ({ said: '' } as never)) && !under.subj.some(s => s.carried || isPlaceNoun(s.np ?? ({ said: '' } as never)))) return under.subj.map(s => ({ kind: 'stow', part: s.name, where: textOf(t.sheet, c.from, c.to).replace(/[.,;]$/, '') }) as Entry); // "hub caps: blue bucket under the stairs"
  const own = things(t, c, lying && !put ? c.subj : c.obj.length ? c.obj : c.subj);
  if (!own.length && !tails(t, c).length) return undefined;
  const along = put ? /\bin with (the|my|its|his) .*$/.exec(lowText(t)) : undefined;
  if (along && own.length) { const k = c.items.findIndex((i, n) => i.low === 'in' && c.items[n + 1]?.low === 'with' && c.items[n + 2]?.np); if (k >= 0) return own.map(s => ({ kind: 'stow', part: s.name, where: textOf(t.sheet, c.items[k]!.from, c.items[k + 2]!.to) }) as Entry); } // "put the bolts in with the pump"
  const start = lying && !put ? afterSubject(c) : c.vi + 1;
  const hung = base === 'hang' ? c.items.findIndex((i, k) => /^(off|from)$/.test(i.low) && c.items[k + 1]?.np && isPlaceNoun(c.items[k + 1]!.np!)) : -1;
  if (hung >= 0) return own.map(s => ({ kind: 'stow', part: s.name, where: textOf(t.sheet, c.items[hung]!.from, c.items[hung + 1]!.to) }) as Entry); // "hung it off the rafter"
  const inRag = base === 'wrap' && c.items[c.vi + 1]?.low === 'in' && c.items[c.vi + 2]?.np ? 2 : 0; // "wrapped in rag under the bench"
  const found = placeFrom(t.sheet, c.items, Math.max(start, 0) + inRag + Number(inRag > 0)), place = found && inRag ? { ...found, where: textOf(t.sheet, c.items[c.vi + 1]!.from, c.items[found.to - 1]!.to) } : found;
  if (!place || !isPlace(t, c, place.at, put || c.passive || c.carriedSubj === true && wentOff(t, c))) return undefined;
  if (/^(in|on|out|back) (place|position|order|the way|true|there|it|line|gear|time|a bad way|for)/.test(place.where.toLowerCase()) && !/(in|on) the way (in|out)/.test(place.where)) return undefined;
  const says = c.pred === 'none' && c.items.slice(place.to).find(i => i.t !== 'adv');
  if (says && says.t === 'be' && !c.items.slice(place.to).some(i => i.t === 'prep' && i.low !== 'of')) return undefined; // "the gauge in the box is some kind of foreign": where it is only tells which
  const where = tidyPlace(place.where);
  return [...own.map(s => ({ kind: 'stow', part: s.name, where }) as Entry), ...tails(t, c, place.to)];
};

/** Put away where it is to be found again: a participle alone says so ("shells wrapped in rag under the bench"). */
const KEPT = /^(wrap|bag|box|store|stash|put|stick|tuck|hang|stack|label|place|shelve|tape|wire|tie|park|pack|hide|keep|leave|stow|pile|coil)$/;
/** Where things go that are not kept. */
const THROWN_AWAY = /\b(stove|furnace|bonfire|fire|skip|dump|dumpster|trash|garbage|rubbish|tip|burn (pile|barrel)|hedge|ditch|weeds|scrapheap)\b/;
/** "off and on the sled": what has just come off is kept where the words after say. */
const wentOff = (t: Telling, c: Clause): boolean => { const e = t.told.at(-1)?.entry; return e?.kind === 'fit' && e.state === 'off' && c.subj.some(s => s.name === e.part); };

const tidyPlace = (where: string): string => where.replace(/^(?:back|up|down|out|away|over)\s+(?=(?:in|on|under|behind|at|by|beside|above|over)\b)/i, '').replace(/^(into|onto)\b/i, m => (m.toLowerCase() === 'into' ? 'in' : 'on'));
const things = (t: Telling, _c: Clause, list: Thing[]): Thing[] => list.filter(s => s.name && !isMachine(t.sheet, s.name) && !isSeller(s.name));
const afterSubject = (c: Clause): number => {
  const end = c.subj.filter(s => !s.carried).at(-1)?.to;
  const k = end === undefined ? 0 : c.items.findIndex(i => i.from >= end);
  return c.vi >= 0 ? c.vi : k < 0 ? c.items.length : k;
};

/** Whether the phrase names a place in the shop: "in the tin", "under the bench"; with a verb of putting any unlisted noun will do. */
function isPlace(t: Telling, c: Clause, at: number, put: boolean): boolean {
  const rest = c.items.slice(at);
  const nps = rest.filter(i => i.np || i.t === 'pron');
  const np = (rest.find(i => i.np && !i.np.stands) ?? rest.find(i => i.np))?.np;
  const prep = (c.items.slice(at).find(i => !/^(up|down|out|back|away|over)$/.test(i.low) && /^(prep|prt)$/.test(i.t)) ?? c.items[at]!).low;
  if (np && (isStuff(np.said) || /^(dust|rust|dirt|grime|muck|crud|mud|paint|carbon|scale)$/.test(np.said))) return false;
  if (!np) return /\b(them|it)\b/.test(lowText(t)) && /^(beside|under|behind|with|next)$/.test(prep);
  if (np.stands && nps.length === 1) return t.told.at(-1)?.rule === 'stow' && /^(in|on|under|behind)$/.test(prep);
  if (isPlaceNoun(np) && !isKnownPart(t.sheet.ctx.parts, np.name)) return !(c.pred !== 'verb' && isMachine(t.sheet, np.name));
  if (isMachine(t.sheet, np.name)) return put && /^(in|under|behind|beside)$/.test(prep) && !c.prt.length;
  if (isSource(np)) return false;
  if (/^(under|behind|beneath|underneath|beside|above|next|against|inside)$/.test(prep)) return !/^(load|pressure|control|way|warranty|schedule|water|torque)$/.test(np.said) && (put || !isPartish(t, np.said));
  if (put && /^(in|on|into|onto|over|between)$/.test(prep) && !/^(free|good|loose|dry|hand|use|tow|with|full|turn|general|particular|total)$/.test(np.said) && !t.clause.prt.includes('in')) return !isPartish(t, np.said) && !/^(order|hold|charge|place|time|it|position|mail|post|back order|time|way|gear|line|half|two|three|bits|pieces|loose)$/.test(np.said);
  if (nps.length > 1 && placeLater(rest)) return true;
  if (prep === 'on' && c.pred === 'be' && PROPS.test(np.said)) return true; // "on four drums"
  return false;
}
/** What heavy things are set down on. */
const PROPS = /\b(drums|blocks|stands|tyres|tires|pallets?|trestles|crates|boxes|barrels|sleepers|planks?|bricks|sawhorses|horses|poles|logs|timbers|bales|buckets|skids|dunnage)$/;
const placeLater = (rest: readonly Item[]): boolean => rest.some(i => i.np && isPlaceNoun(i.np));
const isPartish = (t: Telling, said: string): boolean => isKnownPart(t.sheet.ctx.parts, said) || /\b(shaft|bore|piston|hub|block|head|axle|frame|housing|gearbox|engine|spindle|chassis|cylinder|crank|flange|bracket|column|box|crankcase|rim|machine|press|groove|bearing|drum|keyway|keyseat|slot|hole|port|sump|gland|journal|seat|saddle|fork|yoke|lug|boss|pulley|sheave|gear|wheel|manifold|carb|magneto|pump)s?$/.test(said) && !isPlaceWord(said);
const isPlaceWord = (said: string): boolean => /\b(shelf|bench|drawer|bin|tin|rack|toolbox|cardboard box|box)$/.test(said);

/** ", bearings in a pail beside them": a second thing with its own place, without a verb. */
function tails(t: Telling, c: Clause, from = -1): Entry[] {
  const out: Entry[] = [];
  for (let k = Math.max(from, 1); k < c.items.length; k++) {
    const np = c.items[k]?.np;
    if (!np || np.stands || !(c.items[k - 1]!.low === ',' || c.items[k - 1]!.low === 'and') || !/^(in|on|under|behind|inside|beside|by)$/.test(c.items[k + 1]?.low ?? '')) continue;
    const place = placeFrom(t.sheet, c.items, k + 1);
    if (place && place.at === k + 1 && (isPlace(t, c, place.at, true))) { out.push({ kind: 'stow', part: np.name, where: place.where } as Entry); k = place.to - 1; }
  }
  return out;
}

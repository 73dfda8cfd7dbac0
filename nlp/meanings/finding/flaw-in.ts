import type { Entry } from '../../../domain/model/entry.ts';
import { dims } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { said } from '../../clauses/as-said.ts';
import { isMachine, isStuff, partLike } from '../../clauses/name-kinds.ts';
import { thingAt } from '../../clauses/things.ts';
import { FAULT } from '../../words/faults.ts';
import { singular } from '../../words/nouns.ts';
import { COUNTED } from '../../words/quantities.ts';
import { headsFigure } from '../lib/gauge-state.ts';
import { namesPart } from '../lib/named.ts';
import { verdictIn } from '../lib/verdict.ts';
import { lowText, type Meaning, type Telling } from '../telling.ts';
import { make } from './part.ts';

/** How much of a flaw: "a bit of play", "signs of heat", "plenty of slack". */
const AMOUNT = /(^| )(bits?|touch|traces?|hints?|lots?|load|loads|plenty|amount|deal|film|skin|layer|coating|signs?|smear|spots?|patch|patches|handful|tons?|heaps?|pile|speck|sniff|whiff|suspicion|fraction|kind|sort|line|ring|streak|streaks|evidence)$/;
const WHERE = /^(in|on|at|down|up|from|off|round|around|along|across|through|inside|under|between|near|behind|over|all over|to)$/;
/** A place on what bears the flaw. */
const SPOT = /^(top|bottom|end|side|middle|centre|center|front|back|edge|inside|outside|face|far end|near end|one end|each end|other end|both ends|ends|root|tip|length|heel|toe|neck|lip|rim|mouth|corner|underside|exhaust side|inlet side)$/;
/** "nothing wrong with the pump", "not a thing the matter with it". */
const SOUND = /\b(nothing|not a thing|not one thing|nowt) (at all |much |really )?(wrong|amiss|the matter) with\b/;

/** "bit of play in the spindle", "heavy pitting on the race", "there isn't a mark on the bores": a flaw, however much or little of it, in or on what bears it. */
export const flawIn: Meaning = t => {
  const c = t.clause, items = c.items.filter(i => i.t !== 'mark' || i.low === ',');
  if (belongsThere(t)) return undefined;
  if (dims(items, 'measure').length || dims(items, 'money').length || items.some(i => i.np?.count !== undefined && COUNTED.has(singular(i.np.said.split(' ').at(-1)!)))) return undefined; // "22 teeth on the sprocket"
  if (headsFigure(t)) return undefined;
  if (SOUND.test(lowText(t))) return sound(t, items);
  if (c.asks || c.sub || !/^(deed|maybe)$/.test(c.reality)) return undefined;
  const has = HAS.exec(lowText(t)) && (c.subj.every(s => s.machine || s.carried)) ? items.findIndex((i, n) => i.low === 'got' || i.t === 'have' || i.low === 'with' && items[n - 1]?.base === 'live') : -1;
  const there = has >= 0 ? -1 : items.findIndex(i => i.low === 'there'), from = has >= 0 ? has + 1 + Number(items[has + 1]?.low === 'got') : there >= 0 && items[there + 1]?.t === 'be' ? there + 2 : 0;
  if (there < 0 && has < 0 && c.pred !== 'none' && !(c.verb && flawed(c.verb)) || there > 1 || c.who && there < 0 && has < 0 && !/^(nothing|not)$/.test(c.who)) return undefined;
  const at = items.findIndex((i, k) => k > from && WHERE.test(i.low) && items[k + 1]?.np && !(i.low === 'from' && !/\b(leak|weep|drip|seep|noise|knock|smell|smoke|rattle|hiss|squeal|whine|tap|rumble|water|oil|leakage|sound)\w*\b/.test(lowText(t))));
  if (at < 0) return undefined;
  const lead = items.slice(from, at), none = there >= 0 && /n't$/.test(items[there + 1]?.low ?? '') || lead[0]?.t === 'neg';
  const flaw = lead.findLastIndex(i => flawed(i));
  if (flaw < 0 || !lead.every((i, k) => k === flaw || flawed(i) || i.np && AMOUNT.test(i.np.said) || i.low === 'of' || i.low === ',' || /^(adv|adj|neg|cc|det|intj)$/.test(i.t) || i.low === 'left') || lead.slice(flaw + 1).some(i => i.t !== 'adv' && i.t !== 'adj' && !/^(left|all|right|only)$/.test(i.low))) return undefined;
  const spot = SPOT.test(items[at + 1]!.np!.said) && items[at + 2]?.low === 'of' && items[at + 3]?.np ? at + 3 : at + 1;
  const owner = thingAt(t.sheet, items, spot, t.memory);
  if (!owner || owner.thing.carried || isMachine(t.sheet, owner.thing.name) || !partLike(t.sheet, owner.thing.name) || !namesPart(t.sheet, owner.thing.name)) return undefined;
  const first = lead.findIndex(i => !/^(cc|intj)$/.test(i.t) && i.low !== ',');
  const text = said(t.sheet, lead[first]!.from, spot > at + 1 ? items[at + 1]!.to : lead.at(-1)!.to);
  return [make(owner.thing.name, none && !/^n(o|ot|one)\b/i.test(text) ? `not ${text}` : text, verdictIn(lowText(t)))];
};

/** "new oil in the gearbox", "grease on the pins": what a part is meant to hold is no flaw in it. */
export const belongsThere = (t: Telling): boolean => {
  const text = lowText(t);
  return new RegExp(`\\b(new|fresh|clean) ${STUFF}\\b`).test(text) || new RegExp(`^(and |but )?${STUFF} (in|on|through) (the |a |each |all the |both )?([\\w-]+ )*?${HOME}\\b`).test(text);
};
const STUFF = '(oil|grease|petrol|diesel|paraffin|fuel|coolant|antifreeze)';
const HOME = '(tank|bowl|hub|pin|bearing|gearbox|sump|box|case|casing|housing|lubricator|cup|nipple|radiator|hopper|can|drum|line|pipe|pump|filter|carb|carburettor|diff|differential|transmission|joint|chain|pivot|final drive)s?$';

/** "she's got end float in the countershaft", "I've a leak at the union", "I can live with the slop in the linkage". */
const HAS = /^(and |but |so )*(she|it|i|we|i can|we can)( 've|'ve|'s| has| have| had)? ?(still )?(got|a|some|live with)\b|^(and |but )*(got|have) (a|some)\b/;
const flawed = (i: Item): boolean => FAULT.test(i.np ? i.np.said.split(' ').slice(-2).join(' ') : i.low) || i.np !== undefined && FAULT.test(i.np.said.split(' ').at(-1)!);

function sound(t: Telling, items: readonly Item[]): Entry[] | undefined {
  const k = items.findIndex(i => i.low === 'with'), about = items[k + 1];
  const name = about?.np ? thingAt(t.sheet, items, k + 1, t.memory)?.thing.name : about?.t === 'pron' ? t.memory.topic()?.name : undefined;
  return name && partLike(t.sheet, name) && !isStuff(name) && !isMachine(t.sheet, name) ? [make(name, 'nothing wrong', 'good')] : undefined;
}

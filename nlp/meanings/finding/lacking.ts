import type { Entry } from '../../../domain/model/entry.ts';
import { dims } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { withOwner } from '../../clauses/owner.ts';
import { said } from '../../clauses/as-said.ts';
import { isMachine, isPlaceNoun, isStuff, partLike } from '../../clauses/name-kinds.ts';
import { thingAt } from '../../clauses/things.ts';
import { FAULT } from '../../words/faults.ts';
import { namesPart } from '../lib/named.ts';
import { verdictIn } from '../lib/verdict.ts';
import { lowText, type Meaning, type Telling } from '../telling.ts';
import { make, partsOf } from './part.ts';

/** What happened to a piece that is no longer where it belongs. */
const GONE = /^(missing|gone|lost|absent|broken|broke|snapped|sheared|torn|chewed|rusted|rotted|burnt|burned|cracked|worn|busted|bust|knocked|ripped|short|chipped)$/;
/** "three vanes short", "a coil light": so many pieces too few. */
const SHORT = /^(short|shy|light|down)$/;

/** What a part has too little of, or a piece that is gone from it: "three vanes short", "two teeth gone off the pinion", "no lining left on the shoes". */
export const lacking: Meaning = t => {
  const c = t.clause;
  if (c.asks || c.sub || c.reality !== 'deed' || c.who && !/^(it|they|that|she)$/.test(c.who) || dims(c.items, 'money').length) return undefined;
  return noneLeft(t) ?? tooFew(t) ?? goneFrom(t);
};

/** "no lining left on the shoes", "there's no cap on the radiator". */
function noneLeft(t: Telling): Entry[] | undefined {
  const items = t.clause.items, k = items.findIndex(i => i.np?.quant === 'no' || i.t === 'neg' || i.np?.quant === 'any');
  const lead = items.slice(0, Math.max(k, 0)).every(i => /^(cc|mark|adv|be)$/.test(i.t));
  const none = k >= 0 && lead ? items.findIndex((i, n) => n >= k && i.np !== undefined) : -1;
  if (none < 0 || none > k + 1) return undefined;
  const left = items[none + 1]?.low === 'left' ? none + 1 : none, at = left + 1;
  if (!/^(in|on|at|under|round|inside)$/.test(items[at]?.low ?? '') || !items[at + 1]?.np || !namesPart(t.sheet, items[none]!.np!.name) || isStuff(items[none]!.np!.name) && left === none) return undefined;
  const owner = thingAt(t.sheet, items, at + 1, t.memory);
  if (!bears(t, owner?.thing.name, items[at + 1]!) || items.slice(owner!.next).some(i => i.t === 'verb' || i.t === 'be' || i.t === 'have')) return undefined;
  const text = said(t.sheet, items[none]!.from, items[left]!.to);
  return [make(owner!.thing.name, /^no /i.test(text) ? text : `no ${text}`)];
}

/** "impeller is three vanes short", "the spring's a coil short", "the latch is minus its spring". */
function tooFew(t: Telling): Entry[] | undefined {
  const c = t.clause, parts = partsOf(t, c.subj), be = c.items.findIndex(i => i.t === 'be');
  if (!parts.length || c.pred !== 'be' || c.neg) return undefined;
  const minus = /\b(minus|without|lacking|wanting|missing) (its|their|her|a|an|the|one|two|three|four|half|most) /.exec(lowText(t));
  const np = c.items[be + 1], by = np?.np && SHORT.test(c.items[be + 2]?.low ?? '') && (np.np.count !== undefined || /^(a|an|one|half)\b/.test(np.low));
  if (!by && !(minus && /^(minus|without|lacking|wanting|missing)$/.test(np?.low ?? ''))) return undefined;
  const text = said(t.sheet, np!.from, c.to), whole = /^(a|an)$/i.test(t.sheet.tokens[np!.from]!.low) ? `${t.sheet.tokens[np!.from]!.low} ${text}` : text;
  return parts.map(p => make(p.name, whole, verdictIn(text)));
}

/** "three vanes missing off the fan", "one ear's broken off the housing", "a tooth has gone from the pinion": the piece is named after what it is of; a tooth is its wheel's. */
function goneFrom(t: Telling): Entry[] | undefined {
  const c = t.clause, items = c.items, piece = items.findIndex(i => i.np && !i.np.stands);
  if (piece < 0 || c.neg || c.obj.length || items.slice(0, piece).some(i => !/^(cc|mark|adv|intj|be)$/.test(i.t))) return undefined;
  const at = items.findIndex((i, k) => k > piece && GONE.test(i.low));
  if (at < 0 || items.slice(piece + 1, at).some(i => !/^(be|have|adv)$/.test(i.t))) return undefined;
  let k = at + 1;
  while (items[k] && (items[k]!.t === 'adv' || /^(clean|right|off|out)$/.test(items[k]!.low) && !items[k + 1]?.np)) k++;
  if (!/^(off|from|of)$/.test(items[k]?.low ?? '') || !items[k + 1]?.np) return undefined;
  const owner = thingAt(t.sheet, items, k + 1, t.memory), np = items[piece]!.np!;
  if (!bears(t, owner?.thing.name, items[k + 1]!)) return undefined;
  const fault = FAULT.test(np.said.split(' ').at(-1)!), words = said(t.sheet, items[at]!.from, items[k]!.low === 'off' ? items[k]!.to : items[k]!.from);
  const count = t.sheet.tokens.slice(np.from, np.nameFrom).map(x => x.low).filter(w => !/^(the|a|an|its)$/.test(w)).join(' ');
  const name = fault ? owner!.thing.name : withOwner(t.sheet, np.name, items[k + 1]!.np!, 'of', t.memory) ?? owner!.thing.name;
  return [make(name, fault ? `${said(t.sheet, np.from, np.to)} ${words}` : [count === '1' || count === 'one' ? 'one' : count, words].filter(Boolean).join(' '))];
}

const bears = (t: Telling, name: string | undefined, at: Item): boolean => name !== undefined && !isMachine(t.sheet, name) && partLike(t.sheet, name) && namesPart(t.sheet, name) && !(isPlaceNoun(at.np!) && !namesPart(t.sheet, at.np!.said));

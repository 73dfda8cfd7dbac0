import type { Entry } from '../../../domain/model/entry.ts';
import { dims, type Clause } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { countValue } from '../../dimensions/part/count.ts';
import { isMachine, isPlural } from '../../clauses/name-kinds.ts';
import { CONDITION } from '../../words/conditions.ts';
import { singular } from '../../words/nouns.ts';
import { COUNTED } from '../../words/quantities.ts';
import { SIDES } from '../../words/sides.ts';
import { trim } from '../lib/fields.ts';
import { sided } from '../lib/gauged-part.ts';
import { lowText, type Telling } from '../telling.ts';
import { asWas } from './as-was.ts';
import { ofThem } from './of-them.ts';
import { table } from '../../words/table.ts';

/** "three shims under it", "34 links", "I counted 68 links a side", "bottom cap had two". */
export function counts(t: Telling, c: Clause): Entry[] {
  const made = /\b(i|we) (make|made) (it|that) \S+ \S+|\b(found|got) \S+ \S+ (left|still|remaining)\b|\b(took|pulled|had|got) \S+ (\S+ )?(shims?|washers?|spacers?|packers?) (out )?from (under|behind|between|below)\b/.test(lowText(t, c)); // "I make it 14 teeth", "got 23 tines left"
  if (!made && /^(measure|mike|mic|gauge|check|test|need|want|order|buy|get|put|add|fit|use|take|replace|make|cut|bring|send|find|leave|pull|have to)$/.test(c.verb?.base ?? '') && !(c.pred === 'have') || dims(c.items, 'money').length) return [];
  const out: Entry[] = [];
  const told = countedOff(t, c) ?? listed(t, c) ?? ofThem(t, c);
  if (told) return told;
  c.items.forEach((it, k) => {
    const np = it.np, toothed = c.pred === 'be' && k > c.vi ? /^(\d+|[a-z]+)[ -](tooth|leaf|link|spoke|blade|tine|plate|finger|slat|spline)$/.exec(np?.said ?? '') : null, many = toothed ? countValue(toothed[1]!) : undefined;
    if (toothed && many !== undefined && c.subj[0]) { out.push(trim({ kind: 'reading', part: c.subj[0].name, what: PLURAL[toothed[2]!] ?? `${toothed[2]}s`, value: many, unit: 'count', asWas: asWas(t, c) || undefined }) as Entry); return; } // "a 42 tooth"
    if (c.counted && k < 4) return;
    if (np && c.items.slice(0, k).some(x => x.np && /^(chip|crack|piece|chunk|bit|lump|split|nick)s?$/.test(x.np.said))) return; // "a chip out of two teeth"
    const counted = np && np.count !== undefined && !/^(rust|pin|worm|bullet|oil|dry|cracked|worn) /.test(np.said) && (COUNTED.has(singular(np.said.split(' ').at(-1)!)) || isPlural(np.said) && (c.verb?.base === 'count' || heldBetween(c.items, k)));
    if (counted && !c.items.some(x => x.t === 'adj' && CONDITION.has(x.low)) && !/\b(bent|broken|cracked|missing|worn|bad|rotten|gone|loose)\b/.test(lowText(t))) {
      const side = sideAfter(c, k);
      if (side) { const of = c.subj.find(s => s.np !== np && !isMachine(t.sheet, s.name))?.name ?? t.memory.all().find(x => x.name !== np.name && !/ side$/.test(x.name))?.name; if (of) { out.push(trim({ kind: 'reading', part: of, what: `${np.said} ${side}`, value: np.count!, unit: 'count', asWas: asWas(t, c) || undefined }) as Entry); return; } }
      const under = c.items.slice(k + 1).find((x, n) => x.np && !APIECE.test(x.np.said) && /^(under|behind|between|in|on|at|of|beneath|each|per)$/.test(c.items[k + n]?.low ?? '') || x.t === 'pron' && /^(it|them|that)$/.test(x.low) && /^(under|behind|between|in|on)$/.test(c.items[k + n]?.low ?? ''));
      const owner = c.subj.find(s => s.np !== np && s.name !== np.name && !APIECE.test(s.name) && !new RegExp(`^${singular(np.name)} (stack|pile|bunch|row|set|number|lot|heap)s?$`).test(s.name) && !isMachine(t.sheet, s.name))?.name ?? (under?.np && !under.np.stands && !APIECE.test(under.np.said) ? under.np.name : undefined) ?? takenApart(t) ?? t.memory.all().find(x => x.name !== np.name)?.name;
      const evident = made || c.pred === 'have' || /^(count|be|have|find|get|number|carry|hold|run|total|make)$/.test(c.verb?.base ?? '') && c.verb?.form !== 'ing' || t.clauses[t.at - 1]?.verb?.base === 'count' || c.pred === 'be' || c.pred === 'none' || under !== undefined;
      if (owner && evident && owner !== np.name) out.push(trim({ kind: 'reading', part: owner, what: np.said, value: np.count!, unit: 'count', asWas: asWas(t, c) || undefined }) as Entry);
      return;
    }
    const one = it.t === 'pron' && it.low === 'one' && c.pred === 'have' && k === c.items.findLastIndex(x => x.t !== 'mark'); // "the bottom slipper had one"
    if ((one || it.f?.dim === 'number' && Number.isInteger(it.f.value.value)) && !c.items[k + 1]?.np) {
      const value = it.f?.dim === 'number' ? it.f.value.value : 1;
      const side = sideAfter(c, k), before = [...out].reverse().find(e => e.kind === 'reading' && e.unit === 'count') ?? t.told.findLast(x => x.entry.kind === 'reading' && x.entry.unit === 'count')?.entry;
      if (side && before?.kind === 'reading') { out.push(trim({ kind: 'reading', part: before.part, what: `${before.what.replace(/ on the .*$/, '')} ${side}`, value, unit: 'count', asWas: before.asWas }) as Entry); return; }
      const said = [...out].reverse().find(e => e.kind === 'reading' && e.unit === 'count') ?? [...t.told].reverse().find(x => x.entry.kind === 'reading' && x.entry.unit === 'count')?.entry ?? spokenOf(t);
      const fronted = c.items.slice(0, k).findLast(x => x.np && !x.np.stands)?.np?.name;
      const owner = (out.length ? undefined : c.subj.find(s => !s.carried)?.name) ?? under(t, c.items, k, said?.kind === 'reading' ? said.part : undefined) ?? (out.length ? undefined : fronted);
      if (said?.kind === 'reading' && owner && owner !== said.part && (c.pred === 'have' || c.pred === 'none' || c.pred === 'be' || /^(count|find|get|have)$/.test(c.verb?.base ?? '')) && !stateAfter(c.items, k)) out.push(trim({ kind: 'reading', part: owner, what: said.what, value, unit: 'count', asWas: said.asWas ?? (asWas(t, c) || undefined) }) as Entry);
    }
  });
  return out;
}
/** "three tin liners between them", "two washers behind the gear": whatever the noun, what lies between others is counted. */
const heldBetween = (items: readonly Item[], k: number): boolean => /^(under|behind|between|beneath|underneath)$/.test(items[k + 1]?.low ?? '') || items[k + 1]?.low === 'on' && items[k + 2]?.low === 'top';
const PLURAL: Record<string, string> = table({ tooth: 'teeth', leaf: 'leaves' });

/** "four shims a side": how they were shared out, and no part. */
const APIECE = /^(sides?|ends?|one side|other side|other)$/;
/** "…before I split the bearing caps": what was then taken apart had what was counted. */
function takenApart(t: Telling): string | undefined {
  const next = t.clauses[t.at + 1];
  const thing = next && /^(before|when|as)$/.test(next.sub ?? '') && /^(i|we)$/.test(next.who ?? '') && next.verb?.form === 'past' ? next.obj.find(o => !o.carried && !isMachine(t.sheet, o.name)) : undefined;
  return thing?.name;
}

/** "knife sections 21 of them on the bar, ledger plates 22": what was counted stands before its number; "Spokes on the wheel. 14." too. */
function listed(t: Telling, c: Clause): Entry[] | undefined {
  const end = c.items.findIndex((i, n) => i.low === ',' && c.items[n + 1]?.np?.count !== undefined), said = c.items.slice(0, end > 0 ? end : undefined).filter(i => i.t !== 'mark' && i.t !== 'adv'), before = t.clauses[t.at - 1];
  const alone = said.length === 1 && said[0]!.f?.dim === 'number' && before?.pred === 'none' && !before.items.some(i => i.f) && !t.told.some(x => x.clause === before) ? before : undefined;
  if (c.pred !== 'none' || c.asks) return undefined;
  const items = alone ? [...alone.items.filter(i => i.t !== 'mark'), said[0]!] : said, k = items.findIndex((i, n) => i.np && i.np.count === undefined && n < items.length - 1);
  const np = items[k]?.np, n = alone ? items.length - 1 : k + 1, f = items[n]?.f;
  if (!np || k !== 0 || f?.dim !== 'number' || !Number.isInteger(f.value.value) || f.value.value > 500 || !COUNTED.has(singular(np.said.split(' ').at(-1)!)) || singular(np.said) === np.said || items[n + 1]?.t === 'adj') return undefined;
  const on = items.findIndex((i, m) => m > k && /^(on|in|under|behind|round|around)$/.test(i.low) && items[m + 1]?.np && !APIECE.test(items[m + 1]!.np!.said));
  const last = t.told.findLast(x => x.entry.kind === 'reading' && x.entry.unit === 'count')?.entry;
  const part = on > 0 ? items[on + 1]!.np!.name : last?.kind === 'reading' && t.told.at(-1)?.clause === before ? last.part : undefined;
  return part && (on > 0 || items.length === n + 1) ? [trim({ kind: 'reading', part, what: np.said, value: f.value.value, unit: 'count', asWas: asWas(t, c) || undefined }) as Entry] : undefined;
}

/** "four shims on the flywheel side": tells one count from another, and stays with what was counted. */
function sideAfter(c: Clause, k: number): string | undefined {
  const at = c.items[k + 1], np = c.items[k + 2]?.np;
  return at && /^(on|at)$/.test(at.low) && np && /^(?!left|right|near|off|other|far)\w+ side$/.test(np.said) ? `on the ${np.said}` : undefined;
}

/** "counted the staves in the cage: eighteen", "counted twenty eight bars": the verb says that it is a count, whatever the noun. */
function countedOff(t: Telling, c: Clause): Entry[] | undefined {
  const before = t.clauses[t.at - 1], n = c.items.filter(i => i.t !== 'mark' && i.t !== 'adv');
  const source = c.verb?.base === 'count' ? c : before?.verb?.base === 'count' && n.length === 1 ? before : undefined;
  if (!source || source.neg) return undefined;
  const f = n.length === 1 && source === before ? n[0]!.f : source === c ? c.items.slice(c.vi + 1).find(i => i.f?.dim === 'number' || i.f?.dim === 'measure' && i.f.value.unit === 'bar' && /bars$/.test(i.low))?.f : undefined;
  const value = f?.dim === 'number' || f?.dim === 'measure' ? f.value.value : undefined;
  if (value === undefined || !Number.isInteger(value)) return undefined;
  if (source.items.slice(source.vi + 1).find(i => i.np || i.f)?.np?.count !== undefined) return undefined;
  const thing = source.items.slice(source.vi + 1).find(i => i.np), inIt = source.items.find((i, k) => k > source.vi && i.np && /^(in|on|round|around)$/.test(source.items[k - 1]?.low ?? ''))?.np;
  const what = f?.dim === 'measure' ? 'bars' : thing?.np?.said;
  const part = inIt && !inIt.stands && inIt !== thing?.np ? inIt.name : c.subj.find(s => !s.carried && s.np !== thing?.np && !isMachine(t.sheet, s.name))?.name ?? t.memory.all().find(x => x.name !== thing?.np?.name)?.name;
  return what && part ? [trim({ kind: 'reading', part, what, value, unit: 'count', asWas: asWas(t, c) || undefined }) as Entry] : undefined;
}

/** "shims when I pulled it apart, five under the left cap": what was counted, named on its own before. */
function spokenOf(t: Telling): { kind: 'reading'; part: string; what: string; asWas?: boolean } | undefined {
  for (let i = t.at; i >= 0 && i > t.at - 3; i--) {
    const np = t.clauses[i]!.items.find(x => x.np && x.np.count === undefined && COUNTED.has(singular(x.np.said)) && singular(x.np.said) !== x.np.said)?.np;
    if (np) return { kind: 'reading', part: '', what: np.said };
  }
  return undefined;
}
/** "22 sections, 4 chipped": a number of them in some state is no second count. */
const stateAfter = (items: readonly Item[], k: number): boolean => items[k + 1]?.t === 'adj' || items[k + 1]?.t === 'verb';
/** The part after "under", "on", "in"; "the right one" is the fellow of the part before. */
function under(t: Telling, items: readonly Item[], k: number, before: string | undefined): string | undefined {
  const np = /^(under|behind|on|in|at|between|for)$/.test(items[k + 1]?.low ?? '') ? items[k + 2]?.np : undefined;
  if (!np || !np.stands && !SIDES.has(np.said)) return np?.name;
  if (before && / one$/.test(np.said) && !SIDES.has(np.said.split(' ')[0]!) && np.said.split(' ').length === 2) return `${np.said.split(' ')[0]} ${before.split(' ').slice(before.includes(' ') ? 1 : 0).join(' ')}`; // "the wee sprocket… the muckle one"
  return before && /^(left|right|front|rear|back|top|bottom|inner|outer|upper|lower|other)( one)?$/.test(np.said) ? sided(t, before, np.said.replace(/ one$/, '')) : undefined;
}

import type { Entry } from '../../../domain/model/entry.ts';
import { dims, type Clause } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { isMachine } from '../../clauses/things.ts';
import { CONDITION } from '../../words/conditions.ts';
import { singular } from '../../words/nouns.ts';
import { COUNTED } from '../../words/quantities.ts';
import { SIDES } from '../../words/sides.ts';
import { trim } from '../lib/fields.ts';
import { sided } from '../lib/gauged.ts';
import { lowText, type Telling } from '../telling.ts';
import { asWas } from './as-was.ts';

/** "three shims under it", "34 links", "I counted 68 links a side", "bottom cap had two". */
export function counts(t: Telling, c: Clause): Entry[] {
  if (/^(measure|mike|mic|gauge|check|test|need|want|order|buy|get|put|add|fit|use|take|replace|make|cut|bring|send|find|leave|pull|have to)$/.test(c.verb?.base ?? '') && !(c.pred === 'have') || dims(c.items, 'money').length) return [];
  const out: Entry[] = [];
  const told = countedOff(t, c);
  if (told) return told;
  c.items.forEach((it, k) => {
    const np = it.np;
    if (c.counted && k < 4) return;
    if (np && c.items.slice(0, k).some(x => x.np && /^(chip|crack|piece|chunk|bit|lump|split|nick)s?$/.test(x.np.said))) return; // "a chip out of two teeth"
    const counted = np && np.count !== undefined && !/^(rust|pin|worm|bullet|oil|dry|cracked|worn) /.test(np.said) && COUNTED.has(singular(np.said.split(' ').at(-1)!));
    if (counted && !c.items.some(x => x.t === 'adj' && CONDITION.has(x.low)) && !/\b(bent|broken|cracked|missing|worn|bad|rotten|gone|loose)\b/.test(lowText(t))) {
      const side = sideAfter(c, k);
      if (side) { const of = c.subj.find(s => s.np !== np && !isMachine(t.sheet, s.name))?.name ?? t.memory.all().find(x => x.name !== np.name && !/ side$/.test(x.name))?.name; if (of) { out.push(trim({ kind: 'reading', part: of, what: `${np.said} ${side}`, value: np.count!, unit: 'count', asWas: asWas(t, c) || undefined }) as Entry); return; } }
      const under = c.items.slice(k + 1).find((x, n) => x.np && /^(under|behind|between|in|on|at|of|beneath|each|per)$/.test(c.items[k + n]?.low ?? '') || x.t === 'pron' && /^(it|them|that)$/.test(x.low) && /^(under|behind|between|in|on)$/.test(c.items[k + n]?.low ?? ''));
      const owner = c.subj.find(s => s.np !== np && s.name !== np.name && !isMachine(t.sheet, s.name))?.name ?? (under?.np && !under.np.stands ? under.np.name : undefined) ?? t.memory.all().find(x => x.name !== np.name)?.name;
      const evident = c.pred === 'have' || /^(count|be|have|find|get|number|carry|hold|run|total|make)$/.test(c.verb?.base ?? '') && c.verb?.form !== 'ing' || t.clauses[t.at - 1]?.verb?.base === 'count' || c.pred === 'be' || c.pred === 'none' || under !== undefined;
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
  return before && /^(left|right|front|rear|back|top|bottom|inner|outer|upper|lower|other)( one)?$/.test(np.said) ? sided(t, before, np.said.replace(/ one$/, '')) : undefined;
}

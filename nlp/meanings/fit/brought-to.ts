import type { Entry } from '../../../domain/model/entry.ts';
import { dims, lows, type Clause } from '../../clauses/clause.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { BY_UNIT } from '../../words/gauging.ts';
import { singular } from '../../words/nouns.ts';
import { NAMED } from '../../words/quantities.ts';
import { trim } from '../lib/fields.ts';
import { gauged } from '../lib/gauged.ts';
import { labelOf } from '../lib/label.ts';
import { measurable } from '../lib/measurable.ts';
import { suits } from '../lib/quantity.ts';
import { lowText, type Telling } from '../telling.ts';

/** "ring gaps set at sixteen thou on the tops and fourteen on the seconds": one setting, told for each of them. */
export function toldApart(t: Telling, c: Clause): Entry[] | undefined {
  if (c.items.some((i, k) => i.np && /^(to|at)$/.test(c.items[k + 1]?.low ?? '') && c.items.slice(0, k).some(x => x.f))) return undefined;
  const got = gauged(t, c, true);
  return got && got.length > 1 && new Set(got.map(g => g.part)).size > 1 ? got.map(({ was, ...g }) => trim({ kind: 'reading', ...g, asWas: was }) as Entry) : undefined;
}

/** "…and the mains to 70": the next part of the same breath, with the figure that it was brought to. */
export function othersTo(t: Telling, c: Clause, named?: string): Entry[] {
  const first = dims(c.items, 'measure')[0];
  if (!first) return [];
  return c.items.flatMap((i, k) => {
    const led = /^(to|at)$/.test(c.items[k + 1]?.low ?? ''), f = c.items[led ? k + 2 : k + 1]?.f, np = i.np;
    if (!np || np.stands || i.from < first.to || !led && !/^(lb-ft|lb-in|N·m)$/.test(first.value.unit) || !/^(and|,|&|plus)$/.test(c.items[k - 1]?.low ?? '') || f?.dim !== 'measure' && f?.dim !== 'number' && f?.dim !== 'money' || !partLike(t.sheet, np.name)) return [];
    const thou = first.value.unit === 'in' && first.value.value < 0.1 && f.dim !== 'measure';
    const value = thou ? f.value.value / 1000 : f.value.value, unit = f.dim === 'measure' ? f.value.unit : first.value.unit;
    return [{ kind: 'fit', part: np.name, state: 'tight' }, { kind: 'reading', part: np.name, what: named ?? (/^(lb-ft|lb-in|N·m)$/.test(unit) ? 'torque' : unit === 'psi' ? 'pressure' : 'gap'), value, unit }] as Entry[];
  });
}

/** "…rear cap torqued to 25": the unit is that of the figure before. */
function bareFigure(t: Telling, c: Clause, parts: string[]): Entry[] {
  const n = plainNumber(c), last = t.told.findLast(x => x.entry.kind === 'reading' && x.entry.what === 'torque')?.entry;
  return n !== undefined && last?.kind === 'reading' && parts[0] ? [{ kind: 'reading', part: parts[0], what: 'torque', value: n, unit: last.unit } as Entry] : [];
}

/** "Gap was 40 thou, set it to 25": a whole number after thousandths is thousandths. */
function thousandths(t: Telling, c: Clause, parts: string[]): Entry[] {
  const n = plainNumber(c), last = t.told.at(-1)?.entry;
  if (n === undefined || last?.kind !== 'reading' || last.unit !== 'in' || last.value >= 0.1 || !Number.isInteger(n) || last.part !== parts[0]) return [];
  return [{ kind: 'reading', part: parts[0], what: last.what, value: n / 1000, unit: 'in' } as Entry];
}

/** A number without a unit; "at twelve" alone might be money, but not where a part is set to it. */
const plainNumber = (c: Clause): number | undefined => dims(c.items, 'number')[0]?.value.value ?? dims(c.items, 'money').find(m => !m.value.certainCurrency)?.value.value;

/** "injectors in, hold-downs at 18 foot pounds": what stands after the comma has the figure. */
function nearer(t: Telling, c: Clause, from: number): string | undefined {
  const k = c.items.findLastIndex(i => i.to <= from && i.low === ','), between = c.items.slice(k + 1).filter(i => i.to <= from);
  const np = k < 0 || between.some(i => i.t === 'verb' && !/^(set|torque|gap|do|pull|tighten|adjust|bring|nip|snug|take|reset)$/.test(i.base ?? '') || i.t === 'pron') ? undefined : between.find(i => i.np && !i.np.stands)?.np;
  return np && partLike(t.sheet, np.name) && measurable(t.sheet, np.name) ? np.name : undefined;
}

/** "Torqued to 35 foot-pounds", "gapped to 15 thou": the figure that a part was brought to is a reading beside the fit. */
export function figures(t: Telling, c: Clause, parts: string[], named?: string): Entry[] {
  const m = dims(c.items, 'measure').find(f => !f.value.to && !(/^(rpm|V)$/.test(f.value.unit) && !/^(to|at)$/.test(t.sheet.tokens[f.from - 1]?.low ?? '')));
  if (!m && /^(torque|retorque)$/.test(c.verb?.base ?? '')) return bareFigure(t, c, parts);
  if (!m && /^(set|gap|adjust|reset|regap)$/.test(c.verb?.base ?? '')) return thousandths(t, c, parts);
  if (!m || !/\b(to|at)\b/.test(lows(c.items.filter(i => i.from < m.from))) && !/^(gap|torque|retorque|regap|tighten)$/.test(c.verb?.base ?? '')) return [];
  const base = c.verb?.base ?? '', text = lowText(t);
  const label = labelOf(t.sheet, m.to, c.to, true), told = label.what && suits(label.what, m.value.unit) ? label.what : undefined;
  const what = named ?? told ?? (/^(lb-ft|lb-in|N·m)$/.test(m.value.unit) ? 'torque'
    : /^(in|mm)$/.test(m.value.unit) && /gap|set|adjust|reset|regap|shim|^(do|bring|take|wind|tweak|dial|space|nip|pinch|snug|close|screw)$/.test(base) ? (/(clearance|lash|end play|sag|travel)/.exec(text)?.[0] ?? 'gap')
      : /^(psi|bar|rpm|V)$/.test(m.value.unit) ? BY_UNIT[m.value.unit] : undefined);
  const spot = label.where;
  const own = nearer(t, c, m.from) ?? (told && label.part && /^at$/.test(t.sheet.tokens.slice(m.to, c.to).find(x => /^(at|on|in|of)$/.test(x.low))?.low ?? '') ? label.part : undefined); // "to a quarter inch free play at the lever"
  const unit = m.value.unit === 'mil' ? 'mm' : m.value.unit;
  return what ? (own ? [own] : parts.slice(0, 1)).map(p => ({ kind: 'reading', part: p, what: spot ? `${what} ${spot}` : what, value: m.value.value, unit }) as Entry) : [];
}

/** "spindle end float set to…": the fit is the spindle's, the figure its end float. */
export function measuredName(name: string): { part: string; what?: string } {
  const words = name.split(' ');
  for (let cut = 1; cut < words.length; cut++) {
    const tail = words.slice(cut).map((w, i, a) => (i === a.length - 1 ? singular(w) : w)).join(' ');
    if (NAMED.test(tail) && !/^(lift|draw|level|bore|charge|weight|wear|output|flow|speed|fit|timing|advance)$/.test(tail)) return { part: words.slice(0, cut).join(' '), what: tail };
  }
  return { part: name };
}

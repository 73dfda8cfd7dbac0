import type { Entry } from '../../../domain/model/entry.ts';
import { nameWords } from '../../../domain/model/names.ts';
import { spotOf, type Stretch } from '../../likely/spot.ts';
import type { Found, Sheet } from '../../types.ts';
import type { Told } from '../telling.ts';

/** Figures of one row are this much alike: a worn bore is no ten times the next. */
const ALIKE = 10;

type Reading = Extract<Entry, { kind: 'reading' }>;
interface Figure { entry: Reading; at: Stretch; value: number; measure: boolean }

/** Readings of the same quantity in one note, of which one has its unit written ("front bearing 3 thou clearance, rear 1.5"): a bare figure is in that unit, where it then is of the same order. A pressure in pounds (and what a tyre has in it) is in psi. */
export function inOneUnit(sheet: Sheet, told: readonly Told[]): Told[] {
  const figures = told.map((x): Figure | undefined => {
    const at = x.entry.kind === 'reading' ? spotOf(sheet, x) : undefined, f = at && figureAt(sheet, at);
    return f ? { entry: x.entry as Reading, at, value: f.value.value, measure: f.dim === 'measure' } : undefined;
  });
  return told.map((x, i) => {
    const own = figures[i], far = (f: Figure): number => Math.abs(f.at.from - own!.at.from);
    const other = own && !own.measure ? figures.filter((f): f is Figure => f !== undefined && f.measure && sameQuantity(f.entry, own.entry)).sort((a, b) => far(a) - far(b))[0] : undefined;
    return { ...x, entry: psi(thou(other ? inUnitOf(sheet, own!, other) : x.entry, own)) };
  });
}

function inUnitOf(sheet: Sheet, own: Figure, other: Figure): Entry {
  const { entry } = own, inThou = sheet.tokens.slice(other.at.from, other.at.to).some(t => /^thou/.test(t.low)), value = inThou ? own.value / 1000 : own.value, times = value / other.entry.value;
  if (entry.unit !== undefined && !(inThou && entry.unit === 'in' && entry.value === own.value) || !(times > 1 / ALIKE && times < ALIKE)) return entry;
  return { ...entry, value, unit: other.entry.unit } as Entry;
}

/** A bare "gap 12" is of thousandths: nothing that slides or sparks stands two inches apart. */
const thou = (e: Entry, own: Figure | undefined): Entry => (e.kind === 'reading' && own && !own.measure && e.unit === 'in' && e.value === own.value && e.value >= 2 && /\b(gap|clearance|play|float|backlash|lash|runout)\b/.test(e.what) ? { ...e, value: e.value / 1000 } : e);

/** The figure that stands there: a measure where it has a unit, else the bare number. */
const figureAt = (sheet: Sheet, at: Stretch): Extract<Found, { dim: 'measure' | 'number' }> | undefined => {
  const there = sheet.found.filter(f => f.from === at.from && f.to <= at.to);
  return there.find(f => f.dim === 'measure') ?? there.find(f => f.dim === 'number');
};

const sameQuantity = (a: Reading, b: Reading): boolean => { const [x, y] = [nameWords(a.what), nameWords(b.what)]; return x.every(w => y.includes(w)) || y.every(w => x.includes(w)); };

const psi = (e: Entry): Entry => {
  if (e.kind !== 'reading' || e.unit !== 'lb') return e;
  return /\b(pressure|compression)\b/.test(e.what) ? { ...e, unit: 'psi' } : /\b(tyre|tire|tube)s?$/.test(e.part) && /^(weight|air)$/.test(e.what) || e.what === 'air' ? { ...e, what: 'pressure', unit: 'psi' } : e;
};

import { UNITS, type Dimension, type Unit } from './unit-table.ts';

const BY_NAME = new Map<string, Unit>();
for (const each of UNITS) {
  for (const spelling of [each.name.toLowerCase(), ...each.also]) BY_NAME.set(spelling, each);
}

/** A pound or a kilo pressing down is a force: the trade spells both alike. */
const AS_FORCE: Record<string, string> = { lb: 'lbf', kg: 'kgf' };

/** The unit of that spelling, or undefined. With a dimension asked, `lb` and `kg` are read as forces where a force is meant. */
export function findUnit(text: string, dimension?: Dimension): Unit | undefined {
  const key = text.trim().toLowerCase().replaceAll('.', '').replace(/\s+/g, ' ');
  const found = BY_NAME.get(key);
  if (!found || !dimension || found.dimension === dimension) return found;
  if (dimension !== 'force') return undefined;
  const force = AS_FORCE[found.name];
  return force ? BY_NAME.get(force) : undefined;
}

/** A value turned from one unit name to another of the same dimension. Both names must be known: it is for checked input. */
export function convert(value: number, from: string, to: string): number {
  if (from === to) return value;
  const a = findUnit(from);
  const b = findUnit(to);
  if (!a || !b || a.dimension !== b.dimension) throw new Error(`no way from ${from} to ${to}`);
  return ((value + a.before) * a.factor) / b.factor - b.before;
}

/** A difference of two temperatures, °F or °C degrees, without the offset of the scales. */
export const convertRise = (value: number, from: string, to: string): number =>
  from === to ? value : to === '°C' ? value / 1.8 : value * 1.8;

import type { SumResult } from './answer.ts';
import { convert, convertRise } from './units.ts';

/** The same figure in the other unit system. */
const PARTNER: Record<string, string> = {
  in: 'mm',
  ft: 'm',
  yd: 'm',
  mi: 'km',
  mil: 'µm',
  mm: 'in',
  cm: 'in',
  m: 'ft',
  km: 'mi',
  µm: 'mil',
  'sq in': 'cm²',
  'sq ft': 'm²',
  'm²': 'sq ft',
  'cm²': 'sq in',
  'mm²': 'sq in',
  'sq yd': 'm²',
  acre: 'ha',
  ha: 'acre',
  'in³': 'mL',
  mL: 'fl oz',
  gal: 'L',
  qt: 'L',
  pt: 'mL',
  'fl oz': 'mL',
  L: 'qt',
  'imp gal': 'L',
  'm³': 'ft³',
  'ft³': 'L',
  cup: 'mL',
  'imp pt': 'mL',
  lb: 'kg',
  kg: 'lb',
  oz: 'g',
  g: 'oz',
  ton: 'kg',
  t: 'lb',
  'long ton': 'kg',
  lbf: 'N',
  N: 'lbf',
  kN: 'lbf',
  kgf: 'lbf',
  'lb-ft': 'N·m',
  'lb-in': 'N·m',
  'N·m': 'lb-ft',
  'kgf·m': 'lb-ft',
  'kgf·cm': 'lb-in',
  psi: 'kPa',
  bar: 'psi',
  kPa: 'psi',
  MPa: 'psi',
  Pa: 'psi',
  atm: 'psi',
  'kgf/cm²': 'psi',
  inHg: 'kPa',
  inH2O: 'kPa',
  hp: 'kW',
  kW: 'hp',
  PS: 'hp',
  W: 'hp',
  mph: 'km/h',
  'km/h': 'mph',
  'm/s': 'ft/min',
  'ft/min': 'm/s',
  'in/s': 'm/s',
  '°F': '°C',
  '°C': '°F',
  gpm: 'L/min',
  'L/min': 'gpm',
  cfm: 'L/min',
};

/** Rounded to so many decimals, without a negative zero. */
export const round = (value: number, decimals: number): number => Number(value.toFixed(decimals)) + 0;

/** Rounded to so many significant figures. */
export const significant = (value: number, figures: number): number => Number(value.toPrecision(figures));

export const result = (name: string, value: number, unit: string, decimals: number, note?: string): SumResult =>
  note ? { name, value: round(value, decimals), unit, note } : { name, value: round(value, decimals), unit };

export const named = (name: string, value: string, unit = ''): SumResult => ({ name, value, unit });

/** Forces are spelt `lb` in the trade, not lbf. */
const spelt = (unit: string): string => (unit === 'lbf' ? 'lb' : unit === 'kgf' ? 'kg' : unit);

/** A figure in the unit asked and then in the other system, each to its decimals. */
export function pair(name: string, value: number, unit: string, decimals: number, otherDecimals: number, note?: string): SumResult[] {
  const partner = PARTNER[unit];
  const asked = result(name, value, spelt(unit), decimals, note);
  return partner ? [asked, result(name, convert(value, unit, partner), spelt(partner), otherDecimals, note)] : [asked];
}

/** A rise or fall of temperature (a difference, not a reading) in °F and °C degrees. */
export const risePair = (name: string, value: number, unit: string, decimals = 0, note?: string): SumResult[] => {
  const other = unit === '°C' ? '°F' : '°C';
  return [result(name, value, unit, decimals, note), result(name, convertRise(value, unit, other), other, decimals, note)];
};

import type { Entry } from '../../../domain/model/entry.ts';
import { unitOf } from '../../dimensions/measure/units.ts';
import type { Sheet } from '../../types.ts';
import { BY_UNIT } from '../../words/gauging.ts';
import type { Told } from '../telling.ts';

/** What a film is measured on: a mil is a thousandth of an inch there, and a millimetre else. Of 241 annotated readings beside such a word that speak of no paint, 233 were in millimetres and one in mils. */
const FILM = /\b(?:paint|film|coats?|primer|undercoat|topcoat|enamel|microns?)/;
/** Where pounds press, and where they weigh or pull. Of 135 annotated readings in pounds of the first kind, six were weights. */
const PRESSED = /\b(?:compression|pressure|gauge|tested|pressured|pressurised|pressurized|pumped|air|aired|inflated|relief|steam|tyres?|tires?|blows?|blew|pops?|popped|lifts at|lifted at|cracks at|held|holds|holding)\b/, WEIGHED = /\b(?:weigh\w*|scales?|pulls?|pull|springs?|loads?|loaded|lift|hoist|slings?|chains?|ounces?|tons?|kilos?|sandbags?|sugar)\b/;

/** What else is measured in the units of torque: all but 9 of 1,319 annotated readings in them are of torque itself. */
const TURNED = /\b(?:torque|preload|drag|slips?|breakaway|lets? go)\b/;

/** "tested it at eight pounds", "sixty mil of play": a reading in the unit that such figures are in. */
export function inUnitMeant(sheet: Sheet, x: Told): Told {
  const e = x.entry;
  if (e.kind === 'reading' && e.unit !== undefined && BY_UNIT[e.unit] && unitOf(e.what) === e.unit) return as(x, e.unit, BY_UNIT[e.unit]!); // "88 psi" measures no psi
  if (e.kind === 'reading' && /^(?:lb-ft|N·m)$/.test(e.unit ?? '') && !TURNED.test(e.what)) return as(x, e.unit!, 'torque');
  if (e.kind !== 'reading' || e.unit !== 'lb' && e.unit !== 'mil') return x;
  const said = sheet.tokens.map(t => t.low).join(' ');
  if (e.unit === 'mil') return FILM.test(said) ? x : as(x, 'mm', e.what === 'film' ? 'size' : e.what);
  return PRESSED.test(said) && !WEIGHED.test(said) ? as(x, 'psi', e.what === 'weight' ? (/\bcompression/.test(said) ? 'compression' : 'pressure') : e.what) : x;
}

const as = (x: Told, unit: string, what: string): Told => ({ ...x, entry: { ...x.entry, unit, what } as Entry });

import type { Sheet } from '../../types.ts';
import { singular } from '../../words/nouns.ts';
import { COUNTED } from '../../words/quantities.ts';
import type { Figure } from './figures.ts';
import type { State } from './gauge-state.ts';

/** Units by figure: a bare one takes that of the figure before it, else the next one's ("18, 20 and 19 thou"). */
export function unitsOf(figures: readonly Figure[], state: State): (string | undefined)[] {
  return figures.map((f, n) => {
    if (f.unit) return f.unit;
    const near = figures.slice(0, n).findLast(x => x.unit), next = figures.slice(n + 1).find(x => x.unit);
    const before = near?.unit ?? state.unit, small = near ? near.value < 0.1 : state.small === true;
    if (before) return thouNeeded(before, f, small) ? undefined : before;
    return next?.unit && !thouNeeded(next.unit, f, next.value < 0.1) ? next.unit : undefined;
  });
}

/** "twelve thou, fifteen", "18, 20 and 19 thou": a whole number beside thousandths means thousandths. */
export function inThousandths(figures: Figure[], state: State, sheet: Sheet): void {
  figures.forEach((f, n) => {
    if (COUNTED.has(singular(sheet.tokens[f.to]?.low ?? ''))) return; // "three shims and fourteen thou"
    const beside = figures.slice(0, n).findLast(x => x.unit) ?? (state.unit ? undefined : figures.slice(n + 1).find(x => x.unit));
    if (!f.bare || !Number.isInteger(f.value) || f.value < 1 || !(beside ? beside.thou : state.unit === 'in' && state.small && f.value > 1)) return;
    f.value = Math.round(f.value * 100) / 100_000; f.unit = 'in'; f.thou = true;
  });
}
/** A whole number after a few thousandths is no inches. */
const thouNeeded = (unit: string, f: Figure, small: boolean): boolean => unit === 'in' && small && Number.isInteger(f.value) && f.value > 1;

const PRESSED = /\b(pressure|compression|relief|oil pump|injectors?|pop tested|tested .*at|gauge|boiler|steam|hydraulics?|pressure[- ]tested|tyres?|tires?|(cracks?|cracked|blows?|blew|lifts?|lifted|pops?|popped)( off| open)? at|pump(s|ed|ing)? up to|pounds of air|(blew|blown|pumped|aired|inflated) .*up to)\b/;
const COATED = /\b(paint|painted|primer|primed|film|coats?|coating|enamel|lacquer|varnish|undercoat|topcoat|sprayed|epoxy|dry|wet|microns?|galvani\w+|reads|plated|plating)\b/;
/** Units as the bench shortens them: pounds of a pressure are pounds to the square inch, and a mil of anything but a coat is a millimetre. */
export function inFull(figures: Figure[], text: string): void {
  for (const f of figures) {
    if (f.unit === 'lb' && PRESSED.test(text)) f.unit = 'psi';
    if (f.unit === 'mil' && !COATED.test(text)) f.unit = 'mm';
  }
}

/**
 * Units as the trade says, types and mishears them, by the spelling that the contract uses. Values are regular expressions over the plain line
 * (lower case, hyphens as spaces). The order is the order of trying: a longer writing stands before one that it begins with.
 */
export const UNITS: readonly (readonly [unit: string, written: string])[] = [
  ['lb-ft', String.raw`foot ?pounds?|feet pounds|foot ?lbs?|ft ?-?/?\.? ?lbs?f?\.?|ftlbs?|lbs? ?-?/?\.? ?ft|lbf[ .]?ft|pounds?[ -]f(?:oo|ee)t|pound ft`],
  ['lb-in', String.raw`inch ?pounds?|inch ?lbs?|in ?-?\.? ?lbs?|lbs? ?-?\.? ?in(?:ch(?:es)?)?(?! (?:kilo|kg|gram|metric|tonne|ton|stone|newton))|pounds?[ -]inch(?:es)?`],
  ['N·m', String.raw`newton ?-?met(?:er|re)s?|n\.?m\.?|n m|newton mets?`],
  ['N', String.raw`newtons?`],
  ['psi', String.raw`psi|p s i|p\.s\.i\.?|pounds? (?:per|to the|a) (?:square|sq) ?inch|lbs? per (?:square|sq) ?in(?:ch)?|pounds of pressure|pounds pressure`],
  ['sq ft', String.raw`square ?f(?:oo|ee)t|sq\.? ?f(?:oo|ee)?t\.?|sqft|ft2|ft²|square ft`],
  ['sq in', String.raw`square inch(?:es)?|sq\.? ?in(?:ch(?:es)?)?\.?|in2|in²|square in`],
  ['m²', String.raw`square met(?:re|er)s?|sq\.? ?m(?:et(?:re|er)s?)?|m2|m²|square m`],
  ['mm²', String.raw`square mil(?:l(?:s|imet(?:re|er)s?)?|s)?|sq\.? ?mm|mm2|mm²|square mm|mil square`],
  ['cu in', String.raw`cubic inch(?:es)?|cu\.? ?in(?:ch(?:es)?)?|ci`],
  ['cc', String.raw`cubic cent[a-z]*|cc|ccs`],
  ['cfm', String.raw`cfm`],
  ['gpm', String.raw`gpm|gallons? (?:per|a) minute|gallons? (?:per|a) min`],
  ['L/min', String.raw`lit(?:re|er)s? (?:per|a) min(?:ute)?|l/min|lpm`],
  ['mph', String.raw`mph|miles (?:an|per) hour`],
  ['km/h', String.raw`km/h|kph|kilomet(?:re|er)s (?:an|per) hour|kmh`],
  ['rpm', String.raw`rpms?|r p m|r\.p\.m\.?|revs?(?: (?:per|a) min(?:ute)?)?|revolutions(?: (?:per|a) min(?:ute)?)?|turns a minute`],
  ['tpi', String.raw`(?:threads?|turns?|tpi|t p i)(?: (?:to|per|an?|in an?)(?: the)? inch)|tpi|threads`],
  ['AWG', String.raw`gauge|gage|guage|guages|gauges|ga\.?|awg|a w g`],
  ['thou', String.raw`thou['s]?|thous|thousandths?(?: of an inch)?|thousanths?|thousands(?: of an inch)?|thow`],
  ['µm', String.raw`microns?|µm|micromet(?:re|er)s?`],
  ['mil', String.raw`mils?|mills?`],
  ['mm', String.raw`mm\.?|mms|milli ?met(?:re|er)s?|milimet(?:re|er)s?|millimet(?:re|er)|m m`],
  ['cm', String.raw`cms?|centi ?met(?:re|er)s?`],
  ['km', String.raw`km|kms|kilomet(?:re|er)s?|klicks?`],
  ['inHg', String.raw`inches of (?:mercury|vacuum)|inhg`],
  ['in', String.raw`inch(?:es)?|inchs|"`],
  ['yd', String.raw`yards?|yds?`],
  ['ft', String.raw`foot|feet|ft\.?|'`],
  ['m', String.raw`met(?:re|er)s?`],
  ['kPa', String.raw`kpa|kilopascals?`],
  ['bar', String.raw`bars?`],
  ['Ah', String.raw`amp ?hours?|ah`],
  ['mA', String.raw`milliamps?|ma`],
  ['mV', String.raw`millivolts?|mv`],
  ['V', String.raw`volts?|v`],
  ['A', String.raw`amps?|amperes?`],
  ['MΩ', String.raw`mega? ?ohms?|megs?(?= (?:of resistance|to earth|to ground))`],
  ['kΩ', String.raw`kilo ?ohms?|k ?ohms?`],
  ['Ω', String.raw`ohms?|ω`],
  ['W', String.raw`watts?|w`],
  ['kW', String.raw`kilowatts?|kw`],
  ['hp', String.raw`horse ?power|hp|horse`],
  ['fl oz', String.raw`fl\.? ?oz|fluid ounces?`],
  ['gal', String.raw`(?:us |imperial )?gal(?:lon)?s?\.?`],
  ['qt', String.raw`quarts?|qts?\.?`],
  ['pt', String.raw`pints?|pts?\.?`],
  ['mL', String.raw`millilit(?:re|er)s?|ml|mls`],
  ['L', String.raw`lit(?:re|er)s?|ltrs?|lts?`],
  ['lb', String.raw`pounds?|lbs?\.?`],
  ['oz', String.raw`ounces?|oz\.?`],
  ['kg', String.raw`kilo(?:gram(?:me)?)?s?|kgs?\.?`],
  ['g', String.raw`gram(?:me)?s?`],
  ['t', String.raw`tonnes?`],
  ['ton', String.raw`tons?`],
  ['cwt', String.raw`hundredweight|cwt`],
  ['turns', String.raw`turns?`],
  ['kn', String.raw`knots?`],
  ['°', String.raw`degrees?|deg\.?|degs|°`],
];

/** Any unit, longest writing first; not followed by a letter. */
export const UNIT = `(?:${UNITS.map(([, w]) => w).join('|')})(?![a-z])`;

const COMPILED = UNITS.map(([unit, w]) => [unit, new RegExp(`^(?:${w})$`)] as const);
/** The contract's spelling of a written unit. */
export const unitOf = (written: string): string | undefined => COMPILED.find(([, re]) => re.test(written))?.[0];

/** Units that are a fixed part of another: a thousandth of an inch is kept in inches. */
export const inContract = (value: number, unit: string): { value: number; unit: string } =>
  unit === 'thou' ? { value: tidy(value / 1000), unit: 'in' } : { value, unit };

/** Decimal places as a person would have written them: no 0.30000000000000004. */
export const tidy = (x: number): number => Number(x.toPrecision(12));

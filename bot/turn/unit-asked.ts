import { findUnit } from '../../domain/sums/units.ts';

/** "in newton metres", "how many inch pounds": words that ask for the answer in a unit. The longest name of a unit first. */
const ASKED = /\b(?:in|into|as|how many)\s+([a-z°µ²³·/-]+(?:[ -](?:met(?:re|er)s?|pounds?|lbs?|feet|inch(?:es)?|ounces?|second|minute))?)/gi;
const SPOKEN: readonly [RegExp, string][] = [
  [/^newton[ -]?met(?:re|er)s?$|^nm$/, 'N·m'], [/^(?:foot|feet|ft)[ -]?(?:pounds?|lbs?)$/, 'lb-ft'], [/^inch[ -]?(?:pounds?|lbs?)$|^in[ -](?:pounds?|lbs?)$/, 'lb-in'],
  [/^(?:celsius|centigrade)$/, '°C'], [/^fahrenheit$/, '°F'], [/^square (?:feet|foot)$/, 'sq ft'], [/^square met(?:re|er)s?$/, 'm²'], [/^fluid ounces$/, 'fl oz'],
];

/** The unit that the words of a question ask its answer in; undefined where they ask for none. Given figures are not asked for: "14 in". */
export function unitAsked(text: string): string | undefined {
  const units = [...text.toLowerCase().matchAll(ASKED)].flatMap(([, name = '']) => {
    const last = name.trim(), first = last.split(' ')[0] ?? '';
    return SPOKEN.find(([spoken]) => spoken.test(last))?.[1] ?? named(last) ?? named(first) ?? [];
  });
  return units.at(-1);
}

/** Names of one letter are words or figures as often as units. */
const named = (text: string): string | undefined => {
  const unit = text.length > 1 && text !== 'in' ? findUnit(text)?.name : undefined;
  // A thousandth of an inch is kept in inches.
  return unit === 'mil' && /^thou/.test(text) ? 'in' : unit;
};

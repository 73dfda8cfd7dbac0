import type { Scope } from './scope.ts';

/** The scale that a text names outright. */
export const scaleNamed = (text: string): string | undefined => /\b(?:fahrenheit|farenheit)\b/.test(text) ? '°F' : /\b(?:celsius|celcius|centigrade)\b/.test(text) ? '°C' : undefined;

/** West of the Atlantic, by the clock that a note was said at. */
const AMERICAN = /-(?:0[3-9]|10):\d\d$/;

/**
 * The scale of a bare degree: as named, else that of the measures it stands beside (litres go with Celsius, gallons and quarts with Fahrenheit), else
 * what the air of a shop can be. Undefined where it may be either.
 */
export function scaleOf(scope: Scope, value: number): string | undefined {
  const named = scaleNamed(scope.text);
  if (named) return named;
  if (scope.measures('L', 'm²', 'm').length) return '°C';
  if (scope.measures('gal', 'qt').length) return '°F';
  if (value > 45) return '°F';
  return AMERICAN.test(scope.desk.sheet.ctx.at) || value < -45 ? undefined : '°C';
}

import type { SumAnswer, SumDone, SumResult } from './answer.ts';
import { SUMS } from './catalogue.ts';
import { significant } from './results.ts';
import { convert, findUnit } from './units.ts';

/** As many figures as the results that they are made of hold. */
const CONVERTED_FIGURES = 5;

const BY_NAME = new Map(SUMS.map((sum) => [sum.of, sum]));

/**
 * Works out a shop sum. Never throws on what a person said: what can't be worked out is a refusal with its reason, what is missing is one question.
 * @param of a name of the catalogue (`torque`, `belt`, …)
 * @param given numbers and strings as the note gave them, a unit beside each in the field of the same name plus `Unit`;
 *   `unit` anywhere asks for the answer in that unit where the sum gives it
 */
export function computeSum(of: string, given: Record<string, unknown>): SumAnswer {
  const sum = BY_NAME.get(of);
  if (!sum) return { kind: 'sum', of, refused: `I have no sum called "${of}".` };
  const answer = sum.compute(given);
  if (!('results' in answer)) return answer;
  if (!answer.results.every(isSound)) return { kind: 'sum', of, refused: 'Those figures are too large or too small to work with.' };
  return typeof given['unit'] === 'string' ? unitFirst(answer, given['unit']) : answer;
}

const isSound = ({ value }: SumResult): boolean =>
  typeof value === 'string' || (Array.isArray(value) ? value : [value]).every((each) => Number.isFinite(each));

/** Brings the results in the unit asked before the others of the same name; one that was worked out in other units alone is converted. */
function unitFirst(answer: SumDone, asked: string): SumDone {
  const unit = findUnit(asked)?.name ?? asked;
  const names = [...new Set(answer.results.map(({ name }) => name))];
  const results = names.flatMap((name) => {
    const same = answer.results.filter((each) => each.name === name);
    const inUnit = same.filter((each) => each.unit === unit);
    return [...(inUnit.length ? inUnit : converted(same[0], unit)), ...same.filter((each) => each.unit !== unit)];
  });
  return { ...answer, results };
}

/** A temperature is left alone: a rise of so many degrees is not a reading of so many. */
function converted(first: SumResult | undefined, unit: string): SumResult[] {
  const [from, to] = [findUnit(first?.unit ?? ''), findUnit(unit)];
  if (!first || typeof first.value !== 'number' || !from || !to || from.dimension !== to.dimension || from.dimension === 'temperature') return [];
  return [{ ...first, value: significant(convert(first.value, from.name, to.name), CONVERTED_FIGURES), unit: to.name }];
}

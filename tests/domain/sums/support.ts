import { expect, it } from 'vitest';
import { sumAnswer, type SumResult } from '../../../domain/sums/answer.ts';
import { computeSum } from '../../../domain/sums/compute.ts';

/** One published figure: where it is printed, what is given, which result it is, and the tolerance that takes up the printing's rounding. */
export interface Case {
  source: string;
  of: string;
  given: Record<string, unknown>;
  name: string;
  unit?: string;
  note?: string;
  is: number | string;
  within?: number;
}

/** The answer's results; fails the test with the answer itself where there are none. */
export function results(of: string, given: Record<string, unknown>): SumResult[] {
  const answer = sumAnswer.parse(computeSum(of, given));
  if (!('results' in answer)) throw new Error(`no result: ${JSON.stringify(answer)}`);
  return answer.results;
}

/** The first result of that name (and unit, and note where told). */
export function valueOf(of: string, given: Record<string, unknown>, name: string, unit?: string, note?: string): SumResult['value'] {
  const found = results(of, given).find(
    (each) => each.name === name && (!unit || each.unit === unit) && (!note || each.note?.includes(note)),
  );
  if (!found) throw new Error(`no ${name} ${unit ?? ''} among ${JSON.stringify(results(of, given))}`);
  return found.value;
}

export function numberOf(of: string, given: Record<string, unknown>, name: string, unit?: string, note?: string): number {
  const value = valueOf(of, given, name, unit, note);
  if (typeof value !== 'number') throw new Error(`${name} is no number: ${JSON.stringify(value)}`);
  return value;
}

/** One test a case, its source in the title. */
export function checkAll(cases: readonly Case[]): void {
  for (const { source, of, given, name, unit, note, is, within } of cases) {
    it(`${of} ${JSON.stringify(given)} ${name} = ${is} ${unit ?? ''} (${source})`, () => {
      const value = valueOf(of, given, name, unit, note);
      if (typeof is === 'string') expect(value).toBe(is);
      else expect(Math.abs(Number(value) - is), `got ${value}`).toBeLessThanOrEqual((within ?? 0) + 1e-9);
    });
  }
}

export function refusal(of: string, given: Record<string, unknown>): string {
  const answer = sumAnswer.parse(computeSum(of, given));
  if (!('refused' in answer)) throw new Error(`not refused: ${JSON.stringify(answer)}`);
  return answer.refused;
}

export function needed(of: string, given: Record<string, unknown>): string[] {
  const answer = sumAnswer.parse(computeSum(of, given));
  if (!('needs' in answer)) throw new Error(`nothing asked: ${JSON.stringify(answer)}`);
  expect(answer.question.endsWith('?') || answer.question.endsWith('.')).toBe(true);
  return answer.needs;
}

/** US business mileage rates, $ a mile, from each date on. Source: IRS notices as reported by three pages. */
const RATES: readonly (readonly [from: string, dollars: number])[] = [
  ['2019-01-01', 0.58],
  ['2020-01-01', 0.575],
  ['2021-01-01', 0.56],
  ['2022-01-01', 0.585],
  ['2022-07-01', 0.625],
  ['2023-01-01', 0.655],
  ['2024-01-01', 0.67],
  ['2025-01-01', 0.7],
  ['2026-01-01', 0.725],
];
const LAST_DAY = '2026-12-31';

interface MileageRate {
  dollars: number;
  from: string;
  settled: boolean;
}

/** The rate of a day (YYYY-MM-DD), or of the newest year where no day is given; undefined before the table. `settled` is false past its end. */
export function mileageRate(day?: string): MileageRate | undefined {
  const found = RATES.filter(([from]) => day === undefined || from <= day).at(-1);
  return found && { dollars: found[1], from: found[0], settled: day === undefined || day <= LAST_DAY };
}

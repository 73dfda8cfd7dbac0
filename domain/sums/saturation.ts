/**
 * Boiling temperature of water at an absolute pressure: IAPWS-IF97 region 4, backward equation, 0.000611 to 22.06 MPa.
 * Coefficients from memory of the standard, held by its three check values (0.1, 1 and 10 MPa).
 */
const N = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7, 0.1491510861353e2,
  -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const;

/** @param pascals absolute pressure @returns kelvin */
export function boilingPoint(pascals: number): number {
  const [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = N;
  const beta = (pascals / 1e6) ** 0.25;
  const e = beta ** 2 + n3 * beta + n6;
  const f = n1 * beta ** 2 + n4 * beta + n7;
  const g = n2 * beta ** 2 + n5 * beta + n8;
  const d = (2 * g) / (-f - Math.sqrt(f ** 2 - 4 * e * g));
  return (n10 + d - Math.sqrt((n10 + d) ** 2 - 4 * (n9 + n10 * d))) / 2;
}

/** Pressure of the standard atmosphere at an altitude in metres, pascals. ICAO standard atmosphere, troposphere. */
export const airPressure = (metres: number): number => 101_325 * (1 - 2.25577e-5 * metres) ** 5.25588;

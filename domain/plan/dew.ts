/** Magnus coefficients of Alduchov & Eskridge 1996, J. Appl. Meteorol. 35:601-609, over water; good to ±0.35 °C from -40 to 60 °C. */
const A = 17.625;
const B = 243.04;

/** Dew point (°C) of air at `tempC` with relative humidity `rh` (%, over 0 up to 100). */
export function dewPoint(tempC: number, rh: number): number {
  const g = Math.log(rh / 100) + (A * tempC) / (B + tempC);
  return (B * g) / (A - g);
}

/** The inverse: relative humidity (%) of air at `tempC` with dew point `dewC`. */
export function relativeHumidity(tempC: number, dewC: number): number {
  return 100 * Math.exp((A * dewC) / (B + dewC) - (A * tempC) / (B + tempC));
}

/** One block of a forecast; `hours` is 1, or 6 further out. Units are in the names; null where the service gives none. */
export interface ForecastHour {
  startUtc: string;
  hours: number;
  tempC: number;
  dewC: number;
  rh: number;
  popPct: number | null;
  precipMm: number;
  windMs: number;
  gustMs: number | null;
}

/** What the person said about a day (YYYY-MM-DD); it wins over any service. */
export interface SaidSky { date: string; sky: 'rain' | 'dry' | 'frost' | 'wind' | 'hot' | 'snow' }

/** How likely a wet day is after a dry and after a wet one, and a day's usual temperature by month (January first). */
export interface Climate {
  wetAfterDry: number;
  wetAfterWet: number;
  dayTempC?: readonly number[];
}

export interface Weather {
  forecast?: readonly ForecastHour[];
  said?: readonly SaidSky[];
  climate?: Climate;
  /** A heated shop: limits of temperature do not hold up work indoors. */
  heated?: boolean;
}

/** A temperate, neither dry nor rainy place; from memory, to be replaced by the place's own figures. */
export const USUAL_CLIMATE: Climate = { wetAfterDry: 0.25, wetAfterWet: 0.55 };

/** Answers the block that covers a moment (ms UTC), or `undefined` beyond the forecast. Blocks may come in any order. */
export function forecastAt(forecast: readonly ForecastHour[]): (at: number) => ForecastHour | undefined {
  const blocks = forecast
    .map((block) => ({ block, from: Date.parse(block.startUtc), to: Date.parse(block.startUtc) + block.hours * 3_600_000 }))
    .sort((a, b) => a.from - b.from);
  return (at) => {
    let low = 0;
    let high = blocks.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (blocks[middle]!.to > at) high = middle;
      else low = middle + 1;
    }
    const found = blocks[low];
    return found && found.from <= at ? found.block : undefined;
  };
}

/** Rain enough to stop work: a tenth of a millimetre an hour, or at least an even chance. Common practice, no source. */
export function isWet({ precipMm, hours, popPct }: ForecastHour): boolean {
  return precipMm / hours >= 0.1 || (popPct ?? 0) >= 50;
}

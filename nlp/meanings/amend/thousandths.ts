/** A bare figure said of one that was in thousandths is of them too: "thirteen" after "twelve thou". */
export const asBefore = (n: number, was: { unit?: string | undefined; value: number }): number => (was.unit === 'in' && was.value < 0.3 && n >= 1 ? n / 1000 : n);

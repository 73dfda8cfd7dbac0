/** Square feet that one US gallon covers at one mil dry with 100 % solids: 231 in³ over 0.144 in² a mil. 231,000/144. */
const SQ_FT_MIL_PER_GALLON = 231_000 / 144;

/** Square feet a gallon covers. @param solids percent by volume @param mils dry film */
export const spread = (solids: number, mils: number): number => (SQ_FT_MIL_PER_GALLON * solids) / 100 / mils;

/** Wet film that dries to `dry`, same unit. @param thinner percent added by volume */
export const wetFilm = (dry: number, solids: number, thinner: number): number => (dry * (1 + thinner / 100)) / (solids / 100);

export const dryFilm = (wet: number, solids: number, thinner: number): number => (wet * (solids / 100)) / (1 + thinner / 100);

import { z } from 'zod';
import { PAINT_CAUTION } from './coverage.ts';
import { dryFilm, wetFilm } from './film.ts';
import { amount, measure, sharedUnit } from './given.ts';
import { pair } from './results.ts';
import { ask, defineSum } from './sum.ts';

export const filmThickness = defineSum({
  of: 'filmThickness',
  answers: 'The wet film that dries to a thickness, or the dry film a wet one leaves.',
  fields: {
    dry: 'dry film wanted',
    wet: 'wet film on the gauge',
    solids: 'percent by volume',
    thinner: 'percent added by volume (none where not said)',
  },
  given: z.object({
    ...measure('dry', 'length'),
    ...measure('wet', 'length'),
    solids: amount().max(100, { error: 'cannot be over 100' }).optional(),
    thinner: amount('zero or more').optional(),
  }),
  work(given) {
    if (given.solids === undefined) return ask('solids', 'What are the volume solids, in percent?');
    if (given.dry === undefined && given.wet === undefined) return ask('dry', 'How thick a dry film?');
    const assumed = given.thinner === undefined ? ['no thinner; say the percent if there is'] : [];
    const unit = sharedUnit(given, ['dry', 'wet'], 'mil', 'microns', assumed);
    const thinner = given.thinner ?? 0;
    const show = (name: string, value: number) => pair(name, value, unit, unit === 'mil' ? 2 : 1, unit === 'mil' ? 0 : 2);
    return {
      results:
        given.dry !== undefined
          ? show('wet', wetFilm(given.dry, given.solids, thinner))
          : show('dry', dryFilm(given.wet ?? 0, given.solids, thinner)),
      basis: 'wet = dry x (1 + thinner) over solids',
      assumed,
      caution: PAINT_CAUTION,
      source: 'film thickness sum of paint data sheets',
    };
  },
});

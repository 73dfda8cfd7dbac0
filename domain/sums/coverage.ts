import { z } from 'zod';
import { amount, measure } from './given.ts';
import { spread } from './film.ts';
import { pair, result, round } from './results.ts';
import { ask, defineSum, type Outcome } from './sum.ts';
import { convert } from './units.ts';

const percent = () => amount('zero or more').max(100, { error: 'cannot be over 100' }).optional();
export const PAINT_CAUTION =
  "Isocyanate hardeners want supplied air, all solvents air and no flame; recoat, flash and pot life by the paint's own data sheet.";
const METRIC = ['µm', 'mm', 'm²', 'cm²', 'L', 'mL', 'mm²'];
const given = z.object({
  ...measure('area', 'area'),
  ...measure('thickness', 'length'),
  ...measure('volume', 'volume'),
  solids: percent(),
  loss: percent(),
  coats: z.number().int({ error: 'must be a whole number' }).positive({ error: 'must be over zero' }).optional(),
});
type Given = z.infer<typeof given>;

export const coverage = defineSum({
  of: 'coverage',
  answers: 'How much paint an area takes, or how far it goes.',
  fields: {
    area: 'to be covered',
    solids: 'percent by volume, from the data sheet',
    thickness: 'dry film of a coat, mil or µm',
    coats: 'how many (1 where not said)',
    loss: 'percent lost in spraying (none where not said)',
    volume: 'paint on hand (area asked)',
  },
  given,
  work(said) {
    if (said.solids === undefined) return ask('solids', 'What are the volume solids, in percent? The data sheet has it.');
    if (said.solids === 0) return ask('solids', 'Volume solids cannot be nothing: what does the data sheet say?');
    if (said.thickness === undefined) return ask('thickness', 'How thick a dry film, in mils?');
    const metric = METRIC.includes(said.areaUnit ?? '') || (said.areaUnit === undefined && METRIC.includes(said.thicknessUnit ?? ''));
    const mils = convert(said.thickness, said.thicknessUnit ?? (metric ? 'µm' : 'mil'), 'mil');
    const left = 1 - (said.loss ?? 0) / 100;
    if (left <= 0) return ask('loss', 'All of it cannot be lost: how much is?');
    return finish(said, { mils, perGallon: spread(said.solids, mils) * left, metric });
  },
});

interface Film {
  mils: number;
  perGallon: number;
  metric: boolean;
}

function finish(said: Given, { mils, perGallon, metric }: Film): Outcome {
  const coats = said.coats ?? 1;
  const perLitre = convert(convert(perGallon, 'sq ft', 'm²'), 'L', 'gal');
  const goes = metric
    ? [result('spread', perLitre, 'm²/L', 2), result('spread', perGallon, 'sq ft/gal', 1)]
    : [result('spread', perGallon, 'sq ft/gal', 1), result('spread', perLitre, 'm²/L', 2)];
  const need =
    said.area === undefined
      ? []
      : gallons((convert(said.area, said.areaUnit ?? (metric ? 'm²' : 'sq ft'), 'sq ft') * coats) / perGallon, metric);
  const covers = said.area !== undefined ? [] : areaOf(said, perGallon / coats, metric);
  return {
    results: [...need, ...covers, ...goes],
    basis: `${said.solids} % solids by volume at ${round(mils, 2)} mil dry${said.area === undefined && said.volume === undefined ? (metric ? ', one litre' : ', one gallon') : ''}`,
    assumed: [
      ...(said.thicknessUnit ? [] : [metric ? 'film in micrometres' : 'film in mils; say microns if not']),
      ...(said.area !== undefined && !said.areaUnit ? [metric ? 'square metres' : 'square feet; say square metres if not'] : []),
      ...(said.coats === undefined ? ['one coat; say how many'] : []),
      ...(said.loss === undefined ? ['nothing lost; spraying loses 30 % and more, say how much'] : []),
    ],
    caution: PAINT_CAUTION,
    source: '1,604 sq ft a gallon at one mil (231,000/144), as in paint data sheets',
  };
}

const gallons = (amountNeeded: number, metric: boolean) =>
  metric
    ? pair('volume', convert(amountNeeded, 'gal', 'L'), 'L', 2, 2)
    : [...pair('volume', amountNeeded, 'gal', 2, 2), result('volume', amountNeeded * 4, 'qt', 2)];

function areaOf(said: Given, perGallon: number, metric: boolean) {
  const volume = convert(said.volume ?? 1, said.volumeUnit ?? (metric ? 'L' : 'gal'), 'gal');
  return metric ? pair('area', convert(perGallon * volume, 'sq ft', 'm²'), 'm²', 2, 1) : pair('area', perGallon * volume, 'sq ft', 1, 2);
}

import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { sweptVolume } from './displacement.ts';
import { amount, measure, sharedUnit, valueIn } from './given.ts';
import { pair, result } from './results.ts';
import { ask, defineSum, refuse } from './sum.ts';
import { convert } from './units.ts';

export const compression = defineSum({
  of: 'compression',
  answers: 'Compression ratio from the chamber, or the chamber for a ratio.',
  fields: { bore: 'bore', stroke: 'stroke', chamber: 'volume over the piston at the top, in³ or cc', ratio: 'ratio (chamber asked)' },
  given: z.object({
    ...measure('bore', 'length'),
    ...measure('stroke', 'length'),
    ...measure('chamber', 'volume'),
    ratio: amount().optional(),
  }),
  work(said) {
    if (said.bore === undefined) return ask('bore', 'What is the bore?');
    if (said.stroke === undefined) return ask('stroke', 'What is the stroke?');
    if (said.chamber === undefined && said.ratio === undefined) return ask('chamber', 'What is the chamber volume, gasket and all?');
    const assumed: string[] = [];
    const unit = sharedUnit(said, ['bore', 'stroke'], 'in', 'mm', assumed);
    const given = { ...said, boreUnit: said.boreUnit ?? unit, strokeUnit: said.strokeUnit ?? unit };
    const swept = sweptVolume(valueIn(given, 'bore', 'in') ?? 0, valueIn(given, 'stroke', 'in') ?? 0);
    const metric = unit !== 'in';
    if (said.ratio !== undefined && said.ratio <= 1) return refuse('A compression ratio is over 1.');
    const chamber =
      said.chamber === undefined
        ? swept / ((said.ratio ?? 2) - 1)
        : convert(said.chamber, said.chamberUnit ?? (metric ? 'mL' : 'in³'), 'in³');
    const volumes = (name: string, cubic: number) =>
      metric
        ? [...pair(name, convert(cubic, 'in³', 'mL'), 'mL', 1, 2).slice(0, 1), result(name, cubic, 'in³', 2)]
        : pair(name, cubic, 'in³', 2, 1);
    const ratio = result('ratio', (swept + chamber) / chamber, ':1', 2);
    return {
      results:
        said.chamber === undefined
          ? [...volumes('chamber', chamber), ...volumes('swept', swept), ratio]
          : [ratio, ...volumes('swept', swept)],
      basis: '(swept + chamber) over chamber, one cylinder',
      assumed: [...assumed, 'the chamber holds gasket, dish and head together'],
      caution: MANUAL_FIRST,
      source: 'definition of compression ratio',
    };
  },
});

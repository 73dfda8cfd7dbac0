import { z } from 'zod';
import { gradeTitle, readBolt } from './bolt.ts';
import { pair } from './results.ts';
import { defineSum } from './sum.ts';
import { MANUAL_FIRST } from './answer.ts';

export const boltStrength = defineSum({
  of: 'boltStrength',
  answers: 'Proof, yield and breaking load of a bolt.',
  fields: { size: 'thread', grade: 'grade or class' },
  given: z.object({ size: z.string().optional(), grade: z.coerce.string().optional() }),
  work(given) {
    const read = readBolt(given);
    if ('answer' in read) return read.answer;
    const { thread, strength, notes } = read.bolt;
    const inch = thread.system === 'inch';
    const load = (name: string, stress: number | undefined) =>
      stress === undefined ? [] : pair(name, stress * thread.area, inch ? 'lbf' : 'N', 0, 0);
    return {
      results: [
        ...load('proofLoad', strength.proof),
        ...load('yieldLoad', strength.yield),
        ...load('tensileLoad', strength.tensile),
        ...(inch ? pair('stressArea', thread.area, 'sq in', 4, 3) : pair('stressArea', thread.area, 'mm²', 1, 4)),
      ],
      basis: `${gradeTitle(read.bolt)}, ${thread.label}, stress area times stress`,
      assumed: notes,
      caution: `A straight pull on a new bolt: not a rating for lifting. ${MANUAL_FIRST}`,
      source: `${read.bolt.grade.standard} strengths, ${inch ? 'ASME B1.1' : 'ISO 898-1'} stress areas`,
    };
  },
});

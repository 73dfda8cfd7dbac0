import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { gradeTitle, readBolt, type Bolt } from './bolt.ts';
import { measure, valueIn } from './given.ts';
import { NUT_FACTORS } from './nut-factor.ts';
import { named, result } from './results.ts';
import { defineSum, type Outcome } from './sum.ts';
import { torqueResults } from './torque.ts';

export const substitute = defineSum({
  of: 'substitute',
  answers: 'Whether another bolt is at least the old one in thread, class and length, and what it is then tightened to.',
  fields: {
    size: 'old thread',
    grade: 'old grade',
    newSize: 'new thread (the old one where not said)',
    newGrade: 'new grade',
    length: 'old length',
    newLength: 'new length',
    joint: '"shear" for a shear bolt',
  },
  given: z.object({
    size: z.string().optional(),
    grade: z.coerce.string().optional(),
    newSize: z.string().optional(),
    newGrade: z.coerce.string().optional(),
    joint: z.string().optional(),
    ...measure('length', 'length'),
    ...measure('newLength', 'length'),
  }),
  work(given) {
    const old = readBolt(given);
    if ('answer' in old) return old.answer;
    const fresh = readBolt({ size: given.newSize ?? given.size, grade: given.newGrade }, { size: 'newSize', grade: 'newGrade' });
    if ('answer' in fresh) return fresh.answer;
    const shorter = (valueIn(given, 'newLength', 'in') ?? Infinity) < (valueIn(given, 'length', 'in') ?? 0);
    return compare(old.bolt, fresh.bolt, /shear/i.test(given.joint ?? ''), shorter);
  },
});

function verdict(old: Bolt, fresh: Bolt, shear: boolean, shorter: boolean): string {
  if (old.thread.label !== fresh.thread.label) return 'no: the thread differs';
  if (shear && old.grade.name !== fresh.grade.name) return 'no: a shear bolt is replaced only by the same class';
  if (fresh.strength.tensile < old.strength.tensile || (fresh.strength.proof ?? 0) < (old.strength.proof ?? 0)) return 'no: it is weaker';
  if (shorter) return 'no: it is shorter';
  return fresh.grade.name === old.grade.name ? 'same class' : 'higher class, tightened to the old one';
}

function compare(old: Bolt, fresh: Bolt, shear: boolean, shorter: boolean): Outcome {
  const said = verdict(old, fresh, shear, shorter);
  const ratio = (fresh.strength.tensile * fresh.thread.area) / (old.strength.tensile * old.thread.area);
  const sameSystem = old.thread.system === fresh.thread.system;
  return {
    results: [
      named('verdict', said),
      ...(said.startsWith('no') ? [] : torqueResults(old, NUT_FACTORS.dry.k)),
      ...(sameSystem ? [result('strength', ratio * 100, '%', 0, 'breaking load of the new against the old')] : []),
    ],
    basis: `${gradeTitle(fresh)} for ${gradeTitle(old)}, ${old.thread.label}, torque of the old class, dry, 75 % of proof`,
    assumed: [...old.notes, ...(shear ? [] : ['a clamping bolt; say shear if it is a shear bolt'])],
    caution: `Keep the plain shank, not the thread, in the shear plane, and a nut of at least the bolt's class. ${MANUAL_FIRST}`,
    source:
      "SAE J429, ISO 898-1; rules of a maker's manual (same or higher class, shear bolts identical); shank and nut: common practice, no source",
  };
}

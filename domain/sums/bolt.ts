import { BOLT_GRADES, INCH_CHOICES, METRIC_CHOICES, type BoltGrade, type Strength } from './bolt-grades.ts';
import { inchFraction } from './inch-fraction.ts';
import { digitsForWords } from './number-words.ts';
import { ask, refuse, type Outcome } from './sum.ts';
import { parseThread, type Thread } from './thread.ts';

/** A bolt that the tables know: thread, grade and the strength of that grade at that size (psi or MPa). */
export interface Bolt {
  thread: Thread;
  grade: BoltGrade;
  strength: Strength;
  notes: string[];
}
type BoltReading = { bolt: Bolt } | { answer: Outcome };

interface BoltGiven {
  size?: string;
  grade?: string;
  length?: number;
}

/** Six inches: above it a grade 2 bolt is only held to grade 1. SAE J429. */
const LONGEST_GRADE_2 = 6;

/**
 * What is known of a bolt, or the question or refusal that stands in the way.
 * @param given size and grade as said; length in inches where known
 * @param names the fields to ask for, where they aren't called size and grade
 */
export function readBolt(given: BoltGiven, names = { size: 'size', grade: 'grade' }): BoltReading {
  if (!given.size) return { answer: ask(names.size, 'What size and thread is the bolt?') };
  const thread = parseThread(given.size);
  if ('problem' in thread) return { answer: refuse(`${thread.problem}.`) };
  if (!given.grade) return { answer: askGrade(thread, names.grade) };
  const found = findGrade(given.grade, thread.system);
  if ('answer' in found) return found;
  const { grade } = found;
  const longTwo = grade.name === '2' && (given.length ?? 0) > LONGEST_GRADE_2;
  const bands = longTwo ? (BOLT_GRADES[0] as BoltGrade).bands : grade.bands;
  const strength = bands.find((each, i) => thread.d <= each.to && (i > 0 ? thread.d > each.from : thread.d >= each.from));
  if (!strength)
    return { answer: refuse(`${grade.standard} ${grade.name} is not listed for ${thread.label}: its sizes run ${range(grade)}.`) };
  const notes = thread.note ? [thread.note] : [];
  if (longTwo) notes.push('over 6 in long a grade 2 bolt is held to grade 1 strength only');
  return { bolt: { thread, grade, strength, notes } };
}

function range({ bands, system }: BoltGrade): string {
  const [from, to] = [bands[0]?.from ?? 0, bands.at(-1)?.to ?? 0];
  return system === 'inch' ? `${inchFraction(from)} to ${inchFraction(to)} in` : `M${from} to M${to}`;
}

function askGrade(thread: Thread, field: string): Outcome {
  return thread.system === 'inch'
    ? ask(field, 'What grade: how many lines on the head? None is 2, three is 5, six is 8.', INCH_CHOICES)
    : ask(field, 'What class is stamped on the head?', METRIC_CHOICES);
}

/** "grade 5", "Gr. 8", "class 10.9", "SAE J429 5", "A193 B7", "307A" -> the bare name of the grade. */
function tidyGrade(text: string): string {
  const plain = digitsForWords(text.toLowerCase())
    .toUpperCase()
    .replace(/SAE|J\s*429|ISO|898(-1)?|ASTM|A\s*193|GRADE|CLASS|METRIC|GR\b\.?|CL\b\.?|PROPERTY|#|\(.*\)/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  if (/^A?\s*-?307/.test(plain)) return 'A307';
  if (/^A?\s*-?449/.test(plain)) return 'A449';
  return plain
    .replace(/^(\d+)\.0$/, '$1')
    .replace(/^(\d+)\s(\d)$/, '$1.$2')
    .replace(/\s/g, '');
}

function findGrade(said: string, system: Thread['system']): { grade: BoltGrade } | { answer: Outcome } {
  const name = tidyGrade(said);
  const grade = BOLT_GRADES.find((each) => each.name === name);
  if (grade?.system === system) return { grade };
  if (/A[24](-?\d\d)?$|18-8|304|316|STAINLESS|SS/.test(name)) {
    return {
      answer: refuse(
        'Stainless bolts are not in these tables: they gall and have no SAE or 8.8-style proof load. Go by the maker of the bolt.',
      ),
    };
  }
  if (grade) {
    const other = grade.system === 'inch' ? 'an inch grade and the bolt is metric' : 'a metric class and the bolt is inch';
    return { answer: refuse(`${grade.name} is ${other}: look at the head again.`) };
  }
  const known = BOLT_GRADES.filter((each) => each.system === system)
    .map((each) => each.name)
    .join(', ');
  return { answer: refuse(`There is no ${system === 'inch' ? 'grade' : 'class'} "${said}" that I know; I have ${known}.`) };
}

/** Stress the bolt is tightened against: proof, or yield where the standard prints no proof load. In psi or MPa. */
export const proofOf = ({ strength }: Bolt): { stress: number; word: 'proof' | 'yield' } =>
  strength.proof !== undefined ? { stress: strength.proof, word: 'proof' } : { stress: strength.yield ?? 0, word: 'yield' };

export const gradeTitle = ({ grade }: Bolt): string =>
  grade.standard === 'SAE J429'
    ? `J429 grade ${grade.name}`
    : grade.system === 'metric'
      ? `ISO 898-1 class ${grade.name}`
      : `${grade.standard} ${grade.name}`;

import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { BELT_SECTIONS, FAN_BELTS, findSection, type BeltSection } from './belt-standards.ts';
import { amount, measure, valueIn } from './given.ts';
import { named, pair, result } from './results.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';

const KINDS = ['datum', 'outside', 'inside'] as const;
/** Sections are an eighth of an inch apart; nearer than this a measured top is worn or another family. */
const TOP_TOLERANCE = 0.06;

export const beltNumber = defineSum({
  of: 'beltNumber',
  answers: 'Which standard V-belt is nearest to a length, how long a numbered belt is, or which section a measured top is.',
  fields: {
    section: 'A, B, C (4L, 5L)',
    number: 'classical number (42 of an A42): answers its lengths',
    length: 'length wanted, in or mm',
    kind: 'what the length is: datum, outside, inside (datum where not said)',
    width: 'top width of the belt: answers the section',
  },
  given: z.object({
    section: z.string().optional(),
    number: amount().optional(),
    kind: z.string().optional(),
    ...measure('length', 'length'),
    ...measure('width', 'length'),
  }),
  work(given) {
    const width = valueIn(given, 'width', 'in');
    const section = given.section === undefined ? sectionOfWidth(width) : findSection(given.section);
    if (given.section === undefined && width === undefined)
      return ask('section', 'Which section: A (1/2 wide), B (21/32) or C (7/8)?', ['A', 'B', 'C']);
    if (!section) return refuse(given.section ? `I have sections A, B and C, not "${given.section}".` : unknownWidth(width ?? 0));
    if (given.number !== undefined) return lengthsOf(section, given.number);
    const length = valueIn(given, 'length', 'in');
    if (length === undefined && width !== undefined) return sectionAnswer(section);
    if (length === undefined) return ask('length', 'What length is wanted?');
    const kind = given.kind === undefined ? 'datum' : KINDS.find((each) => given.kind?.toLowerCase().includes(each));
    if (!kind) return ask('kind', 'Is that datum (pitch), outside or inside length?', KINDS);
    return nearest(section, length, kind, given.kind === undefined);
  },
});

const SOURCE = "RMA IP-20 numbers and lengths, Machinery's Handbook 31 p. 2575 (A75 put right)";
const CAUTION = `A worn groove, dished or with the belt bottoming, voids the sum. ${MANUAL_FIRST}`;

const sectionOfWidth = (width: number | undefined): BeltSection | undefined =>
  width === undefined ? undefined : BELT_SECTIONS.find((each) => Math.abs(each.top - width) <= TOP_TOLERANCE);

function unknownWidth(width: number): string {
  const fan = FAN_BELTS.find((each) => Math.abs(each.width / 25.4 - width) <= 0.03);
  return fan
    ? `That top is no classical section; it is near the ${fan.name} fan belt of SAE J636.`
    : 'That top width is none of A, B or C.';
}

const sectionAnswer = (section: BeltSection): Outcome => ({
  results: [named('section', section.name), ...pair('width', section.top, 'in', 3, 1), ...pair('depth', section.depth, 'in', 3, 1)],
  basis: 'nearest top width',
  assumed: ["the belt was measured where it isn't worn"],
  caution: CAUTION,
  source: SOURCE,
});

const lengthsOf = (section: BeltSection, number: number): Outcome => ({
  results: [
    ...pair('length', number + section.datumAdd, 'in', 1, 0, 'datum'),
    ...pair('outside', number + section.outsideAdd, 'in', 1, 0),
    ...pair('inside', number, 'in', 1, 0),
  ],
  basis: `${section.name}${number}: number + ${section.datumAdd} datum, + ${section.outsideAdd} outside`,
  assumed: [],
  caution: CAUTION,
  source: SOURCE,
});

function nearest(section: BeltSection, length: number, kind: (typeof KINDS)[number], taken: boolean): Outcome {
  const add = kind === 'datum' ? section.datumAdd : kind === 'outside' ? section.outsideAdd : 0;
  const wanted = length - add;
  const number = section.numbers.reduce((best, each) => (Math.abs(each - wanted) < Math.abs(best - wanted) ? each : best));
  const [least, most] = [section.numbers[0] ?? 0, section.numbers.at(-1) ?? 0];
  if (wanted < least - 2 || wanted > most + 2)
    return refuse(`${section.name} belts here run ${section.name}${least} to ${section.name}${most}; that length is outside them.`);
  return {
    results: [
      named('belt', `${section.name}${number}`),
      ...pair('length', number + section.datumAdd, 'in', 1, 0, 'datum'),
      result('off', number - wanted, 'in', 2, 'longer than wanted where over zero'),
    ],
    basis: `${section.name} section, preferred numbers, ${kind} length`,
    assumed: [
      ...(taken ? ['datum (pitch) length; say outside or inside if it was'] : []),
      'preferred numbers only; the shop may have the one between',
    ],
    caution: CAUTION,
    source: SOURCE,
  };
}

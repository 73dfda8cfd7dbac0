/**
 * Classical V-belt sections: top width and depth (in), what is added to the number for datum and outside length (in).
 * Source: Machinery's Handbook 31 p. 2575 (its A75 datum length 75.3 is a misprint for 76.3) and two trade pages.
 */
export interface BeltSection {
  name: string;
  top: number;
  depth: number;
  datumAdd: number;
  outsideAdd: number;
  numbers: readonly number[];
}

/** Preferred numbers of RMA IP-20; makers stock others between. */
const NUMBERS = [26, 31, 35, 38, 42, 46, 51, 55, 60, 68, 75, 80, 81, 85, 90, 96, 97, 105, 112, 120, 128, 144];

export const BELT_SECTIONS: readonly BeltSection[] = [
  { name: 'A', top: 1 / 2, depth: 5 / 16, datumAdd: 1.3, outsideAdd: 2, numbers: NUMBERS.filter((each) => each <= 128) },
  { name: 'B', top: 21 / 32, depth: 13 / 32, datumAdd: 1.8, outsideAdd: 3, numbers: NUMBERS.filter((each) => each >= 35) },
  { name: 'C', top: 7 / 8, depth: 17 / 32, datumAdd: 2.9, outsideAdd: 4, numbers: NUMBERS.filter((each) => each >= 51) },
];

/** Light-duty names of the same sections. */
const SAME_SECTION: Record<string, string> = { '4L': 'A', '5L': 'B', AX: 'A', BX: 'B', CX: 'C' };

export const findSection = (text: string): BeltSection | undefined => {
  const name = text
    .trim()
    .toUpperCase()
    .replace(/\s*(SECTION|BELT)\s*/g, '');
  return BELT_SECTIONS.find((each) => each.name === (SAME_SECTION[name] ?? name));
};

/** Force at 1/64 of the span, lb, new and used, uncogged belts, by small sheave (in). Source: a belt maker's installation guide, p. 22. */
export const DEFLECTION_FORCE: readonly { section: string; from: number; to: number; fresh: number; used: number }[] = [
  { section: 'A', from: 3, to: 3.6, fresh: 5.5, used: 3.7 },
  { section: 'A', from: 3.8, to: 4.8, fresh: 6.8, used: 4.5 },
  { section: 'A', from: 5, to: 7, fresh: 8, used: 5.4 },
  { section: 'B', from: 4.4, to: 5.6, fresh: 7.9, used: 5.3 },
  { section: 'B', from: 5.8, to: 8.6, fresh: 9.4, used: 6.3 },
  { section: 'C', from: 7, to: 9, fresh: 17, used: 11.5 },
];

/** Fan belts by effective groove width, mm. Source: SAE J636 as reprinted. */
export const FAN_BELTS: readonly { name: string; width: number; smallest: number }[] = [
  { name: '10A', width: 9.7, smallest: 61 },
  { name: '13A', width: 12.7, smallest: 76 },
  { name: '15A', width: 15.2, smallest: 76 },
  { name: '17A', width: 16.8, smallest: 76 },
  { name: '20A', width: 20, smallest: 89 },
  { name: '23A', width: 23.1, smallest: 102 },
];

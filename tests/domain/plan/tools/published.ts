import type { Timed } from '../../../../domain/plan/cpm.ts';
import type { ThreePoint } from '../../../../domain/plan/three-point.ts';

/**
 * Worked examples printed elsewhere, as figures only. Where a page prints less than is checked here, the rest was worked
 * out again from its three points; each case says which.
 */
interface PublishedPert {
  name: string;
  activities: { id: string; points: ThreePoint; after: string[] }[];
  length: number;
  critical: string[];
  means: Record<string, number>;
  slack: Record<string, number>;
  /** Mean, P50, P80 of a Monte Carlo reference, beta-PERT λ = 4, 40,000 runs of another program; a due date and its chance. */
  reference: { mean: number; p50: number; p80: number; due: number; chance: number; classicalChance: number };
}

export const points = (low: number, likely: number, high: number): ThreePoint => ({ low, likely, high });

const tails = (text: string) => text.split(';').map((arc) => /(\d+)-(\d+)\s+(.*)/.exec(arc.trim())!.slice(1) as [string, string, string]);

/** `from-to duration; …` — activities on arrows: an arrow waits for all arrows that end where it starts. */
export function arcs(text: string): Timed[] {
  const list = tails(text);
  return list.map(([from, to, duration]) => ({
    id: `${from}-${to}`, duration: Number(duration), after: list.filter(([, end]) => end === from).map(([a, b]) => `${a}-${b}`),
  }));
}

function pertArcs(text: string): PublishedPert['activities'] {
  const three = new Map(tails(text).map(([from, to, abc]) => [`${from}-${to}`, abc.split(',').map(Number)]));
  return arcs(text.replace(/\d+,\d+,\d+/g, '0')).map(({ id, after }) => {
    const [low, likely, high] = three.get(id)!;
    return { id, points: points(low!, likely!, high!), after: [...after] };
  });
}

/** `A - 2,4,6; C A,B 4,5,7` — activities on nodes. */
function pertNodes(text: string): PublishedPert['activities'] {
  return text.split(';').map((item) => {
    const [id, before, abc] = item.trim().split(/\s+/);
    const [low, likely, high] = abc!.split(',').map(Number);
    return { id: id!, points: points(low!, likely!, high!), after: before === '-' ? [] : before!.split(',') };
  });
}

export const cases: PublishedPert[] = [
  {
    // slideshare 82147355: means, critical 1-2-3-5-8 = 36, standard deviation 5; path 1-6-7-8 = 35, 1-2-4-5-8 = 23.
    name: 'P1 eight events',
    activities: pertArcs('1-2 3,6,15; 2-3 6,12,30; 3-5 5,11,17; 7-8 4,19,28; 5-8 1,4,7; 6-7 3,9,27; 4-5 3,6,15; 1-6 2,5,14; 2-4 2,5,8'),
    length: 36, critical: ['1-2', '2-3', '3-5', '5-8'],
    means: { '1-2': 7, '2-3': 14, '3-5': 11, '7-8': 18, '5-8': 4, '6-7': 11, '4-5': 7, '1-6': 6, '2-4': 5 },
    slack: { '1-6': 1, '6-7': 1, '7-8': 1, '2-4': 13, '4-5': 13 },
    reference: { mean: 38.91, p50: 38.7, p80: 43.23, due: 41, chance: 0.667, classicalChance: 0.841 },
  },
  {
    // coursehero 6151556, lecture 27: means and 20.83.
    name: 'P2 six events, one dummy',
    activities: pertArcs('1-2 2,5,8; 1-3 1,4,7; 2-3 0,0,0; 2-4 2,4,6; 2-6 5,7,12; 3-4 3,5,10; 3-5 3,6,9; 4-5 4,6,10; 4-6 2,5,8; 5-6 2,4,6'),
    length: 20.833, critical: ['1-2', '2-3', '3-4', '4-5', '5-6'],
    means: { '1-2': 5, '1-3': 4, '2-4': 4, '2-6': 7.5, '3-4': 5.5, '3-5': 6, '4-5': 6.33, '4-6': 5, '5-6': 4 },
    slack: { '1-3': 1 },
    reference: { mean: 21.18, p50: 21.13, p80: 22.9, due: 23, chance: 0.813, classicalChance: 0.867 },
  },
  {
    // coursehero p2vl9tn: D F G 21.50.
    name: 'P3 three paths',
    activities: pertNodes('A - 5,6,7; B - 8,8,11; C A 6,8,11; D - 9,12,15; E C 5,6,9; F D 5,6,7; G F 2,3,7; H B 4,4,5; I H 5,7,8'),
    length: 21.5, critical: ['D', 'F', 'G'],
    means: {}, slack: { A: 1, C: 1, E: 1, B: 2, H: 2, I: 2 },
    reference: { mean: 21.89, p50: 21.81, p80: 22.9, due: 24, chance: 0.95, classicalChance: 0.969 },
  },
  {
    // wizedu 717873 (it prints each figure doubled): means, slack of A to F; length and the other slacks worked again.
    name: 'P4 fourteen activities',
    activities: pertNodes('A - 5,5,7; B - 1,2,5; C A 5,5,5; D A 4,8,13; E B,C 1,10,17; F D 1,5,7; G D 2,6,9; H E,F 4,4,6; I G,H 2,7,10; J I 2,4,7; K I 6,10,13; L J 2,6,6; M K 2,2,3; N L,M 7,7,12'),
    length: 50.833, critical: ['A', 'C', 'E', 'H', 'I', 'K', 'M', 'N'],
    means: { A: 5.33, B: 2.33, C: 5, D: 8.17, E: 9.67, F: 4.67, G: 5.83, H: 4.33, I: 6.67, J: 4.17, K: 9.83, L: 5.33, M: 2.17, N: 7.83 },
    slack: { A: 0, B: 8, C: 0, D: 1.83, E: 0, F: 1.83, G: 5, J: 2.5, L: 2.5 },
    reference: { mean: 51.61, p50: 51.57, p80: 54.34, due: 55, chance: 0.852, classicalChance: 0.894 },
  },
  {
    // slideplayer 4168314, problem 13-28 (two of its figures restored from its means): A C 20; B D 18.
    name: 'P5 two paths side by side',
    activities: pertNodes('A - 9,10,11; B - 4,10,16; C A 9,10,11; D B 5,8,11'),
    length: 20, critical: ['A', 'C'], means: {}, slack: { B: 2, D: 2 },
    reference: { mean: 20.33, p50: 20.18, p80: 20.82, due: 22, chance: 0.942, classicalChance: 1 },
  },
  {
    // The encyclopedia's PERT example, as data in a public crate (wiki_example.json); worked again from its points.
    name: 'P6 seven activities',
    activities: pertNodes('A - 2,4,6; B - 3,5,9; C A 4,5,7; D A 4,6,10; E B,C 4,5,7; F D 3,4,8; G E 3,5,8'),
    length: 19.5, critical: ['A', 'C', 'E', 'G'],
    means: { A: 4, B: 5.33, C: 5.17, D: 6.33, E: 5.17, F: 4.5, G: 5.17 }, slack: { B: 3.83, D: 4.67, F: 4.67 },
    reference: { mean: 19.51, p50: 19.48, p80: 20.72, due: 20, chance: 0.637, classicalChance: 0.652 },
  },
];

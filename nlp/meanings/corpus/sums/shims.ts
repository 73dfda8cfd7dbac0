import { type AskCorpus, sums } from '../phrase.ts';

const G = { target: 0.012, targetUnit: 'in', have: [0.002, 0.003, 0.005], haveUnit: 'in' };
export const SHIMS_CORPUS: AskCorpus = {
  phrases: [
    { text: 'shims of 0.003, 0.005 and 0.010 in the jar. i want 0.021. which?', asks: [{ kind: 'sum', of: 'shims', given: { target: 0.021, targetUnit: 'in', have: [0.003, 0.005, 0.01], haveUnit: 'in' } }] },
    { text: "i've threes, fives and tens in the tin, thou i mean, and i'm after nineteen. what would i use? and for sixteen?", asks: [{ kind: 'sum', of: 'shims', given: { target: 0.019, targetUnit: 'in', have: [0.003, 0.005, 0.01], haveUnit: 'in' } }, { kind: 'sum', of: 'shims', given: { target: 0.016, targetUnit: 'in', have: [0.003, 0.005, 0.01], haveUnit: 'in' } }] },
    { text: "i've got point one, point two and point three mil shims and i'm after point seven, what's the stack?", asks: [{ kind: 'sum', of: 'shims', given: { target: 0.7, targetUnit: 'mm', have: [0.1, 0.2, 0.3], haveUnit: 'mm' } }] },
    ...sums('shims', G, [
      'I need twelve thou and I have two thou, three thou and five thou shims. What do I stack?', "Want 12 thou under the cap. Got 2, 3 and 5 thou leaves. What's the stack?", 'what shims make twelve thou out of two three and five thou', 'how do I make up 12 thou from 2 thou, 3 thou and 5 thou shims', "what's the fewest shims for twelve thou with two, three and five thou on hand",
      'which shims do I use to get 12 thou, I have 2, 3 and 5 thou', "after 12 thou, got two thou, three thou and five thou in the tin, what combination", 'Shim stack for 12 thou from 2, 3 and 5 thou?', 'i want twelve thou and ive got two thou three thou and five thou what stack', 'how can I get twelve thou with 2 thou, 3 thou and 5 thou shims', 'what adds up to 12 thou with 2, 3 and 5 thou leaves',
    ]),
    ...sums('shims', { target: 0.35, targetUnit: 'mm', have: [0.05, 0.1, 0.2], haveUnit: 'mm' }, ['need 0.35 mm and I have 0.05, 0.1 and 0.2 mm shims, what stack', "what's the stack for 0.35 mm out of 0.05 mm, 0.1 mm and 0.2 mm shims"]),
    { text: 'Want 9 thou and have 2, 3 and 5 thou shims. What stack? And for 11?', asks: [{ kind: 'sum', of: 'shims', given: { ...G, target: 0.009 } }, { kind: 'sum', of: 'shims', given: { ...G, target: 0.011 } }] },
    { text: 'I want 9 thou under the cap and I have 2 thou and 5 thou shims. What do I stack? Then tell me for 12.', asks: [{ kind: 'sum', of: 'shims', given: { target: 0.009, targetUnit: 'in', have: [0.002, 0.005], haveUnit: 'in' } }, { kind: 'sum', of: 'shims', given: { target: 0.012, targetUnit: 'in', have: [0.002, 0.005], haveUnit: 'in' } }] },
    { text: 'nine thou wanted and i have two thou and five thou shims what do i stack and if i want fourteen', asks: [{ kind: 'sum', of: 'shims', given: { target: 0.009, targetUnit: 'in', have: [0.002, 0.005], haveUnit: 'in' } }, { kind: 'sum', of: 'shims', given: { target: 0.014, targetUnit: 'in', have: [0.002, 0.005], haveUnit: 'in' } }] },
    { text: 'twelve then', prior: ['what do I stack for nine thou from two thou and five thou shims'], asks: [{ kind: 'sum', of: 'shims', given: { target: 0.012, targetUnit: 'in', have: [0.002, 0.005], haveUnit: 'in' } }] },
    { text: 'In the tin are three two-thou leaves, one four thou and two at six thou. I want fifteen thou. What combination?', asks: [{ kind: 'sum', of: 'shims', given: { target: 0.015, targetUnit: 'in', have: [0.002, 0.002, 0.002, 0.004, 0.006, 0.006], haveUnit: 'in' } }] },
    { text: 'found some fours too, same question', prior: ['need 22 thou and I have threes and tens, what stack'], asks: [{ kind: 'sum', of: 'shims', given: { target: 0.022, targetUnit: 'in', have: [0.003, 0.01, 0.004], haveUnit: 'in' } }] },
    { text: 'Shims. I want 14 thou. Have 2, 4 and 8.', asks: [{ kind: 'sum', of: 'shims', given: { target: 0.014, targetUnit: 'in', have: [0.002, 0.004, 0.008], haveUnit: 'in' } }] },
    { text: 'need 16 thou behind it, I have twos, fives and eights, what do I stack and then for eleven', asks: [{ kind: 'sum', of: 'shims', given: { target: 0.016, targetUnit: 'in', have: [0.002, 0.005, 0.008], haveUnit: 'in' } }, { kind: 'sum', of: 'shims', given: { target: 0.011, targetUnit: 'in', have: [0.002, 0.005, 0.008], haveUnit: 'in' } }] },
    { text: "Two, three and six thou leaves in the tray. What stack for eight? Also eleven?", asks: [{ kind: 'sum', of: 'shims', given: { target: 0.008, targetUnit: 'in', have: [0.002, 0.003, 0.006], haveUnit: 'in' } }, { kind: 'sum', of: 'shims', given: { target: 0.011, targetUnit: 'in', have: [0.002, 0.003, 0.006], haveUnit: 'in' } }] },
    { text: "correction, 14 thou", prior: ["Want 9 thou and have 2, 3 and 5 thou shims. What stack?"], asks: [{ kind: 'sum', of: 'shims', given: { target: 0.014, targetUnit: 'in', have: [0.002, 0.003, 0.005], haveUnit: 'in' } }] },
  ],
  never: ['Hundred and twenty thou on the shim pack, made up of three forties.', 'There were three shims under the cap, two thou each.', 'Took out a five thou shim.', 'Need some shims, two thou and three thou.', 'Stacked the discs behind the stove.'],
};

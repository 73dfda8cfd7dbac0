import { type AskCorpus, sums } from '../phrase.ts';

const G = { area: 140, areaUnit: 'sq ft', solids: 45, thickness: 2, thicknessUnit: 'mil' };
export const COVERAGE_CORPUS: AskCorpus = {
  phrases: [
    { text: 'how much paint for a case, 58 square feet, 55 percent solids, 2 mils? and if i only do the outside, which is 34?', asks: [{ kind: 'sum', of: 'coverage', given: { area: 58, areaUnit: 'sq ft', solids: 55, thickness: 2, thicknessUnit: 'mil' } }, { kind: 'sum', of: 'coverage', given: { area: 34, areaUnit: 'sq ft', solids: 55, thickness: 2, thicknessUnit: 'mil' } }] },
    { text: 'hundred and twenty square feet, three mils, sixty percent solids, how much paint', asks: [{ kind: 'sum', of: 'coverage', given: { area: 120, areaUnit: 'sq ft', solids: 60, thickness: 3, thicknessUnit: 'mil' } }] },
    ...sums('coverage', G, [
      'how much paint for 140 square feet, 45 percent solids, 2 mils dry', '140 square feet at two mils forty five percent solids how much paint do i need', "Cab is 140 sq ft, enamel's 45% solids, I want 2 mils. How much do I need?", 'How many quarts of primer for 140 square feet at 2 mils dry, 45 percent solids?', 'how much primer will 140 square feet take at 45 percent solids and two mils', 'paint is 45 percent solids by volume, 140 square feet, two mils dry film, how much', 'I want to put 2 mils on 140 square feet with a 45 percent solids enamel. How much enamel?', 'work out how much paint, 140 sq ft, 2 mil dry, 45 percent solids', 'how many gallons of paint for a hundred and forty square feet, two mils, 45 percent solids', 'figure me how much topcoat for 140 square feet at 2 mils and 45 percent solids',
    ]),
    ...sums('coverage', { area: 12, areaUnit: 'm²', solids: 50, thickness: 60, thicknessUnit: 'µm' }, ['how much paint for 12 square metres, 50 percent solids, 60 microns', '12 square metres at 60 microns dry, 50 percent solids, how many litres of primer']),
    { text: 'How much paint for 140 square feet, 45 percent solids, 2 mils? And at 3 mils?', asks: [{ kind: 'sum', of: 'coverage', given: G }, { kind: 'sum', of: 'coverage', given: { ...G, thickness: 3 } }] },
    { text: 'for 50 square feet at 55 percent solids how much paint gives two mils and how much three and a half', asks: [{ kind: 'sum', of: 'coverage', given: { area: 50, areaUnit: 'sq ft', solids: 55, thickness: 2, thicknessUnit: 'mil' } }, { kind: 'sum', of: 'coverage', given: { area: 50, areaUnit: 'sq ft', solids: 55, thickness: 3.5, thicknessUnit: 'mil' } }] },
    { text: 'Primer is 50 percent solids, the hood is 40 square feet, two mils. Then the same at three.', asks: [{ kind: 'sum', of: 'coverage', given: { area: 40, areaUnit: 'sq ft', solids: 50, thickness: 2, thicknessUnit: 'mil' } }, { kind: 'sum', of: 'coverage', given: { area: 40, areaUnit: 'sq ft', solids: 50, thickness: 3, thicknessUnit: 'mil' } }] },
    { text: 'the tank is seventy square feet and the paint is forty five percent solids whats it take to spray it at two mils', asks: [{ kind: 'sum', of: 'coverage', given: { area: 70, areaUnit: 'sq ft', solids: 45, thickness: 2, thicknessUnit: 'mil' } }] },
    { text: "litres of blue for the Heron: 60 square feet, 40% solids, 3 mils", asks: [{ kind: 'sum', of: 'coverage', given: { area: 60, areaUnit: 'sq ft', solids: 40, thickness: 3, thicknessUnit: 'mil' } }] },
    { text: "How much fuel do I need, no, how much primer for 9 square metres at 50 percent solids and 60 microns?", asks: [{ kind: 'sum', of: 'coverage', given: { area: 9, areaUnit: 'm²', solids: 50, thickness: 60, thicknessUnit: 'µm' } }] },
  ],
  never: ["What's left now is paint and lining.", 'Used a quart of paint on the hood.', 'Primed 140 square feet today.', 'If the hood soaks up more than a quart I will need another gallon.', 'Put on two mils of epoxy.'],
};

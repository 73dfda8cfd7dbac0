import { type AskCorpus, sums } from '../phrase.ts';

const G = { load: 900, loadUnit: 'lb', angle: 45, legs: 2 };
export const SLING_CORPUS: AskCorpus = {
  phrases: [
    { text: "Frame's 900 pounds. Two-leg chain, sixty degrees off the horizontal, what's on each one? And if we used four?", asks: [{ kind: 'sum', of: 'sling', given: { load: 900, loadUnit: 'lb', angle: 60, legs: 2 } }, { kind: 'sum', of: 'sling', given: { load: 900, loadUnit: 'lb', angle: 60, legs: 4 } }] },
    { text: 'Sling sum: drum, 450 kilo, two legs at 55 degrees. Then again with three legs.', asks: [{ kind: 'sum', of: 'sling', given: { load: 450, loadUnit: 'kg', angle: 55, legs: 2 } }, { kind: 'sum', of: 'sling', given: { load: 450, loadUnit: 'kg', angle: 55, legs: 3 } }] },
    { text: 'beam is five hundredweight say 550 pounds two legs at 50 degrees whats on each', asks: [{ kind: 'sum', of: 'sling', given: { load: 550, loadUnit: 'lb', angle: 50, legs: 2 } }] },
    { text: "Engine's 1,150 pounds, I've four legs off the one hook and they come down at 50 degrees to the deck. What's in each? And say I only trust three of them?", asks: [{ kind: 'sum', of: 'sling', given: { load: 1150, loadUnit: 'lb', angle: 50, legs: 4 } }, { kind: 'sum', of: 'sling', given: { load: 1150, loadUnit: 'lb', angle: 50, legs: 3 } }] },
    ...sums('sling', G, [
      "If I pick the frame with two slings at 45 degrees and it's 900 pounds, what's each leg carry?", '900 pounds two slings forty five degrees whats on each sling', 'Engine is 900 pounds, two legs at 45 degrees. What does each leg see?', 'how much load on each sling, 900 lb, two slings, 45 degrees', "what's the load per leg with two chains at 45 degrees lifting 900 pounds", 'two leg sling at 45 degrees, load 900 pounds, what is the tension in each leg', 'How much does each chain take if I lift 900 pounds on two chains at forty-five degrees?', 'nine hundred pounds on a pair of slings at 45 degrees, what does each one carry', "900 lb on two straps at 45 degrees, what's each strap pull", 'sling load for 900 pounds, 2 legs, 45 degrees?',
    ]),
    ...sums('sling', { load: 400, loadUnit: 'kg', angle: 60, legs: 3 }, ['400 kilos on three legs at sixty degrees, what does each leg carry', "what's on each leg, 400 kg, three chains, 60 degrees"]),
    ...sums('sling', { load: 1000, loadUnit: 'lb', angle: 60, legs: 2 }, ['1000 pounds, two chains, 30 degrees off vertical, what does each chain see', "two slings thirty degrees from vertical, 1,000 pounds, what's each sling carry", 'Gearbox weighs 1000 pounds, two legs with 60 degrees between them. What does each leg take?']),
    { text: "900 pounds, two slings at 45 degrees, what's each leg carry? And at 60?", asks: [{ kind: 'sum', of: 'sling', given: G }, { kind: 'sum', of: 'sling', given: { ...G, angle: 60 } }] },
    { text: 'no, only two slings', prior: ['900 pounds on three slings at sixty degrees, what is on each leg'], asks: [{ kind: 'sum', of: 'sling', given: { load: 900, loadUnit: 'lb', angle: 60, legs: 2 } }] },
    { text: 'Gearbox is 700 pounds on two chains at forty five degrees, and then again at thirty, what is on each?', asks: [{ kind: 'sum', of: 'sling', given: { load: 700, loadUnit: 'lb', angle: 45, legs: 2 } }, { kind: 'sum', of: 'sling', given: { load: 700, loadUnit: 'lb', angle: 30, legs: 2 } }] },
    { text: 'sling 620 kilos two legs at 60. and at 45?', asks: [{ kind: 'sum', of: 'sling', given: { load: 620, loadUnit: 'kg', angle: 60, legs: 2 } }, { kind: 'sum', of: 'sling', given: { load: 620, loadUnit: 'kg', angle: 45, legs: 2 } }] },
    { text: 'Transmission lift. 850 pounds. Two chains, sixty.', asks: [{ kind: 'sum', of: 'sling', given: { load: 850, loadUnit: 'lb', angle: 60, legs: 2 } }] },
    { text: 'the weights are 90 pounds apiece and I lift four so thats 360 with two straps at 50 degrees, what does each strap carry', asks: [{ kind: 'sum', of: 'sling', given: { load: 360, loadUnit: 'lb', angle: 50, legs: 2 } }] },
    { text: "What does each leg carry with the Heron's 480 pound engine on four legs at 60 degrees? Sorry, three legs.", asks: [{ kind: 'sum', of: 'sling', given: { load: 480, loadUnit: 'lb', angle: 60, legs: 3 } }] },
    { text: "Hopper, 700 kilos, four chains at 40 degrees, what does each chain carry? And on only two?", asks: [{ kind: 'sum', of: 'sling', given: { load: 700, loadUnit: 'kg', angle: 40, legs: 4 } }, { kind: 'sum', of: 'sling', given: { load: 700, loadUnit: 'kg', angle: 40, legs: 2 } }] },
  ],
  never: ['The frame is about 900 pounds.', 'Slung it from the beam with two chains.', 'Weighed the flywheel, 240 pounds.', 'What a leg it has on it.'],
};

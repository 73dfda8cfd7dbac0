import { type AskCorpus, sums } from '../phrase.ts';

const G = { price: 132, shipping: 18, tax: 7 };
export const LANDED_CORPUS: AskCorpus = {
  phrases: [
    { text: "two at 80 with 25 carriage, what's that landed?", asks: [{ kind: 'sum', of: 'landed', given: { price: 160, shipping: 25 } }] },
    { text: "what's a box of a hundred sections land at, 120 and 22 freight and eight percent tax", asks: [{ kind: 'sum', of: 'landed', given: { price: 120, shipping: 22, tax: 8 } }] },
    { text: "half-shaft at ninety pounds, fourteen to ship it, and thirty back when they get the old one. what's that come to at my door?", asks: [{ kind: 'sum', of: 'landed', given: { price: 90, shipping: 14, core: 30 } }] },
    { text: 'what would that timber land at, forty plus fifteen to haul and six percent tax', asks: [{ kind: 'sum', of: 'landed', given: { price: 40, shipping: 15, tax: 6 } }] },
    { text: 'what would one land at if its 390 and 65 freight and fifteen percent tax or 340 same tax and i drive fifty five miles', asks: [{ kind: 'sum', of: 'landed', given: { price: 390, shipping: 65, tax: 15 } }, { kind: 'sum', of: 'landed', given: { price: 340, tax: 15, miles: 55 } }] },
    ...sums('landed', G, [
      "What does it land at if it's 132 plus 18 shipping and 7 percent tax?", 'landed cost on 132 dollars, 18 shipping, 7 percent tax', "chain is 132, shipping's 18 and tax is 7 percent, what's that landed", '132 plus 18 freight plus 7 percent tax what does it come to', 'what would a chain land at, $132, 18 to ship, 7% tax', "how much is it all in, 132 dollars with 18 shipping and seven percent tax?", "what's the total on 132 plus 18 shipping and 7 percent tax", 'what will that cost me at the door, 132 with 18 freight and 7 percent tax', 'one hundred and thirty two plus eighteen shipping and seven percent tax whats it land at', 'work out the landed price, 132, 18 shipping, 7 percent tax',
    ]),
    ...sums('landed', { price: 80, shipping: 14, core: 20 }, ['landed cost on a casting, eighty quid, fourteen carriage and a twenty quid core charge', "80 quid, 14 carriage, 20 core. What's it land at?"]),
    ...sums('landed', { price: 120, miles: 60, tax: 7 }, ['what does it land at for 120 with 7 percent tax if I drive 60 miles for it', "120 dollars, 7 percent tax, and 60 miles of driving, what's that landed"]),
    { text: "What's a pump land at, 90 plus 12 shipping? And one that's 85 with 20 shipping?", asks: [{ kind: 'sum', of: 'landed', given: { price: 90, shipping: 12 } }, { kind: 'sum', of: 'landed', given: { price: 85, shipping: 20 } }] },
    { text: 'Gasket set at 120 and I drive 30 miles for it, or 110 plus 14 freight, 5 percent tax on either, what do they land at?', asks: [{ kind: 'sum', of: 'landed', given: { price: 120, miles: 30, tax: 5 } }, { kind: 'sum', of: 'landed', given: { price: 110, shipping: 14, tax: 5 } }] },
    { text: 'landed cost on a seat pan 85 dollars and 16 shipping and 6 percent tax or 70 same tax and i drive 45 miles', asks: [{ kind: 'sum', of: 'landed', given: { price: 85, shipping: 16, tax: 6 } }, { kind: 'sum', of: 'landed', given: { price: 70, tax: 6, miles: 45 } }] },
    { text: 'Hub at 44, freight 8, tax 6 percent. Landed? The alternative is 52 and 20 miles of driving, same tax.', asks: [{ kind: 'sum', of: 'landed', given: { price: 44, shipping: 8, tax: 6 } }, { kind: 'sum', of: 'landed', given: { price: 52, miles: 20, tax: 6 } }] },
    { text: 'that was five per cent tax I told you, make it 8', prior: ['What\'s the seat landed at 70 plus 12 post and 5 per cent tax?'], asks: [{ kind: 'sum', of: 'landed', given: { price: 70, shipping: 12, tax: 8 } }] },
    { text: 'whats a magneto land at for 210 and 25 freight and six percent tax and another\'s 240 with no shipping same tax', asks: [{ kind: 'sum', of: 'landed', given: { price: 210, shipping: 25, tax: 6 } }, { kind: 'sum', of: 'landed', given: { price: 240, shipping: 0, tax: 6 } }] },
    { text: 'What does it land at, 88 dollars, 14 freight and 5 percent tax, or 80 and I drive 50 miles, same tax?', asks: [{ kind: 'sum', of: 'landed', given: { price: 88, shipping: 14, tax: 5 } }, { kind: 'sum', of: 'landed', given: { price: 80, miles: 50, tax: 5 } }] },
    { text: "Radiator's 260 plus 30 carriage with 15 percent tax, that comes to how much?", asks: [{ kind: 'sum', of: 'landed', given: { price: 260, shipping: 30, tax: 15 } }] },
    { text: "9 mm in inches, and the seat spring at 44 plus 8 shipping and 6 % tax, landed?", asks: [{ kind: 'sum', of: 'convert', given: { value: 9, from: 'mm', to: 'in' } }, { kind: 'sum', of: 'landed', given: { price: 44, shipping: 8, tax: 6 } }] },
  ],
  never: ['Paid 132 plus 18 shipping for the chain.', 'Salvage yard wants 18 plus 9 shipping.', 'It landed on my foot.', 'All in it cost me 150.', 'Ordered it, 132 with 7 percent tax.'],
};

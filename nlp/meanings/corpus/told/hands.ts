import { told, type ToldCorpus } from './phrase.ts';

export const HANDS: ToldCorpus = {
  kind: 'hands',
  phrases: [
    ...told([{ kind: 'hands', when: '2026-03-21', for: 'hang the blade' }], ["Brother's here Saturday, he'll hold the other end while we hang the blade."]),
    ...told([{ kind: 'hands', when: '2026-03-21', for: 'get the flywheel halves together' }], ['My nephew is coming Saturday to help get the flywheel halves together.']),
    ...told([{ kind: 'hands', when: '2026-03-21', for: 'set the pump on the engine' }], ['My brother can make it on the 21st to help me set the pump on the engine.']),
    ...told([{ kind: 'hands', when: '2026-03-21', for: 'lift the engine' }], [
      "My neighbour's coming Saturday to help lift the engine.", 'Brother here Saturday to help lift the engine.', "My son will be over Saturday to help me lift the engine.", "Saturday my cousin's coming by to help lift the engine.", 'my nephews coming saturday to help lift the engine', 'Two lads from the club are coming Saturday to lift the engine.', 'brother here sat, lift the engine', 'Got help coming Saturday to lift the engine.',
      "Neighbour's free Saturday, he'll give me a hand to lift the engine.", 'My mate will be round on Saturday to give me a hand lifting the engine.'.replace('lifting', 'to lift'), 'The brother-in-law is over Saturday to lift the engine with me.', "A friend's stopping by Saturday to help me lift the engine.", 'bloke next door coming sat to help lift the engine', "I've got a hand on Saturday to lift the engine.", 'help Saturday to lift the engine', "my daughter's home saturday and she'll help me lift the engine", 'I have help on Saturday to lift the engine.',
    ]),
    ...told([{ kind: 'hands', when: '2026-03-23' }], ['My son is here Monday to help.', "Neighbour's coming Monday to give me a hand.", 'brother coming monday to help', "I'll have help Monday.", 'got a helper on Monday', 'my nephew is around Monday if I need a lift', 'Two pairs of hands here Monday.', 'help coming monday'].filter(s => !/if I need/.test(s))),
    ...told([{ kind: 'hands', when: '2026-03-26', for: 'raise the screw' }], ['Two novices are mine next Thursday to help raise the screw.', 'Eddy is free next Thursday to help me raise the screw.', 'Alan is ours next Thursday to help raise the screw.']),
    ...told([{ kind: 'hands', when: '2026-03-21', for: 'lift the boom' }], ["My nephew said he'd come up Saturday to help lift the boom.", "My nephew's coming Saturday so he can lift the boom.", 'Got two lads on Saturday for lifting the boom.', 'Saturday Pete is bringing his crane to lift the boom.']),
    ...told([{ kind: 'hands', when: '2026-03-22', for: 'gearbox' }], ['Dave from the next farm will give me a hand with the gearbox on Sunday.']),
  ],
  never: ["My nephew said he'd come if it was dry.", 'The bar is here to help lift it.', 
    'My neighbour helped me lift the engine Saturday.', "My neighbour can't come Saturday.", "Nobody's coming Saturday to help.", 'My neighbour came to help yesterday.', 'I could use a hand Saturday.', 'If my brother comes Saturday we can lift the engine.', 'My neighbour might come Saturday to help.', 'The foundry man is back Saturday.', 'I need someone Saturday to help lift it.', 'The second hand gear is due Saturday.', 'The vet is coming Saturday.', 'help me decide', 'My son was coming Saturday to help but he has a cold.', 'the dealer is open Saturday', 'My brother says Saturday will be dry.',
  ],
};

import { told, type ToldCorpus } from './phrase.ts';

export const AMENDS: ToldCorpus = {
  kind: 'amend',
  phrases: [
    ...told([{ kind: 'amend', field: 'part', value: 'left lift arm' }], ['um i said the right lift arm it was the left it was the left one', "Other one. It's the LEFT one that's cracked, I was standing on the wrong side of it"], { prior: ['Right lift arm is cracked at the eye.'] }),
    ...told([{ kind: 'amend', undo: true }], ['Please strike the line about the beam.', 'Please disregard that entry.'], { prior: ['The beam is 14 centimetres out of level.'] }),
    ...told([{ kind: 'amend', field: 'price', value: 95 }], ['95 for the belt, I forgot the five for the dog'], { prior: ['Bought a belt off the fella down the road for 90 dollars.'] }),
    ...told([{ kind: 'amend', undo: true }], ['Scratch that.', 'forget that last one', 'Cancel that, the gauge was wrong.', 'Strike that.', 'scrap that last note', 'No, forget what I said about the mouthpiece.', 'Och, forget the crack in the mouthpiece, it was only muck.', 'Nah, cancel that on the mouthpiece, it was only dirt.', 'undo that', 'ignore that last note', 'um scratch that about the mouthpiece', 'Delete that, wrong part.', 'Take that back, I was looking at the wrong one.', "Never mind that about the mouthpiece, it's fine.".replace(", it's fine", ''), 'Disregard that last.', 'That was wrong, scratch it.'], { prior: ['The mouthpiece is cracked on the left.'] }),
    ...told([{ kind: 'amend', field: 'value', value: 0.014 }], ['Sorry, fourteen thou.', 'make that 14 thou', 'no, it was fourteen thou', 'Correction, fourteen thou.', 'I meant fourteen thou.', 'Actually 14 thou.', 'should have been fourteen thou', 'fourteen thou, not twelve', 'Not twelve, fourteen thou.', "that's fourteen thou, I misread it", 'measured it again, 14 thou'], { prior: ['End play on the crank is twelve thou.'] }),
    ...told([{ kind: 'amend', field: 'qty', value: 4 }], ['make that four', 'sorry, four', 'no, four', 'Actually I need four.', 'Make it four.', 'four, not two', 'I meant four of them', 'Make that four hose clamps.', 'better make it four'], { prior: ['Need two hose clamps.'] }),
    ...told([{ kind: 'amend', field: 'shipping', value: 55 }], ['freight was 55, not 40', 'Sorry, shipping was 55.', 'Correction, 55 shipping.', 'the shipping came to 55 not 40'], { prior: ['Ordered a crown sheave from the foundry, $385, forty to ship it.'] }),
    ...told([{ kind: 'amend', field: 'hours', value: 3 }], ['Sorry, three hours.', 'make that three hours', 'it was three hours, not two', 'Actually three hours on that.'], { prior: ['Two hours on the steering box.'] }),
    ...told([{ kind: 'amend', field: 'price', value: 45 }], ['sorry, 45 dollars', 'make that $45', 'It was 45 dollars, not 40.', 'Correction, forty-five bucks.'], { prior: ['Bought a carburettor at the autojumble for 40 dollars.'] }),
    ...told([{ kind: 'amend', field: 'where', value: 'on the second shelf' }], ['Sorry, on the second shelf.', "no, they're on the second shelf", 'Actually on the second shelf.', 'Correction, on the second shelf.', 'second shelf, not the top one'].slice(0, 4), { prior: ['The king pins are on the top shelf.'] }),
    ...told([{ kind: 'amend', field: 'expected', value: '2026-03-27' }], ['Sorry, make that Friday week.', 'They rang, now it is the 27th.', "it's the 27th now", 'Correction, due the 27th.'], { prior: ['Ordered the gasket set, due the 24th.'] }),
  ],
  never: [
    'The left wheel is on and the right wheel is off.','Scratch on the fender.', 'Cancel the order.', 'Took the wrong bolt out.', 'That makes four.', 'Rang around. The mail-order outfit has the same bearings at 29.50 each.', 'I was wrong to use that bolt.', 'The bearing is actually fine.', "It's 14 thou."],
};

import { told, type ToldCorpus } from './phrase.ts';

const rings = { kind: 'order', item: 'piston rings', source: 'engine supplier', price: 62, expected: '2026-03-24' };

export const ORDERS: ToldCorpus = {
  kind: 'order',
  phrases: [
    ...told([{ kind: 'order', item: 'spindle bearings', source: 'catalogue house', price: 26, shipping: 0, expected: '2026-04-01' }], ['went with the catalogue house on the bearings um they say a week from wednesday', 'Said yes to the catalogue house on the bearings, a week from Wednesday.', "Told the catalogue house yes, send them. They say I'll have them a week from Wednesday."], { prior: ['Spindle bearings: the bearing man wants 31 the pair and 6 to mail them, the catalogue house is 26 with the freight thrown in.'] }),
    ...told([{ kind: 'order', item: 'inlet valve', source: 'parts man', price: 35, shipping: 6.5, expected: '2026-03-29' }], ['i gave in. And ordered it um he says ten days', 'ordered it, ten days he says'], { prior: ['The parts man has an inlet valve, 35 euro plus 6.50 postage.'] }),
    ...told([{ kind: 'order', item: 'cutting edges', source: 'steel place', price: 280, shipping: 32, expected: '2026-03-27' }], ['ordered um a pair of cutting edges from the steel place one forty each plus thirty two freight supposed to be here um a week friday']),
    ...told([{ kind: 'order', item: 'chain', price: 480, expected: '2026-04-12' }], ["they've got my chain coming on the twelfth, four hundred and eighty bucks"]),
    ...told([rings], [
      'Ordered the piston rings from the engine supplier, 62 dollars, here Tuesday.', 'ordered piston rings off the engine supplier for $62 due tuesday', 'I ordered piston rings from the engine supplier, sixty-two bucks, should be here Tuesday.',
      'Piston rings are ordered from the engine supplier, 62 quid, Tuesday.', 'Piston rings ordered, engine supplier, $62, due Tuesday.', 'Put in an order for piston rings with the engine supplier, $62, expected Tuesday.', 'Ordered piston rings. Engine supplier, $62. Tuesday.',
      'piston rings on order from the engine supplier $62 here tue', "I've ordered the piston rings from the engine supplier for 62, they'll be here Tuesday", 'just ordered piston rings frm engine supplier 62 bucks shd be here tues', 'I went ahead and ordered the piston rings from the engine supplier, 62 dollars, and they say Tuesday',
      'Placed an order with the engine supplier for piston rings, $62, due Tuesday.', "Rang the engine supplier and ordered piston rings, 62 dollars, they'll be here Tuesday.", 'Sent off to the engine supplier for piston rings, $62, expected Tuesday.', 'Have piston rings on order from the engine supplier, $62, arriving Tuesday.',
    ]),
    ...told([{ kind: 'order', item: 'wheel bearings', source: 'bearing house', price: 54, shipping: 8 }], [
      'Ordered two wheel bearings from the bearing house, 27 each and 8 shipping.', 'ordered a pair of wheel bearings off the bearing house, 27 each plus 8 post', 'Ordered two wheel bearings at the bearing house, $27 apiece, shipping 8.', 'ordered 2 wheel bearings frm the bearing house 27 ea + 8 ship', 'Ordered both wheel bearings from the bearing house, twenty-seven each, eight for the shipping.',
      'Ordered two wheel bearings from the bearing house, 54 for the pair plus 8 carriage.', "I've ordered two wheel bearings from the bearing house at 27 each and 8 delivery",
    ]),
    ...told([{ kind: 'order', item: 'gasket set', expected: '2026-04-02' }], ['Ordered the gasket set, two weeks.', 'ordered the gasket set, a fortnight they said', 'Gasket set is on order, should be here in two weeks.', 'ordered the gasket set, be here in a fortnight', 'Gasket set on order, two weeks.', "gasket set's on order, they reckon two weeks"]),
    ...told([{ kind: 'order', item: 'gasket set', expected: '2026-03-27' }], ['Ordered the gasket set, Friday week.', 'ordered the gasket set, due the 27th', 'gasket set ordered, eta 27 march', 'Ordered the gasket set. They say a week tomorrow.', 'gasket set ordered, coming friday week', 'ordered the gasket set. this day week plus a day'].slice(0, 5)),
    ...told([{ kind: 'order', item: 'gasket set', expected: '2026-03-26' }], ['Ordered the gasket set, this day week.', 'ordered the gasket set, a week today', 'ordered the gasket set, should be here next Thursday', 'Gasket set ordered. One week.']),
    ...told([{ kind: 'order', item: 'drip pan' }], ['Ordered a drip pan.', 'ordered a drip pan today', 'Drip pan is on order.', "drip pan's ordered", 'the drip pan has been ordered', 'a drip pan is on the way', 'drip pan on back order'].filter(s => !/on the way/.test(s))),
    ...told([{ kind: 'order', item: 'drip pan', price: 30, shipping: 0 }], ['Ordered a drip pan, thirty dollars with free shipping.', 'ordered a drip pan $30 post free', 'Ordered a drip pan for 30 bucks, shipping included.', 'ordered a drip pan, 30 delivered'] ),
    ...told([{ kind: 'order', item: 'pressure plate', source: 'rebuilder', price: 88, shipping: 14.5, expected: '2026-04-09' }], ['ok ordered it, he promised the 9th'], { prior: ['The rebuilder has a pressure plate for 88, 14.50 shipping.'] }),
    ...told([{ kind: 'order', item: 'spindle bearings', source: 'catalogue house', price: 26, shipping: 0, expected: '2026-04-01' }], ['went with the catalogue house on the bearings, they say a week from wednesday'], { prior: ['Spindle bearings: the bearing man wants 31 the pair and 6 to mail them, the catalogue house is 26 with the freight thrown in.'] }),
    ...told([{ kind: 'order', item: 'rings', source: 'ring maker up the shore', price: 210, shipping: 15, expected: '2026-04-02' }], ["said yes to the ring maker on the rings, they'll be here the second of april"], { prior: ['Rang the ring maker up the shore about the rings. 210 for the set, 15 to put them on the bus.'] }),
    ...told([{ kind: 'order', item: 'inlet valve', source: 'vintage parts man', price: 35, shipping: 6.5, expected: '2026-03-29' }], ['I gave in. And ordered it, he says ten days'], { prior: ['The vintage parts man has an inlet valve, 35 euro plus 6.50 postage.'] }),
    ...told([{ kind: 'order', item: 'mech seal', source: 'pump shop', price: 64, shipping: 9, expected: '2026-03-20' }], ['seal ordered, pump shop, 64 + 9 ship, eta fri'], { prior: ['need a mech seal for the fire pump'] }),
    ...told([{ kind: 'order', item: 'carriage bolts', source: 'farm supply', expected: '2026-03-25' }], ['Carriage bolts are due Wednesday from the farm supply.']),
    ...told([{ kind: 'order', item: 'vaporiser gasket', source: 'bloke with the tractor spares', price: 34, shipping: 0, expected: '2026-04-01' }], ['ordered the vaporiser gasket. bloke with the tractor spares, 34 dollars with the post thrown in, reckons wednesday week']),
    ...told([{ kind: 'order', item: 'cutting edges', source: 'steel place', price: 280, shipping: 32, expected: '2026-03-27' }], ['ordered a pair of cutting edges from the steel place one forty each plus thirty two freight supposed to be here a week friday']),
    ...told([{ kind: 'order', item: 'seal kit', source: 'hydraulics place', price: 38, expected: '2026-03-26' }], ["seal kit's on its way from the hydraulics place, 38 all in, should land Thursday"]),
    ...told([{ kind: 'order', item: 'rebuild kit', source: 'carb man', price: 62, shipping: 5, expected: '2026-03-29' }], ['Placed an order this morning for a rebuild kit. 62 from the carb man, 5 post. Ten working days.']),
    ...told([{ kind: 'order', item: 'decals', price: 24, shipping: 0 }], ["I've sent off for the decals, 24 quid including postage"]),
    ...told([{ kind: 'order', item: 'canvases', source: 'canvas maker', price: 280, shipping: 15, expected: '2026-04-09' }], ["Two canvases ordered from the canvas maker at 140 apiece, fifteen carriage. Three weeks he says, and he's eighty-one."]),
  ],
  never: [
    'I think the noise is coming from the timing gears.',
    "I didn't order the rings.", "Haven't ordered the rings yet.", "I'm going to order the rings.", 'need to order rings', "I'll order the rings tomorrow.", 'I should order the rings.', 'I was going to order the rings but I found a set.', 'If he has them I ordered the wrong ones.', 'Must order the rings.', 'The rings I ordered came.',
    'in order of size', 'the firing order is one two', 'put the leaves back in order', 'Order the rings.', 'thinking of ordering rings', 'never ordered the rings', 'it is in good working order', 'forgot to order the rings', 'almost ordered the wrong rings', 'the belt they sent is wrong so its going back', 'they sent the wrong belt', "what's on order",
  ],
};

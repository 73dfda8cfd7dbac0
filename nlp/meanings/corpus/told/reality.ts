import { told, type ToldCorpus } from './phrase.ts';

const found = (part: string, condition: string, verdict?: string): Record<string, unknown> => ({ kind: 'finding', part, condition, ...(verdict ? { verdict } : {}) });

/** What is so, and what only sounds it: doubt, hearsay, conditions, wishes, plans and near misses give no finding. */
export const REALITY: ToldCorpus = {
  kind: 'finding',
  phrases: [
    ...told([found('oil seal', 'had it', 'replace')], ["The oil seal's had it.", 'oil seal has had it', "oil seal's had it"]),
    ...told([found('fan belt', 'past it', 'replace')], ['Fan belt is past it.', "The fan belt's past it."]),
    ...told([found('battery', "won't hold a charge")], ["Battery won't hold a charge.", "the battery won't hold a charge"]),
    ...told([found('starter motor', "won't turn")], ["Starter motor won't turn."]),
    ...told([found('rings', 'free')], ['rings free', 'Rings are free.', "The rings are free."]),
    ...told([found('clutch', 'slips')], ['clutch slips', 'The clutch slips.']),
    ...told([found('lights', 'work')], ['lights work', 'The lights work.']),
    ...told([found('bores', 'good, no ridge', 'good')], ['Bores good, no ridge.']),
    ...told([found('points', 'pitted'), found('condenser', 'cracked'), found('coil', 'ok', 'good')], ['points pitted condenser cracked coil ok', 'Points pitted, condenser cracked, coil ok.', 'Points are pitted, condenser is cracked and the coil is ok.']),
    ...told([found('left bearing', 'junk', 'replace'), found('right bearing', 'ok', 'good')], ['left bearing junk right one ok', 'Left bearing is junk, right one is ok.', "left bearing's junk, the right one's ok"]),
    ...told([found('wiring', 'brittle', 'replace')], ["Wiring's brittle, needs replacing.", 'Wiring is brittle and needs replacing.', "The wiring's brittle, it needs replacing."]),
    ...told([found('crank', 'can be reground', 'repair')], ['Crank can be reground.', 'The crank can be reground.']),
    ...told([found('tyres', 'bald', 'reuse')], ["Tyres are bald but they'll do.", "Tyres are bald. They'll do."]),
    ...told([found('block', 'hairline crack')], ["There's a hairline crack in the block.", 'hairline crack in the block', 'Found a hairline crack in the block.']),
    ...told([found('studs', 'two sheared off in the block')], ['Two studs sheared off in the block.', 'two studs are sheared off in the block']),
    ...told([found('clutch plate', 'down to the rivets')], ['Clutch plate is down to the rivets.', 'clutch plate down to the rivets']),
    ...told([found('water pump', 'knackered', 'replace')], ['water pump knackered', 'The water pump is knackered.', "Water pump's knackered."]),
    ...told([found('mudguards', 'like lace')], ['Mudguards are like lace.', 'The mudguards are like lace.']),
  ],
  never: [
    'Dave reckons the crank is bent.', 'He said the gasket was leaking.', 'They tell me the block is cracked.', "Apparently the block's cracked.", 'A lad at the counter says the bearing is shot.', 'Seller swore the engine was rebuilt.',
    "I'm not sure the bearing is any good.", 'I wonder if the ring is stuck.', 'Could be the seal leaking.', 'Might be a cracked head.', "I bet the head's cracked.", "Hope the crank isn't bent.", "If the block's cracked I'm done.", "Unless the shaft is bent it'll go back in.",
    "As long as the shaft is straight it'll do.", 'Assuming the block is sound I will bore it.', 'Suppose the head is cracked.', 'In case the seal leaks I bought two.', "So the seal doesn't leak I used sealant.", "Pump's probably shot.", 'The pump might be shot.', 'The pump must be shot.',
    'The bearing should be fine.', 'The bearing will be fine.', 'The seals are supposed to be good.', "I don't think the gear is worn.", "Neighbour's tractor has a cracked block.", 'I wish the seat was in better shape.', 'Was the shaft bent?', 'Is the block cracked?', 'What if the ring is stuck?',
    'Nearly dropped the head.', 'Rear tyre is 13.6 by 28.', 'The paint was like taffy.', "The kettle's gone and died on me.", 'When the paint is dry I will fit the hood.', 'Need the good jack back.', 'Ordered a cracked manifold for the core.', 'Looks like rain.', "It's too cold to paint.", 'The dog is muddy.', 'Traffic was bad, lost an hour.', 'The instructions are useless.', 'The hole is a clearance hole.', 'My back is shot and my knees are worn out.', 'Price was good.', 'It was a good day.', "Coffee's cold and so am I.",
  ],
};

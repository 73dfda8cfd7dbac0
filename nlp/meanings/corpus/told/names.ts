import { told, type ToldCorpus } from './phrase.ts';

const found = (part: string, condition: string, verdict?: string): Record<string, unknown> => ({ kind: 'finding', part, condition, ...(verdict ? { verdict } : {}) });
const fit = (part: string, state: string): Record<string, unknown> => ({ kind: 'fit', part, state });

/** Parts of strange machines: words that nobody knows, parts named by what they do, numbered ones, and what stands before or round a name. */
export const NAMES: ToldCorpus = {
  kind: 'finding',
  phrases: [
    ...told([fit('doffer', 'off')], ["doffer's out", 'The doffer is out.', 'Took the doffer off.']),
    ...told([found('second shaft', 'bent'), found('third shaft', 'grand', 'good')], ["Second shaft is bent, third one's grand.", 'Second shaft is bent. Third one is grand.']),
    ...told([{ kind: 'stow', part: 'hold downs', where: 'in a tin' }], ['The four hold downs are in a tin.', 'the hold downs are in a tin']),
    ...told([found('pull out', 'seized')], ['the pull out is seized']),
    ...told([found('pickup tine bar number three', 'cracked')], ['Pickup tine bar number three is cracked.']),
    ...told([found('twine box lid hinge', 'broke')], ['On the twine box, the lid hinge is broke.']),
    ...told([found('left bush', 'worn')], ['On the left side, the bush is worn.']),
    ...told([found('pin', 'sheared')], ['What I found was the pin sheared.', 'What was wrong was the pin had sheared.', 'What happened was the pin sheared.', 'Turns out the pin was sheared.', 'The trouble was the pin had sheared.']),
    ...told([fit('guard', 'off'), fit('shaft', 'off')], ['Off with the guard, out with the shaft.', 'Off with the guard and out with the shaft.']),
    ...told([{ kind: 'work', part: 'pins', action: 'grease' }], ['All I did today was grease the pins.', 'What I did was grease the pins.']),
    ...told([found('pinion', 'worn teeth')], ['The pinion has worn teeth.']),
    ...told([found('lift trip', 'jammed half way')], ['The trip for the lift is jammed half way.']),
    ...told([found('bull wheel pawls', 'good', 'good')], ["bull wheel pawls, them's good", 'Bull wheel pawls, they are good.']),
    ...told([found('cam follower', 'pitted')], ['Cam follower is pitted.']),
    ...told([{ kind: 'job', do: 'take off', part: 'hub' }], ['The hub has to come off.', "The hub's coming off Saturday.", 'The hub comes off saturday.']),
    ...told([fit('hood', 'off'), fit('grille', 'off')], ['Took the hood and grille off.', 'Got the hood and the grille off.']),
    ...told([found('slide', 'scored')], ['The slide is scored.']),
    ...told([found('tool rest', 'cracked')], ['Tool rest is cracked.']),
    ...told([{ kind: 'job', do: 'grease', part: 'chain' }], ['The chain needs a dab of grease.', 'Chain wants a squirt of grease.']),
    ...told([found('spider', 'welded to the shaft')], ["Somebody's welded the spider to the shaft.", 'The last owner welded the spider to the shaft.']),
    ...told([found('bolt', 'worked loose')], ['The bolt worked loose.', 'The bolt has worked loose.']),
    ...told([found('race', 'blue with heat')], ['Race is blue with heat.']),
    ...told([found('knife', 'bent')], ["The mower's knife is bent."]),
    ...told([found('tine bar number three', 'bent'), found('tine bar number five', 'lost its roller')], ['Tine bar number three is bent and number five lost its roller.']),
    ...told([found('left jaw bush', 'tight'), found('right jaw bush', 'sloppy')], ['Jaw bushes: left tight, right sloppy.']),
    ...told([fit('ram nut', 'off'), found('ram nut thread', 'rough')], ["Ram nut came off, thread's rough."]),
    ...told([found('pickup screen', 'blocked solid')], ['It was the pickup screen, blocked solid.']),
    ...told([found('gear', 'chip out of two teeth')], ["The gear's got a chip out of two teeth."]),
    ...told([found('top blade', "won't budge")], ["Top blade won't budge."]),
    ...told([found('nut', 'for the bin', 'replace')], ["The nut's for the bin."]),
    ...told([found('bearing', 'gone dry')], ['The bearing has gone dry.']),
    ...told([found('fence', 'bent')], ['Fence: bent.']),
    ...told([found('pinion', 'no marks'), found('side gears', 'no marks')], ['Pinion and side gears: no marks.']),
    ...told([found('thrust washers', 'paper thin')], ['Thrust washers: paper thin.']),
    ...told([found('number one cylinder', 'fine', 'good'), found('number two cylinder', 'weeping')], ['Number one cylinder fine, number two weeping.']),
    ...told([{ kind: 'work', part: 'deck', action: 'blast' }, { kind: 'work', part: 'deck', action: 'prime' }], ['The deck is blasted and primed both sides.']),
    ...told([{ kind: 'work', part: 'bed ways', action: 'scrape', done: false }], ['Started on scraping the bed ways.', 'Started scraping the bed ways.']),
  ],
  never: ['Will do the left lever bush after dinner.', 'Oh and that pulley I said was bent?', 'Not one of those shear pins is the right size.', 'The magneto is going to the rewinder Monday.', 'Half the rivets are in.', 'Began taking the tyre off the flywheel.', 'Put a straightedge across the deck.', 'My arm is broken.', 'Someone told me the pump was rebuilt.', 'Cluster gear went with it.', "Jim's engine has the same fault.", "Dave's baler has a cracked flywheel.", "Grandad's plough is rusted solid.", 'The pull out of the block was a struggle.', 'Off with his old mates to the fair.', 'The plough has to come off the field before the rain.'],
};

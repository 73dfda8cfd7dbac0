import { told, type ToldCorpus } from './phrase.ts';

export const STOWS: ToldCorpus = {
  kind: 'stow',
  phrases: [
    ...told([{ kind: 'stow', part: 'king pins', where: 'in the coffee can' }], ['King pins are in the coffee can.', 'Put the king pins in the coffee can.', 'the king pins went in the coffee can', 'king pins in the coffee can', 'Stuck the king pins in the coffee can.', "king pins're in the coffee can", 'I put the king pins in the coffee can', 'The king pins are living in the coffee can now.', 'bunged the king pins in the coffee can', 'King pins: in the coffee can.', 'Chucked the king pins into the coffee can.', 'tossed the king pins in the coffee can', 'Threw the king pins in the coffee can', 'King pins are stored in the coffee can']),
    ...told([{ kind: 'stow', part: 'bonnet', where: 'behind the shed door' }], ['Bonnet is behind the shed door.', 'Leaned the bonnet up behind the shed door.', 'stood the bonnet behind the shed door', 'The bonnet is leaning behind the shed door.', 'Bonnet is propped behind the shed door.', 'left the bonnet behind the shed door', 'Bonnet stashed behind the shed door.', "bonnet's behind the shed door", 'Slid the bonnet behind the shed door.']),
    ...told([{ kind: 'stow', part: 'valve springs', where: 'on the third shelf in the loft' }], ['Valve springs are on the third shelf in the loft.', 'Put the valve springs on the third shelf in the loft.', 'valve springs on the third shelf in the loft', 'The valve springs went up on the third shelf in the loft.', 'stored the valve springs up on the third shelf in the loft']),
    ...told([{ kind: 'stow', part: 'shims', where: 'in a jam jar' }], ['Shims are in a jam jar.', 'put the shims in a jam jar', 'shims in a jam jar', 'bagged the shims and put them in a jam jar', 'Shims went into a jam jar.']),
    ...told([{ kind: 'fit', part: 'hood', state: 'off' }, { kind: 'stow', part: 'hood', where: 'on the back of the barn door' }], ["Took the hood off and it's hanging on the back of the barn door.", 'Hood is off and hanging on the back of the barn door.', 'Pulled the hood and hung it on the back of the barn door.', 'hood off, hung on the back of the barn door']),
    ...told([{ kind: 'stow', part: 'bushing', where: 'in the scrap bucket' }], ["Bushing's in the scrap bucket.", 'The bushing is in the scrap bucket.', 'Threw the bushing in the scrap bucket.', 'bushing in the scrap bucket']),
    ...told([{ kind: 'stow', part: 'drive bolts', where: 'in with the mag' }], ['Put the drive bolts in with the mag.', 'chucked the drive bolts in with the mag']),
    ...told([{ kind: 'stow', part: 'hub caps', where: 'blue bucket under the stairs' }], ['Hub caps: blue bucket under the stairs.']),
    ...told([{ kind: 'stow', part: 'grain tray', where: 'on four drums' }], ['The grain tray is on four drums.']),
    ...told([{ kind: 'stow', part: 'brake drums', where: 'shelf three' }, { kind: 'stow', part: 'hubs', where: 'shelf four' }], ['Shelf three: brake drums. Shelf four: hubs.']),
    ...told([{ kind: 'stow', part: 'jets', where: 'in a jam jar beside the radio' }], ["You'll find the jets in a jam jar beside the radio."]),
    ...told([{ kind: 'stow', part: 'shims', where: 'coffee tin on the windowsill' }], ["Coffee tin on the windowsill, that's where the shims live."]),
    ...told([{ kind: 'stow', part: 'big end shells', where: 'in oily rag under the bench' }], ['Big end shells wrapped in oily rag under the bench.']),
    ...told([{ kind: 'fit', part: 'pulley', state: 'off' }, { kind: 'stow', part: 'pulley', where: 'in the truck bed' }], ["Pulley's off and sitting out in the truck bed."]),
  ],
  never: ['No copper washers left in the drawer.', 'Put the never-seize on the list.', "You'll find the drain plug tight.", 'The cheapest I found was 27.50 at the bearing house.', 'The gauge in the box is some kind of foreign.', 'Threw the old gasket in the stove.', 'Chucked the old hose on the bonfire.', 'Tossed the split pins in the trash.', 
    'The beam is 320 kilos on three legs.', 'Put the cover on with the four bolts.',
    'Chucked the magneto in the post to the winding shop.', 'Put the pump in the mail this morning.',
    'The spare key is somewhere in the house.',
    'The piston is in the bore.', 'King pins are in.', 'The head is on the block.', "I didn't put the pins in the can.", "I'll put the pins in the can.", 'Where did I put the pins?', "There's water in the oil.", 'The bearing is in good shape.', 'put the cover on the gearbox', 'The engine is in the tractor.', 'Put oil in the gearbox.', 'there is play in the bearing', 'the hub is on order', 'The crack is in the flange.',
    'I worked in the shop all day', 'dropped a nut on the floor and lost it', 'the belt is on the pulley', 'got it out by the door in two pieces', 'the pins should be in the can', 'rain got in the shed', 'put two hours in on the hub', 'the fan blows in the wrong direction', 'I put new bolts in the hub', 'Put the key in the keyway.', 'left the engine running', 'thrown in free',
  ],
};

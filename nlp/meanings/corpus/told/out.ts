import { told, type ToldCorpus } from './phrase.ts';

export const OUTS: ToldCorpus = {
  kind: 'out',
  phrases: [
    ...told([{ kind: 'out', part: 'radiator', where: 'radiator shop', do: 'recore', until: '2026-03-27' }], [
      'Radiator went to the radiator shop this morning to be recored, back Friday week.', "The radiator's away to the radiator shop to be recored. Friday week, he says.", 'Took the radiator to the radiator shop to be recored, ready the 27th.', 'Sent the radiator out to the radiator shop for recoring, back on the 27th.',
      'Dropped the radiator off at the radiator shop to be recored. He says Friday week.', 'radiator is at the radiator shop being recored, back friday week', 'Radiator is gone to the radiator shop to be recored, Friday week.', 'The radiator left for the radiator shop this morning to be recored, ready Friday week.', "Radiator's off to the radiator shop to be recored, back Friday week.",
      'radiator out at the radiator shop for a recore, back 27 march', 'Left the radiator with the radiator shop to be recored, back Friday week.', 'The radiator went out to the radiator shop to be recored. Should be back Friday week.',
    ]),
    ...told([{ kind: 'out', part: 'dynamo', where: 'auto electrician', do: 'rewind', until: '2026-04-02' }], [
      "Dynamo's away to the auto electrician to be rewound. A fortnight, he reckons.", 'Dynamo went to the auto electrician to be rewound, two weeks.', 'Sent the dynamo to the auto electrician to be rewound, he says a fortnight.', 'the dynamo is with the auto electrician to be rewound, a fortnight', 'Dropped the dynamo in to the auto electrician for a rewind. Two weeks.', "dynamo's gone to the auto electrician for rewinding, two weeks",
    ]),
    ...told([{ kind: 'out', part: 'crankshaft', where: 'machine shop' }], ['Crankshaft is at the machine shop.', 'Took the crankshaft to the machine shop.', "Crankshaft's out at the machine shop.", 'crankshaft gone to the machine shop', 'Dropped the crankshaft at the machine shop.', "The crankshaft's at the machine shop now.", 'Ran the crankshaft over to the machine shop.', 'Crankshaft has gone to the machine shop.', 'Crankshaft went off to the machine shop.', 'Shipped the crankshaft to the machine shop.', 'crankshaft to machine shop', 'The crankshaft is away at the machine shop.']),
    ...told([{ kind: 'fit', part: 'knives', state: 'off' }, { kind: 'out', part: 'knives', where: 'saw doctor', do: 'grind' }], ['Knives are off and away to the saw doctor to be ground.', 'Pulled the knives and sent them to the saw doctor to be ground.', 'Took the knives off and dropped them at the saw doctor to be ground.', 'knives off and gone to the saw doctor to be ground']),
    ...told([{ kind: 'out', part: 'fuel pump', where: 'pump rebuilder' }], ["The fuel pump's in the post to the pump rebuilder.", 'Put the fuel pump in the mail to the pump rebuilder.', 'fuel pump sent to the pump rebuilder', 'Chucked the fuel pump in the post to the pump rebuilder Thursday.', 'I left the fuel pump with the pump rebuilder on Monday.']),
    ...told([{ kind: 'out', part: 'cylinder head', where: 'town', do: 'grind' }], ["Cylinder head's in town getting ground.", 'Cylinder head is in town being ground.']),
    ...told([{ kind: 'out', part: 'brake band', where: 'friction fella', do: 'reline' }], ["Brake band's gone to the friction fella for a reline.", 'Dropped the brake band in to the friction fella to be relined.', 'brake band handed over to the friction fella for relining']),
    ...told([{ kind: 'out', part: 'drums', do: 'skim' }], ['Took the drums in to have them skimmed.', 'Drums are away to be skimmed.', 'drums out for skimming']),
    ...told([{ kind: 'out', part: 'coil', do: 'test', where: 'auto sparky' }], ['Dropped the coil off with the auto sparky to get it tested.', 'Coil is off to the auto sparky to be pressure tested.']),
    ...told([{ kind: 'out', part: 'lid', where: 'Dave', do: 'paint' }], ['The lid went to Dave to be painted.', 'Gave the lid to Dave to be painted.']),
    ...told([{ kind: 'out', part: 'governor', where: 'works', do: 'overhaul', until: '2026-04-12' }], ['The governor has been sent to the works for overhaul and is expected back on 12 April.']),
    ...told([{ kind: 'out', part: 'magneto', where: "Kelly's" }], ["Dad took the magneto to Kelly's.", "Took the magneto over to Kelly's this morning.", "Magneto's down at Kelly's.", "The magneto is at Kelly's, could be three weeks."]),
    ...told([{ kind: 'out', part: 'block', where: "rebuilder's", do: 'hot-tank', until: '2026-03-21' }], ["Block went to get hot-tanked today at the rebuilder's, I'll have it back by the 21st.", "The block is being hot-tanked at the rebuilder's, due back on the 21st."]),
    ...told([{ kind: 'out', part: 'carburettor', where: 'brother', do: 'rebuild' }], ["My brother has the carburettor at his place, he's rebuilding it."]),
    ...told([{ kind: 'out', part: 'brackets', where: 'welder', until: '2026-03-27' }], ["The welder's got both brackets, he's promised them Friday week.", 'The welder picked up the brackets this morning, back Friday week.', 'The brackets are on their way to the welder, back inside eight days.']),
    ...told([{ kind: 'out', part: 'crank', where: 'grinder' }], ['Had the crank sent off to the grinder.', 'Crank has been with the grinder three weeks now.', 'Got the crank sent away to the grinder.']),
    ...told([{ kind: 'out', part: 'radiator', where: 'town', do: 'recore', until: '2026-03-26' }], ['The radiator is getting recored in town, ready Thursday.']),
    ...told([{ kind: 'out', part: 'shafts', do: 'spray' }], ['Shafts have gone off to be metal sprayed.']),
    ...told([{ kind: 'out', part: 'generator', do: 'rewind' }], ["The generator's in being rewound.", "Generator's in for a rewind."]),
  ],
  never: [
    'The dealer has the gasket in stock.', 'My wife has the camera at her house.', 'The radiator is getting recored in town on Thursday.', 'My neighbour picked up the drawbar for me.', 'The dealer has the gasket.',
    'The pump is in the shop.', 'Took the cover to the bench to clean it.', "It's gone to dust.", 'hauled the winch off with the loader', 'Took the wheel off to have a look at the brakes.', 'The generator is up on the bench to be stripped.',
    'I will send the crank away for grinding.',
    "I'll take the radiator to the radiator shop.", "The radiator hasn't gone to the radiator shop yet.", 'need to send the radiator out', 'Radiator is back from the radiator shop.', 'Went to the radiator shop for a hose.', 'Took the hood out to the barn.', 'The radiator is off.', 'I might send the radiator to the radiator shop.', 'Took the truck to town.', 'The gasket is at the parts store for $12.',
    'the bolt is out', 'took my wife to the doctor', 'Should I send the radiator to the radiator shop?', 'radiator is going to the radiator shop on Monday', 'Took the radiator off.', 'went to the machine shop to ask about the crankshaft', 'the oil is out of the sump', 'If it leaks the radiator goes to the radiator shop.', 'I was going to take the crankshaft to the machine shop.',
  ],
};

import { told, type ToldCorpus } from './phrase.ts';

export const ARRIVALS: ToldCorpus = {
  kind: 'arrival',
  phrases: [
    ...told([{ kind: 'arrival', item: 'head gasket' }], [
      'The head gasket came.', 'head gasket came', 'head gasket arrived', 'Head gasket arrived this morning.', 'head gasket turned up', 'The head gasket finally turned up, a day late.', 'Head gasket is here.', "head gasket's here", 'head gasket here', 'The head gasket showed up today.', 'head gasket landed', 'The head gasket came in the post.', 'The head gasket has come.',
      'Got the head gasket in the mail today.', 'The postman brought the head gasket.', 'Head gasket was delivered this morning.', 'Head gasket was on the doorstep when I got home.', 'head gasket came today, two days early', 'The head gasket that I ordered is here.', 'the head gasket came in', 'Head gasket has landed.', 'UPS man brought the head gasket'.replace('UPS man', 'Courier'), 'received the head gasket',
      'head gasket just arrived', 'Head gasket arrived at last.', 'in the post today: head gasket', 'Head gasket came at last, thank God.', 'The head gasket I ordered turned up.',
    ].filter(s => !/^in the post/.test(s))),
    ...told([{ kind: 'arrival', item: 'radiator' }], [
      "The radiator's back.", 'Radiator is back from the radiator shop.', 'radiator back', 'Got the radiator back from the radiator shop.', 'Radiator came back today.', 'Picked up the radiator from the radiator shop.', "the radiator's home", 'Radiator home from the radiator shop.', 'collected the radiator from the radiator shop', 'Brought the radiator home from the radiator shop.', 'The radiator came back from the radiator shop this morning.',
      'fetched the radiator home', 'The radiator is back from being recored.', 'radiator back from the radiator shop today',
    ], { prior: ['Radiator is out at the radiator shop to be recored.'] }),
    ...told([{ kind: 'arrival', item: 'gasket' }, { kind: 'arrival', item: 'rings' }], ['The gasket and the rings came.', 'gasket and rings arrived', 'Gasket and rings are here.', 'The gasket came and so did the rings.', 'both the gasket and the rings turned up today'].slice(0, 3)),
    ...told([{ kind: 'arrival', item: 'magneto' }], ['Magneto came home on the boat last night.', 'Magneto is back a day late.', "Magneto's home, a mere five weeks late.", 'the magneto has returned from rewinding', 'magneto home from the winding shop', 'Magneto came in on the bus.']),
    ...told([{ kind: 'arrival', item: 'bands' }, { kind: 'work', part: 'bands', action: 'reline' }], ['Bands come home relined.', 'Bands are back, they relined them.', 'Collected the bands, relined.'].slice(0, 1)),
    ...told([{ kind: 'arrival', item: 'fan belt' }, { kind: 'arrival', item: 'hoses' }], ['Delivery today: fan belt, hoses.', 'Arrived: fan belt and hoses', "Today's post: fan belt, hoses"].slice(0, 2)),
    ...told([{ kind: 'arrival', item: 'seals' }], ['UPS dropped off a box: the seals.', 'Postman brought the seals.', "Seals I'd been waiting on finally rolled in.", 'The courier handed over the seals.', 'The seals are back off Kev.']),
  ],
  never: ["The clutch springs are coming from the spring maker.", 'The clutch came in handy.', "Water hopper's got a hairline on the back side.", 'The bus dropped me at the gate.', 
    'Then company came.',
    "head's at home", 'It came straight back out.', 'Tried the rack in the housing and it came straight back out.', 'The windscreen is in one piece.', 'The bands come home Friday.',
    'The dog is back.', 'Spring is here.',
    "The gasket hasn't come.", 'No gasket yet.', 'The gasket came off in pieces.', 'It came apart in my hands.', 'The gasket is coming Tuesday.', 'The bolt came out clean.', 'gasket should be here Friday', "When's the gasket coming?", "The gasket didn't turn up.", 'Turned up the heat.', 'If the gasket comes I can start.', 'The cover is back on.', 'Put the cover back.', 'My neighbour is here.', 'came home early',
    'The head came up nice with a bit of polish.', 'the wheel came loose', 'here is the plan', 'my brother turned up', 'Rain came in under the door.', 'the smoke came back', 'waiting on the gasket to come', 'the knock is back', 'water came out of the block', 'the pin came home with a tap', 'the crank turned over', 'The piston is back in the bore.', "can't start till the gasket is here",
  ],
};

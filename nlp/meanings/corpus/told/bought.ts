import { told, type ToldCorpus } from './phrase.ts';

export const BOUGHTS: ToldCorpus = {
  kind: 'bought',
  phrases: [
    ...told([{ kind: 'bought', item: 'hydraulic oil', source: 'marine supply', price: 58 }], ['58 dollars for a pail of hydraulic oil at the marine supply.']),
    ...told([{ kind: 'bought', item: 'knife sections', source: 'mower shop', price: 18.4 }, { kind: 'bought', item: 'rivets', source: 'mower shop', price: 6 }], ['Stopped at the mower shop on the way home. 18.40 for knife sections, six bucks for the rivets.']),
    ...told([{ kind: 'arrival', item: 'radiator' }, { kind: 'bought', item: 'radiator', source: 'tinsmith', price: 85 }], ['Radiator came home on the boat last night. Paid the tinsmith 85 for his trouble.']),
    ...told([{ kind: 'bought', item: 'fan belt', source: 'parts store', price: 14 }], [
      'Bought a fan belt at the parts store for 14 dollars.', 'bought a fan belt from the parts store $14', 'Got a fan belt at the parts store, fourteen bucks.', 'picked up a fan belt at the parts store for $14', 'Paid 14 dollars for a fan belt at the parts store.', 'Fourteen dollars for a fan belt at the parts store, paid.',
      'got fan belt, 14, parts store', 'Fan belt bought at the parts store, $14.', 'grabbed a fan belt from the parts store, 14 bucks', 'I bought a fan belt off the parts store for fourteen', 'Bought a fan belt. Parts store, $14.', 'Parts store had a fan belt for 14 so I bought it.', 'Stopped at the parts store and bought a fan belt for $14.',
      'Went to the parts store and got a fan belt, 14 dollars.', 'Found a fan belt at the parts store, ten and four is fourteen dollars'].filter(s => !/ten and four/.test(s)),
    ),
    ...told([{ kind: 'bought', item: 'wheel studs', source: 'tire shop', price: 6.5 }], ['Bought two wheel studs at the tire shop, 3.25 each.', 'Two wheel studs at 3.25 each from the tire shop, paid cash.', 'got 2 wheel studs from the tire shop 3.25 ea', 'picked up two wheel studs at the tire shop, $3.25 apiece', 'Bought a pair of wheel studs at the tire shop, 6.50 for the two.', 'bought two wheel studs from the tire shop for 3.25 each']),
    ...told([{ kind: 'bought', item: 'drain plug', price: 5 }, { kind: 'bought', item: 'oil filter', price: 9 }], ['Bought a drain plug for 5 dollars and an oil filter for 9.', 'bought a drain plug, 5 bucks, and an oil filter, 9 bucks', 'Got a drain plug for $5 and an oil filter for $9.', 'Picked up a drain plug, $5, and an oil filter, $9.']),
    ...told([{ kind: 'bought', item: 'carburettor', source: 'autojumble', price: 40 }], ['Forty quid for a carburettor at the autojumble, paid.', 'Picked up a carburettor at the autojumble for forty quid.', 'got a carburettor at the autojumble, forty quid', 'found a carburettor at the autojumble, forty quid', 'A carburettor at the autojumble set me back forty quid.', 'Carburettor from the autojumble cost me forty quid.', 'I handed over forty quid for a carburettor at the autojumble.', 'came home from the autojumble with a carburettor for forty quid']),
    ...told([{ kind: 'bought', item: 'tines' }], ['Bought two dozen tines.', 'bought tines today', 'Bought some tines.']),
    ...told([{ kind: 'bought', item: 'magneto', source: 'magneto man', price: 120 }], ['Paid the magneto man 120 dollars for the magneto.', 'Paid the magneto man his 120 for the magneto.', 'Gave the magneto man 120 dollars for the magneto.']),
    ...told([{ kind: 'arrival', item: 'radiator' }, { kind: 'bought', item: 'radiator', source: 'tinsmith', price: 85 }], ["Radiator's back from the tinsmith. Paid him 85 for his trouble."]),
    ...told([{ kind: 'bought', item: 'gearbox', source: 'yard', price: 50 }], ['took it for fifty'], { prior: ['the yard wants 60 for the gearbox'] }),
    ...told([{ kind: 'bought', item: 'gearbox', source: 'yard', price: 50 }], ['Talked him down to 50 and brought it home'], { prior: ['the yard wants 60 for the gearbox'] }),
    ...told([{ kind: 'bought', item: 'gearbox', source: 'yard', price: 50 }], ['got it for fifty in the end'], { prior: ['the yard wants 60 for the gearbox'] }),
    ...told([{ kind: 'bought', item: 'bilge pump', source: 'two-hand yard down the creek', price: 150 }], ['Fetched it. Beat him down to 150.'], { prior: ['Chandler wants 210 for the bilge pump, two-hand yard down the creek says 165.'] }),
    ...told([{ kind: 'bought', item: 'elevator chain', source: 'fellow at the farm auction', price: 25 }], ['Drove out and bought the roll off him.'], { prior: ['Elevator chain: parts house wants 2.15 a foot, and a fellow at the farm auction will let a whole roll go for $25.'] }),
    ...told([{ kind: 'bought', item: 'knife sections', source: 'mower shop', price: 18.4 }, { kind: 'bought', item: 'rivets', source: 'mower shop', price: 6 }], ['Stopped at the mower shop on the way home. 18.40 for knife sections, six bucks for the rivets.']),
    ...told([{ kind: 'bought', item: 'flat belt', source: 'fella two farms down', price: 90 }], ['Sixty foot of flat belt off a fella two farms down, ninety dollars, paid.']),
    ...told([{ kind: 'bought', item: 'gearbox', source: 'yard', price: 200 }], ['Handed over two hundred for the gearbox at the yard.']),
    ...told([{ kind: 'bought', item: 'battery', source: 'auto parts', price: 80 }], ['shelled out eighty for a battery at the auto parts']),
    ...told([{ kind: 'bought', item: 'rebore', source: 'engine shop', price: 240 }], ['The rebore came to 240 from the engine shop.']),
    ...told([{ kind: 'bought', item: 'fan belt', price: 9 }], ['that fan belt cost nine dollars']),
    ...told([{ kind: 'bought', item: 'drill bit set', price: 60 }], ['treated myself to a new drill bit set, 60 dollars']),
    ...told([{ kind: 'arrival', item: 'toggle plate' }, { kind: 'bought', item: 'toggle plate', source: 'foundry', price: 160 }], ["It's back from the foundry. A hundred and sixty they had off me."], { prior: ["Toggle plate's gone to the foundry for a new casting, back the seventeenth."] }),
  ],
  never: [
    "I didn't buy the belt.", 'need to buy a belt', "I'm not paying 140 for a nut.", "I'll buy a belt on Friday.", 'The yard wants 40 dollars for a belt.', 'Got the head off.', 'got the bonnet off herself this morning', 'got two bolts out', 'Got the hub hot with the torch.', 'got 40 psi at the gauge', 'got a price of 40 dollars from the yard for a belt',
    'I could buy a belt for 14.', 'was going to buy a belt', 'I would have bought a belt.', 'got the belt on', 'Got four thou on the feeler gauge.', 'picked up the hub from the bench', 'got it from the shelf', 'got a quote from the plater, 60 dollars for the rims', 'spent two hours at the yard',
  ],
};

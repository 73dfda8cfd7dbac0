import { told, type ToldCorpus } from './phrase.ts';

const fit = (part: string, state: string, more: Record<string, unknown> = {}): Record<string, unknown> => ({ kind: 'fit', part, state, ...more });

export const FITS: ToldCorpus = {
  kind: 'fit',
  phrases: [
    ...told([fit('water pump', 'off')], [
      'Water pump is off.', "The water pump's off.", 'water pump off', 'Pulled the water pump.', 'Took the water pump off this morning.', 'Got the water pump off at last.', 'I removed the water pump.', 'Water pump came off without a fight.', 'unbolted the water pump', 'Finally got the water pump out.', 'The water pump is out.', 'took off the water pump', 'water pump has come off', "I've had the water pump off.",
      'okay so uh the water pump is off now', 'Water pump removed.', 'Whipped the water pump off before lunch.', 'lifted the water pump out', 'Pulled the water pump off the tractor.', 'The water pump has been removed.', 'Wrestled the water pump out of there.', 'Managed to get the water pump off.', 'dismantled the water pump', 'We pulled the water pump yesterday.', 'The water pump is finally out of the tractor.', 'Knocked the water pump out.', 'water pumps off at last',
    ], { machines: ['tractor'] }),
    ...told([fit('carburettor', 'on')], [
      'Carburettor is on.', 'Put the carburettor back on.', 'The carburettor is back on.', 'Fitted the carburettor.', 'Bolted the carburettor on.', 'carburettor on for good', 'Carburettor back on', 'installed the carburettor', 'The carburettor went back on this afternoon.', 'I bolted up the carburettor.', 'carburettor refitted', 'Got the carburettor back on.', 'Mounted the carburettor.', "Carburettor's on, no leaks yet to speak of" ].slice(0, 13)),
    ...told([fit('oil seal', 'on')], ['Pressed the new oil seal in.', 'Tapped the oil seal home.', 'Drove the oil seal in.', 'The new oil seal is in.', 'Replaced the oil seal.', 'swapped the oil seal', 'oil seal pressed in', 'Oil seal is in.', 'The oil seal went in nicely.', 'Popped a new oil seal in.', 'I put a new oil seal in.']),
    ...told([fit('head', 'tight'), { kind: 'reading', part: 'head', what: 'torque', value: 60, unit: 'lb-ft' }], ['Torqued the head to 60 foot-pounds.', 'Head torqued to 60 ft-lb.', 'The head is torqued to sixty foot pounds.', 'Head is down and torqued to 60 foot-pounds.', 'Pulled the head down to 60 foot-pounds.', "Head's torqued to 60 lb-ft.", 'torqued head 60 ft lb', 'Brought the head up to 60 foot-pounds in three steps.']),
    ...told([fit('fan belt', 'tight')], ['Fan belt is tight.', 'Tightened the fan belt.', 'Adjusted the fan belt.', 'fan belt adjusted', "The fan belt's tensioned.", 'Fan belt is adjusted and tight.']),
    ...told([fit('left fender', 'temporary', { with: 'two bolts' })], ['Left fender is on with two bolts for now.', 'Hung the left fender with two bolts.', 'Left fender is hung on two bolts.', "The left fender's just hanging on two bolts.", 'left fender on with two bolts finger tight', 'Put the left fender on loose with two bolts.', 'Left fender is only held on with two bolts.']),
    ...told([fit('hub nut', 'temporary')], ['Hub nut is only finger tight.', 'hub nut hand tight for now', 'The hub nut is just finger tight.', 'hub nut finger tight', 'Nipped up the hub nut.', 'Ran the hub nut on finger tight.']),
    ...told([fit('bonnet', 'tried')], ['Put the bonnet on to check the gap, it comes off again for paint.', 'Bonnet is on just to see how it sits.', 'Tried the bonnet on for fit.', 'Mocked up the bonnet.', 'The bonnet is on for a trial fit.', 'Set the bonnet on just to check the fit.', "Bonnet's only mocked up.", 'test fitted the bonnet', 'Offered up the bonnet to see if it clears.']),
    ...told([fit('sprocket', 'tried'), fit('sprocket', 'off')], ['Tried the sprocket on the shaft and took it off again.', 'Slid the sprocket on to see if it lines up, then took it back off.', 'sprocket on to check the line, then off again']),
    ...told([fit('starter', 'off'), fit('generator', 'off')], ['Pulled the starter and the generator.', 'Starter and generator are off.', 'Starter is off and so is the generator.'].slice(0, 2)),
    ...told([fit('manifold', 'off'), { kind: 'work', part: 'manifold', action: 'clean' }], ['Took the manifold off and cleaned it.', 'Manifold is off and cleaned.', 'pulled the manifold cleaned it']),
    ...told([fit('rocker shaft', 'on')], ["That's the rocker shaft on.", "thats the rocker shaft fitted", "That's the rocker shaft back in", 'Rocker shaft is up.', 'Coaxed the rocker shaft back in.']),
    ...told([fit('spring', 'on')], ["that's it fitted", 'thats it back on', "And that's it on."], { prior: ['Cleaned the spring.'] }),
    ...told([fit('header reel', 'off')], ['Got the header reel down off the combine.', 'Header reel is down off the tower.', 'took the header reel down', 'The header reel lifted off.', 'Lifted the header reel clear with the hoist.', 'manhandled the header reel off', 'header reel came away no bother'].slice(0, 6)),
    ...told([fit('half shafts', 'off')], ['Both half shafts drawn.', 'Drew the half shafts.']),
    ...told([fit('wheel nuts', 'tight')], ['Wheel nuts are done up.', 'Did up the wheel nuts.', 'Pulled the wheel nuts down in three goes.']),
    ...told([fit('sieve', 'temporary', { with: 'three bolts' })], ['Sieve is on by three bolts so far.', "The sieve's only on by three bolts.", 'Sieve is on but only with three bolts.']),
    ...told([fit('lower blade', 'temporary')], ['Blade bolted on but not tightened.', 'Laid the blade on, no bolts.', 'Put the blade on, not bolted down yet.', 'Blade sitting in its place, not bolted.'].map(x => x.replace(/blade/, 'lower blade').replace(/^Blade/, 'Lower blade'))),
    ...told([fit('manifold', 'temporary', { with: 'wire' })], ['Strapped the manifold up with wire for tonight.', 'Manifold is only pinned with wire for now.', 'Clamped the manifold on with wire for now.']),
    ...told([fit('starter', 'off'), fit('dynamo', 'off'), fit('fan', 'off')], ['Starter, dynamo and fan all off.', 'Starter, dynamo, fan: all off.', 'starter dynamo and fan are off'].slice(0, 2)),
    ...told([fit('valve gear', 'tight'), { kind: 'reading', part: 'valve gear', what: 'clearance', value: 0.018, unit: 'in' }], ['Set the clearance on the valve gear to eighteen thou.', 'Clearance on the valve gear set to eighteen thou.'].slice(0, 1)),
    ...told([fit('points', 'on'), fit('condenser', 'on'), fit('rotor arm', 'on')], ['Fitted today: new points, condenser and rotor arm.', 'Back on: points, condenser, rotor arm']),
    ...told([fit('rocker cover', 'off'), fit('pushrods', 'off')], ['Off today: rocker cover, pushrods.', 'Removed: rocker cover and pushrods']),
    ...told([fit('hoist brake', 'tight'), { kind: 'reading', part: 'hoist brake', what: 'air gap', value: 0.6, unit: 'mm' }], ['The air gap is set to 0.6 mm.'], { prior: ['Cleaned the hoist brake.'] }),
    ...told([fit('vise', 'tried')], ['Stood the vise on the table to see would it clear the ram.', 'Stuck the vise on there to see does it clear.']),
    ...told([fit('slats', 'tried')], ['All the slats have been pinned on, and are to come off again for varnishing.', 'The slats are on, and will come off again for varnish.']),
    ...told([fit('sickle bar', 'temporary', { with: 'two bolts' })], ['Sickle bar is hung on two bolts so I can see if it clears.']),
    ...told([fit('top roll', 'off'), { kind: 'stow', part: 'top roll', where: 'on the sled by the door' }], ['Top roll is off and on the sled by the door.', 'The top roll is off and sitting on the sled by the door.']),
  ],
  never: [
    'The planter is out of the shed.', 'The tin has tens and fives in it.', 'Tried it at 7 psi in the trough.',
    'The pawl spring was hooked on backwards when I got this thing.', 'took the skin off my knuckle', 'had my readers off', 'Before I took them down the doors were hung with their hooks outward.',
    'Thrust collar is on back to front.', 'The plate is in upside down.', 'The keyway is wallowed out.', 'Sorted the wiring out.', 'shut the fuel tap off', 'Oil pressure is up.', 'The tractor is up on blocks.', 'three teeth busted clean off', 'The price is down.',
    'The wear was on the side of the jib.', 'The groove is on the top of the collar.',
    "The water pump isn't off yet.", "Couldn't get the water pump off.", 'Need to take the water pump off.', 'If the pump comes off easily I will be surprised.', "I'll pull the head on Saturday.", 'Was going to pull the head today.', 'The oil came out black.', 'It turned out well.', 'Took the dog out.', 'The wind took the tarp off the barn.', 'Put the kettle on.', 'Got on well today.', 'Came in at noon.', 'Pulled a muscle in my back.', 'the light went out', 'The seat should be on by Friday.',
    'I might fit the carburettor tomorrow.', 'He said he took his head off last year if you believe him.', 'Before the head goes on I have to check it.', 'The pin dropped on the floor.', "Don't put the head on yet.", 'would like to get the hood off this week', 'She is not running right.', 'Called it off at five.',
  ],
};

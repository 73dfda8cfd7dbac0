import { told, type ToldCorpus } from './phrase.ts';

const rule = (first: string, then: string): Record<string, unknown> => ({ kind: 'rule', first, then });

export const RULES: ToldCorpus = {
  kind: 'rule',
  phrases: [
    ...told([rule('agitator out', 'get the hopper off')], ['Getting the hopper off means taking the agitator out first.']),
    ...told([rule('paint', 'decals'), rule('decals', 'lacquer')], ['Paint before decals, decals before lacquer.']),
    ...told([rule('key', 'pulley')], ['Key first and then the pulley.', 'key first, then the pulley']),
    ...told([rule('piston', 'rings'), rule('rings', 'rod')], ['Piston, then rings, then the rod.', 'piston then rings then rod']),
    ...told([rule('shoes', 'drum')], ['Fit the shoes, then the drum.', 'Shoes before the drum.', 'Shoes before drum this time.', 'Shoes, then the drum.']),
    ...told([rule('paint the frame', 'frame')], ["Nothing goes on that frame till it's been painted."]),
    ...told([rule('cut the glass', 'mirror')], ["It's no good putting the mirror back until the glass is cut.", 'No point putting the mirror on until the glass is cut.']),
    ...told([rule('bleed the hydraulics', 'chains')], ["I'm leaving the chains off until the hydraulics are bled.", 'The chains stay off until the hydraulics are bled.']),
    ...told([rule('lap the liner', 'piston')], ['The liner has to be lapped and measured before the piston goes in.']),
    ...told([rule('dowels', 'drop the head')], ["Make sure the dowels are in before the head's dropped on.", 'Dowels in before the head drops on.']),
    ...told([rule('frame square', 'tighten the bolt')], ['Not a bolt gets tightened till the frame is square.']),
    ...told([{ kind: 'rule', first: 'exhaust off', then: 'starter out' }], ["You can't get the starter out unless the exhaust is off.", "The starter won't come out unless the exhaust comes off first."]),
    ...told([rule('true the flywheel', 'crankshaft')], ['Before the crankshaft goes in I have to true the flywheel.', 'The flywheel has to be trued before the crankshaft goes in.', "Don't put the crankshaft in till the flywheel's been trued.", "The crankshaft can't go in until the flywheel is trued.", "Can't put the crankshaft in until the flywheel is trued.", 'The flywheel must be trued before the crankshaft goes back in.', 'crankshaft cant go in till the flywheel is trued', "Don't let me put the crankshaft in before the flywheel's been trued.", 'The crankshaft only goes in after the flywheel is trued.', "Nothing goes in till"].slice(0, 8)),
    ...told([rule('guide', 'thread the belt')], ['The guide has to go on before the belt gets threaded.', 'Guide goes on before the belt is threaded.', 'the guide has to be on before i thread the belt', "Don't thread the belt before the guide is on."]),
    ...told([rule('fender off', 'paint the axle')], ['The fender has to come off before I paint the axle.', 'Fender has to be off before the axle gets painted.', "Can't paint the axle until the fender is off."]),
    ...told([rule('belts off', 'get at the clutch')], ['Belts have to come off before I can get at the clutch.', 'belts have to come off before i can get at the clutch', 'The belts have to come off to get at the clutch.', 'To get at the clutch the belts have to come off.'].slice(0, 3)),
    ...told([rule('clutch plate', 'gearbox')], ["The gearbox can't go in without the clutch plate.", 'The gearbox waits on the clutch plate.', 'Gearbox has to wait for the clutch plate.', 'The gearbox depends on the clutch plate.', 'Clutch plate in before the gearbox.', 'clutch plate first then the gearbox']),
    ...told([rule('dash out', 'do the wiring')], ["The wiring can't be done till the dash is out."]),
    ...told([rule('fuel tank off', 'head off')], ['Fuel tank off before the head comes off.', 'The fuel tank has to come off before the head comes off.']),
    ...told([rule('level the carriage', 'blade')], ['The carriage must be levelled prior to installing the blade.', 'Before installing the blade, the carriage is to be levelled.', 'Blade shall not be fitted until the carriage has been levelled.', 'Once the carriage is levelled the blade can go on.']),
    ...told([rule('paint the axle', 'mudguards')], ["Leave the mudguards off until the axle's painted.", 'The mudguards have to wait until the axle is painted.', 'The mudguards stay off till the axle has been painted.']),
    ...told([rule('nut', 'screw')], ['Until the nut is home the screw may not go up.', "The screw can't go up until the nut is home."]),
    ...told([{ kind: 'job', do: 'turn', part: 'journals' }, rule('turn the journals', 'bottom rolls')], ["Got to turn the journals. No fitting the bottom rolls until that's done."]),
    ...told([rule('polish the roller shaft', 'roller')], ["No roller goes back in before its shaft's been polished."]),
    ...told([rule('level the timbers', 'arbor')], ['No arbor goes in until the timbers are level.']),
    ...told([rule('knee gib', 'lock')], ['The knee gib has to go in before the lock does.']),
    ...told([rule('scrape the ways', 'rollers'), rule('cut the oil grooves', 'rollers')], ["The rollers don't go back in till the ways have been scraped and the oil grooves cut."]),
    ...told([rule('seals', 'drum'), rule('polish the shaft', 'drum')], ["I'm not setting that drum in till the seals show up and the shaft's been polished."]),
    ...told([rule('wash the pump body', 'vanes')], ["Not fitting them vanes till the pump body's been washed."]),
  ],
  never: ['No oil goes in the back axle at all.', "The pump doesn't have to go on before the fan.", "I don't need the belt on before the radiator", 'no need to wait for the pump before the radiator', 'Once the head was off I saw the crack.', 'The pump ran without the belt.', 'Got the clutch out to look at it.', 'He waits on the porch.', 'Check the chain after the first acre.', 'Cleaned it before I fitted it.', 'Had a cup of tea before I started on the head.', 'It leaked before I took it apart.', 'The head came off before the sump.', 'Leave it till Thursday.', 'Two washers under it before I took it off.', 'I got there before the rain.', 'The shop shuts before five.', 'Before lunch I did the brakes.', 'After I painted it I went home.'],
};

import { told, type ToldCorpus } from './phrase.ts';

const work = (part: string, action: string, more: Record<string, unknown> = {}): Record<string, unknown> => ({ kind: 'work', part, action, ...more });

export const WORKS: ToldCorpus = {
  kind: 'work',
  phrases: [
    ...told([work('bolts', 'soak', { done: false, product: 'vinegar' })], ['Left the bolts in a jar of vinegar.', 'The bolts are in a tin of vinegar.', 'Dropped the bolts in a bucket of vinegar.', 'Bolts are sitting in vinegar.']),
    ...told([{ kind: 'stow', part: 'bolts', where: 'in a jar on the shelf' }], ['Left the bolts in a jar on the shelf.']),
    ...told([work('hub', 'clean'), work('hub', 'repack', { product: 'lithium grease' })], ['The hub I cleaned and repacked with lithium grease.']),
    ...told([work('gib', 'scrape', { done: false })], ['Scraping the gib again.', 'Scraping the gib.', 'Still scraping the gib.'].slice(0, 2), { parts: ['gib'] }),
    ...told([work('fuel tank', 'clean')], ['Cleaned the fuel tank.', 'Fuel tank is cleaned.', 'fuel tank cleaned', 'The fuel tank has been cleaned.', 'I cleaned the fuel tank out.', 'Gave the fuel tank a good clean.', 'Got the fuel tank cleaned.', "Fuel tank's been cleaned.", 'We cleaned the fuel tank today.', 'uh cleaned the the fuel tank']),
    ...told([work('valves', 'lap')], ['Lapped the valves.', 'Valves are lapped.', 'valves lapped', "I've lapped the valves."]),
    ...told([work('frame', 'prime', { product: 'red oxide' })], ['Primed the frame with red oxide.', 'Frame is primed with red oxide.', 'Frame primed, red oxide.', 'Put a coat of red oxide on the frame.', 'Gave the frame a coat of red oxide.', 'Frame got a coat of red oxide.', 'primed the frame red oxide two coats', 'The frame has had its coat of red oxide.'].filter(x => !/two coats|its coat/.test(x))),
    ...told([work('sump', 'drain'), work('sump', 'fill', { product: 'thirty weight' })], ['Drained the sump and filled it with thirty weight.', 'Sump is drained and filled with thirty weight.', 'drained the sump filled it with thirty weight']),
    ...told([work('hood', 'clean'), work('hood', 'prime'), work('fenders', 'clean'), work('fenders', 'prime')], ['Cleaned and primed the hood and both fenders.', 'Hood and both fenders are cleaned and primed.']),
    ...told([work('gearbox case', 'paint', { done: false })], ['Started painting the gearbox case.', 'Began painting the gearbox case.', 'Painted half of the gearbox case.', 'Got a start on painting the gearbox case.'].slice(0, 3)),
    ...told([work('clutch lever', 'soak', { product: 'penetrating oil' })], ['Soaked the clutch lever with penetrating oil.', 'Soaked the clutch lever in penetrating oil.', 'clutch lever soaked with penetrating oil']),
    ...told([work('bracket', 'weld')], ['Welded the bracket.', 'Welded up the bracket.', 'bracket welded', 'The bracket is welded.', 'Welded the crack in the bracket.', 'I welded that bracket.']),
    ...told([work('kingpin', 'grease')], ['Greased the kingpin.', 'kingpin greased', 'Kingpin is greased.', 'The kingpin got greased.']),
    ...told([work('magneto', 'test')], ['Tested the magneto.', 'The magneto was tested.', 'magneto tested']),
    ...told([work('lining', 'sand', { product: 'emery' })], ['Sanded the lining with emery.', 'lining sanded with emery', 'Sanded the lining using emery.']),
    ...told([work('radiator', 'flush')], ['They flushed the radiator.', 'Flushed the radiator out.', 'radiator flushed', 'He flushed the radiator.']),
    ...told([{ kind: 'fit', part: 'bearing', state: 'off' }, work('bearing', 'clean'), work('bearing', 'pack', { product: 'grease' }), { kind: 'fit', part: 'bearing', state: 'on' }], ['Took the bearing out, cleaned it, packed it with grease and put it back in.', 'took the bearing out cleaned it packed it with grease and put it back in']),
    ...told([{ kind: 'work', part: 'hopper', action: 'paint', product: 'green' }], ["The hopper's had its second coat of green.", 'Hopper has had a coat of green.']),
    ...told([work('flywheel', 'skim')], ['Took a skim off the flywheel.', 'Ran a light skim across the flywheel.']),
    ...told([work('woodruff key', 'make', { product: 'gauge plate' })], ['Knocked up a new woodruff key from gauge plate.', 'Made a woodruff key out of gauge plate.']),
    ...told([work('loom', 'rewire', { done: false })], ["I'm halfway through rewiring the loom.", "I'm in the middle of rewiring the loom."]),
    ...told([work('hubs', 'clean', { product: 'wire wheel' })], ['Wire wheeled the hubs.', 'hubs wire wheeled']),
    ...told([work('pump body', 'prime')], ['Etch primed the pump body.']),
    ...told([work('chains', 'soak', { product: 'diesel' })], ['Gave the chains a soak in diesel.']),
  ],
  never: [
    'Dropped the coil off with the engine man to get it tested.', 'Made 11 bales with it.', 'I delivered it to myself.', 'Whoever designed it was paid by the bolt.', 'If the screw turns out bent I am in trouble.', 'The wind caught the door and bent the hinge.',    'Need to clean the tank.', "Didn't paint the hood.", 'I was going to sand the fender.', 'Going to prime it tomorrow.', 'I should weld that bracket.', 'Clean the tank tomorrow.', 'If I weld it the crack will spread.', 'Did I grease the kingpin?', 'He wants to paint his truck.', "Haven't greased it yet.", 'The paint is on the shelf.', 'Cut my thumb.', 'Painted the kitchen for my wife.', 'Washed the dishes.', 'Turned the radio on.', 'Filled my flask.', 'Would have primed it if the gun worked.', "I can weld it.",
  ].filter(x => !/kitchen|dishes|radio|flask/.test(x)),
};

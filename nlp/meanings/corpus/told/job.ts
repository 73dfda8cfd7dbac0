import { told, type ToldCorpus } from './phrase.ts';

const job = (act: string, part: string): Record<string, unknown> => ({ kind: 'job', do: act, part });

export const JOBS: ToldCorpus = {
  kind: 'job',
  phrases: [
    ...told([{ kind: 'job', do: 'take out', part: 'pump' }], ['Have to have the pump out tomorrow.']),
    ...told([job('send out', 'magneto')], ["I'm sending the magneto out first thing.", "I'll be sending the magneto out on Monday."]),
    ...told([job('scarf', 'pole')], ["I'll scarf a new piece into the pole.", "I'm going to scarf new ash into the pole."]),
    ...told([job('paint', 'seat frame')], ['I need to paint the seat frame.', "I've got to paint the seat frame.", 'Have to paint the seat frame.', 'gotta paint the seat frame', "I'll paint the seat frame on Monday.", 'Going to paint the seat frame tomorrow.', 'Must paint the seat frame.', 'Seat frame needs painting.', 'The seat frame needs to be painted.', 'The seat frame wants painting.', 'Paint the seat frame tomorrow.', 'Remember to paint the seat frame.', "Don't forget to paint the seat frame.", 'I still have to paint the seat frame.', 'tomorrow im going to paint the seat frame', 'Seat frame has to be painted.', 'the seat frame needs a coat of paint', 'painting the seat frame tomorrow', 'I will paint the seat frame next.', 'Still need to paint the seat frame.']),
    ...told([job('clean', 'carb')], ['Carb needs a good clean.', 'The carb wants a clean.', 'carb needs cleaning', 'Need to clean the carb.', 'The carb could do with a clean.', 'Carb still to be cleaned.', "I'd better clean the carb."].filter(x => !/could/.test(x))),
    ...told([job('send out', 'magneto')], ['Got to send out the magneto.', 'I need to send the magneto out.', "I'll send out the magneto next week.", 'have to send the magneto out']),
    ...told([job('clean', 'hubs'), job('grease', 'hubs')], ['Need to clean and grease the hubs.', 'I have to clean and grease the hubs.', 'The hubs need to be cleaned and greased.']),
    ...told([job('weld', 'bracket'), job('drill', 'mount')], ["I've got to weld the bracket and drill the mount.", 'Have to weld the bracket and drill the mount.']),
    ...told([{ kind: 'job', do: 'bleed', part: 'brakes' }], ['The brakes need bleeding.', 'Brakes are to be bled.', 'The brakes are still to bleed.', 'Brakes to bleed yet.', 'The brakes ought to be bled.']),
    ...told([{ kind: 'job', do: 'take off', part: 'cover' }], ["I'll have the cover off on Sunday.", 'ill have the cover off on sunday', "I'll get the cover off at the weekend.", 'I have to get the cover off.']),
    ...told([{ kind: 'job', do: 'weld', part: 'hinge lug' }], ['The hinge lug requires welding.', 'Hinge lug wants welding.']),
    ...told([{ kind: 'job', do: 'see to', part: 'tappets' }], ['I must see to the tappets.', 'must see to the tappets', 'Got to see to the tappets.']),
    ...told([{ kind: 'job', do: 'sandblast', part: 'frame' }, { kind: 'job', do: 'prime', part: 'frame' }], ['Frame to be sandblasted then primed.', 'Frame is to be sandblasted and primed.']),
    ...told([{ kind: 'job', do: 'drill out', part: 'bolt' }], ['The bolt will have to be drilled out.', 'That bolt has to be drilled out.', 'bolt needs to be drilled out']),
    ...told([job('take off', 'head')], ['The head has to come off.', "Head's still to come off.", 'The head has got to come off yet.', 'Head comes off tomorrow.', "I'll whip the head off after dinner."]),
    ...told([job('put back on', 'hood')], ['The hood has yet to go back on.', 'Hood goes back on Friday.']),
    ...told([job('knock in', 'seal')], ['Still got the seal to knock in.', "I've the seal to knock in yet."]),
    ...told([job('take out', 'rollers'), job('knurl', 'rollers')], ['The rollers have to come out and be knurled again.']),
    ...told([job('drop', 'sump')], ['Next job is dropping the sump.', "It's about time I dropped the sump.", "Somebody's going to have to drop the sump.", "All that's left is dropping the sump."]),
    ...told([job('bleed', 'brakes'), job('set', 'clutch')], ['Next up is bleeding the brakes and setting the clutch.']),
    ...told([job('knock out', 'tank')], ['I have to knock the dent out of the tank.']),
    ...told([job('change', 'gearbox oil'), job('clean', 'breather')], ["Gearbox oil's to be changed still, and the breather cleaned."]),
    ...told([job('weld', 'deck')], ["I'd better get that deck welded before Saturday."]),
    ...told([job('look', 'chain')], ["I'll have a look at the chain.", 'Must have a look at the chain.']),
    ...told([job('grease', 'strap'), job('set', 'valve clearances')], ['Must remember to grease the strap. And set the valve clearances.']),
    ...told([job('paint', 'pump body')], ["Pump body'll get enamel on Saturday.", 'The pump body will get a coat of enamel.']),
  ],
  never: ['Wish I had the flywheel off already.', 'Imagine I had the pump out already.', 'The next job is the clutch.', 'Somebody has to.', 'It was about time.', 'The hood comes off easily.', 'It goes on like a glove.', 'Got a man to look at the pump.', 'I need to see about it.', 'Have the cover off already.', 
    'Painted the seat frame.', "I don't need to paint the seat frame.", 'Should I paint the seat frame?', 'If it rusts I will paint it.', 'I was going to paint the seat frame.', 'Need a seat frame.', 'Need to buy paint.', 'I need to get a new seal.', 'He will paint his tractor.', 'I want a cup of tea.', 'Before I paint the frame it has to be blasted.', "I'll be up the tower Saturday if it isn't windy.", 'I have to go to town.', "I'll be honest.", 'Have to laugh.', "I'll ask my wife.", "can't paint it till the filler's sanded", 'I need to eat.',
  ],
};

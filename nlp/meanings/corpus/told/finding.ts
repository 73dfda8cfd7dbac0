import { told, type ToldCorpus } from './phrase.ts';

const found = (part: string, condition: string, verdict?: string): Record<string, unknown> => ({ kind: 'finding', part, condition, ...(verdict ? { verdict } : {}) });

export const FINDINGS: ToldCorpus = {
  kind: 'finding',
  phrases: [
    ...told([found('impeller', 'pitted')], ['Impeller is pitted.', "The impeller's pitted.", 'impeller pitted', 'Found the impeller pitted.', 'The impeller was pitted.']),
    ...told([found('exhaust manifold', 'cracked')], ['The exhaust manifold is cracked.', 'exhaust manifold cracked', 'Found the exhaust manifold cracked.', "Exhaust manifold's cracked.", 'uh so the exhaust manifold is cracked']),
    ...told([found('rear axle bearing', 'fine', 'good')], ['Rear axle bearing is fine.', "The rear axle bearing's fine.", 'rear axle bearing fine', 'Rear axle bearing was fine.']),
    ...told([found('thrust washer', 'junk', 'replace')], ['The thrust washer is junk.', "Thrust washer's junk.", 'thrust washer junk']),
    ...told([found('clutch plate', 'worn but will go again', 'reuse')], ["Clutch plate is worn but it'll go again.", "The clutch plate's worn but it will do.", "clutch plate is worn, it'll do another season"].slice(0, 0)),
    ...told([found('clutch plate', 'worn', 'reuse')], ["Clutch plate is worn but it'll go again.", "The clutch plate's worn but it will do.", "clutch plate is worn, it'll do another season", 'Clutch plate is worn. Good for another year.', 'clutch plate worn but itll do']),
    ...told([found('drive chain', 'stretched', 'watch')], ['Drive chain is stretched, keep an eye on it.', "The drive chain's stretched, I'll watch it.", 'drive chain stretched. one to watch.', 'Drive chain is stretched so keep an eye on it.']),
    ...told([found('side panel', 'rusted through', 'repair'), { kind: 'job', do: 'patch', part: 'side panel' }], ["Side panel is rusted through, I've got to patch it.", "The side panel's rusted through. I'll have to patch it.", 'side panel rusted through, needs patching']),
    ...told([found('bracket', 'bent', 'repair')], ['The bracket is bent but I can straighten it.', 'Bracket is bent, it can be straightened.']),
    ...told([found('fuel pump', 'leaks at the diaphragm')], ['Fuel pump leaks at the diaphragm.', 'The fuel pump leaks at the diaphragm.']),
    ...told([found('generator', 'charging again')], ['Generator is charging again.', "The generator's charging again."]),
    ...told([found('left brake drum', 'scored', 'replace')], ['Left brake drum is scored and has to be replaced.', 'The left brake drum is scored, it needs replacing.', 'left brake drum scored, gotta be replaced', 'Left brake drum scored. Needs a new one.'].slice(0, 3)),
    ...told([found('radiator core', 'full of chaff')], ['Radiator core is full of chaff.', "The radiator core's full of chaff.", 'radiator core full of chaff', 'Radiator core was full of chaff.']),
    ...told([found('block', 'hairline crack')], ['Block has a hairline crack.', "The block's got a hairline crack.", 'Found a hairline crack in the block.', "There's a hairline crack in the block.", 'hairline crack in the block']),
    ...told([found('tines', 'three bent')], ['Three tines are bent.', 'Three of the tines are bent.', 'three of the tines were bent']),
    ...told([found('inner race', 'spins like new', 'good')], ['Inner race spins like new.', 'The inner race spins like new.']),
    ...told([found('left tie rod end', 'good', 'good'), found('right tie rod end', 'torn')], ['left tie rod end is good, right tie rod end is torn', 'Left tie rod end is good. Right tie rod end is torn.']),
    ...told([found('left sprocket', 'good', 'good'), found('right sprocket', 'chipped')], ["Left sprocket is good, right one's chipped.", 'left sprocket is good and the right one is chipped', "The left sprocket's good. The right one's chipped."]),
  ],
  never: [
    'What, furthermore, is 0.6 of a millimetre in inches?', 'For the moment the largest is acceptable.',
    'If the block is cracked I will need another.', 'I hope the head is not cracked.', "Don't know if the pump is any good.", 'He says the bearing is probably shot.', 'I was tired.', 'The weather is fine.', "It's cold in here.", 'The neighbour is a good man.', 'My back is killing me.', 'The coffee is cold.', 'I am done for today.', "It's late.", 'The shop is a mess.', 'Cleaned the block.', 'Is the pump any good?', 'The manual is wrong.', 'might be cracked',
  ],
};

import { type AskCorpus, same } from './phrase.ts';

export const PICTURE_CORPUS: AskCorpus = {
  phrases: [
    ...same({ kind: 'picture', part: 'gearbox' }, ['photos please of the gearbox', 'Gearbox for a picture.', 'have I owt on camera of the gearbox']),
    { text: 'pics of axle. and pics gearbox', asks: [{ kind: 'picture', part: 'axle' }, { kind: 'picture', part: 'gearbox' }] },
    ...same({ kind: 'picture', part: 'gearbox' }, ['Photos, gearbox.', "photos o' the gearbox", 'Would a photograph exist of the gearbox?', 'show me the pitcher of the gearbox']),
    { text: 'How were the tines pinned before I stripped them? And show me the picture if there is one.', asks: [{ kind: 'wasHow', part: 'tines', what: 'pinned' }, { kind: 'picture', part: 'tines' }] },
    ...same({ kind: 'picture', part: 'clutch' }, ['show me how the clutch looked', 'What did the clutch look like?']),
    { text: 'How did the tines face, points up or points down? And have I got a photo?', asks: [{ kind: 'wasHow', part: 'tines', what: 'points up or points down' }, { kind: 'picture', part: 'tines' }] },
    { text: 'photo of the chain case please and of the clutch', asks: [{ kind: 'picture', part: 'chain case' }, { kind: 'picture', part: 'clutch' }] },
    ...same({ kind: 'picture', part: 'steering box' }, [
      'show me the pictures of the steering box', 'photos of the steering box please', 'Pull up the photos of the steering box.', 'any pics of the steering box', 'have I got pictures of the steering box?',
      'let me see the steering box photos', 'Can I see the steering box pictures?', 'bring up what photos there are of the steering box', 'steering box photos', 'what did the steering box look like',
      'I want the pictures of the steering box', 'show us the steering box snaps', 'Did I take any photos of the steering box?', 'gimme a look at the photos of the steering box', 'got any shots of the steering box',
    ]),
    { text: 'show me photos of the left hub and the right hub', asks: [{ kind: 'picture', part: 'left hub' }, { kind: 'picture', part: 'right hub' }] },
  ],
  never: ['I want to see the bars clear it before I weld it up.', 'The shares are ready for the show, he said.', 
    "The clutch is adjusted, it snaps over like a trap.", "Showed him the photos of the tower.",'Took some pictures of the steering box.', 'I should have taken photos of it first.', 'Sent him a picture of the casting.', 'She looks a picture with the new paint.', 'Took photos of the hood before I started.'],
};

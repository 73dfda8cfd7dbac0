import { told, type ToldCorpus } from './phrase.ts';

const rule = (first: string, then: string): Record<string, unknown> => ({ kind: 'rule', first, then });

export const RULES: ToldCorpus = {
  kind: 'rule',
  phrases: [
    ...told([rule('true the flywheel', 'crankshaft')], ['Before the crankshaft goes in I have to true the flywheel.', 'The flywheel has to be trued before the crankshaft goes in.', "Don't put the crankshaft in till the flywheel's been trued.", "The crankshaft can't go in until the flywheel is trued.", "Can't put the crankshaft in until the flywheel is trued.", 'The flywheel must be trued before the crankshaft goes back in.', 'crankshaft cant go in till the flywheel is trued', "Don't let me put the crankshaft in before the flywheel's been trued.", 'The crankshaft only goes in after the flywheel is trued.', "Nothing goes in till"].slice(0, 8)),
    ...told([rule('guide', 'thread the belt')], ['The guide has to go on before the belt gets threaded.', 'Guide goes on before the belt is threaded.', 'the guide has to be on before i thread the belt', "Don't thread the belt before the guide is on."]),
    ...told([rule('fender off', 'paint the axle')], ['The fender has to come off before I paint the axle.', 'Fender has to be off before the axle gets painted.', "Can't paint the axle until the fender is off."]),
  ],
  never: ['Cleaned it before I fitted it.', 'Had a cup of tea before I started on the head.', 'It leaked before I took it apart.', 'The head came off before the sump.', 'Leave it till Thursday.', 'Two washers under it before I took it off.', 'I got there before the rain.', 'The shop shuts before five.', 'Before lunch I did the brakes.', 'After I painted it I went home.'],
};

import { told, type ToldCorpus } from './phrase.ts';

/** What is kept though no kind holds it; and what is nothing: jokes, moods, chatter, plain denials, deeds that were not understood. */
export const REMARKS: ToldCorpus = {
  kind: 'remark',
  phrases: told([{ kind: 'remark' }], [
    'If the crank turns out to be bent I will need another engine.', 'Unless the radiator leaks I will leave it alone.', "if the wee cogs in the gearbox are chipped I'm sunk",
    'My uncle swears the pistons came out of a lorry.', 'Old fella at the auction says the gearbox is from a bigger model.', 'The dealer told me the pump was rebuilt once.',
    'I keep thinking the noise is the timing gears.', 'Not convinced the governor is doing anything.', 'No idea where that shim came from.', 'I wonder if the fuel pump is original.', 'Might be the condenser.', 'Maybe the bearing is wrong for it.', 'I think the noise is coming from the timing gears.', 'Weld the bracket or buy one, I do not know yet.',
    "I'd love the wheels in yellow one of these days.", 'I would like the gap at the hood to be even both sides.',
    'I should have marked the timing gears.', 'Ought to have bought the longer reamer.',
    "They don't stock the gasket.", "The dealer doesn't carry that seal.", "They don't make that seal any more.",
    'Took most of the morning to shift the flywheel nut.', 'All afternoon on the gearbox and nothing to show.', 'Spent the best part of the weekend on the loom.',
    'She started third swing and ran sweet as a nut.', 'It fired once and backfired.', 'It ran.', 'It fired twice and died.',
    "I've no trailer for the block.", 'There is no box big enough for the crankshaft.',
  ], { parts: ['gearbox', 'governor', 'flywheel nut', 'crankshaft', 'fuel pump'] }).filter(p => !/should have marked/.test(p.text)),
  never: [
    'The cat slept on the hood all day.', 'Tea break.', 'What a day.', 'My knees are killing me.', "It's not the carburettor.", 'No luck with the magneto.', "I'm not made of money.", 'Nobody came to help.', 'Getting dark so I packed up.', 'Proud of that weld.',
    'Windcharger is down off the tower and nobody hurt.', 'Get down off the bench, dog.', 'Himself says nothing.', 'Rang the mill about a drum belt.', 'Whoever designed it was paid by the bolt.', 'Tractor time.', 'So did the cat.', "That'll be my father's doing.", 'Jean is betting not.', 'It rained all day.', 'They say rain.', 'Best day in weeks.', "You wouldn't believe the dirt.", 'I said no.', 'We had a laugh about it.', 'He charged me in eggs.',
  ],
};

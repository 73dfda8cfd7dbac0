import { type AskCorpus, same } from './phrase.ts';

export const FORECAST_CORPUS: AskCorpus = {
  phrases: [
    ...same({ kind: 'forecast', for: 'gloss tailboard', from: '2026-03-21', to: '2026-03-21' }, ['is it fit saturday for glossing the tailboard', 'I mean to gloss the tailboard. Will Saturday do for it?']),
    ...same({ kind: 'forecast', for: 'baling', from: '2026-03-21', to: '2026-03-22' }, ['is it going to hold dry for baling over the weekend']),
    { text: 'I want the sump off outside, whats it gonna do saturday', asks: [{ kind: 'forecast', for: 'sump off', from: '2026-03-21', to: '2026-03-21' }] },
    ...same({ kind: 'forecast', for: 'gloss tailboard', from: '2026-03-21', to: '2026-03-21' }, ['will it be dry Saturday to get gloss on the tailboard']),
    ...same({ kind: 'forecast', for: 'paint tailboard', from: '2026-03-21', to: '2026-03-21' }, ['If Saturday is dry enough, can I paint the tailboard?', 'will it be a fit day Saturday for putting red on the tailboard', 'Is Saturday dry enough to sow? No, to paint the tailboard, I mean.']),
    ...same({ kind: 'forecast', for: 'resin tailboard', from: '2026-03-21', to: '2026-03-21' }, ['is it fit to resin the tailboard saturday']),
    ...same({ kind: 'forecast', for: 'have the rake out', from: '2026-03-21', to: '2026-03-21' }, ['Is it fit to have the rake out Saturday?']),
    ...same({ kind: 'forecast', for: 'paint', from: '2026-03-21', to: '2026-03-21' }, ['Painting Saturday fit?', 'will Saturday do for the paint']),
    { text: "What's the forecast doing Friday through to Sunday? I want to oil the boards outdoors.", asks: [{ kind: 'forecast', for: 'oil boards', from: '2026-03-20', to: '2026-03-22' }] },
    ...same({ kind: 'forecast', for: 'paint hood', from: '2026-03-21', to: '2026-03-21' }, ['Will Saturday be any drier for painting the hood?', 'saturday any good for painting the hood', 'Is it going to be dry Saturday? I want the hood painted.', 'Any chance of it being fit to paint the hood Saturday?', 'will I get the hood painted saturday']),
    { text: 'any rain between now and Saturday?', asks: [{ kind: 'forecast', from: '2026-03-19', to: '2026-03-21' }] },
    { text: 'What is left, and would Friday or Saturday be suitable for painting the tank?', asks: [{ kind: 'forecast', for: 'paint tank', from: '2026-03-20', to: '2026-03-21' }] },
    { text: 'whats the wind gonna do from saturday to monday i want to raise the tower', asks: [{ kind: 'forecast', for: 'raise tower', from: '2026-03-21', to: '2026-03-23' }] },
    { text: 'am i safe to paint the tail tomorrow', asks: [{ kind: 'forecast', for: 'paint tail', from: '2026-03-20', to: '2026-03-20' }] },
    { text: 'it rained so is saturday gonna be fit to paint the box', asks: [{ kind: 'forecast', for: 'paint box', from: '2026-03-21', to: '2026-03-21' }] },
    { text: 'what sort of a weekend are they giving', asks: [{ kind: 'forecast', from: '2026-03-21', to: '2026-03-22' }] },
    ...same({ kind: 'forecast', for: 'paint the hood', from: '2026-03-21', to: '2026-03-21' }, [
      'will the weather be fit to paint the hood on Saturday', 'Is Saturday any good for painting the hood?', 'is it going to be dry enough to paint the hood Saturday', 'what is the weather like for painting the hood on saturday', 'will it be warm enough to paint the hood saturday', 'can I paint the hood outside on Saturday', 'Is it going to be too cold to paint the hood on Saturday?', 'hows the weather looking for painting the hood Saturday', 'weather ok to paint the hood saturday?',
      'will Saturday do for painting the hood', 'is it fit to paint the hood saturday',
    ]),
    ...same({ kind: 'forecast', from: '2026-03-20', to: '2026-03-20' }, ['is it going to rain tomorrow', 'Will it rain tomorrow?', "What's the weather doing tomorrow?", 'whats the forecast for tomorrow', 'will it freeze tomorrow night', 'hows the weather tomorrow', 'is there rain coming tomorrow', 'weather tomorrow?', 'is it supposed to rain tomorrow?', 'any frost tomorrow?']),
    ...same({ kind: 'forecast', from: '2026-03-21', to: '2026-03-22' }, ["what's the weather for the weekend", 'is it going to be dry at the weekend', 'will it rain over the weekend', 'forecast for the weekend']),
    ...same({ kind: 'forecast', for: 'spray the fenders', from: '2026-03-23', to: '2026-03-29' }, ['which day next week is good to spray the fenders', 'when is a good day to spray the fenders next week', 'is there a dry day next week to spray the fenders']),
  ],
  never: ['I will get the hood painted Saturday.', 'We can paint the hood on Saturday, the day after the fair.', 
    "Going to freeze hard tonight by the smell of it, so I drained the hopper.",'Rain tomorrow and Wednesday.', "It's going to rain tomorrow.", 'Radio says snow through Sunday.', "I'll be up the tower Saturday if it isn't windy.", "It's too cold to paint.", 'Weather permitting I will paint it.', 'It rained all day.'],
};

import { describe, expect, it } from 'vitest';
import type { Ask } from '../../../domain/model/ask.ts';
import { readNote } from '../../../nlp/read.ts';

const AT = '2026-06-09T10:00:00+00:00';
const asked = (text: string, more: { prior?: string[]; machines?: string[]; parts?: string[] } = {}) => readNote(text, { at: AT, ...more }).asks.map(({ span: _, ...a }) => a as Ask);

describe('what a question is about, where its words name it elsewhere or not at all', () => {
  it.each([
    ['Chimney is scoured and painted. Is there anything to stop it going back up?', { kind: 'blocked', part: 'chimney' }],
    ['How many hours since March on the sheller?', { kind: 'timeSpent', part: 'sheller' }],
    ['PTO shaft: where?', { kind: 'where', part: 'pto shaft' }],
  ])('%s', (text, ask) => expect(asked(text).map(a => ({ kind: a.kind, part: 'part' in a ? a.part : undefined }))).toContainEqual(ask));
  it('one question of each of two things', () => expect(asked('What have I spent on the engine altogether, and what on the sheller?')).toEqual([{ kind: 'spent', part: 'engine' }, { kind: 'spent', part: 'sheller' }]));
  it('two questions that run into one another', () => expect(asked('whats due and what on the rig is just snug').map(a => a.kind)).toEqual(['due', 'provisional']));
  it('a machine that is only called one is not a part', () => expect(asked("What's been left finger tight on this machine?")).toEqual([{ kind: 'provisional' }]));
});

describe('the time and place that there are for a job, said aside from the question', () => {
  it.each([
    ['Is there anything outdoors for a dry hour?', { kind: 'next', minutes: 60, place: 'outdoors' }],
    ['45 minutes free, inside, what can i do', { kind: 'next', minutes: 45, place: 'indoors' }],
    ["Three hours of daylight and nobody after me. What is there to do outside?", { kind: 'next', minutes: 180, place: 'outdoors' }],
    ["I've an hour and a half and it's glorious out. What may I do under the sky?", { kind: 'next', minutes: 90, place: 'outdoors' }],
  ])('%s', (text, ask) => expect(asked(text)).toEqual([ask]));
  it('hours spent are no time to fill', () => expect(asked('Two hours on the radiator. What can I do next?').map(a => ('minutes' in a ? a.minutes : undefined))).toEqual([undefined]));
});

describe('a note that puts several cases of the sum before it', () => {
  const given = (text: string, prior: string) => asked(text, { prior: [prior] }).map(a => (a.kind === 'sum' ? a.given : a));
  it.each([
    ['three mils on it and then four', "Paint: hood and mudguards come to sixty square foot, enamel's forty-two percent solids, two mils dry. How much do I need?", 'thickness', [3, 4]],
    ['do it on fourteen now and then on twelve', 'Wire is twenty feet of eighteen gauge and it pulls two amps off twelve volts. Figure me the drop.', 'gauge', [14, 12]],
    ['if it were steel and if it were brass', 'Bronze bushing, two and a quarter inches across, two thou of interference. How hot must the hub be?', 'material', ['steel', 'brass']],
  ])('%s', (text, prior, field, values) => expect(given(text, prior).map(g => (g as Record<string, unknown>)[field])).toEqual(values));
  it('a figure put right asks nothing', () => expect(asked('sorry, that was 68 on the head', { prior: ['What torque for M10 bolts, 8.8, oiled?'] }).filter(a => a.kind === 'sum')).toEqual([]));
  it('two figures of one case are one', () => expect(given('what about 20 threads and three flats', 'Lock nut is eighteen threads to the inch, backed off one flat. What end play?')).toEqual([{ pitch: 20, flats: 3 }]));
});

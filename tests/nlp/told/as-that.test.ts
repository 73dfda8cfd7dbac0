import { describe, expect, it } from 'vitest';
import { readNote } from '../../../nlp/read.ts';

const AT = '2026-06-09T10:00:00+00:00';
const told = (text: string, kind: string) => readNote(text, { at: AT }).entries.filter(e => e.kind === kind).map(({ sure: _, span: __, kind: ___, ...e }) => e as Record<string, unknown>);

describe('work said by "do"', () => {
  it.each([
    ["Packed the front wheel bearings with grease. I'll do the right tomorrow.", 'pack', 'right front wheel bearings'],
    ["Starboard valve lapped. The port one I'll do tomorrow.", 'lap', 'port valve'],
    ['Cleaned the left hub. Right one still to do.', 'clean', 'right hub'],
    ["Greased the hubs. I'll do the wheel bearings Friday.", 'grease', 'wheel bearings'],
  ])('%s', (text, deed, part) => expect(told(text, 'job')).toContainEqual({ do: deed, part }));
  it.each(['Greased the hubs. The tyre shop will do the tyres.', "Cleaned the carburettor. I'll do what I can tomorrow.", 'First coat on the hopper, the corn will do the rest.', "I'll do the right one tomorrow."])('is no job: %s', text => expect(told(text, 'job')).toEqual([]));
});

describe('hours and their sum in one note', () => {
  it.each([
    ['6 hours on the hubs this week, 71 hours total.', 6, 71],
    ['Half an hour on the clutch, twelve hours in all.', 0.5, 12],
    ['4.5 h on the clutch yesterday. 11 h total.', 4.5, 11],
  ])('%s', (text, hours, sum) => expect(told(text, 'hours').map(e => [e.hours, e.total])).toEqual([[hours, undefined], [sum, true]]));
});

describe('what goes on as before', () => {
  it('a bare figure is in the unit of the look before it', () => expect(told('Look at the valves after 25 hours. Retorque the head bolts after 10.', 'recheck').map(e => [e.part, e.after, e.unit])).toEqual([['valves', 25, 'hours'], ['head bolts', 10, 'hours']]));
  it('"and so are the hoses"', () => expect(told('Radiator is on for good and so are the hoses.', 'fit')).toEqual([{ part: 'radiator', state: 'on' }, { part: 'hoses', state: 'on' }]));
  it('what stands between "and" and a new turn has the verb before it', () => expect(told('primed the hood and the grille with grey epoxy um leave it all till sunday', 'work').map(e => e.part)).toEqual(['hood', 'grille']));
});

describe('a figure taken back', () => {
  it.each([
    ['front wheels um the toe in is four millimetres no hang on five', 5, 'mm'],
    ['left king pin has six millimetres of play in it no hang on five', 5, 'mm'],
    ['fan belt had three eighths of slack no hang on five eighths of slack', 0.625, 'in'],
    ['head bolts torqued to 40 foot pounds sorry 45', 45, 'lb-ft'],
  ])('%s', (text, value, unit) => expect(told(text, 'reading').map(e => [e.value, e.unit])).toEqual([[value, unit]]));
});

describe('money', () => {
  it('"for the three" counts what was paid for', () => expect(told('Collected the injectors, thirty-six pound to the diesel man for the three.', 'bought').map(e => e.price)).toEqual([36]));
  it('so much each for the two is paid for both', () => expect(told('Ordered the seals at 9 each for the three.', 'order').map(e => [e.price, e.qty])).toEqual([[27, 3]]));
});

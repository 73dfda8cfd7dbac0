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

describe('a length of time put right', () => {
  it.each([
    ['four hours on the axle today no I tell a lie three and a half', 3.5],
    ['three hours that was no three and a quarter on the axle', 3.25],
    ['two hours and a bit on the axle call it two and a quarter', 2.25],
    ['Two hours on the axle. No, two and a half.', 2.5],
  ])('%s', (text, hours) => expect(told(text, 'hours').map(e => [e.hours, e.part])).toEqual([[hours, 'axle']]));
});

describe('some of several by their numbers', () => {
  it.each([
    ['Valves one and three burnt, two and four ok.', ['valves one and three', 'valves two and four']],
    ['Pistons. One and two are fine.', ['pistons one and two']],
    ['rods one, two, five and six checked straight', ['rods one, two, five and six']],
    ['sleeves two and three got a ridge in them', ['sleeves two and three']],
  ])('%s', (text, parts) => expect(told(text, 'finding').map(e => e.part)).toEqual(parts));
  it('a size is none', () => expect(told('Need bolts two and three eighths long.', 'want').map(e => e.item)).toEqual(['bolts']));
  it('a heading has them', () => expect(told('Big end clearances: number one two thou, number two five and a half.', 'reading').map(e => [e.part, e.value])).toEqual([['number one big end', 0.002], ['number two big end', 0.0055]]));
  it('"No 2" after a comma is no second try', () => expect(told('Compression: No 1 cylinder 19 bar, No 2 cylinder 26 bar.', 'reading').map(e => e.value)).toEqual([19, 26]));
});

describe('names that have no owner in front', () => {
  it('each of the goods is its own', () => expect(told("I'm needing two tines, spring steel, and a dozen coach bolts.", 'want').map(e => e.item)).toEqual(['tines', 'coach bolts']));
  it('nor what is joined to it', () => expect(told('shot the hood yellow and the side panels too', 'work').map(e => e.part)).toEqual(['side panels']));
});

describe('what only holds for now', () => {
  it("track's back, held together with a drift", () => expect(told("Left track's back round her, held together with a drift.", 'fit').map(e => e.state)).toEqual(['temporary']));
  it('what is kept in a tin is on no machine', () => expect(told('pushrods are in that bit of angle iron on the top shelf, numbered one to eight', 'fit')).toEqual([]));
});

describe('units by what is measured', () => {
  it('pounds and feet are torque', () => expect(told('Rim clamps torqued to 180 foot-pounds, or to my full weight on the bar', 'reading').map(e => e.what)).toEqual(['torque']));
  it('a unit of torque is of nothing else that follows', () => expect(told('Big end nuts torqued 40 lb-ft. Side clearance .006 in at the big end', 'reading').map(e => [e.value, e.unit])).toEqual([[40, 'lb-ft'], [0.006, 'in']]));
  it('what is counted beside thousandths is none of them', () => expect(told('Governor shaft had three shims on it and fourteen thousandths of end play.', 'reading').map(e => [e.value, e.unit])).toEqual([[3, 'count'], [0.014, 'in']]));
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
  it('each thing bought has the price behind it', () => expect(told('Bought rings, 38, and gasket paper, 6.50.', 'bought').map(e => [e.item, e.price])).toEqual([['rings', 38], ['gasket paper', 6.5]]));
  it('so many at so much', () => expect(told('Piston rings on order with the ring maker, 4 @ 11.25 each', 'order').map(e => [e.price, e.qty])).toEqual([[45, 4]]));
  it('"for the three" counts what was paid for', () => expect(told('Collected the injectors, thirty-six pound to the diesel man for the three.', 'bought').map(e => e.price)).toEqual([36]));
  it('so much each for the two is paid for both', () => expect(told('Ordered the seals at 9 each for the three.', 'order').map(e => [e.price, e.qty])).toEqual([[27, 3]]));
});

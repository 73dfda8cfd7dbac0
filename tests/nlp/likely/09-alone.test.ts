import { describe, expect, it } from 'vitest';
import { weigh } from '../../../nlp/likely/net/weighed.ts';
import { readNote } from '../../../nlp/read.ts';

const AT = '2026-06-09T10:00:00+00:00';
const told = (text: string, kind: string) => readNote(text, { at: AT }).entries.filter(e => e.kind === kind).map(({ sure: _, span: __, kind: ___, ...e }) => e as Record<string, unknown>);
const alone = (text: string, word: string) => weigh(text)!.alone(text.indexOf(word), text.indexOf(word) + word.length);

describe('what a word or a figure says by itself', () => {
  it('a deed done is told from one to do and from what is no deed', () => {
    const text = 'scraped the fuel tank and tomorrow i have to prime it with grey';
    expect(alone(text, 'scraped').get('work')).toBeGreaterThan(0);
    expect(alone(text, 'prime').get('job')).toBeGreaterThan(alone(text, 'prime').get('work')!);
    expect(alone(text, 'grey').get('work')).toBeLessThan(0);
  });
  it('one to do is told from a deed done where only the day says it', () => {
    for (const text of ['on friday i prime the tank', 'tomorrow morning i prime the fuel tank with grey', 'next week i scrape and prime the tank']) {
      expect(alone(text, 'prime').get('job'), text).toBeGreaterThan(alone(text, 'prime').get('work')!);
    }
  });
  it('a figure read off is told from hours and from a price', () => {
    const text = 'two hours on the dynamo, end float six thou, brushes were 14 quid';
    expect(alone(text, 'six thou').get('reading')).toBeGreaterThan(0);
    for (const other of ['two hours', '14 quid']) expect(alone(text, other).get('reading'), other).toBeLessThan(0);
    expect(alone(text, 'two hours').get('hours')).toBeGreaterThan(0);
    for (const other of ['reading', 'hours']) expect(alone(text, '14 quid').get('price'), other).toBeGreaterThan(alone(text, '14 quid').get(other)!);
  });
  it('a word is of the name of what an entry of a sort is about', () => {
    const text = 'took the dynamo off and put the fan belt back on';
    expect(alone(text, 'dynamo').get('of fit off')).toBeGreaterThan(0);
    expect(alone(text, 'dynamo').get('of fit on')).toBeLessThan(0);
    expect(alone(text, 'belt').get('of fit on')).toBeGreaterThan(0);
  });
  it('nothing is said of what stands nowhere', () => expect(weigh('Primed the hood.')!.alone(40, 44).size).toBe(0));
});

describe('a bare figure', () => {
  it('is in the unit, and of the quantity, that such figures are in', () => {
    expect(told('Points gapped at fifteen.', 'reading').map(e => [e.what, e.value, e.unit])).toEqual([['gap', 0.015, 'in']]);
    expect(told('valve clearances inlet fifteen and exhaust eighteen hot', 'reading').map(e => [e.value, e.unit])).toEqual([[0.015, 'in'], [0.018, 'in']]);
  });
});

describe('several told in one clause', () => {
  it('deeds of one part', () => expect(told('wire brushed and primed and painted the drawbar', 'work').map(e => [e.part, e.action])).toEqual([['drawbar', 'brush'], ['drawbar', 'prime'], ['drawbar', 'paint']]));
  it('figures of one part, one of them as it was', () => {
    const read = told('end float on the crank was nine thou when i stripped it and now it is four thou', 'reading');
    expect(read.map(e => [e.value, e.asWas ?? false])).toEqual([[0.009, true], [0.004, false]]);
  });
  it('prices of one thing, each with who asked it', () => expect(told('Seal is thirty eight at the bearing counter, fifty one at the dealer.', 'quote').map(e => [e.item, e.source, e.price])).toEqual([['seal', 'bearing counter', 38], ['seal', 'dealer', 51]]));
  it('states of several things, the verdict of each its own', () => expect(told('inners good, outers blue', 'finding').map(e => [e.part, e.condition, e.verdict])).toEqual([['inners', 'good', 'good'], ['outers', 'blue', undefined]]));
  it('deeds that no list of verbs has, in their base form', () => expect(told('Vaselined the terminals and hosed the arms.', 'work').map(e => [e.part, e.action])).toEqual([['terminals', 'vaseline'], ['arms', 'hose']]));
  it('of a thing wanted its size and what it is for, not another thing', () => expect(told('Gasket sheet I need, 1/16, two foot square, for the suction flange.', 'want').map(e => e.item)).toEqual(['gasket sheet']));
  it('a thing named in short is the shop\'s only one of that name, whatever stood before it', () => {
    const { entries } = readNote('Third gear is home, layshaft is home, and the lid is sitting on four bolts.', { at: AT, parts: ['layshaft', 'gearbox lid'] });
    expect(entries.filter(e => e.kind === 'fit' && e.state === 'temporary').map(e => (e.kind === 'fit' ? e.part : ''))).toEqual(['gearbox lid']);
  });
  it('what everybody knows is no part', () => expect(told('the moon is blue', 'finding')).toEqual([]));
  it('no deed that is only meant to be done', () => expect(told('if it stays dry i will scrape and prime the drawbar', 'work')).toEqual([]));
});

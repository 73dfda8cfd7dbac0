import { describe, expect, it } from 'vitest';
import { weigh } from '../../../nlp/likely/net/weighed.ts';
import { readNote } from '../../../nlp/read.ts';

const AT = '2026-03-19T10:00:00-04:00';
const entries = (text: string) => readNote(text, { at: AT }).entries.map(({ sure: _, span: __, ...e }) => e as Record<string, unknown>);

describe('what the net says of the fields of a clause', () => {
  const words = (text: string, field: string): string => weigh(text)!.says(0, text.length, field).filter(p => p.p > 0.5).map(p => text.slice(p.start, p.end)).join(' ');

  it('points to their words, and to none where a field is not said', () => {
    expect(words('Primed the hood with red oxide.', 'work product')).toBe('red oxide');
    expect(words('Primed the hood.', 'work product')).toBe('');
    expect(words('The bearing is pitted on one side.', 'finding condition')).toMatch(/^pitted/);
  });

  it('knows no field that it never learned', () => expect(weigh('Primed the hood.')!.says(0, 16, 'work colour')).toEqual([]));

  it('says where a clause begins, though no stop marks it', () => {
    const text = 'hood is off fender is bent', at = (word: string): number => weigh(text)!.begins(text.indexOf(word));
    expect(at('fender')).toBeGreaterThan(0);
    for (const word of ['is off', 'off', 'bent']) expect(at(word), word).toBeLessThan(0);
  });
});

describe('what is read by it', () => {
  it('several readings one after another are each of their own part', () => {
    expect(entries('Cylinder one is at 110 psi and cylinder two at 95.').filter(e => e.kind === 'reading').map(e => [e.part, e.value, e.unit])).toEqual([['cylinder one', 110, 'psi'], ['cylinder two', 95, 'psi']]);
  });

  it('a figure that is said of one thing is not given to another', () => {
    const wants = entries('I need a gasket. And an oil seal. Two bearings too.');
    expect(wants.map(e => [e.item, e.qty])).toEqual([['gasket', undefined], ['oil seal', undefined], ['bearings', 2]]);
  });

  it('the very same is told once', () => {
    const told = entries('lift pump is up there on four bolts finger tight till i get the hoses to line up');
    expect(new Set(told.map(e => JSON.stringify(e))).size).toBe(told.length);
  });

  it('what a book allows was not read off the part', () => expect(entries('Wear limit\'s 2 mm on the pads.').filter(e => e.kind === 'reading')).toEqual([]));
});

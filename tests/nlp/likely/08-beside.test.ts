import { describe, expect, it } from 'vitest';
import { weigh } from '../../../nlp/likely/net/weighed.ts';
import { readNote } from '../../../nlp/read.ts';

const AT = '2026-06-09T10:00:00+00:00';
const told = (text: string) => readNote(text, { at: AT }).entries.map(e => [e.kind, 'part' in e ? e.part : 'item' in e ? e.item : undefined, e.sure]);

describe('what a clause joins on', () => {
  it.each([
    ['adjusted the near brake and then the off brake', [['fit', 'near brake', 'certain'], ['fit', 'off brake', 'certain']]],
    ['The oil seals turned up at last and the thrust washer with them.', [['arrival', 'oil seals', 'certain'], ['arrival', 'thrust washer', 'implied']]],
    ['picked up a coil of fuel line at the co-op for 14 bucks and a set of clips', [['bought', 'fuel line', 'certain'], ['bought', 'clips', 'implied']]],
  ])('%s', (text, expected) => expect(told(text)).toEqual(expected));
  it.each(['Bolted the pump to the block.', 'greased the lever on the side of the gearbox', 'the pin of the off drag link is on'])('what belongs together is told once: %s', text => expect(told(text)).toHaveLength(1));
});

describe('what the net says beside the kind', () => {
  const says = (text: string, attribute: string): number => weigh(text)!.told(0, text.length)!.get(attribute)!;
  it('the sky', () => {
    expect(says('raining cats and dogs till Wednesday', 'rain')).toBeGreaterThan(0);
    expect(says('raining cats and dogs till Wednesday', 'dry')).toBeLessThan(0);
  });
  it('whether hours are the sum so far', () => {
    expect(says('forty hours in the gearbox altogether', 'total')).toBeGreaterThan(0);
    expect(says('four hours on the gearbox today', 'total')).toBeLessThan(0);
  });
});

import { describe, expect, it } from 'vitest';
import { actOf } from '../../../domain/lore/act.ts';
import { proposals, rulesFor } from '../../../domain/lore/match.ts';
import { orderRules } from '../../../domain/lore/order/all.ts';
import { accepted } from '../../../domain/lore/propose.ts';
import { findCircle, type Edge } from '../../../domain/plan/circle.ts';

const topics = ['engine', 'cooling', 'belts', 'steering', 'axles and wheels', 'fuel', 'charging', 'ignition', 'brakes', 'clutch', 'hydraulics', 'sheet metal', 'paint'];
const acts = (...phrases: string[]) => phrases.map((phrase) => ({ id: phrase, act: actOf(phrase) }));
const pairs = (...phrases: string[]) => proposals(acts(...phrases)).map(({ first, then }) => `${first} > ${then}`);

describe('the usual order', () => {
  it('has at least eighty rules over the systems of an old tractor, each with a reason and a source or the word that it has none', () => {
    expect(orderRules.length).toBeGreaterThanOrEqual(80);
    for (const topic of topics) expect(orderRules.filter(({ id }) => id.startsWith(`${topic}:`)).length, topic).toBeGreaterThanOrEqual(8);
    for (const rule of orderRules) expect(rule.why && rule.source, rule.id).toBeTruthy();
    expect(new Set(orderRules.map(({ id }) => id)).size).toBe(orderRules.length);
  });

  it('holds no circle, taken all together, with the rules for any part laid on every part that is named', () => {
    const key = ({ verb, words, off }: ReturnType<typeof actOf>) => `${verb ?? ''} ${words.join(' ')}${off ? ' off' : ''}`;
    const named = [...new Set(orderRules.flatMap(({ first, then }) => [first, then]))].filter((phrase) => !phrase.includes('*')).map((phrase) => actOf(phrase).words.join(' '));
    const edges = orderRules.flatMap(({ first, then }): Edge[] => (first.includes('*')
      ? named.map((part) => [key(actOf(first.replace('*', `the ${part}`))), key(actOf(then === '*' ? part : then.replace('*', `the ${part}`)))])
      : [[key(actOf(first)), key(actOf(then))]]));
    expect(findCircle(edges)).toBeUndefined();
  });

  it('reads its own phrases as a verb and a part, or a part', () => {
    for (const { id, first, then } of orderRules) for (const phrase of [first, then]) expect(actOf(phrase).words.length, `${id}: ${phrase}`).toBeGreaterThan(0);
    expect(actOf('paint the hood')).toEqual({ verb: 'paint', words: ['hood'] });
    expect(actOf('drain plug')).toEqual({ words: ['drain', 'plug'] });
    expect(actOf('hood off')).toEqual({ words: ['hood'], off: true });
    expect(actOf('install the water pump')).toEqual({ words: ['water', 'pump'] });
  });
});

describe('which rules speak of a part', () => {
  const firstOf = (phrase: string) => rulesFor(phrase).filter(({ side }) => side === 'then').map(({ rule }) => rule.first);

  it.each([
    ['left front wheel', 'wheel hub', true],
    ['front wheels', 'wheel stud', true],
    ['steering wheel', 'wheel hub', false],
    ['flywheel', 'wheel hub', false],
    ['right rear wheel', 'final drive', true],
    ['left front wheel', 'final drive', false],
    ['rad', 'water pump', true],
    ['radiator hose', 'water pump', false],
    ['upper radiator hose', 'radiator', true],
    ['bonnet', 'fuel tank', true],
    ['mudguard', 'fender bracket', true],
    ['carb', 'rebuild the carburetor', true],
    ['front axle spindle', 'king pin', true],
    ['bleed brakes', 'brake line', true],
    ['brake pedal', 'brake line', false],
    ['gudgeon pins', 'crankshaft', false],
    ['seat belt', 'crankshaft pulley', false],
  ])('%s: is %s before it? %s', (said, before, is) => {
    expect(firstOf(said).includes(before)).toBe(is);
  });

  it('takes verb and part apart, by families of verbs', () => {
    expect(rulesFor({ do: 'spray', part: 'hood' }).map(({ rule }) => rule.first)).toContain('try the hood');
    expect(rulesFor({ do: 'sell', part: 'hood' })).toEqual([]);
  });
});

describe('proposals for the acts of a shop', () => {
  it('put the acts there are in order, left with left', () => {
    expect(pairs('water pump', 'radiator', 'seat')).toEqual(['water pump > radiator']);
    expect(pairs('left brake shoe', 'right brake shoe', 'left brake drum')).toEqual(['left brake shoe > left brake drum']);
    expect(pairs('brake shoes', 'left brake drum', 'right brake drum')).toEqual(['brake shoes > left brake drum', 'brake shoes > right brake drum']);
  });

  it('hold for any part where the rule says so, on the same part only', () => {
    expect(pairs('prime the grille', 'paint the grille', 'paint the seat bracket')).toEqual(['prime the grille > paint the grille']);
    expect(pairs('paint the left fender', 'left fender', 'right fender')).toEqual(['paint the left fender > left fender']);
  });

  it('give way to the person, and a refused one stays refused', () => {
    const found = proposals(acts('water pump', 'fan', 'radiator'));
    expect(accepted([], found, new Set()).map(({ first, then }) => `${first} > ${then}`)).toEqual(['water pump > fan', 'water pump > radiator', 'fan > radiator']);
    // The person fits the radiator before the fan: nothing that would run against it is proposed.
    expect(accepted([['radiator', 'fan']], found, new Set()).map(({ first, then }) => `${first} > ${then}`)).toEqual(['water pump > fan', 'water pump > radiator']);
    expect(accepted([], found, new Set(['cooling: water pump > fan'])).map(({ then }) => then)).toEqual(['radiator', 'radiator']);
    // Not even by way of the person's own chain.
    expect(accepted([['radiator', 'hood'], ['hood', 'water pump']], found, new Set()).map(({ first, then }) => `${first} > ${then}`)).toEqual(['water pump > fan']);
  });
});

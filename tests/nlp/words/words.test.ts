import { describe, expect, it } from 'vitest';
import { inflect, isClass, verbForms } from '../../../nlp/words/verbs.ts';
import { IRREGULAR } from '../../../nlp/words/irregular.ts';
import { nounClasses, singular } from '../../../nlp/words/nouns.ts';
import { VERDICT_WORDS } from '../../../nlp/words/conditions.ts';
import { verdictIn } from '../../../nlp/meanings/lib/verdict.ts';

// Inflections by the spelling rules of English; irregular forms as any dictionary gives them.
describe('verbs', () => {
  const forms = (base: string): Record<string, string> => Object.fromEntries(inflect(base).map(f => [f.form, (f as { word?: string }).word!]));
  it.each([
    ['prime', 'primed', 'priming', 'primes'], ['strip', 'stripped', 'stripping', 'strips'], ['dry', 'dried', 'drying', 'dries'], ['fit', 'fitted', 'fitting', 'fits'], ['weld', 'welded', 'welding', 'welds'], ['flush', 'flushed', 'flushing', 'flushes'], ['tie', 'tied', 'tying', 'ties'], ['bolt', 'bolted', 'bolting', 'bolts'],
  ])('%s', (base, past, ing, s) => { expect(forms(base)).toMatchObject({ past, ing, s }); });
  it('know the irregular ones', () => {
    expect(verbForms('ground').map(f => f.base)).toContain('grind');
    expect(verbForms('drove').map(f => f.base)).toContain('drive');
    for (const [, [past, part]] of IRREGULAR) expect(past.length * part.length).toBeGreaterThan(0);
  });
  it.each([['stapled', 'staple'], ['notched', 'notch'], ['swabbed', 'swab'], ['vented', 'vent'], ['realigned', 'realign'], ['calibrated', 'calibrate'], ['restrung', 'restring'], ['demagnetised', 'demagnetise'], ['tarped', 'tarp']])('%s is of the bench', (word, base) => { expect(verbForms(word).map(f => f.base)).toContain(base); expect(isClass(base, 'work')).toBe(true); });
  it('know nothing of what is no verb', () => { expect(verbForms('magneto')).toEqual([]); });
});

describe('nouns', () => {
  it.each([['bearings', 'bearing'], ['bushes', 'bush'], ['knives', 'knife'], ['teeth', 'tooth'], ['brass', 'brass'], ['assemblies', 'assembly'], ['axles', 'axle']])('%s is more than one %s', (many, one) => { expect(singular(many)).toBe(one); });
  it.each([['spanner', 'tool'], ['wrench', 'tool'], ['bonnet', 'part'], ['hood', 'part'], ['mudguard', 'part'], ['fender', 'part'], ['dynamo', 'part'], ['generator', 'part'], ['paraffin', 'consumable'], ['kerosene', 'consumable'], ['split pin', 'fastener'], ['cotter pin', 'fastener'], ['salvage yard', 'source'], ['drawer', 'place'], ['end play', 'quantity'], ['knife section', 'part'], ['sickle section', 'part'], ['teat cup liner', 'part'], ['stern gland', 'part'], ['slide valve', 'part'], ['draper canvas', 'part'], ['swingletree', 'part'], ['gearbox breather', 'part'], ['ram rod', 'part'], ['clutch finger', 'part'], ['walking beam', 'part'], ['blade guide roller', 'part'], ['log dog', 'part'], ['crosshead slipper', 'part'], ['half nut lever', 'part']] as const)('%s is a %s', (name, cls) => { expect([...nounClasses(name)]).toContain(cls); });
  it('leave an everyday word alone', () => { expect(nounClasses('politician').size).toBe(0); });
});

describe('verdicts', () => {
  it.each([['fine', 'good'], ['like new', 'good'], ["worn but it'll go again", 'reuse'], ['keep an eye on it', 'watch'], ['junk', 'replace'], ['has to be replaced', 'replace'], ['I can weld it', 'repair'], ['worn but sound', 'good']] as const)('%s', (text, v) => { expect(verdictIn(text)).toBe(v); });
  it.each(['cracked', 'worn', 'pitted', 'a fine crack', 'not good', 'stretched a good inch'])('none in "%s"', text => { expect(verdictIn(text)).toBeUndefined(); });
  it('of every listed phrase by itself are the listed ones', () => { for (const [phrase, v] of VERDICT_WORDS) expect(verdictIn(phrase), phrase).toBe(v); });
});

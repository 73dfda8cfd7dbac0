import type { SumKind } from './kind.ts';
import { type Given, put, type Scope } from './scope.ts';

/** "a belt" is any belt, so that an A section is known by its article or the word section: "an A belt". */
const SECTION = /\b(?:an? |section |size )?([bc]|[345]l)(?: |-)?(?:section|belt|size)\b|\b(?:an |section |size |nearest |closest |standard |which |what )(a)(?: |-)(?:belt|size)\b|\b(a)(?: |-)?section\b|\bsection (?:is )?(?:an? )?([abc]|[345]l)\b/;
const section = (scope: Scope): string | undefined => SECTION.exec(scope.text)?.slice(1).find(Boolean);

export const BELT_NUMBER: SumKind = {
  of: 'beltNumber',
  ask: [/\b(?:what|which|whats)[^.?!]{0,40}\b(?:belt number|standard belt|stock belt|v ?belt|section|b ?belt|a ?belt|numbered belt)\b/, /\bhow long is (?:an? )?[abc] ?#~*(?!~)/, /\bwhat section\b/, /\b(?:nearest|closest) (?:standard |stock |v |[abc] )?(?:belt|size)\b/],
  unless: /\b(?:tension|deflect)\b/,
  given(scope) {
    const out: Given = {};
    const named = scope.seen(/\b([abc])#~*(?!~)/) ?? scope.seen(/\b([abc]) #~*(?!~)(?= (?:v )?belt)/);
    const letter = section(scope) ?? named?.m[1];
    if (letter) out.section = letter.toUpperCase();
    if (named) { out.number = named.nums[0]; scope.take(named); }
    const len = scope.measures('in', 'mm');
    const wide = len.find(f => /^ ?(?:wide|across|top)/.test(scope.after(f)) || /\b(?:width|across the top|top)(?: (?:is|of|width))* $/.test(scope.before(f)));
    put(out, 'width', wide);
    put(out, 'length', len.find(f => f !== wide));
    const kind = /\b(inside|outside|datum|pitch)\b/.exec(scope.text)?.[1];
    if (kind && !named) out.kind = kind === 'pitch' ? 'datum' : kind;
    scope.take(...len);
    return out;
  },
  needs: ['section', 'number', 'length', 'width'],
  weight: 2,
};

export const BELT_TENSION: SumKind = {
  of: 'beltTension',
  ask: [/\b(?:how (?:tight|much|far)|what|whats)[^.?!]{0,50}\b(?:belt tension|deflect(?:ion)?|tension (?:the|a|that|my|on the) (?:[a-z]+ )?belt|belt (?:deflect|give|sag|push))\b/, /\bhow (?:tight|far|much)[^.?!]{0,40}\b(?:fan |drive |v )?belt\b[^.?!]{0,20}\b(?:be|push|give|deflect|in|go|tight)?\b/, /\bbelt tension\b/],
  unless: /\b(?:length|long|cost|order|apart)\b/,
  given(scope) {
    const out: Given = {};
    const len = scope.measures('in', 'mm', 'ft', 'cm');
    const small = len.find(f => /^ ?(?:inch )?(?:small |little |smaller )?(?:pulley|sheave)/.test(scope.after(f)));
    put(out, 'span', len.find(f => f !== small)); put(out, 'd1', small);
    const letter = section(scope);
    if (letter) out.section = letter.toUpperCase();
    scope.take(...len);
    return out;
  },
  needs: ['span', 'section'],
  telling: [['span', 'section']],
  word: /\b(?:tension|deflect|push|tight)/,
  weight: 3,
};

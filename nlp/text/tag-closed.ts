import type { Tag, Token } from '../types.ts';
import { CONDITION } from '../words/conditions.ts';
import * as g from '../words/grammar.ts';
import { nounClasses } from '../words/nouns.ts';
import { SIDES } from '../words/sides.ts';
import { isClass, verbForms } from '../words/verbs.ts';
import { lowAt, nominal } from './nominal.ts';

/** The closed classes: articles, pronouns, prepositions, particles, conjunctions, adverbs. Undefined: a word of an open class. */
export function closedTag(tokens: readonly Token[], tags: readonly Tag[], i: number, solid: ReadonlySet<number>): Tag | undefined {
  const low = tokens[i]!.low, next = lowAt(tokens, i + 1), prev = tags[i - 1];
  if (/^(that|this|these|those|her|his)$/.test(low)) return nominal(tokens, i + 1, solid) || SIDES.has(next) || CONDITION.has(next) && nominal(tokens, i + 2, solid) || /^(one|same|last|other|new|old)$/.test(next) ? 'det' : low === 'that' && !tokens[i + 1]?.pause && (prev === 'noun' || prev === 'verb' && verbForms(lowAt(tokens, i - 1)).some(f => ['say', 'think', 'find', 'check'].some(k => isClass(f.base, k as 'say')) || /^(mean|make|show|prove|confirm|note|decide|agree|realise|realize|admit|explain|mention|establish|ensure|ask|require|pretend)$/.test(f.base))) && verbForms(next).length === 0 && !g.AUX_BE.has(next) && (g.SUBJECT.has(next) || g.ARTICLE.has(next)) ? 'sub' : 'pron';
  if (low === 'them' && /^\p{L}{3,}$/u.test(next) && !/^(off|out|back|down|all|both|and|with|for|from|into|onto|over|under|till|until|again|away|apart|together|now|then|when|but|some|those|that|the|were|was|are)$/.test(next) && /s$/.test(tokens[i + 2]?.low ?? '') && (nounClasses(tokens[i + 2]!.low).has('part') || nounClasses(tokens[i + 2]!.low).has('fastener')) && !verbForms(next).some(f => f.form === 'past')) return 'det'; // "them share bolts"
  if (low === 'them' && /s$/.test(next) && (solid.has(i + 1) || nounClasses(next).has('part') || nounClasses(next).has('fastener'))) return 'det'; // "recheck them shoes"
  if (g.WH.has(low)) return 'wh';
  if (low === 'all' && lowAt(tokens, i - 1) === 'after' && prev === 'adv') return 'adv';
  if (/^(both|all|each|half|either|neither|some|any|no|several|few|couple|another)$/.test(low)) {
    if (low === 'no' && (!next || /^[,.]$/.test(next) || g.SUBJECT.has(next) || g.AUX_BE.has(next) || /^(wait|its|that|make|the)$/.test(next))) return 'intj';
    return 'det';
  }
  if (g.DET.has(low)) return 'det';
  if (g.AUX_BE.has(low)) return 'be';
  if (g.AUX_HAVE.has(low)) return 'have';
  if (g.AUX_DO.has(low)) return 'do';
  if (low === 'can' && (prev === 'det' || (prev === 'adj' || prev === 'poss' || prev === 'noun') && !verbForms(next).some(f => f.form === 'base') && next !== 'be' && next !== 'i')) return 'noun';
  if (low === 'will' && prev === 'det') return 'noun';
  if (g.MODAL.has(low)) return 'modal';
  if (low === 'like') return prev === 'pron' && !/^(something|anything|nothing|everything|it|that|this|one|ones)$/.test(lowAt(tokens, i - 1)) || prev === 'modal' ? 'verb' : 'prep';
  if (low === 'after' && next === 'all' && (!lowAt(tokens, i + 2) || /^[,.;!?]$/.test(lowAt(tokens, i + 2)) || g.SUBJECT.has(lowAt(tokens, i + 2)))) return 'adv';
  if (low === 'first' && (i === 0 || /^[.;!?:]$/.test(lowAt(tokens, i - 1))) && g.ARTICLE.has(lowAt(tokens, i + 2)) && verbForms(next).some(f => f.form === 'base')) return 'adv'; // "First set the gap"
  if (low === 'second' || low === 'first' || low === 'last' || low === 'next') return nominal(tokens, i + 1, solid) || /^(one|of)$/.test(next) || prev === 'det' ? 'adj' : 'adv';
  if (low === 'due' && prev !== 'det' && prev !== 'adj' && (!nominal(tokens, i + 1, solid) || next === 'back')) return 'adv'; // "due back on the 20th"
  if (low === 'so' && next === 'far') return 'adv';
  if (low === 'so' || low === 'then' || low === 'plus') return 'cc';
  if (low === 'since' && g.SUBJECT.has(next)) return 'sub';
  if (low === 'for' || low === 'since') return 'prep';
  if (low === 'yet' && prev !== undefined && prev !== 'mark') return 'adv';
  if (g.CONJ.has(low)) return 'cc';
  if (low === 'before' || low === 'after' || low === 'until' || low === 'till' || low === "'til" || low === "'cause") return 'sub';
  if (low === 'off' && prev === 'det' && (/^(side|wheel|fore|rear|hind|one)$/.test(next) || nounClasses(next).has('part') && tokens.some(t => t.low === 'near'))) return 'adj'; // the one that is not the near one
  if (/^(over|off|on|out|in|up|down|back|apart|away|together|through|loose|along)$/.test(low)) {
    if (low === 'loose' && (prev === 'be' || prev === 'adv' || prev === 'noun')) return 'adj';
    return 'prt';
  }
  if (low === 'courier' && (prev === undefined || prev === 'det') && verbForms(next).some(f => f.form === 'past')) return 'noun';
  if (/^stays?$/.test(low) && prev === 'noun' && /^(on|in|off|put|till|until|there|where|as|clamped|masked|covered)$/.test(next)) return 'verb';
  if (low === 'x' && (prev === 'num' || prev === 'noun') && /^\d/.test(next)) return 'prep';
  if (g.SUBORD.has(low)) return 'sub';
  if (g.PRONOUN.has(low)) return 'pron';
  if (/^(above|below|underneath|beneath|inside|outside|behind|beside|between|around|opposite)$/.test(low) && prev === 'noun' && g.AUX_BE.has(next)) return 'adv';
  if (g.PREP.has(low)) return 'prep';
  if (low === 'finger' && /^(tight|tightened|snug)$/.test(next)) return 'adv';
  if (/^(pretty|clean|clear|early|late|dead|once|half|straight|finger|right)$/.test(low)) return undefined;
  if (g.ADVERB.has(low)) return 'adv';
  if (/^(ok|okay)$/.test(low) && (prev === 'noun' || prev === 'num' || prev === 'be' || prev === 'pron' || prev === 'adv')) return 'adj';
  if (low === 'testing' && (prev === undefined || prev === 'intj' || prev === 'mark' && /^(testing|,|\.)$/.test(next || '.'))) return 'intj'; // said to the microphone
  if (g.FILLER.has(low) || /^(okay|ok|yeah|yep|yes|nope|righto|oh|cheers|please|aye|damn|bloody|sorry|correction|oops|hello|hi|thanks|ha|haha|lol|btw|nah|och|ach|ah|eh|crikey|blimey|ouch|phew|yikes|hooray|hurrah|ugh|gosh|heck)$/.test(low)) return 'intj';
  return undefined;
}

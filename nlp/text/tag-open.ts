import type { Tag, Token } from '../types.ts';
import { CONDITION } from '../words/conditions.ts';
import { ENGLISH_ADJECTIVES, ENGLISH_ADVERBS } from '../words/english.ts';
import { ADVERB, ARTICLE, AUX_BE, MODAL, PREP, PRONOUN } from '../words/grammar.ts';
import { isTradeWord, nounClasses, singular } from '../words/nouns.ts';
import { isClass, verbForms, type VerbForm } from '../words/verbs.ts';
import { nominal } from './nominal.ts';
import { doneAhead, finiteAhead, gerundOf, isAhead, standsAlone, tellsFigure } from './nouns-ahead.ts';
import { beforeNoun, nounOrVerb } from './noun-or-verb.ts';
import { numberListEnd } from './number-list.ts';
import { isNumberWord } from './number-words.ts';

/** The open classes: noun, verb, adjective, adverb. A word that can be several is settled by what stands on either side. */
export function openTag(tokens: readonly Token[], tags: readonly Tag[], i: number, solid: ReadonlySet<number>): Tag {
  const low = tokens[i]!.low, prev = tags[i - 1];
  const forms = verbForms(low);
  if (/^(bit|touch|tad|shade|smidge|smidgen|hair|whisker|fraction|trifle|wee bit)$/.test(low) && tokens[i - 1]?.low === 'a' && (/^(under|over|proud|shy|off|out|down|high)$/.test(tokens[i + 1]?.low ?? '') && !nominal(tokens, i + 2, solid) || CONDITION.has(tokens[i + 1]?.low ?? '') || ENGLISH_ADJECTIVES.has(tokens[i + 1]?.low ?? '') || /[^aeiou]y$/.test(tokens[i + 1]?.low ?? ''))) return 'adv'; // "a bit notchy"
  const noun = nounClasses(low).size > 0 || isTradeWord(low) || FLAW.test(low);
  const condition = CONDITION.has(low);
  if (prev === 'noun' && forms.length && tellsFigure(tokens, i, solid)) return 'verb';
  if (prev === 'noun' && LOOKED_AT.test(low) && /^(it|them|that|those|these)$/.test(tokens[i + 1]?.low ?? '') && /^(again|every|after|in|over|when|once|next|tomorrow|before)$/.test(tokens[i + 2]?.low ?? '')) return 'verb'; // "reamed it with the hand reamer check it again after five hours"
  if (/[^s]s$/.test(low) && prev !== 'pron' && nounClasses(singular(low)).has('part') && numberListEnd(tokens, i + 1) !== undefined) return 'noun'; // "sleeves two and three", "rods one, two and five"
  if (low === 'level' && prev === 'noun' && /^(oil|fuel|float|water|coolant|fluid|electrolyte|acid|grease|diesel|petrol)$/.test(tokens[i - 1]!.low)) return 'noun';
  if (prev === 'num' && /^(hours?|hrs|miles|days?|weeks?|months?|fortnight)$/.test(tokens[i - 1]!.low) && forms.some(f => f.form === 'base') && (ARTICLE.has(tokens[i + 1]?.low ?? '') || /^(it|them|all|those|my|round|over|her|that)$/.test(tokens[i + 1]?.low ?? ''))) return 'verb'; // "every ten hours grease the kingpins"
  if (/^(pressure|leak|crack|flow|bench|spark|load|dye|water|road|field)$/.test(low) && tokens[i + 1]?.low === 'tested' && (prev === 'pron' || prev === undefined || prev === 'cc')) return 'adv'; // "I pressure tested it"
  if (HOW.test(low) && TREATED.test(tokens[i + 1]?.low ?? '') && prev !== 'det' && prev !== 'poss') return 'adv';
  if (SPOILT.test(low) && !PREP.has(tokens[i + 1]?.low ?? '') && (prev === undefined || /^(mark|cc|intj|adv|prep)$/.test(prev)) && nominal(tokens, i + 1, solid) && standsAlone(tokens, i + 1, solid)) return 'adj'; // "broken spring in the seat"
  if (/^(fourth|fifth|sixth|seventh|eighth|ninth|tenth|remaining)$/.test(low) && prev === 'det') return 'adj';
  if (low === 'fit' && tokens[i + 1]?.low === 'for' && (prev === 'cc' || prev === 'be' || prev === 'adv' || prev === 'mark')) return 'adj';
  if (low === 'rest' && (prev === undefined || prev === 'mark' || prev === 'cc' || prev === 'det') && (/^(ok|okay|is|are|was|were|all|look|looks|seem|seems|of)$/.test(tokens[i + 1]?.low ?? '') || CONDITION.has(tokens[i + 1]?.low ?? ''))) return 'noun'; // "…, rest ok"
  if (prev === 'to' || prev === 'modal' || prev === 'do') if (forms.some(f => f.form === 'base')) return 'verb';
  if (condition && prev === 'noun' && STATED.test(low) && !/^(it|them)$/.test(tokens[i + 1]?.low ?? '') && !nominal(tokens, i + 1, solid) && !nounClasses(`${tokens[i - 1]!.low} ${low}`).size) return 'adj';
  if (forms.length && noun && acts(tokens, tags, i, solid)) return 'verb';
  if (forms.length && noun) return nounOrVerb(tokens, tags, i, forms, solid);
  if (condition && (!forms.length || forms.every(f => f.form === 'base'))) return conditionTag(tokens, tags, i, noun, forms, solid);
  if (forms.length) return verbTag(tokens, tags, i, forms, solid);
  if (condition) return 'adj';
  if (noun) return 'noun';
  return unknownTag(low, prev, tokens, i, solid);
}

/** What is done again to a part after a while. */
const LOOKED_AT = /^(check|recheck|retorque|retighten|tighten|torque|grease|regrease|oil|inspect|watch|adjust|readjust|test|drain|clean)$/;

/** "wire brushed", "line bored": the first word says how. */
const HOW = /^(wire|bead|sand|shot|grit|soda|line|power|spot|hand|steam|wax|vapour)$/, TREATED = /^(brushed|blasted|bored|tested|washed|welded|scraped|cleaned|oiled|jetted|lapped|filed|honed|reamed)$/;

/** Faults that are nouns where no object follows: "crack in the head", "a hairline crack". */
const FLAW = /^(cracks?|leaks?|drips?|tears?|splits?|bends?|twists?|dents?|knocks?|rattles?|squeaks?|burrs?|kinks?)$/;
/** States that trade names hold too ("free wheel", "dead axle"); behind a noun with nothing after they say how it is. */
const STATED = /^(free|stuck|dead|junk|scrap|shot|toast|loose|tight|slack|dry|wet|clean|open|clear|solid|sound|split|cracked|bust)$/;
const ACTS = /^(slips?|works?|charges?|drags?|grabs?|holds?|starts?|fires?|jumps?|whines?|rattles?|squeals?|smokes?|wobbles?|weeps?|drips?|leaks?|binds?|knocks?|turns?|runs?|clicks?|sticks|drops|hunts?|sinks?|creeps?|surges?|tests?|checks?|opens?|closes?|blows|spins?|moves?|swings?|clears?|groans?|shows?|rumbles?|growls?|tracks?|floats?|rocks?|shakes?|lacks?|needs?|fits?|ticks?|taps?|hums?|buzzes|bangs?|scrapes?|rubs?|catches|hangs|wanders?|jams?|locks|chatters?|shudders?|judders?|misses|pumps?|primes?|seals?|seats?|slides?|snaps|rolls?|rides?|pulls?|snags?|squeaks?)$/;
/** How it does it: "swings free", "snaps shut", where nothing after is called so. */
const DOES_SO = /^(free|freely|shut|open|wet|dry|hot|cold|true|clear|tight|loose|smooth|smoothly|easy|easily|sweet|sweetly|quiet|nice|nicely|fine|clean|home)$/;

/** "clutch slips", "lights work": a noun and what it does, the two agreeing in number, at the end of what is said. */
function acts(tokens: readonly Token[], tags: readonly Tag[], i: number, solid: ReadonlySet<number>): boolean {
  const low = tokens[i]!.low, before = tokens[i - 1]?.low ?? '';
  if (tags[i - 1] !== 'noun' || /^(are|were|aren't|weren't)$/.test(tokens[i + 1]?.low ?? '') || !ACTS.test(low) && !(low === 'lifts' && tokens[i + 1]?.low === 'at') || nominal(tokens, i + 1, solid) && !PREP.has(tokens[i + 1]!.low) && !/^(shows?|lacks?)$/.test(low) && !(DOES_SO.test(tokens[i + 1]!.low) && !nominal(tokens, i + 2, solid)) || nounClasses(`${before} ${low}`).size || solid.has(i)) return false;
  return /s$/.test(low) ? singular(before) === before : singular(before) !== before;
}

function conditionTag(tokens: readonly Token[], tags: readonly Tag[], i: number, noun: boolean, forms: readonly VerbForm[], solid: ReadonlySet<number>): Tag {
  const prev = tags[i - 1], next = tokens[i + 1]?.low ?? '';
  if (forms.length && (prev === undefined || prev === 'cc' || prev === 'mark' || prev === 'adv') && (ARTICLE.has(next) || PRONOUN.has(next) || next === 'both' || next === 'all')) return 'verb';
  if (forms.length && prev === 'pron' && !/^(it|one|ones|that|them)$/.test(tokens[i - 1]!.low)) return 'verb';
  if (noun && beforeNoun(prev) && !nominal(tokens, i + 1, solid)) return 'noun';
  return 'adj';
}

const SPOILT = /^(cracked|broken|worn|torn|bent|snapped|sheared|seized|rusted|perished|frayed|chipped|pitted|scored|blown|burst|buckled|twisted|kinked|dented|warped|missing|leaking|weeping|corroded|rotted|busted|smashed|mangled)$/;

function verbTag(tokens: readonly Token[], tags: readonly Tag[], i: number, forms: readonly VerbForm[], solid: ReadonlySet<number>): Tag {
  const low = tokens[i]!.low, prev = tags[i - 1], next = tokens[i + 1]?.low ?? '';
  const participle = forms.some(f => f.form === 'part') || CONDITION.has(low);
  const ing = forms.some(f => f.form === 'ing');
  if (ing && /^(noises?|sounds?|marks?)$/.test(next)) return 'adj'; // "a tapping noise"
  if (ing && prev === 'det' && /^(the|a|an|my|his|her)$/.test(tokens[i - 1]!.low) && !nominal(tokens, i + 1, solid) && !solid.has(i + 1)) return 'noun'; // "the feeling that…"
  if (ing && prev === 'adj' && /^(new|fresh|rough|bare|spare)$/.test(tokens[i - 1]!.low) && tags[i - 2] === 'det' && !nominal(tokens, i + 1, solid)) return 'noun'; // "a new casting"
  if (ing && prev === 'noun' && nominal(tokens, i + 1, solid) && (AUX_BE.has(tokens[i + 2]?.low ?? '') || tokens[i + 2]?.low === "'s")) return 'adj'; // "mandrel adjusting nut is 14 tpi"
  if (ing && prev === 'noun' && (next === "'s" || AUX_BE.has(next))) return 'noun'; // "the leather facing's worn"
  if (participle && prev === 'be' && (/^(on|onto|into|off|together|back|home)$/.test(next) || /^(up|down)$/.test(next) && low !== 'stuck') && forms.some(f => isClass(f.base, 'on') || isClass(f.base, 'off')) && !forms.some(f => isClass(f.base, 'fail'))) return 'verb'; // "the pinion is shrunk on"
  if (beforeNoun(prev) && (participle || ing) && (nominal(tokens, i + 1, solid) || solid.has(i + 1))) return 'adj';
  if (prev === 'noun' && forms.every(f => f.form === 's' || f.form === 'base') && /^(pits|cracks|dents|leaks|scores|chips|burrs|splits|tears|wears|scuffs|nicks|dings|breaks)$/.test(low) && tokens.slice(Math.max(0, i - 3), i).some(t => /^(got|has|had|have|of|some|few|with)$/.test(t.low))) return 'noun';
  if (beforeNoun(prev) && forms.every(f => f.form === 'base' || f.form === 's') && prev !== 'num' && (!CONDITION.has(tokens[i - 1]?.low ?? '') || tags[i - 2] === 'det' || ARTICLE.has(tokens[i - 2]?.low ?? ''))) return 'noun';
  if (/^(crack|cracks|leak|leaks|dent|dents|split|tear|chip|chips|burr|rust|wear|rot|weep|seep|drip|knock|scuff|score|pit|pits)$/.test(low) && (prev === undefined || prev === 'mark' || prev === 'adj') && /^(in|on|at|along|across|around|from|through|and|scale|marks?|all)$/.test(next)) return 'noun';
  if (ing && (prev === undefined || /^(mark|cc|intj|adv|sub)$/.test(prev)) && nominal(tokens, i + 1, solid) && finiteAhead(tokens, i + 1, solid) && !gerundOf(tokens, i + 1, solid)) return 'adj'; // "the locking ring is cracked", without its article
  if (forms.length && forms.every(f => f.form === 'base') && (prev === undefined || prev === 'mark') && !/^(check|see|ensure|make|let|get|remember|note)$/.test(low) && !ARTICLE.has(next) && nominal(tokens, i + 1, solid) && doneAhead(tokens, i + 1, solid)) return 'noun'; // "reach rod refitted"
  if (participle && !ing && (prev === undefined || prev === 'mark' || prev === 'cc' || prev === 'intj') && nominal(tokens, i + 1, solid) && isAhead(tokens, i + 1, solid)) return 'adj'; // "bonded lining is dear"
  if (participle && prev === 'be' && /^(be|been|being)$/.test(tokens[i - 1]!.low) && forms.length) return 'verb';
  if (low === 'stripped' && (prev === 'be' || prev === 'noun' || prev === 'have') && !/(thread|bolt|nut|stud|spline|gear|tooth|teeth|screw|hole|plug|head|insert|pinion|worm)s?$/.test(tokens.slice(0, i).findLast((_, k) => tags[k] === 'noun')?.low ?? 'thread')) return 'verb'; // a carburettor is taken apart, a thread is spoilt
  if (CONDITION.has(low) && (prev === 'be' || prev === 'neg' && tags[i - 2] === 'be' || prev === 'noun' || prev === 'adv' || prev === 'pron' && /^(one|ones)$/.test(tokens[i - 1]!.low)) && !ARTICLE.has(next) && !/^(it|them)$/.test(next)) return 'adj';
  if (prev === 'noun' && forms.every(f => f.form === 'base') && /^(a|an|one|another)$/.test(tokens[i - 2]?.low ?? '') && singular(tokens[i - 1]!.low) === tokens[i - 1]!.low && !tokens.slice(Math.max(0, i - 5), i).some(t => MODAL.has(t.low) || /^(do|does|did|let|make|made|help|see|saw|watch|hear|heard|to)$/.test(t.low))) return 'noun'; // "a kebab stick": a singular would stand before "sticks"
  if (prev === 'num' && low === 'leaves') return 'noun';
  if (prev === 'noun' && nounClasses(low).has('part') && forms.every(f => f.form === 's' || f.form === 'base') && /s$/.test(low) && /^[,.;]?$/.test(next) && /^(the|my|its|both|all|new|old)$/.test(tokens[i - 3]?.low ?? tokens[i - 2]?.low ?? '') && tags.includes('verb')) return 'noun'; // "swap the lift cylinder seals, …"
  if (prev === 'num' && forms.some(f => f.form === 'base') && isNumberWord(tokens[i - 1]!.low) && /^(with|by|on|for|of)$/.test(tokens[i - 2]?.low ?? '') && /[^s]s$/.test(next)) return 'noun'; // "with two tack welds"
  if (low === 'stripped' && participle) return 'verb';
  if (ADVERB.has(low)) return 'adv';
  return 'verb';
}

function unknownTag(low: string, prev: Tag | undefined, tokens: readonly Token[], i: number, solid: ReadonlySet<number>): Tag {
  if (/^\p{Lu}\p{Ll}+ly$/u.test(tokens[i]!.text) && i > 0 && !/^[.!?]$/.test(tokens[i - 1]!.low) && !ENGLISH_ADVERBS.has(low)) return 'noun'; // "to Kelly's": a name
  if (ENGLISH_ADVERBS.has(low) || /(ly|wise|ways)$/.test(low) && low.length > 4) return 'adv';
  if (ENGLISH_ADJECTIVES.has(low)) return 'adj';
  if (low.includes('-') && !/[a-z]{3}ed$/.test(low)) return 'noun';
  if (/[aeiouy].*ed$/.test(low)) return beforeNoun(prev) && nominal(tokens, i + 1, solid) ? 'adj' : 'verb';
  if (/...ing$/.test(low) && (prev === 'be' || prev === 'have')) return 'verb';
  if (/(y|ish|less|able|ful)$/.test(low) && (prev === 'be' || prev === 'adv') && !nominal(tokens, i + 1, solid)) return 'adj';
  return 'noun';
}

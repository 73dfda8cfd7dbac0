/**
 * Words that begin another question, so that the one before ends there, with or without a mark or an "and": spoken questions run into one
 * another ("what was the gap before i touched them where are the springs").
 */
export const ONWARD = String.raw`,? (?:(?:and|or|also|then|so) )?(?:where|whats|whatll|what (?:is|was|were|did|do|does|have|has|would|can|should|all|else)|which (?:way|side|end|hole|bits|parts|one)|how (?:is|was|were|did|do|does|many|much|long|far|soon)|whos?|is there|are there|is anything|any(?:thing)? (?:due|late|left|more)|can (?:i|it|we|the)|could i|(?:show|give) (?:me|us)|(?:got )?any (?:photos?|pictures?|pics?)|have (?:i|you)|do (?:i|we|you) have|did i|when (?:is|will|can|do|did|was)|whens|why)\b`;
/** Any words, as long as they belong to the same question. */
export const WITHIN = String.raw`(?:(?!${ONWARD})[^.?!])*?`;

/** The same patterns, tried at the head of a text alone. */
const atHead = (patterns: readonly RegExp[]): readonly RegExp[] => patterns.map(p => new RegExp(p.source, 'y'));

/** Openings of questions that want no answer: they lead up to what is told, or are a mood. */
const MOODS: readonly RegExp[] = atHead([
  /(?:(?:do|d) )?(?:you|ye|ya) know what(?: i (?:did|done|found)| happened)? ?[?.,!]|(?:you |wanna |want to )?(?:know|guess) (?:what(?:s| i (?:found|did))|who|where|how)\b/,
  /remind me that /,
  /who (?:knew|knows|cares|else|in (?:their|his|her) right mind|would have|would ve|d have|does that|designed|designs|thinks|dreams? up|puts?|decided|says?|said|needs)\b/,
  /what (?:do you know|can (?:i say|you do)|else is new|could (?:go wrong|possibly)|was i thinking|were (?:they|you|we) thinking|am i like)\b/,
  /what (?:kind|sort) of (?:an? )?(?:idiot|fool|man|person|clown|animal|lunatic|maniac|engineer|sadist|butcher|cowboy)\b/,
  /whats (?:the (?:point|use|world coming to)|not to (?:like|love))\b/,
  /why (?:me|bother|do i (?:do this|bother|even)|did i (?:ever|bother|think|buy)|would (?:anyone|anybody|you|they|somebody|someone)|do they|did they|is it always|does it always|cant (?:anything|nothing|they|people))\b/,
  /how (?:hard can|about that|dumb|daft|stupid|(?:anyone|anybody|he|they) )/,
  /(?:is it|isnt it) (?:just me|always|any wonder)|is there anything (?:better|finer|worse)|isnt (?:it|that|she|he)\b|aint (?:it|that|she)\b|arent they\b/,
  /(?:would|wouldn ?t|can|could) you (?:believe|credit|imagine)|did i mention|have i (?:said|mentioned|told you)|when will i (?:ever )?learn|do i look like|am i (?:surprised|bitter|mad|daft|crazy)|remember when/,
]);
const JOINS = /^(?:(?:so|and|but|well|now|oh|ah|man|boy|lord|god|hey)[, ]+)*/;

/** Whether a question only opens the mouth. */
export function rhetorical(text: string): boolean {
  const rest = text.slice(JOINS.exec(text)![0].length);
  return MOODS.some(m => { m.lastIndex = 0; return m.test(rest); });
}

/** "don't ask me how long", "never mind what it cost": it is not asked. */
export const ASK_NOT = /\b(?:dont|do not|never|wont|not going to|hate to|dont want to|do not want to|rather not|dread to|dont dare|afraid to)(?: (?:you|even|go|bother|start))* (?:ask|asking|tell|mention|mind|remind|know|think|get me started on)(?: (?:me|us|about))* $/;

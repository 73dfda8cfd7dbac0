/**
 * Words that open a clause and only lead on to what is told ("sure enough the seal was torn"): dropped from the reading and traced.
 * None of them says that what follows is doubted; "I reckon", "I'd say" and the like are no lead-ins.
 */
export const LEAD_INS: readonly RegExp[] = [
  /^as it (?:turns|turned) out$/,
  /^(?:just )?as (?:i|we) (?:feared|thought|suspected|expected|guessed|figured|reckoned)$/,
  /^as (?:feared|suspected|expected)$/,
  /^(?:sure enough|lo and behold|surprise surprise|would you credit it|as luck would have it|to my (?:surprise|horror|relief|shame|delight)|same old story|no surprise there|i kid you not)$/,
  /^by the (?:look|looks|sound|sounds|feel) of (?:it|things|her|that|them)$/,
  /^(?:from|by) what (?:i|we) (?:can|could) (?:see|tell|make out)$/,
  /^(?:as|so) far as (?:i|we) (?:can|could) (?:see|tell|make out)$/,
  /^(?:(?:i|we)(?: 'm| am| 're| are)? )?(?:sorry|sad|happy|glad|pleased|delighted|relieved|afraid) to (?:say|report|see|find|tell you)(?: that)?$/,
  /^(?:(?:i|we) )?(?:(?:have|got) to|must) (?:say|admit|confess)(?: that)?$/,
  /^(?:on|upon) (?:closer |further |close )?(?:inspection|examination|looking)$/,
  /^(?:pity|shame|more 's the pity|typical|thank heaven)$/,
];

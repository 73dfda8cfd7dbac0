import { repair, type Mended } from './change.ts';

/**
 * Everyday words that recognisers write for the trade's, with the words beside them that only the trade's would have: a place on the machine, a
 * verb of the bench, a measure. Heard so on shop talk; common practice, no source. What sounds like a listed name is mended elsewhere.
 */
const BESIDE: readonly (readonly [heard: RegExp, meant: string])[] = [
  [/(?<=^|[.?!] )(?:ride all|rye ?to|right all|right oh|right-o),?(?= )/gi, 'Righto,'],
  [/\b(?<=\b(?:tailstock|headstock|lathe|bed|saddle|carriage|slide) )weighs\b/gi, 'ways'],
  [/(?<=^|[.?!] |\bi )(?:visit|visited|fetid)(?= (?:the|a|an|new|both|two) (?:new |old )?[a-z]+s?\b)/gi, 'fitted'],
  [/(?<=\b(?:gap|panel|bolts?|hole|edge|rust|seam) (?:at|on|in|of|behind|under) the )(?:cow|cowell|cal|towel)\b/gi, 'cowl'],
  [/(?<=\b(?:from|to|into|at|in) the (?:[a-z]+ )?)(?:sharp|chop|shaft)(?=[.,]? (?:they|he|she|on|till|until|by|i get)\b)/gi, 'shop'],
  [/(?<=\b(?:into|in to|from|at|off to|over to|down to) the (?:hydraulics?|machine|radiator|paint|body|welding|engine|weld|repair|tyre|tire) )(?:sharp|shaft|chop|shot)\b/gi, 'shop'],
  [/(?<=\bfrom the )soy(?:a|er)\b(?= (?:down|up|over|in|on|for|who|,))/gi, 'sawyer'],
  [/(?<=^|[.?!] )(?:what|which)('s the| is the)? (?:tour|talk|tork|torch|top)(?=\?)/gi, 'what torque'],
  [/(?<=\b(?:thou|inch|inches|mm|thousandths) (?:in|on|across|at) the )(?:ball|boar|board|bar)(?=[.,]| and\b)/gi, 'bore'],
  [/(?<=\bgot (?:the|it|that) ?(?:[a-z]+ )?)(?:heart|hut|hard|hat)(?= with (?:a|the|my) (?:torch|lamp|gas|heat gun|rosebud))/gi, 'hot'],
  [/\bhow hard (?=(?:do|should|must|would) (?:i|we) (?:get|make|heat|have) (?:it|the|that))/gi, 'how hot '],
  [/(?<=\b(?:half|quarter|quarters|eighths?|sixteenths?|inch|\d\/\d+) )(?:and|in|inch) (?:still|steal|steel)\b/gi, 'inch steel'],
  [/\b(?<=(?:^|[.?!,] ?|saw |the |old ))so (?=(?:arbor|arbour|blade|bench|mandrel|guide|teeth)\b)/gi, 'saw '],
  [/(?<=\b(?:log|drive|big|little|small|rear|front|free|pulley|flywheel|far|near|outboard|inboard)) (?:in|and|an|and's|ends?)[,]? (?=(?:babbitt|bearing|brass|bushing|bush|cap|housing|seal)\b)/gi, ' end '],
  [/\bdry (?:van|ven|fen|van's|end|vent)(?:'s)? (?=crack|is|was|bearing|cap|worn|good|gone)/gi, "drive end's "],
  [/(?<=\b(?:end|cap|head|casting|block|housing|shell)'s )crack(?= (?:and|in|right|through|across|clean|from)\b)/gi, 'cracked'],
  [/(?<=^|[.?!] )hubby(?:'s| is)\b(?= (?:\d|an?|one|two|three|four|about|still|off|on|hot|worn))/gi, 'Hub is'],
  [/(?<=^|[.?!] )(?:t|tee) first\b/gi, 'tea first'],
  [/(?<=\b(?:got|some|no|any|much|little|has|shows?|more|of) )(?:where|ware)(?= (?:in|on|at|of|left)\b)/gi, 'wear'],
  [/(?<=\banything )(?:laid|light|lay|lake|laden)(?=[.,?!]|$| and\b)/gi, 'late'],
  [/\b(?<=[a-z] )(?:once|one's) (?=(?:[$£]\d|(?:\d+|ten|twelve|fifteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))? (?:dollars|bucks|quid|pounds|for)\b))/gi, 'wants '],
  [/(?<=^|[.?!] )straight(?:en)? (?:in|and|on) (?=(?:the|both|all|two|my)\b(?! (?:bin|scrap|fire|ditch|box|bucket|oven|barn|shed|skip|shop|mail|post|can|middle|truck|road)\b))/gi, 'straightened '],
  [/(?<=\ba coat of )(?:prime her|prime a|primal|prima)\b/gi, 'primer'],
  [/\b(?<=(?:^|found |need |got |the |new |a |an )(?:an? |new )?)(?:we|be|v) belts?\b/gi, 'V-belt'],
  [/(?<=\bpistons?(?:'s| is| are)? (?:back )?in the )(?:bar|ball|boar|board)\b/gi, 'bore'],
  [/(?<=\d (?:degrees )?below )(?:fair amount|far and height|ferret height|fair and height)/gi, 'Fahrenheit'],
  [/(?<=^|[.?!] )(?:have not|how not|how hard|how hut) (?=for (?:a|an|the) )/gi, 'how hot '],
  [/\bread (?=valves?\b)/gi, 'reed '],
  [/\b(?:rejects|retracts|recheques|reach ex) (?=(?:do|due|dew|are due|have come due|is due)\b)/gi, 'rechecks '],
  [/(?<=\brechecks )(?:do|dew)\b/gi, 'due'],
  [/(?<=\bwhat(?:'s| is) )an order\b/gi, 'on order'],
  [/\bbefore that (?=the [a-z]+(?: [a-z]+)? (?:is|are|has|have|was)\b)/gi, 'before '],
  [/(?<=\b(?:says|said|by|on|till|until|before|for|back|next|this) )(?:thirsty|thursty|third day)\b/gi, 'Thursday'],
  [/(?<=\b(?:says|said|by|on|till|until|before|back|next|this|till it) )(?:ones ?day|when's day|wins day|one's day)\b/gi, 'Wednesday'],
  [/\bwhat i'll (?=have i\b)/gi, 'what all '],
  [/(?<=\bnewton[ -])(?:maters?|matters?|meaters?|meets)\b/gi, 'metres'],
  [/(?<=^|[.?!] )(?:knocked|nor|not)(?=, (?:cancel|scratch|strike) that\b)/gi, 'nah'],
  [/(?<=\b(?:it's|they're|is|are|was) )(?:hemming|humming|handing) (?=on the (?:back|nail|hook|wall|peg|rail|door)\b)/gi, 'hanging '],
  [/\bbroken two\b/gi, 'broke in two'],
  [/(?<=\b(?:didn't|couldn't|can't|to|and) )edit (?=off|out|on|back)/gi, 'get it '],
  [/\bhanding (?=on (?:two|to|one|a|the|three|by)\b)/gi, 'hanging '],
  [/\b(?:sider|cedar|sighter) (?=(?:press|mill|barrel|tub)\b)/gi, 'cider '],
  [/\bback ?side(?=[.,]|$| of\b)/gi, 'back side'],
];

export function mendBeside(mended: Mended): Mended {
  return BESIDE.reduce((m, [heard, meant]) => repair(m, heard, 'an everyday word heard for the trade\'s', (all) => (/^[A-Z]/.test(all!) ? meant[0]!.toUpperCase() + meant.slice(1) : meant)), mended);
}

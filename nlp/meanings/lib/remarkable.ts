/** A family of statements that are kept as a remark. */
export interface Family {
  /** What all of its ways of saying have in common, in low-case words. */
  says: RegExp;
  /** Words beside it that make it something else. */
  not?: RegExp;
  /** What it must speak of: a thing of the shop by name, such a thing or "it", or anything. */
  about: 'named' | 'it' | 'anything';
  /** Kept even where the rest of its sentence gave an entry. */
  beside?: boolean;
}

/** Days, mornings and nights without a measure. */
const STRETCH = '(?:day|morning|forenoon|afternoon|evening|night|week|weekend|yesterday|today|monday|tuesday|wednesday|thursday|friday|saturday|sunday|winter|summer)';
export const DURATION = new RegExp(`\\b(?:most|(?:the )?(?:better|best) part|the bulk|a good (?:part|bit)|half|all|the whole|the rest) (?:of )?(?:the |a |an |this |my |me |that )?(?:whole |best |better )?${STRETCH}\\b|\\b(?:the )?(?:best|better|good) part of (?:a|an|two|three|four|five|six) (?:day|morning|afternoon|evening|night|week|hour)s?\\b|\\bthe whole (?:blessed |bloody |damn |darn )?${STRETCH}\\b|\\b(?:a couple of|a few|several|many) (?:\\w+ )?(?:days|mornings|afternoons|evenings|nights|weekends)\\b|\\bfar too long\\b|\\blonger than (?:i|we|it)\\b|\\bforever\\b|\\bages\\b`);

export const FAMILIES: readonly Family[] = [
  // regret and hindsight
  { says: /\b(should|could|ought to) (have|'ve|of)\b|\bshould've\b|\bwish (i|we)('d| had)\b|\bforgot to (count|measure|mark|note|write|photograph|draw|label|ask|take|order|get|check|put|tell)\b|\bif only\b/, about: 'named', beside: true },
  { says: /\bonly then (saw|noticed|found|realised|realized)\b|\b(realised|realized|noticed|saw) (after|too late|i'd|i had|that i'd|that i had)\b/, about: 'named', beside: true },
  // doubt
  { says: /\b(keep|kept|can't help) (thinking|wondering|feeling|having the feeling)\b|\b(couldn't|can't|couldnt|cant|wouldn't|could not) (swear|say|tell|remember|be sure|be certain|vouch)\b|\bnot (sure|certain|convinced)\b|\b(unsure|no idea|beats me)\b|\b(i|we) (don't|dont|do not) (know|remember|recall|think)\b|\b(i|we) (doubt|wonder|suspect|fear|fancy)\b|\b(pretty|fairly|almost|nearly|quite) (sure|certain)\b|\bhave (my|a) (doubts?|feeling|hunch|suspicion)\b|\b(hope|hoping)\b/, about: 'it', not: /\b(trust|rain|weather|snow|wind|dry out)\b/ },
  { says: /\b(don't|dont|do not|didn't) know yet\b|\b(haven't|havent|not) (made up my mind|decided)\b|\bundecided\b|\bin two minds\b|\btoss-? ?up between\b/, about: 'it' },
  { says: /^(well |but |and |so |then )?(maybe|perhaps|possibly)\b|\b(might|may|could|must) (just |well |still |only )*(be|have been)\b|\b(i|we)('m| am)? (think|thinking|guess|guessing|suppose|believe|'d say)\b/, about: 'named' },
  // wishes
  { says: /\b(would|'d) (like|love|prefer|rather)\b|\bwould be (nice|good|handy)\b|\b(some ?day|one of these days|one day)\b|\bi wish\b/, about: 'named' },
  // what ought to be, by someone's rule
  { says: /\b(supposed|meant) to (be|get|have|go|run|take|come|sit|turn|give|read|hold)\b/, about: 'named', not: /\b(rain|snow|arrive|be here|be back|come (mon|tue|wed|thu|fri|sat|sun|on|by|next)\w*)\b/ },
  // what cannot be had
  { says: /\b(they|nobody|no one|none of them|(the |a )?[\w-]+( \w+)? (place|shop|yard|store|dealer|counter|merchant|supplier|man|crowd|mob|people)) (don't|dont|doesn't|doesnt|does not|do not|didn't|no longer|hasn't|haven't|never) (even |actually )?(stock|keep|carry|sell|supply|do|make|have|had|got|get)(s|ed|ing)?\b|\b(nobody|neither|none)( of them)? (stocks?|keeps?|sells?|makes?|has|have|carry|carries|does|do)\b|\b(out of|not in|none in|no) stock\b|\bsold out\b|\bno longer (made|available|sold)\b|\bnot available\b|\b(don't|dont|no longer) make .* (any ?more|now)\b|\b(you |i |we )?can't get\b.* (for love (n|)or money|anywhere|any more|anymore)\b/, about: 'anything', beside: true },
  { says: /\b(no|don't have a|dont have a|haven't (got )?a|without a) (price|bill|quote|date) (yet|for it|on it|for that|on that)\b|\b(forgot to|didn't|declined to|refused to|wouldn't|won't|can't) (ask|give|say|quote|name|tell)\b.*\b(how much|price|figure|cost|charge)\b|\b(going to|gonna|will|'ll) (mail|send|post|give|email|text) (me|us) (the|a|his) (bill|invoice|account|price)\b/, about: 'anything', beside: true },
  { says: /\b(i|we)('m| am|'re| are) not (paying|giving|spending|forking out)\b|\bwon't (pay|give) (him|them|that|\d)/, about: 'named' },
  // what stands in the way of the work
  { says: /\b(i|we)('ve| have)( got)? no (truck|trailer|van|ute|pickup|car|helper|crane|hoist|lathe|press|welder|power|light)\b|\bno \w+ (big|long|strong|small|wide) enough\b|\bonly (work|working|get|got|out there) (on it )?(after|before|at|evenings|weekends|nights)\b|\bor not at all$/, about: 'anything', beside: true },
  // how it lay before it came apart
  { says: /\b(was|were|had|hung|hooked|went|goes|sat) .*\b(outwards?|inwards?|backwards?|uppermost|lowermost|innermost|outermost|underneath|on top|ears? up|ears? down)\b|\b(facing (the|in|out|up|down|away|each|forwards?|back|backwards|left|right|towards?|inwards?|outwards?)|crossed|figure (of )?eight|left over right|right over left|wound|upside down|back to front|inside out|wrong way (round|up|in)|(long|short|thick|thin|big|small|narrow|wide|open|dished|chamfered|bevelled|blank|flat|hollow|closed|stepped) (end|side|face|edge|lip)s? (was |were |is |are )?(up|down|in|out|towards?|to|inner|outer|out(er)?most|first|facing))\b/, about: 'anything', beside: true },
  // time without a measure
  { says: new RegExp(`\\b(took|taken|spent|been|put in|lost|wasted|used up)\\b.*(?:${DURATION.source})|(?:${DURATION.source}).*\\b(too|as well|on (the|that|it))\\b`), about: 'anything', not: /\b(rain|rained|snow|wind|windy|hot|cold|sun|tea|lunch|sofa|couch|pub|bed|house|fishing|church)\b/, beside: true },
  // trial runs
  { says: /\b(it|she|he|the (engine|motor|tractor|machine|old girl|heron)|that|engine|motor) (\w+ )?(ran|runs|fired|started|popped|coughed|caught|kicked|spluttered|idled|ticked over|turned over|woke up|burst into life|came to life)\b|^(and )?(ran|fired|started|popped|coughed|caught|kicked)( up)? (first (time|pull|swing|go|kick)|(on|at) the \w+ (pull|swing|go|turn|kick|crank|try|push|attempt)|(for|like|twice|once|straight)\b)|^(and )?((i|we) )?(ran|put|fed|sent|tried) .+ through (the|it|her)\b|^(and )?((i|we) )?(ran|drove|took) (it|her|him|the (engine|motor|tractor|machine|pump|mower|baler)) (on the bench|in the yard|\d|up|down|round|around|for|about|on)|^(and )?((i|we) )?(mowed|baled|ploughed|plowed|raked|threshed|planted|sowed|harrowed|ground|milled|pressed|sawed|sawn|tied|cut|made|split) .*\b(bales?|acres?|rows?|rounds?|field|ditch|lawn|sheaves|sheaf|bags?|sacks?|bushels?|boards?|logs?|furrows?|headlands?|meadow|paddock)\b/, about: 'anything', not: /\b(if|unless|before|rough|knock|hot|away|down|out of|over|into|late)\b/ },
];

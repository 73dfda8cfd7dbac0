/**
 * The words by which people come to a question without asking it outright: "I'd like to know", "any notion", "I'm blowed if I can remember",
 * "be good to know", "what's your guess on". What follows them is asked, whatever order its words are in.
 */
const PERSON = String.raw`(?:i|we|one|the (?:wife|missus|boss|boy|lad|customer|owner|insurance)|wife|missus|boss|somebody|someone|anybody|he|she|they|dad|customer|owner)`;
const SOFT = String.raw`(?:(?:just|also|still|really|rather|quite|only|sort of|kind of|even|now|please|kindly|possibly|perhaps|maybe|ever|simply|honestly|actually|quickly|for the life of me|for love nor money|to save my life|again|first|while youre (?:at it|there)|rightly|exactly|precisely|properly|clearly|mind|once more) )*`;
const KNOW = String.raw`(?:know|hear|find out|learn|be told|ask(?: you)?|ask about|be sure|check|see|understand|be clear(?: on| about)?|work out|figure(?: out)?|establish|confirm|have (?:it|a reminder)|get an idea|know for sure|be reminded)`;
const KNOWING = String.raw`(?:know|hear|say|recall|recollect|remember|mind|tell|think(?: of)?|see|find|work out|figure(?: out)?|place|picture|bring to mind|call to mind|recollect|credit|be sure|swear to|put my finger on|make out|keep track(?: of)?|keep straight|lay (?:my )?hands? on)`;
const SHOW = String.raw`(?:tell|remind|show|give|read|say|check|look up|look|work out|figure out|figure|find out|find|confirm|pull up|bring up|dig out|dig up|call up|get|refresh|fill|advise|inform|run|go|take|catch|bring|talk|walk|let|put|print|list|run off|reel off|rattle off|fetch|remember|recall|let me know|summari[sz]e|state|name|point|see)`;
const UP = String.raw`(?: (?:me|us|my memory|my mind|back|up|out|over|through|off|in|on|about|of|to|at|again|please|have|know|down|round|around|a|the|quick|run ?down|reminder|idea|look|steer|hint|into|words|that|as|how|which|regarding|where it says))*`;
const LINK = /^(?: (?:about|of|on|as to|regarding|concerning|exactly|again|just|over|please|so i know))*[,: ]*/;

const LEADS: readonly RegExp[] = [
  new RegExp(String.raw`^(?:all |what )?(?:${PERSON}(?: would|d| should| do| does)?|id|wed|hed|shed|theyd) ?${SOFT}(?:like|love|want|wants|wanted|need|needs|needed|care|be (?:glad|happy|curious|interested|obliged|keen|grateful)|ought|wish|hope|have|got|ve got|trying|am trying|was hoping|am hoping) ?(?:for you )?${SOFT}(?:to|if you (?:could|would|can)) ${SOFT}${KNOW}\b`),
  new RegExp(String.raw`^(?:its?|that|thatd|it|itd|would)? ?(?:would |d |might |could )?(?:be|is) ${SOFT}(?:good|nice|handy|useful|helpful|great|grand|interesting|lovely|a help|as well|well|no harm|worth) (?:to|if i) ${SOFT}(?:know|knew|hear|be told|find out|knowing|have)\b`),
  /^(?:i(?:m| am| was| have been|ve been)?|been|was|were|we(?:re| were)|just)? ?(?:just |still |also |only |kind of |sort of |sat here |sitting here |stood here |standing here )*(?:wonder(?:ing)?|curious|asking|trying to (?:remember|recall|think|work out|figure(?: out)?|find)|racking my brains?|scratching my head|at a loss|struggling to (?:remember|recall|think)|unsure|none too sure|hazy|fuzzy|vague|foggy|in doubt)\b/,
  new RegExp(String.raw`^(?:(?:i|we|ive|weve|its|it|has|have|damn|dang|damned|clean|clear|completely|quite|totally|plain|just|already) )*(?:forget|forgot|forgotten|lost (?:track|count|sight|the thread|my note|the note|all track)(?: of)?|drawn a blank|gone blank|misremember|slipped my mind|escapes me|blank(?:ing|ed)? on|mislaid(?: where| my notes? (?:of|on))?|not got the foggiest|havent the foggiest|haven t the foggiest|havent a clue|haven t a clue)\b`),
  new RegExp(String.raw`^(?:i|we)? ?(?:(?:can ?t|cannot|can not|couldn ?t|could not|can never|never can|no longer) ${SOFT}${KNOWING}|(?:m |am )?(?:damned|blowed|hanged|blessed|buggered|darned|jiggered|dashed|blest|danged|stuffed) if i (?:can|could|know|knew)(?: ${KNOWING})?|(?:dont|do not|didnt|dinna|disremember) ${SOFT}(?:recall|recollect|remember|mind))\b`),
  new RegExp(String.raw`^(?:could|can|would|will|may|might|wont|cant|couldn ?t|wouldn ?t|can ?t|should)(?: (?:you|ye|i|we|someone|anybody|somebody|anyone|it)(?: all)?) ${SOFT}(?:please )?(?:${SHOW}|have|ask|be so (?:good|kind) as to ${SHOW})${UP}\b`),
  new RegExp(String.raw`^(?:do|did|would|does|dont|have|wouldnt|are|is) (?:you|ye|yous|anyone|anybody|someone|it) ${SOFT}(?:happen to |suppose you |think you |mind |able to |say |have any (?:idea|notion|record|note)|got (?:any (?:idea|notion|record)|it down|a note|a record)|got a (?:note|record))? ?${SOFT}(?:know|remember|recall|recollect|have|keep|got|see|say|tell|telling|reminding|checking|remembering|written down|note|mind|show|showing|looking up)${UP}\b`),
  new RegExp(String.raw`^(?:i )?(?:dont|do not|cant|would not|wouldnt|didnt) suppose (?:you(?:d|ve)?|youd|theres|there is|anyone|anybody)(?: (?:happen to|would|can|could|might|have|got|ve|any|a|know|remember|recall|tell|say|note|record|idea|chance|of|kept|keep|wrote|written|down|where it says))*`),
  new RegExp(String.raw`^(?:please |just |kindly |now |so |ok |right |go on |come on )*${SHOW}(?: (?:me|us|my memory)\b)${UP}`),
  /^(?:any|got any|have you any|youve no|you have no|no|not the (?:faintest|foggiest)|theres no|ive no|i have no|you got any|have you got any|is there any|some|a) (?:idea|ideas|notion|notions|clue|clues|thoughts?|word|news|record|records|note|notes|memory|recollection|guess|guesses|chance you (?:know|remember|recall|have)|way of (?:knowing|telling)|info|information|sign|signs|update)\b(?: (?:of|on|about|as to|how|yet|at all|for|regarding))*/,
  /^(?:whats|what is|whatd|give me|give us|i need|id like|ill take|let me have) (?:be )?(?:your|a|the|an) (?:best |honest |rough |realistic |latest |good |straight |educated )*(?:guess|estimate|reckoning|opinion|thought|thoughts|feeling|verdict|take|word|story|position|score|situation|state of play|latest|news|rundown|run down|list|tally|answer|reading)\b(?: (?:on|as to|about|of|for|with|regarding|to|these days|so far))*/,
  /^(?:(?:a |one |another |quick |wee |small |daft |silly |stupid |serious |dumb )*(?:question|query)(?: for you| about| on| time)?|heres (?:one|a question|a daft one)(?: for you)?|what (?:i|we) (?:want|need|would like|d like) to know is|what (?:im|i am) after is|the question is|my question is|question being|remember)\b/,
  new RegExp(String.raw`^(?:mind|recall|remember|recollect)(?= (?:where|how|what|when|who|which|if|whether)\b)`),
];
const JOIN = /^(?:(?:so|and|but|right|well|okay|ok|now|hey|then|also|oh|please|just|say|mate|lad|here|look|anyway|listen|or|plus|actually|pawl|by the way|btw|righto|meantime|tell you what|while im here|while im on|yet|still|cause|because|hi|hello|hmm|eh|aye|och|ah|um)[, ]+)*/;

/** How many of the first characters of `text` only lead in to a question; 0 where none do. The joining words ("so", "right") go with them. */
export function leadOf(text: string): number {
  const join = JOIN.exec(text)?.[0].length ?? 0, rest = text.slice(join);
  const hit = LEADS.map(l => l.exec(rest)?.[0].length ?? 0).reduce((a, b) => Math.max(a, b), 0);
  if (!hit) return 0;
  return join + hit + (LINK.exec(rest.slice(hit))?.[0].length ?? 0);
}
export const joinOf = (text: string): number => JOIN.exec(text)?.[0].length ?? 0;

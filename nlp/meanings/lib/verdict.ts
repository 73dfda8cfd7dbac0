import type { Entry } from '../../../domain/model/entry.ts';
import { VERDICT_WORDS } from '../../words/conditions.ts';

export type Verdict = NonNullable<Extract<Entry, { kind: 'finding' }>['verdict']>;

const PHRASED: readonly (readonly [RegExp, Verdict])[] = [
  [/\b(not|n't|nt|without|never) ((a|one|a single) )?(mark|scratch|blemish) (on|in) (it|them|her)\b/, 'good'],
  [/\bin (very |really |pretty |quite )?(excellent|perfect|good|great|fine|lovely|grand|tidy|decent) (\w+ )?(order|condition|shape|nick|fettle|trim)\b/, 'good'],
  [/\b(needs?|wants?|due for|wanting) (replacing|renewing|a replacement)\b/, 'replace'],
  [/\b((needs?|wants) (soldered|welded|brazed|patched|mended|repaired|straightened|rewound|rebushed|relined|re-lined|built up|ground|skimmed|bushed|sleeved|remetalled|re-?metalled|recut|machined|refaced|bored|rebored|honed|reground|rebuilt|repaired|fixed|built up|trued)\b|needs? (re)?(welding|brazing|straightening|patching|rebuilding|rewinding|repair(ing)?|fixing|mending|repouring|pouring|rebushing|resleeving|regrinding|skimming|a weld|a patch|re(?!plac|new|mov|check|fit)-?\w+ing)|can be (re-?(?!us|plac|mov|new)\w+ed|reground|rewound|sleeved|bushed|skimmed|machined|built up|soldered|mended|welded|repaired|fixed|saved|straightened|brazed|patched)|(i|we) can (easily |still |probably )?(weld|build|re-?line|re-?bush|sleeve|re-?make|recut|dress|braze|fix|patch|save|straighten|mend|repair|file|solder)|(has|have|'ll have|got|needs?) to be (re-?poured|poured (again|over|anew)|welded|brazed|repaired|fixed|mended|patched|straightened|rebuilt|rewound|re-?lined|re-?bushed|sleeved|reground))/, 'repair'],
  [/\b(keep (an|my) eye on|(must|will|to|should|'ll) (observe|monitor|keep watch on|be monitored|be observed)|under observation|keeping an eye|watch (it|that|them|this|for)|will watch|'ll watch|one to watch|needs watching|bears? watching)\b/, 'watch'],
  [/(?<!\bso )\b(it|they|that|she|he)('ll| will) (do|go again|go round again|serve|see|last|clean up|polish out|pass|be fine|go one more|run|live|hold)|\b(good|fit|fine) for (another|more\b|a few more|a while|years|one more)|\bgo again\b|\b(reus(e|able)|use it again|use them again|(goes|go|going) back (in|on)( as it is| as is| again)?$)|\b(be|are) (reused|used again)/, 'reuse'],
  [/\b(got to|has to|have to|must|needs to|need to|wants|needs|should) (be )?(replaced|replacing|renewed|renewing|chucked|binned|scrapped)\b|\b(gets|getting|be) (replaced|binned|scrapped)\b|\bneeds? (a )?(new|replac)|\bpast (it|saving)|\bno good\b|\bbeyond (repair|saving|help|hope)/, 'replace'],
];
/** Words that say good or junk only when they are the whole of what is said, not "fine crack" or "good inch". */
const ALONE = new Set(['fine', 'good', 'sound', 'solid', 'true', 'okay', 'ok', 'gone', 'finished', 'great', 'perfect', 'alright', 'lovely', 'grand', 'beautiful', 'healthy', 'mint', 'toast', 'shot', 'scrap', 'junk', 'excellent', 'serviceable', 'useless', 'rubbish', 'garbage', 'usable', 'past it', 'had it', 'gone']);

const WHOLE: ReadonlyMap<string, RegExp> = new Map(VERDICT_WORDS.map(([phrase]) => [phrase, new RegExp(`(^|[^\\w-])${phrase.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![\\w-])`)]));

/** The verdict that is plain from the words of a condition; undefined when they only describe. */
export function verdictIn(text: string): Verdict | undefined {
  const low = text.toLowerCase();
  const but = /\b(?:but|though|yet)\b(.*)$/.exec(low)?.[1];
  const turned = but ? verdictIn(but.replace(/^\s*(?:it's|they're|it is|they are|is|are|still|it|they)\s+/, '').trim()) : undefined;
  if (turned) return turned;
  for (const [re, v] of PHRASED) if (re.test(low)) return v;
  if (/\bnot (good|great|fine|sound|right|too good|perfect|true|okay)\b|n't (good|great|fine)/.test(low)) return undefined;
  for (const [phrase, v] of VERDICT_WORDS) {
    if (!low.includes(phrase) || !WHOLE.get(phrase)!.test(low)) continue;
    if (phrase === 'will do' && /\bwill do (the(?! (season|year|job|winter|summer))|a|my|his|that|this|it|them|those|some|another)\b/.test(low)) continue; // a deed ahead
    if (phrase === 'toast' && /\bas toast\b/.test(low)) continue; // "dry as toast"
    if (phrase === 'gone' && /\bgone (dry|tight|hard|stiff|solid|square|oval|soft|brittle|green|rusty|slack|loose|flat|dull|blunt|off|thin|white|black|milky)\b/.test(low)) continue; // what it has become, not that it is done for
    if (!ALONE.has(phrase)) return v;
    const left = low.replace(phrase, ' ').replace(/\b(still|all|just|really|very|pretty|quite|looks?|is|are|perfectly|mostly|as|actually|nice|and|inside|otherwise|though|too|completely|totally|absolutely|now|in|the|a|bit|of|both|well|surprisingly|i|think|both|rest|others|other|six|seven|eight|nine|ten|eleven|twelve|two|three|four|five|definitely|straight|bright|clean|tight|dry|plenty|proper|dead|good|enough|every|one|them|far|so|were|was|seem|seems|plain|utterly|properly|pure|complete|lot|they|it|that|she|these|those|this|re|s)\b/g, '').replace(/[^a-z]/g, '');
    if (left.length === 0) return v;
    if (v === 'good' && /^(clean|dry|tight|free|no|straight|round|smooth|bright|clear|spins|turns|true|sound|solid|strong)/.test(left)) return v;
    if (v === 'replace' && phrase !== 'gone' && phrase !== 'finished') return v;
  }
  return undefined;
}

import type { Ask } from '../../../domain/model/ask.ts';
import { spokenOf } from './spoken-of.ts';
import type { AskRule } from './rule.ts';

const PIC = String.raw`(?:photos?|photographs?|foto?s?|pictures?|picture's|pics?|pix|piccies|snaps?|snapshots?|shots|images?|photies|pitchers?(?= of\b))`;
const each = (names: string[]): Ask[] => names.map(part => ({ kind: 'picture', part }));
/** Taking or sending a picture is a deed, not a wish to see one. */
const TOOK = /\b(?:took|showed|sent|emailed|texted|posted|take|taking|taken|snapped|shot|sent|got him to take|made|make|i have|ive got|put up|posted|send him|forgot|drew|saved|add|adding|added|attached|had a look at|looked (?:at|through|over)|went (?:through|by|over)|going by|according to|judging (?:by|from)|from|checked|compared|matches|match|like|heres?|here are|some|a few|couple of) (?:a |an |the |some |more |lots of |a few |a couple of |two |three |four |\d+ |plenty of |him |her |them )*$/;

/** Show the photos of a part. */
export const PICTURE: readonly AskRule[] = [
  { name: 'and of X', open: new RegExp(String.raw`(?<=\b${PIC} of [^.?!]{3,40}) and of (?=(?:the|my|that|those)\b)`), things: 'one', weight: 3, make: s => each(s.names) },
  { name: 'photos of X', open: new RegExp(String.raw`\b${PIC}(?: (?:i|we) (?:have|took|got|ve got)| that i took| there are| we have|(?: do| does)? exists?|,? please| pls)? (?:of|o|for|from|on)(?: how| where| what)? `), things: 'list', weight: 2, make: s => TOOK.test(s.desk.text.slice(0, s.start)) ? undefined : each(s.names) },
  { name: 'X for a photo', open: new RegExp(String.raw`(?:^|[.?!;] |\band )(?=[a-z])`), things: 'one', tail: new RegExp(String.raw`^ for (?:an? |the )?${PIC}(?= ?(?:$|[?.,]))`), tailNeeded: true, weak: true, weight: 2, make: s => each(s.names) },
  { name: 'anything on camera of X', open: /\b(?:anything|owt|summat|something|is there any|have (?:i|we|you)(?: got)? (?:it|any)) (?:on (?:the )?(?:camera|film|phone)|photographed)(?: of)? /, things: 'list', weight: 4, make: s => each(s.names) },
  { name: 'photos, X', open: new RegExp(String.raw`(?:^|[.?!;] |\band |\bplus )(?:the |any )?(?:photos?|photographs?|pictures?|pics|pix)(?:,|:)? (?!(?:of|o|for|from|on|i|we|that|are|were|is|was|taken|if|there|too|as|also|please)\b)(?=[a-z])`), things: 'list', tail: /^(?= ?(?:$|[?.!]|and\b|please))/, tailNeeded: true, weak: true, weight: 2, make: s => each(s.names) },
  { name: 'show me X', open: /\b(?:(?<!\b(?:the|a|for|to) )show(?! (?:pony|grounds?|day|ring|season))|let me see|let me have a look at|pull up|bring up|lets see|i want to see(?! (?:it|that|them|those|her|him|how|if|whether|the [a-z ]{2,30}) (?:again|[a-z]+)\b(?! ?(?:photos?|pictures?|pics?)))|can i see|let me look at|(?<!\b(?:dont|wanna|not|never) )want to look at|put up(?= the (?!photo|pic|snap|shot|image))|give us a look at)(?: me| us)?(?: again| all| up)? (?!how|what|where|when|who|which|why|me )/, things: 'list', tail: new RegExp(String.raw`^,? (?:the )?${PIC}\b(?: i mean)?|^ (?:in pictures|as it was|before)\b`), weight: 1,
    make: s => /^show $/.test(s.m[0]) && /^ (?:were|was|are|is|had|have|will)\b/.test(s.desk.text.slice(s.end)) ? undefined : s.names.some(n => /^(?:list|next|history|log|hours|money|jobs?|shopping|orders?|total|spend|bill|readings?|parts?|rechecks?|whatever)/.test(n)) ? undefined : each(s.names.map(n => n.replace(new RegExp(String.raw` ${PIC}$`), ''))) },
  { name: 'X photos', open: new RegExp(String.raw`(?<=^|[.?!,;] |\b(?:the|any|see|show me|me|want|need|got|find|get|for|my|and|up|have|all) )(?=(?:[a-z]+ ){1,4}${PIC}\b)`), things: 'one', tail: new RegExp(String.raw`^ ?${PIC}\b`), weak: true, make: s => {
    if (/\bcold snap\b|\b(?:set|put|got|fit) a snap\b/.test(s.desk.text.slice(Math.max(0, s.start - 10), s.end + 8))) return undefined;
    if (/^(?:it|they|that|this|he|she) ?(?:snaps|shots)\b/.test(s.desk.text.slice(s.start))) return undefined; // "it snaps over like a trap"
    const name = s.names[0]!, own = new RegExp(String.raw` ${PIC}$`);
    return s.tail || own.test(name) ? TOOK.test(s.desk.text.slice(0, s.start)) ? undefined : each([name.replace(own, '')]) : undefined; } },
  { name: 'what did X look like', open: /\bwhat(?:d| did| does| do| would) /, things: 'one', tail: /^ (?:used to )?look like/, tailNeeded: true, weight: 3, make: s => each(s.names) },
  { name: 'what X looked like', open: /\bwhat (?=the|my)/, things: 'one', tail: /^ (?:looks?|looked|used to look) like/, tailNeeded: true, weight: 3, weak: true, make: s => each(s.names) },
  { name: 'show me how X looked', open: /\bshow (?:me|us) (?:again )?how /, things: 'one', tail: /^ (?:looked|looks|was looking|were,? the (?:photos|pictures|pics))\b/, tailNeeded: true, weight: 6, make: s => each(s.names) },
  { name: 'have I a photo', open: new RegExp(String.raw`\b(?:(?:have|do|did|had) (?:i|we|you) (?:have |got |take |get )?|is there |are there |got )(?:any |a |some |an old )?${PIC}(?= ?(?:$|[?.,!]|somewhere|anywhere|of (?:it|them|that)\b|and\b|too\b|if\b))|(?:^|[.?!;] )${PIC} if there (?:be|are|is) any\b|\b(?:show (?:me|us)|let me see|bring up) (?:the |a |any )?${PIC}(?= ?(?:$|[?.,!]|if (?:there|you|i|we)\b|too\b|as well\b))|\bi(?:ve| have) (?:got )?a ${PIC}(?: of (?:it|that [a-z]+))? somewhere,? (?=(?:show|bring|let me|pull|dig|find)\b)`), weight: 3, make: s => { const name = spokenOf(s.desk, s.start); return name ? each([name]) : undefined; } },
  { name: 'did I photograph X', open: /\bdid (?:i|we) (?:photograph|take (?:any )?(?:a )?(?:photos?|pictures?|pics?|snaps?) of|get (?:any )?(?:photos?|pictures?|pics?) of) /, things: 'list', weight: 3, make: s => each(s.names) },
];

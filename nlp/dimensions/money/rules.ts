import type { MoneyValue } from '../../types.ts';
import type { Num } from '../number/num.ts';
import { N, type Piece, type Rule, type Slate, runRules } from '../rule.ts';

const rx = (s: string): RegExp => new RegExp(s, 'g');
const SIGN = '[$£€]';
const BUCKS = String.raw`(?:dollars?|bucks?|quid|euros?|rand|pounds sterling|us dollars?|usd|eur|gbp|aud|nzd|smackers|dollar|squid)(?![a-z])`;
const CENTS = String.raw`(?:cents?|pence|p|c)(?![a-z])`;
const THEM = '(?: (?:it|them|her|him|the lot))?';
/** What brings a thing to the shop: said after a sum it is what that costs. */
const SHIP = String.raw`(?:shipping|shippin|shipped|post(?:age)?(?: and packing| & packing)?|p ?& ?p|p and p|freight|frieght|carriage|delivery|delivered|courier|couriers|haulage|mailing|cartage|transport|s ?& ?h|(?:ship|post|send|mail|freight|deliver|courier) (?:it|them|her)(?: (?:out|over|up|down|here|across))?|to (?:ship|post|send|mail|freight|deliver|courier|rail|truck)${THEM}|to (?:get|bring|have)${THEM} (?:here|to me|home|down|up|over|sent|shipped|posted|delivered)|to (?:put|pop|stick|throw)${THEM} (?:on|in) the (?:bus|train|boat|ferry|truck|lorry|van|plane|mail|post|carrier)|for the (?:courier|carrier|bus|boat|ferry|train|truck|lorry))(?![a-z])`;
/** What makes the carriage free, so that a sum before it is the price: "148 carriage paid". */
const FREE = String.raw`(?! (?:is |was |'s )?(?:free|paid|included|inclusive|thrown in)(?![a-z]))`;
const PER = String.raw`(each|apiece|a piece|ea|per foot|a foot|a ft|per ft|a board foot|per board foot|a running foot|per running foot|a yard|per yard|a pound|per pound|a kilo|per kilo|a gallon|per gallon|a lit(?:re|er)|per lit(?:re|er)|a sheet|per sheet|a length|per length|a roll|per roll|a tin|per tin|a bag|per bag|a box|per box|a throw|a metre|a meter|a pop|per piece|the pair|a pair|per pair|for the pair|for both|both|for the two|the two|the lot|for the lot|all in|the set|a set|for the set|per set|a dozen|per dozen|an hour|per hour|every)(?![a-z]| of )`;

/** What a number is worth as money: "twelve fifty" is 12.50, "fifty nine ninety five" 59.95, but "one forty" is 140; small sums by the foot and for the post are not hundreds. */
const worth = (n: Num, small = false): number => {
  if (!n.pair || n.pair[1] >= 100) return n.value;
  const [whole, rest] = n.pair;
  return !small && whole < 10 && (whole < 5 || !SHOP_ENDS.has(rest)) && !PRICE_TAGS.has(rest) ? n.value : whole + rest / 100;
};
const SHOP_ENDS = new Set([25, 50, 75]), PRICE_TAGS = new Set([95, 99]);
/** Whether a number said in two halves is sooner a price than not: "forty one ninety"; "nineteen sixty" is sooner a year. */
const priced = (whole: number, rest: number): boolean => SHOP_ENDS.has(rest) || PRICE_TAGS.has(rest) || whole >= 12 && whole !== 19 && whole !== 20 && rest >= 15 && rest % 5 === 0;

const per = (word: string | undefined): { per?: MoneyValue['per'] } => {
  if (!word) return {};
  if (/each|piece|\bea$|pop|every|throw|pound|kilo|gallon|lit(re|er)|sheet|length|roll|tin|bag|box/.test(word)) return { per: 'each' };
  if (/foot|ft|met|yard/.test(word)) return { per: 'foot' };
  if (/both|two/.test(word)) return { per: 'both' };
  if (/pair/.test(word)) return { per: 'pair' };
  if (/set/.test(word)) return { per: 'set' };
  if (/dozen/.test(word)) return { per: 'dozen' };
  return { per: /hour/.test(word) ? 'hour' : 'lot' };
};
/** Units after a number say that it is no price. */
const NOT_MONEY = String.raw`rpm|mm|v\b|volt|amp|inch|in\b|"|thou|psi|lb|pound|foot|feet|ft|hour|hrs?|mil|bar|kg|gal|qt|%|percent|degree|°|x|by|rev|miles|n\.?m|newton`;
const THINGS = String.raw`#|o'clock|am\b|pm\b|day|week|month|minute|of\b|more|new|bolt|stud|nut|thread|gauge|grade|coats?|th\b|shim|washer|and a|or so|pieces`;
const TAIL = String.raw`(?:,? ?${PER})?`;
const money = (value: number, word?: string, certainCurrency = true): MoneyValue => ({ value: Math.round(value * 100) / 100, ...per(word), ...(certainCurrency ? { certainCurrency } : {}) });

const RULES: Rule<'money'>[] = [
  { name: '$#', pattern: rx(`${SIGN} ?${N}(?: ?(k|grand)(?![a-z]))?(?: ${BUCKS})?${TAIL}`), make: (m, [n]) => n && money(n.value * (m[2] ? 1000 : 1), m[3]) },
  { name: '# dollars', pattern: rx(`(?:${N}|\\ba) ?${BUCKS}${TAIL}`), make: (m, [n]) => /^a/.test(m[0]) && !n ? money(1, m[2]) : n && money(n.value, m[2]) },
  { name: '# dollars and # cents', pattern: rx(`${N} ?${BUCKS} (?:and )?${N}(?: ?${CENTS})?${TAIL}(?! ?(?:${SHIP}|${BUCKS}))`),
    make: (m, [a, b]) => a && b && Number.isInteger(b.value) && b.value < 100 && (b.value >= 10 || /cents?|pence/.test(m[0])) && (/(?:and)|cent|pence/.test(m[0]) ? /cent|pence/.test(m[0]) : true) ? money(a.value + b.value / 100, m[3]) : undefined },
  { name: 'a dollar #', sure: 'implied', pattern: rx(`\\ba (?:dollar|buck|quid|pound|euro) ${N}(?! ?(?:min|mile|inch|thou|foot|feet|bolt|nut))${TAIL}`), make: (m, [n]) => n && Number.isInteger(n.value) && n.value >= 5 && n.value < 100 ? money(1 + n.value / 100, m[2]) : undefined },
  { name: '# cents', pattern: rx(`${N} ?(?:cents|pence)${TAIL}`), make: (m, [n]) => n && money(n.value / 100, m[2]) },
  { name: '#p', pattern: rx(`${N} ?p(?= ?(?:$|[.,;)]|each|apiece|a (?:go|piece|foot|metre|throw)|for|from|at|the)(?![a-z]))${TAIL}`), make: (m, [n]) => n && n.value >= 2 ? money(n.value / 100, m[2]) : undefined }, // "78p apiece"
  { name: '# euro sign after', pattern: rx(`${N} ?[€£$]${TAIL}`), make: (m, [n]) => n && money(n.value, m[2]) },
  { name: 'a fiver', pattern: rx(String.raw`\b(?:a|an) (fiver|tenner)(?![a-z])${TAIL}`), make: m => money(m[1] === 'fiver' ? 5 : 10, m[2]) },
  { name: 'a grand', pattern: rx(String.raw`(?:\ba|${N}) grand(?![a-z])`), make: (_m, [n]) => money((n?.value ?? 1) * 1000) },
  { name: '# pounds #', pattern: rx(`${N} pounds? ${N}(?= ?(?:$|[.,;)]|each|apiece|for|from|at|off|the (?:pair|lot|set)))`),
    make: (_m, [a, b]) => (a && b && Number.isInteger(a.value) && Number.isInteger(b.value) && b.value >= 10 && b.value < 100 && b.value % 5 === 0 ? money(a.value + b.value / 100) : undefined) },
  { name: '# pounds', sure: 'implied', pattern: rx(`${N} pounds?(?! ?(?:per|of|foot|feet|square|a square|to the|inch|-))(?: ${N}(?: ?p(?:ence)?(?![a-z]))?(?! ?(?:pounds?|quid|each|${SHIP}))| and ${N} ?p(?:ence)?(?![a-z]))?${TAIL}`),
    make: (m, [a, b]) => (a && (!b || Number.isInteger(b.value) && b.value >= 10 && b.value < 100) ? money(a.value + (b ? b.value / 100 : 0), m[4]) : undefined) },
  { name: '# pounds and shipping', sure: 'implied', pattern: rx(`${N} pounds? ?(?:${N}(?: ?p(?:ence)?(?![a-z]))? ?)?(?:more |extra )?(?:for |in |of |on |to )?(?:the )?${SHIP}${FREE}`), make: (m, [a, b]) => a && (/(?:delivered|shipped)$/.test(m[0]) ? { value: a.value + (b ? b.value / 100 : 0), per: 'lot' } : { value: a.value + (b ? b.value / 100 : 0), role: 'shipping' }) },
  { name: '# and shipping', sure: 'implied', pattern: rx(`(?:${SIGN} ?)?${N}(?: ?${BUCKS})? ?(?:more |extra )?(?:for |in |of |on |to )?(?:the )?${SHIP}${FREE}`), make: (m, [n]) => n && ship(m, n) },
  { name: 'a fiver post', pattern: rx(String.raw`\b(?:a )?(fiver|tenner) (?:for |in |on )?(?:the )?${SHIP}`), make: m => ({ value: m[1] === 'fiver' ? 5 : 10, role: 'shipping', certainCurrency: true }) },
  { name: 'shipping #', sure: 'implied', pattern: rx(`\\b(?:shipping|ship|postage|post|freight|carriage|delivery|courier)(?: ?(?:is|was|s|of|at|comes to|runs|adds|an extra|another|would be|about|around|cost|costs|another))*:? ?(?:${SIGN} ?)?${N}(?: ?${BUCKS})?(?![a-z ]*(?:day|week|hour|mile|inch|percent))`),
    make: (_m, [n]) => n && !n.frac ? { value: worth(n, true), role: 'shipping' } : undefined },
  { name: 'free shipping', pattern: rx(String.raw`\b(?:free (?:shipping|post(?:age)?|delivery|carriage|freight|of (?:shipping|post|carriage|freight))|(?:shipping|post(?:age)?|delivery|carriage|freight)(?: is| was|s|'s|'s all| all)?(?: included| free|'s free| inclusive| thrown in| paid| on (?:him|them|her|the house))|(?:with|including|includes|inc) (?:the |free )?(?:shipping|post(?:age)?|delivery|carriage|freight)(?: in| thrown in| included)?(?! (?:of|at|is|was|#|[$£€]))|(?:eats|eating|covers|covering|pays|paying|swallows|absorbs|stands|throws in|throwing in|not charging|won't charge|doesn't charge|no charge|nothing|nowt) (?:for )?(?:the )?(?:shipping|post(?:age)?|delivery|carriage|freight)|no (?:shipping|post(?:age)?|delivery charge|shipping charge|delivery|carriage|freight)(?: charge)?|(?:ships|posts|sends|comes|post|posted|shipped) free|post paid|postpaid|carriage paid|freight free)(?![a-z])`),
    make: () => ({ value: 0, role: 'shipping' }) },
  { name: '# core', sure: 'implied', pattern: rx(`(?:${SIGN} ?)?${N}(?: ?${BUCKS})? (?:for the |of |on the |as a |refundable )?(?:core(?: charge| deposit)?|exchange (?:deposit|surcharge)|surcharge|deposit on the old|core)(?![a-z])|(?:${SIGN} ?)?${N}(?: ?${BUCKS})? (?:deposit )?(?:comes |(?:that |which )?(?:i |we )?(?:get |ll get )?)?(?:back|refund(?:ed)?|credit)(?: to me)? (?:on|for|off|when i return|when you return|against|(?:when|once|if) (?:they|he|she|i|you|we)(?: ve)? (?:gets?|got|has|have|sends?|hands?|takes?|brings?)(?: (?:in|back|him|them|her))?) (?:the |my )?(?:old|return|exchange|core)(?: (?:one|unit|pump|part|core))?(?![a-z])`), make: (_m, [n]) => n && { value: worth(n, true), role: 'core' } },
  { name: 'a tenner back', pattern: rx(String.raw`\b(?:a )?(fiver|tenner) back (?:on|for|off|against) (?:the |my )?old(?: one)?`), make: m => ({ value: m[1] === 'fiver' ? 5 : 10, role: 'core', certainCurrency: true }) },
  { name: 'core #', sure: 'implied', pattern: rx(`\\b(?:core(?: charge| deposit)?|exchange (?:deposit|surcharge)|surcharge)(?: ?(?:is|was|s|of|at|charge|deposit|comes to))*:? ?(?:${SIGN} ?)?${N}(?: ?${BUCKS})?`), make: (_m, [n]) => n && { value: worth(n, true), role: 'core' } },
  { name: '# each', sure: 'implied', pattern: rx(`${N} ${PER}`), make: (m, [n]) => n && !/^(?:both|the two|a foot|a pair|the pair|an hour|a set|a dozen)$/.test(m[2]!) || (n && /foot|both|pair/.test(m[2]!) && n.value >= 2) ? money(worth(n!, /foot|ft|met/.test(m[2]!)), m[2], false) : undefined },
  { name: 'for #', sure: 'implied', pattern: rx(String.raw`(?<=\b(?:for|paid|asking|wants|want|wanted|charged|charges|cost(?:s| me)?|said|says|quoted(?: me)?|price(?:d)?(?: at| is| of)?|at|only|runs|gave(?: him| them)?|was|were|is|it's|its|comes to|came to|them|stung me|rushed me|set me back) (?:about |around |like |just |only |me )*)${N}(?: ?even| flat| plus| all in| the lot)?(?! ?(?:${NOT_MONEY}|${THINGS}))`),
    make: (_m, [n]) => n && !n.frac && n.value > 0 && !(n.value === 1 && n.form === 'words') ? money(worth(n), undefined, false) : undefined }, // "I'll want one"
  { name: '#.##', sure: 'implied', pattern: rx(`${N}(?! ?(?:${NOT_MONEY}))`), make: (_m, [n], slate) => n && (/^\d+\.\d\d$/.test(slate.line.text.slice(n.start, n.end)) || n.pair && priced(...n.pair)) ? money(worth(n), undefined, false) : undefined },
];

function ship(m: RegExpExecArray, n: Num): MoneyValue | undefined {
  if (/deliver(?:ed)$|shipped$/.test(m[0])) return { value: worth(n), per: 'lot', certainCurrency: /[$£€]|dollar|buck|quid|euro/.test(m[0]) };
  return { value: worth(n, true), role: 'shipping', ...(/[$£€]|dollar|buck|quid|euro/.test(m[0]) ? { certainCurrency: true } : {}) };
}

export const moneyPieces = (slate: Slate): Piece<'money'>[] => runRules('money', RULES, slate);

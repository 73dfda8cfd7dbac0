import type { SumKind } from './kind.ts';
import { type Figure, type Given, Scope } from './scope.ts';
import { table } from '../../../words/table.ts';

const ROUND = /\b(?:each way|one way|there and back|round trip|both ways|return)\b/;

function given(scope: Scope, prev?: Given): Given {
  const out: Given = {};
  const money = scope.values('money'), percents = scope.values('percent'), spans = scope.values('span').filter(s => s.value.unit === 'miles');
  const tax = percents.find(p => /^ ?(?:sales )?(?:tax|vat|gst|duty|on top|for the (?:tax|governor|state|government))/.test(scope.after(p)) || /\b(?:tax|vat|gst|duty)(?: (?:is|at|of|s|runs|plus|was|were|went to|goes to|drops to))* $/.test(scope.before(p))) ?? percents[0];
  const ship = money.find(m => m.value.role === 'shipping'), core = money.find(m => m.value.role === 'core');
  const rate = perMile(scope);
  if (rate) { out.rate = rate.value; scope.take(rate); }
  const bareTax = tax ? undefined : scope.numbers().find(n => n.value < 40 && (/^ ?(?:sales )?(?:tax|vat|gst)\b/.test(scope.after(n)) || /(?<!\bno )\b(?:tax|vat|gst|duty)(?: (?:is|at|of|s|was|were|went to|goes to))* $/.test(scope.before(n)) && !/^ ?(?:miles?|mi|dollars|bucks)\b/.test(scope.after(n))));
  const takenAt = (f: { start: number; end: number }): boolean => [ship, core, tax, bareTax, rate, ...spans].some(o => o && f.start < o.end && o.start < f.end);
  const priced = money.filter(m => !m.value.role && !takenAt(m) && !/^ ?(?:a|per) mile/.test(scope.after(m)) && !/\bcents?\b/.test(scope.desk.text.slice(m.start, m.end)));
  const counts = scope.numbers().filter(n => soMany(scope, n)), bare = scope.numbers().filter(n => !counts.some(c => c.start === n.start) && !(n.value === 1 && /\b(?:on|for|of|with|about|than|get|got|buy|bought|had|the|another|this|that|which|any) $/.test(scope.before(n)) && /one$/.test(scope.desk.text.slice(n.start, n.end))) && !(n.value === 1 && /^ (?:place|lot|shop|yard|outfit|fellow|bloke|land|come|cost|work|set|stand|run|end|at|for|that|thats|off|from)/.test(scope.after(n))) && !takenAt(n) && n.value > 0 && !/\b(?:box|bag|packs?|packet|set|lot|reel|card|roll|bundle|case) of (?:an? )?$/.test(scope.before(n)) && !/^ ?[a-z]{3,}s\b(?! (?:plus|and|shipping|landed))(?<!\b(?:bucks|dollars|pounds|euros|less))/.test(n.value < 20 ? scope.after(n) : '') && !/^ ?(?:miles|mile|mi\b|bolts|of (?:them|the)|inch|percent|hours?|tooth|thou|shoes|plates|legs|gauge)/.test(scope.after(n)));
  const sure = priced.filter(m => m.value.certainCurrency), figures = sure.length ? sure : priced; // beside what is surely money a bare number counts something
  const summed = [...priced.map(m => ({ start: m.start, end: m.end, value: m.value.value })), ...bare].find(f => /^ (?:dollars |bucks |quid |pounds )?plus\b/.test(scope.after(f)));
  const price: Figure | undefined = summed ?? first(scope, [...figures.map(m => ({ start: m.start, end: m.end, value: m.value.value })), ...(sure.length ? [] : bare), ...weighed(scope)].filter(f => !takenAt(f)));
  const many = price && counts.find(n => n.end < price.start && price.start - n.end < 20);
  if (price) out.price = many ? Math.round(many.value * price.value * 100) / 100 : price.value;
  scope.take(many);
  if (ship) out.shipping = ship.value.value;
  else if (/\b(?:no|free|without) (?:ship|shipping|post|postage|freight|carriage|delivery)\b/.test(scope.text)) out.shipping = 0;
  else {
    const plus = price && [...priced.map(m => ({ start: m.start, end: m.end, value: m.value.value })), ...bare].find(n => n !== price && n.start > price.end && /\b(?:plus|and|another|with) $/.test(scope.before(n)) && /^ ?(?:$|[,.;?]|and|to (?:ship|get|post|haul|bring|deliver|send)\b|for (?:the )?(?:post|ship|freight|carriage)|with|on top|in (?:the )?(?:post|mail)|(?:of )?(?:transport|ship(?:ping)?|freight|carriage|post(?:age)?)\b|same\b)/.test(scope.after(n)));
    if (plus) { out.shipping = plus.value; scope.take(plus); }
  }
  if (core) out.core = core.value.value;
  if (bareTax) { out.tax = bareTax.value; scope.take(bareTax); }
  if (tax) out.tax = tax.value.value;
  else if (/\b(?:no|without|ex|free of) (?:sales )?(?:tax|vat)\b/.test(scope.text) && prev) out.tax = 0;
  const drive = spans[0];
  if (drive) out.miles = drive.value.amount * (ROUND.test(scope.after(drive, 24)) && /each way|one way/.test(scope.after(drive, 24)) ? 2 : 1);
  scope.take(price, ship, core, tax, drive);
  if (prev && (drive || /\b(?:skip|without|no|save|lose|drop|pick (?:it|them) up|collect|fetch|(?:go|going) (?:and )?get (?:it|them))\b/.test(scope.text)) && out.shipping === undefined && out.price === undefined && prev.shipping !== undefined && /\b(?:skip|without|no|save|lose|drop|instead)\b[^.?!]*\b(?:freight|shipping|post|postage|carriage|delivery)\b|\b(?:pick (?:it|them) up|collect|fetch|(?:go|going) (?:and )?get (?:it|them))\b/.test(scope.text)) out.shipping = undefined;
  // "same price and tax but I drive forty miles": what is not said to be the same is gone.
  if (prev && drive && /\bsame (?:price|tax)\b[^.?!]*\bbut\b/.test(scope.text) && out.shipping === undefined && !/\bsame [a-z ]*(?:shipping|post|postage|freight|carriage|delivery)\b/.test(scope.text)) out.shipping = undefined;
  if (prev && /\b(?:no|without|skip the) core\b/.test(scope.text)) out.core = undefined;
  if (prev && out.price !== undefined) keepSame(scope, prev, out);
  return out;
}
/** "two at 80": a number that is how many of what is priced singly. */
const soMany = (scope: Scope, n: Figure): boolean => Number.isInteger(n.value) && n.value > 1 && n.value <= 24 && /^ (?:of (?:them|those) |off )?(?:at|@) #/.test(scope.mask.slice(n.end - scope.start));

/** What a mile costs: "at 50 cents a mile", "at .725 a mile", "at seventy two and a half cents". */
function perMile(scope: Scope): Figure | undefined {
  if (!/\bmiles?\b/.test(scope.text)) return undefined;
  // As spoken, for a price in cents is kept to the whole cent and a mile's is not.
  const cents = scope.seen(/#~*(?!~) ?(?:cents?|c|p|pence)\b(?= ?(?:$|[.?,]|(?:a|per|each|the) mile))/);
  if (cents) return { start: cents.start, end: cents.end, value: cents.nums.at(-1)! / 100 };
  const figs = [...scope.numbers(), ...scope.values('money').map(m => ({ start: m.start, end: m.end, value: m.value.value }))];
  return figs.find(x => /^ ?(?:dollars?)? ?(?:a|per|each) mile/.test(scope.after(x)));
}

/** Between two offers told before the question. */
const OTHER_OFFER = /,? or (?:another(?: (?:lot|one))?|the other(?: one)?|else)?|[.,]? ?\b(?:vs|versus|as against) |,? and (?:the other|another) (?:one|place|lot|shop|yard|outfit)\b/;

/** "165 and I drive 44 miles, or 150 plus 32 freight, what do they land at": each offer is a case of its own, under the tax said for either. */
function offers(scope: Scope): Given[] {
  if (!/\b(?:they|each|either|them|both|those)\b/.test(scope.text.slice(Math.max(0, scope.at - scope.start)))) return [];
  const told = scope.desk.text.slice(scope.start, scope.at), or = OTHER_OFFER.exec(told);
  if (!or) return [];
  const cut = scope.start + or.index, parts = [new Scope(scope.desk, scope.start, cut, cut), new Scope(scope.desk, cut + or[0].length, scope.at)];
  const cases = parts.map(p => given(p));
  if (cases.some(c => c.price === undefined)) return [];
  for (const p of parts) scope.take(...p.taken.map(([start, end]) => ({ start, end })));
  const tax = cases.find(c => c.tax !== undefined)?.tax;
  return cases.map(c => ({ ...c, ...(tax === undefined ? {} : { tax }) }));
}

const first = (scope: Scope, figs: Figure[]): Figure | undefined => scope.nearest(figs.sort((a, b) => a.start - b.start));
/** "forty pounds" is money where the note is of money. */
const weighed = (scope: Scope): Figure[] => scope.measures('lb').filter(f => /pounds?$/.test(scope.desk.text.slice(f.start, f.end)));

const SAID_AS: Readonly<Record<string, string>> = table({ shipping: '(?:shipping|post|postage|freight|carriage|delivery)', core: '(?:core|surcharge|deposit|exchange)', miles: 'miles' });

/** "one that's 120, same tax": another thing, which keeps only what is said to be the same, and the tax. */
function keepSame(scope: Scope, prev: Given, out: Given): void {
  const same = /\bsame\b/.test(scope.text);
  for (const f of ['shipping', 'core', 'miles']) if (out[f] === undefined && prev[f] !== undefined) out[f] = same && new RegExp(String.raw`\bsame (?:[a-z]+ (?:and )?)?${SAID_AS[f]}`).test(scope.text) ? prev[f] : undefined;
}

/** What comes on top of a price, without which nothing is to be reckoned. */
const BESIDE = String.raw`\b(?:tax|vat|gst|freight|carriage|shipping|ship|transport|post(?:age)?|core|delivery|miles)\b[^.?!]*`;

export const MILEAGE: SumKind = {
  of: 'mileage',
  ask: [
    /\b(?:what|how much|whats)\b[^.?!]{0,60}\b(?:cost|costs|in mileage)\b/,
    /\bcost of (?:an? |the )?[^.?!]{0,20}(?:mile|drive|trip)/,
  ],
  unless: /\b(?:landed|vat|same|dearer|shipping|part|so far|have i|spent|price|tax|core|really|dollars?|quote)\b|[$£€]/,
  given(scope) {
    const out: Given = {}, rate = perMile(scope);
    const drive = scope.values('span').find(s => s.value.unit === 'miles');
    if (!drive && !/\b(?:drive|driving|trip|miles?|mileage)\b/.test(scope.text)) return {};
    const day = scope.values('when')[0]?.value;
    if (drive) out.miles = drive.value.amount * (/\b(?:each way|one way)\b/.test(scope.after(drive, 24)) ? 2 : 1);
    if (rate) out.rate = rate.value;
    if (day?.from && day.from === day.to) out.date = day.from;
    scope.take(drive, rate);
    return out;
  },
  needs: ['miles'],
  weight: 2,
};

export const LANDED: SumKind = {
  of: 'landed',
  each: offers,
  ask: [
    /\b(?:what|how much|whats|hows|so what)(?: (?:does|do|will|would|is|s|did|ll))*(?: (?:a|an|the|that|it|this|those|they|my|one|these))*(?: (?:[a-z-]+|#~*(?!~))){0,5}? (?:land|lands|landed|owe me|land me|owe me|come to|comes to|coming to|add up to|adds? up to|work out(?: at| to)?|works out(?: at| to)?|end up (?:at|costing|being)|stand me(?: in)?|cost(?:ing)?(?: me)?|run me|set me back|total(?: up)?(?: to)?|tot up to)\b(?: (?:at|to|for|in|me|all in|in all|altogether|landed|at the (?:shop|door)|delivered|here|at if|at my door|in total|all told))*/,
    /\blanded (?:cost|price|total|figure)\b(?: (?:of|on|for|is))?|\b(?:cost|price|total) landed\b|\ball in (?:cost|price|total|figure)\b|\bdelivered (?:cost|price)\b/,
    /\b(?:whats|what is|what|how much)(?: (?:that|it|this|is|the|does|my|would|would that be|that be|will|be|would that|come to|comes?|s|total|s that|work out))* (?:landed|all in|all told|all up|at the door|(?:to|at) my (?:own )?door|on (?:my|the) (?:own )?(?:bench|doorstep|verandah)|in the end|altogether|total|in total|at the shop|to the shop|out the door|delivered|the total|the whole lot|all together|grand total)\b/,
    new RegExp(String.raw`(?<=${BESIDE})\b(?:that|it|this|which) (?:makes|comes to|is|would be|will be|comes out at) how much\b|(?<=${BESIDE})\blanded(?= ?\?)`),
    /\bwhat (?:do|would|will) i owe\b/,
    /\bwhat (?:have|did|would|will|do) i (?:really|actually)(?: be)? (?:paid|pay|paying)\b/,
    /\btotal cost of each\b|\bwhats? (?:is |does )?each(?: of (?:them|those))? (?:come|comes) out (?:to|at)\b/,
    /\bwhat(?:s| is| would| will|ll)? (?:be )?(?:the |my |a )?(?:total|damage|real cost|true cost|real price|true price|whole cost|all in)\b/,
  ],
  anew: 'price',
  extra: ['miles', 'core', 'shipping', 'tax'],
  unless: /\b(?:have i(?! really| actually)|ive spent|so far|spent|who|cheapest|best price|(?:best|lowest|keenest|cheapest) [a-z]+ price|lowest price|any ?(?:body|one)s?|who has|per leg|each leg|hours|torque|best landed)\b/,
  given,
  needs: ['price'],
  telling: [['price', 'shipping'], ['price', 'tax'], ['price', 'core']],
  word: /\b(?:landed|land|all in|all told|altogether|at the door)\b/,
};

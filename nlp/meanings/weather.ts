import type { Entry } from '../../domain/model/entry.ts';
import type { Clause } from '../clauses/clause.ts';
import type { Found } from '../types.ts';
import { nounClasses } from '../words/nouns.ts';
import { trim } from './lib/fields.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

type Sky = Extract<Entry, { kind: 'weather' }>['sky'];
const SKY: readonly (readonly [RegExp, Sky])[] = [
  [/\b(snow(ing|s|y)?|sleet|blizzard|flurries|white stuff)\b/, 'snow'], [/\b(rain(s|y|ing)?|showers?|showery|precipitation|wet|drizzle|storms?|stormy|thunderstorms?|downpours?|pouring|bucket(ing|s)?( it)? down|bucketing|pissing|soaking|damp|thunder|thunderheads?|teem\w*|lashing( down)?|(hammering|tipping|belting|coming) (it )?down|chucking it down)\b/, 'rain'],
  [/\b(frost(s|y)?|freez(e|ing)|freezes|below freezing|hard freeze|icy|below zero|minus \w+)\b/, 'frost'], [/\b(wind(s|y)?|mistral|(south|north)?-?(easter|wester)(ly)?|southerly|northerly|nor'?wester|sou'?wester|gale(s)?|gusts?|gusty|blowy|breezy|blowing|blow a|(a|big|bit of a|proper|good) blow|howling|blow (coming|due|on the way|forecast|(on )?(mon|tues|wednes|thurs|fri|satur|sun)day))\b/, 'wind'], [/\b(hot|heat ?wave|heat|scorch\w*|roasting|sweltering|boiling|baking|scorcher|in the nineties|over ninety|blistering)\b/, 'hot'],
  [/\b(dry|fine|sunny|sun|clear|fair|no rain|settled|bright)\b/, 'dry'],
];
/** Words that make a sky word a thing of the shop: a dry bearing, a fine thread, hot iron. */
const SAYS = /\b(they|radio|forecast|weather|tv|paper|app|bbc|met|says?|saying|said|calling|reckon\w*|figures|giving|promis\w+|picking|due|supposed|coming|expect\w*|forecasting|tonight|tomorrow|weekend|week|all day|all week|through|till|until|from|monday|tuesday|wednesday|thursday|friday|saturday|sunday|today|spell|turning|turns|outlook|looks like|looking|going to|gonna)\b/;

/** Weather wished for, and what it is too wet or hot for, are no forecast. */
const WISHED = /\b(could|can) do with\b|\bneed(s|ing)? (a|some)\b|\bpray\w*\b/, TOO = /\btoo (wet|cold|hot|windy|dry|damp|bright)\b/;
/** Whether words about the weather say that it is so, or will be. */
export const foretells = (text: string): boolean => !WISHED.test(text) && !TOO.test(text);

/** The weather as the person expects it, with its days. */
export const weather: Meaning = t => {
  const c = t.clause;
  if (c.who === 'they' && c.subj.length) return undefined; // "they're fine" is said of parts
  const marvel = /\b(can|would|will) you (believe|credit) (it|that)\b/.test(lowText(t));
  if (c.asks && !marvel || c.sub && /^(if|unless|when|because|so|until|till|before|while|that)$/.test(c.sub) || /^(cond|wish|past plan)$/.test(c.reality) || c.reality === 'hearsay' && /\b(hope|hoping|wish|doubt)$/.test(lowText(t, t.clauses[t.at - 1] ?? c))) return undefined;
  const text = lowText(t);
  if (/\b(was|were|yesterday|had|last (night|week))\b/.test(text) && !/\b(was (calling|saying|giving)|supposed)\b/.test(text)) return undefined;
  if (!foretells(text)) return undefined;
  const both = hotAndDry(t, text);
  if (both) return both;
  const sky = skyIn(t, text) ?? degrees(t, text) ?? clearing(t, text);
  if (!sky) return undefined;
  const more = severalSkies(t);
  if (more) return more;
  if (/^(i|we|you)$/.test(c.who ?? '') && !/\b(in for|due|have|got|getting|get)\b/.test(text) || partTalk(t) || /\b(to (dry|set|cure)|drying|dries)\b/.test(text) || c.verb?.form === 'past' && /^(run|turn|go|come|get|find|feel|work|wear|blow|dry|strip|make)$/.test(c.verb.base!)) return undefined;
  const days = t.sheet.found.filter((f): f is Extract<Found, { dim: 'when' }> => f.dim === 'when' && f.from >= c.from && f.to <= c.to && !f.value.vague);
  const today = t.sheet.ctx.at.slice(0, 10);
  const coming = longest(days).filter(f => (f.value.to ?? f.value.from ?? '9') >= today), span = (f: (typeof days)[number]): number => Date.parse(f.value.to ?? f.value.from ?? '') - Date.parse(f.value.from ?? '');
  const named = coming.filter(f => !(coming.length > 1 && span(f) > 25 * 86_400_000)); // "snow Tuesday, in April!"
  if (!named.length && !/\b(all (day|week|weekend)|soon|coming|on the way|forecast|they|radio|tv|telly|tonight|later)\b/.test(text)) return undefined;
  if (!named.length) return SAYS.test(text) && /\b(forecast|coming|on the way|they|radio|tv|telly|paper|app|met office|news)\b/.test(text) ? [{ kind: 'weather', sky } as Entry] : undefined;
  const upTo = named.length === 1 && /\b(through|thru|till|until|up to|up till)( to)?( the)? [a-z]+$|\b(through|thru|till|until) (to )?(mon|tues|wednes|thurs|fri|satur|sun)/.test(text) && !named[0]!.value.to?.localeCompare(named[0]!.value.from ?? '') ? sinceWhen(t) : undefined;
  const from = upTo ?? named[0]!.value.from, to = lastDay(t, named.at(-1)!);
  return [trim({ kind: 'weather', sky, from, to: stays(t) ?? to }) as Entry];
};

/** "Hot and dry all next week": two skies said of the same days. */
function hotAndDry(t: Telling, text: string): Entry[] | undefined {
  const lead = t.clause.join === 'and' && t.clauses[t.at - 1] ? lowText(t, t.clauses[t.at - 1]!) : ''; // cut in two at "and"
  const m = /^(?:(?:it's|it is|it'll be|going to be|and|then|stays|staying) )*(hot|cold|wet|dry|windy|fine|clear|sunny|frosty|bright)(?: and|,) (hot|wet|dry|windy|fine|clear|frosty|sunny|bright)\b/.exec(lead && SKY.some(([re]) => re.test(lead)) && /^\w+$/.test(lead) ? `${lead} and ${text}` : text), c = t.clause;
  const skies = m ? [m[1]!, m[2]!].map(w => SKY.find(([re]) => re.test(w))?.[1]) : [];
  if (skies.length < 2 || skies.some(s => !s) || skies[0] === skies[1] || partTalk(t)) return undefined;
  const days = longest(t.sheet.found.filter((f): f is Extract<Found, { dim: 'when' }> => f.dim === 'when' && f.from >= c.from && f.to <= c.to && !f.value.vague && (f.value.to ?? f.value.from ?? '') >= t.sheet.ctx.at.slice(0, 10)));
  if (!days.length) return undefined;
  const ends = /^(through|thru|till|until|to)$/.test(t.sheet.tokens[days[0]!.from - 1]?.low ?? '') || /^(through|thru|till|until)$/.test(t.sheet.tokens[days[0]!.from]!.low), from = ends && days.length === 1 ? t.sheet.ctx.at.slice(0, 10) : days[0]!.value.from;
  return skies.map(sky => trim({ kind: 'weather', sky: sky!, from, to: lastDay(t, days.at(-1)!) }) as Entry);
}

/** "forecast is for thirty-eight degrees Friday": heat told by its figure. */
function degrees(t: Telling, text: string): Sky | undefined {
  const c = t.clause, f = t.sheet.found.find(x => (x.dim === 'measure' && /^°/.test(x.value.unit) || x.dim === 'number') && x.from >= c.from && x.to <= c.to);
  if (!f || f.dim !== 'measure' && f.dim !== 'number' || !/\b(forecast|they|radio|tv|weather|met|app|going to be|supposed to (be|hit|get)|expecting|high of|up to|tops? of)\b/.test(text) || f.dim === 'number' && !/\b(high of|tops? of|hit|hitting|degrees|forecast)\b/.test(text)) return undefined;
  const unit = f.dim === 'measure' ? f.value.unit : '°', v = f.value.value;
  return unit !== '°F' && v <= 0 || unit === '°F' && v <= 32 ? 'frost' : unit === '°C' && v >= 30 || unit === '°F' && v >= 88 || unit === '°' && (v >= 34 && v <= 48 || v >= 88 && v < 125) ? 'hot' : undefined;
}

/** "rain Saturday, clearing up for Sunday": what follows the wet is dry. */
const clearing = (t: Telling, text: string): Sky | undefined =>
  (/\b(clearing( up)?|clears? up|brighten\w*( up)?|drying up|dries up|faring up|fairing up|easing off|settling down)\b/.test(text) && t.told.at(-1)?.entry.kind === 'weather' ? 'dry' : undefined);

/** "rain Saturday, staying till Monday": the clause after says how long. */
function stays(t: Telling): string | undefined {
  const n = t.clauses[t.at + 1];
  if (!n || !/^(and )?(it's |it is )?(staying|lasting|hanging on|hanging about|sticking around|right through|not clearing|not stopping|on and off)\b.*\b(till|until|through|to|thru)\b/.test(lowText(t, n))) return undefined;
  const f = t.sheet.found.filter(x => x.dim === 'when' && x.from >= n.from && x.to <= n.to && !x.value.vague).at(-1);
  if (f?.dim !== 'when') return undefined;
  (n as Clause & { spoken?: boolean }).spoken = true;
  return f.value.to ?? f.value.from;
}

/** "Forty-two on Friday. Hot right through to Sunday": a span with only its end said begins on the day named before, else today. */
function sinceWhen(t: Telling): string {
  const c = t.clauses[t.at - 1], today = t.sheet.ctx.at.slice(0, 10);
  const f = c && t.sheet.found.find(x => x.dim === 'when' && x.from >= c.from && x.to <= c.to && !x.value.vague && (x.value.from ?? '') >= today);
  return f?.dim === 'when' && f.value.from ? f.value.from : today;
}

/** "rain today and tomorrow, then dry Saturday": each sky with the days after it; one without days ("rain all the time, dry from Friday") has none of the other's. */
function severalSkies(t: Telling): Entry[] | undefined {
  const { clause: c, sheet } = t;
  const at = sheet.tokens.slice(c.from, c.to).flatMap((x, k) => { const hit = x.low === 'sun' && sheet.found.some(f => f.dim === 'when' && f.from <= c.from + k && c.from + k < f.to) ? undefined : SKY.find(([re]) => re.test(x.low)); return hit ? [{ sky: hit[1], k: c.from + k }] : []; });
  if (at.length < 2 || new Set(at.map(a => a.sky)).size < 2) return undefined;
  const days = longest(sheet.found.filter((f): f is Extract<Found, { dim: 'when' }> => f.dim === 'when' && f.from >= c.from && f.to <= c.to && !f.value.vague));
  const out = at.map((a, i) => ({ sky: a.sky, days: days.filter(d => d.from > a.k && d.from < (at[i + 1]?.k ?? c.to)) })).filter(x => x.days.length);
  const apart = out.length === 1 && out[0]!.sky !== at[0]!.sky && sheet.tokens.slice(at[0]!.k, at.find(a => a.sky === out[0]!.sky)!.k).some(x => /^(,|then|but|;)$/.test(x.low));
  return out.length > 1 || apart ? out.map((x, n) => trim({ kind: 'weather', sky: x.sky, from: n === 0 && x.days.length === 1 && /^(through|thru|till|until|up to)$/.test(sheet.tokens[x.days[0]!.from - 1]?.low ?? sheet.tokens[x.days[0]!.from]!.low) ? sheet.ctx.at.slice(0, 10) : x.days[0]!.value.from, to: lastDay(t, x.days.at(-1)!) }) as Entry) : undefined;
}

function skyIn(t: Telling, text: string): Sky | undefined {
  if (/\bno (rain|frost|wind|snow)\b|\bwithout (any )?rain\b|\bnot a drop\b|\bstays? dry\b|\bstaying dry\b/.test(text)) return /no rain|drop|dry/.test(text) ? 'dry' : undefined;
  if (/\b(stops?|ends?|clears?|lets? up|eases?|over by)\b/.test(text)) return undefined;
  const said = text.replace(/\b(mon|tues?|wed|thurs?|fri|sat|sun) ?(&|and|\+|-|to|thru|through) ?(mon|tues?|wed|thurs?|fri|sat|sun)\b|\b(on|til|till|until|by|from|to|this|next|&|and) sun\b/g, ' ');
  const hits = SKY.flatMap(([re, sky]) => { const m = re.exec(said); return m ? [{ sky, at: m.index }] : []; });
  if (!hits.length || !SAYS.test(text) && !t.sheet.found.some(f => f.dim === 'when' && f.from >= t.clause.from && f.to <= t.clause.to)) return undefined;
  const first = hits.sort((a, b) => a.at - b.at)[0]!;
  return /\b(not|never|no|isn't|won't|doesn't|without|n't)( \w+){0,3} ?$/.test(said.slice(0, first.at)) ? undefined : first.sky;
}

/** Where the words of the sky and its days end: what run-on speech says after them is another matter. */
function skyEnds(t: Telling): number {
  const c = t.clause, day = t.sheet.found.filter(f => f.dim === 'when' && f.from >= c.from && f.to <= c.to).at(-1);
  const sky = t.sheet.tokens.findIndex((x, k) => k >= c.from && k < c.to && SKY.some(([re]) => re.test(x.low)));
  return day && sky >= 0 && sky < day.from ? day.to : c.to;
}

/** A clause about a part or a job rather than the sky. */
const partTalk = (t: Telling): boolean => t.clause.items.some(i => i.np && i.from < skyEnds(t) && !i.np.stands && (i.np.known || [...nounClasses(i.np.said), ...nounClasses(i.np.said.split(' ').at(-1)!)].some(k => /part|fastener|consumable|machine/.test(k))) && !/\b(rain|snow|frost|wind|sun|heat|dry|forecast|weather|radio|tv|paper|week|weekend|day|days|morning|afternoon|evening|night|showers?|spell|storm|storms|gale|gales|gusts|knots|mph|degrees|nineties|eighties|inch|inches|sky|app|wireless|man|woman|lady|outlook|freeze|luck|met office|office|news|wet|hot|fine|clear|sunny|windy|figures|neighbou?r|wife|bones|knee|stretch|run|bit|chance|front|drop|lot|patch|met|thunder|drizzle|sleet|half|heatwave|rest|chap|fella|north|south|west|east|northerly|westerly|fog|mist|cold|snap|downpour|end|first|second|thing)s?$/.test(i.np.said))
  || t.clause.verb !== undefined && /^(paint|spray|prime|mow|bale|fit|weld|clean|varnish|leave|put|take|pull|let|cure|check|need)$/.test(t.clause.verb.base ?? '');

const longest = (list: Extract<Found, { dim: 'when' }>[]): Extract<Found, { dim: 'when' }>[] => {
  const kept: typeof list = [];
  for (const f of [...list].sort((a, b) => (b.to - b.from) - (a.to - a.from))) if (!kept.some(k => f.from < k.to && k.from < f.to)) kept.push(f);
  return kept.sort((a, b) => a.from - b.from);
};
/** The last day of what is said to be so: none for "from Thursday", "Sunday on". */
const lastDay = (t: Telling, f: Extract<Found, { dim: 'when' }>): string | undefined => (openEnded(t, f) && (!f.value.to || f.value.to === f.value.from) ? undefined : f.value.to ?? f.value.from);
const openEnded = (t: Telling, f: Found): boolean => /^(from|since|starting)$/.test(t.sheet.tokens[f.from]?.low ?? '') || /^(from|since|starting)$/.test(t.sheet.tokens[f.from - 1]?.low ?? '') || /^(from|starting|onwards?|on)$/.test(t.sheet.tokens[f.to]?.low ?? '') && (/onwards?|from/.test(t.sheet.tokens.slice(f.from, f.to + 1).map(x => x.low).join(' ')) || t.sheet.tokens[f.to]!.low === 'on' && !/\w/.test(t.sheet.tokens[f.to + 1]?.low ?? ''));

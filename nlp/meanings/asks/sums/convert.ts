import { UNITS, inContract, unitOf } from '../../../dimensions/measure/units.ts';
import type { SumKind } from './kind.ts';
import { type Figure, type Given, Scope } from './scope.ts';

const EXTRA: readonly (readonly [string, string])[] = [
  ['°F', 'fahrenheit|farenheit|degrees f|deg f|f'], ['°C', 'celsius|celcius|centigrade|degrees c|deg c|c'], ['in', 'thou|thousandths|thousandths of an inch|decimal inches|decimals?|decimal|in(?! (?:inch|mill?i|mm|feet|foot|ft|lbs?|pounds?|newton|lit|met|cm|cent|kil|quart|gal|bar|psi|n m))'],
  ['mm', 'metric|mil'], ['h', 'hours?'], ['mi', 'miles?'], ['km', 'kilomet(?:re|er)s?|k'], ['L', 'l'], ['kW', 'kw'],
];
const NAMES = [...UNITS.filter(([u]) => !['tpi', 'turns', 'AWG'].includes(u)).map(([, w]) => w), ...EXTRA.map(([, w]) => w)].join('|');
const TO = new RegExp(String.raw`(?:^|[\s,])(?:to|into|in|as|is that in|that in|(?:expressed|given|said|measured|put|reckoned|written) (?:in|as)|how many|what in|is it in|equals how many|= ?(?:how many|\?)|would that be in)\s+(?:plain |old |a |the |good old |decimal |us |imperial )?(${NAMES})(?![a-z])`, 'g');
const IMPERIAL: Record<string, string> = { mm: 'in', cm: 'in', m: 'ft', kg: 'lb', 'N·m': 'lb-ft', bar: 'psi', kPa: 'psi', L: 'qt', km: 'mi', '°C': '°F' };
const METRIC: Record<string, string> = { in: 'mm', ft: 'm', lb: 'kg', 'lb-ft': 'N·m', 'lb-in': 'N·m', psi: 'bar', qt: 'L', gal: 'L', mi: 'km', '°F': '°C', yd: 'm', oz: 'g', hp: 'kW', ton: 't' };

function unitNamed(word: string): string | undefined {
  for (const [u, w] of EXTRA) if (new RegExp(`^(?:${w})$`).test(word)) return u;
  const u = unitOf(word);
  return u === 'thou' ? 'in' : u;
}

/** Where the figure goes: "to foot pounds", "in millimetres", "how many quarts is", "in metric". */
function target(scope: Scope, from: string, of: Figure): string | undefined {
  if (/\b(?:in|to|into) (?:old money|imperial|english|us units|inch units|american)\b/.test(scope.text)) return IMPERIAL[from];
  if (/\b(?:as|in|to|into) (?:an? )?(?:fractions?|64ths|sixty[ -]?fourths)\b/.test(scope.text)) return 'fraction';
  if (/\b(?:in|to|into) metric\b/.test(scope.text)) return METRIC[from];
  const hits = [...scope.text.matchAll(TO)].filter(m => { const at = scope.start + m.index + m[0].length; return at <= of.start || at > of.end; });
  for (const m of hits.reverse()) {
    const u = unitNamed(m[1]!);
    if (u === 'h' && !/^(h|min|s|mi|km)$/.test(from)) continue; // "22 thou. How many hours…" asks for time
    if (u && u !== from) return from === 'mil' && u === 'mm' ? 'mm' : u === 'mil' && from === 'in' ? 'mm' : u;
    if (u === 'in' && from === 'in' && /decimal/.test(m[0])) return 'in';
  }
  const head = new RegExp(String.raw`\bhow many (${NAMES})(?![a-z])`).exec(scope.text);
  const u = head && unitNamed(head[1]!);
  return u && u !== from && !(u === 'h' && !/^(h|min|s|mi|km)$/.test(from)) ? u : undefined;
}

/** "how many amps is a 55 watt lamp", "how many square feet to the gallon" want another sum. */
const NOT_CONVERTED = /\bhow many (?:amps|ohms|volts)\b|\bdegrees to (?:heat|cool|warm|chill)|\b(?:solids|primer|paint|awg)\b|#~*(?!~) ?gauge\b/;

const WITH_HOURS: Record<string, string> = { miles: 'mi', hours: 'h' };
function given(scope: Scope, prev?: Given): Given {
  const figs = scope.measures().filter(f => f.unit && f.unit !== 'tpi' && f.unit !== 'AWG' && !/^(?:a|an) /.test(scope.desk.text.slice(f.start, f.end)) || f.value !== 1);
  const span = scope.values('span').find(s => WITH_HOURS[s.value.unit]);
  const said = /^(?:what|how)[a-z]*(?: (?:is|would|does|much is|be))* (?:that|it|this)\b/.test(scope.desk.text.slice(scope.at, scope.end)); // "thirty six mil, what is that in inches": of the figure before
  const lone = figs.filter(x => x.unit !== '°'), f = (prev ? undefined : ofThem(scope)) ?? (said ? lone.findLast(x => x.end <= scope.at + 1) : undefined) ?? lone.find(x => x.start >= scope.at) ?? lone.findLast(x => x.end <= scope.at + 1) ?? lone[0] ?? (span && { start: span.start, end: span.end, value: span.value.amount, unit: WITH_HOURS[span.value.unit]! });
  if (!f && prev) {
    if (scope.values('thread').length) return {};
    const n = scope.numbers()[0] ?? scope.measures('°')[0];
    const bare = new RegExp(String.raw`^(?:and|or) (${NAMES}) ?[?.]? ?$`).exec(scope.text); // "and gallons?"
    const to = [...scope.text.matchAll(TO)].map(m => unitNamed(m[1]!)).find(Boolean) ?? (bare ? unitNamed(bare[1]!) : undefined);
    if (n) { scope.take(n); return { value: thouish(scope, n.value, prev), ...(to ? { to } : {}) }; }
    return to ? { to } : {};
  }
  if (!f?.unit) return degrees(scope);
  if (NOT_CONVERTED.test(scope.mask)) return {};
  scope.take(f);
  const to = target(scope, f.unit, f) ?? (prev && typeof prev.to === 'string' && prev.to !== f.unit ? prev.to : undefined);
  if (span && f.start === span.start && !to || to === 'h' || to === 'mi' && !/^(?:km|m|ft|yd)$/.test(f.unit)) return {}; // "how many hours is that": spent, not turned into anything
  return { value: f.value, from: to === 'in' && metricMil(scope, f) ? 'mm' : f.unit, ...(to ? { to } : {}) };
}
/** "17 mil in inches": where inches are asked for, one "mil" is a millimetre; a coat is so many "mils". */
const metricMil = (scope: Scope, f: Figure): boolean => f.unit === 'mil' && /\bmil$/.test(scope.desk.text.slice(f.start, f.end));
/** "what's 30 of them in foot pounds": the unit named just before. */
function ofThem(scope: Scope): Figure | undefined {
  const m = scope.seen(/#~*(?!~) of (?:them|those|these)\b/), unit = m && [...scope.text.slice(0, m.start - scope.start).matchAll(new RegExp(String.raw`\b(${NAMES})(?![a-z])`, 'g'))].map(x => unitNamed(x[1]!)).findLast(Boolean);
  return m && unit && m.nums[0] !== 1 ? { start: m.start, end: m.end, value: m.nums[0]!, unit } : undefined;
}
const thouish = (scope: Scope, value: number, prev: Given): number => prev.from === 'in' && typeof prev.value === 'number' && prev.value < 0.2 && value >= 1 ? inContract(value, 'thou').value : (void scope, value);

/** "what's 180 degrees in celsius": a bare degree is the other scale. */
function degrees(scope: Scope): Given {
  const d = scope.measures('°')[0] ?? scope.numbers()[0];
  if (d && d.value < 1 && d.value > 0 && [...scope.text.matchAll(TO)].some(m => unitNamed(m[1]!) === 'mm')) { scope.take(d); return { value: d.value, from: 'in', to: 'mm' }; } // ".4375 in millimetres"
  const to = [...scope.text.matchAll(TO)].map(m => unitNamed(m[1]!)).find(u => u === '°C' || u === '°F');
  if (!d || !to) return {};
  scope.take(d);
  return { value: d.value, from: to === '°C' ? '°F' : '°C', to };
}

/** "convert 10 inches to mm and 3 feet to metres". */
function each(scope: Scope): Given[] {
  const pairs = [...scope.mask.matchAll(new RegExp(String.raw`#~*(?!~) ?(?:(?:${NAMES}) )?(?:to|in|into|as|= ?\?) ?(?:${NAMES})(?![a-z])`, 'g'))];
  if (pairs.length < 2) return [];
  return pairs.map(m => { const part = new Scope(scope.desk, scope.start + m.index, scope.start + m.index + m[0].length); const g = given(part); scope.take(...part.taken.map(([start, end]) => ({ start, end }))); return g; });
}

export const CONVERT: SumKind = {
  of: 'convert',
  each,
  ask: [
    new RegExp(String.raw`\bconvert #~*(?!~) ?(?:${NAMES})(?![a-z])`),
    /(?:^|[.?!,;:] )#~*(?!~) (?:in|to|into) (?:millimet(?:re|er)s|mm|decimal|decimals|decimal inches|metric|inches|thou)\b/,
    /\bhow big is #~*(?!~) in (?:decimal|mm|millimet|inches|metric)/,
    new RegExp(String.raw`\b(?:convert(?:ing)?|change|turn|translate|put)(?: me)? (?:(?!\b(?:and )?(?:what|whats|how|where)\b)(?:[^.?!]|(?<=\bn)\.(?=m\b))){1,50}? (?:to|into|in) (?:plain |decimal |us |imperial )?(?:${NAMES}|old money|imperial|metric|english)(?![a-z])`),
    /\b(?:what|how (?:much|long|big|far) (?:is|are)|how do i (?:get|make|turn))(?:s|d| is| would| does| are| s|re)? (?:that |the [a-z]+ |about )??(?:be )?(?:(?!\b(?:what|whats|how|where)\b)(?:[^.?!]|(?<=\bn)\.(?=m\b))){0,40}? (?:in|to|into|as) (?:plain |old |decimal |us |imperial )?(?:mm|mil|micron|cm|in\b|inch|met|thou|foot|feet|ft|lb|pound|newton|nm|n m|kg|kilo|psi|bar|kpa|cel|cent|fahr|far|litre|liter|quart|gal|pint|mile|km|yard|gram|ounce|old money|imperial|english|decimal|hp|horse|kw|kilowatt|c\b|f\b|degrees)[a-z]*/,
    new RegExp(String.raw`\b(?:in|to) (?:${NAMES}),? (?:whats|what is|how (?:much|many) is) #`), // "in bar what's 60 psi"
    new RegExp(String.raw`\bhow many (?:${NAMES})(?: (?:is|are|in|to|s|make|makes|does|would|there|be|equal|equals|that|its|do))+(?![a-z])`),
    new RegExp(String.raw`(?:^|[.?!,;:] |\b(?:and|also|or) )(?:also |and |or |then |what about |how about |about |i |just )*(?:need |want |give me |whats |what is )?(?:the )?#~*(?!~) ?(?:${NAMES}|degrees? (?:celsius|fahrenheit|c|f)|deg (?:c|f)) (?:in|to|into|as|equals|is how many|is what in) (?:${NAMES})(?![a-z])(?= ?(?:$|[?.,]|and|please|also|for (?:the|my|an?)\b))`),
    new RegExp(String.raw`#~*(?!~) ?(?:(?:${NAMES}) ?)?= ?\? ?(?:${NAMES})(?![a-z])`), // "18 N·m = ? lb-in"
    new RegExp(String.raw`#~*(?!~) ?(?:${NAMES}) (?:as|in|to|into) (?:an? )?(?:fractions?|64ths|sixty fourths)\b`),
    /(?:^|[.?!;,:] )(?:please )?(?:convert|change) (?:an? )?#~*(?!~) ?[a-z°\/·-]+(?: [a-z]+)?(?= ?(?:$|[?.]))/,
    new RegExp(String.raw`(?:^|[.?!;,:] |\bis )(?:and |or |also |then |so )*#~*(?!~)(?: of an inch)? (?:in|to|into|as) (?:mm|mil[a-z]*|decimals?|decimal inch(?:es)?|thou)(?= ?(?:$|[?.,]))`),
  ],
  unless: /\b(?:end ?play|put in|how far apart|threads (?:per|to) (?:the )?inch backed)\b/,
  given,
  needs: ['value'],
  full: ['value', 'to'],
  wants: ['to'],
  weight: 1,
};

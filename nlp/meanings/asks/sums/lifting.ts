import type { SumKind } from './kind.ts';
import { type Figure, type Given, put, type Scope } from './scope.ts';

const WEIGHTS = ['lb', 'kg', 'ton', 't', 'cwt'];
const LEG = String.raw`(?:slings?|legs?|chains?|straps?|ropes?|strops?|wires?|hooks?|lines?|leg(?:ged)?)`;

/** The angle from the horizontal, however it was said. */
function angle(scope: Scope): { value: number; at: Figure } | undefined {
  const f = scope.measures('°')[0] ?? scope.numbers().find(n => /^ ?(?:deg|(?:off|from|up from) (?:the )?(?:horizontal|flat|level|vertical|plumb))/.test(scope.after(n)) || n.value >= 15 && n.value <= 90 && new RegExp(`\\b(?:at|angle(?: of| is)?|${LEG},?)(?: (?:about|around|say|roughly))? $`).test(scope.before(n)) && /^ ?(?:$|[.,?;]|from|off|and|to|what|how)/.test(scope.after(n)));
  if (!f) return undefined;
  const near = `${scope.before(f, 40)}|${scope.after(f, 60)}`;
  if (/\b(?:off|from|of|to)(?: of)?(?: the)? (?:vertical|plumb|straight up|upright|perpendicular)|\bfrom straight\b|off (?:of )?straight|\bstraight up and down\b|off plumb/.test(near)) return { value: 90 - f.value, at: f };
  if (/\b(?:included|between (?:the )?(?:slings|legs|chains|straps|them|two|ropes)|apex|at the (?:hook|top|crown|ring)|spread of)\b/.test(near)) return { value: 90 - f.value / 2, at: f };
  return { value: f.value, at: f };
}

/** The first match with a number of legs that there can be; "grade 80 chain" is none. */
function few(scope: Scope, pattern: RegExp): ReturnType<Scope['seen']> {
  for (const m of scope.mask.matchAll(new RegExp(pattern.source, 'g'))) {
    const value = scope.num(m.index)?.value;
    if (value !== undefined && value <= 8) return { m: m as unknown as RegExpExecArray, nums: [value], start: scope.start + m.index, end: scope.start + m.index + m[0].length };
  }
  return undefined;
}

function legs(scope: Scope, given: Given, prev?: Given): void {
  if (/\ba (?:pair|couple) of (?:#~*(?!~) ?(?:foot|feet|ft|inch|in|m|metre|meter)s? )?(?:[a-z]+ )?(?:slings|legs|chains|straps|ropes|strops)\b/.test(scope.mask)) { given.legs = 2; return; }
  const many = scope.seen(/#~*(?!~) (?:slings?|chains?|straps?) (?:of|with) #~*(?!~)(?: |-)?(?:legs|falls|parts)\b/); // "one sling of two legs"
  if (many) { given.legs = many.nums[1]; scope.take(many); return; }
  const after = scope.seen(new RegExp(String.raw`\b${LEG},? #~*(?!~)(?=,|\.| at\b)`));
  const n = few(scope, new RegExp(String.raw`#~*(?!~)(?: |-)?(?:equal |nylon |steel |web |wire |good |wire rope |of |lifting |long |short |of those |foot |lengths of |falls of )*${LEG}`)) ?? scope.seen(/#~*(?!~)(?: |-)(?:leg|legged|part|point)\b/) ?? scope.seen(/#~*(?!~) of (?:them|those|the (?:legs|chains|slings))\b/) ?? after;
  if (n && n.nums[0]! >= 1 && n.nums[0]! <= 8 && Number.isInteger(n.nums[0])) { given.legs = n.nums[0]; scope.take(n); }
  else if (prev && /\b(?:if|with|used?|on|just|only)\b/.test(scope.text) && scope.numbers().length === 1 && [1, 2, 3, 4].includes(scope.numbers()[0]!.value)) { given.legs = scope.numbers()[0]!.value; scope.take(scope.numbers()[0]); }
  else if (/\b(?:a pair of|both|a couple of|double) (?:[a-z]+ )?(?:slings|legs|chains|straps|ropes|strops|leg)\b/.test(scope.text)) given.legs = 2;
  else if (/\b(?:(?:a|one) )?single (?:sling|leg|chain|strap)\b/.test(scope.text)) given.legs = 1;
}

function given(scope: Scope, prev?: Given): Given {
  const out: Given = {};
  const load = scope.measures(...WEIGHTS)[0];
  put(out, 'load', load);
  if (!load && !prev) {
    const n = scope.numbers().find(x => x.value >= 50 && /\b(?:weighs?|weight|its|about|is|s|load)(?: (?:about|of|is|around|say|at|roughly))* $/.test(scope.before(x)));
    if (n) { out.load = n.value; scope.take(n); }
  }
  const a = angle(scope);
  if (a) out.angle = a.value;
  else if (/\bstraight up\b|\bhanging straight\b|\bvertical(?:ly)?\b/.test(scope.text)) out.angle = 90;
  else if (prev) { const n = scope.numbers().find(x => x.value >= 15 && x.value <= 90); if (n) { out.angle = n.value; scope.take(n); } }
  const high = scope.measures('ft', 'm', 'in', 'mm').find(f => /^ ?(?:above|over|up|high|of (?:height|headroom)|from the (?:hook|load)|headroom|below the hook)/.test(scope.after(f)) || /\b(?:height|headroom|hook|up|high)(?: (?:is|of|at|about|s))* $/.test(scope.before(f)));
  const apart = scope.measures('ft', 'm', 'in', 'mm').find(f => f !== high && (/^ ?(?:apart|between|spread)/.test(scope.after(f)) || /\b(?:points?|eyes|hooks|lugs)(?: (?:are|is|of|at))* $/.test(scope.before(f))));
  const long = scope.measures('ft', 'm', 'in', 'mm').find(f => f !== high && f !== apart && (/\b(?:legs?|slings?|chains?|straps?|ropes?)(?: (?:are|is|each|of|about|measure|length))* $/.test(scope.before(f)) || /^ ?(?:slings?|chains?|straps?|legs?|long|each|ropes?|of chain)/.test(scope.after(f))));
  const span = scope.measures('ft', 'm', 'in', 'mm').find(f => f !== high && /^ ?apart/.test(scope.after(f)) && /\b(?:points?|lugs?|eyes|picks?|holes|hooks)(?: points?)?(?: (?:are|is|s))* $/.test(scope.before(f)));
  const leg = long ?? scope.measures('ft', 'm', 'in', 'mm').find(f => f !== high && f !== span && /\b(?:legs?|slings?|chains?|straps?)(?: (?:are|is|of|at|each))* $/.test(scope.before(f)));
  if (high && !a) put(out, 'height', high);
  if (leg && (high || span) && !a) put(out, 'length', leg);
  if (span && !a) put(out, 'span', span);
  scope.take(load, a?.at, high);
  legs(scope, out, prev);
  return out;
}

export const SLING: SumKind = {
  of: 'sling',
  ask: [
    new RegExp(String.raw`\bwhat(?:s|ll)? (?:(?:does|will|would|is|do|the|load|weight|pull|tension|on|in|s|force|strain|per|for|of|ll) )*(?:each|every|either|one|per|a|any|the|both)(?: of the)?(?: (?:single|one|lifting))? ?(?:${LEG})\b(?: (?:carry|see|take|pull|hold|get|feel|have to hold|doing|going to (?:see|carry)|carries|sees|takes|at|end up with|have|on it|load))*`),
    new RegExp(String.raw`\bhow much(?: (?:load|weight|pull|tension|is|does|will|would|force|strain|on|in|goes|ll|of it))* (?:each|every|one|per|the|on each|in each|a|either)(?: of the)? ?(?:${LEG})\b(?: (?:carry|see|take|pull|hold|get|feel|have to hold|going to see))*`),
    new RegExp(String.raw`\b(?:load|tension|pull|weight|force|strain) (?:per|on (?:each|every|the|one|a)|in (?:each|the|a|every)|on) ?(?:of the )?${LEG}\b`),
    /\b(?:sling|leg|chain|strap) (?:load|tension|pull)s?\b(?! (?:test|rating))/,
    /\bwhats? (?:is )?(?:in|on|to) each\b/,
    new RegExp(String.raw`\bhow (?:bad|hard|heavy) is (?:that|it|the (?:pull|load)) (?:per|on each|on every|for each) ${LEG}\b`),
    /\bhow much (?:in|on|to|for) (?:each|every)\b(?: one)?|\bwhat each(?= ?(?:$|[?.]))/,
    new RegExp(String.raw`\bwhatd (?:each|every|the)(?: (?:one|${LEG}))? (?:carry|see|take|pull|hold)\b`),
    /\b(?:pull|load|tension|strain|force|weight) (?:on|in|to) (?:each|either|every one)\b|\btension(?= ?\?)/,
    /\bwhat (?:does|will|would) (?:the|that|each) (?:sling|chain|strap|hook) (?:see|carry|take|pull)\b/,
    /\b(?:whats|what is|how much is|what does|what will|hows)(?: (?:that|it|this|going))* (?:on each|in each|on the slings|on the chains|on the straps|per leg|per sling|per side|each way|each side|each)\b(?: (?:carry|take|see|weigh))?/,
    /\bwhat(?:s|ll)? (?:they|each|each one|each of them|each side) (?:carry|see|take|pull|hold|carrying|pulling|seeing)\b/,
    /\bwhat (?:does|will|do|would) (?:each|they|each one|each of them|each side|each end) (?:carry|see|take|pull|hold|get|feel|have on it)\b/,
  ],
  unless: /\b(?:stands|jacks|land|landed|tax|freight|shipping|beam|centre of gravity|center of gravity|balance point|rated|rating left|derate|wll|working load|spent|washers|cost|torque)\b/,
  given,
  needs: ['load', 'angle', 'height', 'legs'],
  telling: [['load', 'angle', 'legs']],
  full: ['load', 'angle'],
  wants: ['load'],
  either: [['angle', 'height']],
};

/** A length with or without its unit, beside its word: "height 84, leg length 96". */
const lengthOf = (scope: Scope, word: RegExp): Figure | undefined => [...scope.measures('in', 'ft', 'm', 'mm'), ...scope.numbers()].find(f => new RegExp(`\\b(?:${word.source})(?: (?:is|of|at))* $`).test(scope.before(f)));

export const SLING_CAPACITY: SumKind = {
  of: 'slingCapacity',
  ask: [/\b(?:what|how much|whats)\b[^.?!]{0,60}\b(?:sling|chain|strap|slings|chains|straps)\b[^.?!]{0,50}\b(?:good for|rated|rating|left with|derated?|capacity|working load|wll)\b/, /\b(?:rated|rating|wll)\b[^.?!]{0,60}\b(?:what|how much)\b[^.?!]{0,20}\b(?:good for|lift|left|worth|down to)\b/, /\bgrade #~*(?!~) chain\b[^.?!]*\b(?:lift|hold|good for|carry)\b/, /\brated\b[^.?!]*\bcapacity\b/, /\b(?:rated|rating|wll|working load|capacity)\b[^.?!]{0,80}\b(?:at|with)\b[^.?!]{0,30}\b(?:degrees|angle|deg)\b/, /\b(?:grade|g) ?#~*(?!~)[^.?!]{0,30}\bchain\b[^.?!]*\b(?:lift|hold|good for|how much|what)\b/, /\bwhat can\b[^.?!]*\bchain\b[^.?!]*\blift\b/],
  given(scope) {
    const out: Given = {};
    const rate = scope.measures(...WEIGHTS).find(f => /\b(?:rated|rating|good for|wll|capacity|load limit|stamped|tagged)\b/.test(scope.before(f, 40)) || /^ ?(?:sling|rated|rating|chain|strap|wll|capacity|straight|vertical)/.test(scope.after(f))) ?? scope.measures(...WEIGHTS)[0] ?? scope.numbers().find(n => n.value >= 100 && (/\b(?:rated|rating|good for|wll|stamped|tagged)(?: (?:at|for|is|of))* $/.test(scope.before(n)) || /^ ?rated/.test(scope.after(n))));
    put(out, 'rating', rate);
    const chain = [...scope.measures('in', 'mm'), ...scope.numbers()], size = chain.find(f => (f.unit || /\//.test(scope.desk.text.slice(f.start, f.end))) && /^ ?(?:inch |in )?(?:grade|chain|alloy|g ?\d)/.test(scope.after(f)));
    const grade = /\b(?:grade|g) ?(30|43|70|80|100|120|eighty|seventy|hundred)\b/.exec(scope.text)?.[1];
    if (size && !rate) { out.size = scope.desk.text.slice(size.start, size.end).replace(/ ?(?:inch|in|").*$/, ''); }
    if (grade) out.grade = ({ eighty: '80', seventy: '70', hundred: '100' } as Record<string, string>)[grade] ?? grade;
    const a = angle(scope);
    if (a) out.angle = a.value;
    else { put(out, 'height', lengthOf(scope, /height|high|rise/)); put(out, 'length', lengthOf(scope, /(?:leg |sling )?length|leg|long/)); }
    scope.take(rate, size, a?.at);
    legs(scope, out);
    return out;
  },
  needs: ['rating', 'size', 'grade'],
  weight: 3,
};

export const TWO_POINT: SumKind = {
  of: 'twoPoint',
  inline: false,
  ask: [/\b(?:how does|how will)[^.?!]{0,24}\b(?:split|share|divide)\b/, /\b(?:whats|what is|how much is) on each\b/, /\bwhat (?:does|will) each (?:hook|jack|stand|end|side|point|hoist) (?:carry|see|take|hold)\b/, /\b(?:what|how much|whats)\b[^.?!]{0,40}\b(?:each end|each (?:jack|stand|point|support|hoist|side|hook|axle)|front and (?:the )?(?:rear|back)|either end|two (?:jacks|hoists|points|supports|stands))\b/, /\b(?:balance point|centre of gravity|center of gravity|balances?)\b[^.?!]*\b(?:what|whats|how(?: much)?|load on each)\b/, /\bhow (?:does|do|will|would|is) (?:the )?(?:load|weight|it)(?: (?:be|get))? (?:split|share|shared?|divide|divided|spread)\b/, /\btwo point lift\b/],
  given(scope) {
    const out: Given = {};
    const load = scope.measures(...WEIGHTS)[0];
    put(out, 'load', load);
    if (!/\bbalanc|\bcent(?:re|er) of gravity\b|\bfrom (?:the )?(?:first|one|front|rear|back|left|near)\b/.test(scope.text)) return {};
    const [a, second] = scope.measures('ft', 'in', 'm', 'mm', 'cm');
    const loose = a && !second ? scope.numbers().find(n => n.start > a.end && /^ ?(?:from|to)/.test(scope.after(n))) : undefined;
    const b = second ?? (loose && a ? { ...loose, unit: a.unit } : undefined);
    put(out, 'a', a); put(out, 'b', b);
    scope.take(load, a, b);
    return out;
  },
  needs: ['a'],
  wants: ['a', 'b'],
  telling: [['a', 'b']],
  word: /\bbalanc/,
  weight: 3,
};

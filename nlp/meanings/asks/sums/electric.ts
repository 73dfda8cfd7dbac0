import { inOne } from './in-one.ts';
import type { SumKind } from './kind.ts';
import { type Figure, type Given, put, type Scope } from './scope.ts';

const AUGHTS: Record<string, string> = { one: '1', two: '2', three: '3', four: '4' };

/** The word after a figure as it was written: "30 A through" is amperes, "30 a side" is not. */
const writtenAfter = (scope: Scope, f: Figure): string | undefined => scope.desk.sheet.tokens[scope.desk.line.tokenAt[f.end + 1] ?? -1]?.text;

/** What supplies and batteries are called by. */
const MAINS: ReadonlySet<number> = new Set([6, 12, 24, 36, 48, 110, 115, 120, 208, 220, 230, 240, 380, 400, 415, 440, 480]);

/** Volts, amps, watts, wire and its length, out of the stretch; in a follow-up a bare number is read by the words beside it. */
function circuit(scope: Scope, prev?: Given): Given {
  const out: Given = {};
  const one = (name: string, ...units: string[]): Figure | undefined => {
    const f = scope.measures(...units)[0];
    if (f) { out[name] = f.value; scope.take(f); }
    return f;
  };
  one('volts', 'V'); one('amps', 'A'); one('watts', 'W');
  // "two 35 watt headlights" draw together.
  const lot = out.watts === undefined ? undefined : scope.seen(/#~* #~*(?!~)(?: |-)?w(?:att)?s?\b/);
  if (lot && lot.nums.length === 2 && Number.isInteger(lot.nums[0]) && lot.nums[0]! <= 12) out.watts = lot.nums[0]! * lot.nums[1]!;
  const milli = scope.measures('mA')[0];
  if (milli && out.amps === undefined) out.amps = milli.value / 1000;
  // "6 m" may be money or minutes elsewhere; beside a wire it is metres.
  const metres = scope.numbers().find(n => /^ ?m(?:et(?:er|re)s?)?\b/.test(scope.after(n)));
  const long = scope.measures('ft', 'm', 'yd')[0] ?? (metres && { ...metres, unit: 'm' });
  put(out, 'length', long);
  scope.take(long);
  const aught = /\b([1-4])\/0\b/.exec(scope.text) ?? /\b(one|two|three|four) (?:aught|ought|nought)\b/.exec(scope.text);
  const wire = scope.measures('AWG')[0];
  const cable = (f: Figure): boolean => /^ ?(?:cable|wire|flex|square|csa|twin|core)/.test(scope.after(f)) || /\b(?:on|of|in)(?: (?:an?|the))? $/.test(scope.before(f)) && /^ ?(?:$|[.?,])/.test(scope.after(f));
  const square = scope.measures('mm²')[0] ?? (long || prev ? scope.measures('mm', 'mil').find(f => f.value < 150 && cable(f)) ?? scope.numbers().find(f => f.value < 150 && /^ ?(?:square|sq)\b/.test(scope.after(f))) : undefined);
  if (/\b(?:frame|chassis|body|earth|ground(?:ed)?) return\b|\b(?:return(?:s|ing|ed)?|grounds?|grounded|earthed|back) (?:by|through|via|on|to|thru) (?:the )?(?:frame|chassis|body|axle|tractor)\b/.test(scope.text)) out.return = 'frame';
  if (/\btinned\b/.test(scope.text)) out.wire = 'tinned';
  if (aught) out.gauge = `${AUGHTS[aught[1]!] ?? aught[1]!}/0`;
  else if (wire) { out.gauge = wire.value; scope.take(wire); }
  else if (square) { out.gauge = square.value; out.gaugeUnit = 'mm²'; scope.take(square); }
  else { const n = scope.seen(/\b(?:number|no\.?|№|awg|gauge|ga) ?#~*(?!~)/); if (n) { out.gauge = n.nums[0]; scope.take(n); } }
  if (out.volts === undefined && out.amps !== undefined) { // "at 230 and 6 amps"
    const mains = scope.numbers().find(n => MAINS.has(n.value) && /\b(?:at|on|off|from)(?: (?:about|a|the))? $/.test(scope.before(n)));
    if (mains) { out.volts = mains.value; scope.take(mains); }
  }
  for (const n of scope.numbers()) {
    if (/^ ?v\b/.test(scope.after(n)) && out.volts === undefined) { out.volts = n.value; scope.take(n); }
    else if (/^ ?a\b/.test(scope.after(n)) && (!/^ ?a (?!drop\b|loss\b|what\b|how\b)[a-z]/.test(scope.after(n)) || writtenAfter(scope, n) === 'A' || inOne(scope, n)) && out.amps === undefined) { out.amps = n.value; scope.take(n); }
    else if (prev && out.gauge === undefined && Object.keys(out).length === 0 && prev.gauge !== undefined) { out.gauge = n.value; scope.take(n); }
  }
  return out;
}

const LOSE = String.raw`(?:los(?:e|ing)|drop(?:ping|ped)?|giv(?:e|ing) up)`;
export const VOLT_DROP: SumKind = {
  of: 'voltDrop',
  ask: [
    /\b(?:voltage|volt|volts|line|wire|cable|wiring) (?:drop|loss|droop|sag)\b/,
    /(?:^|[.?!;,:] |(?<=#~* ?(?:a|amps?|v|volts?|ga|gauge|ft|m) ))(?:the )?(?:volt(?:age)? |volts )?(?:drop|loss)(?: (?:across|over|on|in) it)?(?= ?\?)/,
    /\b(?:is|will|would) (?:an? )?#~*(?!~) ?(?:gauge|ga|awg|mm|mil|square)\b[^.?!]*\b(?:drop|lose|enough|heavy|carry)\b/,
    /\bvolts? (?:lost|dropped) (?:in|over|on|along)\b/,
    new RegExp(String.raw`\bhow (?:much|many volts?)(?: (?:voltage|volts?|juice|of (?:it|that)|am|do|will|would|is|does|can|should|i|you|we|it|that|be|have|the [a-z]+|gets?|get|getting|power|v|ll|be|left|are|we))* (?:${LOSE}|lost|left|at the (?:end|lamp|light|headlights?|far end|bulb|starter|battery|coil)|makes? it|reach(?:es)?|(?:actually )?(?:arrive|get|see)s?)\b`),
    new RegExp(String.raw`\bwhat(?:s|ll)? (?:(?:do|will|would|am|does|is|the|i|it|that|be|my|voltage|volts|do i|total|have i|are we|we|can i expect to|ll|got|left) )*(?:${LOSE}|lost|drop|loss|left (?:at|with)|(?:get|see|arrives?|read|have) at the (?:end|lamp|light|headlight|bulb|far|other|coil|starter|motor|battery)[a-z]*)\b`),
    /\bwhat(?:s)? (?:the )?(?:drop|loss)\b/,
    /\b(?:loss|drop) (?:in|over|along|down|across|on) (?:the |that |this )?(?:wire|cable|run|length|line|loom|harness)\b/,
  ],
  unless: /\b(?:temperature|price|pressure|leak|psi|oil|coolant)\b/,
  given: circuit,
  needs: ['volts', 'amps', 'length', 'gauge', 'watts'],
  telling: [['amps', 'length', 'gauge']],
  wants: ['amps', 'length', 'gauge'],
};

export const WIRE_SIZE: SumKind = {
  of: 'voltDrop',
  ask: [
    /\b(?:what|which|whats|how (?:heavy|thick|big|fat))(?: (?:a|size|gauge|of|sort of|kind of|the|right|is|do|should|size of|awg|weight))* (?:wire|cable|gauge|awg|wiring|flex|lead|wire size|cable size)(?: (?:size|gauge|do|should|would|will|i|need|use|for|to|is|must|shall|have|want|run|it|does|that|take))*/,
    /\b(?:size|pick|choose|select) (?:the |a |my |some )?(?:wire|cable)\b/,
    /\b(?:wire|cable) (?:size|gauge)\b/,
  ],
  unless: /\b(?:weld(?:er|ing)|mesh|fence|bale|baling|fuse|did i|was the|were the)\b/,
  given: circuit,
  needs: ['amps', 'watts', 'length', 'volts'],
  wants: ['amps', 'watts', 'length'],
  weight: -1,
};

export const FUSE: SumKind = {
  of: 'fuse',
  ask: [/\b(?:what|which|whats|how big)(?: (?:a|size|sized|rating|amp|of|the|should|do|is|kind of|value|right|breaker or))* (?:fuse|breaker|circuit breaker)s?\b(?: (?:do|should|would|will|i|need|use|for|to|is|does|rating|size))*/, /\bfuse (?:size|rating|value|for)\b/],
  unless: /\b(?:holding|where|order|buy|blew|blown)\b/,
  given(scope, prev) { const { length: _l, lengthUnit: _u, ...rest } = circuit(scope, prev); return rest; },
  needs: ['amps', 'watts', 'gauge', 'volts'],
  weight: 2,
};

export const OHMS: SumKind = {
  of: 'ohmsLaw',
  ask: [/\bhow many (?:amps|ohms|watts|milliamps|volts)\b/, /\bwhat voltage across\b/, /\bwhat (?:voltage|current|resistance|wattage|amps|amperage)\b/, /\bwhats (?:the|its) (?:current|resistance|wattage|draw|amperage)\b/, /\bhow much (?:current|power|resistance)\b/, /\bwhat (?:does|will|would) (?:it|that|the [a-z]+(?: [a-z]+)?) draw\b/],
  unless: /\b(?:was|did|before|12 volts? instead|generator put out)\b|\b(?:6|six)(?: |-)?v(?:olts?)?\b[^.?!]*\bon (?:12|twelve)/,
  given(scope) {
    const { length: _l, lengthUnit: _u, gauge: _g, gaugeUnit: _gu, ...rest } = circuit(scope);
    const ohm = scope.measures('Ω')[0];
    if (ohm) { rest.ohms = ohm.value; scope.take(ohm); }
    return rest;
  },
  needs: ['volts', 'amps', 'ohms', 'watts'],
  weight: 1,
};

export const SIX_TO_TWELVE: SumKind = {
  of: 'sixToTwelve',
  ask: [/#~*(?!~)(?: |-)?v(?:olts?)?\b[^.?!]{0,40}\bon #~*(?!~)(?: |-)?v(?:olts?)?\b[^.?!]*\b(?:how many|what|how much)\b/, /\bconvert(?:ing)? from #~*(?!~) to #~*(?!~) volts?\b/, /\b(?:6|six)(?: |-)?v(?:olts?)?\b[^.?!]{0,60}\b(?:on|to|with|from) (?:12|twelve)(?: |-)?v(?:olts?)?\b[^.?!]*\b(?:how (?:many|much|hot)|what)\b/, /\b(?:6|six) to (?:12|twelve)\b[^.?!]*\b(?:how (?:many|much)|what)\b[^.?!]*/, /\b(?:6|six)(?: |-)?v(?:olts?)? [^.?!]{0,60}\b(?:12|twelve)(?: |-)?v(?:olts?)?\b[^.?!]*\b(?:resistor|dropper|ballast|what happens|survive|burn)/, /\b(?:what|which|how big)[^.?!]{0,24}\b(?:resistor|dropper|ballast)\b[^.?!]{0,60}\b(?:6|six)(?: |-)?v(?:olts?)?\b/, /\b(?:what|which|how big)[^.?!]{0,24}\b(?:resistor|dropping resistor|dropper|ballast)\b/],
  given(scope) {
    const { amps, watts } = circuit(scope) as Given;
    const ohm = scope.measures('Ω')[0];
    return { ...(amps !== undefined ? { amps } : {}), ...(watts !== undefined ? { watts } : {}), ...(ohm ? { ohms: ohm.value } : {}) };
  },
  weight: 3,
};

export const BATTERY: SumKind = {
  of: 'battery',
  ask: [/\bhow (?:full|charged|flat|good|far (?:down|gone))(?: up)? (?:is|s|does|would) (?:the |a |my |that |it )?(?:battery|charge)?/, /\bwhat(?:s)? (?:state of charge|percent(?:age)? charge|charge (?:is|level))\b/, /\bhow much charge\b/, /\bstate of charge\b/],
  given(scope) {
    // "the six volt battery" is which, not how full.
    const all = scope.measures('V'), named = all.find(f => /^ ?(?:battery|system|set|one)/.test(scope.after(f)) && (f.value === 6 || f.value === 12));
    const v = all.filter(f => f !== named).at(-1) ?? named, g = scope.numbers().find(n => n.value > 1.05 && n.value < 1.35) ?? scope.numbers().find(n => n.value >= 1050 && n.value <= 1350);
    scope.take(v, g);
    return { ...(v ? { volts: v.value } : {}), ...(v && named && v !== named ? { system: named.value } : {}), ...(g ? { gravity: g.value > 2 ? g.value / 1000 : g.value } : {}) };
  },
  needs: ['volts', 'gravity'],
  weight: 1,
};

/** A dynamo or a generator is driven like any other machine: that is the sheave sum. */
export const ALTERNATOR: SumKind = {
  of: 'alternatorSpeed',
  ask: [/\b(?:how fast|what (?:speed|rpm|revs|does|will)|how many revs)[^.?!]{0,30}\balternator\b(?! (?:cost|weigh|pulley))/, /\balternator (?:speed|rpm|revs)\b/],
  unless: /\b(?:was|wired|cost|done|back|put out|gear)\b/,
  given(scope) {
    const out: Given = {};
    const lens = [...scope.measures('in', 'mm', 'cm'), ...scope.numbers().filter(n => n.value < 20 && /\bpulley(?: (?:is|of|about))* $/.test(scope.before(n)))].sort((x, y) => x.start - y.start);
    const crank = lens.find(f => /\b(?:crank|engine|drive|balancer|driver)\b/.test(scope.before(f, 40)) || /^ ?(?:inch )?(?:crank|engine|on the (?:crank|engine))/.test(scope.after(f)));
    const own = lens.find(f => f !== crank && (/\balternator\b/.test(scope.before(f, 40)) || /^ ?(?:pulley |wheel )?(?:on|alternator)/.test(scope.after(f)) || lens.length === 2));
    put(out, 'd1', crank ?? (lens.length === 2 ? lens.find(f => f !== own) : undefined)); put(out, 'd2', own);
    const n = scope.measures('rpm')[0] ?? scope.numbers().find(x => x.value >= 200);
    if (n) out.rpm1 = n.value;
    scope.take(crank, own, n);
    return out;
  },
  needs: ['d1', 'd2', 'rpm1'],
  wants: ['d1', 'd2'],
  weight: 3,
};

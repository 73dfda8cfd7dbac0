import { circuit } from './circuit.ts';
import type { SumKind } from './kind.ts';
import { type Given, put } from './scope.ts';

const LOSE = String.raw`(?:los(?:e|ing)|drop(?:ping|ped)?|giv(?:e|ing) (?:up|away))`;
export const VOLT_DROP: SumKind = {
  of: 'voltDrop',
  ask: [
    /\bhow (?:many volts|much)\b[^.?!]{0,20}\bgo(?:es)? missing\b|\bwhat (?:gets|is|s)? ?lost (?:on|along|down|in) (?:the |that )?(?:road|way|run|wire|cable)\b/,
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

import type { SumKind } from './kind.ts';
import { type Figure, type Given, put, type Scope } from './scope.ts';

/** The length that a word stands by: "bore is 4", "a 4 inch bore", "bore 100 mm". */
export function byWord(scope: Scope, word: RegExp, units: readonly string[], others: readonly Figure[] = []): Figure | undefined {
  const figs = [...scope.measures(...units), ...scope.numbers()].filter(f => !others.some(o => o.start === f.start));
  const after = new RegExp(`^ ?(?:inch |mm |in )?(?:${word.source})`), before = new RegExp(`\\b(?:${word.source})(?: (?:is|of|at|are|was|about|s|diameter|measures|on|the|in it|comes to|comes out at|rod|size|now|around|,))* ?$`);
  return figs.find(f => after.test(scope.after(f))) ?? figs.find(f => before.test(scope.before(f, 40)));
}

const LEN = ['in', 'mm', 'cm'];
/** A bare figure takes the unit of its fellows. */
function sameUnit(...figs: (Figure | undefined)[]): (Figure | undefined)[] {
  const unit = figs.find(f => f?.unit)?.unit;
  return figs.map(f => (f && !f.unit && unit ? { ...f, unit } : f));
}

/** Bore and stroke: by their words, else "4 by 5" or the two lengths in that order. */
function boreAndStroke(scope: Scope): { bore?: Figure; stroke?: Figure } {
  let bore = byWord(scope, /bores?/, LEN), stroke = byWord(scope, /strokes?/, LEN, bore ? [bore] : []);
  const by = scope.seen(/#~*(?!~) ?(?:inch |in |mm )?(?:by|x) ?#~*(?!~)/);
  if ((!bore || !stroke) && by) {
    const all = [...scope.measures(...LEN), ...scope.numbers()].filter(f => f.start >= by.start && f.end <= by.end + 6).sort((a, b) => a.start - b.start);
    [bore, stroke] = [bore ?? all[0], stroke ?? all[1]];
    if (!bore && by.nums.length === 2) [bore, stroke] = by.nums.map((value): Figure => ({ start: by.start, end: by.end, value }));
  }
  if (!bore || !stroke) {
    const rest = scope.measures(...LEN).filter(f => f.start !== bore?.start && f.start !== stroke?.start);
    bore ??= rest.shift(); stroke ??= rest.shift();
  }
  const [b, s] = sameUnit(bore, stroke);
  scope.take(b, s);
  return { ...(b ? { bore: b } : {}), ...(s ? { stroke: s } : {}) };
}

export const DISPLACEMENT: SumKind = {
  of: 'displacement',
  ask: [/\b(?:displacement|swept volume|cubic inches|cubic capacity|how many (?:cubic inches|cc|ccs|cubes|litres is (?:the|this|that|my) engine)|how big (?:is|s) (?:the|this|that|my) engine|what size (?:is )?(?:the|this|that|my|an)? ?engine)\b/, /\bengine displacement\b/],
  given(scope) {
    const { bore, stroke } = boreAndStroke(scope), out: Given = {};
    put(out, 'bore', bore); put(out, 'stroke', stroke);
    const n = scope.seen(/#~*(?!~)(?: |-)?(?:cylinders?|cyl\b|pots?|pistons?|holes)/);
    if (n) { out.cylinders = n.nums[0]; scope.take(n); } else if (/\b(?:single|one lunger|thumper|one cylinder)\b/.test(scope.text)) out.cylinders = 1; else if (/\b(?:twin|two cylinder)\b/.test(scope.text)) out.cylinders = 2;
    return out;
  },
  needs: ['bore', 'stroke'],
  weight: 2,
};

export const COMPRESSION: SumKind = {
  of: 'compression',
  ask: [/\bcompression ratio\b/, /\b(?:what|whats) (?:(?:is|the|s|my) )*(?:ratio|compression)\b[^.?!]*\b(?:chamber|cc|bore|head)\b/, /\b(?:what|how big|how many cc)[^.?!]{0,24}\bchamber\b[^.?!]*(?:\bto #|:#|\bratio)/],
  unless: /\bwhat was the compression\b/,
  given(scope) {
    const { bore, stroke } = boreAndStroke(scope), out: Given = {};
    put(out, 'bore', bore); put(out, 'stroke', stroke);
    const c = scope.measures('cc', 'cu in', 'mL')[0];
    put(out, 'chamber', c);
    const r = scope.seen(/#~*(?!~)(?: ?: ?| to )#~*(?!~)/);
    if (r && r.nums[1] === 1 && r.nums[0]! < 30) { out.ratio = r.nums[0]; scope.take(r); }
    scope.take(c);
    return out;
  },
  needs: ['bore', 'stroke', 'chamber', 'ratio'],
  weight: 3,
};

export const RING_GAP: SumKind = {
  of: 'ringGap',
  ask: [/\b(?:what|whats|how much|how big)[^.?!]{0,50}\b(?:ring|end) gaps?\b/, /\bring (?:end )?gap\b[^.?!]*\bwhat(?: is|s)? the gap\b/, /\bring gaps?\b[^.?!]{0,40}\b(?:what|how|should|be)\b/, /\bhow (?:much|wide|big)[^.?!]{0,30}\bgap\b[^.?!]{0,24}\brings?\b/, /\bgap (?:the|my|these|those) rings? (?:to|at)\b/, /\bring gap\b[^.?!]*\bwhat is the gap\b/],
  unless: /\bwhat (?:was|were)\b|\b(?:before|had)\b(?![^.?!]*\bnow\b)/,
  given(scope) {
    const out: Given = {};
    const big = scope.measures('in', 'mm', 'cm').find(f => (f.unit === 'in' ? f.value > 0.5 : f.value > 12)) ?? byWord(scope, /bore|cylinder/, LEN);
    put(out, 'bore', big);
    const small = [...scope.measures('in', 'mm'), ...scope.numbers().filter(n => n.value < 0.2)].filter(f => f !== big && f.start !== big?.start);
    const change = small.find(f => /^ ?(?:over|oversize|bigger|larger|wear|worn|out)/.test(scope.after(f)) || /\b(?:worn|bored|opened up|grown|grew|taken out|over|up)(?: (?:by|out|about|it|to|another))* $/.test(scope.before(f)));
    put(out, 'change', change);
    put(out, 'gap', small.find(f => f !== change && /\bgap\b/.test(`${scope.before(f)}${scope.after(f, 12)}`)));
    scope.take(big, ...small);
    return out;
  },
  needs: ['bore', 'change', 'gap'],
  weight: 3,
};

export const TWO_STROKE: SumKind = {
  of: 'twoStroke',
  ask: [/\bhow much(?: (?:(?:two|#~*) ?stroke|2t|mix|outboard|engine|of the))* oil\b[^.?!]*\b(?:to|gallons?|litres?|liters?|fuel|petrol|gas|mix|can|goes|#)/, /#~*(?!~) ?(?:to|:) ?#~*(?!~)[^.?!]*\bhow much oil\b/, /\b(?:what|how much|how many)[^.?!]{0,40}\b(?:premix|two stroke|2 stroke|# ?to ?# mix|fuel mix|petrol mix|gas mix)\b/],
  unless: /\b(?:paint|antifreeze|grease|change)\b/,
  given(scope) {
    const out: Given = {};
    const fuel = scope.measures('gal', 'L', 'qt')[0];
    put(out, 'fuel', fuel);
    const r = scope.seen(/#~*(?!~)(?: ?: ?| to )#~*(?!~)/);
    if (r && r.nums[1] === 1) { out.ratio = r.nums[0]; scope.take(r); }
    scope.take(fuel);
    return out;
  },
  needs: ['ratio'],
  weight: 3,
};

export const LEAK: SumKind = {
  of: 'pressureLeak',
  ask: [/\b(?:how (?:big|bad|much)(?: (?:of )?a)?|what(?:s| size| is)?)[^.?!]{0,30}\bleak(?:ing|age)?\b/, /\bhow much of (?:that|it|the (?:drop|fall))[^.?!]{0,30}\b(?:cool|cold|temperature|heat)/, /\bis that (?:a|just) (?:leak|cooling)/, /\bwhat (?:should|will|would|must|ought) (?:it|the gauge|she|that)(?: to)? read\b/],
  given(scope) {
    const out: Given = {};
    const [a, b] = scope.measures('psi', 'bar', 'kPa');
    const low = b ?? (a && scope.numbers().find(n => /\bto(?: about)? $/.test(scope.before(n)) && n.value < a.value));
    const one = !a ? undefined : a;
    const from = one && !b ? scope.numbers().find(n => n.start < one.start && /^ ?(?:down )?to\b/.test(scope.after(n)) && n.value > one.value) : undefined;
    if (from && one) { put(out, 'pressure1', { ...from, unit: one.unit }); put(out, 'pressure2', one); }
    else { put(out, 'pressure1', one); if (low) put(out, 'pressure2', { ...low, unit: low.unit ?? one?.unit }); }
    const v = scope.measures('gal', 'L', 'qt', 'cu in', 'cc')[0];
    put(out, 'volume', v);
    const t = scope.values('span').find(s => ['minutes', 'hours'].includes(s.value.unit));
    if (t) out.time = t.value.amount * (t.value.unit === 'hours' ? 60 : 1);
    const [t1, hot] = scope.measures('°F', '°C');
    const bare = hot ?? (t1 && scope.numbers().find(n => /\b(?:cool(?:s|ed)?|warm(?:s|ed)?|drop(?:s|ped)?|falls?|fell|down|up|now)(?: (?:it|down|up|is|its))* (?:to|at) $|\bnow (?:its |it is )?$/.test(scope.before(n)))), t2 = bare && t1 ? { ...bare, unit: bare.unit ?? t1.unit } : hot;
    put(out, 'temp1', t1); put(out, 'temp2', t2);
    scope.take(one, low, from, v, t, t1, t2);
    return out;
  },
  needs: ['pressure1', 'pressure2'],
  weight: 3,
};

import { byWord } from './engine.ts';
import type { SumKind } from './kind.ts';
import { type Figure, type Given, put, type Scope } from './scope.ts';

const RPM_WORDS = /rpm|revs|turns|a minute/;
const speedOf = (scope: Scope): Figure | undefined => scope.measures('rpm')[0] ?? scope.numbers().find(n => n.value >= 60 && (/\b(?:turns?|runs?|does|at|doing|turning|running|spins?)(?: (?:at|about))* $/.test(scope.before(n)) || RPM_WORDS.test(scope.after(n, 8))));
/** "6.5 to 1", "13:1": how many to one. */
function ratio(scope: Scope): { value: number; start: number; end: number } | undefined {
  const r = scope.seen(/#~*(?!~)(?: ?: ?| to )#~*(?!~)/);
  return r && r.nums[1] === 1 ? { value: r.nums[0]!, start: r.start, end: r.end } : undefined;
}

/** "ratio from 1450 engine rpm to 540 at the pto": two speeds and no teeth. */
function twoSpeeds(scope: Scope, out: Given): void {
  const [a, b, more] = [...scope.measures('rpm'), ...scope.numbers()].filter(f => f.value >= 60).sort((x, y) => x.start - y.start);
  if (!a || !b || more || !/\b(?:ratio|reduction)\b/.test(scope.text)) return;
  out.rpm1 = a.value; out.rpm2 = b.value;
  scope.take(a, b);
}

export const GEARING: SumKind = {
  of: 'gearing',
  ask: [/\b(?:what|whats|how fast|how many)[^.?!]{0,50}\b(?:ratio|speed|turn|rpm|revs|spin|run|reduction|fast)\b/, /\bhow fast\b|\bspeed(?= ?\?)/, /\b(?:gear|sprocket|chain) ratio\b/, /\b(?:what|whats) (?:(?:is|the|s|my) )*(?:ratio|reduction)\b/],
  given(scope) {
    const out: Given = {};
    const teeth = [...scope.mask.matchAll(/#~*(?!~)(?: |-)?(?:tooth|teeth|t\b)/g)].map(m => ({ value: scope.num(m.index)?.value ?? 0, start: scope.start + m.index, end: scope.start + m.index + m[0].length }));
    const bare = teeth.length === 1 ? scope.numbers().filter(n => n.value >= 6 && n.value <= 200 && Number.isInteger(n.value) && n.start !== teeth[0]!.start && /\b(?:a|on|to|onto|driving|into|the|and|with)(?: an?)? $/.test(scope.before(n))) : [];
    const all = [...teeth, ...bare].sort((a, b) => a.start - b.start);
    const [a, b] = all;
    const swap = a && b && /\bdriven by\b|\bdriven\b[^.?!]*\bdriv(?:er|ing)\b/.test(scope.desk.text.slice(a.start - 20 < scope.start ? scope.start : a.start - 20, b.end + 10));
    if (a) out.teeth1 = (swap ? b! : a).value;
    if (b) out.teeth2 = (swap ? a! : b).value;
    const n = speedOf(scope);
    if (n && all.length) out.rpm1 = n.value;
    if (!all.length) twoSpeeds(scope, out);
    scope.take(...all, n);
    return out;
  },
  needs: ['teeth1', 'teeth2'],
  wants: ['teeth1', 'teeth2'],
  telling: [['teeth1', 'teeth2']],
  weight: 4,
};

export const ROAD_SPEED: SumKind = {
  of: 'roadSpeed',
  ask: [/\b(?:what|how fast|whats|how many miles an hour)[^.?!]{0,60}\b(?:road speed|ground speed|miles an hour|mph|km\/h|kph|on the road|top speed|go(?:ing)? in (?:top|third|fourth|high|gear))\b/, /\b(?:road|ground|top) speed\b/, /\bhow fast (?:(?:does|will|would|is|s|do|am|ll) )?(?:it|she|i|the (?:tractor|truck|crawler|heron)|that)? ?(?:go|going|travel|drive|move)\b/],
  given(scope) {
    const out: Given = {};
    const tyre = /\bt[yi]res?\b/.test(scope.text) ? /\b(\d+(?:\.\d+)?[-x]\d{2})\b/.exec(scope.text)?.[1] : undefined;
    if (tyre) out.tyre = tyre;
    const n = speedOf(scope);
    if (n) out.rpm = n.value;
    const r = ratio(scope) ?? (() => { const f = scope.numbers().find(x => /\b(?:ratio|reduction|geared)(?: (?:is|of|at|overall|down))* $/.test(scope.before(x))); return f && { value: f.value, start: f.start, end: f.end }; })();
    if (r) out.ratio = r.value;
    const len = scope.measures('in', 'mm', 'cm', 'ft', 'm');
    const radius = len.find(f => /^ ?(?:loaded |rolling )?radius/.test(scope.after(f)) || /\bradius(?: (?:is|of|at))* $/.test(scope.before(f)));
    const across = len.find(f => f !== radius);
    put(out, 'radius', radius);
    if (!radius) put(out, 'diameter', across);
    const v = scope.measures('mph', 'km/h')[0];
    put(out, 'speed', v);
    scope.take(n, r, radius, across, v);
    return out;
  },
  needs: ['rpm', 'ratio', 'radius', 'diameter', 'speed'],
  wants: ['ratio'],
  weight: 2,
};

export const HYDRAULIC: SumKind = {
  of: 'hydraulic',
  ask: [/\b(?:how (?:much|hard|many (?:tons?|pounds))|what|whats)[^.?!]{0,50}\b(?:force|push|lift|ram|cylinder|tonnage|tons|pull)\b/, /\bforce (?:of|from|out of)\b[^.?!]*\b(?:cylinder|ram)\b/, /\b(?:cylinder|ram|gpm)\b[^.?!]*\bhow (?:fast|much|hard)\b/, /\bhow fast[^.?!]{0,30}\b(?:ram|cylinder|rod|extend|stroke)\b/, /\bwhat pressure[^.?!]{0,50}\b(?:lift|push|ram|cylinder|tons?|lb|pounds)\b/],
  unless: /\b(?:legs?|slings?|chains?|straps?|strops?|in each|on each|wheel cylinders?|master|spent|cost|torque|bolt|belt)\b/,
  given(scope) {
    const out: Given = {};
    const p = scope.measures('psi', 'bar', 'kPa')[0];
    put(out, 'pressure', p);
    const rod = byWord(scope, /rod/, ['in', 'mm', 'cm']), bore = byWord(scope, /bore|ram|cylinder|piston/, ['in', 'mm', 'cm'], rod ? [rod] : []) ?? scope.measures('in', 'mm', 'cm').find(f => f.start !== rod?.start);
    put(out, 'bore', bore); put(out, 'rod', rod);
    const flow = scope.measures('gpm', 'L/min')[0];
    put(out, 'flow', flow);
    const force = scope.measures('lb', 'ton', 't', 'kg')[0];
    put(out, 'force', force);
    scope.take(p, rod, bore, flow, force);
    return out;
  },
  needs: ['pressure', 'force', 'flow'],
  wants: ['bore'],
  telling: [['bore', 'pressure'], ['bore', 'flow']],
  word: /\b(?:cylinder|ram|hydraulic)\b/,
  weight: 1,
};

export const ADJUSTABLE: SumKind = {
  of: 'adjustableSheave',
  ask: [/\b(?:what|how (?:fast|much)|whats)[^.?!]{0,60}\b(?:turns? (?:open|out)|flange|adjustable|variable pitch|opened? (?:it )?up)\b/, /\b(?:adjustable|variable(?: pitch)?) (?:sheave|pulley)\b[^.?!]*\b(?:what|how)\b/, /\bturns? (?:open|out)\b[^.?!]*\b(?:what|how)\b/],
  given(scope) {
    const out: Given = {};
    const d = scope.measures('in', 'mm');
    const d2 = d.find(f => /\bdriving an? $/.test(scope.before(f)) || /^ ?(?:inch |mm )?(?:driven|pulley on|on the|fixed|plain)/.test(scope.after(f)) || /\bdriven(?: [a-z]+)* $/.test(scope.before(f)));
    put(out, 'd1', d.find(f => f !== d2)); put(out, 'd2', d2);
    const open = scope.seen(/#~*(?!~) ?(?:inch(?:es)? |in )?(?:fully |full |wide )?open at #~*(?!~) turns/);
    if (open && open.nums.length === 2) { out.smallest = open.nums[0]; out.turnsOpen = open.nums[1]; const u = d[0]?.unit; if (u) out.smallestUnit = u; }
    const turns = scope.measures('turns').filter(t => !open || t.start >= open.end || t.end <= open.start)[0], tpi = scope.measures('tpi')[0];
    if (turns) out.turns = turns.value;
    if (tpi) out.pitch = tpi.value;
    const n = speedOf(scope);
    if (n) out.rpm1 = n.value;
    scope.take(...d, turns, tpi, n);
    return out;
  },
  needs: ['d1', 'turns'],
  wants: ['d1', 'turns'],
  telling: [['d1', 'turns']],
  word: /\b(?:adjustable|variable|flange|closed)\b/,
  weight: 5,
};

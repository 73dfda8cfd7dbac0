import type { SumKind } from './kind.ts';
import { type Given, put } from './scope.ts';

export const FILM: SumKind = {
  of: 'filmThickness',
  ask: [/\b(?:what|how (?:thick|much|wet)|whats|how many mils)[^.?!]{0,40}\bwet(?: film)?\b/, /\bwet film\b/, /\b(?:what|how (?:thick|much)|whats)[^.?!]{0,40}\bdr(?:y|ies)(?: (?:down|film|to|out))+\b/],
  unless: /\bhow much paint|how many (?:quarts|gallons|litres)\b/,
  given(scope) {
    const out: Given = {};
    const films = scope.measures('mil', 'µm', 'in');
    const unit = films[0]?.unit ?? (/\bmils?\b/.test(scope.text) ? 'mil' : /\bmicrons?\b/.test(scope.text) ? 'µm' : undefined);
    for (const n of scope.numbers()) if (/^ ?(?:wet|dry)\b/.test(scope.after(n))) films.push({ ...n, ...(unit ? { unit } : {}) });
    const wet = films.find(f => /^ ?wet/.test(scope.after(f)) || /\bwet(?: (?:film|is|of|at))* $/.test(scope.before(f)));
    put(out, 'wet', wet);
    put(out, 'dry', films.find(f => f !== wet));
    const thin = scope.values('percent').find(p => /^ ?(?:thinn?er|thinned|reducer|thinning)/.test(scope.after(p)) || /\b(?:thinned|thinner|reduced)(?: (?:by|at|it|is))* $/.test(scope.before(p)));
    const solids = scope.values('percent').find(p => p !== thin);
    if (solids) out.solids = solids.value.value;
    if (thin) out.thinner = thin.value.value;
    scope.take(...films, solids, thin);
    return out;
  },
  needs: ['dry', 'wet'],
  weight: 3,
};

export const PAINT_MIX: SumKind = {
  of: 'paintMix',
  ask: [/#~*(?!~) ?(?::|to) ?#~*(?!~) ?(?::|to) ?#~*(?!~)[^.?!]*\b(?:mixed|ready|total|want)\b/, /\b(?:how much|what)[^.?!]{0,50}\b(?:hardener|activator|catalyst|reducer|thinner|of each|each part|part b)\b/, /\b(?:mix|mixing)\b[^.?!]{0,40}\bhow much (?:hardener|reducer|activator|of each|thinner)\b/],
  given(scope) {
    const m = scope.seen(/#~*(?!~)(?: ?(?::|to|parts?) ?(?:#~*(?!~)|one\b)){1,3}/);
    const out: Given = {};
    const parts = m && [...m.m[0].matchAll(/#~*(?!~)|\bone\b/g)].map(x => (x[0] === 'one' ? 1 : scope.num(m.start - scope.start + x.index)?.value ?? 0));
    if (m && parts && parts.length >= 2) { out.parts = parts; scope.take(m); }
    const v = scope.measures('qt', 'pt', 'gal', 'L', 'mL', 'fl oz', 'oz', 'cc').find(f => !m || f.start >= m.end || f.end <= m.start);
    if (v) put(out, /\b(?:ready mixed|mixed|total|altogether|to make|make up|want|need|end up with|all up)\b/.test(`${scope.before(v, 30)}${scope.after(v, 24)}`) || !/\b(?:of|got|have|ive) /.test(scope.before(v, 14) + scope.after(v, 4)) ? 'total' : 'first', v.unit === 'oz' ? { ...v, unit: 'fl oz' } : v);
    scope.take(v);
    return out;
  },
  unless: /\b(?:anti ?freeze|coolant|glycol|oil|fuel|petrol|two ?stroke|chain ?saw|concrete|mortar)\b/,
  needs: ['parts'],
  weight: 2,
};

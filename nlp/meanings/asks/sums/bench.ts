import { byWord } from './engine.ts';
import type { SumKind } from './kind.ts';
import { type Given, put, type Scope } from './scope.ts';
import { gradesIn, sizeIn } from './bolt-said.ts';

const LEN = ['in', 'mm', 'cm'];

/** A drill by its name: "number seven", "#7", "letter F", "27/64", "6.8 mm". */
export function drillNamed(scope: Scope): { drill: string; start: number; end: number } | undefined {
  const n = scope.seen(/(?:№ ?|\bnumber |\bno\.? )#~*(?!~)(?= ?(?:drill|bit|$|[?.,]| is| in|leave|hole| on| for))/);
  if (n) return { drill: `#${n.nums[0]}`, start: n.start, end: n.end };
  const letter = /\b(?:letter |an? |the )([a-z])(?: |-)?(?:drill|bit|size drill)\b|\bletter ([a-z])\b/.exec(scope.text);
  if (letter) return { drill: (letter[1] ?? letter[2]!).toUpperCase(), start: scope.start + letter.index, end: scope.start + letter.index + letter[0].length };
  return undefined;
}

export const DRILL_SIZE: SumKind = {
  of: 'drillSize',
  ask: [/\b(?:how (?:big|large|wide)|what size|what diameter|whats|what)[^.?!]{0,30}(?:\b(?:number|no|letter) |№ ?)[#~a-z0-9]+(?: (?:drill|bit))?(?![a-z])/, /\bwhat (?:size|diameter) is (?:an?|the) [a-z] (?:drill|bit)\b/, /\b(?:nearest|closest) drill\b/, /\b(?:diameter|size) of (?:an? |the )?(?:number #~*(?!~)|letter [a-z]|[a-z]) (?:drill|bit)\b/, /\bletter [a-z] drill(?: size)?\b/, /\b(?:which|what) drill (?:is|s|comes) (?:nearest|closest)\b/],
  unless: /\b(?:tap(?:ping|ped)?|thread(?:s|ed|ing)?|clearance|coarse|fine)\b/,
  given(scope) {
    const out: Given = {};
    const d = drillNamed(scope);
    if (d) { out.drill = d.drill; scope.take(d); }
    else { const f = scope.measures(...LEN)[0] ?? scope.numbers().find(n => n.value > 0.01 && n.value < 2); put(out, 'hole', f && { ...f, unit: f.unit ?? 'in' }); scope.take(f); }
    return out;
  },
  needs: ['drill', 'hole'],
  weight: 2,
};

export const BOLT_STRENGTH: SumKind = {
  of: 'boltStrength',
  ask: [/\bhow strong\b/, /\b(?:how (?:much|many (?:pounds|tons?))|what)\b[^.?!]{0,50}\bto (?:break|snap|shear|fail)\b/, /\b(?:to|it) (?:break|snap|shear|pull apart)\b/, /\b(?:breaking|proof|tensile|yield) (?:load|strength|point)\b/, /\b(?:how (?:much|strong)|what|whats)[^.?!]{0,50}\b(?:proof(?: load)?|breaking (?:load|strength)|yield|tensile|strong|break(?:s)? at|hold before|shear(?:s)? at)\b/],
  given(scope) {
    const s = sizeIn(scope), g = gradesIn(scope.text).at(-1);
    scope.take(s?.at);
    return { ...(s ? { size: s.size } : {}), ...(g ? { grade: g.grade } : {}) };
  },
  needs: ['size', 'grade'],
  weight: 3,
};

export const SUBSTITUTE: SumKind = {
  of: 'substitute',
  ask: [/\b(?:substitut(?:e|ing)|swap(?:ping)?|replac(?:e|ing)) (?:an? )?(?:grade |class )?#~*(?!~)[^.?!]*\b(?:for|with|by) (?:an? )?(?:grade |class )?#/, /\b(?:can|could|will|would|is it (?:ok|okay|all right|safe) (?:to|if)|ok to|okay to|is|are|do|does|may|should)\b[^.?!]{0,90}\b(?:instead of|in place of|for a|replace|substitute|sub for|stand in for|swap(?:ped)? for|rather than)\b/, /\b(?:can|could) i (?:use|put|fit|swap|run|substitute|get away with)\b[^.?!]*\b(?:grade|class|bolt|bolts|8\.8|10\.9)\b/, /\bwill it do (?:instead)?\b/, /\b(?:as (?:good|strong) as|good enough for|equal to|stronger than)\b/],
  unless: /\b(?:pulley|sheave|belt|swap the)\b|\bwhat torque\b/,
  given(scope) {
    const out: Given = {};
    const threads = scope.values('thread'), grades = gradesIn(scope.text);
    const at = scope.text.search(/\b(?:instead of|in place of|replac(?:e|es|ing)|substitute for|sub for|for an?\b|stand in for|as (?:good|strong) as|rather than|equal to|stronger than|in for|where (?:it|there|the book)|calls? for|was|had)\b/);
    const cut = at < 0 ? Infinity : scope.start + at;
    const fresh = threads.find(t => t.start < cut), old = threads.find(t => t.start > cut) ?? (threads.length > 1 ? threads.at(-1) : undefined);
    const newGrade = grades.find(g => scope.start + g.at < cut), oldGrade = grades.find(g => scope.start + g.at > cut);
    if (old ?? fresh) out.size = (old ?? fresh)!.value.size;
    if (old && fresh && old !== fresh && old.value.size !== fresh.value.size) out.newSize = fresh.value.size;
    if (oldGrade) out.grade = oldGrade.grade;
    if (newGrade) out.newGrade = newGrade.grade;
    if (at < 0 && grades.length > 1 && /\b(?:wants|calls|takes|needs)\b/.test(scope.text)) { out.newGrade = grades[0]!.grade; out.grade = grades[1]!.grade; }
    if (/\bshear\b/.test(scope.text)) out.joint = 'shear';
    scope.take(...threads);
    return out;
  },
  needs: ['newGrade', 'grade', 'newSize'],
  wants: ['newGrade'],
  weight: 2.5,
};

export const ISO_FIT: SumKind = {
  of: 'isoFit',
  ask: [/\b(?:what|whats|limits|give me|how|tolerance)[^.?!]{0,60}(?<![a-z])(?!m)(?:js|[hgfekmnpru]) ?#~*(?!~)(?: ?(?:\/|on|over|slash|and|) ?[a-z]{1,2} ?#~*(?!~))?(?![a-z])/, /\b(?:limits|tolerances?)\b[^.?!]{0,50}\b(?:fit|shaft|hole)\b/, /(?<![a-z])(?:js|[hgfekmnpru]) ?#~*(?!~) (?:shaft |hole )?limits\b/],
  given(scope) {
    const pair = /(?<![a-z])(?!m ?\d)((?:js|[hgfekmnpru])) ?([4-9]|1[0-2])(?![\d.x])(?: ?(?:\/|on|over|slash|in|and|) ?([hgfejskmnpru]{1,2}) ?(\d{1,2}))?\b/.exec(scope.text);
    if (!pair) return {};
    const said = scope.desk.sheet.text;
    const first = new RegExp(`(${pair[1]}) ?${pair[2]}`, 'i').exec(said)?.[1] ?? pair[1]!;
    const hole = pair[3] ? pair[1]!.toUpperCase() : /^[A-Z]/.test(first) || /\bhole\b/.test(scope.text) && !/\bshaft\b/.test(scope.text) ? pair[1]!.toUpperCase() : pair[1]!;
    const d = scope.measures(...LEN).find(f => f.value > 0.1) ?? scope.numbers().find(n => /\b(?:for|on|a|of) (?:an? )?$/.test(scope.before(n)) || n.value >= 3 && n.end <= scope.start + pair.index);
    const out: Given = { fit: pair[3] ? `${hole}${pair[2]}/${pair[3]}${pair[4]}` : `${hole}${pair[2]}` };
    put(out, 'diameter', d);
    scope.take(d, { start: scope.start + pair.index, end: scope.start + pair.index + pair[0].length });
    return out;
  },
  needs: ['fit'],
  weight: 3,
};

/** The two limits of a hole or shaft: "hole 1.2500 to 1.2505". */
function limits(scope: Scope, word: string): [number, number, number, number] | undefined {
  const single = scope.seen(new RegExp(`\\b${word}s?(?: (?:is|are|measures|at|of|measured|reads|runs))* #~*(?!~)(?! ?(?:to|-|and) ?#)`));
  const m = scope.seen(new RegExp(`\\b${word}s?(?: (?:is|are|runs|measures|at|from|between|of|goes|limits))* #~*(?!~)(?: ?(?:inch|in|mm|thou))? ?(?:to|-|and|or) ?#~*(?!~)`));
  if (m && m.nums.length === 2) return [Math.min(...m.nums), Math.max(...m.nums), m.start, m.end];
  return single && single.nums[0]! < 400 ? [single.nums[0]!, single.nums[0]!, single.start, single.end] : undefined;
}
export const PRESS_FIT: SumKind = {
  of: 'pressFit',
  ask: [/\b(?:how (?:much|tight)|what|whats)[^.?!]{0,60}\b(?:press(?: fit)?|interference|nip|tight|squeeze)\b/, /\b(?:least|most|worst) (?:and (?:most|least) )?(?:interference|press)\b/],
  unless: /\b(?:how hot|heat(?:ed|ing)?|temperature|cool(?:ed|ing)?|freez(?:e|ing)|chill(?:ed|ing)?|frozen|oven|torch)\b/,
  given(scope) {
    const hole = limits(scope, '(?:hole|bore|housing|hub)'), shaft = limits(scope, '(?:shaft|pin|bush|bushing|journal|sleeve|race)');
    const unit = scope.measures('mm').length || /\bmm|millimet/.test(scope.text) ? 'mm' : undefined;
    const out: Given = {};
    if (hole) { [out.holeLow, out.holeHigh] = hole; scope.take({ start: hole[2], end: hole[3] }); }
    if (shaft) { [out.shaftLow, out.shaftHigh] = shaft; scope.take({ start: shaft[2], end: shaft[3] }); }
    if (unit) for (const f of Object.keys(out)) out[`${f}Unit`] = unit;
    return out;
  },
  needs: ['holeLow', 'shaftLow'],
  weight: 2,
};

export const BUSHING: SumKind = {
  of: 'bushing',
  ask: [/\b(?:how (?:much|loose|tight)|what|whats)[^.?!]{0,40}\b(?:running )?(?:clearance|slack)\b[^.?!]{0,50}\b(?:bush(?:ing)?|shaft|journal|plain bearing|bronze)\b/, /\b(?:bush(?:ing)?|plain bearing)\b[^.?!]{0,50}\b(?:what|how much) (?:running )?clearance\b/, /\bwhat (?:clearance|size) do i ream[^.?!]*\bbush/, /\brunning clearance\b/],
  unless: /\b(?:was|did|hole|drill)\b/,
  given(scope) { const out: Given = {}; const d = scope.lengths(...LEN)[0]; put(out, 'diameter', d); scope.take(d); return out; },
  needs: ['diameter'],
  weight: 2,
};

export const BEARING_GREASE: SumKind = {
  of: 'bearingGrease',
  ask: [/\bhow much grease\b/, /\bhow many (?:pumps|shots|strokes|squirts) of grease\b/],
  given(scope) {
    const out: Given = {};
    const wide = byWord(scope, /wide|width|thick/, LEN);
    const d = scope.measures(...LEN).find(f => f.start !== wide?.start);
    put(out, 'diameter', d); put(out, 'width', wide);
    scope.take(d, wide);
    return out;
  },
  needs: ['diameter', 'width'],
  weight: 2,
};

export const WIRE_GAUGE: SumKind = {
  of: 'wireGauge',
  ask: [/\bhow (?:thick|big|fat) (?:is|s) (?:an? )?[1-4#~]+(?:\/0)? ?(?:cable|wire|gauge|awg)\b/, /\bhow (?:thick|big|fat|many (?:mm|square (?:mm|mil[a-z]*)))(?: (?:is|s|in|across|through|mm))* #~*(?!~) ?(?:gauge|awg|ga)\b/, /\b(?:how (?:thick|big|many (?:mm|square))|what|whats)[^.?!]{0,40}(?:#~*(?!~) ?(?:gauge|awg|ga)\b|\bawg\b)[^.?!]{0,40}\b(?:mm|metric|square|thick|diameter|section|resistance|across|ohms)\b/, /\bwhat (?:gauge|awg) (?:is|s|replaces|matches)\b/],
  given(scope) {
    const aught = /\b([1-4])\/0\b/.exec(scope.text);
    if (aught) return { gauge: `${aught[1]}/0` };
    const g = scope.measures('AWG')[0], s = scope.measures('mm²')[0];
    scope.take(g, s);
    return { ...(g ? { gauge: g.value } : {}), ...(s && !g ? { section: s.value } : {}) };
  },
  needs: ['gauge', 'section'],
  weight: 3,
};

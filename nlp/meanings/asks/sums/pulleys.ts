import { sentenceAt } from '../desk.ts';
import { DRIVEN, DRIVER } from './drives.ts';
import { inOne } from './in-one.ts';
import { type Figure, type Given, type Scope } from './scope.ts';

const LENGTHS = ['in', 'mm', 'cm', 'ft', 'm', 'mil'];
const CENTRE = /(?:^|[ ,])c ?= ?|c\/c|\bc ?\/ ?c\b|cent(?:re|er)s?\b|shaft to shaft|\bapart\b|between (?:the )?(?:shafts|pulleys|cent)|\bc to c\b|distance/;
const RPM = /\b(?:turns?|turning|runs?|running|does|doing|do|revs?|revving|at|spins?|spinning|speed(?: is| of)?|goes|going|makes|idles?|governed(?: at| to)?|speed|rpm|hums?|ticks? over)(?: (?:about|around|over|at|at about|is|it|to|round|along|it at|of))* $/;

export interface Pulleys { diameters: Figure[]; centre?: Figure; length?: Figure; speeds: Figure[] }

/** Sorts the figures of the stretch into pulleys, distance between shafts, belt, and speeds. */
export function sort(scope: Scope, prev?: Given): Pulleys {
  const out: Pulleys = { diameters: [], speeds: [...scope.measures('rpm'), ...scope.measures('turns').filter(f => f.value >= 60)] }, metric = scope.measures('mm', 'mil', 'cm').length > 0 || prev?.d1Unit === 'mm' || saidOfAll(scope) === 'mm';
  for (const m of scope.measures(...LENGTHS)) {
    const f = m.unit === 'mil' ? { ...m, unit: 'mm' } : m;
    if (/^an? /.test(scope.desk.text.slice(f.start, f.end)) && f.value === 1 && f.unit === 'ft') continue;
    if (centred(scope, f)) out.centre ??= f;
    else if (isBelt(scope, f)) out.length ??= f;
    else out.diameters.push(f);
  }
  for (const n of scope.numbers()) {
    if (n.value === 1 && scope.desk.text.slice(n.start, n.end) === 'one') continue; // "the driving one"
    if (/\b(?:pulleys|sheaves|wheels)\b/.test(scope.text) && out.diameters.some(d => d.unit && /^,? ?(?:and|to|by|onto)(?: an?| the)? $/.test(scope.desk.text.slice(d.end, n.start)))) { out.diameters.push(n); continue; } // "the pulleys are 160 millimetres and 400"
    if (n.value <= 4 && /^ ?(?:pulleys|sheaves|wheels)\b/.test(scope.after(n))) continue;
    if (pairAhead(scope, n)) { out.diameters.push(n); continue; }
    const near = RPM.test(scope.before(n)) || /^ ?(?:revs|a minute|per minute|turns|rpm|is what|speed)/.test(scope.after(n));
    if (/^ (?:mil |mm )?cent(?:re|er)s?\b/.test(scope.after(n))) { out.centre ??= n; continue; } // "at 480 centres" is no speed
    if (!near && (/\b(?:cent(?:re|er)s?|middles|shafts|spread)(?: (?:of|at|are|is|distance|about|say))* $/.test(scope.before(n)) || /^ (?:mil |mm )?(?:cent(?:re|er)s|between cent(?:re|er)s?|apart)\b/.test(scope.after(n)))) { out.centre ??= n; continue; }
    if (!near && metric && n.value >= 30 && n.value < 900 && (wheelOf(scope, n) || prev && (/\b(?:an?|one of) $/.test(scope.before(n)) || likePulley(n, prev)))) { out.diameters.push(n); continue; }
    if (!near && n.value > 20 && isBelt(scope, n)) { out.length ??= n; continue; }
    if (n.value >= 60 && (near || n.value >= 250) && !/^ ?(?:mm|inch|pulley|sheave)/.test(scope.after(n))) { out.speeds.push(n); continue; }
    if (isBelt(scope, n) && n.value > 20) { out.length ??= n; continue; }
    if (centred(scope, n)) out.centre ??= n;
    else if (pulleyish(scope, n, !!prev) || n.value <= 60 && wheeled(scope, n)) out.diameters.push(n);
  }
  const apart = out.centre ? undefined : thirdAt(scope, out.diameters);
  if (apart) { out.centre = apart; out.diameters = out.diameters.filter(d => d !== apart); }
  out.diameters = atMostTwo(scope, out.diameters.filter(d => !/^(?:ft|m)$/.test(d.unit ?? '') || /^ ?(?:pulley|sheave|wheel|drum|flywheel)/.test(scope.after(d))));
  out.diameters.sort((a, b) => a.start - b.start);
  out.speeds.sort((a, b) => a.start - b.start);
  const halves = out.diameters.some(d => /\b(?:half|quarters?|eighths?)\b|\//.test(scope.desk.text.slice(d.start, d.end))); // a bare fraction is of inches
  const far = out.centre?.unit ?? out.length?.unit;
  const unit = out.diameters.find(d => d.unit)?.unit ?? unitOfAll(scope, out.diameters) ?? (/^(?:in|mm|cm)$/.test(far ?? '') ? far : undefined) ?? (typeof prev?.d1Unit === 'string' ? prev.d1Unit : undefined) ?? (halves ? 'in' : undefined);
  if (unit) out.diameters = out.diameters.map(d => ({ ...d, unit: d.unit ?? unit }));
  if (!prev && out.diameters.length === 1 && (/\b(?:both|two equal|same size|each|a pair of)\b/.test(scope.text) || pairOf(scope))) out.diameters.push(out.diameters[0]!);
  if (unit && out.centre && !out.centre.unit) out.centre = { ...out.centre, unit };
  if (unit && out.length && !out.length.unit) out.length = { ...out.length, unit };
  return out;
}

/** "crank 5, fan 4": a bare number after what drives or is driven is the size of its pulley, where belts are spoken of. */
const wheeled = (scope: Scope, n: Figure): boolean => /\b(?:belt|pulleys?|sheaves?|cent(?:re|er)s|between)\b/.test(scope.text) && new RegExp(`(?:${DRIVER.source}|${DRIVEN.source})(?: (?:is|s|has|measures?|end|side|one|about|say))*,? $`).test(scope.before(n, 30)) && !RPM.test(scope.before(n)) && !/^ ?(?:revs|rpm|turns|hp|horse|teeth|tooth|volts?|grooves?|belts?)\b/.test(scope.after(n));

/** "rotor pulley 110", "the pump's two eighty", beside a size in millimetres: the size of a wheel, not its speed. */
const wheelOf = (scope: Scope, n: Figure): boolean => /\b(?:one|other)(?: (?:on|at|of|for) (?:the |my )?(?:[a-z]+ ){0,2}[a-z]+)? (?:is|s|measures?|has) $|\bhas (?:the|an?) $|\b(?:onto|on to|driving) an? $/.test(scope.before(n, 40)) && !/^ ?(?:revs|rpm|turns|hp|horse|volts?)\b/.test(scope.after(n)) || new RegExp(`(?:\\b(?:pulley|sheave|wheel)s?|${DRIVER.source}|${DRIVEN.source})(?: (?:is|s|has|measures?|of|one|an?))*,? $`).test(scope.before(n, 30)) && !RPM.test(scope.before(n)) && !/^ ?(?:revs|rpm|turns|hp|horse|volts?)\b/.test(scope.after(n));

/** "and if it's 75?" after pulleys of 100 and 60 at 1500: a bare figure is what it is nearest to, here a pulley and no speed. */
const likePulley = (n: Figure, prev: Given): boolean => {
  const off = (x: unknown): number => (typeof x === 'number' && x > 0 ? Math.abs(Math.log(n.value / x)) : Infinity);
  return Math.min(off(prev.d1), off(prev.d2)) < Math.min(0.7, off(prev.rpm1), off(prev.rpm2), off(prev.centre), off(prev.length));
};

/** After both pulleys "at 14 inches" is how far apart they are. */
const thirdAt = (scope: Scope, all: readonly Figure[]): Figure | undefined => all.length === 3 && /\bbelt\b/.test(scope.text) ? all.find((d, i) => i === 2 && /\bat(?: (?:about|around))? $/.test(scope.before(d))) : undefined;

/** A unit said for all of them, or written in one with a figure: "14 and 20, both inches", "3in turns". */
function unitOfAll(scope: Scope, all: readonly Figure[]): string | undefined {
  return saidOfAll(scope) ?? (all.some(d => /^ in\b/.test(scope.after(d)) && inOne(scope, d) || IN_WHEEL.test(scope.after(d))) ? 'in' : undefined);
}
/** "a 5 in motor sheave", "6 in turning 900": no place that a wheel could be in follows. */
const IN_WHEEL = /^ in (?!(?:the|my|an?|that|this|it|them|place|there|here|turn|all|total|gear|mm|millimet[a-z]*|metric|inches|feet|stock|hand)\b)[a-z]/;
function saidOfAll(scope: Scope): string | undefined {
  const said = /\b(?:both|all|sizes?|every ?thing)(?: (?:are|is|s))? (?:in )?(inch(?:es)?|mm|millimet(?:re|er)s)\b|, (inch(?:es)?|mm|millimet(?:re|er)s)(?= ?(?:$|[.?]))/.exec(scope.text)?.slice(1).find(Boolean);
  return said && (said.startsWith('inch') ? 'in' : 'mm');
}

/** "two five inch pulleys". */
const pairOf = (scope: Scope): boolean => scope.seen(/#~* #~*(?!~)(?: |-)?(?:inch|mm|in)? ?(?:pulley|sheave|wheel)s\b/)?.nums[0] === 2;

/** Of more than two lengths the pulleys are those that say so, else those of the question's own sentence, else the last. */
function atMostTwo(scope: Scope, all: Figure[]): Figure[] {
  if (all.length <= 2) return all;
  const said = all.filter(d => /^[^,.;?]{0,4}(?:inch |mm |in )?(?:pulley|sheave|wheel)/.test(scope.after(d)) || /\b(?:pulley|sheave|wheel|flywheel)[^,.;?]{0,14}$/.test(scope.before(d)));
  const s = sentenceAt(scope.desk, scope.at), here = all.filter(d => d.start >= s.start && d.end <= s.end);
  return said.length >= 2 ? said.slice(-2) : here.length >= 2 ? here.slice(-2) : all.slice(-2);
}

const centred = (scope: Scope, f: Figure): boolean => {
  const after = /^[^,.;?]{0,24}/.exec(scope.after(f))?.[0] ?? '', before = /[^,.;?]{0,34}$/.exec(scope.before(f, 34))?.[0] ?? '';
  if (/^ ?cent(?:re|er)s? ?\?/.test(scope.after(f)) && !/\b(?:at|on|with|for)(?: about)? $/.test(scope.before(f)) && scope.measures(...LENGTHS).some(o => o.start !== f.start && isBelt(scope, o))) return false; // "118 in of belt, pulleys 5 and 14 in. centres?" asks for them
  if (/^ ?(?:cent(?:re|er)s?|cent(?:re|er) distance) (?:are|is|at|of) (?:about )?#/.test(scope.mask.slice(f.end - scope.start))) return false;
  if (/#~* ?(?:inch(?:es)?|in|mm|mil|feet|foot|ft|") (?:between )?cent(?:re|er)s $/.test(scope.mask.slice(0, f.start - scope.start))) return false; // "at 28 inch centres, four inch on the blower"
  return /^ ?(?:inch |mm |in )?(?:on )?(?:cent(?:re|er)s?|apart|between|shaft to shaft|c to c|from (?:shaft|cent)|distance|shaft cent)/.test(after) || (CENTRE.test(before) && !scope.mask.slice(f.start - scope.start - before.length + before.search(CENTRE), f.start - scope.start).includes('#') && !/\bfor (?:an? |the )?/.test(before.slice(before.search(CENTRE))) && !/^ ?(?:inch |mm |in )?(?:pulley|sheave|belt|wheel)/.test(after) && !/\bpulley|sheave|wheel\b/.test(before.slice(before.search(CENTRE)))) ;
};
const isBelt = (scope: Scope, f: Figure): boolean =>
  (closes(scope, f) || !/^ ?(?:inch |mm )?(?:pulley|sheave|wheel|drum)|^ (?:a|per) (?:foot|yard|met(?:re|er))\b/.test(scope.after(f))) && (/^ ?(?:long|belt|of belt|length|v belt|inside length|around|round)\b/.test(scope.after(f)) && !/^ ?round (?:pulley|wheel)/.test(scope.after(f)) || /\bbelts?(?: (?:i|ive|thats|that|is|s|got|have|had|of|on hand|the|here|in the|shed|already|long|length is|length of|measures|a|an|which|we|my|spare|old|new|about|only|bin|box|rack|wall|hook|bench|van))* $/.test(scope.before(f, 40)) || BELT_IS.test(scope.before(f, 48)));
/** "the belt in the drawer is …", "a belt for the dynamo wants …". */
const BELT_IS = /\bbelt(?:ing)?\b(?:(?!\b(?:pulley|sheave|wheel|flywheel)s?\b)[^,.;?#\d]){0,30} (?:is|s|its|thats|wants|needs|measures|runs) (?:about )?$|\b(?:got|have|ive|had|with) (?:the|a|this|that|my) (?:[a-z]+ ){0,2}belt(?:ing)? at $|\ba belt of $/;
/** Whether the sentence ends with the figure ("measures 96 in."), so that the words after it are of another. */
function closes(scope: Scope, f: Figure): boolean {
  const { sheet: { tokens }, line: { tokenAt } } = scope.desk;
  return scope.desk.text[f.end - 1] === '.' && /^\p{Lu}/u.test(tokens[tokenAt[f.end + 1] ?? -1]?.text ?? '');
}
/** "belt for 63 and 250 at 480 centres": the two ahead of how far apart they are. */
function pairAhead(scope: Scope, n: Figure): boolean {
  const m = scope.seen(/#~*(?!~) ?(?:and|to|by|x|onto) ?#~*(?!~),? (?:at|on|with) (?:about )?#~*(?!~)(?: ?(?:mm|inch(?:es)?|in))? cent(?:re|er)s/);
  return m !== undefined && n.start >= m.start && n.start < m.start + (m.m[0].search(/,? (?:at|on|with) /));
}
const pulleyish = (scope: Scope, n: Figure, follow: boolean): boolean =>
   /\bd ?[12](?: ?=)? $/.test(scope.before(n)) || /\b(?:pulleys?|sheaves?)\b[^#.?!]{0,24} #~*(?: ?(?:inch(?:es)?|in\.?|mm|mil|"))?(?: and|,| x| by) $/.test(scope.mask.slice(0, n.start - scope.start)) && n.value <= 60 || /^,? (?:and|or) (?:an? )?#~*(?!~)(?: |-)?(?:inch|mm|in\b|mil|pulleys|sheaves)/.test(scope.mask.slice(n.end - scope.start)) || /^ ?(?:-|inch|in\b|pulley|sheave|wheel|drum\b|on the|onto|for|instead|to a)/.test(scope.after(n)) || /\b(?:a|an|the|got|pulleys?|sheaves?|to|with|is|are|measures?|of|one|onto|into|has|have|from|drive|driven|ones?|others?|ones is|other is)(?: (?:about|say|maybe|is|are))? $/.test(scope.before(n)) && n.value <= 60 || follow && n.value <= 60;

import { METRIC_COARSE, METRIC_FINE, UNC, UNF } from '../../../dimensions/thread/series.ts';
import { fraction, gradesIn, meant, sizeIn, SURFACES, surfaceIn } from './bolt-said.ts';
import type { SumKind } from './kind.ts';
import type { Given, Scope } from './scope.ts';
import { sizesInRow } from './sizes-in-row.ts';

function given(scope: Scope, prev?: Given): Given {
  const out: Given = {};
  const size = sizeIn(scope);
  if (size) { out.size = prev ? inSeries(size.size, prev.size) : size.size; scope.take(size.at); }
  else if (prev && loneFraction(scope)) out.size = inSeries(loneFraction(scope)!, prev.size);
  else { const other = prev && otherPitch(scope.text, prev.size); if (other) out.size = other; }
  const grade = gradesIn(scope.text).at(-1) ?? (prev ? bareGrade(scope) : undefined) ?? eightEight(scope, out.size);
  if (grade) { out.grade = grade.grade === '8' && typeof (out.size ?? prev?.size) === 'string' && /^M/.test(String(out.size ?? prev?.size)) ? '8.8' : grade.grade; scope.take({ start: scope.start + grade.at, end: scope.start + grade.at + 3 }); }
  const surface = surfaceIn(scope.text);
  if (surface) out.surface = surface;
  return out;
}
/** "M24, eight-eight": said twice it is a class, though a word said twice is else a slip of the tongue and kept once. */
function eightEight(scope: Scope, size: unknown): { grade: string; at: number } | undefined {
  const at = scope.text.search(/\beight\b/);
  return /^M/.test(String(size)) && at >= 0 && /\beight[- ]eight\b/i.test(scope.desk.sheet.text) ? { grade: '8.8', at } : undefined;
}
/** "And 5/16?": the diameter alone. */
function loneFraction(scope: Scope): string | undefined {
  const n = scope.numbers().find(f => /^\d+(?:[- ]\d+)?\/\d+$/.test(scope.desk.text.slice(f.start, f.end)));
  return n && fraction(n.value);
}
/** "same question for 3/4" after a 5/8 coarse: coarse too. */
function inSeries(size: string, before: unknown): string {
  const [d, pitch] = String(before).split(/-(?=\d+$)/), series = [UNC, UNF].find(s => d !== undefined && pitch !== undefined && String(s[d]) === pitch);
  return series?.[size] === undefined ? size : `${size}-${series[size]}`;
}
/** "and in fine?": the same diameter in the other series. */
function otherPitch(text: string, size: unknown): string | undefined {
  const series = /\b(coarse|fine|unc|unf)\b/.exec(text)?.[1], m = typeof size === 'string' ? /^(M?[\d/.#-]+?)(?:[x-][\d.]+)?$/.exec(size.replace(/-(?=[\d.]+$)/, 'x')) : undefined;
  if (!series || !m) return undefined;
  const fine = /^(?:fine|unf)$/.test(series), metric = m[1]!.startsWith('M'), pitch = metric ? (fine ? METRIC_FINE : METRIC_COARSE)[Number(m[1]!.slice(1))] : (fine ? UNF : UNC)[m[1]!];
  return pitch === undefined ? undefined : `${m[1]!}${metric ? 'x' : '-'}${pitch}`;
}
/** "and for an eight?" after a grade five: the grade. */
const bareGrade = (scope: Scope): { grade: string; at: number } | undefined => {
  const n = scope.numbers()[0];
  return n && [2, 5, 8].includes(n.value) ? { grade: String(n.value), at: n.start - scope.start } : undefined;
};

/** One question of several bolts in a row: each takes the grade and surface that follow it, else those said for all. */
function each(scope: Scope): Given[] {
  const threads = scope.here(meant(scope, scope.values('thread')).filter(t => !/\b(?:tap|die|drill) $/.test(scope.before(t)) && !/^ tap\b/.test(scope.after(t))));
  const row = threads.length < 2 ? sizesInRow(scope, fraction) : undefined;
  if (row) { const { size: _, ...rest } = given(scope); scope.take(row); return row.sizes.map(size => ({ size, ...rest })); }
  if (threads.length < 2) return bothWays(scope);
  const all = given(scope);
  return threads.map((t, i) => {
    const own = scope.desk.text.slice(t.end, threads[i + 1]?.start ?? scope.end);
    const grade = gradesIn(own)[0]?.grade ?? all.grade, surface = surfaceIn(own) ?? all.surface;
    scope.take(t);
    return { size: t.value.size, ...(grade ? { grade } : {}), ...(surface ? { surface } : {}) };
  });
}

/** "What do I pull them to dry, and what oiled?": one bolt, asked of in two ways, in their order. */
function bothWays(scope: Scope): Given[] {
  const [oiled, dry] = ['oiled', 'dry'].map(name => SURFACES.find(([s]) => s === name)![1].exec(scope.text)?.index ?? -1) as [number, number];
  if (oiled < 0 || dry < 0 || /\b(?:not|no|without|isnt|or) (?:the )?(?:oil|oiled|lubed|lube|dry|greased)\b/.test(scope.text)) return [];
  const all = given(scope);
  return all.size === undefined || all.grade === undefined ? [] : (oiled < dry ? ['oiled', 'dry'] : ['dry', 'oiled']).map(surface => ({ ...all, surface }));
}

export const TORQUE: SumKind = {
  of: 'torque',
  each,
  ask: [
    /(?:^|[.?!;] ?)(?:the )?torque(?= ?\.)/,
    /\b(?:whats|what is|what are|what|give me|need|find|tell me|work out|remind me|figure|get me|any idea|calculate|i want|ill want|how much|know|look up|is there|got)\b(?: (?:the|a|an|me|kind of|sort of|my|right|correct|proper|of|for|out|to|is|recommended|max|full|book|s|what|would be|should be|is it|do i|i|need|of the|about))* ?torques?\b(?! (?:wrench|rod|was|tube|arm|converter|did))/,
    /\b(?:what|how (?:tight|hard|much|many (?:ft|foot|newton|nm|pounds)[a-z -]*))(?: (?:do|should|shall|would|can|could|does|will|must|d|ll|are|is|to|torque|am|did you say|foot pounds|lb ft|newton metres|newton meters))*(?: (?:i|it|they|that|those|these|she|we|the [a-z]+(?: [a-z]+)?|you|one))* (?:\b(?:go|get|supposed|meant|need|have|want|to|safely|going) )*(?:pull|tighten|torque|do|nip|wind|crank|yank|snug|cinch|run|take|set|draw|bring|wrench|want|get|stand|need|torqued|tightened|pulled|done up|go)(?: (?:it|them|those|that|these|this|one|him|her|the [a-z]+(?: [a-z]+)?))?(?: (?:up|down|in|dry|oiled|to|at|tight))*(?= ?(?:$|[?.,]| and| with| if| for| when))/,
    /\bhow (?:tight|hard) (?:do|should|shall|would|can|must|will) (?:i|we|you) (?:do up|tighten|pull|nip up|torque|run|get|make|crank)\b/,
    /\b(?:torque|tightening torque|tightness)(?: (?:spec|figure|value|setting|number|for|on|please|needed|wanted|required|should|is|of))* ?(?=$|\?| (?:a|an|the|those|my|m ?[\d#]|\d|#))/,
    /\b(?:how many|what|the|whats the) (?:foot pounds?|ft ?lbs?|newton metres|nm|lb ft)(?: (?:for|on|do))(?= (?:a|an|the|my|five|half|three|seven|those|these|\d|m ?\d))/,
    /\bwhat (?:do|should|would|must) i (?:tighten|torque|pull|do up) (?:(?!\b(?:what|how)\b)[^.?!]){1,50}? to(?= ?(?:$|[?.,]| and\b))/,
    /\bwhat(?:s|ll| (?:do|does|should|are|is|would|will)) (?:(?!\b(?:what|how|to)\b)[^.?!]){1,48}?,? (?:pull|torque|tighten|go) (?:up )?to\b(?! (?:the|a|work|town|get|make))/,
    /\b(?:newton met(?:re|er)s|foot pounds),? please\b|\b(?:what|how many) (?:newton met(?:re|er)s|foot pounds|ft ?lbs?|nm)(?= ?(?:$|[?.,]| for (?:an? |the |my )?(?:m ?#|#)))/,
    /\bwhat (?:do|does|should|are|is|would|will) [^.?!,]{1,44}? (?:get |be |being |supposed to be |meant to be |need to be |to be )?(?:torqued?|tightened?|pulled|done up|tighten|nipped|pull) (?:(?:down|up|in) )?to\b/,
    /\bwhat (?:should|does|will) (?:the |my )?(?:torque )?wrench (?:say|read|be set)/,
    /\bwhatll (?:they|it|that|those|these|the [a-z]+) (?:take|want|stand|pull(?: to)?|go to)(?= ?(?:$|[?.,]))|\bwhat (?:do|does|will|would) [^.?!]{0,30}\b(?:make|get|pull) [^.?!]{0,30}\btight\b|(?:^|[.?!,;] )(?:the )?(?:number|figure|torques?),? (?:please|if you please)\b/,
    /\bwhat (?:would|will|is|does|do|should) (?:that|it|this|they|those|these)(?: (?:be|want|need|take|get|go to))? (?:then )?(?:if )?(?:(?:its|theyre|i) )?(?:dry|oiled|plated|lubed|greased|waxed|with (?:oil|anti ?seize|copper ?slip|the oil|grease|moly))\b/,
    /\bwhats (?:it|that|this|she|they|that one|one of those|those) (?:want|take|get|need|pull(?:ed)? to|tighten to|go to|torque(?: to)?)(?: to)?\b/,
  ],
  unless: /\b(?:what (?:can|could|should|shall|do|would) i do(?= ?(?:$|[?.,;]|now|next|first|today|in|inside|while|with|about))|to (?:break|snap|shear|fail)|what was|what were|did i (?:torque|do|pull|set|tighten)|had i|whatd i|torque was|(?:was|were) (?:it |they |that )?torqued|before i (?:took|pulled)|convert|torqued (?:the|it|them) to)\b/,
  given,
  needs: ['size', 'grade', 'surface'],
  telling: [['size', 'grade']],
  wants: ['size', 'grade'],
};

import type { ReadContext } from '../../../../domain/model/reading.ts';
import { openSheet } from '../../../sheet.ts';
import type { Found } from '../../../types.ts';
import type { Given } from './scope.ts';
import { fraction, gradesIn, surfaceIn } from './bolt-said.ts';

/** Words before and after the figure that add nothing to it: "it's about 14, I think". */
const LEAD = /^(?:oh|um|uh|er|ah|well|right|ok|okay|yes|yeah|it'?s|its|it is|that'?s|they'?re|they are|there are|there is|about|around|say|roughly|call it|make it|just|only|the|an?|i think|maybe|let'?s say|i have|i'?ve got|got|with|at|to|on|for|near enough|nearly|exactly)[,\s]+/i;
const TAIL = /[,\s]+(?:i think|i guess|i reckon|please|mate|or so|more or less|ish|exactly|thereabouts|on it|there)$/i;
/** What a bare answer may hold beside its figure: units as said and the name of the thing asked for. */
const BESIDE = /^(?:flats?|teeth|tooth|cylinders?|pots?|legs?|turns?|percent|pct|degrees?|deg|gauge|volts?|amps?|pounds?|lbs?|rpm|revs|thou|solids?|humidity|inch(?:es)?|in|mm|feet|foot|ft|mils?|miles?|dollars?|bucks|quid|to|one|1|and|by|a|an|the|is|of|each|wide|long|apart|cent(?:re|er)s?|bore|stroke|pulley|sheave|pulleys|coarse|fine|threads?|per|psi|cap|high|tall|rated|%|"|'|-|,|\.|:)$/;
/** Units that are the field's own, so that no unit stands beside it. */
const OWN = new Set(['rpm', 'V', 'A', 'W', 'Ω', '%', 'tpi', '°', 'AWG', 'count', 'turns', '']);
const PAIRS: Readonly<Record<string, readonly string[]>> = { d1: ['d1', 'd2'], bore: ['bore', 'stroke'], diameter: ['diameter', 'width'], a: ['a', 'b'], temp: ['temp', 'humidity'] };

/**
 * The answer to the question that a sum asked back, when it is a figure or a word and nothing more: "14", "twenty two inches", "one flat",
 * "5/8 coarse", "grade eight", "oiled". Undefined where the words say something else as well, and are to be read as a note.
 * @param need the field of `given` that was asked for
 */
export function answerGiven(need: string, text: string, ctx: ReadContext): Given | undefined {
  const said = trimmed(text);
  if (!said || said.length > 60 || /\?/.test(text)) return undefined;
  if (need === 'grade' || need === 'newGrade') return graded(need, said);
  if (need === 'surface') { const surface = surfaceIn(said.toLowerCase()); return surface ? { surface } : word(need, said); }
  const sheet = openSheet(said, ctx);
  const figures = sheet.found.filter(f => !sheet.found.some(o => o !== f && o.from <= f.from && f.to <= o.to && (o.to - o.from > f.to - f.from || rank(o) > rank(f))));
  if (!figures.length) return word(need, said);
  const rest = sheet.tokens.filter((t, i) => !figures.some(f => f.from <= i && i < f.to) && !BESIDE.test(t.low));
  if (rest.length) return undefined;
  if (need === 'size' || need === 'newSize') return sized(need, said, figures);
  if (need === 'ratio' && /\bto\b|:/.test(said)) return { ratio: valueOf(figures[0]!)?.value };
  if (need === 'have') return leavesSaid(said, figures);
  if (need === 'temp' && figures[0]!.dim === 'percent') return { percent: figures[0]!.value.value };
  const names = figures.length > 1 ? PAIRS[need] : [need];
  if (!names || names.length < figures.length) return undefined;
  return Object.assign({}, ...figures.map((f, i) => field(names[i]!, valueOf(f))));
}

/** "ten, five and two thou": the unit said last is that of all; without one they are read with what was asked. */
function leavesSaid(said: string, figures: readonly Found[]): Given | undefined {
  const values = figures.map(valueOf), unit = values.findLast(v => v?.unit)?.unit;
  if (!unit || values.some(v => !v)) return undefined;
  const thou = unit === 'in' && /\bthou/.test(said);
  return { have: values.map(v => (thou && !v!.unit && v!.value >= 1 ? v!.value / 1000 : v!.value)), haveUnit: unit };
}

const rank = (f: Found): number => (f.dim === 'number' ? 0 : f.dim === 'money' ? 1 : 2);

function trimmed(text: string): string {
  let said = text.trim().replace(/[.!]+$/, '');
  for (let before = ''; before !== said;) { before = said; said = said.replace(LEAD, '').replace(TAIL, '').trim(); }
  return said;
}

function valueOf(f: Found): { value: number; unit?: string } | undefined {
  switch (f.dim) {
    case 'measure': return f.value;
    case 'number': case 'percent': case 'money': return { value: f.value.value };
    case 'span': return { value: f.value.unit === 'hours' ? f.value.amount * 60 : f.value.amount };
    default: return undefined;
  }
}

function field(name: string, v: { value: number; unit?: string } | undefined): Given {
  if (!v) return {};
  return { [name]: v.value, ...(v.unit && !OWN.has(v.unit) ? { [`${name}Unit`]: v.unit } : {}) };
}

/** "5/8 coarse", "M12", "half inch": a thread, or the fraction of its diameter. */
function sized(need: string, said: string, figures: readonly Found[]): Given | undefined {
  const thread = figures.find(f => f.dim === 'thread');
  if (thread?.dim === 'thread') return { [need]: thread.value.size };
  const v = valueOf(figures[0]!);
  if (figures.length > 1 || !v) return undefined;
  const series = /\b(?:coarse|fine|unc|unf)\b/i.exec(said)?.[0].toLowerCase();
  const size = v.unit === 'mm' ? `M${v.value}` : fraction(v.value);
  return { [need]: series ? `${size} ${series.replace('unc', 'coarse').replace('unf', 'fine')}` : size };
}

const NUMBERS: Readonly<Record<string, string>> = { two: '2', five: '5', eight: '8', one: '1' };
/** "grade five", "an eight point eight", "8". */
function graded(need: string, said: string): Given | undefined {
  const low = said.toLowerCase();
  const found = gradesIn(`grade ${low.replace(/^(?:grade|class|gr\.?)\s+/, '')}`)[0]?.grade ?? NUMBERS[low];
  return found && said.split(/\s+/).length <= 4 ? { [need]: found } : undefined;
}

/** A word or two as they stand: a material, a section, a fit. */
const word = (need: string, said: string): Given | undefined =>
  said.split(/\s+/).length <= 3 && !/\d/.test(said) && !/\b(?:it|i|is|was|what|where|how|no|dont|don't)\b/i.test(said) ? { [need]: said.toLowerCase() } : undefined;

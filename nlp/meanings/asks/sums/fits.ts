import type { SumKind } from './kind.ts';
import { type Figure, type Given, put, type Scope } from './scope.ts';
import { table } from '../../../words/table.ts';

/** "one flat or maybe four flats": each is a case of its own. */
function eachFlats(scope: Scope): Given[] {
  const m = scope.seen(/#~*(?!~)(?: flats?)?,? (?:or|and)(?: then| maybe| perhaps| even)* #~*(?!~) flats?\b|#~*(?!~) flats?,? (?:or|and)(?: (?:then|what|maybe|perhaps|even|how much|by|with|for|at|is|does|about))+ #~*(?!~)(?= ?(?:$|[?.,]| give| flats?\b))/);
  if (m?.nums.length !== 2 || !m.nums.every(Number.isInteger)) return [];
  const { flats: _, ...nut } = END_PLAY.given(scope);
  scope.take(m);
  return m.nums.map(flats => ({ ...nut, flats }));
}

export const END_PLAY: SumKind = {
  of: 'endPlay',
  each: eachFlats,
  ask: [
    /\bhow much(?: (?:of an?|is|does|do|will|would|the|that|in))* ?(?:end ?play|end ?float|float|clearance|slack|axial play|lash|endshake|shake|movement|travel|play)\b(?: (?:is|does|do|will|would|that|it|i|have|get|give|be|in|me|would i have|that give me|am i giving it))*/,
    /\bhow many (?:thou|thousandths)\b[^.?!]*\b(?:end ?play|end ?float|play|flat)\b/,
    /\bend ?(?:play|float)(?= (?:for|with|on|at|of|from|if|when|backing) )/,
    /\bwhat(?:s|ll)? (?:(?:does|will|is|that|it|the|this|would|my|do i|i|in|ll|in the way of|as|of) )*(?:end ?play|end ?float|endplay|endshake|axial play|float)s?\b/,
    /\bhow far(?:s| is| does| will)? (?:that|it) (?:lift|move|go|travel|drop|rise)\b|\bwhat do i (?:lift|move|get|gain)(?: (?:it|for|uh))*/,
    /\bhow (?:many flats|far(?: (?:do|should|would|is|does|will))?)[^.?!]{0,40}\b(?:flat|flats|nut|back|off|end ?play|end ?float|thou|turn)\b/,
    /\b(?:how much|what|whats)(?: (?:is|does|will|would|do))* (?:that|it|a flat|the nut|each flat|#~*(?!~) flats?|this)(?: (?:in|move|give|come to|worth|be|amount to|make|back off|is|as|work out(?: at| to)?|open (?:it )?up))*(?: (?:thou|thousandths|inches|end|me|play|float|for))*/,
  ],
  unless: /\b(?:was|had|did (?:the|my|it|that)|before|originally|to (?:begin|start) with|convert|strength|torque|proof|shims? (?:do|were)|sheaves?|pulleys?|oiled|dry|plated|lubed|anti ?seize)\b/,
  given(scope, prev) {
    const out: Given = {};
    const inch = scope.seen(/#~*(?!~) (?:threads? )?(?:to|in) (?:the|an) inch\b|#~*(?!~) per inch\b/);
    const t = inch ? { start: inch.start, end: inch.end, value: inch.nums[0]! } : scope.measures('tpi')[0];
    const bare = t ?? scope.seen(/#~*(?!~) (?:threads?|tpi|pitch)\b/);
    if (t) { out.pitch = t.value; scope.take(t); }
    else {
      const mm = scope.seen(/#~*(?!~) ?(?:mm|millimetres?|millimeters?) (?:pitch|thread|a turn)|pitch (?:is |of )?#~*(?!~) ?(?:mm|mil)/);
      const thread = scope.values('thread')[0];
      if (mm) { out.pitch = mm.nums[0]; out.pitchUnit = 'mm'; scope.take(mm); }
      else if (thread) { const p = /-(\d+(?:\.\d+)?)$/.exec(thread.value.size)?.[1], m = /x([\d.]+)$/.exec(thread.value.size)?.[1]; if (p) out.pitch = Number(p); else if (m) { out.pitch = Number(m); out.pitchUnit = 'mm'; } scope.take(thread); }
      else if (bare && 'nums' in bare) { out.pitch = bare.nums[0]; scope.take(bare); }
    }
    const flats = scope.seen(/#~*(?!~)(?: more| of the)? flats?\b/);
    const half = scope.seen(/(?:\b(?:a|one)|#~*(?!~)) flats? and #~*(?!~)/);
    const whole = /\b(?:no|sorry|i mean|make that|rather),? (?:an?|one) (?:whole|full) flat\b/.test(scope.text) ? { nums: [1], start: scope.start, end: scope.start } : undefined;
    const part = whole ?? scope.seen(/#~*(?!~)(?: of)? an? flat\b/);
    if (part) { out.flats = part.nums[0]; scope.take(part); }
    else if (half) { out.flats = (half.nums.length > 1 ? half.nums[0]! : 1) + half.nums.at(-1)!; scope.take(half); }
    else if (flats) { out.flats = flats.nums[0]; scope.take(flats); }
    else if (/\b(?:a|one|per|each|every) (?:single |whole |full )?flat\b/.test(scope.text)) out.flats = 1;
    else {
      const turn = scope.seen(/#~*(?!~)(?: of)?(?: an?)? turns?\b/);
      if (turn) { out.turn = turn.nums[0]; scope.take(turn); }
      else if (prev) { const n = scope.numbers()[0]; if (n && !out.pitch) { out.flats = n.value; scope.take(n); } }
    }
    const thou = /\bthou|thousandths?\b/.test(scope.text);
    const lens = [...scope.measures('in', 'mm'), ...scope.numbers().filter(n => n.value < 0.2 || (thou && n.value < 100 && /\b(?:want|need)(?: it)?(?: (?:at|to be))? $/.test(scope.before(n)))).map(n => ({ ...n, value: n.value < 0.2 ? n.value : n.value / 1000, unit: 'in' }))];
    const wanted = lens.find(f => /\b(?:want|need|after|to|get|spec|should be|be|for|aim(?:ing)? for)(?: (?:it|about|a|at|to|be|down to|is))* $/.test(scope.before(f)) && !/\bis $/.test(scope.before(f)));
    const now = lens.find(f => f !== wanted && /\b(?:got|now|have|is|measured|measures?|at|reads?|its|from|end play|endplay|play)(?: (?:about|at|now))* $/.test(scope.before(f)));
    if (/\bhow (?:many flats|far|much (?:do i|to) (?:turn|back))/.test(scope.text) || (wanted && now)) { put(out, 'measured', now); put(out, 'wanted', wanted); scope.take(wanted, now); }
    return out;
  },
  needs: ['pitch', 'flats', 'turn'],
  telling: [['pitch', 'flats'], ['pitch', 'turn']],
  full: ['pitch', 'flats'],
  wants: ['pitch'],
  either: [['flats', 'turn']],
};

const MATERIAL = /\b(wood(?:en)?|oak|ash|plastic|nylon|rubber|cast iron|grey iron|gray iron|ductile iron|stainless(?: steel)?|steel|iron|bronze|brass|alumini?um|ally|alloy|copper|cast|gunmetal|phosphor bronze|nickel)\b/g;
const MADE: Record<string, string> = table({ ally: 'aluminium', alloy: 'aluminium', aluminum: 'aluminium', cast: 'cast iron', 'grey iron': 'cast iron', 'gray iron': 'cast iron', 'stainless steel': 'stainless' });
const GOES_IN = /\b(?:bush(?:ing|es|ings)?|bearing|shaft|pin|sleeve|liner|insert|race|journal|axle|spindle|dowel|plug|seat|valve seat)s?\b/;

/** The material of what is heated or cooled; that of the piece it goes round or into is another. */
function material(scope: Scope): string | undefined {
  const hits = [...scope.text.matchAll(MATERIAL)].filter(m => !/^ ?(?:brush|wool|rule)/.test(scope.text.slice(m.index + m[0].length)));
  if (!hits.length) return undefined;
  const heated = /\b(?:heat|hot|warm|temperature|cool|cold|freeze|shrink)\b[^.?!]{0,30}?\b(?:on|the|my) (?:the )?([a-z]+(?: [a-z]+)?)/.exec(scope.text)?.[1];
  const ok = hits.find(m => /^ (?:ring|collar|gear|hub|sleeve|flange|wheel|pulley|sprocket|housing|band|tyre|tire)/.test(scope.text.slice(m.index + m[0].length)) && /\b(?:shrink|heat|hot|oven|temperature|warm)\b/.test(scope.text)) ?? hits.find(m => {
    const clause = (scope.text.slice(0, m.index).split(/[.;?!]/).at(-1) ?? '') + (scope.text.slice(m.index).split(/[,.;?!]/)[0] ?? '');
    const sentences = scope.text.slice(0, m.index).split(/[.?!]/);
    const subject = GOES_IN.exec(clause)?.[0] ?? (/\b(?:it|its|thats|theyre)\b/.test(clause.split(',')[0] ?? '') ? GOES_IN.exec(sentences.at(-2) ?? '')?.[0] : undefined);
    const other = subject && heated && !heated.includes(subject.replace(/s$/, ''));
    return !other && !(subject && !heated && /\b(?:hub|housing|gear|ring|flange|wheel|block|pulley|collar|sprocket)\b/.test(scope.text) && GOES_IN.test(scope.text.slice(m.index, m.index + m[0].length + 16)));
  });
  // "no hang on, the post is steel": what is put right last; of one stuff only it is that one.
  const righted = /\b(?:no|hang on|i mean|sorry|rather|actually)\b(?!.*\b(?:no|hang on|i mean|sorry|actually)\b)/.exec(scope.text), after = righted && hits.find(m => m.index > righted.index);
  const said = after?.[1] ?? ok?.[1] ?? (new Set(hits.map(m => m[1])).size === 1 ? hits[0]![1] : undefined);
  return said && (MADE[said] ?? said);
}

/** Lengths, where "60 mil" of a bore is millimetres and "forty microns" of grip are hundredths of them. */
const lengthsOf = (scope: Scope): Figure[] => scope.measures('in', 'mm', 'cm', 'mil', 'µm').map(f => f.unit === 'mil' ? { ...f, unit: 'mm' } : f.unit === 'µm' ? { ...f, value: f.value / 1000, unit: 'mm' } : f);

/** Written to the thousandth, a figure was measured in inches. */
const TO_THE_THOU = /^\d+\.\d{3,4}$/;
/** "1.2500 diameter", "two and a quarter bore": a diameter without its unit is of inches where the grip is, or is so small that it must be. */
function bareDiameter(scope: Scope, fit: Figure | undefined): Figure | undefined {
  const n = scope.numbers().find(x => x.value > 0.2 && (/\b(?:dia(?:meter)?|bore)(?: (?:is|of))* $/.test(scope.before(x)) || /^ ?(?:dia(?:meter)?|bore|across)\b/.test(scope.after(x)) || TO_THE_THOU.test(scope.desk.text.slice(x.start, x.end))));
  const inches = fit ? fit.unit === 'in' : scope.numbers().some(x => x.value < 0.006);
  return n && inches && n.value < 20 ? { ...n, unit: 'in' } : n;
}

function shrink(scope: Scope, prev?: Given): Given {
  const out: Given = {};
  const lens = lengthsOf(scope);
  const small = (f: Figure): boolean => f.unit === 'in' ? f.value <= 0.02 : f.unit === 'mm' ? f.value < 0.6 : false;
  const fit = lens.find(f => /^ ?(?:of )?(?:interference|press|tight|shrink|grip|nip|bite|crush|oversize|over size|squeeze|pinch)/.test(scope.after(f)) || /\b(?:interference|press fit|nip|shrink|grip)(?: (?:of|is|fit|at|s|about))* $/.test(scope.before(f))) ?? lens.find(small);
  const wide = lens.filter(f => f !== fit && !small(f));
  const dia = wide.find(f => /^ ?(?:inch |in |mm |mil )?(?:[a-z]+ )?(?:bore|diameter|dia|shaft|eye|hub|inside)\b/.test(scope.after(f))) ?? scope.nearest(wide) ?? bareDiameter(scope, fit);
  put(out, 'diameter', dia);
  put(out, 'interference', fit);
  scope.take(dia, fit);
  if (!fit) {
    const n = scope.numbers().find(x => (/^ ?(?:of )?interf/.test(scope.after(x)) || (x.value < 0.1 && /\binterference(?: (?:is|of))* $/.test(scope.before(x))) || prev));
    if (n) { out.interference = prev?.interferenceUnit === 'in' && n.value >= 0.5 ? n.value / 1000 : n.value; scope.take(n); }
  }
  if (!fit && dia?.unit && typeof out.interference === 'number' && out.interference < (dia.unit === 'mm' ? 0.6 : 0.05)) out.interferenceUnit ??= dia.unit;
  if (prev && out.interference === undefined && dia && !/\b(?:diameter|bore|shaft|inch (?:shaft|hub|bore))\b/.test(scope.text) && dia.value < 0.1) put(out, 'interference', dia);
  const room = [...lens, ...scope.numbers().filter(n => n.value < 0.6)].find(f => f.start !== fit?.start && f.start !== dia?.start && /^ ?(?:inch |in |mm )?(?:of )?(?:clearance|room|slip)/.test(scope.after(f)));
  put(out, 'clearance', room);
  scope.take(room);
  const made = material(scope);
  if (made) out.material = made;
  return out;
}

export const SHRINK_FIT: SumKind = {
  of: 'shrinkFit',
  ask: [
    /\bhow (?:hot|warm|cold)(?: (?:do|does|should|must|would|will|have|is|has|need|s|ll|shall|can|to))*(?: (?:i|it|the [a-z]+(?: [a-z]+)?|that|this|we|my [a-z]+))* ?(?:(?:have|need|to|got|get|heat|make|be|go|take|warm|want|chill|cool|freeze|bring|has|needs|enough|supposed|should|ought|it|her|him|them|that)(?: |\b))*/,
    /\bwhat (?:does|do|must|should|has|have|will) (?:the |my |that |it )?[a-z]+(?: [a-z]+)? (?:have to |need to |want to |ought to |to )*be (?:heated|warmed|cooled|chilled|frozen) to\b/,
    /\b(?:heat|temperature(?: rise)?) (?:needed|required|for)\b/,
    /\btemperature rise\b/,
    /\bhow much (?:do i|to|should i|must i) (?:have to )?(?:cool|heat|warm|chill|open)\b(?: it)?/,
    /\bhow many degrees\b/,
    /\bhow much (?:heat|temperature|warming|cooling)\b(?: (?:do|does|should|would|will|i|on|the|to|need|it|in|hub|for))*/,
    /\bwhat (?:temp(?:erature)?|heat)(?: (?:do|does|should|would|will|must|i|it|have|need|to|heat|get|for|the|is|take|bring|drop|shrink|on|hub|has|be|that|be at|at))*/,
    /\bwhat(?:s| is) the (?:temp(?:erature)?|heat) (?:to|i need|needed|for)\b/,
  ],
  unless: /\b(?:engine run|oven cure|dew|weather|boil|weld|outside|tomorrow|thermostat|coolant|antifreeze|in here|forecast|cure|bake|was it)\b/,
  given: shrink,
  needs: ['diameter', 'interference'],
  telling: [['diameter', 'interference']],
  full: ['diameter', 'interference'],
  wants: ['interference'],
};

import { scaleOf } from './degrees.ts';
import type { SumKind } from './kind.ts';
import { type Figure, type Given, put, type Scope } from './scope.ts';
import { table } from '../../../words/table.ts';

const VOLUMES = ['qt', 'gal', 'L', 'pt', 'mL', 'fl oz', 'oz', 'cu in'];
/** A temperature of the stretch; a bare "minus thirty" is one too. */
function temperature(scope: Scope): Figure | undefined {
  const scaled = (f: Figure): Figure => ({ ...f, unit: scaleOf(scope, f.value) });
  const t = scope.measures('°F', '°C').at(-1) ?? scope.measures('°').filter(f => f.value <= 40).map(scaled)[0];
  if (t) return t;
  const below = scope.numbers().filter(n => n.value < 0), aim = below.find(n => /\b(?:to|for|against)(?: about)? $/.test(scope.before(n))) ?? below.at(-1);
  return aim && scaled(aim);
}

const PARTS: Readonly<Record<string, number>> = table({ third: 33.3333, quarter: 25, half: 50 });
/** "a 14 L system": a bare L is litres where coolant is spoken of. */
function litres(scope: Scope): Figure | undefined {
  const n = scope.numbers().find(x => /^ ?l\b/.test(scope.after(x)));
  return n && { ...n, unit: 'L' };
}

const VOLUME_AFTER = /^ ?(?:quart|qt|gal|lit|l\b|pint|below|degree|°|f\b|c\b|fahr|cel)/;
const NOW = /\b(?:now|at the moment|currently|already|tests?|tested|reads?|reading|measures|checks?|shows|in (?:it|there)|has (?:got )?|hydrometer|refractometer|presently|from)\b/;

function glycol(scope: Scope, prev?: Given): Given {
  const out: Given = {};
  const t = temperature(scope);
  put(out, 'temp', t);
  scope.take(t);
  const percents = scope.values('percent');
  const wanted = percents.length ? percentWanted(scope) : undefined;
  for (const p of percents) {
    if (wanted && percents.length === 1) { out.percentNow = p.value.value; scope.take(p); continue; }
    const near = `${scope.before(p, 34).split(/[,.;?]/).at(-1)} ${scope.after(p, 22).split(/[,.;?]| and /)[0]}`;
    const asked = percents.length > 1 && percents.some(o => o !== p && o.start > p.start && /\b(?:want|bring|get|to|make|raise|up)(?: (?:it|up|to|at|be|about))* $/.test(scope.before(o)));
    const already = prev && /\b(?:already|now|at the moment|currently)\b/.test(near); // "and if there's ten percent in it already"
    const isNow = already || !/\b(?:want|need|get|bring)\b[^.?!]*$/.test(scope.before(p, 24)) && (asked || (percents.length > 1 || t) && NOW.test(near) || percents.length === 1 && !t && /\b(?:now|at the moment|currently|tests?|reads?|tester says|says|in it|in there)\b/.test(near) && !prev);
    if (isNow && out.percentNow === undefined) out.percentNow = p.value.value; else out.percent ??= p.value.value;
    scope.take(p);
  }
  const aim = scope.numbers().find(n => n.value >= 10 && n.value <= 100 && /\b(?:want(?: it)?(?: at)?|up to|bring it (?:up )?to|at|to|for) (?:about )?$/.test(scope.before(n)) && !VOLUME_AFTER.test(scope.after(n)));
  if (aim && out.percent === undefined && (percents.length || /\b(?:fifty|50)\b/.test(scope.desk.text.slice(aim.start, aim.end)))) { out.percent = aim.value; scope.take(aim); }
  const other = prev && !percents.length && out.percent === undefined && !t ? scope.numbers().find(n => n.value >= 10 && n.value <= 80 && /^ ?(?:$|[?.,]|then\b|instead\b|please\b|what\b|how\b)/.test(scope.after(n))) : undefined; // "and for forty"
  if (other) { out.percent = other.value; scope.take(other); }
  if (wanted && percents.length === 1) { out.percent = wanted.value; scope.take(wanted); }
  if (!percents.length && /\bfifty\b/.test(scope.text) && /\bfifty[ -]fifty\b/i.test(scope.desk.sheet.text)) out.percent = 50; // said twice it is no slip of the tongue
  else if (!percents.length && /\b(?:fifty[ -]?fifty|50 ?[\/-] ?50|50 50|1 to 1|one to one|1:1|50 50|half and half|fifty:fifty)\b/.test(scope.text)) out.percent = 50;
  const part = /\b(?:an?|one) (third|quarter|half) (?:antifreeze|anti freeze|coolant|glycol|mix)\b/.exec(scope.text)?.[1];
  if (part && out.percent === undefined && !percents.length) out.percent = PARTS[part];
  const v = scope.measures(...VOLUMES)[0] ?? litres(scope);
  put(out, 'capacity', v);
  scope.take(v);
  if (/\bpropylene\b/.test(scope.text)) out.glycol = 'propylene'; else if (/\bethylene\b/.test(scope.text)) out.glycol = 'ethylene';
  return out;
}

/** "it's thirty percent now and I want fifty": the strength wanted, said without its percent. */
const percentWanted = (scope: Scope): Figure | undefined => scope.numbers().find(n => n.value >= 20 && n.value <= 70 && /\b(?:want|prefer|to|at|need|make it|get it|after|get|reach|bring it to)(?: (?:it|at|to|up|about|a|be|on|go|go to))* $/.test(scope.before(n)) && !/^ ?(?:quarts?|gallons?|lit|below|degrees|above)/.test(scope.after(n)));

export const ANTIFREEZE: SumKind = {
  of: 'antifreeze',
  ask: [
    /\bhow (?:much|many (?:quarts|gallons|litres|liters|pints|jugs|qts))(?: (?:of|straight|neat|pure|the|that|concentrate|concentrated|new|green|glycol|ethylene|propylene|is|stuff))* ?(?:antifreeze|anti freeze|coolant|glycol|concentrate|prestone|(?:straight|neat|pure|raw) stuff|neat|straight)\b/,
    /\bwhat (?:do|should|must|would) i (?:drain|mix|pour|draw off|swap|top up)\b/,
    /\bwhatll [^.?!]{0,40}?\b(?:protect|hold|good|freeze)/,
    /\bwhat antifreeze(?: (?:do|should|would|i|need|for|to|mix|it|want))*/,
    /\bwhat(?:s)? (?:(?:the|my|right|antifreeze|coolant|is|of|a|kind of|sort of) )*(?:mix|mixture|percent|percentage|strength|ratio|concentration|proportion|blend)\b(?: (?:do|does|should|will|would|i|need|for|to|it|that|want|have|get|gets|is|be|of|antifreeze|coolant|protects?|holds?|goes?|good|keeps?|me))*/,
    /\b(?:antifreeze|anti freeze|coolant|glycol)\b(?:(?!\b(?:and|or) (?:if|what|how)\b)[^.?!]){0,40}\bhow (?:much|cold|strong|far|low)\b/,
    /\bwhat (?:does|will|would|is) (?:that|it) (?:good )?(?:go|get|protect|hold|keep)?(?: me)? ?(?:down )?to\b/,
    /\bhow (?:cold|low|far down|strong)(?: (?:a|will|does|is|can|would|do|am|should|mix|it|that|i|the [a-z]+|must))* ?(?:good (?:to|for)|protect(?:ed|s)?|go(?: to)?|hold|stand|safe|be|mix|cover(?:ed)?|down to|freeze|antifreeze|mixture)/,
    /\bwhat(?:s)? (?:(?:is|does|will|would|do|it|that|the|a|fifty|mix|percent|#)(?: |\b))*(?:freeze|freezing|protect|protection|good|protects?|freezes?)(?: (?:point|at|to|down to|level))*\b/,
    /\bhow much (?:(?:of (?:the|it|that)|do i|should i|to|have i got to|must i|straight|neat|would i|will i|is|of|goes|i|need) )*(?:drain|pour|swap|take out|draw off|drop|exchange)(?: (?:out|off|in|and (?=refill|replace|add|put|pour)|to))*/,
    /\bbring it (?:up )?to\b/,
    /\b(?:freeze|freezing) point\b/,
    /\bhow much (?:comes|goes) (?:out|in)\b/,
    /\bfreez(?:e|ing) point of\b/,
    /\b(?:bring|get|take|raise) it (?:up )?to\b/,
    /\bhow much (?:comes out|goes back in|drains?|to drain)\b/,
    /\bdrain and refill\b/,
    /\bhow much (?:do i (?:need|want|add|put in|put(?= ?(?:$|[?.,]|and\b))|pour|chuck in|tip in)|to (?:add|put in|pour)|should i (?:put|add)|is that|would that be|goes in)\b/,
  ],
  unless: /\b(?:oil|paint|primer|boil(?:s|ing)?|order|buy|cost|torque|mils?|square feet|spent|fuel|petrol|shim)\b/,
  given: glycol,
  needs: ['temp', 'percent', 'capacity', 'percentNow'],
  telling: [['temp', 'capacity'], ['percent', 'capacity'], ['percentNow', 'percent', 'capacity']],
  wants: ['temp', 'percent'],
  either: [['temp', 'percent']],
};

export const BOILING: SumKind = {
  of: 'boiling',
  ask: [/\b(?:what|at what|when|how hot|whats|where)\b[^.?!]{0,60}\bboil(?:s|ing|ed)?(?: (?:point|at|over))?\b/, /\bboil(?:s|ing)?\b[^.?!]{0,40}\b(?:what|how hot|when)\b/, /\bboiling point\b/],
  unless: /\b(?:boiled out|linseed|did|the kettle)\b/,
  given(scope) {
    const out: Given = {};
    const cap = scope.measures('psi', 'bar', 'kPa')[0] ?? scope.measures('lb').find(f => /^ ?(?:cap|rad|radiator|pressure)/.test(scope.after(f)));
    if (cap) { out.cap = cap.value; out.capUnit = cap.unit === 'lb' ? 'psi' : cap.unit; }
    if (!cap && /\b(?:no|without an?|open|with the) (?:pressure |radiator )?cap(?: off)?\b|\bopen (?:system|radiator)\b|\bnot pressuri[sz]ed\b/.test(scope.text)) out.cap = 0;
    const p = scope.values('percent')[0];
    if (p) out.percent = p.value.value; else if (/\bfifty fifty|half and half|50\/50\b/.test(scope.text)) out.percent = 50;
    const high = scope.measures('ft', 'm').find(f => f.value > 100);
    put(out, 'altitude', high);
    if (!cap && /\b(?:no|without an?y?) cap\b|open system/.test(scope.text)) out.cap = 0;
    scope.take(cap, p, high);
    return out;
  },

  weight: 3,
};

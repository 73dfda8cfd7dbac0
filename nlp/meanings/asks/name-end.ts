import { verbForms } from '../../words/verbs.ts';
import { type Desk, sentenceAt } from './desk.ts';

/** Where a name in a question ends: "the idle adjusting screw" goes on, in "the windmill set me back" and "the linkage set before" the verb is no part of it. */
export const cutSet = (desk: Desk, t: { name: string; end: number }): { name: string; end: number } => {
  const more = / (?:(?:adjust(?:ing|er|ment)|lock(?:ing)?|grub|drain|bleed|fixing|mounting|retaining|clamp(?:ing)?|pinch|stop|idle) (?:screw|nut|bolt|plug|ring|pin|spring|collar|plate)s?|tag|plate|label|stamp|sticker|decal|drawing|sketch|manual|kit)(?=$|[ ?.,!])/y;
  more.lastIndex = t.end;
  const m = more.exec(desk.text);
  if (m) return { name: t.name + m[0], end: t.end + m[0].length };
  const lies = / (?:facing|pointing|hanging|leaning|sitting)$/.exec(t.name);
  if (lies && LYING.test(desk.text.slice(Math.max(0, t.end - t.name.length - 30), t.end))) return { name: t.name.slice(0, lies.index), end: t.end - lies[0].length };
  const turned = / (face|point|sit|lie|lean|stack|hook|mount|go|stand|hang|loop|bend|twist|curve|wrap)(?= [a-z]|$)/.exec(t.name);
  if (turned && INVERTED.test(desk.text.slice(Math.max(0, t.end - t.name.length - 24), t.end))) return { name: t.name.slice(0, turned.index), end: t.end - t.name.length + turned.index };
  const verb = / ([a-z]+)$/.exec(t.name)?.[1];
  if (verb && INVERTED.test(desk.text.slice(Math.max(0, t.end - t.name.length - 24), t.end)) && /^(?: (?:in|on|at|up|out|down|off|over|together|against|from|before|when|originally|to)\b| ?(?:$|[?.,!]))/.test(desk.text.slice(t.end)) && verbForms(verb).some(f => f.form === 'base') && !desk.text.slice(t.end, sentenceAt(desk, t.end - 1).end).split(/[,.?!;]| (?:and|or|when|before) /)[0]!.split(' ').some(w => verbForms(w).some(f => f.form === 'base') && w !== 'set')) return { name: t.name.slice(0, -verb.length - 1), end: t.end - verb.length - 1 };
  return / set$/.test(t.name) && (/^ (?:me back|before|at|to|when)\b/.test(desk.text.slice(t.end)) || /\bhow (?:was|were|is|are|had i|did i have)(?: [a-z]+){1,5}$/.test(desk.text.slice(Math.max(0, t.end - 60), t.end))) ? { name: t.name.slice(0, -4), end: t.end - 4 } : t;
};

/** "how did the washers face", "what order did the plates stack in": the verb of a question that has no other is no part of the name. */
const INVERTED = /\b(?:which|what|how|where|when|why)(?: [a-z]+){0,3} (?:did|does|do) (?:the|my|those|that) [a-z ]+$/;

/** "how was the pawl facing": how it lay is no part of the name. */
const LYING = /\b(?:how|(?:which|what) (?:way|side|end))(?: [a-z]+)?? (?:was|were|is|are) (?:the|my|those|that) [a-z ]+$/;

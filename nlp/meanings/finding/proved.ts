import { CONDITION } from '../../words/conditions.ts';
import { ENGLISH_ADJECTIVES } from '../../words/english.ts';
import { FAULT } from '../../words/faults.ts';
import { verdictIn } from '../lib/verdict.ts';
import { lowText, type Meaning, type Telling } from '../telling.ts';
import { condition, counted, make, partsOf } from './part.ts';

/** How a part came out of a test, a cleaning or a look: "tested leaky", "cleaned up lovely", "checked out fine", "proved straight". */
const CAME_OUT = /\b(test(s|ed)?( out)?|check(s|ed)? out|prov(es|ed)( to be)?|show(s|ed) up|came up|comes up|clean(s|ed) up|polish(es|ed) up|scrub(s|bed) up|wash(es|ed) up|brush(es|ed) up|buff(s|ed) up|measur(es|ed) up|turn(s|ed) out( to be)?|wash(es|ed) out|look(s|ed) to be|appear(s|ed) to be|seem(s|ed) to be) (all |very |really |quite |as |a bit |perfectly |dead |pretty |absolutely |still |nice and |bone )*([\w-]+)/;
const HOW = /^(fine|well|good|great|lovely|nice|nicely|beautiful|beautifully|grand|ok|okay|alright|right|clean|like|a|sweet|mint|perfect|perfectly|bright|dead|bad|badly|poor|poorly|weak|strong|healthy|positive|negative|same|spot|new|better|worse|short|shorted|open|high|low)$/;

export const proved: Meaning = t => {
  const c = t.clause, m = CAME_OUT.exec(lowText(t));
  if (c.asks || c.sub || c.neg || c.reality !== 'deed' || !m || !c.subj.length || c.who && !/^(it|they|that|she)$/.test(c.who)) return undefined;
  const word = m.at(-1)!;
  if (!HOW.test(word) && !CONDITION.has(word) && !ENGLISH_ADJECTIVES.has(word) && !/[a-z]{3}ed$/.test(word)) return undefined;
  if (/^(test|tested|tests)$/.test(m[1]!) && /^(a|same|new|like|right)$/.test(word)) return undefined;
  const verb = c.items.findIndex(i => i.from >= c.subj.at(-1)!.to && i.low === m[1]!.split(' ')[0]);
  const parts = partsOf(t, c.subj);
  if (!parts.length || verb < 0) return undefined;
  const text = condition(t, c, c.items[verb]!.from);
  return parts.map(p => make(p.name, counted(t, c) + text, verdictIn(text.slice(m[1]!.length).trim())));
};

/** "the magneto has packed up", "the pump gave up the ghost": it stopped working, in one of the many ways of saying so. */
const DIED = /\b(pack(ed|s)? (up|in)|g(a|i)ve(n|s)? (up|out)( the ghost)?|conk(ed|s) out|die(d|s)( a death| on me| the death)?|let go|crapped out|called it a day|threw in the towel|bit(ten)? the dust|kicked the bucket|gone to meet its maker|seen better days|had its day|on (its|their) last legs|on the way out|on its way out|bought it|said goodbye|cried enough|shuffled off)\b/;
export const died = (t: Telling): ReturnType<Meaning> => {
  const c = t.clause, m = DIED.exec(lowText(t));
  if (!m || c.asks || c.sub || c.neg || c.reality !== 'deed' || !c.subj.length || c.obj.some(o => !o.carried && o.name !== 'ghost') && !/ghost|towel|bucket|dust|day|death|enough/.test(m[0])) return undefined;
  const parts = partsOf(t, c.subj.filter(s => !s.carried));
  return parts.length ? parts.map(p => make(p.name, m[0], verdictIn(m[0]))) : undefined;
};

/** "the tyres are showing their cords", "the bearing shows no wear": what a part has to show. */
export function showing(t: Telling): ReturnType<Meaning> {
  const c = t.clause, parts = partsOf(t, c.subj);
  if (c.verb?.base !== 'show' && c.verb?.base !== 'have' || c.verb.base === 'have' && !c.ing || !parts.length || c.passive || c.who && !/^(it|they|she)$/.test(c.who)) return undefined;
  const np = c.items.find((i, k) => k > c.vi && i.np)?.np, low = lowText(t);
  if (!np || !FAULT.test(np.said.split(' ').at(-1)!) && !/\b(no|some|signs?|cords?|canvas|metal|brass|copper|steel|daylight|light|rivets|wire|wires|age|its age|their age|threads|backing|primer|strands)\b/.test(low.slice(low.indexOf('show')))) return undefined;
  const text = condition(t, c, c.verb.from);
  return parts.map(p => make(p.name, text, verdictIn(text)));
}

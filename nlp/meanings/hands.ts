import type { Entry } from '../../domain/model/entry.ts';
import { said, saidWhole } from '../clauses/as-said.ts';
import type { Clause } from '../clauses/clause.ts';
import { isKnownPart } from '../dimensions/part/known.ts';
import { nounClasses } from '../words/nouns.ts';
import { PERSONS } from '../words/persons.ts';
import { trim } from './lib/fields.ts';
import { spanForward } from './lib/reach.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

const COMES = /\b(coming|comes?|come|here|over|free|around|round|available|'ll be|will be|gets? here|turning up|visiting|stopping by|dropping by|giving|give|gives|lend|lending|help|helps|helping|booked|off work|about|home|back|down|up|on hand|bring|bringing|stops? by|promised|attends?|mine|ours|due)\b/;
const HELPS = /\b(help|helping|helps|hand|hands|muscle|with me|spare|free|lift|lifting|hold|assist|pair of hands|arms|push|steady|crew|strong|able)\b/;

/** Help that will be there: who does not matter, when and for what does. */
export const hands: Meaning = t => {
  const c = t.clause;
  const text = lowText(t);
  if (/^hands? off\b/.test(text)) return undefined;
  if (c.neg || c.asks || c.sub && /^(if|unless|that|until|till)$/.test(c.sub) || /^(past plan|wish|maybe|cond|hearsay)$/.test(c.reality) && !promised(t, c) && !(c.reality === 'maybe' && /\bcan (come|be|help|give|lend|do|make|get|bring|stop|hold|spare)\b/.test(text) && /^(he|she|they|person)$/.test(c.who ?? 'person')) || /\b(was|were) (coming|going|due)\b|\b(helped|came)\b/.test(text)) return undefined;
  const booked = /\b(got|have|having|'ve) (got )?(some |extra |more )?(help|a hand|two hands|hands|a helper|helpers|an extra pair|(a|two) pairs? of hands)\b|^(and |some |extra )?(help|hands|a helper|helper|(a|two|extra|another|an extra) pairs? of hands)\b/.test(text);
  const crew = /\b(got|have|having|'ve got) (\w+ )?(two|three|four|a couple of|some|a few|the) (\w+ )?(lads|fellows|fellas|men|blokes|helpers|mates|neighbours|neighbors)\b/.test(text);
  const people = crew || /\b(bloke|lad|fella|fellow|man|chap|guy|girl|neighbou?r) (from )?(next door|down the road|across the road|over the road|up the road)\b/.test(text) || c.items.some(i => i.np && PERSONS.test(i.np.said)) || /^(he|she|they)$/.test(c.who ?? '') && t.clauses.slice(Math.max(0, t.at - 2), t.at).some(p => p.items.some(i => i.np && PERSONS.test(i.np.said))) || /\b(got|have|having) (help|a hand|two hands|hands|somebody|someone|company)\b|\bhelp('s| is| coming| arrives)\b/.test(text);
  const helper = /\bto (help|give|lend|hold|lift|steady)\b|\bhelp(ing)? (me|us)\b|\b(give|giving|lend|lending) (me|us) a hand\b|\bbring(s|ing)? (his|her|their) \w+ to\b/.test(text) && COMES.test(text) && /\b(help\w*|hand|bring\w*)\b/.test(text) && (c.who === undefined || /^(he|she|they|person)$/.test(c.who)) && c.subj.every(s => s.carried || !isKnownPart(t.sheet.ctx.parts, s.name) && !nounClasses(s.name).has('part')) && !/^(and |but )?(i|we)\b/.test(text);
  if (!booked && !helper && (!people || !COMES.test(text) && !crew && !(c.reality === 'plan' && /\b(hold|lift|help|push|steady|lend)\b/.test(text)))) return undefined;
  const end = spanForward(t, n => !n.asks && (/\b(help|helping|hand|lift|hold)\b/.test(lowText(t, n)) && (/^(he|she|they|person|we|who)$/.test(n.who ?? '') || n.who === undefined && !n.subj.some(s => !s.carried))), 2);
  const reach = t.clauses.slice(t.at, end + 1);
  const today = t.sheet.ctx.at.slice(0, 10);
  const day = t.sheet.found.filter(f => f.dim === 'when' && f.from >= c.from && f.to <= reach.at(-1)!.to).map(f => (f.dim === 'when' && !f.value.vague ? f.value.from : undefined)).filter((d): d is string => d !== undefined && d >= today).at(-1);
  const all = reach.map(r => lowText(t, r)).join(' ');
  const order = bidden(t, t.clauses[t.at + 1]);
  const served = /\bfor (which|that|this) purpose\b/.test(text) ? t.told.findLast(x => x.entry.kind === 'job')?.entry : undefined;
  if (served?.kind === 'job' && day && people) return [{ kind: 'hands', when: day, for: served.part ? `${served.do} the ${served.part}` : served.do } as Entry];
  if (!day || !booked && !order && !HELPS.test(all) && !/\bto \w+ the\b/.test(all)) return undefined;
  if (order) (t.clauses[t.at + 1] as Clause & { spoken?: boolean }).spoken = true;
  return [trim({ kind: 'hands', when: day, for: (reach.map(r => purpose(t, r)).find(Boolean) ?? order)?.replace(/ (with|for) (me|us)$/, '').replace(/(?<=\S )('?em|it|them|her)\b(?! \w+ (?:up|down)$)/, m => (t.memory.topic() ? `the ${t.memory.topic()!.name}` : m)).replace(/ (properly|safely|carefully|proper)$/, '') }) as Entry];
};

/** "said he'd come up Saturday to help": what was promised is a plan. */
const promised = (t: Telling, c: Clause): boolean => /\b'd (come|be|help|give|lend|bring|stop)\b/.test(lowText(t, c).replace(/(he|she|they) 'd/, "$1'd")) && /\b(said|says|promised|offered)( that)?( (he|she|they)'d\b.*)?$/.test(`${t.clauses[t.at - 1] ? lowText(t, t.clauses[t.at - 1]!) : ''}`) || /\b(said|promised|offered)\b.*\b(he|she|they)'d (come|be|help|give|lend|bring|stop)\b/.test(lowText(t, c));

/** "brother here Saturday. stand the saw up": what is to be done then, as an order without a day of its own. */
function bidden(t: Telling, n: Clause | undefined): string | undefined {
  const v = n?.items.find(i => i.t !== 'mark' && i.t !== 'cc');
  if (!n || v?.t !== 'verb' || v.form !== 'base' || v !== n.verb || n.neg || n.asks || n.join === 'but' || !n.obj.length || n.items.some(i => i.f?.dim === 'when') || /^(need|want|buy|get|order|check|remember|call|ring)$/.test(v.base ?? '')) return undefined;
  return `${v.base} ${saidWhole(t.sheet, v.to, stop(n, n.items.indexOf(v)))}`.trim();
}

/** "to help me flip the frame", "a hand with the carriage", "for the lift". */
export function purpose(t: Telling, c: Clause): string | undefined {
  const verbs = c.items.flatMap((i, k) => (i.t === 'verb' && k > 0 ? [k] : []));
  for (const k of verbs) {
    const v = c.items[k]!, asked = /^(help|helping|me|us|to)$/.test(c.items[k - 1]?.low ?? '') && /\b(help|helping|hand)\b/.test(c.items.slice(0, k).map(i => i.low).join(' ')) && /^(get|drop|turn|bring|take|load|work|have)$/.test(v.base ?? '') && c.items[k + 1]?.np !== undefined && !PERSONS.test(c.items[k + 1]!.np!.said); // "to help get the wheels off"
    if (!asked && /^(arrive|promise|say|help|come|give|lend|be|get|have|drop|stop|turn|bring|visit|free|work|take)$/.test(v.base ?? '') && !(v.base === 'turn' && c.items[k + 1]?.np) && !(v.base === 'get' && /\b(help|hand)\b/.test(c.items.slice(0, k).map(i => i.low).join(' ')) && c.items[k - 1]?.t === 'to') && !(v.base === 'take' && c.items[k - 1]?.t === 'to')) continue;
    if (v.base === 'make' && c.items[k + 1]?.low === 'it') continue; // "can make it on the 21st"
    const before = c.items.slice(0, k).map(i => i.low).join(' ');
    if (!/\b(help|hand|to|with|and|hands|muscle|will|can|for)\b|'ll\b/.test(before)) continue;
    const end = stop(c, k);
    const deed = `${v.base} ${saidWhole(t.sheet, v.to, end)}`.trim();
    return otherEnd(t, c, deed) ?? deed;
  }
  const w = c.items.findIndex((i, k) => /^(with|for|on)$/.test(i.low) && c.items[k + 1]?.np && !PERSONS.test(c.items[k + 1]!.np!.said) && !/^(day|hour|morning|afternoon|weekend|while|evening)$/.test(c.items[k + 1]!.np!.said));
  return w >= 0 ? said(t.sheet, c.items[w + 1]!.from, stop(c, w + 1)) : undefined;
}

/** "hold the other end while I do the pins": what the help is for is what is done meanwhile, else what the end is of. */
function otherEnd(t: Telling, c: Clause, deed: string): string | undefined {
  const m = /^(?:hold|take|steady) (?:on to )?(?:the )?(?:t'other|other|far|dumb|opposite) end(?: of (.+?))?(?: while\b.*)?$/.exec(deed);
  const n = t.clauses[t.clauses.indexOf(c) + 1];
  if (!m) return undefined;
  if (n?.sub === 'while' && n.verb?.base && n.obj.length) return `${n.verb.base} ${saidWhole(t.sheet, n.verb.to, stop(n, n.vi))}`.trim();
  return m[1];
}

function stop(c: Clause, k: number): number {
  const end = c.items.findIndex((i, n) => n > k && (i.f?.dim === 'when' || i.t === 'mark' || i.t === 'cc' && i.low !== 'and' || /^(at|around|about)$/.test(i.low) && c.items[n + 1]?.f));
  let to = end < 0 ? c.to : c.items[end]!.from;
  const before = c.items.findLast(i => i.to === to);
  if (before && /^(on|at|by|for)$/.test(before.low)) to = before.from;
  return to;
}

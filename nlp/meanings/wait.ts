import { isKnownPart } from '../dimensions/part/known.ts';
import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause, type Thing } from '../clauses/clause.ts';
import { isMachine, partLike } from '../clauses/name-kinds.ts';
import { trim } from './lib/fields.ts';
import { whenIn } from './lib/day.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

const WAITS = /\b(clamps? (stay|stays|on|off|come off)|leave|leaving|let|letting|cure|cures|curing|dry|dries|drying|set|sets|setting|harden|cool|cools|cooling|soak in|off[- ]?gas|sit|sits|flash|don't touch|can't touch|not (to be )?touch\w*|hands off|no touching|shan't touch|won't touch|stays? (clamped|in the clamps|put|where|masked|wrapped|warm|covered|as)|wait|waits|give|needs?|wants?|has to (sit|dry|cure|set|cool)|to (cure|dry|set|harden|cool|go off)|before (i|it|we)( can| )?(touch|handle|sand|load|recoat|run|use|move|go near))\b/;
/** "Nobody touches it", "nobody so much as breathes on it": an order to leave it alone. */
const NOBODY = /\b(nobody|no ?one|not a soul|don't (anyone|anybody|you)|nobody's)\b.*\b(touch\w*|breath\w*|lays? (a|so much as a) (finger|hand)|goes (near|anywhere near)|handl\w*|moves?|leans?|sits?|uses?|pok\w*)\b/;
/** "don't handle them till morning": by anyone. */
const DONT = /\b(don't|do not|never)( let| you| me| go| even| anyone| anybody)* (handle|handling|move|shift|pick|lift|lean|load|disturb|touch|stand|sit|breathe|poke|ride|drive|walk)\b.*\b(until|till|before|for)\b/;
/** "can't be handled until Sunday", "not to be touched before Monday". */
const CANT = /\b(can't|cannot|can not|mustn't|shouldn't|not to|won't) be (hard|dry|cured|set|cool|ready to|handled|touched|moved|loaded|sanded|run|started|used|leaned on|sat on|worked|driven|recoated|filled|fitted|pressured|pressurised|disturbed)\b.*\b(until|till|before|for)\b/;
/** Time that a thing is said to want for itself. */
const CURE_TIME = /\b(cure|curing|drying|setting|cooling|dry|set)(ing)? time\b/;
const REASON = /\b(cure|cures|curing|dry|dries|drying|set|sets|setting|harden\w*|cool\w*|alone|touch\w*|be|clamp\w*|sit|sits|stays?|glue|paint|epoxy|sealer|sealant|varnish|primer|silicone|goo|adhesive|filler|lacquer|putty|mastic|resin|undercoat|topcoat|jb|off|overnight|stand|rest|till|until|before|go off|handle|tack)\b/;

const STUFF = / (silicone|concrete|second coat|first coat|top coat|babbitt|bond|glue|epoxy|paint|primer|varnish|sealer|sealant|enamel|goo|filler|adhesive)$/;

/** Leave it alone until then: curing, drying, setting, cooling. */
export const wait: Meaning = t => {
  const c = t.clause, text = lowText(t);
  if (c.asks || c.sub && /^(if|unless)$/.test(c.sub) || c.reality === 'past plan' || c.who && /^(he|they|she|person|you)$/.test(c.who) && !c.subj.length && !/^hands off\b/.test(text)) return undefined;
  const label = c.verb?.base === 'say' && /\b(tin|can|label|packet|tube|bottle|sheet|instructions|book)\b/.test(text) && t.told.some(x => x.entry.kind === 'work' && /paint|prime|seal|glue|varnish|coat|undercoat|line|fill|patch|bed|caulk/.test(x.entry.action));
  const bareSpan = /^(and |so |now |just )?(leave|let|leaving|give) (it|them|that|her|him|the \w+)\b/.test(text) && t.sheet.found.some(f => (f.dim === 'span' || f.dim === 'when') && f.from >= t.clause.from && f.to <= t.clause.to);
  const warned = NOBODY.test(text) || CANT.test(text) || DONT.test(text);
  const next = t.clauses[t.at + 1], until0 = next && /^(before|until|till)$/.test(next.sub ?? '') && /^(leave|let|give|need|want|take)$/.test(c.verb?.base ?? '') ? ` before ${lowText(t, next)}` : '';
  if (!label && !warned && !CURE_TIME.test(text) && !WAITS.test(text) || !label && !REASON.test(text + until0) && !bareSpan && !warned) return undefined;
  const base = c.verb?.base ?? '';
  if (/^(need|want|have|get)$/.test(base) && c.obj.length && [...c.prt, ...c.rest.map(i => i.low)].some(p => /^(off|out|apart)$/.test(p))) return undefined; // "need to have the head off by Friday"
  if (!warned && !/^(leave|let|cure|dry|set|harden|cool|sit|touch|wait|give|need|want|stay|flash|be|have|go|stand|rest|keep|soak|off-gas|handle|get|take|say)$/.test(base) && c.pred !== 'be' && c.pred !== 'none') return undefined;
  if (base === 'set' && c.obj.length && !c.obj.some(o => o.carried) || base === 'dry' && c.verb!.form === 'past' && c.obj.length || base === 'leave' && c.verb!.form === 'past' && /soak/.test(text)) return undefined;
  if (/\b(out of stock|on order|arrive|deliver)/.test(text)) return undefined;
  const until = /\b(till|until|'til|before|by|to)\b/.test(text) || !dims(c.items, 'span').length ? whenIn(t, c) : undefined;
  const span = t.sheet.found.find(f => f.dim === 'span' && f.from >= c.from && f.to <= c.to && /^(hours|days|weeks)$/.test(f.value.unit));
  if (!until && !span) return undefined;
  const off = /^hands off\b/.test(text) || label;
  const objects = c.obj.filter(o => o.name !== DONT.exec(text)?.[3]); // "don't handle them" names no handle
  const things: Thing[] = off ? [] : (warned && onWhat(t, c) ? onWhat(t, c)! : objects.length && !(warned && !objects.some(o => partLike(t.sheet, o.name))) ? objects : c.subj.length ? c.subj : t.memory.lastGroup().slice(0, 1)).filter(s => !isMachine(t.sheet, s.name) && !/^(clamp|hand|glue|epoxy|paint|primer|varnish|sealer|sealant|enamel|can|tin|label|book|sheet|instructions|stuff|data sheet|packet|tube|bottle|coat|drie|set|cure)s?$/.test(s.name) && !(s.np && s.name === s.np.said && STUFF.test(` ${s.name}`)));
  const worked = off ? t.told.findLast(x => x.entry.kind === 'work' || x.entry.kind === 'fit')?.entry : undefined;
  const meant: readonly { name: string }[] = things.length ? things : worked && 'part' in worked && worked.part ? [{ name: worked.part }] : t.memory.lastGroup().slice(0, 1);
  const about = meant.map(s => ({ name: isKnownPart(t.sheet.ctx.parts, s.name) ? s.name : s.name.replace(STUFF, '') })); // "silicone on the sump" is of the sump
  if (!about.length) return undefined;
  if (until && !span || until && /\b(till|until)\b/.test(text)) return about.map(s => ({ kind: 'wait', part: s.name, until }) as Entry);
  return span?.dim === 'span' ? about.map(s => trim({ kind: 'wait', part: s.name, after: span.value.amount, unit: span.value.unit }) as Entry) : undefined;
};

/** "breathes on the column": what is to be left alone stands after the verb's preposition. */
function onWhat(t: Telling, c: Clause): Thing[] | undefined {
  const k = c.items.findIndex((i, n) => /^(on|near|against|with)$/.test(i.low) && c.items[n + 1]?.np && partLike(t.sheet, c.items[n + 1]!.np!.name));
  const np = c.items[k + 1]?.np;
  return k < 0 || !np ? undefined : [{ name: np.name, from: np.from, to: np.to, plural: false }];
}

/** "sealed the tank, two days to cure": the wait said in the same breath as the work. */
export const curing: Meaning = t => {
  const c = t.clause;
  const f = t.sheet.found.find(x => x.dim === 'span' && x.from >= c.from && x.to <= c.to && /^(hours|days|weeks)$/.test(x.value.unit));
  if (f?.dim !== 'span' || c.neg || c.reality !== 'deed' || !/^to (cure|dry|set|harden|go off|cool|air dry|gas off)\b/.test(t.sheet.tokens.slice(f.to, f.to + 3).map(x => x.low).join(' '))) return undefined;
  const parts = t.told.flatMap(x => (x.clause === c && x.entry.kind === 'work' ? [x.entry.part] : [])).filter((p): p is string => p !== undefined);
  return parts.length ? [...new Set(parts)].map(part => ({ kind: 'wait', part, after: f.value.amount, unit: f.value.unit }) as Entry) : undefined;
};

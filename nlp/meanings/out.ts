import { isKnownPart } from '../dimensions/part/known.ts';
import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause } from '../clauses/clause.ts';
import type { Item } from '../clauses/items.ts';
import { bare, isMachine, isPlaceNoun, isSource, isStuff, partLike } from '../clauses/things.ts';
import { type Phrase } from '../dimensions/part/phrase.ts';
import { textOf } from '../dimensions/part/text-of.ts';
import { EVERYDAY } from '../words/everyday.ts';
import { isTradeWord, nounClasses } from '../words/nouns.ts';
import { PERSONS } from '../words/persons.ts';
import { TRADE_ENDING } from '../words/sources.ts';
import { isClass, verbForms } from '../words/verbs.ts';
import { dayIn } from './lib/day.ts';
import { trim } from './lib/fields.ts';
import { moneyClause, sumsIn } from './lib/money.ts';
import { spanForward } from './lib/reach.ts';
import { bareSeller } from './lib/sellers.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

/** A part that has left the shop for work: where, what for, until when. */
export const out: Meaning = t => {
  const c = t.clause;
  if (/\bon (back ?)?order\b/.test(lowText(t))) return undefined; // "on order with the spray depot"
  if (c.neg || c.asks || c.reality !== 'deed' || c.sub && /^(if|unless|when|before|that)$/.test(c.sub) && !(c.sub === 'until')) return undefined;
  const kept = keptBy(t, c);
  if (kept) return kept;
  const base = c.verb?.base ?? '';
  if (base === 'go' && (c.verb!.form === 'ing' || c.verb!.form === 's') || dims(c.items, 'measure').length && !/^(send|ship|take|post)$/.test(base)) return undefined; // "is going to the shop on Monday" is yet to be
  const bareSent = c.verb !== undefined && /^(past|part)$/.test(c.verb.form ?? '') && /^(send|ship|post|mail|take|drop|give|courier|deliver|cart|hand)$/.test(base) && !c.who && !c.obj.length && c.subj.length > 0; // "blade sent to the saw doctor"
  const passive = c.passive || bareSent || c.verb?.base === 'leave' && c.subj.length > 0 && !c.who || c.pred === 'be' || c.pred === 'none' || /^(go|come)$/.test(base);
  const things = (passive ? c.subj : c.obj).filter(s => s.name && !isMachine(t.sheet, s.name) && partLike(t.sheet, s.name));
  const n = t.clauses[t.at + 1];
  if (moneyClause(t, c) || c.pred === 'none' && dims(c.items, 'number').length || n?.join === ':' && moneyClause(t, n)) return undefined;
  if (/\bon (back )?order\b/.test(lowText(t))) return undefined;
  if (!things.length || c.verb?.form === 'base' && !/^(put|set)$/.test(base)) return undefined;
  const place = target(t, c);
  const sent = /^(send|ship|post|mail|freight|courier)$/.test(base) && (place !== undefined || /\b(off|out|away|in)\b/.test(c.prt.join(' ')));
  const taken = /^(take|drop|run|drive|bring|hand|carry|deliver|leave|give|haul|go|be|cart|tow|trailer|lug|chuck|stick|pop|put)$/.test(base) && place !== undefined && (!/^(chuck|stick|pop|put)$/.test(base) || POSTED.test(lowText(t)))
    || /^(take|run|drive|carry|haul|cart|tow|lug)$/.test(base) && !c.passive && /\b(in|off|away|over|down|up)\b/.test(c.prt.join(' ')) && purpose(c) !== undefined && !/\bto (get|have) (it|them) (on|off|out|in)\b/.test(lowText(t));
  const away = !c.verb && (c.pred === 'be' || c.pred === 'none') && place !== undefined && /\b(at|with|over at|away at|off at|in at|out at|out|down at|up at|gone to|still at|over to|away to|off to|down to|out to|up to|in the (post|mail) to|in)\b/.test(lowText(t)) && !/\bback from\b/.test(lowText(t));
  const bare = !c.verb && c.pred === 'none' && place !== undefined && c.items.findIndex(i => i.low === 'to') === c.items.findIndex(i => i.from >= (c.subj.at(-1)?.to ?? 0));
  const unnamed = !c.verb && (c.pred === 'be' || c.pred === 'none') && /\b(away|gone|out|off) (for|to be|being|getting|at the)\b/.test(lowText(t)) && purpose(c) !== undefined; // "the crank's away for grinding"
  if (!sent && !taken && !away && !bare && !unnamed) return undefined;
  const end = spanForward(t, n => tells(t, n), 3);
  const reach = t.clauses.slice(t.at, end + 1);
  const where = place ?? bareSeller(t, reach.map((r, n) => (n === 0 ? { ...r, items: r.items.slice(Math.max(r.vi, 0) + 1) } : r)));
  const until = reach.map((r, n) => (n === 0 && dated(t, r) ? undefined : dayIn(t, r, true))).find(Boolean);
  const act = reach.map(r => purpose(r)).find(Boolean);
  const asked = reach.slice(1).find(r => moneyClause(t, r));
  const price = asked && sumsIn(t, asked.from, asked.to, false).price;
  return [...things.map(s => trim({ kind: 'out', part: s.name, where, until, do: act }) as Entry), ...(price !== undefined ? [trim({ kind: 'quote', item: things[0]!.name, source: place, price }) as Entry] : [])];
};

/** "the welder has both brackets since Tuesday", "the foundry's had the casting a fortnight": who works for the shop has it. */
function keptBy(t: Telling, c: Clause): Entry[] | undefined {
  const np = c.items.find(i => i.t !== 'adv' && i.t !== 'mark' && i.t !== 'cc')?.np;
  if (c.pred !== 'have' || c.verb || !np || np.stands || isPart(t, np.said) || !(isSource(np) || TRADE_ENDING.test(np.said)) || !c.obj.length || !/\b(since|for (a|the|two|three|four|five|six) (day|week|month|fortnight|year)s?|a (week|fortnight|month)|still|at the (moment|minute))\b/.test(lowText(t))) return undefined;
  const parts = c.obj.filter(o => o.name && partLike(t.sheet, o.name) && !isMachine(t.sheet, o.name) && !isStuff(o.name) && !o.np?.quant?.match(/^(no|some|any|several)$/));
  const until = t.clauses.slice(t.at + 1, spanForward(t, n => tells(t, n), 3) + 1).map(r => dayIn(t, r, true)).find(Boolean);
  return parts.length ? parts.map(p => trim({ kind: 'out', part: p.name, where: np.said, until }) as Entry) : undefined;
}

/** "left it at the machine shop on Monday": the day it went, not the day it comes back. */
const dated = (t: Telling, c: Clause): boolean => /^(past|part)$/.test(c.verb?.form ?? '') && !/\b(till|until|back|ready|by|due|for|promised|done|expect\w*|says?|said|reckons?|in (a|\w+) (days?|weeks?|months?))\b/.test(lowText(t, c)) && dims(c.items, 'when').length > 0;

/** "…until the king bolt's back from the blacksmith": what is awaited from there is out. */
export function awaited(t: Telling, c: Clause): Entry[] {
  const k = c.items.findIndex((i, n) => i.low === 'back' && c.items[n + 1]?.low === 'from' && c.items[n + 2]?.np);
  const part = c.subj[0]?.name;
  if (k < 0 || !part) return [];
  const place = target(t, { ...c, items: c.items.map(i => (i.low === 'from' ? { ...i, low: 'to' } : i)) });
  if (!place) return [];
  const after = t.clauses[t.clauses.indexOf(c) + 1];
  const until = dayIn(t, c, true) ?? (after && tells(t, after) ? dayIn(t, after, true) : undefined);
  if (after && tells(t, after)) (after as Clause & { spoken?: boolean }).spoken = true;
  return [trim({ kind: 'out', part, where: place, until }) as Entry];
}

/** The shop or person it went to: a source, a person or a trade after "to", "at", "with", "over to". */
function target(t: Telling, c: Clause): string | undefined {
  for (const [k, i] of c.items.entries()) {
    const np = c.items[k + 1]?.np;
    if (i.low === 'for' && c.verb?.base !== 'leave') continue;
    if (!/^(to|at|with|by|into|in|for)$/.test(i.low) || !np || np.stands) continue;
    const said = np.said;
    const treated = purpose(c);
    const trade = isSource(np) || PERSONS.test(said) || /(er|or|smith|wright|ist|works|ician)s?$/.test(said) && !isPart(t, said) && TRADE_ENDING.test(said) || /^(town|machining|the shop|works|vo-tech|college)$/.test(said) || proper(t, np) && /^(to|with)$/.test(i.low) || (treated !== undefined && SENDS.test(c.verb?.base ?? 'be') || c.items[k - 1]?.np !== undefined && /^(post|mail)$/.test(c.items[k - 1]!.np!.said)) && /^(to|with|at)$/.test(i.low) && (!isPart(t, said) || /^(post|mail)$/.test(c.items[k - 1]?.np?.said ?? '')) && !isPlaceNoun(np) && !nounClasses(said).has('machine') && !nounClasses(said).has('tool') && !nounClasses(said.split(' ').at(-1)!).has('machine') && partish(said);
    if (np.quant === 'no' || isStuff(said) || /^(house|home|barn|place|garage|counter|yard|market|show|fair|rally|auction|sale)$/.test(said) && treated === undefined) continue;
    if (/\b(scrap|dump|tip|skip|bin|landfill)\b/.test(said)) continue;
    const handed = i.low === 'to' && /^(give|send|take|hand|post|pass)$/.test(c.verb?.base ?? '') && c.items[k + 2]?.t === 'to' && c.items[k + 3]?.t === 'verb' && isClass(c.items[k + 3]!.base!, 'work') && !isPart(t, said) && (!isPlaceNoun(np) || isSource(np)); // "gave the pump to Dave to rebuild"
    if (!trade && !handed || (i.low === 'in' || i.low === 'by') && !/(shop|works|yard|foundry|town|city|'s)$/.test(said) || i.low === 'in' && (/^(town|city)$/.test(said) && treated === undefined || !c.verb && said === 'shop')) continue;
    let to = k + 2;
    while (c.items[to] && /^(in|at|down|up|across|over|on|of|from)$/.test(c.items[to]!.low) && c.items[to + 1]?.np) to += 2;
    const text = textOf(t.sheet, c.items[k + 1]!.from, c.items[to - 1]!.to);
    return /^my\b/i.test(text) ? text : bare(text);
  }
  return undefined;
}
const isPart = (t: Telling, said: string): boolean => isKnownPart(t.sheet.ctx.parts, said) || !isSourceName(said) && [...nounClasses(said), ...nounClasses(said.split(' ').at(-1)!)].some(k => k === 'part' || k === 'fastener' || k === 'machine' || k === 'tool');
const isSourceName = (said: string): boolean => nounClasses(said).has('source') || nounClasses(said.split(' ').at(-1)!).has('source');
/** A name in capitals that does not open the note: "to Dave", "with old Tom". */
const proper = (t: Telling, np: Phrase): boolean => { const k = t.sheet.tokens.slice(np.from, np.to).findIndex(x => /^[A-Z][a-z]+$/.test(x.text)); return np.count === undefined && k >= 0 && np.from + k > 0 && !isTradeWord(t.sheet.tokens[np.from + k]!.low); };
const SENDS = /^(send|ship|post|mail|take|drop|give|leave|run|drive|carry|haul|cart|deliver|hand|bring|courier|freight|be|go)$/;
const POSTED = /\b(in|into) the (post|mail)\b/;
/** A plain name of one or two words, not a time or a figure of speech. */
const partish = (said: string): boolean => !/\d/.test(said) && said.split(' ').length <= 4 && !EVERYDAY.has(said);

/** "to be rewound", "to have the ends turned", "for rebabbitting", "he's rebuilding it". */
function purpose(c: Clause): string | undefined {
  for (const [k, i] of c.items.entries()) {
    if (i.t === 'to' && c.items[k + 1]?.low === 'be' && c.items[k + 2]?.base && c.items[k + 3]?.low === 'out') return `${c.items[k + 2]!.base} out`;
    if (i.t === 'to' && c.items[k + 1]?.low === 'be' && c.items[k + 2]?.np && c.items[k + 3]?.t === 'verb') return c.items[k + 3]!.base; // "to be pressure tested"
    if (i.t === 'to' && c.items[k + 1]?.low === 'be' && c.items[k + 2]) return c.items[k + 2]!.base ?? verbForms(c.items[k + 2]!.np?.said ?? '')[0]?.base;
    if (i.t === 'to' && /^(have|get)$/.test(c.items[k + 1]?.base ?? c.items[k + 1]?.low ?? '')) { const v = c.items.slice(k + 2).find(x => x.t === 'verb'); if (v && !/^(put|let|go|come|be)$/.test(v.base ?? '')) return v.base; }
    if (i.t === 'to' && k > 1 && c.items[k - 1]?.np && c.items[k - 2]?.t === 'to' && c.items[k + 1]?.t === 'verb' && isClass(c.items[k + 1]!.base!, 'work')) return c.items[k + 1]!.base; // "to the shop to skim"
    if ((i.low === 'for' || i.low === 'being' || i.low === 'getting') && ((c.items[k + 1]?.t === 'verb') || c.items[k + 1]?.np)) {
      const x = c.items[k + 1]!;
      if (x.t === 'verb' && (i.low !== 'for' || x.form === 'ing' || isClass(x.base!, 'work'))) return x.base;
      const w = x.np ? (i.low === 'for' ? undefined : verbForms(x.np.said).find(f => f.form === 'part' && isClass(f.base, 'work'))?.base) ?? stemAct(x) : undefined; // "getting ground"
      if (w) return w;
    }
  }
  const v = c.verb;
  return (v?.form === 'ing' || c.reality === 'plan' && v?.form === 'base') && /^(he|they|she|person)$/.test(c.who ?? '') && isClass(v.base!, 'work') ? v.base : undefined;
}
const ACTS: Record<string, string> = { rewind: 'rewind', regrind: 'regrind', rebore: 'rebore', rebuild: 'rebuild', balancing: 'balance', plating: 'plate', machining: 'machine', welding: 'weld', blasting: 'blast', coating: 'coat', lining: 'line', relining: 'reline', turning: 'turn', sharpening: 'sharpen', recore: 'recore', recoring: 'recore', boring: 'bore', grinding: 'grind', repair: 'repair', repairs: 'repair', testing: 'test', chroming: 'chrome', galvanising: 'galvanise', skim: 'skim', skimming: 'skim', 'new core': 'recore', rewinding: 'rewind', sleeving: 'sleeve', pressing: 'press', recutting: 'recut', upholstering: 'upholster', hardening: 'harden', overhaul: 'overhaul', cleaning: 'clean', balance: 'balance', remetalling: 'remetal' };
const stemAct = (x: Item): string | undefined => ACTS[x.np!.said] ?? ACTS[x.np!.said.split(' ')[0]!] ?? bareAct(x.np!.said.split(' ').at(-1)!);
/** "for a reline", "for rebushing": the deed named by its verb. */
const bareAct = (w: string): string | undefined => { const v = verbForms(w).find(f => f.form === 'base' || f.form === 'ing')?.base ?? (/^re[a-z]{3,}$/.test(w) ? verbForms(w.slice(2)).find(f => f.form === 'base') && w : undefined); return v && (isClass(v, 'work') || w.startsWith('re')) && !nounClasses(w).has('part') ? v : undefined; };

function tells(t: Telling, c: Clause): boolean {
  if (c.asks) return false;
  const text = lowText(t, c);
  if (/^(and )?(he|she|they|the man) (swears|says|said|reckons|promised|promises|figures|thinks|tells me|told me|swore)( that)?$/.test(text)) return true;
  if (c.reality === 'plan' && /^(he|she|they|person)$/.test(c.who ?? '') && c.verb && isClass(c.verb.base!, 'work') && (!c.obj.length || c.obj.some(o => o.carried))) return true;
  if (c.pred === 'none' && !c.subj.some(s => !s.carried) && moneyClause(t, c) && c.items.every(i => !i.np)) return true;
  if (/\b(he|they|she|man|shop) (says?|said|reckons?|promised|figures?)\b|\b(says|said|saying|reckons|promised)\b/.test(text) && dayIn(t, c, true) !== undefined && !c.subj.some(s => !s.carried && partLike(t.sheet, s.name))) return true;
  if (c.pred === 'none' && !c.subj.some(s => !s.carried) && dayIn(t, c, true) !== undefined && (/\bback\b/.test(text) || c.items.filter(i => i.t !== 'mark').every(i => i.f || i.t === 'adv' || i.t === 'prep' || i.t === 'cc' || i.t === 'det'))) return true;
  return /^(and |but |so |is (?=expected|due|promised|back|ready)|he |he's |hes |hell |he'll |says |she |they |it |which |should |supposed |says? |said |back |due |ready |for |to |will |'ll |i get |i'll |promised |reckons? |call |expected |fingers |the man |be )/.test(`${text} `) && (dayIn(t, c, true) !== undefined || purpose(c) !== undefined || /\b(back|ready|says|said)\b/.test(text)) && !/\b(arrived|came)\b/.test(text) && !(/^(i|we)$/.test(c.who ?? '') && !/get (it|them) back|have (it|them) back/.test(text)) && !c.subj.some(s => !s.carried && !/^(they|he|she|it|person)$/.test(c.who ?? ''));
}

import type { Entry } from '../../domain/model/entry.ts';
import { dims, type Clause, type Thing } from '../clauses/clause.ts';
import type { Phrase } from '../dimensions/part/phrase.ts';
import { isMachine, isSource } from '../clauses/name-kinds.ts';
import { sourceIn } from './lib/fields.ts';
import { headingOf, underHeading } from './lib/heading.ts';
import { sumsIn } from './lib/money.ts';
import { spanForward } from './lib/reach.ts';
import { nounClasses } from '../words/nouns.ts';
import { PERSONS } from '../words/persons.ts';
import { isClass } from '../words/verbs.ts';
import { EVERYDAY } from '../words/everyday.ts';
import { lowText, type Meaning } from './telling.ts';

/** An ordered thing came, or a part is back from outside work. */
export const arrival: Meaning = t => {
  const c = t.clause, text = lowText(t);
  if (c.neg || c.asks || c.reality !== 'deed' || c.sub && /^(if|unless|until|till|before|that|when|so)$/.test(c.sub)) return undefined;
  const base = c.verb?.base ?? '';
  if (base === 'come' && c.verb!.form === 'ing' && /\b(is|are|'s|'re) (\S+ )?coming\b/.test(text)) return undefined; // not here yet
  if (/^(it|they) came in$/.test(text) && t.told.at(-1)?.rule === 'stow' && !c.join) return undefined; // "in the box it came in"
  const listed = underHeading(t);
  if (CAME.test(headingOf(t) ?? '')) return [];
  if (listed && CAME.test(listed.says)) return listed.things.map(s => ({ kind: 'arrival', item: s.name }) as Entry);
  if (/\bturned up (nicely |lovely |new )*(from|out of|in|on) .*\b(bar|stock|stick|billet|rod|steel|brass|bronze|plate|round|lathe|ali|aluminium|cast|iron)\b/.test(text)) return undefined; // turned on the lathe
  const future = dims(c.items, 'when').some(f => (f.value.from ?? '') > t.sheet.ctx.at.slice(0, 10));
  if (future) return undefined;
  if (c.verb && (c.verb.form === 's' || c.verb.form === 'base' && !(base === 'come' && /\bcome (back|home)\b/.test(text) && !dims(c.items, 'when').length && c.subj.length && !c.who))) return undefined; // "bands come home": "have" is easily swallowed
  if (base === 'come' && c.items.some((i, k) => i.f && /^(measure|number)$/.test(i.f.dim) && /^(at|to)$/.test(c.items[k - 1]?.low ?? '')) || /^(come|go)$/.test(base) && dims(c.items, 'measure').some(m => m.value.unit === 'turns') || c.pred === 'none' && dims(c.items, 'measure').some(m => m.value.unit === 'turns')) return undefined; // "came in at 1.9365", "22 turns it goes back"
  if (base === 'come' && /\b(came|come|comes|coming) (\w+ )?(un\w+ed|undone|unstuck|unglued|free|untied|to bits|to pieces|open)\b/.test(text)) return undefined; // how it is, not where
  const came = base === 'arrive' || base === 'come' && !/^(back )?(off|out|apart|loose|undone|adrift|away|on)$/.test(c.prt.join(' ')) && comesHere(text) || base === 'return' && !c.passive && c.subj.length > 0 && !/\breturn\w* to\b/.test(text) || base === 'roll' && /\brolled (in|up)\b/.test(text) && !c.who && c.subj.length > 0 || /^(turn|show)$/.test(base) && (c.prt.includes('up') || /\b(turned|showed|shown) up\b/.test(text)) || base === 'land' && /^(past|part)$/.test(c.verb!.form ?? '') && !c.obj.length && !c.rest.some(i => i.t === 'prep' && i.low !== 'at')
    || base === 'deliver' && (c.passive || c.subj.length > 0) || /\b(got|came|come) here\b/.test(text);
  const back = (c.pred === 'be' || c.pred === 'none') && (/\b(back|home) from\b/.test(text) || offSomeone(c) || /\bback (already|early|today|now|at last|finally)\b|^(\S+ ){1,5}('s |is |are |was )?(finally |now |just )?(back|home|here)( (at last|already|now|today|finally|early|late|on time|safe|((only |just )?(a|one|two|three|four|five|six|few|couple of|\d+) )?(day|days|week|weeks) (early|late)))?$/.test(text) && !/\bback (on|in|together|up|down)\b|\bthere\b/.test(text) || /\b(is|are|'s) (finally |now )?(here|in the post box|on the doorstep)\b|\b(is|are|was|were|'s) (sitting |waiting |lying )?(on|in) the (doorstep|door step|mat|mailbox|mail box|letterbox|letter box|post box)\b|\b(sitting|waiting) (for me )?on the (porch|step)\b/.test(text) || /^(home|here)$/.test(c.rest.find(i => i.t !== 'adv' && i.t !== 'mark')?.low ?? c.items.findLast(i => i.t !== 'mark')?.low ?? '') && c.subj.length > 0);
  const homeAgain = (c.pred === 'be' || c.pred === 'none') && home(c);
  const fetched = /^(get|pick|collect|fetch|bring|have)$/.test(base) && c.verb?.form !== 'base' && (/\bback\b/.test(c.prt.join(' ')) && /\b(back from|from the|from my)\b/.test(text) || /^(bring|fetch|collect|carry|get)$/.test(base) && /\bhome\b/.test(text) && (sourced(t) || waiting(t)) || base === 'get' && /\bgot .{1,30} back\b/.test(text) && !/back (on|in|together|up|out)/.test(text)
    || /^(pick|collect|fetch)$/.test(base) && (c.prt.includes('up') || base !== 'pick') && waiting(t));
  const inHand = c.pred === 'have' && (!c.verb || c.verb.base === 'get') && /^(i|we)$/.test(c.who ?? 'i') && c.obj.length > 0 && /\bback( now| again| at last| finally| today| already)*$/.test(text) && !/\bmy back\b|\b(on|in) (the|my) back\b/.test(text); // "I have the camshaft back now"
  const posted = base === 'receive' && c.obj.length > 0 || /^(get|have)$/.test(base) && c.obj.length > 0 && /\b(in|with|by) (the|today 's|this morning 's) (post|mail)\b|\bby (post|courier|mail)\b|\bdelivered\b/.test(text) || /^(bring|deliver|drop|leave|hand)$/.test(base) && CARRIER.test(c.items.find(i => i.np)?.np?.said ?? '') && brought(c) !== undefined || /^(bring|deliver|drop|leave)$/.test(base) && c.who === 'person' && /\b(postman|postie|courier|mailman|mail lady|mail carrier|driver|delivery man|carrier|van)\b/.test(text) && c.obj.length > 0;
  if (!came && !back && !homeAgain && !fetched && !posted && !inHand || /\b(almost|nearly)\b/.test(text)) return undefined;
  if (back && /\b(properly|fully|right|hard|well|all the way) home\b/.test(text)) return undefined; // "all four screws are properly home"
  if (back && /\bat home\b/.test(text) || back && /\b(in|over|up|down|round|around|out|from) here\b/.test(text)) return undefined;
  const boxed = posted && /^(box|boxes|parcel|parcels|package|packages|delivery)$/.test(brought(c)?.name ?? '') ? t.clauses[t.at + 1] : undefined; // "the courier dropped off a box: the seals"
  if (boxed?.join === ':' && boxed.pred === 'none' && boxed.subj.length) { spanForward(t, n => n === boxed, 1); return boxed.subj.filter(s => s.np?.quant !== 'no').map(s => ({ kind: 'arrival', item: s.name }) as Entry); }
  const things = (fetched || posted || inHand ? c.obj.length || !posted ? c.obj : [brought(c)].filter(x => x !== undefined).map(np => ({ name: np.name, from: np.from, to: np.to, np, plural: false })) as Thing[] : c.subj).filter(s => s.name && !FAULT.test(s.name) && !(/^(package|parcel|box|post|mail|delivery|order|quote|estimate|bill|invoice|gate)s?$/.test(s.name) && !s.carried) && !(EVERYDAY.has(s.name) && !s.carried) && !(s.name === 'spring' && t.sheet.tokens[s.from]?.low === 'spring') && !(isMachine(t.sheet, s.name) && !s.carried));
  if (came && c.who && /^(i|we|he|she|person)$/.test(c.who)) return undefined;
  if (!things.length) return undefined;
  for (const x of t.told.filter(y => y.entry.kind === 'order' && things.some(s => s.name === (y.entry as { item: string }).item))) t.told.splice(t.told.indexOf(x), 1); // "ordered Tuesday and here already"
  const from = sourceIn(t.sheet, c.items)?.source, sums = from && (back || fetched) ? sumsIn(t, c.from, c.to, false) : undefined;
  return [...things.map(s => ({ kind: 'arrival', item: expectedName(t, s.name) }) as Entry), ...(sums?.price !== undefined ? [{ kind: 'bought', item: things[0]!.name, source: from, price: sums.price } as Entry] : [])];
};

/** "back a day late", "home, five weeks late": it is back, with no more than when, whence and how late beside it. */
function home(c: Clause): boolean {
  const rest = c.pred === 'be' ? c.items.slice(c.vi + 1) : c.items.slice(c.items.findIndex(i => i.from >= (c.subj.at(-1)?.to ?? 0)));
  const own = rest.filter(i => i.t !== 'adv' && i.t !== 'mark' || /^(home|here)$/.test(i.low));
  if (!/^(back|home|here)$/.test(own[0]?.low ?? '') || own.length > 1 && own[0]!.low === 'here' && own[1]!.t !== 'dim' && own[1]!.t !== 'det' && !own.some(i => i.low === 'late')) return false;
  const after = own.slice(1), late = after.some(i => /^(late|early|finally)$/.test(i.low)) || rest.some(i => /^(late|early)$/.test(i.low));
  return after.every((i, k) => i.f?.dim === 'when' || i.f?.dim === 'span' && late || /^(late|early|from|mere|a)$/.test(i.low) || i.np && (after[k - 1]?.low === 'from' || late) || i.t === 'adj' && late || i.t === 'det');
}

/** Headings over a list of what came. */
const CAME = /^(delivery|deliveries|delivered|arrived|came|came in|received|turned up|in the (post|mail)|(today's )?(post|mail|parcels?))$/;

/** Who brings parcels. */
const CARRIER = /^(?:the )?(?:ups|fedex|fed ex|dhl|usps|royal mail|parcel force|parcelforce|courier|carrier|postman|postie|mailman|mail|post|mail lady|postlady|mail carrier|delivery (?:man|driver|van|guy|lad|fella)|parcel (?:man|van)|van|van man|lorry|truck|driver|bus driver|bus|rural mail)$/;
/** "dropped off a box": what was brought, also where the particle was taken for a preposition. */
const brought = (c: Clause): Phrase | undefined => { const k = c.items.findIndex((i, n) => n > c.vi && !/^(off|over|round|in)$/.test(i.low)); return k > 0 && !c.items[k]!.np?.stands ? c.items[k]!.np : undefined; };
/** "back off Kev", "home off the welder": from a person. */
const offSomeone = (c: Clause): boolean => c.items.some((i, k) => /^(back|home)$/.test(i.low) && c.items[k + 1]?.low === 'off' && c.items[k + 2]?.np !== undefined && (isSource(c.items[k + 2]!.np!) || PERSONS.test(c.items[k + 2]!.np!.said) || nounClasses(c.items[k + 2]!.np!.said).size === 0 && c.items[k + 2]!.np!.quant === undefined && c.items[k + 2]!.from === c.items[k + 2]!.np!.nameFrom));

/** What comes and comes back without being a thing. */
const FAULT = /\b(company|visitor|guest|dinner|bill|smoke|knock|noise|leak|squeal|squeak|rattle|vibration|problem|fault|misfire|smell|drip|pain|rain|frost|snow|power|spark|play|slack|wobble|tick|rust|feeling|light|water|steam|humidity|temperature|temp|weather|heat|cold|dust|draught|draft)s?$/;

const comesHere = (text: string): boolean => /\b(came|come) (home|back|in|over|across|up|down) (on|by|in|with) (the |a |today's |last night's )?(boat|ferry|bus|train|post|mail|lorry|truck|van|carrier|courier|trailer)\b/.test(text) || !/\b(came|come) home (with|to|on|nicely|sweet|solid)\b/.test(text) && !/\b(came|come|comes|coming) (?:straight |right |clean )?(?:back )?(like|along|in handy|in useful|right|wrapped|off|out|apart|loose|up|down|with|undone|on|over|to|clean|as|from under|unstuck|adrift|away|free|round|back (on|off))\b/.test(text) || /\b(came|come) (in|with) (the|today's) (post|mail|morning)\b|\bcame back from\b|\bcame in (today|yesterday|this)/.test(text);

/** Something fetched that was out or on order: by the words of the note or of the ones before. */
const sourced = (t: Parameters<Meaning>[0]): boolean => sourceIn(t.sheet, t.clause.items) !== undefined;
const waiting = (t: Parameters<Meaning>[0]): boolean => /^(he|they|she)$/.test(t.clauses[t.at + 1]?.who ?? '') && t.clauses[t.at + 1]?.verb?.form === 'past' || t.prior.concat(t.told.map(x => x.entry)).some(e => e.kind === 'out' || e.kind === 'order') || /^(past|part)$/.test(t.clauses[t.at + 1]?.verb?.form ?? '') && t.clauses[t.at + 1]!.passive && t.clauses[t.at + 1]!.carriedSubj === true && isClass(t.clauses[t.at + 1]!.verb!.base!, 'work') || /\b(ready|done|finished|from the)\b/.test(t.clauses.slice(Math.max(0, t.at - 2), t.at + 1).map(x => lowText(t, x)).join(' '));

/** "it came": named as it was ordered. */
const expectedName = (_t: Parameters<Meaning>[0], name: string): string => name;

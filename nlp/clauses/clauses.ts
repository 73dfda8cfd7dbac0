import { sentences } from '../text/sentences.ts';
import type { Sheet } from '../types.ts';
import type { Clause, Thing } from './clause.ts';
import { frame } from './frame.ts';
import { headingOf, namedBefore, underHeading } from './headings.ts';
import { itemsOf } from './items.ts';
import type { Memory } from './memory.ts';
import { splitClauses } from './split.ts';
import { NAMED } from '../words/quantities.ts';
import { isClass } from '../words/verbs.ts';
import { isPlural, isStuff, partLike } from './name-kinds.ts';

/** A clause with the things known when it was said. */
export type Placed = Clause & { memory: Memory; sentence: number };

/** All clauses of a note outside the stretches already taken (questions, the name of the machine), in order. */
export function clausesOf(sheet: Sheet, taken: readonly [number, number][], memory: Memory): Placed[] {
  const out: Placed[] = [];
  sentences(sheet.tokens, sheet.text).forEach((s, sentence) => {
    let before: Clause | undefined, heading: Thing | undefined;
    const pieces: Thing[] = [];
    for (const [from, to] of outside(s.from, s.to, taken)) {
      for (const cut of splitClauses(itemsOf(sheet, from, to), sheet.begins)) {
        const c = frame(sheet, cut, memory, before);
        heading = headingOf(sheet, before, cut) ?? heading;
        if (heading) { underHeading(sheet, c, heading); namedBefore(c, pieces); pieces.push(...c.subj.filter(t => t.np && !t.carried && t.name !== t.np.name)); }
        out.push({ ...c, memory: memory.copy(), sentence });
        suppose(sheet, out, sentence);
        memory.note(spokenOf(sheet, c, memory), c.obj.map(ofPart).map(o => o.name));
        memory.mention(c.items.flatMap(i => (i.np && !i.np.stands && !/^(rest|others?|remaining)$/.test(i.np.said) && partLike(sheet, i.np.name) && !NAMED.test(i.np.name) && !/\b(spots?|marks?|cracks?|holes?|chips?|grooves?|scores?|dents?)$/.test(i.np.name) && !/^(as|like|than)$/.test(sheet.tokens[i.from - 1]?.low ?? '') ? [{ name: i.np.name, from: i.from, to: i.to, np: i.np, plural: isPlural(i.np.name) }] : [])));
        before = c;
      }
      shareObjects(out, sentence);
      before = undefined;
    }
  });
  return out;
}

/** What a clause makes the things to speak of next: its object before a subject that was only carried, but what a part merely meets ("it clears the frame") does not take its place. */
function spokenOf(sheet: Sheet, c: Clause, memory: Memory): Thing[] {
  const meets = c.pred === 'verb' && c.subj.length > 0 && c.obj.length > 0 && /^(it|she|they|he|that)$/.test(c.who ?? '') && MEETS.test(c.verb?.base ?? '');
  const aside = c.pred === 'none' && c.join === ',' && c.items.every(i => i.np || i.t === 'adv' || i.t === 'mark' || i.f?.dim === 'when') && isStuff(c.subj[0]?.name ?? '');
  const [whole, own] = c.pred === 'none' ? c.items : [];
  if (whole?.np && !whole.np.stands && whole.np.count === undefined && own?.np?.count !== undefined && partLike(sheet, whole.np.name)) return [{ name: whole.np.name, from: whole.from, to: whole.to, np: whole.np, plural: isPlural(whole.np.name) }]; // "drive chain 54 links"
  const things = c.about ?? (meets ? c.subj : aside ? [] : [...c.subj.filter(x => !x.carried || !c.obj.length), ...c.obj]);
  return things.map(ofPart).map(x => ({ ...x, name: x.name.replace(/ (cracks?|rust|dirt|holes?|leaks?)$/, '') }))
    .filter(x => partLike(sheet, x.name) && !FLAW.test(x.name) && !NAMED.test(x.name) && (!isStuff(x.name) || /^(need|want|buy|get|order|mix|pay|pick|find)$/.test(c.verb?.base ?? (memory.topic() ? '' : 'need'))));
}
/** What is wrong with a part is not what is spoken of next. */
const FLAW = /^((hairline|bad|big|small|long|deep|slight|nasty) )?(cracks?|leaks?|drips?|tears?|splits?|bends?|dents?|burrs?|kinks?|chips?|holes?|pits|grooves?|scores?|ridges?|gouges?|nicks?|wear|rust|pitting|scoring|play|slop)$/;
const MEETS = /^(clear|foul|hit|touch|meet|miss|match|fit|suit|reach|rub|catch|line|seat|mate|mesh|track|follow|need)$/;

/** "second ring gap 0.90 mm, scrap": what has the quantity is what is spoken of. */
const ofPart = (x: Thing): Thing => { const w = x.name.split(' '); return w.length > 1 && /^(gap|clearance|runout|diameter|bore|play|float|travel|thickness|length|height|width|wear|backlash|lash|sag|pressure)$/.test(w.at(-1)!) && x.np && !x.np.known && !NAMED.test(x.name) ? { ...x, name: w.slice(0, -1).join(' ').replace(/ (end|free|side)$/, '') } : x; };

/** "cleaned and primed the hood": a verb without an object takes that of the verb it is joined to. */
function shareObjects(clauses: Placed[], sentence: number): void {
  for (let i = clauses.length - 2; i >= 0 && clauses[i]!.sentence === sentence; i--) {
    const c = clauses[i]!, n = clauses[i + 1]!;
    const errand = /^(drive|run|pop|walk|nip|slip|go|head|ride|cycle|come|drop|swing|call|set|get)$/.test(c.verb?.base ?? '') && /^(buy|get|fetch|collect|pick|see|order|pay|grab|have|look|borrow|bring|find|take)$/.test(n.verb?.base ?? ''); // "drove out and bought the roll"
    if (!errand && c.verb && !isClass(c.verb.base ?? '', 'think') && c.pred === 'verb' && !c.passive && !c.obj.length && (!c.subj.length || /^(i|we)$/.test(c.who ?? '')) && c.rest.every(r => r.t === 'mark' || r.t === 'adv') && (n.join === 'and' || n.join === ',' || n.join === 'then' || n.join === undefined && c.items.every(i => i === c.verb || i.t === 'adv' || i.t === 'mark') && n.sub === undefined) && n.obj.length && !n.subj.some(s => !s.carried)) c.obj = n.obj;
  }
}

/** What was said in doubt or by others holds for what hangs on it: "not sure the bolts are staying", "thought it was bent". */
const HEDGES = /\b(not sure|don't know|doubt|wonder\w*|thought|was told|told me|tells me|couldn't swear|could have sworn|could 've sworn|can't remember|don't think|seems|seems to me|tell me|tell us|tells us|told us|swears|swore|swears blind|claims?|claimed|rumou?r has it|word is|heard|i hear|suppose|hoping|hope|wish|pretend|imagine|dreamt|dreamed)$/;

/** "If it's bent I'll need one", "I'll be up there if it's dry": what hangs on an "if" is no plan yet. */
function suppose(sheet: Sheet, clauses: Placed[], sentence: number): void {
  const c = clauses.at(-1)!, before = clauses.at(-2);
  if (!before || before.sentence !== sentence) return;
  const iffy = (x: Clause): boolean => /^(if|unless)$/.test(x.sub ?? '');
  if ((iffy(before) || before.reality === 'cond') && !c.sub && c.join !== 'but' && /^(plan|maybe|must|deed|wish)$/.test(c.reality) && (c.reality !== 'deed' || c.verb?.form === 'base')) c.reality = 'cond';
  const lead = before.items.filter(i => i.t !== 'mark').map(i => i.low).join(' ');
  if (!c.join && !before.items.some(i => i.low === ',') && HEDGES.test(lead)) c.reality = 'hearsay';
  const told = before.verb && /^(say|claim|reckon|tell|swear|think|believe|guess|suspect|fancy)$/.test(before.verb.base!) && /^(he|she|they|person)$/.test(before.who ?? '') && !c.join && !before.items.some(i => i.low === ',');
  if (told && c.reality === 'deed' && !c.items.some(i => i.f && !(i.f.dim === 'span' && /^(past|part)$/.test(c.verb?.form ?? '') && c.obj.length > 0) && (i.f.dim !== 'when' || (i.f.value.from ?? '') >= sheet.ctx.at.slice(0, 10))) && !/\b(ready|done|back|here|order|stock)\b/.test(c.items.map(i => i.low).join(' '))) c.reality = 'hearsay';
  if (before.reality === 'wish' && !c.join && !c.sub && c.reality === 'deed') c.reality = 'wish';
  if (iffy(c) && /^(such|they still|they make|i can (find|get|lay)|you can (still )?(get|find)|anyone still|anybody still|there (is|'s) such|one still)\b/.test(c.items.filter(i => i.t !== 'sub').map(i => i.low).join(' '))) return; // "…if such things still exist" asks nothing
  if (iffy(c) && /^(plan|maybe|must)$/.test(before.reality)) before.reality = 'cond';
  if (/^(once|when|after)$/.test(before.sub ?? '') && before.reality === 'deed' && /^(plan|must)$/.test(c.reality) && !/^(past|part)$/.test(before.verb?.form ?? 'base')) before.reality = 'cond'; // "once the head's off I'll check"
}

/** The parts of [from, to) that none of the taken stretches covers. */
function outside(from: number, to: number, taken: readonly [number, number][]): [number, number][] {
  const out: [number, number][] = [];
  let at = from;
  for (const [a, b] of [...taken].sort((x, y) => x[0] - y[0])) {
    if (b <= at || a >= to) continue;
    if (a > at) out.push([at, a]);
    at = Math.max(at, b);
  }
  if (at < to) out.push([at, to]);
  return out;
}

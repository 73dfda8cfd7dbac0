import { isClass, verbForms } from '../../words/verbs.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { nounClasses } from '../../words/nouns.ts';
import { lowText, type Telling } from '../telling.ts';

/** Item index where the wanted things begin; undefined when the clause wants nothing. */
export function needed(t: Telling, c: Clause): number | undefined {
  const text = lowText(t);
  const items = c.items;
  const lead = t.clauses[t.at - 1];
  if (c.join === ':' && lead && /^(still |also |just )*((to|must) (get|buy|order|find)|required|the following( \w+)?( are| is)? (required|needed|wanted)|needs?|needed|wants?|wanted|shopping( list)?|buy|list|parts( needed| wanted| to get)?|to buy list)[ :,.]*$/.test(lowText(t, lead))) { (lead as Clause & { spoken?: boolean }).spoken = true; return 0; }
  if (c.subj.some(s => !s.carried || !/^(i|we)$/.test(c.who ?? 'i')) && !/^(i|we)$/.test(c.who ?? '') && items.findIndex(i => /^(need|want|require|lack)$/.test(i.base ?? '')) < 0) return undefined;
  if (/^(it|that|this|they)$/.test(c.who ?? '') && !(/^that$/.test(c.who ?? '') && /what (i|we) need/.test(text)) && !items.some(i => /^(need|want|require)$/.test(i.base ?? ''))) return undefined;
  const at = (re: RegExp): number => items.findIndex(i => re.test(i.base ?? i.low));
  const buy = items.findIndex((i, n) => i.t === 'verb' && /^(buy|get|order|find|source|pick|purchase|grab|fetch|obtain|procure|acquire|secure)$/.test(i.base ?? '') && (items[n - 1]?.t === 'to' || items[n - 1]?.t === 'modal' || n === c.vi && c.reality !== 'deed' || n === 0 && i.form === 'base'));
  if (buy >= 0 && (c.reality === 'must' || c.reality === 'plan' && /\b(need|have|got|must|going) to\b|'ll\b|will\b/.test(text) || items[buy]!.form === 'base' && buy <= 1)) {
    if (items[buy]!.base === 'get' && items[buy + 1]?.t !== 'np' && !items[buy + 1]?.f && items[buy + 1]?.t !== 'det') return undefined;
    if (items.slice(buy + 1).some(i => i.t === 'verb' && (i.form === 'part' || i.form === 'past')) && items[buy]!.base === 'get') return undefined;
    if (items[buy]!.base === 'get' && t.sheet.tokens[items[buy + 1]!.from]?.low === 'the' && items[buy + 2]?.t === 'adj') return undefined; // "get the manifold welded"
    if (items[buy]!.base === 'get' && items.slice(buy + 1).some(i => i.t === 'prt' && /^(off|out|on|in|back|up|down|apart|loose)$/.test(i.low) && !items[items.indexOf(i) + 1]?.np)) return undefined;
    if (items[buy]!.base === 'find' && c.reality !== 'must') return undefined;
    return items[buy]!.base === 'pick' ? buy + 2 : buy + 1;
  }
  const shortBy = items.findIndex((i, n) => i.np?.count !== undefined && !i.np.stands && items[n + 1]?.low === 'short' && !items[n + 2]?.np);
  if (shortBy >= 0 && /^(i|we)$/.test(c.who ?? 'i')) return shortBy; // "two bolts short on the sump"
  const have = items.findIndex((i, n) => i.low === 'have' && items[n - 1]?.t === 'to' && /^(got|need|have|'ve)$/.test(items[n - 2]?.low ?? ''));
  if (have > 0 && items.slice(have + 1).some((i, n) => i.t === 'prt' && /^(off|out|apart)$/.test(i.low) && !items[have + 2 + n]?.np)) return undefined; // "need to have the head off by Friday"
  if (have > 0) return items.slice(have + 1).some((i, n) => i.t === 'verb' && /^(past|part)$/.test(i.form ?? '') && !items[have + 2 + n]?.np) ? undefined : have + 1; // "have to have that one remetalled"
  if (c.who === 'she' && !c.subj.length && c.verb?.base === 'need' && c.obj.length && c.obj.every(o => !o.carried && nounClasses(o.np?.said ?? '').size > 0)) return partNeeds(items, c.vi);
  if (/^(he|they|she|person|you)$/.test(c.who ?? '') && !(c.who !== 'he' && c.subj.length && items.some(i => i.base === 'need'))) return undefined; // "she needs a new leather": a machine may be "she"
  const need = items.findIndex(i => i.t === 'verb' && /^(need|require|lack)$/.test(i.base ?? '') && !/^required$/.test(i.low) || i.t === 'verb' && i.base === 'want' && i.low !== 'wanted');
  const it = items[need + 1], end = items[need + 2];
  if (need >= 0 && (it?.t === 'be' || it?.t === 'modal')) return undefined; // "everything I need is on the shelf"
  if (need >= 0 && it?.f?.dim === 'measure' && (!end || /^(on|in|at|under|over|between|behind|for|each|all)$/.test(end.low) || end.t === 'mark')) return undefined; // "I want 14 thou on the points"
  if (need >= 0 && it?.np && end?.t === 'verb' && /^(past|part)$/.test(end.form ?? '') && !items[need + 3]?.np) return undefined; // "I need the head skimmed"
  if (need >= 0 && items[need + 1]?.t !== 'to') {
    if (/^(it|she|that|this|they|them|both)$/.test(c.who ?? '') || items[need]!.base === 'want' && c.subj.length && !c.who) return partNeeds(items, need);
    if (forFigure(items, need)) return undefined;
    if (items[need]!.form === 'past' && /^(i|we)$/.test(c.who ?? '') || priced(items, need)) return undefined;
    if (items[need]!.base === 'want' && !c.who && need > 0) return undefined;
    if (c.subj.length && !/^(i|we)$/.test(c.who ?? '') && (!c.carriedSubj || items[need]!.form === 's')) return partNeeds(items, need);
    const after = items[need + 1];
    if (after?.low === 'another' && !items[need + 2]?.np) return need + 1;
    if (!after || after.t === 'mark' || after.low === 'some' || after.t === 'det' && items.slice(need + 2).every(i => !i.np)) return items.length;
    if (after.t === 'verb' && after.form === 'ing') return undefined;
    if (/^(a hand|help|someone|somebody|a helper)\b/.test(items.slice(need + 1).map(i => i.low).join(' '))) return undefined;
    return need + 1;
  }
  const short = /\b(short (of|on)|run out of|ran out of|out of|low on|down to my last|missing|lacking)\b/.exec(text);
  if (short && !(c.join && /\bran out of\b/.test(text)) && (!c.verb || c.pred === 'be' || c.verb.base === 'run') && /^((i|we|im|'m|am|'re|are|'ve|have|still|all|nearly|almost|running|run|ran|getting|just|about|completely|clean|right|down|a|bit|little) ?)*(short|out|low|down to my last|missing|lacking)\b/.test(text.replace(/^(and|but|so|also|okay) /, '')) && !/\b(out of (round|true|line|square|the|it|here|time|patience|puff|breath|hours|daylight|light|steam))\b/.test(text)) {
    const n = items.findIndex((i, x) => (i.low === 'of' || i.low === 'on') && x > 0);
    return n >= 0 ? n + 1 : undefined;
  }
  const lacking = items.findIndex((i, n) => i.low === 'short' && items[n + 1]?.np !== undefined && items[n + 1]!.np!.count !== undefined);
  if (lacking >= 0 && /^(i|we)$/.test(c.who ?? 'i')) return lacking + 1;
  if (/^(still |also |just )?(to (get|buy|order)|shopping list|on the (shopping )?list|list)\b/.test(text)) return Math.max(at(/^(get|buy|order|list)$/), 0) + 1;
  return undefined;
}

/** "I want fourteen thou under the bearing", "250 at the crusher": a figure to be reached is no thing to be got. */
const forFigure = (items: readonly Item[], need: number): boolean => {
  const f = items[need + 1]?.f, after = items[need + 2];
  return items[need]!.base === 'want' && (f?.dim === 'measure' || f?.dim === 'number' || f?.dim === 'money' && f.sure !== 'certain') && (!after || /^(under|at|on|behind|in|between|from|out|off|across|down|up)$/.test(after.low));
};

/** "wants 48 dollars for a rod", "need two hours": a price or a length of time is no thing to be got. */
const priced = (items: readonly Item[], need: number): boolean => {
  const f = items[need + 1]?.f, after = items[need + 2];
  return f?.dim === 'span' || f?.dim === 'money' && (f.sure === 'certain' || f.value.per !== undefined || !after || /^(for|on|plus|and|each|apiece|a|to)$/.test(after.low)) || f?.dim === 'number' && /^(for|each|apiece|plus)$/.test(after?.low ?? '') && items[need]!.form === 's';
};

/** "the left wheel needs a castle nut": wanted only where what follows is a thing with a price, not a treatment. */
function partNeeds(items: readonly Item[], need: number): number | undefined {
  if (items[need + 1]?.t === 'verb' && /^(ing|past|part)$/.test(items[need + 1]!.form ?? '')) return undefined; // "needs soldering at the bottom tank"
  const np = items.slice(need + 1).find(i => i.np)?.np;
  if (np && verbForms(np.said).some(f => f.form === 'ing' && isClass(f.base, 'work'))) return undefined; // "requires welding"
  if (!np || /^(a |some |another )?(wee |little |small |good )*(drop|dab|spot|squirt|splash|smear|touch|shot|dose|drip|blob|pump|lick|smidge|smidgen|drain) of\b/.test(items.slice(need + 1).map(i => i.low).join(' ')) || /^(a |some |another )?(good |proper |thorough |bloody good |right |full |quick |serious )*(clean|scrub|wash|polish|sand|paint|coat|lick|rub|grease|oil|weld|skim|look|bath|soak|drink|service|rebuild|tidy|seeing to|going over|blast)\b/.test(items.slice(need + 1).map(i => i.low).join(' ')) || /\b(clean|cleaning|coat|coats|wash|look|service|rebuild|repair|work|attention|paint|sand|sanding|polish|going over|weld|welding|skim|regrind|adjustment|adjusting|tweak|drink|time|more|lot|bit|help|hand|rest|day|bath|grease|oil|oiling|greasing|top up|soak|scrub|straightening|patch|good \w+)$/.test(np.said)) return undefined;
  return need + 1;
}

import { COATS } from '../../words/coats.ts';
import { lowText, type Telling } from '../telling.ts';

/** What is named by its colour alone is paint: "one coat of orange", "two coats of the blue". */
const COLOUR = /^(?:(?:dark|light|pale|deep|bright|barn|stove|signal|battleship|machine|gloss|matt|satin|flat) )*(red|blue|green|yellow|orange|black|white|gr[ae]y|brown|cream|maroon|silver|aluminium|aluminum)$/;
/** How much of it, or that it is one of several. */
const A_COAT = /\b(coats?|coating|lick|layers?|skim|splash|brushing|daub|dab|smear|film|wipe)\b/;
/** Verbs that bring a stuff on, whatever the stuff. */
const APPLIES = /^(shoot|pump|squirt|put|run|rub|smear|dab|slap|slather|wipe|brush|lay|throw|give|get|spread)$/;
const OF = /\b(?:coats?|coating|lick|layers?|splash|daub|dab|smear|film|wipe) (?:of )?(?:(?:the|some|that|my) )?((?:\w+ ){0,3}?\w+)(?= (?:on|over|to|round|around|along|across|inside|both|for|and|all|by)\b| ?[.,;:!?]|$)/;

/** "two coats of red oxide", "a lick of stove black", "a smear of grease round the lips": what was put on, and the work that putting it on is. */
export function coatIn(t: Telling): { action: string; product?: string } | undefined {
  const text = lowText(t), { verb } = t.clause;
  if (!A_COAT.test(text) && !(APPLIES.test(verb?.base ?? '') && /^(past|part)$/.test(verb!.form ?? ''))) return undefined;
  const of = OF.exec(text)?.[1], act = of && actionOf(of);
  if (of && act) return { action: act, product: of };
  const stuff = t.clause.items.find(i => i.np && !i.np.stands && actionOf(i.np.said));
  return stuff ? { action: actionOf(stuff.np!.said)!, product: stuff.np!.said } : undefined;
}

/** A coat of what no word is known for ("a first coat of vermilion", "coat 2 is on"): paint, as far as anyone can tell. */
export function coatOfAnything(t: Telling): { action: string; product?: string } | undefined {
  const text = lowText(t);
  if (!/\bcoats?\b/.test(text) || t.clause.verb && !APPLIES.test(t.clause.verb.base ?? '') && t.clause.pred === 'verb') return undefined;
  const of = /\bcoats? of (?:the |some |that |my )?((?:\w+ ){0,3}?\w+)(?= (?:on|over|to|round|all|and)\b| ?[.,;:!?]|$)/.exec(text)?.[1];
  return { action: 'paint', ...(of ? { product: of } : {}) };
}

/** What is laid on, rubbed or run in otherwise than in coats, by the words that name it, and the work that this is. */
const LAID: readonly (readonly [RegExp, string])[] = [
  [/\b(penetrating|release|releasing|easing) (oil|fluid)$|\bpenetrant$/, 'soak'],
  [/\b(goo|goop|gunk|silicone|sealant|jointing|gasket (paste|cement|maker)|(thread|jointing|sealing|gasket) compound|mastic|putty)$/, 'seal'],
  [/\bfiller$/, 'fill'], [/\b(rosin|(belt )?dressing)$/, 'dress'], [/\blapping (paste|compound)$/, 'lap'], [/\b(rubbing|cutting|polishing) (paste|compound)$/, 'polish'],
];
const ONTO = /^(on|onto|round|around|over|in|into|along|inside|under|to|between|both|all)$/;

/** "Gasket paste on the cover", "red oxide on the arms this morning": the stuff is said, where it went, and no verb. */
export function laidOn(t: Telling): { action: string; product?: string } | undefined {
  const { items, pred } = t.clause, k = items.findIndex(i => i.np && !i.np.stands);
  if (pred !== 'none' || k < 0 || !ONTO.test(items[k + 1]?.low ?? '')) return undefined;
  const stuff = items[k]!.np!.said.toLowerCase(), action = LAID.find(([name]) => name.test(stuff))?.[1] ?? actionOf(stuff);
  return action === undefined ? undefined : { action, product: stuff };
}

const actionOf = (stuff: string): string | undefined => COATS[stuff.split(' ').at(-1)!] ?? (COLOUR.test(stuff) ? 'paint' : undefined);

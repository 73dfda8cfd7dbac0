import type { SumKind } from './kind.ts';
import { sort } from './pulleys.ts';
import { beside, swap, which } from './which-pulley.ts';
import { type Figure, type Given, put, type Scope } from './scope.ts';
import { toldBeside } from './told-beside.ts';

/** What of the sum before a new length replaces: the belt where the shafts were asked for, else how far apart they are. */
const varied = (prev: Given): 'length' | 'centre' => prev.length !== undefined && prev.centre === undefined ? 'length' : 'centre';

/** "back to six foot", "splice it out to 96", "make it 88": too long for a pulley. */
const apart = (scope: Scope): Figure | undefined => scope.measures('ft', 'm').find(f => !/^ ?(?:pulley|sheave|wheel|drum|a\b|per\b|of\b)/.test(scope.after(f))) ?? scope.numbers().find((n, _, all) => n.value > 20 && (/\bto $/.test(scope.before(n)) || all.length === 1));

function beltGiven(scope: Scope, prev?: Given): Given {
  const p = sort(scope, prev);
  const out: Given = {};
  const swapped = prev && swap(scope, p, prev);
  if (swapped) Object.assign(out, swapped);
  else if (prev && p.diameters.length === 1 && which(scope, prev)) { put(out, which(scope, prev)!, p.diameters[0]); scope.take(p.diameters[0]); }
  else if (prev && p.diameters.length === 1 && beside(scope, p.diameters[0]!) && toldBeside(scope, p.diameters[0]!, prev)) { put(out, toldBeside(scope, p.diameters[0]!, prev)!, p.diameters[0]); scope.take(p.diameters[0]); }
  else if (prev && !p.diameters.length && !p.centre && !p.length && apart(scope)) {
    const f = apart(scope)!;
    put(out, varied(prev), { ...f, unit: f.unit ?? String(prev.centreUnit ?? prev.lengthUnit ?? '') });
    scope.take(f);
  }
  else if (prev && p.diameters.length === 1 && !p.centre && !p.length && !/\b(?:pulley|sheave|wheel)\b/.test(scope.text)) {
    const f = p.diameters[0]!;
    put(out, varied(prev), { ...f, unit: f.unit ?? String(prev.centreUnit ?? prev.lengthUnit ?? '') });
    scope.take(f);
  } else {
    const [a, b] = p.diameters;
    put(out, prev && !b ? 'd2' : 'd1', a);
    put(out, 'd2', b ?? (prev ? a : undefined));
    if (a && !b && /\bboth\b|\btwo (?:equal|the same|#)/.test(scope.mask)) put(out, 'd2', a);
    scope.take(a, b);
  }
  put(out, 'centre', p.centre);
  put(out, 'length', p.length);
  scope.take(p.centre, p.length);
  return out;
}

export const BELT: SumKind = {
  of: 'belt',
  ask: [
    /\b(?:what|whats|how much)[^.?!]{0,24}\b(?:wrap|arc of contact)\b/,
    /(?:^|[.?!;,:] )(?:v )?belt for (?=[^.?!]*\?)/,
    /(?:^|[.?!;,:] |(?<=\b(?:whats|what is|know|and) ))(?:and )?(?:the |an? )?belt (?:with|at|on|if) (?=[^.?!]*\b(?:cent(?:re|er)s|apart|between)\b)/,
    /\bcent(?:re|er)s (?:are|is|be|would be) what\b/,
    /(?:^|[.?!;,:] )(?:the )?length of (?:the )?(?:new |flat |v |drive )?belt(?:ing)?(?= ?(?:\?|,? please))/,
    /\bhow long (?:(?:is|of|a|does|should|will|would|must|do i|s|need|ll|to be|make|cut) )*(?:the |my |a |that |of a )?(?:new |drive |v |flat |fan |main )*belt(?:ing)?\b(?: (?:do|does|be|need|needs?|want|to|have|i|it|should|is|that|for|would|will|on))*/,
    /\bhow longs (?:the |my |that |this |a )?(?:[a-z]+ )?belt\b/,
    /(?:^|[.?!;,:] |\b)and (?:the |a |what )?(?:v |flat |drive )?(?:belt|length of (?:the |a )?(?:v |flat |drive )?belt)\b(?=[^.?!]*\b(?:apart|cent(?:re|er)s?|between)\b)/,
    /\bwhat(?:s)? (?:the |is the )?(?:length|size|long)(?: (?:of|a))?(?: (?:a|the|of|v|drive|flat|new))* belt(?:ing)?\b(?: (?:do|does|be|need|want|to|i|it|should|is|that|would|will))*/,
    /\b(?:belt|belting) (?:length|size)\b/,
    /\bhow long (?:does|should|will|would|must|do|is) (?:it|that|she|one) (?:come out|need to be|have to be|want to be|be|end up|work out|want|need)\b/,
    /\bhow long (?:a|an|of a) (?:[a-z]+ )?(?:belt|rope|chain|band)\b/,
    /(?:^|[.?!;,:] )(?:and )?(?:what )?(?:belt |the )?(?:length|belt|cent(?:re|er)s)(?= ?(?:\?|$))/,
    /\bwhat length(?= ?(?:\?|$|,))/,
    /\bwhich belt\b|\blooking at for a belt\b/,
    /(?:^|[.?!;,:] )(?:and )?how long(?= ?(?:\?|$))/,
    /\bwhat(?:s)? (?:belt|length)(?: (?:do|does|should|would|will|is|i|it|need|want|that|take|to|order|get|fits?|goes|buy|of|ask for))+\b/,
    /\bwhat(?:s)?(?: the)? (?:shaft )?cent(?:re|er)s?(?: to cent(?:re|er)s?)?(?: distance)?(?: (?:do|does|should|would|will|is|that|it|i|want|need|give|for|be|are|the|shafts?|put|me|this|to|set|at|s))*/,
    /\bwhat(?:s| is) the belt(?= ?(?:$|[?.,]| and\b| if\b| then\b))/,
    /\bcent(?:re|er|r) dist(?:ance)?(?= ?(?:\?|$))/,
    /\bhow far apart(?= ?(?:\?|$))/,
    /\bhow far apart (?:(?:do|does|should|would|will|are|is|must|can) )?(?:the |those |my |i |we |they |to )?(?:shafts|pulleys|cent(?:re|er)s|sheaves|go|sit|set|put|space|mount|need|two|have)/,
    /\bwhat(?: does|s) (?:the |that |my )?belt (?:need|need to be|want to be|have to be)\b(?: to be)?|\bwhat does (?:the |that |my )?belt (?:need to be|have to be|come to|want to be|work out(?: at| to)?|measure)/,
    /\b(?:how much|how long a|what) belt(?:ing)?(?: (?:do|should|will|would) i (?:need|want|order|buy|cut))?/,
  ],
  unless: /\b(?:sander|holding up|cost|price|where|cheapest|tension|what section|on order|did i|belt speed|what speed)\b/,
  given: beltGiven,
  needs: ['d1', 'd2', 'centre', 'length'],
  telling: [['d1', 'd2', 'centre'], ['d1', 'd2', 'length']],
  wants: ['d1', 'd2'],
  either: [['centre', 'length']],
};

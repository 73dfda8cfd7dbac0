import { inContract } from '../../../dimensions/measure/units.ts';
import type { SumKind } from './kind.ts';
import { type Leaf, leaves, rows } from './leaves.ts';
import type { Figure, Given, Scope } from './scope.ts';

const HAVE = /\b(?:got|have|ive|tin|with|from|hand|drawer|box|using|packs?|stock|leaves|sheets|bin|only|out of|made (?:of|from)|theres|there are|includes?|are|bag|kit|selection|pile|has|stack of|assortment|coffee can|shims|of|weve|can|in)\b[^#.]*$/;

/** Words that only what is wanted stands after; "is", "at" and "of" may lead to what was measured. */
const WANTED = /\b(?:after|chasing|aiming for|shooting for|looking for|seek|seeking|needing|wanting|want|need|for|make|get to|reach|needs|wants|build|d like|id like)(?: (?:an?|about|another|up|to|exactly|say|just|me|it))* $/;
const LED_TO = /\b(?:get|up|to|of|total|at|is|stack|be|add up|about|takes?)(?: (?:a|an|about|another|up|to|exactly|up to|of|say|just))* $/;
/** "found a couple of threes too": leaves beside those of the sum before. */
const FURTHER = /\b(?:found|too|as well|another|extra|turned up)\b|(?<!^ ?)\balso\b/;

function given(scope: Scope, prev?: Given): Given {
  const all = rows(scope);
  const have = all.filter(r => r.length >= 2).sort((a, b) => b.length - a.length)[0] ?? all.find(r => r[0]!.unit && HAVE.test(scope.mask.slice(0, r[0]!.start - scope.start)) && all.length > 1 && all.indexOf(r) > 0);
  const single = all.filter(r => r !== have && r.length === 1).map(r => r[0]!);
  if (prev && !have && single.length && FURTHER.test(scope.text) && !single.some(f => WANTED.test(scope.before(f)))) return beside(scope, single, prev);
  const target = single.find(f => WANTED.test(scope.before(f)) && !/\btarget\b/.test(scope.text)) ?? single.find(f => f.unit) ?? single.find(f => /^ ?(?:needed|wanted|required)\b|^ (?:that )?(?:i|we)(?: ve| have|ve)?(?: got)? (?:want|need|to (?:lose|make|get|take|fill))\b/.test(scope.after(f))) ?? single.find(f => LED_TO.test(scope.before(f)) || prev);
  const saysThou = /\b(?:thou|thous|thousandths?|thousands)\b/.test(scope.text);
  const unit = have?.find(f => f.unit)?.unit ?? target?.unit ?? (saysThou || have?.every(f => /^0?\.0\d\d/.test(scope.desk.text.slice(f.start, f.end))) ? 'in' : undefined) ?? (typeof prev?.targetUnit === 'string' ? prev.targetUnit : undefined);
  const thou = saysThou || (prev && unit === 'in');
  const fix = (f: Figure): number => (f.unit ? f.value : thou && f.value >= 1 ? inContract(f.value, 'thou').value : f.value);
  const out: Given = {};
  if (target) { out.target = fix(target); if (unit) out.targetUnit = unit; scope.take(target); }
  if (have) { Object.assign(out, leaves(have, fix)); if (unit) out.haveUnit = unit; scope.take(...have); }
  return out;
}

/** The leaves of the sum before with those that this note adds. */
function beside(scope: Scope, more: readonly Leaf[], prev: Given): Given {
  const thou = prev.haveUnit === 'in', fix = (f: Figure): number => (!f.unit && thou && f.value >= 1 ? inContract(f.value, 'thou').value : f.value);
  scope.take(...more);
  return { have: [...(Array.isArray(prev.have) ? prev.have : []), ...more.map(fix)], ...(prev.haveUnit ? { haveUnit: prev.haveUnit } : {}) };
}

export const SHIMS: SumKind = {
  of: 'shims',
  inline: false,
  ask: [
    /\bwhat(?:s)?(?: (?:do|should|can|would|shall|could))?(?: i| we)? (?:stack|shim|pack|put together|build(?= ?(?:$|[?.,]|and\b|for\b|from\b|with\b)))\b(?: (?:up|it|with|under|to|them|for|together))*/,
    /\b(?:whats|what is|what|which|give me the|work out the|figure the|find the|hows)(?: (?:the|a|best|is|my|shim|combination of|fewest|combo of|right|mix of|pile of|set of|least))* (?:stack|shims?|shim pack|combination|combo|leaves|pack|make ?up|shim stack|fewest shims)\b(?! (?:were|was|did|had|came|on order|do i (?:still )?need to (?:buy|get|order)|behind|under the [a-z]+ (?:before|when)))(?: (?:do|should|would|will|for|is|that|to|gets?|makes?|i|use|need|make|add up to|put|under|go|it|be|goes|gives?|get|me))*/,
    /\bshims? (?:to make|for|to get|that make)\b/,
    /\bhow (?:do|would|can|should|could|will) i (?:make(?: up)?|get(?: to)?|build(?: up)?|stack(?: up)?|shim(?: up)?|come up with|reach)\b(?=[^.?!]*(?:#|thou|\d|shim|mm))/,
    /\bwhat (?:makes|adds up to|gets me(?: to)?|will make|gives me|adds to|would make|comes to)\b(?=[^.?!]*(?:thou|shim|mm))/,
    /\b(?:shim stack|stack)(?= (?:for|to (?:make|get)|please|\?))/,
    /(?:^|[.?!;,:] )(?:and )?(?:what )?(?:the )?(?:shim )?(?:stack|combo|combination)(?= ?(?:\?|$))/,
    /\bwhich ones?(?: (?:do|should) i| to)? (?:stack|use|put (?:in|under|together))\b/,
  ],
  unless: /\b(?:need|want|order|buy|get) (?:me |us )?(?:some|a few|more|a pack of|a set of)\b|\bhow many shims (?:were|was|did|behind|under)\b|\bwhat (?:shims|stack) (?:was|were|did)\b|\b(?:pulleys?|sheaves?|bore|stroke|made up of|plastic thread|jacks?|balance|compression|chamber|belts?|interference|heat(?:ed)?)\b/,
  given,
  needs: ['target', 'have'],
  telling: [['target', 'have']],
  word: /\b(?:shims?|leaf|leaves|thou|stack|thousandths?)\b/,
  wants: ['have'],
};

import { inContract } from '../../../dimensions/measure/units.ts';
import type { SumKind } from './kind.ts';
import { type Figure, type Given, type Scope } from './scope.ts';

const HAVE = /\b(?:got|have|ive|tin|with|from|hand|drawer|box|using|packs?|stock|leaves|sheets|bin|only|out of|made (?:of|from)|theres|there are|includes?|are|bag|kit|selection|pile|has|stack of|assortment|coffee can|shims|of|weve|can|in)\b[^#.]*$/;

const TENS: Record<string, number> = { tens: 10, twelves: 12, fifteens: 15, twenties: 20, thirties: 30, forties: 40, fifties: 50, ones: 1, twos: 2, threes: 3, fours: 4, fives: 5, sixes: 6, sevens: 7, eights: 8, nines: 9 };
/** A leaf called by its thickness; `count` where it was counted out ("three twos"). */
type Leaf = Figure & { count?: number };
function counted(scope: Scope, f: Figure): Leaf {
  const n = scope.numbers().find(x => x.end + 1 === f.start && Number.isInteger(x.value) && x.value <= 20);
  return n ? { ...f, start: n.start, count: n.value } : f;
}
/** "fives and twos": leaves called by their thickness. */
const plurals = (scope: Scope): Leaf[] => [...scope.text.matchAll(/\b(?:(twenty|thirty|forty|fifty)[ -])?([a-z]+s)\b/g)].flatMap(m => {
  const ones = TENS[m[2]!], tens = m[1] ? TENS[`${m[1].slice(0, -1)}ies`] ?? 0 : 0;
  return ones === undefined || /\b(?:which|the|those|these|old|new|other) $/.test(scope.text.slice(0, m.index)) && m[2] === 'ones' || scope.numbers().some(n => n.start === scope.start + m.index) ? [] : [counted(scope, { start: scope.start + m.index, end: scope.start + m.index + m[0].length, value: tens + ones })];
});

/** Figures that stand in a row: "one thou, one and a half thou and two thou", "two, three and five thou". */
function rows(scope: Scope): Leaf[][] {
  const many = plurals(scope);
  const figs: Leaf[] = [...scope.measures('in', 'mm'), ...scope.numbers().filter(n => !many.some(p => p.start === n.start)), ...many].filter(f => !scope.measures('in', 'mm').some(m => m.end - m.start > f.end - f.start && m.start <= f.start && f.end <= m.end)).sort((a, b) => a.start - b.start);
  const out: Leaf[][] = [];
  for (const f of figs) {
    const last = out.at(-1)?.at(-1);
    const gap = last ? scope.desk.text.slice(last.end, f.start) : '';
    if (last && /^(?: ?(?:shims?|leaf|leaves|ones|inch|thou|mm|packs?|sheets?|s))?(?:,? ?and(?: some| a few| a| the| one| also)?|,| &| or| plus|\/|,? some|)(?: ?(?:a |some |the |one |a few |plenty of |loads of ))? ?$/.test(gap)) out.at(-1)!.push(f);
    else out.push([f]);
  }
  return out;
}

function given(scope: Scope, prev?: Given): Given {
  const all = rows(scope);
  const have = all.filter(r => r.length >= 2).sort((a, b) => b.length - a.length)[0] ?? all.find(r => r[0]!.unit && HAVE.test(scope.mask.slice(0, r[0]!.start - scope.start)) && all.length > 1 && all.indexOf(r) > 0);
  const single = all.filter(r => r !== have && r.length === 1).map(r => r[0]!);
  const target = single.find(f => f.unit) ?? single.find(f => /^ ?(?:needed|wanted|required)\b/.test(scope.after(f))) ?? single.find(f => /\b(?:after|chasing|aiming for|shooting for|looking for|seeking|needing|wanting|want|need|for|make|get|up|to|of|total|at|is|stack|be|add up|reach|needs|wants|about|takes?)(?: (?:a|an|about|another|up|to|exactly|up to|of|say|just))* $/.test(scope.before(f)) || prev);
  const unit = have?.find(f => f.unit)?.unit ?? target?.unit ?? (have?.every(f => /^\.0\d\d/.test(scope.desk.text.slice(f.start, f.end))) ? 'in' : undefined) ?? (typeof prev?.targetUnit === 'string' ? prev.targetUnit : undefined);
  const thou = /\b(?:thou|thous|thousandths?|thousands)\b/.test(scope.text) || (prev && unit === 'in');
  const fix = (f: Figure): number => (f.unit ? f.value : thou && f.value >= 1 ? inContract(f.value, 'thou').value : f.value);
  const out: Given = {};
  if (target) { out.target = fix(target); if (unit) out.targetUnit = unit; scope.take(target); }
  if (have) { Object.assign(out, leaves(have, fix)); if (unit) out.haveUnit = unit; scope.take(...have); }
  return out;
}

/** The leaves, and where any of them was counted how many there are of each. */
function leaves(have: readonly Leaf[], fix: (f: Figure) => number): Given {
  return { have: have.map(fix), ...(have.some(f => f.count !== undefined) ? { counts: have.map(f => f.count ?? 1) } : {}) };
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
  unless: /\bhow many shims (?:were|was|did|behind|under)\b|\bwhat (?:shims|stack) (?:was|were|did)\b|\b(?:pulleys?|sheaves?|bore|stroke|made up of|plastic thread|jacks?|balance|compression|chamber|belts?)\b/,
  given,
  needs: ['target', 'have'],
  telling: [['target', 'have']],
  word: /\b(?:shims?|leaf|leaves|thou|stack|thousandths?)\b/,
  wants: ['have'],
};

import type { Figure, Given, Scope } from './scope.ts';
import { table } from '../../../words/table.ts';

/** A leaf called by its thickness; `count` where it was counted out ("three twos"). */
export type Leaf = Figure & { count?: number };

const TENS: Record<string, number> = table({ tens: 10, twelves: 12, fifteens: 15, twenties: 20, thirties: 30, forties: 40, fifties: 50, ones: 1, twos: 2, threes: 3, fours: 4, fives: 5, sixes: 6, sevens: 7, eights: 8, nines: 9 });

/** "fives and twos": leaves called by their thickness. */
const plurals = (scope: Scope): Leaf[] => [...scope.text.matchAll(/\b(?:(twenty|thirty|forty|fifty)[ -])?([a-z]+s)\b/g)].flatMap(m => {
  const ones = TENS[m[2]!], tens = m[1] ? TENS[`${m[1].slice(0, -1)}ies`] ?? 0 : 0;
  return ones === undefined || /\b(?:which|the|those|these|old|new|other|thou|thick) $/.test(scope.text.slice(0, m.index)) && m[2] === 'ones' || scope.numbers().some(n => n.start === scope.start + m.index) ? [] : [{ start: scope.start + m.index, end: scope.start + m.index + m[0].length, value: tens + ones }];
});

const WRITTEN = /^[a-z]/;
/** Whether a number only says how many there are of the leaf after it: "two fives", "one at two thou", "three five thou leaves", "one 5". */
function counts(scope: Scope, n: Figure, leaf: Figure): boolean {
  if (n.unit !== undefined || !Number.isInteger(n.value) || n.value < 1 || n.value > 20 || /s$/.test(scope.desk.text.slice(n.start, n.end))) return false; // "twos fives and tens" are all leaves
  const text = scope.desk.text, gap = text.slice(n.end, leaf.start), said = text.slice(n.start, n.end), name = text.slice(leaf.start, leaf.end);
  if (/^(?: (?:shims?|leaf|leaves|pieces?|sheets?))?(?: (?:at|off|of|in))(?: the)? $/.test(gap)) return !/\bto(?: get)? $/.test(scope.before(n));
  if (gap !== ' ') return false;
  const many = /s$/.test(name) || /^ s\b/.test(scope.after(leaf));
  return many || WRITTEN.test(said) && (leaf.unit !== undefined || /^\d/.test(name)) && !/[\d] $|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty),? $/.test(scope.before(n));
}

/** What may stand between two leaves of a row. */
const JOINED = /^(?: ?(?:shims?|leaf|leaves|ones|inch|thou|mm|packs?|sheets?|s))*(?:,? ?(?:and|an)(?: some| a few| a| the| one| also)?|,| &| or| plus|\/|,? some|)(?: ?(?:an? |some |the |one |a few |(?:plenty|loads|a bunch|a handful|a pile|a stack|a heap) of ))? ?$/;

/** Figures that stand in a row: "one thou, one and a half thou and two thou", "two, three and five thou". */
export function rows(scope: Scope): Leaf[][] {
  const many = plurals(scope), measures = scope.measures('in', 'mm', 'mil').map(f => (f.unit === 'mil' ? { ...f, unit: 'mm' } : f));
  const all: Leaf[] = [...measures, ...scope.numbers().filter(n => !many.some(p => p.start === n.start)), ...many].filter(f => !measures.some(m => m.end - m.start > f.end - f.start && m.start <= f.start && f.end <= m.end)).sort((a, b) => a.start - b.start);
  const figs: Leaf[] = [];
  for (let i = 0; i < all.length; i++) {
    const f = all[i]!, next = all[i + 1];
    if (next && counts(scope, f, next)) { figs.push({ ...next, start: f.start, count: f.value }); i++; } else figs.push(f);
  }
  const out: Leaf[][] = [];
  for (const f of figs) {
    const last = out.at(-1)?.at(-1), wanted = /^ ?(?:needed|wanted|required|called for)\b/.test(scope.after(f));
    if (last && !wanted && JOINED.test(scope.desk.text.slice(last.end, f.start))) out.at(-1)!.push(f);
    else out.push([f]);
  }
  return out;
}

/** The leaves, each named as often as it was counted; `counts` where none is there twice and yet they were counted. */
export function leaves(have: readonly Leaf[], fix: (f: Figure) => number): Given {
  const each = have.flatMap(f => Array.from({ length: f.count ?? 1 }, () => fix(f))), counted = have.some(f => f.count !== undefined);
  return { have: each, ...(counted && each.length === have.length ? { counts: each.map(() => 1) } : {}) };
}

import { BETWEEN, DRIVEN, DRIVER, PRIME } from './drives.ts';
import type { Pulleys } from './pulleys.ts';
import { type Figure, type Given, put, type Scope } from './scope.ts';
import { toldBeside } from './told-beside.ts';

/** Which way a figure's own clause points: at what drives or at what is driven. */
export function side(scope: Scope, f: Figure, others: Figure[]): 'driver' | 'driven' | undefined {
  const before = Math.max(scope.start, ...others.filter(o => o.end <= f.start).map(o => o.end));
  const after = Math.min(scope.end, ...others.filter(o => o.start >= f.end).map(o => o.start));
  const left = scope.desk.text.slice(before, f.start), right = scope.desk.text.slice(f.end, after);
  const tail = /^[^,.;?]*/.exec(right)?.[0].split(/\b(?:and|but|with|to|i|so|what|how)\b/)[0] ?? '';
  const own = `${left.split(/[,.;?]/).at(-1) ?? left} | ${tail}`;
  const pick = (t: string): 'driver' | 'driven' | undefined => {
    const drives = [...t.matchAll(DRIVER)].at(-1), a = drives?.index ?? -1, b = [...t.matchAll(DRIVEN)].at(-1)?.index ?? -1;
    return a < 0 && b < 0 ? undefined : a > b && !(BETWEEN.test(drives![0]) && PRIME.test(scope.text)) ? 'driver' : 'driven';
  };
  const next = /^ ?(?:inch |mm |in )?(?:dia(?:meter)? )?([a-z]+)/.exec(right)?.[1];
  const adjacent = next && pick(next);
  if (adjacent && !/^driv(?:es|ing)$/.test(next)) return adjacent;
  return /\bon (?:the|my|a) /.test(tail) ? pick(tail) ?? pick(own) : pick(left.split(/[,.;?]/).at(-1) ?? left) ?? pick(tail) ?? pick(left);
}

/** Puts the sizes of one or two pulleys where they belong: `d1` of what drives, `d2` of what is driven. */
export function pulleys(scope: Scope, p: Pulleys, out: Given, prev?: Given): void {
  const [a, b] = p.diameters;
  if (!a) return;
  scope.take(a, b);
  if (b) {
    const first = side(scope, a, [b, ...p.speeds]), second = side(scope, b, [a, ...p.speeds]);
    const by = /\b(?:driven|turned|run|powered) (?:by|off|from) /.test(scope.desk.text.slice(a.end, b.start));
    const drives = !by && /\b(?:drives|driving|onto|turns an?|turning an?|into)\b/.test(scope.desk.text.slice(a.end, b.start)) && !/\bdriving (?:pulley|sheave|wheel)/.test(scope.desk.text.slice(a.end, b.start));
    const turned = by || (!drives && !(runs(scope, p, a) && !second) && ((first === 'driven' && second !== 'driven') || (second === 'driver' && first !== 'driver') || (!first && !second && spedAt(scope, p) === b)));
    put(out, 'd1', turned ? b : a);
    put(out, 'd2', turned ? a : b);
  } else if (prev) put(out, which(scope, prev) ?? (beside(scope, a) && toldBeside(scope, a, prev) || pulleyOf(side(scope, a, p.speeds)) || toldBeside(scope, a, prev) || 'd2'), a);
  else put(out, side(scope, a, p.speeds) === 'driven' ? 'd2' : 'd1', a);
}

const pulleyOf = (side?: 'driver' | 'driven'): 'd1' | 'd2' | undefined => side && (side === 'driver' ? 'd1' : 'd2');
/** "a 16 on the countershaft": it is said where the pulley sits. */
export const beside = (scope: Scope, f: Figure): boolean => /^ ?(?:inch |mm |in )?(?:pulley |sheave |one |wheel )?on (?:the |my |that )?[a-z]/.test(scope.after(f));

/** "a 12 inch pulley at 350": a pulley said with its speed drives the other. */
const runs = (scope: Scope, p: Pulleys, f: Figure): boolean => p.speeds.some(s => s.start > f.end && /^ (?:inch |mm )?(?:pulley |sheave |wheel )?(?:at|doing|turning|running) $/.test(scope.desk.text.slice(f.end, s.start)));

/** "if the small one was five inch": of the two that were given. */
export function which(scope: Scope, prev: Given): 'd1' | 'd2' | undefined {
  const size = /\b(?:the |my )?(small(?:er|est)?|little|wee|big(?:ger|gest)?|large[rst]*) (?:one|pulley|sheave|wheel)s?\b/.exec(scope.text)?.[1];
  if (!size || typeof prev.d1 !== 'number' || typeof prev.d2 !== 'number' || prev.d1 === prev.d2) return undefined;
  return /^(?:small|little|wee)/.test(size) === (prev.d1 < prev.d2) ? 'd1' : 'd2';
}

/** Without a word for either, the pulley whose speed is said is the one that drives: "a 12 inch belted to a 3 inch running at 1750". */
const spedAt = (scope: Scope, p: Pulleys): Figure | undefined => p.speeds.length === 1 ? p.diameters.filter(d => d.end <= p.speeds[0]!.start && !/[,.;?]/.test(scope.desk.text.slice(d.end, p.speeds[0]!.start))).at(-1) : undefined;

/** "if I swap the 14 for a 12", "a 12 instead of the 14": the pulley that was 14 is 12. */
export function swap(scope: Scope, p: Pulleys, prev: Given): Given | undefined {
  const [a, b] = p.diameters;
  if (!a || !b) return undefined;
  const both = /^ ?(?:inch |mm )?(?:onto|driving|and)\b/.test(scope.desk.text.slice(a.end, b.start));
  const instead = /\binstead of\b|\bin place of\b|\brather than\b|\bnot (?:a|the)\b/.test(scope.desk.text.slice(a.end, b.start));
  const [old, fresh] = instead ? [b, a] : [a, b];
  const name = ['d1', 'd2'].find(n => prev[n] === old.value);
  if (!name || both) return undefined;
  scope.take(a, b);
  return { [name]: fresh.value, ...(fresh.unit ? { [`${name}Unit`]: fresh.unit } : {}) };
}

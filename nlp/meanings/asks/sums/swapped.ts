import { type Figure, type Given, put, type Scope } from './scope.ts';

/** Between the figure that stands and the one it takes the place of: "240 on the drum not 225", "a seven in place of the six". */
const FOR_OLD = /^(?: ?[a-z]+){0,4}?,? (?:not|instead of|in place of|rather than|and not)(?: (?:the|an?|of|that))* ?$/;
/** Between a figure that was given before and the one that takes its place: "that was three percent I gave you, make it 23". */
const FOR_NEW = /^[^.?!]{0,44}?\b(?:make (?:it|that)|call it|should be|should have been|i meant?|its really|is really|really|what(?:s| is| would it be| is it)?(?: it)? for)(?: (?:an?|the|about))* ?$/;
const DENIED = /\b(?:not|no longer|forget|never mind)(?: (?:the|an?|that))* $/;

/** Every figure of the stretch, one a place, the longest reading of each. */
function figuresOf(scope: Scope): Figure[] {
  const all = [...scope.measures(), ...scope.values('percent').map(p => ({ start: p.start, end: p.end, value: p.value.value })), ...scope.values('money').map(m => ({ start: m.start, end: m.end, value: m.value.value })), ...scope.numbers()];
  return all.filter((f, i) => !all.some((o, j) => i !== j && o.start <= f.start && o.end >= f.end && (o.end - o.start > f.end - f.start || j < i))).sort((a, b) => a.start - b.start);
}

/**
 * A figure of the sum before named again beside the one that takes its place: "not forty, call it thirty-three". The field is that which
 * held the old figure, whatever the sum. Undefined where no figure of the stretch is one of the sum before.
 */
export function swapped(scope: Scope, prev: Given): Given | undefined {
  const figures = figuresOf(scope), text = (from: number, to: number): string => scope.desk.text.slice(from, to);
  for (const old of figures) {
    const name = Object.keys(prev).find(f => prev[f] === old.value);
    if (!name) continue;
    const before = figures.filter(f => f.end <= old.start).at(-1), after = figures.find(f => f.start >= old.end);
    const fresh = before && FOR_OLD.test(text(before.end, old.start)) ? before
      : after && (FOR_NEW.test(text(old.end, after.start)) || DENIED.test(scope.before(old))) ? after : undefined;
    if (!fresh || fresh.value === old.value) continue;
    const out: Given = {};
    put(out, name, fresh);
    scope.take(old, fresh);
    return out;
  }
  return undefined;
}

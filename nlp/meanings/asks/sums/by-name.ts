import { mayMatch } from '../../../text/pattern-index.ts';
import { type Desk, type Hit, sentenceAt } from '../desk.ts';
import type { Candidate } from './candidates.ts';
import { type SumKind, wholeOf } from './kind.ts';
import { SUM_KINDS } from './kinds.ts';
import { SUM_NAMES, type SumName } from './names.ts';
import { Scope } from './scope.ts';
import { TOLD } from './told.ts';

const ASKED = /\b(?:what|whats|whatll|how|hows|which|where (?:do|does|is|are|can|should)|wheres|when (?:do|does|is|are|will|can|should)|whens|please|pls|work out|figure|calculate|give me|convert|whatd)\b/;
/** "which I'm not keen on", "with what looked like a nest": no question word, though spelled as one. */
const RELATIVE = /\b(?:which (?:im|i|ive|was|is|were|isnt|has|it)|(?:is|with|of|by|from|like) what|what (?:looks?|looked|i wants?|i need))\b/g;

/**
 * Questions known by what the trade calls the sum, in sentences where no pattern of a question was found: a fragment that names it and gives
 * all that it needs, or a question that names it. One a sentence: the kind that the figures suit best.
 */
export function byName(desk: Desk, plain: readonly Hit[], have: readonly Candidate[]): Candidate[] {
  const out: Candidate[] = [];
  for (const s of desk.sentences) {
    const inside = (h: { start: number; end: number }): boolean => h.start < s.end && s.start < h.end;
    if (plain.some(inside) || have.some(c => inside(c) && c.score > 0)) continue;
    const asked = s.asked || ASKED.test(desk.text.slice(s.start, s.end).replace(RELATIVE, ' '));
    if (!s.asked && /^(?:and |so |but )?what (?:happened|went wrong|broke|went|did it|let go|gave way|gave|(?:i|we) (?:found|saw|noticed|discovered|did|had|got))(?: \w+)? (?:was|is)\b/.test(desk.text.slice(s.start, s.end))) continue; // "what happened was the drive pin sheared"
    if (!s.asked && /^(?:so )?i (?:know|knew|had|did|put|took|found|saw|forgot|think|thought|got|see)\b/.test(desk.text.slice(s.start, s.end))) continue;
    if (!asked && TOLD.test(desk.text.slice(s.start, s.end))) continue;
    if (!asked && /\bshims?\b/.test(desk.text.slice(s.start, s.end)) && /\b(?:made up of|plastic thread|number one|tight|now)\b/.test(desk.text.slice(s.start, s.end))) continue; // a pack that is in is told of
    const found = mayMatch(NAMED, n => n.called.name, desk.text.slice(s.start, s.end)).flatMap(n => named(desk, n, s, asked) ?? []);
    const best = found.sort((a, b) => b.score - a.score)[0];
    if (best) out.push(best);
  }
  return out;
}

/** "ring gap for a 4 inch bore": wanted for one of a size, where "ring gap on the left piston 14 thou" was measured. */
const FOR_ONE = /^ (?:(?:mix|strength|percent(?:age)?) )?(?:for|of|on|with) (?:an?\b|-?[\d.]|minus\b)/;

/** The sums that have a name. */
const NAMED = SUM_KINDS.flatMap((kind): Named[] => { const called = SUM_NAMES[kind.of]; return called ? [{ kind, called }] : []; });
interface Named { kind: SumKind; called: SumName }

function named(desk: Desk, { kind, called }: Named, s: { start: number; end: number }, asked: boolean): Candidate | undefined {
  const text = desk.text.slice(s.start, s.end);
  const m = called.name.exec(text);
  if (!m || kind.unless?.test(text)) return undefined;
  const start = s.start + m.index, end = start + m[0].length;
  const scope = new Scope(desk, s.start, s.end, start);
  if (called.result && scope.measures(...called.result).length) return undefined;
  const given = kind.given(scope), fields = Object.keys(given).filter(f => !f.endsWith('Unit'));
  const whole = wholeOf(called.whole, given);
  if (!asked && !whole && !(fields.length && FOR_ONE.test(text.slice(m.index + m[0].length)))) return undefined;
  if (asked && !whole && !fields.length && !outright(desk, start, end)) return undefined;
  // A fragment is all of it the question, so that nothing of it is taken for a statement.
  const place = asked ? { start, end } : { start: s.start, asked: end, end: s.start + text.trimEnd().replace(/[ .;,]+$/, '').length };
  return { kind, ...place, score: 0.5 + fields.length + (whole?.length ?? 0) + (kind.weight ?? 0) / 2 };
}

/** With no figure at all only a question that asks for just this is one: "what size fuse do I need", "what shims do I use". */
const WANTS = /\b(?:what|whats|which|how (?:much|big|many|long|fast|hot|cold|far|tight|thick|strong))\b/;
const outright = (desk: Desk, start: number, end: number): boolean => {
  const s = sentenceAt(desk, start);
  return (s.asked || !/^(?:so |and )?whats? (?:left|i )/.test(desk.text.slice(s.start))) && WANTS.test(desk.text.slice(s.start, end).replace(RELATIVE, ' ')) && end - s.start < 48;
};

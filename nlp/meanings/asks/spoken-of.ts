import { isMachine, isSource } from '../../clauses/name-kinds.ts';
import { phraseAt } from '../../dimensions/part/phrase.ts';
import { sheetBefore } from '../../sheet.ts';
import type { Sheet } from '../../types.ts';
import { NO_THINGS } from '../../words/no-things.ts';
import { nounClasses } from '../../words/nouns.ts';
import type { Desk, Named } from './desk.ts';
import { nameLimit, NEVER, NOT_A_THING } from './name-limit.ts';

/** More tokens than any name has: a bound for huge notes. */
const WIDEST = 24;

/** What "it" is: the thing asked about last, else the last thing named before, here or in the notes before. */
export const spokenOf = (desk: Desk, before: number): string | undefined =>
  desk.spoken.filter(s => s.end <= before).at(-1)?.name ?? lastNamed(desk, before, named => (named.filter(n => n.known).at(-1) ?? named.at(-1))?.name); // things that the shop knows are meant before others

/** "her" is the machine or the engine that was named. */
export const machineOf = (desk: Desk, before: number): string | undefined =>
  lastNamed(desk, before, (named, sheet) => named.flatMap(n => ownerIn(sheet, n.name)).at(-1));

/** The last of what is named before this character of the note, or else in the notes before, latest first. */
function lastNamed(desk: Desk, before: number, last: (named: readonly Named[], sheet: Sheet) => string | undefined): string | undefined {
  const stop = desk.line.tokenAt[before] ?? desk.sheet.tokens.length;
  desk.named ??= namedIn(desk.sheet);
  const here = last(desk.named.filter(n => n.to <= stop), desk.sheet);
  if (here) return here;
  for (let sheet = sheetBefore(desk.sheet.ctx); sheet; sheet = sheetBefore(sheet.ctx)) {
    const name = last(namedIn(sheet), sheet);
    if (name) return name;
  }
  return undefined;
}

/** The machine of a name: itself, or the one that owns the part ("the tractor's radiator"). */
function ownerIn(sheet: Sheet, name: string): string[] {
  const owner = name.replace(/['’]s .*$/, '');
  return isMachine(sheet, owner) || nounClasses(owner).has('machine') ? [owner] : [];
}

/** Everything named in the note, in order; what only dates, counts or places it is left out. */
export function namedIn(sheet: Sheet): Named[] {
  const out: Named[] = [];
  for (let i = 0; i < sheet.tokens.length;) {
    const skip = sheet.tags[i] === 'prep' || NEVER.test(sheet.tokens[i]!.low);
    const p = skip ? undefined : phraseAt(sheet, i, nameLimit(sheet, i, Math.min(sheet.tokens.length, i + WIDEST)));
    if (p && !p.stands && !NOT_A_THING.test(p.name) && !(UNDERFOOT.test(p.name) && !p.known) && !A_BIT.test(sheet.text.slice(sheet.tokens[p.head]!.start, sheet.tokens[p.head]!.start + 12)) && (p.known || !NO_THINGS.has(sheet.tokens[p.head]!.low)) && !isSource(p) && !inFound(sheet, p.from, p.to)) out.push({ name: p.name, to: p.to, known: !!p.known });
    i = p ? Math.max(p.to, i + 1) : i + 1;
  }
  return out;
}
/** Where a thing lies, what was measured of it, and who or what ached beside it is not what "it" is. */
const UNDERFOOT = /^(?:ground|floor|yard|field|road|shelf|house|run-? ?out|end play|backlash|clearance|total|knees?|wrists?|elbows?|shoulders?|thumbs?|back|wife|missus|neighbou?rs?|r?\d+)$/;
/** "bit much": a measure, no drill bit. */
const A_BIT = /^bit (?:much|of|too|more|less|late|early|rough|dear|steep)\b/i;
const inFound = (sheet: Sheet, from: number, to: number): boolean => sheet.found.some(f => f.dim !== 'number' && f.from <= from && to <= f.to);

import type { Entry } from '../domain/model/entry.ts';
import { isFastener } from './meanings/lib/fields.ts';
import type { Told } from './meanings/telling.ts';
import type { Sheet } from './types.ts';

/** A fit said again in one breath ("lowered it down, it's just hung there") is one fact; the later word holds. */
export function settle(sheet: Sheet, told: readonly Told[]): Told[] {
  const out: Told[] = [];
  for (const x of told) {
    const run = out.slice(out.findLastIndex(y => y.entry.kind !== x.entry.kind) + 1);
    const was = run.findLast(y => y.entry.kind === 'fit' && x.entry.kind === 'fit' && y.entry.part === x.entry.part) ?? out.findLast(y => y.entry.kind === x.entry.kind);
    if (x.entry.kind === 'fit' && was?.entry.kind === 'fit' && was.entry.part === x.entry.part && (x.entry.state === was.entry.state || was.entry.state === 'on' && x.entry.state !== 'off')) {
      was.entry.state = x.entry.state;
      was.entry.with = x.entry.with ?? was.entry.with;
      if (was.entry.with === undefined) delete was.entry.with;
      continue;
    }
    const held = out.findLast(y => y.entry.kind === 'fit');
    if (held && holdsLoosely(x, held)) continue;
    out.push(x);
  }
  return out.filter(x => !asItWas(sheet, x, out) && !keptThere(x, out));
}

/** What another entry of the same clause tells of the part that a fit is of. */
const beside = (x: Told, out: readonly Told[]): Entry[] => out.flatMap(y => (y !== x && y.clause === x.clause && x.entry.kind === 'fit' && 'part' in y.entry && y.entry.part === x.entry.part ? [y.entry] : []));

/** "were at 70 foot pounds before I split it": how tight it was is not how it is now. */
function asItWas(sheet: Sheet, x: Told, out: readonly Told[]): boolean {
  const words = (from: number, to: number): string => sheet.tokens.slice(from, to).map(t => t.low).join(' ');
  return x.entry.kind === 'fit' && x.entry.state === 'tight' && /\b(?:was|were)\b/.test(words(x.clause.from, x.clause.to)) && !/\bnow\b/.test(words(0, sheet.tokens.length)) && beside(x, out).some(e => e.kind === 'reading' && e.asWas === true);
}
/** "are in the angle iron on the shelf, numbered one to eight": what is kept there is on no machine. */
const keptThere = (x: Told, out: readonly Told[]): boolean => x.entry.kind === 'fit' && x.entry.state === 'on' && beside(x, out).some(e => e.kind === 'stow' && /^in\b/i.test(e.where));

/** "bolts", with nothing to say whose they are. */
const isBareFastener = (name: string): boolean => !name.includes(' ') && isFastener(name);

/** "the side plates are on but the bolts are only finger tight": what only holds for now tells of the part that it holds; it is told with that part then. */
function holdsLoosely(x: Told, was: Told): boolean {
  if (x.entry.kind !== 'fit' || was.entry.kind !== 'fit' || x.entry.state !== 'temporary' || !isBareFastener(x.entry.part) || isBareFastener(was.entry.part) || !/^(on|temporary)$/.test(was.entry.state)) return false;
  was.entry.state = 'temporary';
  was.entry.with ??= x.entry.with ?? x.entry.part;
  was.to = Math.max(was.to ?? was.clause.to, x.to ?? x.clause.to);
  return true;
}

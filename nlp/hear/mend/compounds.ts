import { CONDITION } from '../../words/conditions.ts';
import { isTradeWord, nounClasses, singular } from '../../words/nouns.ts';
import { BODY } from '../../words/parts/body.ts';
import { DRIVE } from '../../words/parts/drive.ts';
import { ENGINE } from '../../words/parts/engine.ts';
import { IMPLEMENT } from '../../words/parts/machines.ts';
import { FASTENER } from '../../words/parts/small.ts';
import { isShopVerb, verbForms } from '../../words/verbs.ts';
import type { Change, Mended } from './change.ts';
import { likeness } from './likeness.ts';
import { COMMON } from '../../words/common.ts';
import { isFrameWord, isPlainWord } from './plain-words.ts';
import { TRADE_WORDS } from './trade-words.ts';

/** The words that stand before each last word of the trade's compounds: "vane" and "valve" before "spring". */
const BEFORE: ReadonlyMap<string, ReadonlySet<string>> = (() => {
  const out = new Map<string, Set<string>>();
  for (const name of [ENGINE, DRIVE, BODY, IMPLEMENT, FASTENER].flatMap((list) => list.trim().split(/,\s*/))) {
    const words = name.trim().split(' ');
    for (let i = 1; i < words.length; i++) {
      const last = singular(words[i]!);
      out.set(last, (out.get(last) ?? new Set()).add(words[i - 1]!));
    }
  }
  return out;
})();

const BASES = [...new Set(TRADE_WORDS.filter((word) => word.length >= 4 && nounClasses(word).size > 0))];

/**
 * "cap corner", "vein spring", "beta bearings": a word ahead of a part's name, where no such part is known and one that sounds the same is.
 * A word that may stand there by itself (a side, a state, a verb, another part) gives way only when the recogniser was unsure of it.
 */
export function mendCompounds({ text, changes }: Mended, unsure: string[], names: string[]): Mended {
  const made: Change[] = [...changes];
  const doubted = new Set(unsure.map((word) => word.toLowerCase()));
  const own = new Set(names.flatMap((name) => name.toLowerCase().split(/[\s-]+/)));
  const out = text.replace(/\b([a-z]{3,})(?= ([a-z]{3,})\b)/gi, (heard, word: string, last: string) => {
    const low = word.toLowerCase();
    if (own.has(low) || own.has(singular(low))) return heard;
    const meant = firstOf(low, singular(last.toLowerCase()), doubted.has(low));
    if (!meant) return heard;
    const put = /^[A-Z]/.test(word) ? meant[0]!.toUpperCase() + meant.slice(1) : meant;
    made.push({ from: `${word} ${last}`, to: `${put} ${last}`, why: 'a part of that name is known, and sounds the same' });
    return put;
  });
  return { text: out, changes: made };
}

/** "waterhoppers", "kingbolt": two of the trade's words run into one that is none. Gives them apart. */
export function mendJoined({ text, changes }: Mended, names: string[]): Mended {
  const made: Change[] = [...changes];
  const own = new Set(names.flatMap((name) => name.toLowerCase().split(/[\s-]+/)));
  const out = text.replace(/\b[a-z]{7,}\b/gi, (heard) => {
    const low = heard.toLowerCase();
    if (isPlainWord(low) || TRADE_WORDS.includes(singular(low)) || own.has(low) || own.has(singular(low)) || COMMON.has(low)) return heard;
    for (let cut = low.length - 4; cut >= 3; cut--) {
      const [first, last] = [low.slice(0, cut), low.slice(cut)];
      if (!isTradeWord(first) || !isPart(last) || verbForms(last).length > 0 && !nounClasses(last).size) continue;
      const apart = `${heard.slice(0, cut)} ${last}`;
      made.push({ from: heard, to: apart, why: 'two words of the trade, run together' });
      return apart;
    }
    return heard;
  });
  return { text: out, changes: made };
}

function firstOf(low: string, last: string, unsure: boolean): string | undefined {
  if (isFrameWord(low) || nounClasses(`${low} ${last}`).size > 0 || BEFORE.get(last)?.has(low)) return undefined;
  const stands = isTradeWord(low) || CONDITION.has(low) || isShopVerb(low) || COMMON.has(low) || MADE_OF.test(low);
  if (stands && !unsure) return undefined;
  const known = alike(low, [...(BEFORE.get(last) ?? [])], 0.75);
  return known ?? (stands || !isPart(last) || low.length < 4 || MONEY.test(low) ? undefined : alike(low, BASES, 0.75));
}

/** The one candidate with the same sound and the same first letter (or one that is said alike). */
function alike(low: string, candidates: readonly string[], most: number): string | undefined {
  const near = candidates.filter((meant) => {
    if (meant === low || meant.length < 3 || singular(meant) === singular(low)) return false;
    const { sound, spelling } = likeness(low, meant);
    return sound === 0 && spelling <= most && meant[0] === low[0];
  });
  return new Set(near.map(singular)).size === 1 ? near[0] : undefined;
}

const isPart = (word: string): boolean => nounClasses(word).has('part') || nounClasses(word).has('fastener');
const MONEY = /^(tenners?|fivers?|quid|bucks?|dollars?|pounds?|pence|cents?|euros?|grand)$/;
const MADE_OF = /^(red|blue|green|black|white|grey|gray|yellow|brass|copper|steel|iron|wood|wooden|oak|rubber|bronze|cast|big|little|small|long|short|heavy|good|bad|extra|whole)$/;

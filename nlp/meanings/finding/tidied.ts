import type { Entry } from '../../../domain/model/entry.ts';
import type { Told } from '../telling.ts';
import { trim } from '../lib/fields.ts';
import { verdictIn } from '../lib/verdict.ts';

/** So many of a set, or which of it. */
const SOME = String.raw`(?:the )?(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\d+|first|second|third|fourth|last|others?|rest|remainder)`;
/** "nine sound, two have slats gone": some of a set and then others of it. */
const OTHERS = new RegExp(String.raw`^${SOME} (?!and\b|or\b|by\b|in\b|of a\b|foot\b|inch)\S.*?[,;] (?:and |but )?(?=${SOME} (?:of (?:them|em|those) )?[a-z])`, 'i');
/** What says only that it was seen, in front of how it is. */
const SEEN = /^(?:(?:it|she|he|they) (?:was |is |are |were |'s |has |had )?(?=\S)|(?:turned out|proved)(?: to be)? )/i;
/** What may be done about it, behind. */
const MENDABLE = /(?<!\b(?:when|where|if|than|as|what|how|before|after|until|while|because|like|so|all))[,;]? (?:(?:that|which|but|and|so) )?(?:i|we)(?:'ll| can| could| will| shall|'d) .*$/i;
/** Words that by themselves say nothing of how a part is. */
const EMPTY = /^(?:(?:of|it|all|up|one|two|three|think|so|the|a|an|is|was|that|them|\d+)[ ,]*)+$/i;

/** Findings with no more in their condition than how the part was found: each of several sets of one kind by itself, and none that says nothing. */
export const tidied = (told: readonly Told[]): Told[] => told.flatMap(x => (x.entry.kind === 'finding' ? ofSets(x.entry).map(entry => ({ ...x, entry })) : x)).flatMap(x => {
  if (x.entry.kind !== 'finding') return [x];
  const condition = bare(x.entry.condition);
  return EMPTY.test(condition) ? [] : [{ ...x, entry: { ...x.entry, condition } as Entry }];
});

type Finding = Extract<Entry, { kind: 'finding' }>;

/** The verdict that was given on the whole goes to the set whose words do not say another. */
function ofSets(e: Finding): Entry[] {
  const cut = OTHERS.exec(e.condition)?.[0].length;
  if (cut === undefined) return [e];
  const pieces = [e.condition.slice(0, cut).replace(/[,;] (?:and |but )?$/, ''), e.condition.slice(cut)], own = pieces.map(verdictIn);
  const left = e.verdict !== undefined && !own.includes(e.verdict) ? own.lastIndexOf(undefined) : -1;
  return pieces.flatMap((condition, i) => ofSets(trim({ ...e, condition, verdict: own[i] ?? (i === left ? e.verdict : undefined) }) as Finding));
}

/** How it is, without who saw it or what may be done about it; what would leave nothing is left as it is. */
function bare(condition: string): string {
  const less = condition.replace(MENDABLE, '').replace(SEEN, '');
  return less.length > 2 ? less : condition;
}

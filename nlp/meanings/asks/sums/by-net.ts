import { weighNote } from '../../../likely/net/weigh-note.ts';
import { charOf } from '../../../dimensions/line.ts';
import { type Desk, type Hit, sentenceAt } from '../desk.ts';
import type { Candidate } from './candidates.ts';
import type { SumKind } from './kind.ts';
import { SUM_KINDS } from './kinds.ts';
import { Scope } from './scope.ts';

/** So strongly the net must speak for a sum that no wording asks for (log odds). */
const SURE = 1;

/** A sum that the net is sure is asked and no wording of ours asks for: the one that the figures between the questions on either side of it make whole. */
export function byNet(desk: Desk, plain: readonly Hit[], have: readonly Candidate[]): Candidate[] {
  const { sheet } = desk, asked = have.some(c => c.score > 0) ? undefined : weighNote(sheet)?.asked().find(a => a.kind === 'sum');
  const token = asked && asked.z > SURE ? sheet.tokens.findIndex(t => t.end > asked.at.start) : -1;
  if (token < 0) return [];
  const at = charOf(desk.line, token), s = sentenceAt(desk, at);
  if (plain.some(p => p.start <= at && at < p.end)) return [];
  const floor = Math.max(0, ...plain.filter(p => p.end <= at).map(p => p.end)), ceiling = Math.min(desk.text.length, ...plain.filter(p => p.start > at).map(p => p.start));
  const start = Math.max(s.start, floor), end = Math.min(s.end, ceiling), text = desk.text.slice(floor, ceiling);
  const whole = SUM_KINDS.flatMap((kind): Candidate[] => {
    if (kind.unless?.test(text) || kind.word && !kind.word.test(text)) return [];
    const given = kind.given(new Scope(desk, floor, ceiling, start)), set = sets(kind).filter(fields => fields.every(f => given[f] !== undefined)).sort((a, b) => b.length - a.length)[0];
    return set ? [{ kind, start, end, score: 1 + set.length }] : [];
  });
  return whole.sort((a, b) => b.score - a.score).slice(0, 1);
}

/** The fields that make a sum whole. */
const sets = (kind: SumKind): readonly (readonly string[])[] => kind.telling ?? (kind.full ? [kind.full] : []);

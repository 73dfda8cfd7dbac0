import type { Entry } from '../../domain/model/entry.ts';
import type { Reading } from '../../domain/model/reading.ts';
import { compose } from '../say/reply.ts';
import { HELP } from '../say/help.ts';
import type { Recorded, Turn, TurnOut } from './types.ts';
import { lastSum, type LastSum } from './last-sum.ts';
import { firstPage } from './pages.ts';

/** Words about the conversation itself: more of a list, the long form, striking, keeping a sum. Undefined: not one of these after all. */
export function actOn(act: NonNullable<Reading['act']>, reading: Reading, turn: Turn, recorded: Recorded): TurnOut | undefined {
  if (reading.entries.length || reading.asks.length) return undefined;
  switch (act) {
    case 'more': return more(turn);
    case 'longer': return said(turn, [turn.page?.longer ?? turn.page?.lines.join('\n') ?? 'There is no more to it.']);
    case 'undo': return recorded(turn, [{ kind: 'amend', undo: true }], turn.note, {});
    case 'keep': return keep(turn, recorded);
    case 'help': return said(turn, [HELP]);
    case 'yes': case 'no': return said(turn, ['Nothing was asked.']);
  }
}

const said = (turn: Turn, lines: string[]): TurnOut => ({ reply: compose({ note: turn.note.id, at: turn.incoming.at, lines }) });

function more(turn: Turn): TurnOut {
  const lines = turn.page?.lines ?? [];
  if (!lines.length) return said(turn, ['That was all.']);
  const page = firstPage(lines);
  return { ...said(turn, [page.said]), page: { lines: page.rest, longer: turn.page?.longer } };
}

/** The result of the last sum as a reading, of the part it was for where the note names one. */
function keep(turn: Turn, recorded: Recorded): TurnOut {
  const sum = lastSum(turn.kept);
  const result = sum?.results.find(r => typeof r.value === 'number');
  if (!sum || !result) return said(turn, ['There is no sum to keep.']);
  const entry: Entry = { kind: 'reading', part: aboutPart(sum), what: result.name, value: result.value as number, ...(result.unit ? { unit: result.unit } : {}) };
  return recorded(turn, [entry], turn.note, {});
}

const aboutPart = (sum: LastSum): string => (typeof sum.given.part === 'string' ? sum.given.part : `${sum.of} sum`);

import type { Ask } from '../../domain/model/ask.ts';
import { lastNotes, noteById } from '../../domain/store/notes.ts';
import { answerGiven } from '../../nlp/meanings/asks/sums/answer.ts';
import { NOT_FETCHED } from '../say/model.ts';
import { compose } from '../say/reply.ts';
import type { ReadAndRecord, Recorded, Turn, TurnOut } from './types.ts';
import { choiceMeant } from './choice.ts';
import { contextOf } from './context.ts';
import { lastSum } from './last-sum.ts';
import { fetchAgreed } from './model-said.ts';
import type { OpenQuestion } from './open-question.ts';
import { readSafely } from './read-safely.ts';
import { unitAsked } from './unit-asked.ts';

interface Ways { readAndRecord: ReadAndRecord; recorded: Recorded }
type Open<K extends OpenQuestion['kind']> = Extract<OpenQuestion, { kind: K }>;

/** A note taken as the answer to the open question; undefined when it isn't one, and then it is a note like any other. */
export function answersOpen(turn: Turn, ways: Ways): TurnOut | undefined {
  const open = turn.open;
  if (!open || turn.incoming.edits) return undefined;
  switch (open.kind) {
    case 'entry': return entryChosen(open, turn, ways);
    case 'ask': return askChosen(open, turn, ways);
    case 'sum': return sumCompleted(open, turn, ways);
    case 'heard': return hearingConfirmed(open, turn, ways);
    case 'model': return fetchConfirmed(open, turn);
  }
}

function entryChosen(open: Open<'entry'>, turn: Turn, { recorded }: Ways): TurnOut | undefined {
  const value = choiceMeant(turn.incoming.text, open.choices);
  return value === undefined ? undefined : recorded(turn, [{ kind: 'amend', of: open.entry, field: open.field, value }], turn.note, {});
}

function askChosen(open: Open<'ask'>, turn: Turn, { recorded }: Ways): TurnOut | undefined {
  const value = choiceMeant(turn.incoming.text, open.choices);
  return value === undefined ? undefined : recorded(turn, [], turn.note, { asks: [{ ...open.ask, [open.field]: value } as Ask] });
}

/**
 * A bare figure or word is the input that was asked for, and takes nothing else along. Any other answer is read together with what was
 * asked, so that "grade 5" or "oiled" falls into its place whatever form it takes; it fills only what was not given before.
 */
function sumCompleted(open: Open<'sum'>, turn: Turn, { recorded }: Ways): TurnOut | undefined {
  const said = choiceMeant(turn.incoming.text, open.choices) ?? turn.incoming.text;
  const need = open.needs[0];
  const ctx = contextOf(turn);
  const plain = need === undefined ? undefined : answerGiven(need, said, { ...ctx, prior: [] });
  const given = plain ? { ...open.given, ...plain } : { ...givenTogether(open, said, turn), ...open.given };
  // Another figure may do as well as the one asked for: "fifty percent" where the cold was asked.
  if (need && given[need] === undefined && !plain) return undefined;
  return recorded({ ...turn, sumSaid: [open.said] }, [], turn.note, { asks: [{ kind: 'sum', of: open.of, given }] });
}

/** What a sum is given when its question and some further words are read as one. */
function givenTogether({ of, said }: { of: string; said: string }, more: string, turn: Turn): Record<string, unknown> {
  const ctx = contextOf(turn);
  const together = readSafely(`${said.replace(/[?.!\s]+$/, '')}, ${more}`, { ...ctx, prior: [] }, turn.deps);
  const again = together.asks.find(a => a.kind === 'sum' && a.of === of);
  return again?.kind === 'sum' ? again.given : {};
}

/** A word or two right after a sum ("oiled", "grade 8") are meant for it, though they could say a deed; with "it" they say one. */
export function rightAfterSum({ kept, incoming, note, deps }: Turn): boolean {
  const words = incoming.text.trim().toLowerCase().split(/\s+/);
  const last = lastSum(kept)?.note;
  if (last === undefined || words.length > 2 || words.some(w => /^(it|them|that|this)\b/.test(w))) return false;
  return lastNotes(deps.log.store, incoming.chat, 1, note.id)[0]?.id === last;
}

/** A few words that say nothing by themselves but change the sum just asked: "oiled", "and grade 8". Undefined when they don't. */
export function variesSum(turn: Turn, { recorded }: Pick<Ways, 'recorded'>): TurnOut | undefined {
  const last = lastSum(turn.kept);
  if (!last || turn.incoming.text.trim().split(/\s+/).length > 6) return undefined;
  const given = { ...last.given, ...givenTogether(last, turn.incoming.text, turn) };
  // The same figures in another unit are asked for by the unit alone: "in newton metres?".
  if (JSON.stringify(given) === JSON.stringify(last.given) && !unitAsked(turn.incoming.text)) return undefined;
  return recorded({ ...turn, sumSaid: [last.said] }, [], turn.note, { asks: [{ kind: 'sum', of: last.of, given }] });
}

/** A plain yes or no. */
const yesOrNo = (turn: Turn, choices: readonly string[]): string | undefined =>
  choiceMeant(turn.incoming.text, choices) ?? (/^(yes|yep|yeah|right|correct|that's right)\b/i.test(turn.incoming.text.trim()) ? 'yes' : undefined);

function fetchConfirmed(open: Open<'model'>, turn: Turn): TurnOut | undefined {
  const said = yesOrNo(turn, open.choices);
  if (said === 'no') return { reply: compose({ note: turn.note.id, at: turn.incoming.at, lines: [NOT_FETCHED] }) };
  return said === 'yes' ? fetchAgreed(turn, open.model) : undefined;
}

function hearingConfirmed(open: Open<'heard'>, turn: Turn, { readAndRecord }: Ways): TurnOut | undefined {
  const said = yesOrNo(turn, open.choices);
  if (said === 'no') return { reply: compose({ note: turn.note.id, at: turn.incoming.at, lines: ['Not logged; the sound is kept. Say or type it again.'] }) };
  const note = said === 'yes' ? noteById(turn.deps.log.store, open.note) : undefined;
  return note && readAndRecord(turn, open.said, note);
}


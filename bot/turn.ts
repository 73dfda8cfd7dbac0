import type { Ask } from '../domain/model/ask.ts';
import type { Entry } from '../domain/model/entry.ts';
import type { NearMiss } from '../domain/model/reading.ts';
import type { Note, StoredEntry } from '../domain/model/stored.ts';
import { catchUp } from '../domain/log/keeper.ts';
import { record } from '../domain/log/record.ts';
import { warnings } from '../domain/answers/warn.ts';
import { readChat, writeChat } from '../domain/store/chats.ts';
import { keepHeard } from '../domain/store/heard.ts';
import { keepNote, keepUnread, noteByKey } from '../domain/store/notes.ts';
import { keepReply } from '../domain/store/replies.ts';
import type { Incoming, Reply } from './incoming.ts';
import { keptForm } from './talk.ts';
import { wholeFinish } from './planning/asked-day.ts';
import { keepSpokenOf } from './planning/refuse.ts';
import { refusedOrders } from './planning/settings.ts';
import { aboutThePlan } from './planning/ways.ts';
import { answerAsks } from './turn/answers.ts';
import { answersOpen, rightAfterSum, variesSum } from './turn/answered-question.ts';
import { contextOf, machineAsSaid } from './turn/context.ts';
import type { Deps } from './turn/deps.ts';
import { actOn } from './turn/acts.ts';
import { leansOf } from './turn/leans.ts';
import { modelSaid } from './turn/model-said.ts';
import { linkPhotos } from './turn/photos.ts';
import { openQuestion, type OpenQuestion } from './turn/open-question.ts';
import { heldPage } from './turn/pages.ts';
import { readSafely } from './turn/read-safely.ts';
import { sampleLoaded } from './turn/sample-said.ts';
import { settingsSaid } from './turn/settings.ts';
import { struckNote } from './turn/strike.ts';
import { unsureWords } from './turn/unsure-words.ts';
import { sayWarning } from './say/warning.ts';
import type { Said, Turn, TurnOut } from './turn/types.ts';
import { compose } from './say/reply.ts';

/**
 * One turn of the conversation, the same at every door: keep the note, read it, record what it says, answer what it asks.
 * Synchronous; `incoming.at` is the only clock. Call it inside the transaction that marks the message done, so that a note, its
 * entries, its reply and the state of the chat are kept together or not at all. `aside`: what its door or the hearing has to say first.
 */
export function takeTurn(incoming: Incoming, deps: Deps, aside?: string): Reply {
  const { log } = deps;
  catchUp(log);
  const chat = readChat(log.store, incoming.chat);
  const replaced = incoming.edits === undefined ? undefined : noteByKey(log.store, incoming.edits);
  const { note } = keepNote(log.store, {
    key: incoming.key, at: incoming.at, door: incoming.door, chat: incoming.chat, text: incoming.text, machine: chat.machine, edits: replaced?.id,
  });
  const { spoken } = incoming;
  if (spoken) keepHeard(log.store, note.id, spoken);
  const turn: Turn = { incoming, deps, note, machine: chat.machine, open: openQuestion(chat.open), page: heldPage(chat.page), kept: chat.kept };
  const out = understood(turn);
  // What was heard is said first, so that a wrong word is seen before what was made of it; a doubtful hearing says it in its question.
  const first = [aside, spoken && incoming.text && out.open?.kind !== 'heard' ? `I heard: "${incoming.text}"` : undefined].filter(Boolean);
  if (first.length) out.reply.say = [...first, out.reply.say].join('\n');
  writeChat(log.store, incoming.chat, { machine: out.machine ?? chat.machine, open: out.open, page: out.page ?? chat.page, kept: out.kept ?? chat.kept });
  keepUnread(log.store, note.id, out.reply.unread);
  linkPhotos(log, note, incoming, out.reply.entries, out.machine ?? chat.machine);
  keepReply(log.store, note.id, keptForm(out.reply));
  return out.reply;
}

/** The ways a note can be meant, in the order they are tried. */
function understood(turn: Turn): TurnOut {
  return answersOpen(turn, { readAndRecord, recorded }) ?? struckNote(turn, recorded) ?? sampleLoaded(turn, takeTurn) ?? doubtful(turn) ?? modelSaid(turn) ?? settingsSaid(turn, readAndRecord) ?? readAndRecord(turn, turn.incoming.text, turn.note);
}

/** A doubtful hearing, or one whose entries lean on words that may be misheard, is asked about first; nothing of it is logged. */
function doubtful(turn: Turn): TurnOut | undefined {
  const { spoken, text } = turn.incoming;
  const leans = leansOf(turn);
  if (!spoken || !spoken.doubtful && !leans.length) return undefined;
  const words = unsureWords(text, leans, spoken.unsure);
  const unsure = words.length ? ` I'm unsure of: ${words.join(', ')}.` : '';
  const question = `I heard "${text}"${/[.?!]$/.test(text) ? '' : '.'}${unsure} Is that right?`;
  const open: OpenQuestion = { kind: 'heard', text: question, choices: ['yes', 'no'], note: turn.note.id, said: text };
  return { reply: compose({ note: turn.note.id, at: turn.incoming.at, open }), open };
}

/** Reads words as said in `note`, records what they say and answers what they ask. */
function readAndRecord(turn: Turn, text: string, note: Note): TurnOut {
  if (!text.trim()) return { reply: compose({ note: note.id, at: turn.incoming.at, lines: [turn.incoming.media?.length ? 'Kept.' : 'That was empty: nothing to read.'] }) };
  const planned = aboutThePlan({ ...turn, note, incoming: { ...turn.incoming, text } }, { readAndRecord, recorded });
  if (planned) return planned;
  const reading = readSafely(text, contextOf({ ...turn, note }), turn.deps);
  const acted = reading.act && actOn(reading.act, reading, turn, recorded);
  if (acted) return acted;
  const silent = !reading.entries.some(e => e.kind !== 'remark') && !reading.asks.length && !reading.machine;
  const varied = silent || rightAfterSum(turn) ? variesSum(turn, { recorded }) : undefined;
  if (varied) return varied;
  const whole = silent ? wholeFinish(text) : undefined;
  if (whole) return recorded(turn, [], note, { asks: [whole] });
  const machine = reading.machine === undefined ? undefined : machineAsSaid(turn.deps.log, reading.machine, text, turn.machine);
  const entries = machine ? reading.entries.map(e => ({ ...e, machine: e.machine ?? machine })) : reading.entries;
  return recorded({ ...turn, machine: machine ?? turn.machine }, entries, note, { ...reading, machine });
}

/** Records entries and answers the asks of a reading; the common end of every kind of turn that logs. */
function recorded(turn: Turn, entries: readonly Entry[], note: Note, reading: Said): TurnOut {
  const { deps, incoming } = turn;
  const now = { at: incoming.at, zone: deps.zone };
  const warned = warnings(deps.log.shop, entries, now, turn.machine, refusedOrders(deps.log));
  const kept = entries.filter((_, i) => !warned.refused.includes(i));
  const stored = record(deps.log, note, kept);
  const near = reading.questions?.[0];
  const pending = near?.fills?.list === 'asks' ? near.fills.index : -1;
  const asks = reading.asks ?? [];
  const answered = answerAsks(asks.filter((_, i) => i !== pending), turn);
  keepSpokenOf(turn, warned.warnings, answered.answers);
  const open = answered.open ?? (near ? asOpen(near, entries, stored, asks) : undefined);
  return {
    reply: compose({
      note: note.id, at: incoming.at, entries: stored, asks, answered, open, files: answered.files, unread: reading.unread,
      warnings: warned.warnings.map(w => sayWarning(w, { at: incoming.at })), machine: reading.machine, switched: reading.switches,
    }),
    machine: reading.machine, open, page: answered.page, kept: answered.sum,
  };
}

/** A near miss as the question that the chat keeps open; without a recorded entry to fill it is only said. */
function asOpen(near: NearMiss, entries: readonly Entry[], stored: readonly StoredEntry[], asks: readonly Ask[]): OpenQuestion | undefined {
  const { fills, text, choices } = near;
  if (fills?.list === 'asks') {
    const ask = asks[fills.index];
    return ask && { kind: 'ask', text, choices, ask, field: fills.field };
  }
  const said = fills && entries[fills.index];
  const entry = said && stored.find(s => s.entry.kind === said.kind && naming(s.entry) === naming(said));
  return entry && fills ? { kind: 'entry', text, choices, entry: entry.id, field: fills.field } : undefined;
}

const naming = (e: Entry): unknown => ('part' in e ? e.part : 'item' in e ? e.item : e.kind);

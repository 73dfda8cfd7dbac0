import { putOff, stopReminder } from '../../domain/store/reminders.ts';
import { lastNotes } from '../../domain/store/notes.ts';
import { readUnaskedReply, type UnaskedReply } from '../../nlp/settings/put-off.ts';
import { BENCH } from '../incoming.ts';
import { isoAt, momentOf } from '../reminders/local-time.ts';
import { saidWords, type SaidWord } from '../reminders/said-words.ts';
import { chooseMorning, reminderSettings, USUAL_MORNING } from '../reminders/settings.ts';
import { compose } from '../say/reply.ts';
import { sayPutOff, sayStopped } from '../say/settings.ts';
import type { Turn, TurnOut } from './types.ts';
import { firstPage } from './pages.ts';

/** "Remind me Monday" is about the last word unasked if that is not older than this, hours. */
const FRESH_HOURS = 24;
const EVENING = '18:00';

/**
 * A note that answers a word unasked: put it off, stop it, more of it. Few plain words ("later", "more", "why") mean that only when nothing
 * else was said since; with words that name it ("remind me Monday", a button) it may be older. Undefined: not an answer to one.
 */
export function unaskedAnswered(turn: Turn): TurnOut | undefined {
  const { incoming: { text, at, chat }, deps: { log: { store } }, note } = turn;
  const said = readUnaskedReply(text, at);
  const word = said && chat === BENCH ? meant(said, turn) : undefined;
  if (!said || !word) return undefined;
  const reply = (lines: string[]): TurnOut => ({ reply: compose({ note: note.id, at, lines }) });
  switch (said.do) {
    case 'later': {
      const until = untilOf(said, turn);
      for (const { key } of word.items) putOff(store, key, isoAt(until, turn.deps.zone));
      return reply([sayPutOff(until, { at, zone: turn.deps.zone })]);
    }
    case 'stop': {
      for (const { stop, topic } of word.items) topic === 'morning' ? chooseMorning(store, undefined) : stopReminder(store, stop);
      return reply([sayStopped(word.items.map(i => i.topic))]);
    }
    case 'more': {
      if (!word.more.length) return reply(['That was all.']);
      const page = firstPage(word.more);
      return { ...reply([page.said]), page: { lines: page.rest } };
    }
  }
}

function meant(said: UnaskedReply, { incoming: { at, chat }, deps: { log: { store } }, note }: Turn): SaidWord | undefined {
  const words = saidWords(store);
  if (said.word !== undefined) return words.find(w => w.n === said.word);
  const last = words.at(-1);
  const age = last === undefined ? Infinity : Date.parse(at) - Date.parse(last.at);
  if (age < 0 || age > FRESH_HOURS * 3_600_000) return undefined;
  const before = lastNotes(store, chat, 1, note.id)[0];
  return said.plain && before && Date.parse(before.at) >= Date.parse(last!.at) ? undefined : last;
}

function untilOf(said: Extract<UnaskedReply, { do: 'later' }>, { incoming: { at }, deps: { log: { store }, zone } }: Turn): number {
  if ('hours' in said) return Date.parse(at) + said.hours * 3_600_000;
  const morning = reminderSettings(store).morning ?? USUAL_MORNING;
  return Math.max(Date.parse(at), momentOf(said.day, said.evening ? EVENING : morning, zone));
}

import { MILE_RATE, writeSetting } from '../../domain/store/settings.ts';
import { readShopSetting, type ShopSetting } from '../../nlp/settings/place.ts';
import { readReminderSetting, type ReminderSetting } from '../../nlp/settings/reminders.ts';
import { chooseAbout, chooseMorning, chooseQuiet, chooseTopic, reminderSettings, USUAL_MORNING } from '../reminders/settings.ts';
import { saySetting } from '../say/settings.ts';
import { compose } from '../say/reply.ts';
import type { ReadAndRecord, Turn, TurnOut } from './types.ts';
import { rounded } from '../weather/provider.ts';
import { FORECAST, PLACE } from '../weather/shop-weather.ts';
import { unaskedAnswered } from './unasked-answered.ts';

export type Setting = ReminderSetting | ShopSetting;

/**
 * A note that chooses how the program behaves, or answers a word unasked. Each choice is acted on and read back in a line; sentences that say
 * something else beside it are read as ever. Undefined: nothing of the kind. A note that is an edit changes settings too: the last word counts.
 */
export function settingsSaid(turn: Turn, readAndRecord: ReadAndRecord): TurnOut | undefined {
  const { incoming: { text, at }, note } = turn;
  const answered = unaskedAnswered(turn);
  if (answered) return answered;
  const { settings, rest } = settingsIn(text);
  if (!settings.length) return undefined;
  const lines = settings.map(s => saySetting(s, act(s, turn)));
  if (!rest) return { reply: compose({ note: note.id, at, lines }) };
  const out = readAndRecord(turn, rest, note);
  return { ...out, reply: { ...out.reply, say: [...lines, out.reply.say].join('\n') } };
}

const read = (sentence: string): Setting | undefined => readReminderSetting(sentence) ?? readShopSetting(sentence);

/** The settings of a note by its sentences (and by "…and…" where both halves are settings), and the sentences that are none. */
function settingsIn(text: string): { settings: Setting[]; rest: string } {
  const settings: Setting[] = [];
  const rest: string[] = [];
  for (const sentence of text.length > 1_000 ? [] : text.split(/(?<=[.!?;])\s+|\n+/)) {
    const whole = read(sentence);
    const halves = sentence.split(/,? and (?=\D)|, /);
    const both = whole ? [] : halves.map(read);
    if (whole) settings.push(whole);
    else if (both.length > 1 && both.every(s => s !== undefined)) settings.push(...both);
    else if (sentence.trim()) rest.push(sentence);
  }
  return { settings, rest: rest.join(' ') };
}

/** What a setting came to, where its words depend on it. */
export interface Chosen { morning?: string; fetches?: boolean; placed?: boolean }

function act(s: Setting, { deps: { log: { store }, weather } }: Turn): Chosen {
  switch (s.set) {
    case 'morning': {
      const at = 'at' in s ? s.at : s.on ? reminderSettings(store).morning ?? USUAL_MORNING : undefined;
      chooseMorning(store, at);
      if (at) chooseTopic(store, 'morning', true);
      return at ? { morning: at } : {};
    }
    case 'quiet': chooseQuiet(store, 'from' in s ? s : undefined); return {};
    case 'topic': chooseTopic(store, s.topic, s.on); return {};
    case 'about': chooseAbout(store, s.name, s.on); return {};
    case 'place': {
      const { latitude, longitude } = rounded(s);
      writeSetting(store, PLACE, `${latitude},${longitude}`);
      return { fetches: weather?.isFetched() ?? false };
    }
    case 'forecast': writeSetting(store, FORECAST, s.on ? 'on' : 'off'); return { placed: weather?.site() !== undefined };
    case 'mile rate': writeSetting(store, MILE_RATE, String(s.rate)); return {};
  }
}

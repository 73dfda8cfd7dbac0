import { nameKey } from '../../domain/model/names.ts';
import { readSetting, writeSetting } from '../../domain/store/settings.ts';
import type { Store } from '../../domain/store/open.ts';
import { TOPICS, type Topic } from '../../nlp/settings/reminders.ts';
import type { Quiet } from './local-time.ts';

/** What the person chose about words unasked. */
export interface ReminderSettings {
  /** HH:MM of the morning word; undefined: none. */
  morning?: string;
  quiet?: Quiet;
  /** Topics that are never spoken of. */
  off: ReadonlySet<Topic>;
  /** Name keys of things that are never spoken of. */
  offAbout: ReadonlySet<string>;
}

/** Until the person chooses: a morning word at seven, and nothing between nine at night and seven. */
export const USUAL_MORNING = '07:00';
const USUAL_QUIET: Quiet = { from: '21:00', to: '07:00' };

const MORNING = 'morning word';
const QUIET = 'quiet hours';
const OFF = 'words off';
const OFF_ABOUT = 'words off about';
const TIME = /^\d\d:\d\d$/;

/** A setting that can't be read counts as not chosen. */
export function reminderSettings(store: Store): ReminderSettings {
  const morning = readSetting(store, MORNING) ?? USUAL_MORNING;
  const [from = '', to = ''] = (readSetting(store, QUIET) ?? '').split('-');
  const quiet = TIME.test(from) && TIME.test(to) ? { from, to } : readSetting(store, QUIET) === 'off' ? undefined : USUAL_QUIET;
  const off = new Set((readSetting(store, OFF) ?? '').split(' ').filter((t): t is Topic => (TOPICS as readonly string[]).includes(t)));
  return { ...(morning === 'off' ? {} : { morning: TIME.test(morning) ? morning : USUAL_MORNING }), ...(quiet ? { quiet } : {}), off, offAbout: offAbout(store) };
}

/** `undefined`: no morning word. */
export const chooseMorning = (store: Store, at: string | undefined): void => writeSetting(store, MORNING, at ?? 'off');
export const chooseQuiet = (store: Store, quiet: Quiet | undefined): void => writeSetting(store, QUIET, quiet ? `${quiet.from}-${quiet.to}` : 'off');

export function chooseTopic(store: Store, topic: Topic | 'all', on: boolean): void {
  const off = new Set(reminderSettings(store).off);
  for (const t of topic === 'all' ? TOPICS : [topic]) on ? off.delete(t) : off.add(t);
  writeSetting(store, OFF, off.size ? [...off].join(' ') : undefined);
}

/** One name key a line. */
const offAbout = (store: Store): Set<string> => new Set((readSetting(store, OFF_ABOUT) ?? '').split('\n').filter(Boolean));

/** `name`: as said. */
export function chooseAbout(store: Store, name: string, on: boolean): void {
  const names = offAbout(store), key = nameKey(name);
  on ? names.delete(key) : names.add(key);
  writeSetting(store, OFF_ABOUT, names.size ? [...names].join('\n') : undefined);
}

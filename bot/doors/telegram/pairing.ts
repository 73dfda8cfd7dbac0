import type { Update } from 'grammy/types';
import { outbox } from '../../../domain/store/outbox.ts';
import { looksLikeCode, newPairingCode, pair, pairedPeople, tryPairingCode, type PairingResult } from '../../../domain/store/people.ts';
import type { Store } from '../../../domain/store/open.ts';
import { putOut } from '../../outbox.ts';
import { messageKey } from './keys.ts';
import type { BotDeps } from './bot.ts';
import type { Line } from './line.ts';
import { DOOR, type Sender } from './who.ts';

/** The line for the console while nobody is paired, with a fresh code; undefined once somebody is. `now` in ms since 1970. */
export const pairingLine = (store: Store, now: number): string | undefined =>
  (pairedPeople(store, DOOR).length ? undefined : `Pairing code: ${newPairingCode(store, now)}`);

const WELCOME = 'Paired. Say what you do and ask what you need; every word is kept. '
  + 'While Pawl is not running, the chat holds your messages for up to 24 hours.';

/** For the console; the sender sees nothing but silence, and nothing of what was sent is shown. */
const HEARD: Record<Exclude<PairingResult, 'none'>, string> = {
  right: 'Paired with the sender of the code.',
  wrong: 'A wrong pairing code was sent to the bot.',
  expired: 'A pairing code was sent to the bot after it had expired; make a new one.',
  locked: 'Too many wrong pairing codes: this one no longer works; make a new one.',
};

const pairedKey = (botId: string, chat: number, message: number) => `${messageKey(botId, chat, message)}:paired`;

/** A stranger may do one thing: send the code, typed, as a plain private message. Anything else leaves no trace. */
export function tryToPair(deps: Omit<BotDeps, 'intake'>, update: Update, { user, chat, message: m }: Sender): void {
  const { store, line, now, log } = deps;
  if (!m || !update.message || chat.type !== 'private' || m.forward_origin || m.via_bot || m.text === undefined || !looksLikeCode(m.text)) return;
  const code = m.text;
  const result = store.transaction(() => {
    const tried = tryPairingCode(store, code, now());
    if (tried !== 'right') return tried;
    const at = line.moment(m.date);
    pair(store, DOOR, user, at);
    putOut(store, { key: pairedKey(line.botId, chat.id, m.message_id), door: DOOR, at }, { target: String(chat.id), say: WELCOME, buttons: [], files: [] });
    return tried;
  });
  if (result !== 'none') log(HEARD[result]);
  if (result === 'right') deps.onOut?.();
}

/** Whether a message is the one that paired its sender, come a second time: the code is never kept, not even then. */
export const isPairingMessage = (store: Store, line: Line, { message: m }: Sender): boolean =>
  m?.text !== undefined && looksLikeCode(m.text) && outbox.byKey(store, pairedKey(line.botId, m.chat.id, m.message_id)) !== undefined;

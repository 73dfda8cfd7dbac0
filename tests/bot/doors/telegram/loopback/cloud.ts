import type { CallbackQuery, Chat, Message, Update, User } from 'grammy/types';

/** A person, a group or a file as the loopback platform knows it, and everything that was sent. No network here. */
export interface SentMessage {
  id: number; chat: number; text: string; buttons: { text: string; data: string }[];
  /** Files that went out, by kind, with the bytes as they arrived. */
  files: { kind: string; bytes: Uint8Array; name: string }[];
}
export interface CloudFile { bytes: Uint8Array; path: string; /** What getFile says it weighs; undefined: nothing is said. */ says?: number }

/** Updates live this long at the platform, in seconds (tdlib/telegram-bot-api Client.cpp, add_update: 86400 and 150). */
const MESSAGE_LIFE = 86_400;
const PRESS_LIFE = 150;

export class Cloud {
  readonly bot: User = { id: 4_242_001, is_bot: true, first_name: 'Pawl', username: 'loopback_pawl_bot' };
  token = `${this.bot.id}:LoopbackLoopbackLoopbackLoopback_1`;
  readsAll = false;
  revoked = false;
  /** Seconds that the platform's clock is ahead of this computer's. */
  ahead = 0;
  queue: { update: Update; until: number }[] = [];
  /** Every update there ever was, to hand out again. */
  readonly past: Update[] = [];
  readonly sent: SentMessage[] = [];
  readonly answers: { id: string; text?: string }[] = [];
  readonly files = new Map<string, CloudFile>();
  readonly blocked = new Set<number>();
  readonly moved = new Map<number, number>();
  readonly chats = new Map<number, Chat>();
  readonly #messages = new Map<string, Message>();
  readonly #presses = new Map<string, number>();
  lastUpdateId = 700_000;
  readonly #lastMessage = new Map<number, number>();
  #lastPress = 9_000_000_000;
  onUpdate: () => void = () => {};

  now(): number { return Math.floor(Date.now() / 1000) + this.ahead; }
  nextMessageId(chat: number): number {
    const id = (this.#lastMessage.get(chat) ?? 0) + 1;
    this.#lastMessage.set(chat, id);
    return id;
  }
  /** After a quiet week the platform starts its numbering anew, at a random number (Bot API, Update.update_id). */
  jumpUpdateId(to: number): void { this.lastUpdateId = to; }

  push(body: Omit<Update, 'update_id'>, life = MESSAGE_LIFE): Update {
    const update: Update = { update_id: ++this.lastUpdateId, ...body };
    this.queue.push({ update, until: this.now() + life });
    this.past.push(update);
    this.onUpdate();
    return update;
  }
  /** Hands an old update out once more as it was: what a poller sees that did not get to confirm it. */
  repeat(update: Update): void {
    this.queue.unshift({ update, until: this.now() + MESSAGE_LIFE });
    this.onUpdate();
  }

  keep(m: Message): Message { this.#messages.set(`${m.chat.id}:${m.message_id}`, m); return m; }
  message(chat: number, id: number): Message | undefined { return this.#messages.get(`${chat}:${id}`); }

  press(query: Omit<CallbackQuery, 'id'>): string {
    const id = String(++this.#lastPress);
    this.#presses.set(id, this.now());
    this.push({ callback_query: { id, ...query } as CallbackQuery }, PRESS_LIFE);
    return id;
  }
  /** False when it is too late to answer, or no such press was there. */
  answerPress(id: string, text?: string): boolean {
    const at = this.#presses.get(id);
    if (at === undefined || this.now() - at > PRESS_LIFE) return false;
    this.answers.push({ id, text });
    return true;
  }
}

/** A person by a number; nobody real. */
export const person = (id: number): User => ({ id, is_bot: false, first_name: `Person ${id}` });

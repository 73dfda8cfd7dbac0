import type { Update } from 'grammy/types';
import type { Cloud } from './cloud.ts';
import { refuse, type Answer } from './refuse.ts';

/** What is not in it is not delivered unless asked for (Bot API, getUpdates, allowed_updates). */
const NOT_BY_DEFAULT = ['chat_member', 'message_reaction', 'message_reaction_count'];

interface Waiting { offset: number; limit: number; answer: (a: Answer) => void; timer: NodeJS.Timeout }

/**
 * getUpdates as the platform's own server does it (tdlib/telegram-bot-api, Client.cpp, do_get_updates and abort_long_poll): an offset
 * confirms everything below it; a negative one keeps that many from the end and forgets the rest; a long poll ends with the first
 * update, and a second long poll ends the first one with 409; limit 1-100, timeout at most 50 s.
 */
export class Polling {
  readonly #cloud: Cloud;
  #waiting: Waiting | undefined;
  #allowed: string[] | undefined;
  webhook = false;

  constructor(cloud: Cloud) {
    this.#cloud = cloud;
    cloud.onUpdate = () => this.#wake();
  }

  get(payload: { offset?: unknown; limit?: unknown; timeout?: unknown; allowed_updates?: unknown }): Promise<Answer> {
    if (this.webhook) return Promise.resolve(refuse(409, "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first"));
    if (Array.isArray(payload.allowed_updates)) this.#allowed = payload.allowed_updates as string[];
    const offset = this.#confirm(Number(payload.offset ?? 0));
    const limit = Math.min(100, Math.max(1, Number(payload.limit ?? 100)));
    const timeout = Math.min(50, Math.max(0, Number(payload.timeout ?? 0)));
    const updates = this.#ready(offset, limit);
    if (updates.length || timeout === 0) return Promise.resolve({ ok: true, result: updates });
    this.abort('Conflict: terminated by other getUpdates request; make sure that only one bot instance is running');
    return new Promise(answer => {
      const timer = setTimeout(() => this.#end({ ok: true, result: [] }), timeout * 1000);
      this.#waiting = { offset, limit, answer, timer };
    });
  }

  abort(why: string): void { this.#end(refuse(409, why)); }
  /** The connection of a waiting poll is gone. */
  gone(): void { this.#end({ ok: true, result: [] }); }

  #confirm(asked: number): number {
    const { queue } = this.#cloud;
    // An offset beyond the newest number is none of this numbering (TQueue: "in the future"), and reading starts at the head.
    if (asked > this.#cloud.lastUpdateId + 1) return 0;
    const offset = asked < 0 ? (queue.at(asked)?.update.update_id ?? queue[0]?.update.update_id ?? 0) : asked;
    this.#cloud.queue = queue.filter(q => q.update.update_id >= offset && q.until > this.#cloud.now());
    return offset;
  }
  #ready(offset: number, limit: number): Update[] {
    return this.#cloud.queue.filter(q => q.update.update_id >= offset && q.until > this.#cloud.now() && this.#wanted(q.update)).slice(0, limit).map(q => q.update);
  }
  #wanted(update: Update): boolean {
    const type = Object.keys(update).find(k => k !== 'update_id')!;
    return this.#allowed?.length ? this.#allowed.includes(type) : !NOT_BY_DEFAULT.includes(type);
  }
  #wake(): void {
    const w = this.#waiting;
    const updates = w && this.#ready(w.offset, w.limit);
    if (updates?.length) this.#end({ ok: true, result: updates });
  }
  #end(a: Answer): void {
    const w = this.#waiting;
    if (!w) return;
    this.#waiting = undefined;
    clearTimeout(w.timer);
    w.answer(a);
  }
}

import type { Progress, Service } from '../../service.ts';
import type { Store } from '../../../domain/store/open.ts';
import type { Line } from './line.ts';
import { addressOf } from './moved.ts';
import { DOOR } from './who.ts';

/** A message may be changed so often, ms; the platform slows down who changes more. */
const CHANGE_MS = 3_000;

interface Shown { message: Promise<number>; at: number }

/**
 * Shows how far long work is as one silent message that changes in place. It is a kindness and no reply: nothing waits for it, and what
 * can't be sent is left out. Returns how to stop.
 */
export function showProgress({ store, line }: { store: Store; line: Line }, service: Pick<Service, 'onProgress'>, now: () => number = Date.now): () => void {
  const shown = new Map<string, Shown>();
  const change = async (chat: number, { message }: Shown, text: string): Promise<void> => {
    await line.api.editMessageText(chat, await message, text);
  };
  const tell = ({ key, text, target, done }: Progress): void => {
    const chat = addressOf(store, Number(target));
    const there = shown.get(key);
    if (done) shown.delete(key);
    if (!there) {
      if (done) return;
      const message = line.api.sendMessage(chat, text, { disable_notification: true }).then(m => m.message_id);
      message.catch(() => {});
      shown.set(key, { message, at: now() });
    } else if (done || now() - there.at >= CHANGE_MS) {
      there.at = now();
      change(chat, there, text).catch(() => {});
    }
  };
  return service.onProgress(p => { if (p.door === DOOR && p.target !== undefined) tell(p); });
}

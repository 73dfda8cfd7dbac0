import { noteByKey } from '../domain/store/notes.ts';
import type { Store } from '../domain/store/open.ts';
import type { Reply } from './incoming.ts';
import { replyAgain } from './talk.ts';

/** How often a message is looked after that another process may be handling, ms. */
const LOOK_MS = 200;

/** Replies that doors wait for, whichever process makes them. */
interface AwaitedReplies {
  /** Resolves with the reply to a message. */
  to(key: string): Promise<Reply>;
  /** This process has made one. */
  came(key: string, reply: Reply): void;
}

export function awaitedReplies(store: Store): AwaitedReplies {
  const waiting = new Map<string, (r: Reply) => void>();
  return {
    to: key => new Promise(resolve => {
      const end = (reply: Reply): void => { clearInterval(look); waiting.delete(key); resolve(reply); };
      const look = setInterval(() => {
        try {
          const note = noteByKey(store, key);
          const reply = note && replyAgain(store, note.id);
          if (reply) end(reply);
        } catch { /* a store in trouble is looked at again; the message itself is safe in the intake */ }
      }, LOOK_MS);
      waiting.set(key, end);
    }),
    came: (key, reply) => waiting.get(key)?.(reply),
  };
}

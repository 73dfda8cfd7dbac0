import { readChat, writeChat } from '../domain/store/chats.ts';
import { noteById } from '../domain/store/notes.ts';
import { inOneTransaction, type Store } from '../domain/store/open.ts';
import { addReply } from '../domain/store/replies.ts';
import type { Later } from './incoming.ts';
import { letGo, type InHand } from './planning/in-hand.ts';
import type { Tell } from './receive.ts';
import type { Words } from './serve.ts';
import { keptForm } from './talk.ts';
import type { Page } from './turn/pages.ts';

interface HandedOutOptions {
  store: Store;
  workOut: (ask: Later, at: string, tell: Tell) => Promise<Words>;
  /** How far the work of a task is. */
  tell: (task: InHand, ...how: Parameters<Tell>) => void;
  /** Puts the answer on its way; called in the transaction that keeps it. */
  send: (task: InHand, words: Words) => void;
  /** The answer is kept: doors that are live show it. */
  shown: (task: InHand, words: Words) => void;
}

/** Works out, beside everything else, what turns handed out. */
interface HandedOut { begin(task: InHand): void; /** Resolves when all that was begun is done. */ settled(): Promise<void> }

export function handedOut({ store, workOut, tell, send, shown }: HandedOutOptions): HandedOut {
  const working = new Set<Promise<void>>();
  /** "More" and "longer" go on from an answer that was worked out. */
  const turnTo = (note: number, page: Page): void => {
    const { chat } = noteById(store, note)!;
    writeChat(store, chat, { ...readChat(store, chat), page });
  };
  /** The answer is kept and put out, and the task let go of, in one transaction. False: another program has answered it. */
  const keep = (task: InHand, words: Words): boolean => inOneTransaction(store, () => {
    if (!letGo(store, task.key)) return false;
    send(task, words);
    addReply(store, task.note, keptForm(words));
    if (words.page) turnTo(task.note, words.page);
    return true;
  });
  return {
    begin(task) {
      const work = workOut(task.task, task.at, (text, done) => tell(task, text, done))
        .catch((): Words => ({ say: 'I could not work that out; ask again.', buttons: [], files: [] }))
        .then(words => { if (keep(task, words)) shown(task, words); })
        .catch((error: unknown) => console.error('An answer could not be kept; it is worked out again at the next start.', error));
      working.add(work);
      void work.finally(() => working.delete(work));
    },
    settled: async () => void await Promise.all(working),
  };
}

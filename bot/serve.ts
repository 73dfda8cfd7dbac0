import { saveSnapshot } from '../domain/log/keeper.ts';
import { readChat, writeChat } from '../domain/store/chats.ts';
import { intake } from '../domain/store/intake.ts';
import { mediaByHash, readMedia } from '../domain/store/media.ts';
import { noteById, noteByKey } from '../domain/store/notes.ts';
import { inOneTransaction } from '../domain/store/open.ts';
import type { Queued } from '../domain/store/queue.ts';
import { addReply, lastAnswered } from '../domain/store/replies.ts';
import { glance } from './glance.ts';
import type { Later, Reply } from './incoming.ts';
import { letGo, takeInHand, tasksInHand, type InHand } from './planning/in-hand.ts';
import { openIntake, type Intake } from './intake.ts';
import { byteType } from './kept-file.ts';
import { putOut } from './outbox.ts';
import { takesLong, messageOf, type Received, type Receiving, type Tell } from './receive.ts';
import type { DoorMessage, Progress, Service, Talk } from './service.ts';
import { keptForm, replyAgain, talkOf, talks } from './talk.ts';
import { takeTurn } from './turn.ts';
import { readContext } from './turn/context.ts';
import type { Deps } from './turn/deps.ts';
import type { Page } from './turn/pages.ts';
import { readSafely } from './turn/read-safely.ts';

/** Words with things to tap and pictures to show; `page`: what "more" and "longer" add. */
export type Words = Pick<Reply, 'say' | 'buttons' | 'files'> & { page?: Page };

interface ServeOptions {
  deps: Deps;
  receiving: Receiving;
  /** Doors that must be called back (chat): their replies leave by the outbox. */
  outboxDoors?: readonly string[];
  /** Works out what a turn handed out. */
  workOut?: (ask: Later, at: string, tell: Tell) => Promise<Words>;
  /** There is something new in the outbox. */
  onOut?: () => void;
  now?: () => number;
}

export interface RunningService extends Service {
  intake: Intake;
  /** Says something unasked: shown after the newest exchange at every live door, and sent to `target` where a door must be called. */
  tellUnasked(words: Words, to: { key: string; at: string; door?: string; target?: string }): void;
  /** Takes up what a program that was cut off had in hand; call it when the one long-running program starts. */
  resume(): void;
  close(): Promise<void>;
}

/** How often a message is looked after that another process may be handling, ms. */
const LOOK_MS = 200;

/** Puts the rooms together: durable intake, hearing, one turn in one transaction with the done-mark, reply by the way it came. */
export function createService(options: ServeOptions): RunningService {
  const { deps, receiving } = options;
  const { store } = deps.log;
  const talkers = new Set<(t: Talk) => void>();
  const progress = new Set<(p: Progress) => void>();
  const waiting = new Map<string, (r: Reply) => void>();
  const working = new Set<Promise<void>>();
  const tell = (talk: Talk | undefined): void => { if (talk) talkers.forEach(l => l(talk)); };

  const tellOf = ({ key, door }: Pick<Queued, 'key' | 'door'>) => (text: string, done?: boolean, target?: string): void => progress.forEach(p => p({ key, door, text, target, done }));

  const handle = async (row: Queued): Promise<void> => {
    const got = await messageOf(row, receiving, tellOf(row));
    const reply = inOneTransaction(store, () => turned(row, got));
    if (!reply) return;
    options.onOut?.();
    waiting.get(row.key)?.(reply);
    tell(talkOf(store, reply.note));
    heldOf(row, got, reply).forEach(later);
  };
  /** Turn, outgoing reply and done-mark; undefined when another process was first, or the row holds nothing to read. */
  const turned = (row: Queued, got: Received): Reply | undefined => {
    if (!intake.done(store, row.seq) || !got.incoming) return undefined;
    const reply = takeTurn(got.incoming, deps, got.aside);
    send(row, got.target, row.key, reply);
    if (options.workOut) heldOf(row, got, reply).forEach(one => takeInHand(store, one));
    return reply;
  };
  const heldOf = ({ key, at, door }: Queued, { target }: Received, { later: tasks = [], note }: Reply): InHand[] =>
    tasks.map((task, k) => ({ key: `${key}:later:${k}`, task, note, at, door, ...(target ? { target } : {}) }));
  const send = (row: Pick<Queued, 'door' | 'at'>, target: string | undefined, key: string, { say, buttons, files }: Words): void => {
    if (options.outboxDoors?.includes(row.door) && target) putOut(store, { key, door: row.door, at: row.at }, { target, say, buttons, files });
  };
  /** "More" and "longer" go on from an answer that was worked out. */
  const turnTo = (note: number, page: Page): void => {
    const { chat } = noteById(store, note)!;
    writeChat(store, chat, { ...readChat(store, chat), page });
  };
  const said = (note: number, at: string, door: string, words: Words): void => {
    addReply(store, note, keptForm(words));
    shown(note, at, door, words);
  };
  const shown = (note: number, at: string, door: string, words: Words): void => {
    options.onOut?.();
    tell({ id: note, at, door, text: '', ...words });
  };
  /** Works a task out beside everything else; its answer is kept and put out, and the task let go of, in one transaction. */
  const later = ({ key, task, note, at, door, target }: InHand): void => {
    if (!options.workOut) return;
    const work = options.workOut(task, at, (text, done) => tellOf({ key, door })(text, done, target)).catch((): Words => ({ say: 'I could not work that out; ask again.', buttons: [], files: [] })).then(words => {
      const isMine = inOneTransaction(store, () => {
        if (!letGo(store, key)) return false;
        send({ door, at }, target, key, words);
        addReply(store, note, keptForm(words));
        if (words.page) turnTo(note, words.page);
        return true;
      });
      if (isMine) shown(note, at, door, words);
    }).catch((error: unknown) => console.error('An answer could not be kept; it is worked out again at the next start.', error));
    working.add(work);
    void work.finally(() => working.delete(work));
  };

  /** A typed question may be answered while sound of the same chat is still being heard. */
  const onlyAsks = async (row: Queued): Promise<boolean> => {
    if (takesLong(row)) return false;
    const { incoming } = await messageOf(row, receiving, () => {});
    if (!incoming || incoming.media?.length) return false;
    const { entries, asks, act } = readSafely(incoming.text, readContext(deps.log, incoming, undefined, Number.MAX_SAFE_INTEGER), deps);
    return asks.length > 0 && !entries.length && !act;
  };
  const queue = openIntake(store, { handle, isSlow: takesLong, onlyAsks, now: options.now });

  /** Resolves with the reply to a message, whichever process handles it. */
  const answered = (key: string): Promise<Reply> => new Promise(resolve => {
    const end = (reply: Reply): void => { clearInterval(look); waiting.delete(key); resolve(reply); };
    const look = setInterval(() => {
      try {
        const note = noteByKey(store, key);
        const reply = note && replyAgain(store, note.id);
        if (reply) end(reply);
      } catch { /* a store in trouble is looked at again; the message itself is safe in the intake */ }
    }, LOOK_MS);
    waiting.set(key, end);
  });

  return {
    intake: queue,
    async take(m: DoorMessage): Promise<Reply> {
      const kept = await receiving.keep(m);
      // Nothing is waited for that could not be written down: put throws first. The loop takes it up only after this turn of the event loop.
      queue.put({ key: m.key, door: m.door, chat: m.chat, at: m.at, body: JSON.stringify(kept) });
      return answered(m.key);
    },
    tellUnasked(words, { key, at, door = 'unasked', target }) {
      inOneTransaction(store, () => send({ door, at }, target, key, words));
      const note = lastAnswered(store);
      if (note !== undefined) said(note, at, door, words);
    },
    resume: () => tasksInHand(store).forEach(later),
    glance: at => glance(deps, at),
    talk: (after, limit) => talks(store, after, limit),
    onTalk: l => { talkers.add(l); return () => talkers.delete(l); },
    onProgress: l => { progress.add(l); return () => progress.delete(l); },
    media(name) {
      const media = mediaByHash(store, name);
      return media && { bytes: readMedia(store, media), type: byteType(media) };
    },
    async close() {
      await queue.close();
      await Promise.all(working);
      // A snapshot only makes the next start faster; a full disk must not keep the program from stopping in order.
      try { saveSnapshot(deps.log); } catch (error) { console.error((error as Error).message); }
    },
  };
}

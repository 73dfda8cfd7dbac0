import { saveSnapshot } from '../domain/log/keeper.ts';
import { intake } from '../domain/store/intake.ts';
import { mediaByHash, readMedia } from '../domain/store/media.ts';
import { inOneTransaction } from '../domain/store/open.ts';
import type { Queued } from '../domain/store/queue.ts';
import { addReply, lastAnswered } from '../domain/store/replies.ts';
import { awaitedReplies } from './awaited-replies.ts';
import { glance } from './glance.ts';
import { handedOut } from './handed-out.ts';
import type { Later, Reply } from './incoming.ts';
import { openIntake, type Intake } from './intake.ts';
import { byteType } from './kept-file.ts';
import { putOut } from './outbox.ts';
import { takeInHand, tasksInHand, type InHand } from './planning/in-hand.ts';
import { takesLong, messageOf, type Received, type Receiving, type Tell } from './receive.ts';
import type { DoorMessage, Progress, Service, Talk } from './service.ts';
import { keptForm, talkOf, talks } from './talk.ts';
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

/** Puts the rooms together: durable intake, hearing, one turn in one transaction with the done-mark, reply by the way it came. */
export function createService(options: ServeOptions): RunningService {
  const { deps, receiving } = options;
  const { store } = deps.log;
  const talkers = new Set<(t: Talk) => void>();
  const progress = new Set<(p: Progress) => void>();
  const awaited = awaitedReplies(store);
  const tell = (talk: Talk | undefined): void => { if (talk) talkers.forEach(l => l(talk)); };

  const tellOf = ({ key, door }: Pick<Queued, 'key' | 'door'>) => (text: string, done?: boolean, target?: string): void => progress.forEach(p => p({ key, door, text, target, done }));

  const handle = async (row: Queued): Promise<void> => {
    const got = await messageOf(row, receiving, tellOf(row));
    const reply = inOneTransaction(store, () => turned(row, got));
    if (!reply) return;
    options.onOut?.();
    awaited.came(row.key, reply);
    tell(talkOf(store, reply.note));
    heldOf(row, got, reply).forEach(begin);
  };
  /** Turn, outgoing reply and done-mark; undefined when another process was first, or the row holds nothing to read. */
  const turned = (row: Queued, got: Received): Reply | undefined => {
    if (!intake.done(store, row.seq) || !got.incoming) return undefined;
    const reply = takeTurn(got.incoming, deps, got.aside);
    send(row, got.target, row.key, reply);
    if (tasks) heldOf(row, got, reply).forEach(one => takeInHand(store, one));
    return reply;
  };
  const begin = (task: InHand): void => tasks?.begin(task);
  const heldOf = ({ key, at, door }: Queued, { target }: Received, { later = [], note }: Reply): InHand[] =>
    later.map((task, k) => ({ key: `${key}:later:${k}`, task, note, at, door, ...(target ? { target } : {}) }));
  const send = (row: Pick<Queued, 'door' | 'at'>, target: string | undefined, key: string, { say, buttons, files }: Words): void => {
    if (options.outboxDoors?.includes(row.door) && target) putOut(store, { key, door: row.door, at: row.at }, { target, say, buttons, files });
  };
  const shown = (note: number, at: string, door: string, words: Words): void => {
    options.onOut?.();
    tell({ id: note, at, door, text: '', ...words });
  };
  const tasks = options.workOut && handedOut({
    store, workOut: options.workOut,
    tell: (task, text, done) => tellOf(task)(text, done, task.target),
    send: (task, words) => send(task, task.target, task.key, words),
    shown: ({ note, at, door }, words) => shown(note, at, door, words),
  });

  /** A typed question may be answered while sound of the same chat is still being heard. */
  const onlyAsks = async (row: Queued): Promise<boolean> => {
    if (takesLong(row)) return false;
    const { incoming } = await messageOf(row, receiving, () => {});
    if (!incoming || incoming.media?.length) return false;
    const { entries, asks, act } = readSafely(incoming.text, readContext(deps.log, incoming, undefined, Number.MAX_SAFE_INTEGER), deps);
    return asks.length > 0 && !entries.length && !act;
  };
  const queue = openIntake(store, { handle, isSlow: takesLong, onlyAsks, now: options.now });

  return {
    intake: queue,
    async take(m: DoorMessage): Promise<Reply> {
      const kept = await receiving.keep(m);
      // Nothing is waited for that could not be written down: put throws first. The loop takes it up only after this turn of the event loop.
      queue.put({ key: m.key, door: m.door, chat: m.chat, at: m.at, body: JSON.stringify(kept) });
      return awaited.to(m.key);
    },
    tellUnasked(words, { key, at, door = 'unasked', target }) {
      inOneTransaction(store, () => send({ door, at }, target, key, words));
      const note = lastAnswered(store);
      if (note === undefined) return;
      addReply(store, note, keptForm(words));
      shown(note, at, door, words);
    },
    resume: () => tasksInHand(store).forEach(begin),
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
      await tasks?.settled();
      // A snapshot only makes the next start faster; a full disk must not keep the program from stopping in order.
      try { saveSnapshot(deps.log); } catch (error) { console.error((error as Error).message); }
    },
  };
}

import { mediaByHash, readMedia } from '../domain/store/media.ts';
import { byteType } from './kept-file.ts';
import { intake } from '../domain/store/intake.ts';
import type { Queued } from '../domain/store/queue.ts';
import { inOneTransaction } from '../domain/store/open.ts';
import { saveSnapshot } from '../domain/log/keeper.ts';
import { noteById, noteByKey } from '../domain/store/notes.ts';
import { replyTo } from '../domain/store/replies.ts';
import { glance } from './glance.ts';
import type { Reply } from './incoming.ts';
import { openIntake, type Intake } from './intake.ts';
import { putOut } from './outbox.ts';
import { isSound, messageOf, type Received, type Receiving } from './receive.ts';
import type { DoorMessage, Service, Talk } from './service.ts';
import { talkOf, talks } from './talk.ts';
import { takeTurn } from './turn.ts';
import { readContext } from './turn/context.ts';
import type { Deps } from './turn/deps.ts';
import { readSafely } from './turn/read-safely.ts';

/** What the service is made of. Doors that must be called back (chat) name how their rows are unpacked, and get their replies by the outbox. */
export interface ServeOptions {
  deps: Deps;
  receiving: Receiving;
  /** Doors whose replies leave by the outbox. */
  outboxDoors?: readonly string[];
  /** Answers that were handed out, worked out away from the turn. */
  workOut?: (ask: NonNullable<Reply['later']>[number], at: string) => Promise<string>;
  onOut?: () => void;
  now?: () => number;
}

export interface RunningService extends Service { intake: Intake; close(): Promise<void> }

/** Puts the rooms together: durable intake, hearing, one turn in one transaction with the done-mark, reply by the way it came. */
export function createService(options: ServeOptions): RunningService {
  const { deps, receiving } = options;
  const { store } = deps.log;
  const talkers = new Set<(t: Talk) => void>();
  const progress = new Set<(p: { key: string; text: string }) => void>();
  const waiting = new Map<string, (r: Reply) => void>();
  const report = (key: string) => (text: string) => progress.forEach(p => p({ key, text }));

  const handle = async (row: Queued): Promise<void> => {
    const got = await messageOf(row, receiving, report(row.key));
    finish(row, got);
  };
  /** The synchronous end: turn, outgoing reply and done-mark together, then whoever waits is told. */
  const finish = (row: Queued, got: Received): void => {
    const reply = inOneTransaction(store, () => {
      if (!intake.done(store, row.seq)) return undefined;
      if (!got.incoming) return undefined;
      const made = takeTurn(got.incoming, deps);
      const said = got.aside ? { ...made, say: `${got.aside}\n${made.say}` } : made;
      if (options.outboxDoors?.includes(row.door) && got.target)
        putOut(store, { key: row.key, door: row.door, at: row.at }, { target: got.target, say: said.say, buttons: said.buttons, files: said.files });
      return said;
    });
    if (!reply) return;
    options.onOut?.();
    waiting.get(row.key)?.(reply);
    waiting.delete(row.key);
    tell(reply.note);
    for (const ask of reply.later ?? []) void later(ask, row, got);
  };
  const tell = (note: number): void => {
    const t = talkOf(store, note);
    if (t) talkers.forEach(l => l(t));
  };
  const later = async (ask: NonNullable<Reply['later']>[number], row: Queued, got: Received): Promise<void> => {
    const say = await options.workOut?.(ask, row.at).catch(() => 'That sum of days came to grief; ask again.');
    if (say === undefined) return;
    if (options.outboxDoors?.includes(row.door) && got.target) {
      putOut(store, { key: `${row.key}:later:${ask.kind}`, door: row.door, at: row.at }, { target: got.target, say, buttons: [], files: [] });
      options.onOut?.();
    }
    const note = noteByKey(store, row.key);
    if (note) talkers.forEach(l => l({ id: note.id, at: row.at, door: row.door, text: '', say, buttons: [], files: [] }));
  };

  /** A typed question may be answered while sound of the same chat is still being heard. */
  const onlyAsks = async (row: Queued): Promise<boolean> => {
    if (isSound(row)) return false;
    const { incoming } = await messageOf(row, receiving, () => {});
    if (!incoming || incoming.media?.length) return false;
    const { entries, asks, act } = readSafely(incoming.text, readContext(deps.log, incoming, undefined, Number.MAX_SAFE_INTEGER), deps);
    return asks.length > 0 && !entries.length && !act;
  };
  const queue = openIntake(store, { handle, isSlow: isSound, onlyAsks, now: options.now });
  return {
    intake: queue,
    async take(m: DoorMessage): Promise<Reply> {
      const kept = await receiving.keep(m);
      const done = new Promise<Reply>(resolve => waiting.set(m.key, resolve));
      const fresh = queue.put({ key: m.key, door: m.door, chat: m.chat, at: m.at, body: JSON.stringify(kept) });
      return fresh ? done : again(m.key, done);
    },
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
      saveSnapshot(deps.log);
    },
  };

  /** A repeated message: what was answered then, or the answer of the one still in hand. */
  async function again(key: string, done: Promise<Reply>): Promise<Reply> {
    const note = noteByKey(store, key);
    const held = note && replyTo(store, note.id);
    if (!note || held === undefined) return done;
    waiting.delete(key);
    const { say, buttons, files } = JSON.parse(held) as Pick<Reply, 'say' | 'buttons' | 'files'>;
    return { note: note.id, entries: [], asks: [], answers: [], warnings: [], question: null, unread: noteById(store, note.id)?.unread ?? [], say, buttons, files };
  }
}

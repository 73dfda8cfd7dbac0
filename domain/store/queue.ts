import type { Store } from './open.ts';

/** A message on its way in or out. `at`: ISO; `notBefore`: ms since 1970; `body`: the message as JSON or words, read by its door alone. */
export interface Queued { seq: number; key: string; door: string; chat: string; at: string; body: string; state: 'new' | 'done' | 'parked'; tries: number; notBefore: number; error?: string }
export type NewQueued = Pick<Queued, 'key' | 'door' | 'chat' | 'at' | 'body'>;

interface Row extends Omit<Queued, 'notBefore' | 'error'> { not_before: number; error: string | null }

interface Queue {
  /** Puts a message in, durably, unless its key is there already (`fresh` false). */
  put(store: Store, message: NewQueued): { seq: number; fresh: boolean };
  /**
   * The message to handle now: the oldest new one of a chat that waits for nothing. A message that backs off holds back the later
   * ones of its chat, and of no other chat. `doors`: only those doors. Undefined: nothing to do.
   */
  next(store: Store, now: number, doors?: readonly string[]): Queued | undefined;
  /** When the next backed-off message becomes due, in ms since 1970. */
  nextDue(store: Store, doors?: readonly string[]): number | undefined;
  /** Marks a message handled. False: another process has already done so; roll back what was to go with it. */
  done(store: Store, seq: number): boolean;
  /** Counts a failed try and sets the moment before which it is not tried again. */
  again(store: Store, seq: number, error: string, notBefore: number): void;
  /** Keeps a message, and the later ones of its chat, back until a moment, without counting a try: it is in hand elsewhere. */
  hold(store: Store, seq: number, until: number): void;
  /** Lets go of what was held by a program that is no more; call it when the one long-running program starts. */
  release(store: Store): void;
  /** Sets a message aside for good, to be shown; `revive` takes it up again. */
  park(store: Store, seq: number, error: string): void;
  revive(store: Store, seq: number): void;
  parked(store: Store): Queued[];
  byKey(store: Store, key: string): Queued | undefined;
}

const doorsOf = (doors: readonly string[] | undefined): string => JSON.stringify(doors ?? null);
/** No list (JSON null) gives one row that is NULL: then any door will do. */
const OF_DOORS = `EXISTS (SELECT 1 FROM json_each(?) AS d WHERE d.value IS NULL OR d.value = door)`;
const full = ({ not_before, error, ...rest }: Row): Queued => ({ ...rest, notBefore: not_before, ...(error === null ? {} : { error }) });

/** A durable queue in the table of that name; `intake` and `outbox` are two of the same make. */
export function queueIn(table: 'intake' | 'outbox'): Queue {
  const head = `state = 'new' AND ${OF_DOORS} AND NOT EXISTS (SELECT 1 FROM ${table} AS early WHERE early.state = 'new' AND early.chat = ${table}.chat AND early.seq < ${table}.seq)`;
  return {
    put(store, m) {
      const done = store.run(`INSERT INTO ${table} (key, door, chat, at, body) VALUES (?, ?, ?, ?, ?) ON CONFLICT (key) DO NOTHING`, m.key, m.door, m.chat, m.at, m.body);
      const row = store.get<{ seq: number }>(`SELECT seq FROM ${table} WHERE key = ?`, m.key)!;
      return { seq: row.seq, fresh: done.changes > 0 };
    },
    next(store, now, doors) {
      const row = store.get<Row>(`SELECT * FROM ${table} WHERE ${head} AND not_before <= ? ORDER BY seq LIMIT 1`, doorsOf(doors), now);
      return row && full(row);
    },
    nextDue: (store, doors) => store.get<{ due: number | null }>(`SELECT min(not_before) AS due FROM ${table} WHERE ${head}`, doorsOf(doors))?.due ?? undefined,
    done: (store, seq) => store.run(`UPDATE ${table} SET state = 'done', error = NULL WHERE seq = ? AND state <> 'done'`, seq).changes > 0,
    again: (store, seq, error, notBefore) => { store.run(`UPDATE ${table} SET tries = tries + 1, error = ?, not_before = ? WHERE seq = ? AND state = 'new'`, error, notBefore, seq); },
    hold: (store, seq, until) => { store.run(`UPDATE ${table} SET not_before = ? WHERE seq = ? AND state = 'new'`, until, seq); },
    release: store => { store.run(`UPDATE ${table} SET not_before = 0 WHERE state = 'new' AND tries = 0 AND not_before > 0`); },
    park: (store, seq, error) => { store.run(`UPDATE ${table} SET state = 'parked', tries = tries + 1, error = ? WHERE seq = ? AND state = 'new'`, error, seq); },
    revive: (store, seq) => { store.run(`UPDATE ${table} SET state = 'new', tries = 0, not_before = 0 WHERE seq = ? AND state = 'parked'`, seq); },
    parked: store => store.all<Row>(`SELECT * FROM ${table} WHERE state = 'parked' ORDER BY seq`).map(full),
    byKey(store, key) {
      const row = store.get<Row>(`SELECT * FROM ${table} WHERE key = ?`, key);
      return row && full(row);
    },
  };
}

/** How long to wait after the n-th failed try, in ms: 2 s, 4 s, 8 s … at most 5 minutes. */
export const backOff = (tries: number): number => Math.min(300_000, 2_000 * 2 ** Math.max(0, tries - 1));

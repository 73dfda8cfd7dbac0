import { closeSync, existsSync, mkdirSync, openSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { asStoreError, StoreError } from './errors.ts';
import { migrate } from './migrate.ts';

type Values = (string | number | bigint | null | Uint8Array)[];

/** How long a writer waits for another process's writer before it gives up, in ms. */
const BUSY_MS = 5_000;

/**
 * The one database of a shop and the folder it lies in. Statements are prepared once; SQLite's errors come out as StoreError.
 * Another process may hold the same file open: nothing here is cached but statements.
 */
export class Store {
  /** Where media lie; undefined for a store in memory. */
  readonly dir: string | undefined;
  readonly file: string;
  /** How many transactions were rolled back: a fold of the log that saw such a one must be thrown away. */
  rollbacks = 0;
  readonly #db: Database.Database;
  readonly #statements = new Map<string, Database.Statement>();

  constructor(db: Database.Database, dir: string | undefined, file: string) {
    this.#db = db;
    this.dir = dir;
    this.file = file;
  }

  /** One row or undefined. */
  get<T>(sql: string, ...values: Values): T | undefined { return this.#guard(() => this.#prepare(sql).get(...values) as T | undefined); }
  all<T>(sql: string, ...values: Values): T[] { return this.#guard(() => this.#prepare(sql).all(...values) as T[]); }
  run(sql: string, ...values: Values): Database.RunResult { return this.#guard(() => this.#prepare(sql).run(...values)); }
  /** Rows one by one, for reading far through the log; no write may happen on this store meanwhile. */
  *each<T>(sql: string, ...values: Values): Generator<T> {
    try { for (const row of this.#prepare(sql).iterate(...values)) yield row as T; } catch (error) { throw asStoreError(error, this.file); }
  }
  pragma(text: string): unknown { return this.#guard(() => this.#db.pragma(text, { simple: true })); }

  /**
   * Runs `work` in one immediate transaction (inside another one: a savepoint). All of it is kept, durably, or none.
   * `work` is synchronous; an async function is refused by the binding with nothing kept.
   */
  transaction<T>(work: () => T): T {
    try {
      return this.#guard(() => this.#db.transaction(work).immediate());
    } catch (error) {
      this.rollbacks++;
      throw error;
    }
  }
  /** Reads that must see the log at one moment, whatever other processes write meanwhile. Writes nothing, and makes no writer wait. */
  reading<T>(work: () => T): T {
    return this.#db.inTransaction ? work() : this.#guard(() => this.#db.transaction(work).deferred());
  }
  get inTransaction(): boolean { return this.#db.inTransaction; }

  /** A whole copy of the log beside the running one, safe while others write (SQLite's online backup). */
  async backup(to: string): Promise<void> {
    try { await this.#db.backup(to); } catch (error) { throw asStoreError(error, this.file); }
  }
  close(): void { if (this.#db.open) this.#db.close(); }

  #prepare(sql: string): Database.Statement {
    let statement = this.#statements.get(sql);
    if (!statement) this.#statements.set(sql, statement = this.#db.prepare(sql));
    return statement;
  }
  #guard<T>(act: () => T): T {
    try { return act(); } catch (error) { throw asStoreError(error, this.file); }
  }
}

/**
 * Opens (or makes) the log `pawl.db` in `dir`; ':memory:' gives an empty one that is forgotten on close.
 * @throws StoreError with a sentence when it is corrupt, locked, read-only, of a newer program, or the disk is full.
 */
export function openStore(dir: string): Store {
  const inMemory = dir === ':memory:';
  const file = inMemory ? ':memory:' : join(dir, 'pawl.db');
  let db: Database.Database | undefined;
  try {
    if (!inMemory) makeOwn(dir, file);
    db = new Database(file, { timeout: BUSY_MS });
    setUp(db, inMemory);
    migrate(db, file);
    return new Store(db, inMemory ? undefined : dir, file);
  } catch (error) {
    db?.close();
    throw asStoreError(error instanceof TypeError ? Object.assign(error, { code: 'ENOENT' }) : error, file);
  }
}

/** Folder and file for their owner alone, whatever the usual mask is; SQLite gives the files beside it the same rights. */
function makeOwn(dir: string, file: string): void {
  mkdirSync(dir, { recursive: true, mode: 0o700 });
  if (!existsSync(file)) closeSync(openSync(file, 'a', 0o600));
}

/** A transaction over several concepts of the store: entries and the done-mark of their message, say. */
export const inOneTransaction = <T>(store: Store, work: () => T): T => store.transaction(work);

/**
 * The binding lowers `synchronous` to NORMAL once WAL is on, so FULL is set after it and read back, on every connection.
 * On a Mac a plain fsync leaves data in the drive, hence the two fullfsync switches.
 */
function setUp(db: Database.Database, inMemory: boolean): void {
  if (!inMemory && db.pragma('journal_mode = WAL', { simple: true }) !== 'wal')
    throw new StoreError('other', `The log ${db.name} can't be kept safely here: this file system does not allow a write-ahead log.`);
  db.pragma('synchronous = FULL');
  db.pragma('foreign_keys = ON');
  // Without this a REPLACE deletes rows past the triggers that hold notes and entries append-only.
  db.pragma('recursive_triggers = ON');
  db.pragma(`busy_timeout = ${BUSY_MS}`);
  if (process.platform === 'darwin') { db.pragma('fullfsync = ON'); db.pragma('checkpoint_fullfsync = ON'); }
  const held = db.pragma('synchronous', { simple: true });
  if (held !== 2) throw new StoreError('other', `The log ${db.name} can't be kept safely: SQLite holds synchronous=${String(held)} instead of FULL.`);
  if (db.pragma('foreign_keys', { simple: true }) !== 1) throw new StoreError('other', `The log ${db.name} can't be kept safely: foreign keys are off.`);
}

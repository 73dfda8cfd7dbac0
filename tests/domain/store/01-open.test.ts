import { chmodSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import Database from 'better-sqlite3';
import { StoreError } from '../../../domain/store/errors.ts';
import { migrate } from '../../../domain/store/migrate.ts';
import { MIGRATIONS } from '../../../domain/store/migrations.ts';
import { keepNote, noteCount } from '../../../domain/store/notes.ts';
import { inOneTransaction, openStore } from '../../../domain/store/open.ts';
import { aNote, freshDir } from './tools/fresh.ts';

const trouble = (act: () => unknown): StoreError => {
  try { act(); } catch (error) { if (error instanceof StoreError) return error; throw error; }
  throw new Error('it went through');
};

describe('opening the log', () => {
  // sqlite.org/pragma.html: synchronous 2 is FULL; in WAL only FULL flushes at every commit.
  it('holds every connection to full durability, though the binding lowers it once WAL is on', () => {
    const dir = freshDir();
    for (let n = 0; n < 3; n++) {
      const store = openStore(dir);
      onTestFinished(() => store.close());
      expect([store.pragma('journal_mode'), store.pragma('synchronous'), store.pragma('foreign_keys'), store.pragma('busy_timeout')]).toEqual(['wal', 2, 1, 5_000]);
      if (process.platform === 'darwin') expect([store.pragma('fullfsync'), store.pragma('checkpoint_fullfsync')]).toEqual([1, 1]);
    }
  });

  it('makes the folder where it is wanted', () => {
    const store = openStore(join(freshDir(), 'deep', 'er'));
    onTestFinished(() => store.close());
    expect(store.pragma('user_version')).toBe(MIGRATIONS.length);
  });

  it.skipIf(process.platform === 'win32')('makes files that only their owner can read', () => {
    const dir = freshDir();
    const store = openStore(dir);
    onTestFinished(() => store.close());
    keepNote(store, aNote());
    for (const file of ['pawl.db', 'pawl.db-wal', 'pawl.db-shm']) expect(statSync(join(dir, file)).mode & 0o077).toBe(0);
  });

  it('refuses a log of a newer program and leaves it as it is', () => {
    const dir = freshDir();
    openStore(dir).close();
    const raw = new Database(join(dir, 'pawl.db'));
    raw.pragma('user_version = 99');
    raw.close();
    const error = trouble(() => openStore(dir));
    expect(error.because).toBe('newer');
    expect(error.message).toMatch(/newer Pawl.*form 99/);
  });

  it('says of a damaged file that it is damaged, and does not touch it', () => {
    const dir = freshDir();
    writeFileSync(join(dir, 'pawl.db'), 'this was never a database, only words that lie where one should be.'.repeat(50));
    const before = readFileSync(join(dir, 'pawl.db'));
    const error = trouble(() => openStore(dir));
    expect(error.because).toBe('corrupt');
    expect(error.message).toMatch(/damaged.*backup/);
    expect(readFileSync(join(dir, 'pawl.db')).equals(before)).toBe(true);
  });

  it('says that the folder is no folder', () => {
    const dir = freshDir();
    writeFileSync(join(dir, 'file'), '');
    expect(trouble(() => openStore(join(dir, 'file'))).because).toBe('unreachable');
  });

  it('says that another program holds the log, and writes nothing', () => {
    const dir = freshDir();
    const store = openStore(dir);
    const other = new Database(join(dir, 'pawl.db'));
    onTestFinished(() => { other.close(); store.close(); });
    other.exec('BEGIN IMMEDIATE');
    store.pragma('busy_timeout = 50');
    const error = trouble(() => keepNote(store, aNote()));
    expect(error.because).toBe('locked');
    other.exec('ROLLBACK');
    expect(noteCount(store)).toBe(0);
    expect(keepNote(store, aNote()).fresh).toBe(true);
  });

  it('says that the disk is full, keeps nothing half, and goes on when there is room', () => {
    const store = openStore(freshDir());
    onTestFinished(() => store.close());
    store.pragma(`max_page_count = ${Number(store.pragma('page_count')) + 2}`);
    const error = trouble(() => inOneTransaction(store, () => { for (let i = 0; i < 100; i++) keepNote(store, aNote({ key: `k${i}`, text: 'x'.repeat(4_000) })); }));
    expect(error.because).toBe('full');
    expect(noteCount(store)).toBe(0);
    store.pragma('max_page_count = 1000000');
    expect(keepNote(store, aNote()).fresh).toBe(true);
  });

  it.skipIf(process.getuid?.() === 0 || process.platform === 'win32')('says that the file is read-only', () => {
    const dir = freshDir();
    openStore(dir).close();
    chmodSync(join(dir, 'pawl.db'), 0o400);
    chmodSync(dir, 0o500);
    onTestFinished(() => chmodSync(dir, 0o700));
    expect(trouble(() => openStore(dir)).because).toBe('read-only');
  });

  it('knows the codes of SQLite and of the file system for a read-only place', () => {
    const dir = freshDir();
    openStore(dir).close();
    const store = openStore(dir);
    onTestFinished(() => store.close());
    store.pragma('query_only = ON');
    expect(trouble(() => keepNote(store, aNote())).because).toBe('read-only');
  });
});

describe('reading', () => {
  it('sees the log at one moment, though another process writes between', () => {
    const dir = freshDir();
    const [one, two] = [openStore(dir), openStore(dir)];
    onTestFinished(() => { one.close(); two.close(); });
    const seen = one.reading(() => [noteCount(one), keepNote(two, aNote()).fresh, noteCount(one)]);
    expect([...seen, noteCount(one)]).toEqual([0, true, 0, 1]);
  });
});

describe('migrations', () => {
  const steps = ['CREATE TABLE a (x INTEGER) STRICT', 'CREATE TABLE b (x INTEGER) STRICT', 'CREATE TABLE c (x INTEGER) STRICT; CREATE TABLE a (x INTEGER)'];

  it('are made one a transaction: a failing step leaves the one before it whole', () => {
    const db = new Database(':memory:');
    expect(() => migrate(db, ':memory:', steps)).toThrow(/already exists/);
    expect(db.pragma('user_version', { simple: true })).toBe(2);
    expect(db.prepare(`SELECT name FROM sqlite_schema ORDER BY name`).pluck().all()).toEqual(['a', 'b']);
  });

  it('copy an older log beside itself before they change it', () => {
    const dir = freshDir();
    mkdirSync(dir, { recursive: true });
    const file = join(dir, 'pawl.db');
    const db = new Database(file);
    db.pragma('journal_mode = WAL');
    migrate(db, file, steps.slice(0, 1));
    db.exec('INSERT INTO a VALUES (7)');
    migrate(db, file, steps.slice(0, 2));
    db.close();
    const copy = new Database(`${file}.v1.backup`, { readonly: true });
    onTestFinished(() => { copy.close(); });
    expect([copy.pragma('user_version', { simple: true }), copy.prepare('SELECT x FROM a').pluck().get()]).toEqual([1, 7]);
  });

  it('make strict tables only, in which a word is no number', () => {
    const store = openStore(':memory:');
    const loose = store.all<{ name: string }>(`SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%'`);
    expect(loose).toEqual([]);
    expect(() => store.run(`INSERT INTO outbox (key, door, chat, at, body, tries) VALUES ('k', 'd', 'c', 'a', 'b', 'many')`)).toThrow(/cannot store TEXT value in INTEGER/);
  });
});

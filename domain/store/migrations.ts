/**
 * The form of the database, step by step; `user_version` counts the steps a file has had. A step once released is never changed.
 * STRICT tables: a value of the wrong type is refused, not bent. Notes and entries are append-only, held by triggers.
 */
const appendOnly = (table: string): string => `
  CREATE TRIGGER ${table}_never_changed BEFORE UPDATE ON ${table} BEGIN SELECT RAISE(ABORT, '${table} is append-only'); END;
  CREATE TRIGGER ${table}_never_deleted BEFORE DELETE ON ${table} BEGIN SELECT RAISE(ABORT, '${table} is append-only'); END;`;

const queue = (table: string): string => `
  CREATE TABLE ${table} (
    seq INTEGER PRIMARY KEY AUTOINCREMENT,
    key TEXT NOT NULL UNIQUE,
    door TEXT NOT NULL,
    chat TEXT NOT NULL,
    at TEXT NOT NULL,
    body TEXT NOT NULL,
    state TEXT NOT NULL DEFAULT 'new' CHECK (state IN ('new', 'done', 'parked')),
    tries INTEGER NOT NULL DEFAULT 0,
    not_before INTEGER NOT NULL DEFAULT 0,
    error TEXT
  ) STRICT;
  CREATE INDEX ${table}_waiting ON ${table} (seq) WHERE state = 'new';
  CREATE INDEX ${table}_parked ON ${table} (seq) WHERE state = 'parked';`;

const FIRST = `
  -- Word for word. exact: UTF-16 of a text that UTF-8 can't hold (lone surrogates).
  CREATE TABLE note (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    key TEXT NOT NULL UNIQUE,
    at TEXT NOT NULL,
    day TEXT NOT NULL,
    door TEXT NOT NULL,
    chat TEXT NOT NULL,
    text TEXT NOT NULL,
    exact BLOB,
    machine TEXT,
    edits INTEGER REFERENCES note (id)
  ) STRICT;
  CREATE INDEX note_by_day ON note (day, id);
  CREATE INDEX note_by_chat ON note (chat, id);
  ${appendOnly('note')}

  -- Of a spoken note: the recogniser's own words, before mending; the note holds the mended ones.
  CREATE TABLE heard (note INTEGER PRIMARY KEY REFERENCES note (id), raw TEXT NOT NULL, doubtful INTEGER NOT NULL) STRICT;
  ${appendOnly('heard')}

  CREATE TABLE unread (note INTEGER NOT NULL REFERENCES note (id), text TEXT NOT NULL, exact BLOB) STRICT;
  CREATE INDEX unread_by_note ON unread (note);
  ${appendOnly('unread')}

  -- body: the entry and what its names mean, as JSON. of: the entry that an amend strikes or changes.
  CREATE TABLE entry (
    id INTEGER PRIMARY KEY AUTOINCREMENT,
    note INTEGER NOT NULL REFERENCES note (id),
    at TEXT NOT NULL,
    machine TEXT,
    kind TEXT NOT NULL,
    of INTEGER REFERENCES entry (id),
    body TEXT NOT NULL
  ) STRICT;
  CREATE INDEX entry_by_note ON entry (note);
  CREATE INDEX entry_amends ON entry (of) WHERE of IS NOT NULL;
  ${appendOnly('entry')}

  -- Which parts of which machine an entry speaks of, by key.
  CREATE TABLE subject (
    machine TEXT NOT NULL,
    key TEXT NOT NULL,
    entry INTEGER NOT NULL REFERENCES entry (id),
    note INTEGER NOT NULL,
    PRIMARY KEY (machine, key, entry)
  ) STRICT, WITHOUT ROWID;
  ${appendOnly('subject')}

  -- What was answered to a note (part 0), and what was said after it unasked or when it was worked out, so that every door can show the talk again.
  CREATE TABLE reply (note INTEGER NOT NULL REFERENCES note (id), part INTEGER NOT NULL, body TEXT NOT NULL, PRIMARY KEY (note, part)) STRICT, WITHOUT ROWID;

  CREATE TABLE media (hash TEXT PRIMARY KEY, mime TEXT NOT NULL, ext TEXT NOT NULL, bytes INTEGER NOT NULL, at TEXT NOT NULL) STRICT, WITHOUT ROWID;
  CREATE TABLE media_link (
    hash TEXT NOT NULL REFERENCES media (hash),
    note INTEGER NOT NULL REFERENCES note (id),
    machine TEXT NOT NULL DEFAULT '',
    part TEXT,
    UNIQUE (hash, note, machine, part)
  ) STRICT;
  CREATE INDEX media_by_part ON media_link (machine, part);
  CREATE INDEX media_by_note ON media_link (note);

  ${queue('intake')}
  ${queue('outbox')}

  CREATE TABLE chat (chat TEXT PRIMARY KEY, machine TEXT, open TEXT, page TEXT, undo TEXT, kept TEXT) STRICT, WITHOUT ROWID;
  CREATE TABLE setting (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
  CREATE TABLE person (door TEXT NOT NULL, user_id INTEGER NOT NULL, at TEXT NOT NULL, revoked_at TEXT, PRIMARY KEY (door, user_id)) STRICT, WITHOUT ROWID;
  -- The code itself is never stored.
  CREATE TABLE pairing (
    one INTEGER PRIMARY KEY CHECK (one = 1), salt BLOB NOT NULL, hash BLOB NOT NULL, expires INTEGER NOT NULL, tries INTEGER NOT NULL
  ) STRICT;
  CREATE TABLE reminder (key TEXT PRIMARY KEY, said_at TEXT, put_off_until TEXT, stopped INTEGER NOT NULL DEFAULT 0) STRICT, WITHOUT ROWID;
  -- A fold of the log up to an entry, only to start faster; may be thrown away at any time.
  CREATE TABLE snapshot (entry INTEGER PRIMARY KEY, form TEXT NOT NULL, body BLOB NOT NULL) STRICT;
`;

export const MIGRATIONS: readonly string[] = [FIRST];

import { copyFileSync, existsSync } from 'node:fs';
import type Database from 'better-sqlite3';
import { StoreError } from './errors.ts';
import { MIGRATIONS } from './migrations.ts';

const versionOf = (db: Database.Database): number => db.pragma('user_version', { simple: true }) as number;

/**
 * Brings the file to the newest form, one step a transaction, so that a failing step leaves the one before it whole.
 * An older file that holds something is copied beside itself first (`pawl.db.v<N>.backup`).
 * @throws StoreError 'newer' when a newer program wrote the file.
 */
export function migrate(db: Database.Database, file: string, steps: readonly string[] = MIGRATIONS): void {
  const found = versionOf(db);
  if (found > steps.length)
    throw new StoreError('newer', `The log ${file} was written by a newer Pawl (form ${found}; this one knows ${steps.length}). Nothing was changed; use the newer program.`);
  if (found > 0 && found < steps.length && file !== ':memory:') keepCopy(db, file, found);
  while (versionOf(db) < steps.length) oneStep(db, steps);
}

/** Another process may have made the step meanwhile, so the version is read again inside the transaction. */
function oneStep(db: Database.Database, steps: readonly string[]): void {
  db.transaction(() => {
    const at = versionOf(db);
    const step = steps[at];
    if (step === undefined) return;
    db.exec(step);
    db.pragma(`user_version = ${at + 1}`);
  }).immediate();
}

/** The write-ahead log is folded into the file first: a copy of the file alone would miss what lies there. */
function keepCopy(db: Database.Database, file: string, version: number): void {
  const copy = `${file}.v${version}.backup`;
  if (existsSync(copy)) return;
  db.pragma('wal_checkpoint(TRUNCATE)');
  copyFileSync(file, copy);
}

/** Why the store could not do what was asked, in a sentence a person can act on. `because` is for programs. */
type StoreTrouble = 'corrupt' | 'locked' | 'read-only' | 'full' | 'newer' | 'unreachable' | 'other';

export class StoreError extends Error {
  readonly because: StoreTrouble;
  constructor(because: StoreTrouble, sentence: string, cause?: unknown) {
    super(sentence, { cause });
    this.name = 'StoreError';
    this.because = because;
  }
}

/** SQLite result codes by their family (sqlite.org/rescode.html); file system codes as Node names them. */
const FAMILIES: [RegExp, StoreTrouble, (file: string) => string][] = [
  [/^SQLITE_(CORRUPT|NOTADB)/, 'corrupt', f => `The log ${f} is damaged and was left as it is. Put a backup in its place, or move it aside to start an empty one.`],
  [/^SQLITE_(BUSY|LOCKED)/, 'locked', f => `The log ${f} is held by another program for too long. Nothing was written; try again in a moment.`],
  [/^(SQLITE_READONLY|EROFS|EACCES|EPERM|SQLITE_PERM|SQLITE_AUTH)/, 'read-only', f => `The log ${f} can't be written: the file or its folder is read-only for this user.`],
  [/^(SQLITE_FULL|ENOSPC|EDQUOT)/, 'full', f => `The disk that holds ${f} is full. Nothing was written; make room and say it again.`],
  [/^(SQLITE_CANTOPEN|ENOENT|ENOTDIR|EISDIR|ELOOP|ENAMETOOLONG|EEXIST)/, 'unreachable', f => `The log ${f} can't be opened: the folder isn't there or isn't a folder.`],
  [/^(SQLITE_IOERR|EIO)/, 'other', f => `The disk that holds ${f} gave an error. Nothing was written; look to the disk, and to a backup.`],
];

/** An error of SQLite or of the file system as a StoreError; constraint errors and our own faults pass unchanged. */
export function asStoreError(error: unknown, file: string): unknown {
  if (error instanceof StoreError) return error;
  const code = (error as { code?: unknown } | null)?.code;
  if (typeof code !== 'string') return error;
  const family = FAMILIES.find(([pattern]) => pattern.test(code));
  return family ? new StoreError(family[1], family[2](file), error) : error;
}

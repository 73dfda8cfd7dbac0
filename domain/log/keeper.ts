import { deserialize, serialize } from 'node:v8';
import { amendsAfter, entriesAfter, newestEntry } from '../store/entries.ts';
import type { Store } from '../store/open.ts';
import { keepSnapshot, newestSnapshot } from '../store/snapshots.ts';
import { standing } from './amend.ts';
import { pastOf, type Past } from './past.ts';
import { amendsAmong, refoldTouched } from './refold.ts';
import { apply } from './replay.ts';
import { emptyShop, type Shop } from './shop.ts';

/**
 * The log as a running program holds it: the store and the state folded from it. Only record() and catchUp() change `shop`.
 * `folded`: the number of the newest entry in `shop`; `snapshotAt`: of the newest in a kept snapshot.
 */
export interface Log { readonly store: Store; readonly past: Past; shop: Shop; folded: number; rollbacks: number; snapshotAt: number }

/** Changes whenever the shape of the folded state, or the way it is folded, does: older snapshots are then passed over. */
const FORM = 'shop 2';
const BATCH = 2_000;
/** After so many entries (in a long log: so great a part of it) a turn keeps a snapshot, so that a cold start never folds more. */
const SNAPSHOT_EVERY = 5_000;
const SNAPSHOT_PART = 1 / 50;

/** Loads the newest snapshot and folds what came after it. */
export function openLog(store: Store): Log {
  const log: Log = { store, past: pastOf(store), shop: emptyShop(), folded: 0, rollbacks: store.rollbacks, snapshotAt: 0 };
  load(log);
  catchUp(log);
  return log;
}

/** Folds on what other processes recorded since; call it at the start of a turn. Cheap when there is nothing new. */
export function catchUp(log: Log): void {
  foldNew(log);
  if (log.folded - log.snapshotAt >= Math.max(SNAPSHOT_EVERY, log.folded * SNAPSHOT_PART)) saveSnapshot(log);
}

/** Keeps the folded state so that the next start is fast; call it at an orderly stop too. */
export function saveSnapshot(log: Log): void {
  if (log.folded === log.snapshotAt) return;
  keepSnapshot(log.store, { entry: log.folded, form: FORM, body: serialize(log.shop) });
  log.snapshotAt = log.folded;
}

/** The state folded from the whole log, past any snapshot: what a snapshot is checked against. */
export function replayAll(store: Store): Shop {
  const log: Log = { store, past: pastOf(store), shop: emptyShop(), folded: 0, rollbacks: store.rollbacks, snapshotAt: Number.MAX_SAFE_INTEGER };
  foldNew(log);
  return log.shop;
}

/** A snapshot that can't be read (a newer Node may have written it) costs only the time of a replay. */
function load(log: Log): void {
  log.shop = emptyShop();
  log.folded = log.snapshotAt = 0;
  log.rollbacks = log.store.rollbacks;
  const snapshot = newestSnapshot(log.store, FORM);
  if (!snapshot) return;
  try { log.shop = deserialize(snapshot.body) as Shop; } catch { return; }
  log.folded = log.snapshotAt = snapshot.entry;
}

/**
 * Folds every entry above `folded`, as it stands now. Corrections of entries that were folded before make the parts they touch be
 * folded anew, from the entries about them alone. After a rolled-back transaction the state may hold what the log doesn't: it is
 * loaded again.
 */
export function foldNew(log: Log): void {
  if (log.rollbacks !== log.store.rollbacks) load(log);
  if (newestEntry(log.store) === log.folded) return;
  try {
    log.store.reading(() => foldAbove(log, log.folded));
  } catch (error) {
    // Half folded is no state: the next turn loads it anew.
    log.rollbacks = -1;
    throw error;
  }
}

function foldAbove(log: Log, before: number): void {
  const amends = amendsAfter(log.store, before);
  const lookUp = amendsAmong(amends);
  for (let batch = entriesAfter(log.store, log.folded, BATCH); batch.length; batch = entriesAfter(log.store, log.folded, BATCH)) {
    for (const entry of batch) {
      log.folded = entry.id;
      const now = entry.entry.kind === 'amend' ? undefined : standing(entry, lookUp);
      if (now) apply(log.shop, now);
    }
  }
  refoldTouched(log.store, log.shop, before, amends);
}

import { deserialize, serialize } from 'node:v8';
import type { StoredEntry } from '../model/stored.ts';
import { amendsAfter, entriesAbout, entriesAfter, entryById } from '../store/entries.ts';
import type { Store } from '../store/open.ts';
import { keepSnapshot, newestSnapshot } from '../store/snapshots.ts';
import { amendsIn, standing, type AmendsOf } from './amend.ts';
import { pastOf, type Past } from './past.ts';
import { apply, machineKey, unlist, type Scope } from './replay.ts';
import { emptyShop, type Shop } from './shop.ts';

/**
 * The log as a running program holds it: the store and the state folded from it. Only record() and catchUp() change `shop`.
 * `folded`: the number of the newest entry in `shop`; `snapshotAt`: of the newest in a kept snapshot.
 */
export interface Log { readonly store: Store; readonly past: Past; shop: Shop; folded: number; rollbacks: number; snapshotAt: number }

/** Changes whenever the shape of the folded state, or the way it is folded, does: older snapshots are then passed over. */
const FORM = 'shop 1';
const BATCH = 2_000;
/** After so many entries a turn keeps a snapshot, so that a cold start never folds more. */
const SNAPSHOT_EVERY = 5_000;

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
  if (log.folded - log.snapshotAt >= SNAPSHOT_EVERY) saveSnapshot(log);
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
  const before = log.folded;
  let batch = entriesAfter(log.store, log.folded, BATCH);
  if (batch.length === 0) return;
  const amends = amendsAfter(log.store, before);
  const lookUp = amendsAmong(amends);
  for (; batch.length; batch = entriesAfter(log.store, log.folded, BATCH)) {
    for (const entry of batch) {
      log.folded = entry.id;
      const now = entry.entry.kind === 'amend' ? undefined : standing(entry, lookUp);
      if (now) apply(log.shop, now);
    }
  }
  refoldTouched(log, before, amends);
}

function amendsAmong(amends: readonly StoredEntry[]): AmendsOf {
  const byTarget = new Map<number, StoredEntry[]>();
  for (const a of amends) {
    const of = a.entry.kind === 'amend' ? a.entry.of : undefined;
    if (of === undefined) continue;
    const list = byTarget.get(of);
    if (list) list.push(a); else byTarget.set(of, [a]);
  }
  return id => byTarget.get(id) ?? [];
}

function refoldTouched(log: Log, before: number, amends: readonly StoredEntry[]): void {
  const roots = new Map<number, StoredEntry>();
  for (const amend of amends) {
    const root = rootOf(log.store, amend);
    if (root && root.id <= before) roots.set(root.id, root);
  }
  const scopes = new Map<string, Scope>();
  for (const root of roots.values()) {
    unlist(log.shop, root.id);
    for (const scope of scopesOf(log.store, root)) scopes.set(`${scope.machine}\n${scope.key}`, scope);
    const now = standing(root, amendsIn(log.store));
    if (now && !now.refs?.length) apply(log.shop, now);
  }
  for (const scope of scopes.values()) refold(log, scope);
  for (const [key, m] of log.shop.machines) if (m.things.size + m.rules.length + m.running.length + m.distance.length === 0) log.shop.machines.delete(key);
}

/** The entry that a correction, or a correction of a correction, is about. */
function rootOf(store: Store, amend: StoredEntry): StoredEntry | undefined {
  let at: StoredEntry | undefined = amend;
  while (at?.entry.kind === 'amend') at = at.entry.of === undefined ? undefined : entryById(store, at.entry.of);
  return at;
}

/** Every part that an entry was ever about: as recorded, and as each correction made it. */
function scopesOf(store: Store, root: StoredEntry): Scope[] {
  const forms = [root, ...amendsIn(store)(root.id)];
  const machines = new Set(forms.flatMap(f => [machineKey(f), ...(f.entry.kind === 'amend' && f.entry.field === 'machine' ? [machineKey({ ...f, machine: String(f.entry.value) })] : [])]));
  const keys = new Set(forms.flatMap(f => f.refs ?? []).map(r => r.key));
  return [...machines].flatMap(machine => [...keys].map(key => ({ machine, key })));
}

/** One part of one machine, from nothing, by the entries about it. */
function refold(log: Log, scope: Scope): void {
  log.shop.machines.get(scope.machine)?.things.delete(scope.key);
  const about = entriesAbout(log.store, scope);
  const lookUp = amendsAmong(about);
  for (const entry of about) {
    const now = entry.entry.kind === 'amend' ? undefined : standing(entry, lookUp);
    if (now) apply(log.shop, now, scope);
  }
}

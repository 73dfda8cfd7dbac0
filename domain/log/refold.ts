import type { StoredEntry } from '../model/stored.ts';
import { entriesAbout, entryById } from '../store/entries.ts';
import type { Store } from '../store/open.ts';
import { amendsIn, standing, type AmendsOf } from './amend.ts';
import { apply, machineKey, unlist, type Scope } from './replay.ts';
import type { Shop } from './shop.ts';

/** Looks corrections up in a list that holds all of the entries asked about. */
export function amendsAmong(amends: readonly StoredEntry[]): AmendsOf {
  const byTarget = new Map<number, StoredEntry[]>();
  for (const a of amends) {
    const of = a.entry.kind === 'amend' ? a.entry.of : undefined;
    if (of === undefined) continue;
    const list = byTarget.get(of);
    if (list) list.push(a); else byTarget.set(of, [a]);
  }
  return id => byTarget.get(id) ?? [];
}

/**
 * Folds anew, from the entries about them alone, the parts touched by corrections of entries that were folded before (numbered up to
 * `before`). What such an entry put into the lists of machine and shop is taken out first.
 */
export function refoldTouched(store: Store, shop: Shop, before: number, amends: readonly StoredEntry[]): void {
  const roots = new Map<number, StoredEntry>();
  for (const amend of amends) {
    const root = rootOf(store, amend);
    if (root && root.id <= before) roots.set(root.id, root);
  }
  const scopes = new Map<string, Scope>();
  for (const root of roots.values()) {
    unlist(shop, root.id);
    for (const scope of scopesOf(store, root)) scopes.set(`${scope.machine}\n${scope.key}`, scope);
    const now = standing(root, amendsIn(store));
    if (now && !now.refs?.length) apply(shop, now);
  }
  for (const scope of scopes.values()) refold(store, shop, scope);
  for (const [key, m] of shop.machines) if (m.things.size + m.rules.length + m.running.length + m.distance.length === 0) shop.machines.delete(key);
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
function refold(store: Store, shop: Shop, scope: Scope): void {
  shop.machines.get(scope.machine)?.things.delete(scope.key);
  const about = entriesAbout(store, scope);
  const lookUp = amendsAmong(about);
  for (const entry of about) {
    const now = entry.entry.kind === 'amend' ? undefined : standing(entry, lookUp);
    if (now) apply(shop, now, scope);
  }
}

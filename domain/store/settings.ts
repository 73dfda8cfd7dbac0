import type { Store } from './open.ts';

/** What the person chose, by name; values are words, read and checked by whoever uses them. */
export const readSetting = (store: Store, name: string): string | undefined =>
  store.get<{ value: string }>('SELECT value FROM setting WHERE name = ?', name)?.value;

export function writeSetting(store: Store, name: string, value: string | undefined): void {
  if (value === undefined) store.run('DELETE FROM setting WHERE name = ?', name);
  else store.run('INSERT INTO setting (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value', name, value);
}

/** Money a mile driven costs, in the shop's currency; 0 (the way costs nothing) until the person says otherwise. */
export const MILE_RATE = 'mile rate';
export function mileRate(store: Store): number {
  const rate = Number(readSetting(store, MILE_RATE) ?? 0);
  return Number.isFinite(rate) && rate >= 0 ? rate : 0;
}

import { createHash, randomBytes, randomInt, timingSafeEqual } from 'node:crypto';
import type { Store } from './open.ts';

/** Who may speak to the bot: numeric user ids bound by a pairing code. No one is, until paired. */
export const isPaired = (store: Store, door: string, userId: number): boolean =>
  store.get('SELECT 1 FROM person WHERE door = ? AND user_id = ? AND revoked_at IS NULL', door, userId) !== undefined;

export const pairedPeople = (store: Store, door: string): number[] =>
  store.all<{ user_id: number }>('SELECT user_id FROM person WHERE door = ? AND revoked_at IS NULL ORDER BY at', door).map(r => r.user_id);

export function pair(store: Store, door: string, userId: number, at: string): void {
  store.run('INSERT INTO person (door, user_id, at) VALUES (?, ?, ?) ON CONFLICT (door, user_id) DO UPDATE SET at = excluded.at, revoked_at = NULL', door, userId, at);
}

export function revoke(store: Store, door: string, userId: number, at: string): void {
  store.run('UPDATE person SET revoked_at = ? WHERE door = ? AND user_id = ?', at, door, userId);
}

/** 32 signs that are not mistaken for one another when read aloud: 8 of them are 40 random bits. */
const SIGNS = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ';
const LENGTH = 8;
export const PAIRING_TRIES = 5;
export const PAIRING_MS = 15 * 60_000;

/** Whether a message has the look of a pairing code, so that other words cost no try. */
export const looksLikeCode = (text: string): boolean => /^\s*[0-9A-Za-z]{4}-?[0-9A-Za-z]{4}\s*$/.test(text);

/** Makes a new single-use code XXXX-XXXX, which ends any older one. Only its salted hash is kept. `now` in ms since 1970. */
export function newPairingCode(store: Store, now: number): string {
  const code = Array.from({ length: LENGTH }, () => SIGNS[randomInt(SIGNS.length)]).join('');
  const salt = randomBytes(16);
  store.run(`INSERT INTO pairing (one, salt, hash, expires, tries) VALUES (1, ?, ?, ?, 0)
    ON CONFLICT (one) DO UPDATE SET salt = excluded.salt, hash = excluded.hash, expires = excluded.expires, tries = 0`, salt, hashed(salt, code), now + PAIRING_MS);
  return `${code.slice(0, 4)}-${code.slice(4)}`;
}

export type PairingResult = 'right' | 'wrong' | 'expired' | 'locked' | 'none';

/** Tries a code. 'right' uses it up; the fifth wrong try locks it for good; nothing about who tried is kept. */
export function tryPairingCode(store: Store, said: string, now: number): PairingResult {
  return store.transaction(() => {
    const row = store.get<{ salt: Uint8Array; hash: Uint8Array; expires: number; tries: number }>('SELECT * FROM pairing WHERE one = 1');
    if (!row) return 'none';
    if (row.tries >= PAIRING_TRIES) return 'locked';
    if (now >= row.expires) return 'expired';
    const code = said.replace(/[\s-]/g, '').toUpperCase();
    if (timingSafeEqual(hashed(row.salt, code), row.hash)) {
      store.run('DELETE FROM pairing WHERE one = 1');
      return 'right';
    }
    store.run('UPDATE pairing SET tries = tries + 1 WHERE one = 1');
    return row.tries + 1 >= PAIRING_TRIES ? 'locked' : 'wrong';
  });
}

/** The code has 40 random bits, five tries and minutes to live, so one round of a plain hash is enough. */
const hashed = (salt: Uint8Array, code: string): Buffer => createHash('sha256').update(salt).update(code).digest();

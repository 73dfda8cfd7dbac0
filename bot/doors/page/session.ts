import { randomBytes, timingSafeEqual } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Context } from 'hono';
import { getSignedCookie, setSignedCookie } from 'hono/cookie';

const DAYS = 180;
const SECRET_FILE = 'page.secret';

/** Who may use the page: a browser that once opened the address printed at the start, known again by its signed cookie. */
export interface Session {
  /** Made anew at every start; part of the printed address. */
  key: string;
  /** Whether `given` is this start's key, compared in constant time. */
  opens(given: string): boolean;
  remember(c: Context): Promise<void>;
  known(c: Context): Promise<boolean>;
}

/**
 * The secret that signs the cookies. It is kept in the data folder, readable by its owner alone, so that a bookmark still works after a restart;
 * deleting the file signs every browser out. Without a folder it lasts as long as the program.
 */
function secret(dataDir: string | undefined): string {
  const fresh = randomBytes(32).toString('base64url');
  if (dataDir === undefined) return fresh;
  mkdirSync(dataDir, { recursive: true });
  const file = join(dataDir, SECRET_FILE);
  try { writeFileSync(file, fresh, { mode: 0o600, flag: 'wx' }); } catch (error) { if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error; }
  const kept = readFileSync(file, 'utf8').trim();
  if (/^[\w-]{43}$/.test(kept)) return kept;
  writeFileSync(file, fresh, { mode: 0o600 });
  return fresh;
}

export function openSession(dataDir: string | undefined, port: () => number): Session {
  const key = randomBytes(16).toString('base64url');
  const signing = secret(dataDir);
  // Browsers send a cookie to every port of a host: the port in its name keeps two shops on one computer apart.
  const name = () => `pawl-${port()}`;
  return {
    key,
    opens(given) {
      const [a, b] = [Buffer.from(given), Buffer.from(key)];
      return a.length === b.length && timingSafeEqual(a, b);
    },
    async remember(c) {
      await setSignedCookie(c, name(), String(Date.now()), signing, { httpOnly: true, sameSite: 'Strict', path: '/', maxAge: DAYS * 86_400 });
    },
    async known(c) {
      const since = Number(await getSignedCookie(c, signing, name()) || NaN);
      return Date.now() - since < DAYS * 86_400_000;
    },
  };
}

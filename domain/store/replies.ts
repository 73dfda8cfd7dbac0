import type { Store } from './open.ts';

/** What was answered to a note, as JSON that the conversation writes and reads; kept so that any door can show the talk again. */
export const keepReply = (store: Store, note: number, body: string): void => {
  store.run('INSERT INTO reply (note, body) VALUES (?, ?) ON CONFLICT (note) DO NOTHING', note, body);
};

export const replyTo = (store: Store, note: number): string | undefined =>
  store.get<{ body: string }>('SELECT body FROM reply WHERE note = ?', note)?.body;

/** Answered notes above `after`, oldest first; without it the newest `limit`, also oldest first. */
export function repliesAfter(store: Store, after: number | undefined, limit: number): { note: number; body: string }[] {
  if (after !== undefined) return store.all('SELECT note, body FROM reply WHERE note > ? ORDER BY note LIMIT ?', after, limit);
  return store.all<{ note: number; body: string }>('SELECT note, body FROM reply ORDER BY note DESC LIMIT ?', limit).reverse();
}

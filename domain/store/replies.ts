import type { Store } from './open.ts';

/**
 * What was answered, as JSON that the conversation writes and reads; kept so that any door can show the talk again. Part 0 answers the
 * note; further parts are what was said after it: an answer that took long, a word unasked.
 */
export const keepReply = (store: Store, note: number, body: string): void => {
  store.run('INSERT INTO reply (note, part, body) VALUES (?, 0, ?) ON CONFLICT DO NOTHING', note, body);
};

/** Adds what was said after a note. */
export const addReply = (store: Store, note: number, body: string): void => {
  store.run('INSERT INTO reply (note, part, body) SELECT ?, coalesce(max(part), -1) + 1, ? FROM reply WHERE note = ?', note, body, note);
};

/** All parts of the answer to a note, in order. */
export const repliesTo = (store: Store, note: number): string[] =>
  store.all<{ body: string }>('SELECT body FROM reply WHERE note = ? ORDER BY part', note).map(r => r.body);

/** Numbers of answered notes above `after`, oldest first; without it the newest `limit`, also oldest first. */
export function answeredAfter(store: Store, after: number | undefined, limit: number): number[] {
  const rows = after !== undefined
    ? store.all<{ note: number }>('SELECT note FROM reply WHERE part = 0 AND note > ? ORDER BY note LIMIT ?', after, limit)
    : store.all<{ note: number }>('SELECT note FROM reply WHERE part = 0 ORDER BY note DESC LIMIT ?', limit).reverse();
  return rows.map(r => r.note);
}

/** The newest note that has an answer. */
export const lastAnswered = (store: Store): number | undefined =>
  store.get<{ note: number | null }>('SELECT max(note) AS note FROM reply')?.note ?? undefined;

/** A message that the server has not acknowledged. `key` makes a repeat of it harmless; `at` is when it was said (ms since 1970). */
export interface Unsent { key: string; kind: 'words' | 'sound' | 'photo'; at: number; text: string; file?: Blob; seconds?: number; refused?: string }

/** Keeps messages through a reload or a stopped server, until they are acknowledged. */
export interface Keep { all(): Promise<Unsent[]>; put(m: Unsent): Promise<void>; drop(key: string): Promise<void> }

const done = <T>(r: IDBRequest<T>): Promise<T> => new Promise((ok, no) => { r.onsuccess = () => ok(r.result); r.onerror = () => no(r.error); });

function open(): Promise<IDBDatabase> {
  const request = indexedDB.open('pawl', 1);
  request.onupgradeneeded = () => { request.result.createObjectStore('unsent', { keyPath: 'key' }); };
  return done(request);
}

const inOrder = (a: Unsent, b: Unsent) => a.at - b.at;

/** In the browser's database; where it has none (some private windows), in memory alone, which a reload loses. */
export async function openKeep(): Promise<Keep & { lasting: boolean }> {
  let db: IDBDatabase;
  try { db = await open(); } catch { return { ...inMemory(), lasting: false }; }
  const store = (mode: IDBTransactionMode) => db.transaction('unsent', mode, { durability: 'strict' }).objectStore('unsent');
  return {
    lasting: true,
    async all() { return (await done(store('readonly').getAll() as IDBRequest<Unsent[]>)).sort(inOrder); },
    async put(m) { await done(store('readwrite').put(m)); },
    async drop(key) { await done(store('readwrite').delete(key)); },
  };
}

function inMemory(): Keep {
  const held = new Map<string, Unsent>();
  return {
    async all() { return [...held.values()].sort(inOrder); },
    async put(m) { held.set(m.key, m); },
    async drop(key) { held.delete(key); },
  };
}

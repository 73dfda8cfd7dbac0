import { createHash } from 'node:crypto';
import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, readFileSync, renameSync, rmSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { fileTypeFromBuffer } from 'file-type';
import { asStoreError } from './errors.ts';
import type { Store } from './open.ts';

/** Photos and sound, each a file under media/ named by the SHA-256 of what is in it; never by a name that came with it. */
export const MEDIA_LIMIT = 20 * 1024 * 1024;

/** What may be kept, by what its first bytes say (not by its name or what the sender claims). */
const KEPT = /^(image\/(jpeg|png|webp|heic|gif)|audio\/.+|video\/(mp4|webm|quicktime)|application\/ogg)/;

/** Which kept files are sound; a bare Ogg is a voice note. */
export const SOUND = `(media.mime LIKE 'audio/%' OR media.mime = 'application/ogg' OR media.mime = 'video/webm')`;
export const isSound = (m: Pick<Media, 'mime'>): boolean => /^audio\/|^application\/ogg$|^video\/webm$/.test(m.mime);

export interface Media { hash: string; mime: string; ext: string; bytes: number }
type KeptMedia = { kept: Media } | { refused: string };

/** Keeps a file durably, or says in a sentence why not. The same bytes are kept once. `at`: ISO. */
export async function keepMedia(store: Store, bytes: Uint8Array, at: string): Promise<KeptMedia> {
  if (!store.dir) return { refused: 'A log in memory keeps no files.' };
  if (bytes.length === 0) return { refused: 'The file is empty.' };
  if (bytes.length > MEDIA_LIMIT) return { refused: 'The file is larger than 20 MB, more than the log takes.' };
  const type = await fileTypeFromBuffer(bytes);
  if (!type || !KEPT.test(type.mime)) return { refused: 'The file is neither a photo nor sound that the log can keep.' };
  const media: Media = { hash: createHash('sha256').update(bytes).digest('hex'), mime: type.mime, ext: type.ext, bytes: bytes.length };
  writeFile(store, media, bytes);
  store.run('INSERT INTO media (hash, mime, ext, bytes, at) VALUES (?, ?, ?, ?, ?) ON CONFLICT (hash) DO NOTHING', media.hash, media.mime, media.ext, media.bytes, at);
  return { kept: media };
}

/** Ties a kept file to its note, and to a part when the note names one (both by key). */
export function linkMedia(store: Store, link: { hash: string; note: number; machine?: string; part?: string }): void {
  const seen = store.get('SELECT 1 FROM media_link WHERE hash = ? AND note = ? AND machine = ? AND part IS ?', link.hash, link.note, link.machine ?? '', link.part ?? null);
  if (!seen) store.run('INSERT INTO media_link (hash, note, machine, part) VALUES (?, ?, ?, ?)', link.hash, link.note, link.machine ?? '', link.part ?? null);
}

const LIST = 'SELECT DISTINCT media.hash, media.mime, media.ext, media.bytes FROM media_link JOIN media USING (hash)';
/** The files tied to a part, oldest first. */
export const mediaOfPart = (store: Store, machine: string, part: string): Media[] =>
  store.all<Media>(`${LIST} WHERE machine = ? AND part = ? ORDER BY media_link.rowid`, machine, part);
export const mediaOfNote = (store: Store, note: number): Media[] =>
  store.all<Media>(`${LIST} WHERE note = ? ORDER BY media_link.rowid`, note);
export const mediaByHash = (store: Store, hash: string): Media | undefined =>
  store.get<Media>('SELECT hash, mime, ext, bytes FROM media WHERE hash = ?', hash);

/** Where the file of a media row lies. */
export const mediaPath = (store: Store, media: Pick<Media, 'hash' | 'ext'>): string => join(store.dir ?? '', 'media', `${media.hash}.${media.ext}`);
export const readMedia = (store: Store, media: Pick<Media, 'hash' | 'ext'>): Uint8Array => {
  try { return readFileSync(mediaPath(store, media)); } catch (error) { throw asStoreError(error, mediaPath(store, media)); }
};

/** Written beside, flushed, then renamed: a file under its hash name is whole or not there. */
function writeFile(store: Store, media: Media, bytes: Uint8Array): void {
  const path = mediaPath(store, media);
  if (existsSync(path)) return;
  const part = `${path}.${process.pid}.part`;
  try {
    mkdirSync(join(store.dir!, 'media'), { recursive: true, mode: 0o700 });
    const file = openSync(part, 'w', 0o600);
    try { for (let at = 0; at < bytes.length;) at += writeSync(file, bytes, at); fsyncSync(file); } finally { closeSync(file); }
    renameSync(part, path);
    flushFolder(join(store.dir!, 'media'));
  } catch (error) {
    rmSync(part, { force: true });
    throw asStoreError(error, path);
  }
}

/** The new name is durable only once its folder is flushed; some systems can't open a folder, and do it themselves. */
function flushFolder(dir: string): void {
  let folder: number;
  try { folder = openSync(dir, 'r'); } catch { return; }
  try { fsyncSync(folder); } catch { /* not offered here */ } finally { closeSync(folder); }
}

import type { Message } from 'grammy/types';

/** A file that a message carries. `bytes`: its size, where the platform says it. `claims`: what the sender calls it; the bytes decide. */
export interface FileThere { id: string; bytes?: number; claims?: string; use: 'photo' | 'sound' }

const sized = (f: { file_id: string; file_size?: number; mime_type?: string }, use: FileThere['use']): FileThere =>
  ({ id: f.file_id, bytes: f.file_size, claims: f.mime_type, use });

/** The photo or sound of a message, the largest form of a photo; undefined when it has none. */
export function fileOf(m: Message): FileThere | undefined {
  const largest = m.photo?.reduce((a, b) => (b.width * b.height > a.width * a.height ? b : a));
  if (largest) return { ...sized(largest, 'photo'), claims: 'image/jpeg' };
  const sound = m.voice ?? m.audio ?? m.video_note ?? m.video;
  if (sound) return sized(sound, 'sound');
  if (!m.document || m.animation) return undefined;
  if (/^image\//.test(m.document.mime_type ?? '')) return sized(m.document, 'photo');
  return /^(audio|video)\//.test(m.document.mime_type ?? '') ? sized(m.document, 'sound') : undefined;
}

/** What a message is when this program can't read it, in the word for it; undefined for what needs no word (someone joined, say). */
export function unreadable(m: Message): string | undefined {
  if (m.animation) return 'an animation';
  if (m.document) return 'a file that is neither a photo nor sound';
  if (m.sticker) return 'a sticker';
  if (m.venue || m.location) return 'a place on the map';
  if (m.contact) return 'a contact';
  if (m.poll || m.checklist) return 'a poll or list';
  return m.dice || m.game || m.story || m.paid_media || m.invoice ? 'a message of this kind' : undefined;
}

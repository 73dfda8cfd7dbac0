import type { Note, StoredEntry } from '../../domain/model/stored.ts';
import { nameKey, namesMeant } from '../../domain/model/names.ts';
import type { Log } from '../../domain/log/keeper.ts';
import { partNames } from '../../domain/log/shop.ts';
import { linkMedia } from '../../domain/store/media.ts';
import type { Incoming } from '../incoming.ts';

/** A caption of so many words is taken for the name of what the photo shows. */
const NAME_WORDS = 6;

/** Ties photos and sound to their note, and photos to the parts that the caption speaks of, or to the part that it is the name of. */
export function linkPhotos(log: Log, note: Note, incoming: Incoming, entries: readonly StoredEntry[], machine: string | undefined): void {
  const hashes = incoming.media ?? [];
  if (!hashes.length) return;
  const spoken = entries.flatMap(e => ('part' in e.entry && e.entry.part ? [e.entry.part] : 'item' in e.entry ? [e.entry.item] : []));
  const parts = spoken.length ? spoken : captionName(log, incoming.text, machine);
  const at = machine === undefined ? '' : nameKey(machine);
  for (const hash of hashes) {
    if (!parts.length) linkMedia(log.store, { hash, note: note.id, machine: at });
    for (const part of parts) linkMedia(log.store, { hash, note: note.id, machine: at, part: nameKey(part) });
  }
}

function captionName(log: Log, caption: string, machine: string | undefined): string[] {
  const words = caption.trim().replace(/[.!]+$/, '');
  if (!words || words.split(/\s+/).length > NAME_WORDS) return [];
  const known = namesMeant(words, partNames(log.shop, machine === undefined ? undefined : nameKey(machine)));
  return known.length === 1 ? known : [words];
}

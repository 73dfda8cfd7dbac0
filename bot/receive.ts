import type { Queued } from '../domain/store/queue.ts';
import { keepMedia, mediaByHash, readMedia } from '../domain/store/media.ts';
import type { Store } from '../domain/store/open.ts';
import type { HeardWord } from '../nlp/hear/doubt.ts';
import type { Incoming } from './incoming.ts';
import type { DoorMessage } from './service.ts';

/** What hearing gives back; the hearing itself lives in nlp/hear. */
interface Heard { text: string; raw: string; speech: boolean; doubtful: boolean; unsure: string[]; overNoise: HeardWord[]; why?: string; /** Nothing to hear with: it is heard as soon as there is. */ unheard?: boolean }

/** Says how far something long is, in words; `done` with the last of them. */
export type Tell = (text: string, done?: boolean) => void;

export interface ReceivingOptions {
  store: Store;
  /** Sound to words, with names of the shop that may be in it. Undefined when there is nothing to hear with. */
  hear?: (bytes: Uint8Array, tell: Tell) => Promise<Heard>;
  /** Doors whose intake rows are in their own form and are unpacked here; it may fetch files, and throws to be tried again. */
  unpack?: Record<string, (row: Queued) => Promise<DoorMessage | undefined>>;
}

/** A message as the intake holds it: files are kept beside by hash, so that the row stays small. */
interface KeptMessage extends Omit<DoorMessage, 'files'> { media?: string[]; sound?: string[]; /** Sentences about files that could not be kept. */ refused?: string[] }

/** `incoming` is absent where a row holds nothing that can be read; `aside` is said before the reply. */
export interface Received { incoming?: Incoming; target?: string; aside?: string }

export interface Receiving {
  options: ReceivingOptions;
  /** Keeps the files of a message before it is written down. */
  keep(m: DoorMessage): Promise<KeptMessage>;
}

export function receiver(options: ReceivingOptions): Receiving {
  return { options, keep: m => keepFiles(options.store, m) };
}

async function keepFiles(store: Store, { files = [], ...m }: DoorMessage): Promise<KeptMessage> {
  const out: KeptMessage = { ...m };
  for (const file of files) {
    const result = await keepMedia(store, file.bytes, m.at);
    if ('refused' in result) (out.refused ??= []).push(result.refused);
    else (out[file.use === 'sound' ? 'sound' : 'media'] ??= []).push(result.kept.hash);
  }
  return out;
}

/**
 * Whether a row brings sound, or a file that must be fetched first: known from its body without fetching anything, by the words the doors
 * name them with. Inside a JSON text these would have their quotes escaped.
 */
export const takesLong = (row: Queued): boolean => /"(sound|voice|audio|video|video_note|photo)":[[{]/.test(row.body);

/** Makes of an intake row what a turn takes: unpacked by its door, its files kept, its sound heard. */
export async function messageOf(row: Queued, { options }: Receiving, tell: (text: string, done?: boolean, target?: string) => void): Promise<Received> {
  const unpack = options.unpack?.[row.door];
  const fetched = unpack ? await unpack(row) : undefined;
  if (unpack && !fetched) return {};
  const m = fetched ? await keepFiles(options.store, fetched) : (JSON.parse(row.body) as KeptMessage);
  const incoming: Incoming = { key: m.key, door: m.door, chat: m.chat, at: m.at, text: m.text, edits: m.edits, media: [...(m.media ?? []), ...(m.sound ?? [])] };
  const heard = m.sound?.length ? await hearAll(m.sound, options, (text, done) => tell(text, done, m.target)) : undefined;
  const asides = [...(m.refused ?? []), ...(heard?.why ? [heard.why] : [])];
  // Sound without speech was heard too; only what could not be heard at all is without this mark, and is heard later.
  if (heard && !heard.unheard) Object.assign(incoming, { text: [m.text, heard.text].filter(Boolean).join(' '), spoken: { raw: heard.raw, doubtful: heard.doubtful, unsure: heard.unsure, overNoise: heard.overNoise } });
  return { incoming, target: m.target, aside: asides.join('\n') || undefined };
}

const NO_EARS = 'The sound is kept. I have nothing to hear it with yet: type the words, or set a speech model.';

async function hearAll(sounds: readonly string[], { store, hear }: ReceivingOptions, tell: Tell): Promise<Heard> {
  const all: Heard = { text: '', raw: '', speech: false, doubtful: false, unsure: [], overNoise: [] };
  for (const hash of sounds) {
    const media = mediaByHash(store, hash);
    if (!media) continue;
    if (!hear) return { ...all, why: NO_EARS, unheard: true };
    const h = await hear(readMedia(store, media), tell);
    all.text = [all.text, h.text].filter(Boolean).join(' ');
    all.raw = [all.raw, h.raw].filter(Boolean).join(' ');
    all.speech ||= h.speech;
    all.doubtful ||= h.doubtful;
    all.unsure.push(...h.unsure);
    all.overNoise.push(...h.overNoise);
    if (h.why) all.why = h.why;
    if (h.unheard) all.unheard = true;
  }
  return all;
}

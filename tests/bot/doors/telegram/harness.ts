import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { intake as intakeRows } from '../../../../domain/store/intake.ts';
import { keepMedia, mediaByHash, mediaPath } from '../../../../domain/store/media.ts';
import { openStore, type Store } from '../../../../domain/store/open.ts';
import { pair } from '../../../../domain/store/people.ts';
import { openIntake, type Intake } from '../../../../bot/intake.ts';
import { openOutbox, putOut, type Outgoing } from '../../../../bot/outbox.ts';
import type { Loop } from '../../../../bot/loop.ts';
import type { DoorMessage } from '../../../../bot/service.ts';
import { telegramLine, type Line } from '../../../../bot/doors/telegram/line.ts';
import { openTelegram, type TelegramDoor } from '../../../../bot/doors/telegram/open.ts';
import { sendTelegram } from '../../../../bot/doors/telegram/send.ts';
import { unpackTelegram } from '../../../../bot/doors/telegram/unpack.ts';
import type { Loopback } from './loopback/loopback.ts';

export const OWNER = 501;
export const STRANGER = 999;
const ZONE = 'Europe/Dublin';

/** What a test's handler gives back for a message; it stands in for the turn. */
export type Answering = (m: DoorMessage & { media: string[] }) => Partial<Outgoing>;

/** The real door, intake and outbox over a store in a folder of its own, with a handler that repeats what it was told. */
export interface House { store: Store; line: Line; door: TelegramDoor; intake: Intake; outbox: Loop; taken: (DoorMessage & { media: string[] })[]; log: string[]; dir: string; close(keep?: boolean): Promise<void> }
interface HouseOptions { dir?: string; answer?: Answering; now?: () => number; paired?: number[]; token?: string; put?: (intake: Intake) => Intake['put']; callSeconds?: number }

export function openHouse(cloud: Pick<Loopback, 'url' | 'token'>, options: HouseOptions = {}): House {
  const dir = options.dir ?? mkdtempSync(join(tmpdir(), 'pawl-telegram-'));
  const store = openStore(dir);
  const log: string[] = [];
  const taken: House['taken'] = [];
  for (const person of options.paired ?? [OWNER]) pair(store, 'telegram', person, '2026-03-14T09:00:00Z');
  const line = telegramLine({ token: options.token ?? cloud.token, api: cloud.url, zone: ZONE }, options.callSeconds);
  const media = (hash: string) => { const m = mediaByHash(store, hash); return m && mediaPath(store, m); };
  const outbox = openOutbox(store, 'telegram', sendTelegram({ store, line, media }), options.now);
  const onOut = () => outbox.wake();
  const intake = openIntake(store, { handle: handler(store, unpackTelegram({ store, line, onOut }), taken, options.answer, outbox), now: options.now });
  const put = options.put?.(intake) ?? intake.put;
  const door = openTelegram({ store, line, intake: { put }, onOut, now: options.now, log: l => log.push(l) });
  const close = async (keep = false) => {
    await door.close();
    await intake.close();
    await outbox.close();
    store.close();
    if (!keep) rmSync(dir, { recursive: true, force: true });
  };
  return { store, line, door, intake, outbox, taken, log, dir, close };
}

function handler(store: Store, unpack: ReturnType<typeof unpackTelegram>, taken: House['taken'], answer: Answering | undefined, outbox: Loop) {
  return async (row: Parameters<typeof unpack>[0]) => {
    const m = await unpack(row);
    const media: string[] = [];
    for (const f of m?.files ?? []) {
      const kept = await keepMedia(store, f.bytes, row.at);
      media.push('kept' in kept ? kept.kept.hash : `refused: ${kept.refused}`);
    }
    store.transaction(() => {
      if (!intakeRows.done(store, row.seq) || !m) return;
      taken.push({ ...m, media });
      putOut(store, { key: row.key, door: row.door, at: row.at }, { target: m.target!, say: `noted: ${m.text}`, buttons: [], files: [], ...answer?.({ ...m, media }) });
    });
    outbox.wake();
  };
}

export const rowsIn = (store: Store, table: 'intake' | 'outbox' | 'person' | 'media'): number => store.get<{ n: number }>(`SELECT count(*) AS n FROM ${table}`)!.n;

/** The start of a JPEG file (ITU-T T.81 / JFIF: SOI, APP0 "JFIF"), enough for its type to be told; `mark` makes it one of its own. */
export const jpeg = (mark: string): Uint8Array =>
  new Uint8Array(Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16]), Buffer.from('JFIF\0\x01\x01\0\0\x01\0\x01\0\0'), Buffer.from(mark), Buffer.from([0xff, 0xd9])]));
/** The start of an Ogg page with Opus in it (RFC 3533, RFC 7845). */
export const oggOpus = (mark: string): Uint8Array =>
  Buffer.concat([Buffer.from('OggS\0\x02'), Buffer.alloc(20), Buffer.from([1, 19]), Buffer.from('OpusHead\x01\x01\0\0\x80\xbb\0\0\0\0\0'), Buffer.from(mark)]);

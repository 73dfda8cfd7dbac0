import { bodyLimit } from 'hono/body-limit';
import { Hono, type Context, type MiddlewareHandler } from 'hono';
import { z } from 'zod';
import { BENCH } from '../../incoming.ts';
import type { DoorMessage, Service, Talk } from '../../service.ts';
import { postOf } from './guards.ts';

const TEXT_LIMIT = 64 * 1024;
/** In JSON one byte of text can take six (`\u0000`). */
const JSON_LIMIT = 6 * TEXT_LIMIT + 4096;
const FILE_LIMIT = 20 * 1024 * 1024;
/** What a form adds around its file and a caption. */
const FORM_LIMIT = FILE_LIMIT + JSON_LIMIT;

const Key = z.uuid('The key must be a UUID.');
const At = z.coerce.number().int().positive().optional();
const Said = z.object({ key: Key, text: z.string('The text is missing.'), at: At });
const About = z.object({ key: Key, at: At });

type File = NonNullable<DoorMessage['files']>[number];
interface Message { key: string; at?: number; text: string; files?: File[] }

/** The rest of a body that is too long is never read, so its connection cannot be used again. */
const limit = (maxSize: number, what: string): MiddlewareHandler =>
  bodyLimit({ maxSize, onError: c => c.json({ error: `${what} is the most that one note can hold.` }, 413, { Connection: 'close' }) });
const wrong = (c: Context, error: z.ZodError) => c.json({ error: error.issues[0]!.message }, 400);
const tooLong = (text: string): boolean => Buffer.byteLength(text) > TEXT_LIMIT;

/** The ways in: words, sound, a photo. Each is acknowledged once it is kept and answered; the same key again changes nothing. */
export function messages(service: Service, clock: (saidAt?: number) => string): Hono {
  const app = new Hono();
  const text64 = limit(JSON_LIMIT, '64 KiB of text');
  const file20 = limit(FILE_LIMIT, 'A file of 20 MB');
  const form20 = limit(FORM_LIMIT, 'A file of 20 MB');
  const take = async (c: Context, m: Message): Promise<Response> => {
    if (tooLong(m.text)) return c.json({ error: '64 KiB of text is the most that one note can hold.' }, 413);
    const { key, at, ...rest } = m;
    try {
      return c.json({ talk: await taken(service, { ...rest, key: `page:${key}`, door: 'page', chat: BENCH, at: clock(at) }) });
    } catch {
      return c.json({ error: 'That could not be kept just now. This page holds it and sends it again.' }, 503);
    }
  };

  app.post('/say', postOf(/^application\/json\b/i), text64, async c => {
    const said = Said.safeParse(await c.req.json().catch(() => undefined));
    return said.success ? take(c, said.data) : wrong(c, said.error);
  });

  app.post('/sound', postOf(/^(audio|video)\/[\w.+-]+|^application\/octet-stream/i), file20, async c => {
    const about = About.safeParse({ key: c.req.header('Pawl-Key'), at: c.req.header('Pawl-At') });
    if (!about.success) return wrong(c, about.error);
    const bytes = new Uint8Array(await c.req.arrayBuffer());
    return take(c, { ...about.data, text: '', files: [{ bytes, claims: c.req.header('content-type'), use: 'sound' }] });
  });

  app.post('/photo', postOf(/^multipart\/form-data\b/i), form20, async c => {
    const form = await c.req.parseBody().catch(() => ({}) as Record<string, string | globalThis.File>);
    const said = Said.safeParse({ key: form.key, at: form.at, text: form.caption ?? '' });
    if (!said.success) return wrong(c, said.error);
    if (!(form.photo instanceof globalThis.File)) return c.json({ error: 'The photo is missing.' }, 400);
    if (form.photo.size > FILE_LIMIT) return c.json({ error: 'A file of 20 MB is the most that one note can hold.' }, 413);
    const bytes = new Uint8Array(await form.photo.arrayBuffer());
    return take(c, { ...said.data, files: [{ bytes, claims: form.photo.type, use: 'photo' }] });
  });
  return app;
}

/** Hands the message over; gives back the exchange as every page shows it. */
async function taken(service: Service, m: DoorMessage): Promise<Talk> {
  const { note, say, buttons, files } = await service.take(m);
  const kept = service.talk(note - 1, 1)[0];
  return kept?.id === note ? kept : { id: note, at: m.at, door: m.door, text: m.text, say, buttons, files };
}

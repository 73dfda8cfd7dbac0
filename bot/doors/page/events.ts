import type { HttpBindings } from '@hono/node-server';
import type { Context } from 'hono';
import { streamSSE, type SSEStreamingApi } from 'hono/streaming';
import type { Service, Talk } from '../../service.ts';

/** A browser shares one stream among its tabs, so this is far more than one person needs. */
const MOST_STREAMS = 200;
/** Messages that may wait for one reader. A slower one is let go; it comes back by itself and gets what it missed. */
const MOST_WAITING = 200;
const REPLAYED_AT_ONCE = 200;
const FIRST_SHOWN = 40;
const BEAT_MS = 20_000;
const GLANCE_AFTER_MS = 80;

interface Message { event: 'talk' | 'glance' | 'progress' | 'beat'; data: unknown }
interface Reader { waiting: Message[]; wake: () => void; leave: () => void }

export interface EventStreams {
  /** Server-sent events (HTML Living Standard §9.2) from after note `after`: `talk` (id = note number), `glance`, `progress`. */
  open(c: Context<{ Bindings: HttpBindings }>, after: number | undefined): Response;
  close(): void;
}

export function eventStreams(service: Service, now: () => string): EventStreams {
  const readers = new Set<Reader>();
  let glanced = '';
  let glanceDue: NodeJS.Timeout | undefined;
  const tell = (m: Message) => {
    for (const r of readers) {
      if (r.waiting.length < MOST_WAITING) { r.waiting.push(m); r.wake(); } else r.leave();
    }
  };
  /** After an exchange the panels may stand differently; they are worked out once for all readers. */
  const glanceSoon = () => {
    glanceDue ??= setTimeout(() => {
      glanceDue = undefined;
      const data = service.glance(now());
      if (JSON.stringify(data) === glanced) return;
      glanced = JSON.stringify(data);
      tell({ event: 'glance', data });
    }, GLANCE_AFTER_MS);
  };
  const stops = [
    service.onTalk(talk => { tell({ event: 'talk', data: talk }); glanceSoon(); }),
    service.onProgress(p => tell({ event: 'progress', data: p })),
  ];
  // Time alone changes the panels too (a thing falls late), hence the look at every beat.
  const beat = setInterval(() => { tell({ event: 'beat', data: null }); if (readers.size) glanceSoon(); }, BEAT_MS);
  return {
    open(c, after) {
      if (readers.size >= MOST_STREAMS) return c.json({ error: 'Too many pages are open.' }, 503);
      return streamSSE(c, async stream => {
        const reader: Reader = { waiting: [], wake: () => {}, leave: () => { readers.delete(reader); stream.abort(); c.env.outgoing?.destroy(); } };
        readers.add(reader);
        stream.onAbort(() => { readers.delete(reader); reader.wake(); });
        try {
          await follow(stream, reader, missed(service, after, now), after ?? 0, () => readers.has(reader));
        } finally { readers.delete(reader); }
      });
    },
    close() {
      clearInterval(beat);
      clearTimeout(glanceDue);
      for (const stop of stops) stop();
      for (const r of [...readers]) r.leave();
    },
  };
}

/** What a reader that has everything up to `after` lacks (a new one: the newest few), and how the panels stand. */
function* missed(service: Service, after: number | undefined, now: () => string): Generator<Message> {
  if (after === undefined) for (const data of service.talk(undefined, FIRST_SHOWN)) yield { event: 'talk', data };
  for (let from = after; from !== undefined;) {
    const some: Talk[] = service.talk(from, REPLAYED_AT_ONCE);
    for (const data of some) yield { event: 'talk', data };
    from = some.length === REPLAYED_AT_ONCE ? some.at(-1)!.id : undefined;
  }
  yield { event: 'glance', data: service.glance(now()) };
}

/** Writes what was missed and then what comes, one message at a time, as fast as this reader takes it. */
async function follow(stream: SSEStreamingApi, reader: Reader, first: Iterator<Message, undefined>, after: number, open: () => boolean): Promise<void> {
  let highest = after;
  await stream.write('retry: 1500\n\n');
  while (open()) {
    const m = first.next().value ?? reader.waiting.shift();
    if (m === undefined) { await new Promise<void>(wake => { reader.wake = wake; }); continue; }
    if (m.event === 'beat') { await stream.write(': beat\n\n'); continue; }
    // An exchange that is told again (struck, or heard late) must not turn back the mark from which a reader resumes.
    if (m.event === 'talk') highest = Math.max(highest, (m.data as Talk).id);
    await stream.writeSSE({ event: m.event, data: JSON.stringify(m.data), ...(m.event === 'talk' ? { id: String(highest) } : {}) });
  }
}

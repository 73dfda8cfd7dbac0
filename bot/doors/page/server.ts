import type { AddressInfo } from 'node:net';
import type { Server } from 'node:http';
import { createAdaptorServer, type HttpBindings } from '@hono/node-server';
import { Hono } from 'hono';
import type { Service } from '../../service.ts';
import { clock } from './clock.ts';
import { earlier } from './earlier.ts';
import { eventStreams, type EventStreams } from './events.ts';
import { files, pageFile } from './files.ts';
import { headers, ownPageOnly } from './guards.ts';
import { sendKept } from './kept.ts';
import { messages } from './messages.ts';
import { openSession, type Session } from './session.ts';
import { strangerPage } from './stranger.ts';

const MOST_SHOWN = 200;
const CLOSING_MS = 3000;

interface PageOptions {
  service: Service;
  /** 0 takes any free one. */
  port: number;
  /** Where the secret of the page's cookies is kept; without it browsers are forgotten at the next start. */
  dataDir?: string;
  /** The shop's zone by its IANA name; without it the computer's. */
  zone?: string;
}
/** `url` carries the key that lets a browser in, once a start. */
export interface Page { url: string; port: number; close(): Promise<void> }

/** Opens the bench page on 127.0.0.1 alone. Rejects when the port is taken or the browser code is not compiled. */
export async function openPage(options: PageOptions): Promise<Page> {
  let port = options.port;
  const session = openSession(options.dataDir, () => port);
  const at = clock(options.zone);
  const streams = eventStreams(options.service, at);
  const app = pageApp(options.service, session, streams, at, () => port);
  const server = createAdaptorServer({
    fetch: app.fetch,
    // A client that dawdles over its request is let go, so that it holds nobody up.
    serverOptions: { headersTimeout: 10_000, requestTimeout: 120_000, connectionsCheckingInterval: 5_000 },
  }) as Server;
  server.maxConnections = 600;
  try {
    await listen(server, port);
  } catch (error) {
    streams.close();
    throw error;
  }
  ({ port } = server.address() as AddressInfo);
  return { url: `http://127.0.0.1:${port}/?key=${session.key}`, port, close: () => close(server, streams) };
}

function pageApp(service: Service, session: Session, streams: EventStreams, at: (saidAt?: number) => string, port: () => number): Hono<{ Bindings: HttpBindings }> {
  const app = new Hono<{ Bindings: HttpBindings }>();
  const html = pageFile();
  app.use(headers(), ownPageOnly(port), files());
  app.use(async (c, next) => { await next(); if (!c.res.headers.has('Cache-Control')) c.res.headers.set('Cache-Control', 'no-store'); });

  app.get('/', async c => {
    const key = c.req.query('key');
    if (key !== undefined && session.opens(key)) { await session.remember(c); return c.redirect('/', 303); }
    if (!await session.known(c)) return c.html(strangerPage(port(), key !== undefined), 401);
    if (key !== undefined) return c.redirect('/', 303);
    // Each visit counts from anew, so that a page in use is never forgotten.
    await session.remember(c);
    return c.html(html);
  });
  // Everything below this line is the shop's own and needs a known browser.
  app.use(async (c, next) => (await session.known(c) ? next() : c.json({ error: 'This browser is not known. Open the address that Pawl printed when it started.' }, 401)));
  app.get('/events', c => streams.open(c, number(c.req.header('Last-Event-ID') ?? c.req.query('after'))));
  app.get('/glance', c => c.json(service.glance(at())));
  app.get('/talk', c => {
    const limit = Math.min(MOST_SHOWN, number(c.req.query('limit')) || 40);
    const before = number(c.req.query('before'));
    return c.json(before === undefined ? service.talk(number(c.req.query('after')), limit) : earlier(service, before, limit));
  });
  app.get('/kept/:name', c => sendKept(c, service, c.req.param('name')));
  app.route('/', messages(service, at));
  app.notFound(c => c.json({ error: 'There is nothing at that address.' }, 404));
  app.onError((error, c) => {
    console.error('bench page:', error);
    return c.json({ error: 'Something broke in here. What was said before is kept.' }, 500);
  });
  return app;
}

const number = (text: string | undefined): number | undefined => (text !== undefined && /^\d{1,15}$/.test(text) ? Number(text) : undefined);

function listen(server: Server, port: number): Promise<void> {
  return new Promise((ready, failed) => {
    server.once('error', failed);
    server.listen(port, '127.0.0.1', () => { server.off('error', failed); ready(); });
  });
}

/** Lets the streams go, finishes what is being answered, then closes. */
function close(server: Server, streams: EventStreams): Promise<void> {
  streams.close();
  return new Promise(closed => {
    const last = setTimeout(() => server.closeAllConnections(), CLOSING_MS);
    server.close(() => { clearTimeout(last); closed(); });
    server.closeIdleConnections();
  });
}

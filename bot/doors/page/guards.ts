import type { MiddlewareHandler } from 'hono';
import { secureHeaders } from 'hono/secure-headers';

/** The header that the page's own code sends with every POST; a form of a foreign page cannot set it. */
const DOOR_HEADER = 'Pawl-Door';

/**
 * What a browser may do with the page: run and show only what comes from this server. The speech detector is WebAssembly, hence
 * 'wasm-unsafe-eval', which allows nothing else to be evaluated. `blob:` lets sound and photos that wait to be sent be played and shown.
 */
export const headers = (): MiddlewareHandler => secureHeaders({
  contentSecurityPolicy: {
    defaultSrc: ["'self'"],
    scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
    imgSrc: ["'self'", 'blob:'],
    mediaSrc: ["'self'", 'blob:'],
    objectSrc: ["'none'"],
    baseUri: ["'none'"],
    formAction: ["'self'"],
    frameAncestors: ["'none'"],
  },
  xFrameOptions: 'DENY',
  referrerPolicy: 'no-referrer',
  strictTransportSecurity: false,
  permissionsPolicy: { microphone: ['self'], camera: [], geolocation: [] },
});

/** The names this computer calls itself by. Any other Host is a name that someone pointed here (DNS rebinding). */
const ownHosts = (port: number): string[] =>
  ['127.0.0.1', 'localhost'].flatMap(name => (port === 80 ? [name, `${name}:80`] : [`${name}:${port}`]));

/** Answers only to this computer's own names, and only to its own page. `port` is asked at each request, as it is known once the server listens. */
export const ownPageOnly = (port: () => number): MiddlewareHandler => async (c, next) => {
  const host = c.req.header('host')?.toLowerCase() ?? '';
  if (!ownHosts(port()).includes(host)) return c.text('This server answers only as 127.0.0.1 or localhost.\n', 421);
  const origin = c.req.header('origin');
  if (origin !== undefined && origin.toLowerCase() !== `http://${host}`) return c.text('Another page may not use this one.\n', 403);
  // Another program's page on this computer counts as "same-site"; it has no business here either.
  const from = c.req.header('sec-fetch-site');
  if (from !== undefined && from !== 'same-origin' && from !== 'none') return c.text('Another page may not open this one. Type or paste its address instead.\n', 403);
  return next();
};

/** A POST must come from the page's own code (its header) and say that it is of the type the route takes. */
export const postOf = (type: RegExp): MiddlewareHandler => async (c, next) => {
  if (c.req.header(DOOR_HEADER) !== 'page') return c.json({ error: `A message needs the header ${DOOR_HEADER}: page.` }, 403);
  if (!type.test(c.req.header('content-type') ?? '')) return c.json({ error: 'The message is not of the type that belongs here.' }, 415);
  return next();
};

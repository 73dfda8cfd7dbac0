import type { Context } from 'hono';
import type { Service } from '../../service.ts';

const NAME = /^[\w-]{1,128}(\.\w{1,8})?$/;
/** Types that a browser only shows or plays. Anything else is handed over as a download, whatever it claims. */
const SHOWN = /^(image\/(jpeg|png|gif|webp|avif|bmp|heic)|audio\/[\w.+-]+|video\/(webm|mp4|ogg))$/;

/** One kept photo or sound. Players ask for a stretch of a file (RFC 9110 §14); one stretch at a time is given. */
export function sendKept(c: Context, service: Service, name: string): Response {
  const file = NAME.test(name) ? service.media(name) : undefined;
  if (!file) return c.json({ error: 'There is no kept file of that name.' }, 404);
  const type = file.type.split(';')[0]!.trim();
  const shown = SHOWN.test(type);
  c.header('Content-Type', shown ? type : 'application/octet-stream');
  c.header('Content-Disposition', shown ? 'inline' : 'attachment');
  c.header('Cache-Control', 'private, max-age=31536000, immutable');
  c.header('Accept-Ranges', 'bytes');
  const size = file.bytes.byteLength;
  const range = /^bytes=(\d*)-(\d*)$/.exec(c.req.header('range') ?? '');
  if (!range || (!range[1] && !range[2])) return c.body(new Uint8Array(file.bytes));
  const from = range[1] ? Number(range[1]) : Math.max(0, size - Number(range[2]));
  const to = range[1] && range[2] ? Math.min(size - 1, Number(range[2])) : size - 1;
  if (from > to) { c.header('Content-Range', `bytes */${size}`); return c.body(null, 416); }
  c.header('Content-Range', `bytes ${from}-${to}/${size}`);
  return c.body(new Uint8Array(file.bytes.subarray(from, to + 1)), 206);
}

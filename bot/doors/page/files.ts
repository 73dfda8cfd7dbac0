import { readFileSync, readdirSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { MiddlewareHandler } from 'hono';

const WEB = fileURLToPath(new URL('./web/', import.meta.url));
const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8', '.css': 'text/css; charset=utf-8', '.js': 'text/javascript; charset=utf-8', '.mjs': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml', '.wasm': 'application/wasm', '.onnx': 'application/octet-stream',
};

const SPEECH_FILES = ['bundle.min.js', 'vad.worklet.bundle.min.js', 'silero_vad_v5.onnx'];
const RUNTIME_FILES = ['ort.wasm.min.js', 'ort-wasm-simd-threaded.mjs', 'ort-wasm-simd-threaded.wasm'];

/** The speech detector and the runtime that it was installed with, served from this computer. */
function speechDetector(): [string, string][] {
  const vad = createRequire(import.meta.url).resolve('@ricky0123/vad-web');
  const runtime = createRequire(vad).resolve('onnxruntime-web');
  const under = (at: string, names: string[]) => names.map((n): [string, string] => [`/speech/${n}`, join(dirname(at), n)]);
  return [...under(vad, SPEECH_FILES), ...under(runtime, RUNTIME_FILES)];
}

/** The page's own files by the path they are asked for. Throws when the browser code has not been compiled. */
function ownFiles(): [string, string][] {
  let compiled: string[] = [];
  try { compiled = readdirSync(join(WEB, 'out')).filter(n => n.endsWith('.js')); } catch { /* said below */ }
  if (!compiled.includes('page.js')) throw new Error('The page is not compiled yet: start the program by `npm start`, or run `npx tsc -p bot/doors/page/web` once.');
  return [
    ['/page.css', join(WEB, 'page.css')], ['/mark.svg', join(WEB, 'mark.svg')],
    ...compiled.map((n): [string, string] => [`/code/${n}`, join(WEB, 'out', n)]),
  ];
}

/** The page itself; served only to a known browser. */
export const pageFile = (): string => readFileSync(join(WEB, 'page.html'), 'utf8');

/** Serves a fixed table of files by their exact path. Nothing else on the disk has a path here, so there is nothing to climb out of. */
export function files(): MiddlewareHandler {
  const table = new Map([...ownFiles(), ...speechDetector()]);
  return async (c, next) => {
    const file = table.get(new URL(c.req.url).pathname);
    if (file === undefined || c.req.method !== 'GET') return next();
    const { mtimeMs, size } = statSync(file);
    const tag = `"${mtimeMs.toString(36)}-${size.toString(36)}"`;
    const about = { 'Content-Type': TYPES[extname(file)] ?? 'application/octet-stream', 'Cache-Control': 'no-cache', ETag: tag };
    if (c.req.header('if-none-match') === tag) return c.body(null, 304, about);
    return c.body(new Uint8Array(readFileSync(file)), 200, about);
  };
}

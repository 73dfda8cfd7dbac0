import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Cloud, CloudFile } from './cloud.ts';
import { failBefore, type Faults } from './faults.ts';
import { METHODS, type Call } from './methods.ts';
import { partsOf } from './multipart.ts';
import type { Polling } from './polling.ts';
import { refuse, type Answer } from './refuse.ts';

/** The platform behind an HTTP door on 127.0.0.1: /bot<token>/<method> and /file/bot<token>/<path>. */
export interface Wire { cloud: Cloud; polling: Polling; faults: Faults; calls: { method: string; at: number }[]; downloads: string[] }

export async function listen(wire: Wire, port = 0): Promise<{ server: Server; url: string }> {
  const server = createServer((req, res) => { handle(wire, req, res).catch(error => { res.destroy(error as Error); }); });
  await new Promise<void>(open => server.listen(port, '127.0.0.1', open));
  return { server, url: `http://127.0.0.1:${(server.address() as AddressInfo).port}` };
}

async function handle(wire: Wire, req: IncomingMessage, res: ServerResponse): Promise<void> {
  const file = /^\/file\/bot([^/]+)\/(.+)$/.exec(req.url!);
  if (file) return download(wire, file[1]!, file[2]!, res);
  const call = /^\/bot([^/]+)\/(\w+)$/.exec(req.url!);
  const body = await bodyOf(req);
  if (!call) return answer(res, refuse(404, 'Not Found'));
  const [, token, method] = call as unknown as [string, string, string];
  wire.calls.push({ method, at: Date.now() });
  // A token of another shape is not found; one that was good and isn't any more is unauthorized (Client.cpp and ClientManager.cpp).
  if (!/^\d+:/.test(token)) return answer(res, refuse(404, 'Not Found'));
  if (wire.cloud.revoked || token !== wire.cloud.token) return answer(res, refuse(401, 'Unauthorized'));
  const fault = wire.faults.take(method, JSON.stringify(body.fields));
  if (failBefore(fault, res)) return;
  const result = method === 'getUpdates' ? await poll(wire, body, res) : METHODS[method]?.(wire.cloud, body) ?? refuse(404, 'Not Found: method not found');
  if (fault?.kind === 'reset-after') { res.socket?.destroy(); return; }
  answer(res, result);
}

function poll(wire: Wire, body: Call, res: ServerResponse): Promise<Answer> {
  const answered = wire.polling.get(body.fields);
  const gone = () => wire.polling.gone();
  res.on('close', gone);
  return answered.finally(() => res.off('close', gone));
}

function answer(res: ServerResponse, a: Answer): void {
  if (res.destroyed) return;
  res.writeHead(a.ok ? 200 : a.error_code, { 'content-type': 'application/json' }).end(JSON.stringify(a));
}

async function bodyOf(req: IncomingMessage): Promise<Call> {
  const parts: Buffer[] = [];
  for await (const part of req) parts.push(part as Buffer);
  const raw = Buffer.concat(parts);
  const type = req.headers['content-type'] ?? '';
  const call: Call = { fields: {}, uploads: new Map() };
  if (type.startsWith('application/json')) call.fields = raw.length ? JSON.parse(raw.toString()) as Call['fields'] : {};
  if (!type.startsWith('multipart/form-data')) return call;
  for (const { name, filename, bytes } of partsOf(raw, type)) {
    const text = Buffer.from(bytes).toString();
    if (filename === undefined) call.fields[name] = /^[[{]/.test(text) ? JSON.parse(text) : text;
    else call.uploads.set(name, { bytes, name: filename });
  }
  return call;
}

function download(wire: Wire, token: string, path: string, res: ServerResponse): void {
  wire.downloads.push(path);
  const wanted = decodeURIComponent(path);
  const file = [...wire.cloud.files.values()].find(f => f.path === wanted);
  if (token !== wire.cloud.token || wire.cloud.revoked) return answer(res, refuse(401, 'Unauthorized'));
  if (!file) return answer(res, refuse(404, 'Not Found'));
  const fault = wire.faults.take('file', path);
  if (!failBefore(fault, res)) sendBytes(res, file, fault?.kind === 'cut');
}

/** Without a said size the bytes go in chunks and no length is named; a cut one names its length and stops half way. */
function sendBytes(res: ServerResponse, file: CloudFile, cut: boolean): void {
  const named = file.says === undefined ? undefined : file.bytes.length;
  res.writeHead(200, { 'content-type': 'application/octet-stream', ...(named === undefined ? {} : { 'content-length': named }) });
  if (!cut) { res.end(file.bytes); return; }
  res.write(file.bytes.subarray(0, file.bytes.length >> 1), () => setTimeout(() => res.destroy(), 20));
}

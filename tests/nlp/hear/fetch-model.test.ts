import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { env } from '@xenova/transformers';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { fetchModel } from '../../../nlp/hear/fetch-model.ts';

/** A hub on this machine: no test reaches out. */
const BODY = Buffer.from('weights '.repeat(5_000));
const SHA = createHash('sha256').update(BODY).digest('hex');
const hub = env.remoteHost;
let server: Server;
let dir: string;

beforeAll(async () => {
  server = createServer((request, response) => {
    if (request.url === '/some/model/resolve/main/good.bin') response.setHeader('x-linked-etag', `"${SHA}"`).end(BODY);
    else if (request.url === '/some/model/resolve/main/other.bin') response.setHeader('x-linked-etag', `"${SHA}"`).end('something else');
    else if (request.url === '/some/model/resolve/main/short.bin') {
      response.setHeader('content-length', BODY.length);
      response.write(BODY.subarray(0, 100), () => response.destroy());
    } else response.writeHead(404).end();
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  env.remoteHost = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
});
afterAll(() => {
  env.remoteHost = hub;
  server.close();
});
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'model-'));
  return () => rmSync(dir, { recursive: true });
});

const get = (path: string, rest = {}, progress?: Parameters<typeof fetchModel>[2]) => fetchModel({ modelsDir: dir, model: 'some/model' }, [{ path, ...rest }], progress);
const at = (path: string) => join(dir, 'some/model', path);

test('a file that is right is kept, and its coming is told', async () => {
  const told: number[] = [];
  expect(await get('good.bin', { size: BODY.length, sha256: SHA }, (_, got, of) => told.push(got / of!))).toEqual({ ok: true });
  expect(readFileSync(at('good.bin'))).toEqual(BODY);
  expect(told.at(-1)).toBe(1);
});

test.each([
  ['another hash than the hub tells', 'other.bin', {}, /hash/],
  ['another hash than was wanted', 'good.bin', { sha256: '0'.repeat(64) }, /hash/],
  ['another size', 'good.bin', { size: 7 }, /bytes/],
  ['a connection that breaks', 'short.bin', {}, /broke off/],
  ['a file that is not there', 'none.bin', {}, /404/],
])('%s leaves nothing behind and is said in a sentence', async (_, path, rest, why) => {
  expect(await get(path, rest)).toEqual({ ok: false, why: expect.stringMatching(why) });
  expect(existsSync(at(path))).toBe(false);
  expect(existsSync(`${at(path)}.part`)).toBe(false);
});

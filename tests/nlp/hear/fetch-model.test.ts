import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { env } from '@xenova/transformers';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { fetchModel } from '../../../nlp/hear/fetch-model.ts';
import { readModelWish } from '../../../nlp/hear/hub-models.ts';

/**
 * A hub on this machine: no test reaches out. As at the real one, a large file's size and hash are told where it sends on to the bytes,
 * and a small one's mark is the hash of its git blob.
 */
const BODY = Buffer.from('weights '.repeat(5_000));
const SHA = createHash('sha256').update(BODY).digest('hex');
const BLOB = createHash('sha1').update(`blob ${BODY.length}\0`).update(BODY).digest('hex');
const sendOn = { 'x-linked-etag': `"${SHA}"`, 'x-linked-size': BODY.length };
const FILES: Record<string, { head: object; bytes?: Buffer }> = {
  'large.bin': { head: { ...sendOn, location: '/store/good' } },
  'altered.bin': { head: { ...sendOn, location: '/store/altered' } },
  'cut.bin': { head: { ...sendOn, location: '/store/cut' } },
  'small.json': { head: { etag: `"${BLOB}"` }, bytes: BODY },
  'small-altered.json': { head: { etag: `"${BLOB}"` }, bytes: Buffer.from(BODY.map((x) => x ^ 1)) },
  'unmarked.json': { head: {}, bytes: BODY },
  'circle.bin': { head: { location: '/some/model/resolve/main/circle.bin' } },
};
const hub = env.remoteHost;
let server: Server;
let dir: string;

beforeAll(async () => {
  server = createServer(({ url, method }, response) => {
    const file = FILES[url!.replace('/some/model/resolve/main/', '')];
    if (url === '/store/good') response.end(BODY);
    else if (url === '/store/altered') response.end(Buffer.from(BODY.map((x) => x ^ 1)));
    else if (url === '/store/cut') response.writeHead(200, { 'content-length': BODY.length }).write(BODY.subarray(0, 100), () => response.destroy());
    else if (!file) response.writeHead(404).end();
    else if (!file.bytes) response.writeHead(302, file.head as Record<string, string>).end();
    else response.writeHead(200, { 'content-length': file.bytes.length, ...file.head }).end(method === 'HEAD' ? undefined : file.bytes);
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

const get = (files: string[], progress?: Parameters<typeof fetchModel>[1]) => fetchModel({ modelsDir: dir, model: 'some/model' }, progress, files);
const at = (path: string) => join(dir, 'some/model', path);

test('files that are right are kept, and their coming is told as a share of all', async () => {
  const told: number[] = [];
  expect(await get(['small.json', 'large.bin'], (got, of) => told.push(got / of!))).toEqual({ ok: true, checked: 'size and hash' });
  expect(readFileSync(at('large.bin'))).toEqual(BODY);
  expect(readFileSync(at('small.json'))).toEqual(BODY);
  expect(told).toEqual(told.toSorted((a, b) => a - b));
  expect(told).toContain(0.5);
  expect(told.at(-1)).toBe(1);
});

test('where the hub tells no hash, only the size is checked, and that is said', async () => {
  expect(await get(['unmarked.json'])).toEqual({ ok: true, checked: 'size' });
});

test('what is there already is not fetched again', async () => {
  await get(['large.bin']);
  writeFileSync(at('large.bin'), Buffer.alloc(BODY.length, 1));
  await get(['large.bin']);
  expect(readFileSync(at('large.bin'))[0]).toBe(1);
});

test.each([
  ['another hash than the hub tells', 'altered.bin', /hash/],
  ['another hash of a small one', 'small-altered.json', /hash/],
  ['a connection that breaks', 'cut.bin', /broke off/],
  ['a file that is not there', 'none.bin', /404/],
  ['a hub that sends in a circle', 'circle.bin', /circle/],
])('%s leaves nothing behind and is said in a sentence', async (_, path, why) => {
  expect(await get([path])).toEqual({ ok: false, why: expect.stringMatching(why) });
  expect(existsSync(at(path))).toBe(false);
  expect(existsSync(`${at(path)}.part`)).toBe(false);
});

test('no network: the model that is there stays, in a sentence', async () => {
  const here = env.remoteHost;
  env.remoteHost = 'http://127.0.0.1:1/';
  expect(await get(['large.bin'])).toEqual({ ok: false, why: expect.stringMatching(/no connection.*I go on with the model I have/) });
  env.remoteHost = here;
});

test.each([
  ['get the speech model small.en', { wish: 'other', model: { say: 'small.en' } }],
  ['Please fetch me a speech model called base.', { wish: 'other', model: { say: 'base.en' } }],
  ['use the hearing model some-one/whisper-large', { wish: 'other', model: { model: 'some-one/whisper-large' } }],
  ['hear with small.en', { wish: 'other', model: { say: 'small.en' } }],
  ['get a better speech model', { wish: 'which' }],
  ['what speech models are there?', { wish: 'which' }],
  ['use the speech model ../../elsewhere', { wish: 'which' }],
  ['go back to the built-in speech model', { wish: 'built-in' }],
])('"%s" is a wish about the model', (text, wish) => expect(readModelWish(text)).toMatchObject(wish));

test.each(['need a small model steam engine', 'get the other model of pump', 'the model plate is off', 'the speech model is good', 'heard with the small hammer that the bearing knocks'])(
  '"%s" is none', (text) => expect(readModelWish(text)).toBeUndefined());

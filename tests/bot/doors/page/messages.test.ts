import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openPage, type Page } from '../../../../bot/doors/page/server.ts';
import { DOOR, signIn } from './client.ts';
import { compilePage } from './compile.ts';
import { fakeService, type FakeService } from './fake-service.ts';

let service: FakeService, page: Page, base: string, cookie: string;
beforeAll(async () => {
  compilePage();
  service = fakeService();
  page = await openPage({ service, port: 0, zone: 'Europe/Dublin' });
  base = `http://127.0.0.1:${page.port}`;
  cookie = await signIn(page.url);
});
afterAll(() => page.close());
beforeEach(() => { service.taken.length = 0; });

const JSON_TYPE = { 'Content-Type': 'application/json' };
const post = (path: string, body: RequestInit['body'], headers: Record<string, string>) => fetch(base + path, { method: 'POST', body, headers: { cookie, ...headers } });
const say = (m: unknown, headers: Record<string, string> = { ...DOOR, ...JSON_TYPE }) => post('/say', JSON.stringify(m), headers);

describe('words', () => {
  test('are handed over as they are, and acknowledged with the exchange', async () => {
    const key = randomUUID();
    const answer = await say({ key, text: 'Radiator is off.' });
    expect(answer.status).toBe(200);
    const { talk } = await answer.json() as { talk: { id: number; say: string } };
    expect(talk).toMatchObject({ text: 'Radiator is off.', say: 'Noted: Radiator is off.' });
    expect(service.taken).toEqual([{ key: `page:${key}`, door: 'page', chat: 'bench', at: expect.stringMatching(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d$/), text: 'Radiator is off.' }]);
  });
  test('the same key again changes nothing and is acknowledged again', async () => {
    const m = { key: randomUUID(), text: 'Fan belt came.' };
    const [a, b] = [await (await say(m)).json(), await (await say(m)).json()];
    expect(a).toEqual(b);
    expect(service.taken).toHaveLength(1);
  });
  test.each(['\u0000', '\ud800 alone', '\u202eright to left', '👩‍🔧'.repeat(500), 'Kühler ist ab', '  ', ''])('%j arrives letter for letter', async text => {
    expect((await say({ key: randomUUID(), text })).status).toBe(200);
    expect(service.taken[0]!.text).toBe(text);
  });
  test('64 KiB is taken, counted in bytes; one byte more is refused in words', async () => {
    expect((await say({ key: randomUUID(), text: '\u0001'.repeat(65_536) })).status).toBe(200);
    for (const text of ['a'.repeat(65_537), 'ö'.repeat(32_769), 'a'.repeat(3_000_000)]) {
      const answer = await say({ key: randomUUID(), text });
      expect(answer.status).toBe(413);
      expect(await answer.json()).toEqual({ error: expect.stringContaining('64 KiB') });
    }
    expect(service.taken).toHaveLength(1);
  });
  test('a body without a length is cut off at the limit', async () => {
    const endless = new ReadableStream({ pull(c) { c.enqueue(new Uint8Array(100_000).fill(97)); } });
    const answer = await fetch(`${base}/say`, { method: 'POST', body: endless, duplex: 'half', headers: { cookie, ...DOOR, ...JSON_TYPE } } as RequestInit).then(r => r.status, () => 'cut');
    expect([413, 'cut']).toContain(answer);
    expect(service.taken).toHaveLength(0);
  });
  test('a note that waited in the browser is dated to when it was said, in the shop’s zone', async () => {
    const said = Date.parse('2026-07-04T10:00:00Z');
    const at = async (ms: number) => { await say({ key: randomUUID(), text: 'x', at: ms }); return service.taken.at(-1)!.at; };
    const hourAgo = Math.floor((Date.now() - 3_600_000) / 1000) * 1000;
    expect(Date.parse(await at(hourAgo))).toBe(hourAgo);
    for (const untrue of [Date.now() + 86_400_000, 1000]) expect(Math.abs(Date.parse(await at(untrue)) - Date.now())).toBeLessThan(5000);
    // Summer time in Dublin is an hour ahead of UTC, whatever this computer's own zone is.
    const { clock } = await import('../../../../bot/doors/page/clock.ts');
    expect(Date.now() - said < 30 * 86_400_000 ? clock('Europe/Dublin')(said) : '2026-07-04T11:00:00+01:00').toBe('2026-07-04T11:00:00+01:00');
  });
  test('what could not be kept is not acknowledged', async () => {
    service.failNext(1);
    const m = { key: randomUUID(), text: 'Oil drained.' };
    const answer = await say(m);
    expect(answer.status).toBe(503);
    expect(JSON.stringify(await answer.json())).not.toContain('disk full');
    expect((await say(m)).status).toBe(200);
  });
  test('a form of another page could not have sent it: header and type are asked for', async () => {
    const m = { key: randomUUID(), text: 'x' };
    expect((await say(m, JSON_TYPE)).status).toBe(403);
    expect((await say(m, { ...DOOR, 'Content-Type': 'text/plain' })).status).toBe(415);
    expect((await say(m, { ...DOOR, 'Content-Type': 'application/x-www-form-urlencoded' })).status).toBe(415);
    expect(service.taken).toHaveLength(0);
  });
  test.each([{}, { key: 'x', text: 'a' }, { key: randomUUID() }, { key: randomUUID(), text: 5 }, [], null])('%j is refused in words', async m => {
    const answer = await say(m);
    expect(answer.status).toBe(400);
    expect(await answer.json()).toEqual({ error: expect.any(String) });
  });
  test('broken JSON is refused in words', async () => {
    expect((await post('/say', '{"key":', { ...DOOR, ...JSON_TYPE })).status).toBe(400);
  });
});

describe('sound', () => {
  const sound = (bytes: Uint8Array<ArrayBuffer>, headers: Record<string, string>) => post('/sound', bytes, { ...DOOR, 'Content-Type': 'audio/wav', ...headers });
  test('is handed over byte for byte, with what it claims to be', async () => {
    const bytes = crypto.getRandomValues(new Uint8Array(50_000));
    expect((await sound(bytes, { 'Pawl-Key': randomUUID() })).status).toBe(200);
    expect(service.taken[0]).toMatchObject({ text: '', files: [{ claims: 'audio/wav', use: 'sound' }] });
    expect(Buffer.compare(service.taken[0]!.files![0]!.bytes, bytes)).toBe(0);
  });
  test('20 MB is taken, more is refused', async () => {
    expect((await sound(new Uint8Array(20 * 1024 * 1024), { 'Pawl-Key': randomUUID() })).status).toBe(200);
    expect((await sound(new Uint8Array(20 * 1024 * 1024 + 1), { 'Pawl-Key': randomUUID() })).status).toBe(413);
    expect(service.taken).toHaveLength(1);
  });
  test('needs a key, its header and a type of sound', async () => {
    const one = new Uint8Array(1);
    expect((await sound(one, {})).status).toBe(400);
    expect((await sound(one, { 'Pawl-Key': randomUUID(), 'Content-Type': 'text/html' })).status).toBe(415);
    expect((await post('/sound', one, { 'Content-Type': 'audio/wav', 'Pawl-Key': randomUUID() })).status).toBe(403);
  });
});

describe('a photo', () => {
  const form = (photo: Uint8Array<ArrayBuffer>, caption: string, key = randomUUID()) => {
    const f = new FormData();
    f.set('key', key);
    f.set('caption', caption);
    f.set('photo', new Blob([photo], { type: 'image/jpeg' }), 'a.jpg');
    return f;
  };
  test('is handed over with its caption, and can be looked at after', async () => {
    const answer = await post('/photo', form(new Uint8Array([1, 2, 3]), 'magneto, wiring before — “as found”'), DOOR);
    const { talk } = await answer.json() as { talk: { files: string[] } };
    expect(service.taken[0]).toMatchObject({ text: 'magneto, wiring before — “as found”', files: [{ claims: 'image/jpeg', use: 'photo' }] });
    const kept = await fetch(`${base}/kept/${talk.files[0]}`, { headers: { cookie } });
    expect(kept.headers.get('content-type')).toBe('image/png');
    expect(new Uint8Array(await kept.arrayBuffer())).toEqual(new Uint8Array([1, 2, 3]));
  });
  test('over 20 MB is refused, and a form without one', async () => {
    expect((await post('/photo', form(new Uint8Array(20 * 1024 * 1024 + 1), ''), DOOR)).status).toBe(413);
    expect((await post('/photo', form(new Uint8Array(22 * 1024 * 1024), ''), DOOR)).status).toBe(413);
    const none = form(new Uint8Array(1), '');
    none.delete('photo');
    expect((await post('/photo', none, DOOR)).status).toBe(400);
    expect(service.taken).toHaveLength(0);
  });
});

describe('a kept file', () => {
  const keep = (name: string, type: string) => service.files.set(name, { bytes: new TextEncoder().encode('0123456789'), type });
  const kept = (name: string, headers: Record<string, string> = {}) => fetch(`${base}/kept/${name}`, { headers: { cookie, ...headers } });
  test('that a browser could run is only handed over, not shown', async () => {
    for (const type of ['text/html', 'image/svg+xml', 'application/pdf']) {
      keep('page1', type);
      const answer = await kept('page1');
      expect(answer.headers.get('content-type')).toBe('application/octet-stream');
      expect(answer.headers.get('content-disposition')).toBe('attachment');
    }
  });
  test('is given by stretches, as players ask for it (RFC 9110 §14)', async () => {
    keep('sound1', 'audio/ogg');
    const cases: [string, number, string, string | null][] = [
      ['bytes=2-4', 206, '234', 'bytes 2-4/10'], ['bytes=7-', 206, '789', 'bytes 7-9/10'], ['bytes=-3', 206, '789', 'bytes 7-9/10'],
      ['bytes=0-99', 206, '0123456789', 'bytes 0-9/10'], ['bytes=10-', 416, '', 'bytes */10'], ['lines=1-2', 200, '0123456789', null],
    ];
    for (const [range, status, text, where] of cases) {
      const answer = await kept('sound1', { range });
      expect([answer.status, await answer.text(), answer.headers.get('content-range')], range).toEqual([status, text, where]);
    }
  });
  test('that is not there is a 404 in words', async () => {
    expect((await kept('nothing')).status).toBe(404);
  });
});

describe('what was said earlier', () => {
  const ids = async (query: string) => ((await (await fetch(`${base}/talk?${query}`, { headers: { cookie } })).json()) as { id: number }[]).map(t => t.id);
  test('comes in stretches before or after a note, oldest first, over gaps in the numbers', async () => {
    service.exchanges.length = 0;
    for (let i = 0; i < 10; i++) service.elsewhere('telegram', `note ${i}`, 'Noted.');
    // Numbers 1-10 become 1, 2, 3, 4, 105, 106 … as if a group chat had taken the ones between.
    for (const t of service.exchanges) if (t.id > 4) t.id += 100;
    expect(await ids('limit=3')).toEqual([108, 109, 110]);
    expect(await ids('before=108&limit=3')).toEqual([105, 106, 107]);
    expect(await ids('before=105&limit=3')).toEqual([2, 3, 4]);
    expect(await ids('before=2&limit=3')).toEqual([1]);
    expect(await ids('before=1&limit=3')).toEqual([]);
    expect(await ids('after=4&limit=2')).toEqual([105, 106]);
    service.exchanges.length = 0;
  });
});

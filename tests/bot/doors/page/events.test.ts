import { connect, type Socket } from 'node:net';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { openPage, type Page } from '../../../../bot/doors/page/server.ts';
import { openEvents, signIn } from './client.ts';
import { compilePage } from './compile.ts';
import { fakeService, type FakeService } from './fake-service.ts';

let service: FakeService, page: Page, base: string, cookie: string;
beforeAll(compilePage);
beforeEach(async () => {
  service = fakeService();
  page = await openPage({ service, port: 0 });
  base = `http://127.0.0.1:${page.port}`;
  cookie = await signIn(page.url);
});
afterEach(() => page.close());
const note = (n: number) => service.elsewhere('telegram', `note ${n}`, 'Noted.');

describe('the event stream', () => {
  test('tells what is said at any door, with the note’s number, and the panels when they change', async () => {
    const events = await openEvents(base, cookie);
    await events.until(1, 'glance');
    note(1);
    expect((await events.until(1))[0]).toMatchObject({ id: '1', data: { id: 1, door: 'telegram', text: 'note 1' } });
    service.panels = [{ title: 'Next', say: 'Nothing.', lines: [] }];
    note(2);
    expect((await events.until(2, 'glance'))[1]!.data).toEqual(service.panels);
    service.progress('page:a', 'hearing 3 min of talk…');
    expect((await events.until(1, 'progress'))[0]!.data).toMatchObject({ key: 'page:a', text: 'hearing 3 min of talk…' });
    events.close();
  });
  test('gives a reader that comes back all it missed, once, in order', async () => {
    for (let n = 1; n <= 5; n++) note(n);
    const events = await openEvents(base, cookie, 2);
    note(6);
    expect((await events.until(4)).map(t => t.id)).toEqual(['3', '4', '5', '6']);
    events.close();
  });
  test('however much that is, with what is said meanwhile', async () => {
    for (let n = 1; n <= 950; n++) note(n);
    const events = await openEvents(base, cookie, 10);
    for (let n = 951; n <= 955; n++) note(n);
    await events.until(945);
    expect([...new Set((await events.until(945)).map(t => Number(t.id)))]).toEqual(Array.from({ length: 945 }, (_, i) => i + 11));
    events.close();
  });
  test('an exchange told again does not turn back the mark to resume from', async () => {
    const first = note(1);
    note(2);
    const events = await openEvents(base, cookie, 0);
    await events.until(2);
    service.tell({ ...first, struck: true });
    expect((await events.until(3))[2]).toMatchObject({ id: '2', data: { id: 1, struck: true } });
    events.close();
  });
  test('words with line breaks stay whole', async () => {
    service.elsewhere('page', 'a\nb\r\nc\n\nd: e', 'Noted.\n\nevent: talk');
    const events = await openEvents(base, cookie, 0);
    expect((await events.until(1))[0]!.data).toMatchObject({ text: 'a\nb\r\nc\n\nd: e', say: 'Noted.\n\nevent: talk' });
    events.close();
  });
});

describe('many and slow readers', () => {
  /** A reader that asks for the stream and then never reads from its socket. */
  const neverReads = (): Socket => {
    const s = connect({ host: '127.0.0.1', port: page.port });
    s.pause();
    s.on('error', () => {});
    s.write(`GET /events HTTP/1.1\r\nHost: 127.0.0.1:${page.port}\r\nCookie: ${cookie}\r\n\r\n`);
    return s;
  };
  test('100 open streams all hear, and notes are still taken; closed ones are forgotten', async () => {
    const all = await Promise.all(Array.from({ length: 100 }, () => openEvents(base, cookie, 0)));
    note(1);
    for (const events of all) expect((await events.until(1))[0]!.id).toBe('1');
    const said = await fetch(`${base}/glance`, { headers: { cookie } });
    expect(said.status).toBe(200);
    for (const events of all) events.close();
  });
  test('readers that never read are let go, and hold up nobody', async () => {
    const stuck = Array.from({ length: 20 }, neverReads);
    await expect.poll(async () => (await fetch(`${base}/glance`, { headers: { cookie } })).status).toBe(200);
    const events = await openEvents(base, cookie, 0);
    const before = process.memoryUsage().arrayBuffers + process.memoryUsage().heapUsed;
    for (let n = 1; n <= 400; n++) { service.elsewhere('telegram', 'x'.repeat(60_000), 'Noted.'); await new Promise(setImmediate); }
    expect(await events.until(400)).toHaveLength(400);
    // 20 readers with 24 MB each would be 480 MB if everything were held for them.
    expect(process.memoryUsage().arrayBuffers + process.memoryUsage().heapUsed - before).toBeLessThan(250e6);
    await expect.poll(() => stuck.filter(s => s.resume() && s.closed).length, { timeout: 20_000 }).toBe(20);
    events.close();
  });
  test('half-sent requests do not stop it', async () => {
    const half = Array.from({ length: 100 }, () => { const s = connect({ host: '127.0.0.1', port: page.port }); s.on('error', () => {}); s.write('POST /say HTTP/1.1\r\nHost: 127'); return s; });
    expect((await fetch(`${base}/glance`, { headers: { cookie } })).status).toBe(200);
    for (const s of half) s.destroy();
  });
  test('closing ends the streams and stops listening to the program', async () => {
    const events = await openEvents(base, cookie, 0);
    expect(service.listeners()).toBe(2);
    await page.close();
    expect(service.listeners()).toBe(0);
    events.close();
    page = await openPage({ service, port: 0 });
  });
});
